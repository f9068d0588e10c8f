import { chmodSync, mkdirSync } from 'node:fs'
import { resolve } from 'node:path'
import { describe, expect, test } from 'vitest'
import { templates } from '../../exporters/index.ts'
import { partsOf, solve } from '../../geometry/index.ts'
import { Bench, broken, sound } from '../support/commandLine.ts'

const PARTS = partsOf(solve(sound())).map(({ id }) => id)

describe('templates', () => {
  test('writes a file for each part and one for all, in both formats, and says which', async () => {
    const bench = new Bench()
    const { code, out, err } = await bench.run(
      'templates',
      bench.put('box.json', sound()),
      '--out',
      'new/cut',
    )
    const names = ['svg', 'dxf'].flatMap((format) =>
      [...PARTS, 'all-parts'].map((part) => `tea-box-${part}.${format}`),
    )
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(bench.files('new/cut')).toEqual(names.map((name) => `new/cut/${name}`).sort())
    expect(out).toBe(
      `Wrote ${names.length} files to new/cut:\n${names.map((name) => `  ${name}`).join('\n')}\n`,
    )
  })

  test('the files hold what the exporters make', async () => {
    const bench = new Bench()
    await bench.run('templates', bench.put('box.json', sound()), '--out', 'cut')
    for (const { name, text } of templates(partsOf(solve(sound())), {
      title: 'Tea box',
      formats: ['svg', 'dxf'],
    }))
      expect(bench.read(`cut/${name}`), name).toBe(text)
  })

  test('only the formats and parts asked for', async () => {
    const bench = new Bench()
    const file = bench.put('box.json', sound())
    await bench.run('templates', file, '--out', 'a', '--svg', '--part', 'lid,board')
    expect(bench.files('a')).toEqual(['a/tea-box-all-parts.svg', 'a/tea-box-board.svg', 'a/tea-box-lid.svg'])
    await bench.run('templates', file, '--out', 'b', '--dxf', '--part', 'lid')
    expect(bench.files('b')).toEqual(['b/tea-box-lid.dxf'])
  })

  test('--inches makes the DXF say inches, and SVG files say that they do not', async () => {
    const bench = new Bench()
    const file = bench.put('box.json', sound())
    await bench.run('templates', file, '--out', 'cut', '--dxf', '--inches', '--part', 'lid')
    // AutoCAD DXF reference, header section: $INSUNITS 1 is inches, 4 millimetres.
    expect(bench.read('cut/tea-box-lid.dxf')).toContain('\n$INSUNITS\n70\n1\n')
    const { out } = await bench.run('templates', file, '--out', 'cut', '--svg', '--inches', '--part', 'lid')
    expect(out).toContain('An SVG is in millimetres')
  })

  test('--inside writes the faces mirrored, under other names, and says so', async () => {
    const bench = new Bench()
    const file = bench.put('box.json', sound())
    await bench.run('templates', file, '--out', 'cut', '--svg')
    const outside = bench.read('cut/tea-box-lid.svg')
    const { out } = await bench.run('templates', file, '--out', 'cut', '--svg', '--inside')
    expect(bench.files('cut').filter((name) => name.includes('inside'))).toEqual(
      ['all-parts', 'base', 'bass-wall', 'lid', 'neck-end-wall', 'tail-end-wall', 'treble-wall'].map(
        (part) => `cut/tea-box-${part}-inside.svg`,
      ),
    )
    expect(out).toContain('mirrored')
    expect(bench.read('cut/tea-box-lid.svg')).toBe(outside)
    expect(bench.read('cut/tea-box-lid-inside.svg')).toContain('mirror')
    expect(outside).not.toContain('mirror')
  })

  test('replaces what it wrote before and leaves other files alone', async () => {
    const bench = new Bench()
    const file = bench.put('box.json', sound())
    bench.put('cut/tea-box-lid.svg', 'old')
    bench.put('cut/shopping.txt', 'glue')
    expect((await bench.run('templates', file, '--out', 'cut', '--svg', '--part', 'lid')).code).toBe(0)
    expect(bench.read('cut/tea-box-lid.svg')).toMatch(/^<\?xml|^<svg/)
    expect(bench.read('cut/shopping.txt')).toBe('glue')
    expect(bench.files('cut')).toEqual(['cut/shopping.txt', 'cut/tea-box-lid.svg'])
  })

  test('several designs get a folder each', async () => {
    const bench = new Bench()
    bench.put('boxes/tea.lidwright.json', sound())
    bench.put('boxes/tin.lidwright.json', { ...sound(), title: 'Tin' })
    const { code } = await bench.run('templates', 'boxes', '--out', 'cut', '--svg', '--part', 'lid')
    expect(code).toBe(0)
    expect(bench.files('cut')).toEqual(['cut/tea/tea-box-lid.svg', 'cut/tin/tin-lid.svg'])
  })

  test('two designs of one name are not written over each other', async () => {
    const bench = new Bench()
    bench.put('a/box.lidwright.json', sound())
    bench.put('b/box.lidwright.json', sound())
    const { code, err } = await bench.run('templates', 'a', 'b', '--out', 'cut')
    expect(code).toBe(2)
    expect(err).toMatch(/would both be written to .*box\. Rename one/)
    expect(bench.has('cut')).toBe(false)
  })
})

