import { expect, test } from 'vitest'
import { sheetFiles } from '../../exporters/sheet/files.ts'
import { Bench, broken, sound } from '../support/commandLine.ts'

test('sheet writes the page, its PDF, a CSV of every table, the label and the JSON of everything, and says which', async () => {
  const bench = new Bench()
  const { code, out, err } = await bench.run('sheet', bench.put('box.json', sound()), '--out', 'paper')
  expect({ code, err }).toEqual({ code: 0, err: '' })
  const files = sheetFiles(sound())
  const more = ['tea-box-build-sheet-a4.pdf', 'tea-box-label.pdf', 'tea-box-label.svg']
  expect(bench.files('paper')).toEqual(
    [...files.map(({ name }) => name), ...more].map((name) => `paper/${name}`).sort(),
  )
  for (const { name, text } of files) expect(bench.read(`paper/${name}`), name).toBe(text)
  expect(out).toContain('tea-box-build-sheet.html')
})

test('a sheet is written although a stop is open, and lists it', async () => {
  const bench = new Bench()
  const { code } = await bench.run('sheet', bench.put('box.json', broken()), '--out', 'paper')
  expect(code).toBe(0)
  const open = bench.files('paper').find((name) => name.endsWith('-open.csv')) ?? ''
  expect(bench.read(open)).toMatch(/^Stop,/m)
})

test('what cannot be read leaves nothing behind', async () => {
  const bench = new Bench()
  const { code, err } = await bench.run('sheet', bench.put('box.json', '{'), '--out', 'paper')
  expect(code).toBe(2)
  expect(err).toContain('box.json')
  expect(bench.files()).toEqual(['box.json'])
})
