import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { describe, expect, test } from 'vitest'
import { makeBundle } from '../../exporters/bundle/bundle.ts'
import { carry } from '../../exporters/label/carried.ts'
import { designText } from '../../geometry/index.ts'
import { Bench, broken, sound } from '../support/commandLine.ts'

describe('bundle', () => {
  test('writes the zip that the page makes', async () => {
    const bench = new Bench()
    const { code, out, err } = await bench.run('bundle', bench.put('box.json', sound()), '--out', 'box.zip')
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(out).toMatch(/^Wrote box\.zip, \d+ kB\.\n$/)
    const { bytes } = await makeBundle(sound())
    expect(Buffer.compare(readFileSync(resolve(bench.folder, 'box.zip')), Buffer.from(bytes))).toBe(0)
  })

  test('of several designs writes a zip each, into a folder', async () => {
    const bench = new Bench()
    bench.put('a.lidwright.json', sound())
    bench.put('b.lidwright.json', sound())
    const { code } = await bench.run('bundle', 'a.lidwright.json', 'b.lidwright.json', '--out', 'zips')
    expect(code).toBe(0)
    expect(bench.files('zips')).toEqual(['zips/a.zip', 'zips/b.zip'])
  })

  test('writes nothing while a stop is open, unless insisted', async () => {
    const bench = new Bench()
    const file = bench.put('box.json', broken())
    const refused = await bench.run('bundle', file, '--out', 'box.zip')
    expect(refused.code).toBe(1)
    expect(refused.err).toMatch(/nothing was written/)
    expect(bench.has('box.zip')).toBe(false)
    expect((await bench.run('bundle', file, '--out', 'box.zip', '--despite-stops')).code).toBe(0)
    expect(bench.has('box.zip')).toBe(true)
  })

  test('a disk that refuses leaves nothing half written, and says why', async () => {
    const bench = new Bench()
    bench.put('box.zip/in-the-way', 'x')
    const { code, err } = await bench.run('bundle', bench.put('box.json', sound()), '--out', 'box.zip')
    expect(code).toBe(2)
    expect(err).toMatch(/box\.zip/)
    expect(bench.files()).toEqual(['box.json', 'box.zip/in-the-way'])
  })
})

describe('recall', () => {
  test('turns the text of a label, given or in a file, into the design it carries', async () => {
    const bench = new Bench()
    const given = await bench.run('recall', carry(sound()), '--out', 'box.lidwright.json')
    expect(given).toMatchObject({ code: 0, out: 'Wrote box.lidwright.json: Tea box.\n' })
    expect(bench.read('box.lidwright.json')).toBe(designText(sound()))
    bench.put('label.txt', `${carry(sound())}\n`)
    expect((await bench.run('recall', 'label.txt', '--out', 'again.json')).code).toBe(0)
    expect(bench.read('again.json')).toBe(designText(sound()))
  })

  test.each([
    ['a text that is none', 'hello.txt', /neither the text of a label/],
    ['a text cut off', carry(sound()).slice(0, 90), /cut off|changed/],
  ])('refuses %s, and writes nothing', async (_, text, sentence) => {
    const bench = new Bench()
    const { code, err } = await bench.run('recall', text, '--out', 'box.json')
    expect(code).toBe(2)
    expect(err).toMatch(sentence)
    expect(bench.files()).toEqual([])
  })

  test('leaves a file alone that is there', async () => {
    const bench = new Bench()
    bench.put('box.json', 'mine')
    const { code, err } = await bench.run('recall', carry(sound()), '--out', 'box.json')
    expect({ code, kept: bench.read('box.json') }).toEqual({ code: 2, kept: 'mine' })
    expect(err).toMatch(/there already/)
  })
})