describe('templates are not written', () => {
  test('while a stop is open, unless one insists', async () => {
    const bench = new Bench()
    const file = bench.put('box.json', broken())
    const refused = await bench.run('templates', file, '--out', 'cut')
    expect(refused).toMatchObject({ code: 1, out: '' })
    expect(refused.err).toMatch(
      /^box\.json: Only .*\[neck-left neck\]\n1 stop is open, so nothing was written\..*--despite-stops/,
    )
    expect(bench.has('cut')).toBe(false)
    expect((await bench.run('templates', file, '--out', 'cut', '--despite-stops')).code).toBe(0)
    expect(bench.has('cut/tea-box-lid.svg')).toBe(true)
  })

  test('when one design of several has a stop', async () => {
    const bench = new Bench()
    const files = [bench.put('good.json', sound()), bench.put('bad.json', broken())]
    expect((await bench.run('templates', ...files, '--out', 'cut')).code).toBe(1)
    expect(bench.has('cut')).toBe(false)
  })

  test('when one file of several cannot be read', async () => {
    const bench = new Bench()
    const { code, err } = await bench.run(
      'templates',
      bench.put('good.json', sound()),
      'gone.json',
      '--out',
      'cut',
    )
    expect(code).toBe(2)
    expect(err).toMatch(/^gone\.json: .*no such file[\s\S]*nothing was written/)
    expect(bench.has('cut')).toBe(false)
  })

  test('for a part that is not there; near ones and all are named', async () => {
    const bench = new Bench()
    const file = bench.put('box.json', sound())
    const { code, err } = await bench.run('templates', file, '--out', 'cut', '--part', 'lid,bord')
    expect(code).toBe(2)
    expect(err).toMatch(
      /no part called "bord"\. Is board meant\? The parts are lid, base, .*Nothing was written/,
    )
    expect(bench.has('cut')).toBe(false)
    const inside = await bench.run('templates', file, '--out', 'cut', '--inside', '--part', 'neck-top')
    expect(inside.err).toContain('The parts with an inside are lid, base')
  })

  test('where a file lies on the way, and nothing half written is left', async () => {
    const bench = new Bench()
    bench.put('cut', 'a file')
    const { code, err } = await bench.run('templates', bench.put('box.json', sound()), '--out', 'cut/deep')
    expect(code).toBe(2)
    expect(err).toMatch(/cannot be written: .*choose another place with --out/)
    expect(bench.read('cut')).toBe('a file')
  })

  test('where a folder bears the name of a file: the others are not written either', async () => {
    const bench = new Bench()
    mkdirSync(resolve(bench.folder, 'cut/tea-box-board.svg'), { recursive: true })
    const { code, err } = await bench.run(
      'templates',
      bench.put('box.json', sound()),
      '--out',
      'cut',
      '--svg',
    )
    expect(code).toBe(2)
    expect(err).toMatch(/tea-box-board\.svg: a folder of that name/)
    expect(bench.files('cut')).toEqual([])
  })

  // The superuser may write anywhere, so there the disk refuses nothing.
  const mayAnything = process.getuid?.() === 0
  test('into a folder that may not be written', async () => {
    const bench = new Bench()
    mkdirSync(resolve(bench.folder, 'cut'))
    chmodSync(resolve(bench.folder, 'cut'), 0o555)
    const { code, err } = await bench.run(
      'templates',
      bench.put('box.json', sound()),
      '--out',
      'cut',
      '--svg',
    )
    chmodSync(resolve(bench.folder, 'cut'), 0o755)
    expect(code).toBe(mayAnything ? 0 : 2)
    expect(err).toMatch(mayAnything ? /^$/ : /may not be touched/)
  })

  test('for a design without a hand, which says so when one insists', async () => {
    const bench = new Bench()
    const file = bench.put('box.json', { ...sound(), hand: 'not stated' })
    expect((await bench.run('templates', file, '--out', 'cut')).code).toBe(1)
    const { out } = await bench.run('templates', file, '--out', 'cut', '--despite-stops')
    expect(out).toContain('The hand is not stated in box.json')
  })
})

