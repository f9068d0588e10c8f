import { describe, expect, test } from 'vitest'
import { type Design, readDesign } from '../../geometry/index.ts'
import { Bench } from '../support/commandLine.ts'

async function made(...words: string[]): Promise<{ design: Design; err: string }> {
  const { code, out, err } = await new Bench().run('new', ...words)
  const reading = readDesign(out)
  if (code !== 0 || !reading.ok) throw new Error(`${code}: ${err}`)
  return { design: reading.design, err }
}

describe('new', () => {
  test('writes to stdout a design that reads back', async () => {
    const { design, err } = await made(
      '--length',
      '240',
      '--width',
      '180',
      '--depth',
      '55',
      '--hand',
      'right',
    )
    expect(design.box).toMatchObject({ length: 240, width: 180, depth: 55 })
    expect(err).toBe('')
  })

  test('takes every size in any unit', async () => {
    const { design } = await made(
      ...[
        '--title',
        'Tea box',
        '--length',
        '9 1/2in',
        '--width',
        '7"',
        '--depth',
        '51mm',
        '--wall',
        '1/4 in',
      ],
      ...[
        '--lid',
        '3.2',
        '--base',
        '0.5cm',
        '--lid-fit',
        'between the walls',
        '--scale',
        '2ft',
        '--strings',
        '4',
      ],
      ...['--frets', '12', '--fretless', '--hand', 'left', '--units', 'mm'],
    )
    expect(design).toMatchObject({
      title: 'Tea box',
      hand: 'left',
      units: { display: 'mm' },
      box: {
        length: 241.3,
        width: 177.8,
        depth: 51,
        walls: { neckEnd: 6.35, tailEnd: 6.35, bass: 6.35, treble: 6.35 },
        lid: { thickness: 3.2, fit: 'between the walls' },
        base: { thickness: 5 },
      },
      strings: { count: 4 },
      scale: { length: 609.6, fretless: true, frets: { by: 'equal', count: 12 } },
    })
  })

  test('speaks inches where the sizes are written in inches, millimetres where any is not', async () => {
    const display = async (...words: string[]) => (await made(...words)).design.units.display
    expect(await display('--length', '9 1/2in', '--width', '7"')).toBe('inches')
    expect(await display('--length', '9 1/2in', '--width', '180mm')).toBe('mm')
    expect(await display('--length', '240')).toBe('mm')
    expect(await display('--length', '9.5', '--units', 'inches')).toBe('inches')
    expect((await made('--length', '9.5', '--units', 'inches')).design.box.length).toBeCloseTo(241.3, 9)
  })

  test('with --hand it has no stop, without it only that one, told on stderr', async () => {
    expect((await made('--hand', 'left')).err).toBe('')
    expect((await made()).err).toMatch(/^the design: stop: .*hand.*\n$/)
  })

  test('--set comes after the sizes', async () => {
    const { design } = await made(
      '--strings',
      '3',
      '--set',
      'tailpiece.holes=5',
      '--set',
      'things.hole-treble.diameter=1in',
    )
    expect(design.tailpiece.holes).toBe(5)
    expect(design.things[0]).toMatchObject({ id: 'hole-treble', diameter: 25.4 })
  })

  test('--out writes the file, and never over one that lies there unless told so', async () => {
    const bench = new Bench()
    const first = await bench.run('new', '--hand', 'right', '--out', 'deep/box.lidwright.json')
    expect(first.code).toBe(0)
    expect(first.out).toMatch(/^Wrote deep\/box\.lidwright\.json: 0 stops, 0 cares/)
    const before = bench.read('deep/box.lidwright.json')
    const second = await bench.run('new', '--length', '300', '--out', 'deep/box.lidwright.json')
    expect(second).toMatchObject({ code: 2, out: '' })
    expect(second.err).toMatch(/lies there already and was left untouched\..*--replace/)
    expect(bench.read('deep/box.lidwright.json')).toBe(before)
    expect(
      (await bench.run('new', '--length', '300', '--out', 'deep/box.lidwright.json', '--replace')).code,
    ).toBe(0)
    expect(bench.read('deep/box.lidwright.json')).toContain('"length": 300')
  })

  test('what it writes, the other commands read', async () => {
    const bench = new Bench()
    await bench.run('new', '--hand', 'right', '--strings', '6', '--out', 'box.lidwright.json')
    expect((await bench.run('check', 'box.lidwright.json')).code).toBe(0)
    expect((await bench.run('templates', 'box.lidwright.json', '--out', 'cut')).code).toBe(0)
  })
})

describe('new refuses', () => {
  test.each([
    [['--length', '3mm'], /--length "3mm": that is 3\.0 mm; from 40\.0 mm to 1500\.0 mm is taken/],
    [['--length', '1/4in'], /that is 1\/4 in; from 1 9\/16 in to/],
    [['--length', 'long'], /--length: “long”/],
    [['--strings', '40'], /--strings "40": a whole number from 1 to 12/],
    [['--strings', '2.5'], /whole number/],
    [['--frets', '-1'], /--frets/],
    [['--hand', 'upper'], /--hand "upper": wanted is "not stated" or "right" or "left"/],
    [['--units', 'cubits'], /--units cubits: mm or inches/],
    [['--lid-fit', 'glued'], /"on the walls" or "between the walls"/],
    [['--set', 'x=1'], /--set x=1: There is no field/],
  ])('%j', async (words, sentence) => {
    const bench = new Bench()
    const { code, out, err } = await bench.run('new', ...words, '--out', 'box.json')
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toMatch(sentence)
    expect(bench.files()).toEqual([])
  })

  test('everything that is wrong at once', async () => {
    const { err } = await new Bench().run('new', '--length', 'x', '--strings', '99')
    expect(err.trim().split('\n')).toHaveLength(2)
  })
})