describe('templates for machines', () => {
  const laser = ['--set', 'cutting.process=laser']
  const width = (svg: string) => Number(/ width="([\d.]+)mm"/.exec(svg)?.[1])

  test('follow the kerf that the design states, and say so; --as-drawn leaves it out', async () => {
    const bench = new Bench()
    const file = bench.put('box.json', sound())
    const only = ['--svg', '--part', 'base', '--for', 'laser']
    const { out } = await bench.run(
      'templates',
      file,
      '--out',
      'a',
      ...only,
      ...laser,
      '--set',
      'cutting.kerf=1mm',
    )
    expect(out).toContain('Lines are the middle of the tool: laser, kerf 1.0 mm.')
    await bench.run('templates', file, '--out', 'b', ...only, ...laser, '--as-drawn')
    const [cut, drawn] = [bench.read('a/tea-box-base.svg'), bench.read('b/tea-box-base.svg')]
    expect(width(cut) - width(drawn)).toBeCloseTo(1, 9)
    expect(cut).toContain('openings run counter-clockwise, outlines clockwise')
    expect(cut).not.toMatch(/<text|DATUM|NOTES|stroke-dasharray="[1-9]/)
  })

  test('lay parts out on sheets, or say which is larger than the stock and write nothing', async () => {
    const bench = new Bench()
    const file = bench.put('box.json', sound())
    const { out } = await bench.run('templates', file, '--out', 'cut', '--sheets', '--dxf', '--r12')
    expect(out).toMatch(/Sheet 1 of \d, .* % full: /)
    expect(bench.read('cut/tea-box-sheet-1.dxf')).toContain('AC1009')
    const small = await bench.run(
      'templates',
      file,
      '--out',
      'none',
      '--sheets',
      '--set',
      'cutting.sheetLength=90mm',
    )
    expect(small.code).toBe(2)
    expect(small.err).toMatch(/Lid is .* Take a larger sheet/)
    expect(bench.files().some((name) => name.startsWith('none'))).toBe(false)
  })

  test('a test piece for a laser; cut by hand there is none', async () => {
    const bench = new Bench()
    const file = bench.put('box.json', sound())
    await bench.run('templates', file, '--out', 'cut', '--test-piece', '4mm', '--svg', ...laser)
    expect(bench.files('cut')).toEqual(['cut/tea-box-test-piece.svg'])
    const hand = await bench.run('templates', file, '--out', 'no', '--test-piece', '4mm')
    expect([hand.code, hand.err]).toEqual([2, expect.stringContaining('cut by hand')])
    const thin = await bench.run('templates', file, '--out', 'no', '--test-piece', '0.3mm', ...laser)
    expect([thin.code, thin.err]).toEqual([2, expect.stringContaining('too thin')])
    expect(bench.files().some((name) => name.startsWith('no'))).toBe(false)
  })

  test('a kerf wider than a hole is a stop; written all the same the hole is a mark', async () => {
    const bench = new Bench()
    const file = bench.put('box.json', sound())
    const wide = [...laser, '--set', 'cutting.kerf=5mm', '--svg', '--part', 'tail-strip', '--out', 'cut']
    const stopped = await bench.run('templates', file, ...wide)
    expect([stopped.code, stopped.err]).toEqual([1, expect.stringContaining('the kerf is 5.00 mm wide')])
    const { code, out } = await bench.run('templates', file, ...wide, '--despite-stops')
    expect(code).toBe(0)
    expect(out).toContain('drawn as a mark, to be cut by hand')
  })
})
