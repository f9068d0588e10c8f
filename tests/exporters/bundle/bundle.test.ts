/** One zip with everything: read by Python's own reader, the same bytes every time, names safe on any disk. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { makeBundle } from '../../../exporters/bundle/bundle.ts'
import { crc32, packed, zipOf } from '../../../exporters/bundle/zip.ts'
import { followed } from '../../../exporters/cutting/cut-part.ts'
import { sheetTemplates } from '../../../exporters/cutting/sheets.ts'
import { sheetFiles } from '../../../exporters/sheet/files.ts'
import { templates } from '../../../exporters/templates.ts'
import {
  bounds,
  type Contour,
  checkDesign,
  type Design,
  partsOf,
  readDesign,
  solve,
} from '../../../geometry/index.ts'
import { PATIENCE } from '../../support/every-design.ts'
import { PYTHON } from '../../support/outsideTools.ts'
import { samples } from '../../support/samples.ts'

const folder = mkdtempSync(join(tmpdir(), 'lidwright-bundle-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** What Python's zipfile says of a zip: tests it, then gives names, dates and contents. */
const READ = `
import sys, zipfile, json, base64
zip = zipfile.ZipFile(sys.argv[1])
assert zip.testzip() is None
print(json.dumps([{"name": i.filename, "date": list(i.date_time), "method": i.compress_type, "packed": i.compress_size, "bytes": base64.b64encode(zip.read(i)).decode()} for i in zip.infolist()]))
`

interface Held {
  readonly name: string
  readonly date: readonly number[]
  /** As the format numbers them: 0 stored, 8 DEFLATE (APPNOTE 6.3, 4.4.5). */
  readonly method: number
  /** Bytes in the zip. */
  readonly packed: number
  readonly bytes: Buffer
}

function unpacked(bytes: Uint8Array): Held[] {
  const file = join(folder, 'bundle.zip')
  writeFileSync(file, bytes)
  const { stdout, stderr, status } = spawnSync(PYTHON, ['-c', READ, file], {
    encoding: 'utf8',
    maxBuffer: 1e9,
  })
  if (status !== 0) throw new Error(stderr)
  return (JSON.parse(stdout) as (Omit<Held, 'bytes'> & { bytes: string })[]).map((one) => ({
    ...one,
    bytes: Buffer.from(one.bytes, 'base64'),
  }))
}

const tea = samples().find(({ name }) => name.startsWith('tea-box'))?.design as Design

it('sums files as zips do', () => {
  // The check value of CRC-32/ISO-HDLC: the nine figures give CBF43926 (catalogue of parametrised CRC algorithms).
  expect(crc32(Buffer.from('123456789'))).toBe(0xcbf43926)
})

it('stores small files as they are and packs large ones, and Python gives both back', () => {
  const lines = (count: number) => Buffer.from('0 1 2 3 hole at 12.5 mm\n'.repeat(count))
  const [small, large] = [lines(10_000), lines(20_000)]
  const zip = zipOf([
    packed({ path: 'none', bytes: Buffer.alloc(0) }),
    packed({ path: 'small', bytes: small }),
    packed({ path: 'large', bytes: large }),
  ])
  const [none, stored, deflated] = unpacked(zip)
  expect(none).toMatchObject({ name: 'none', method: 0, packed: 0 })
  expect(stored).toMatchObject({ name: 'small', method: 0, packed: small.length, bytes: small })
  expect(deflated).toMatchObject({ name: 'large', method: 8, bytes: large })
  expect(deflated?.packed).toBeLessThan(large.length / 20)
})

describe('the bundle', { timeout: PATIENCE }, () => {
  it('holds the design, every template, the sheet, its tables and the label, as they are made alone', async () => {
    const { bytes, name, paths } = await makeBundle(tea)
    expect(name).toBe('tea-box-three-strings-everything.zip')
    const held = unpacked(bytes)
    expect(held.map((one) => one.name)).toEqual(paths)
    const of = (ending: string) => {
      const found = held.filter((one) => one.name.endsWith(ending))
      if (found.length !== 1) throw new Error(`${found.length} files end in ${ending}`)
      return (found[0] as Held).bytes
    }
    expect(readDesign(of('.lidwright.json').toString())).toEqual({ ok: true, design: tea })
    for (const file of sheetFiles(tea)) expect(of(`/${file.name}`).toString(), file.name).toBe(file.text)
    for (const file of templates(partsOf(solve(tea)), { title: tea.title, formats: ['svg', 'dxf'] }))
      expect(of(`/${file.name}`).toString(), file.name).toBe(file.text)
    for (const pdf of ['-sheets-letter.pdf', '-build-sheet-letter.pdf', '-label.pdf'])
      expect(of(pdf).subarray(0, 5).toString(), pdf).toBe('%PDF-')
    const told = of('read-me.txt').toString()
    for (const one of held)
      if (!one.name.endsWith('read-me.txt')) expect(told).toContain(one.name.split('/').slice(1).join('/'))
  })

  it('is the same bytes every time, and says no date but the first a zip knows', async () => {
    const first = await makeBundle(structuredClone(tea))
    const second = await makeBundle(structuredClone(tea))
    expect(Buffer.compare(first.bytes, second.bytes)).toBe(0)
    for (const { date } of unpacked(first.bytes)) expect(date).toEqual([1980, 1, 1, 0, 0, 0])
  })

  it('is the same bytes in another time zone', async () => {
    const before = process.env.TZ
    const bytes: Uint8Array[] = []
    try {
      for (const zone of ['Pacific/Kiritimati', 'America/Los_Angeles']) {
        process.env.TZ = zone
        bytes.push((await makeBundle(tea)).bytes)
      }
    } finally {
      if (before === undefined) delete process.env.TZ
      else process.env.TZ = before
    }
    expect(Buffer.compare(bytes[0] ?? Buffer.alloc(0), bytes[1] ?? Buffer.alloc(1))).toBe(0)
  })

  it('of a design for a machine it holds its paths and its sheets of stock too, as they are made alone', async () => {
    const reading = checkDesign({ ...tea, cutting: { process: 'laser', kerf: 0.3 } })
    if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
    const { design } = reading
    const held = unpacked((await makeBundle(design)).bytes)
    const textIn = (folder: string, name: string) =>
      held.find((one) => one.name.endsWith(`/${folder}/${name}`))?.bytes.toString()
    const writing = { title: design.title, formats: ['svg', 'dxf'], svgPurpose: 'laser' } as const
    const { parts } = followed(partsOf(solve(design)), design)
    for (const { name, text } of templates(parts, writing))
      expect(textIn('paths-laser', name), name).toBe(text)
    const sheets = await sheetTemplates(parts, design, writing)
    if (!sheets.ok) throw new Error(sheets.sentences.join(' '))
    expect(sheets.files.length).toBeGreaterThan(3)
    for (const { name, text } of sheets.files) expect(textIn('sheets-of-stock', name), name).toBe(text)
    // A beam 0.3 mm wide is led half of that outside: the lid drawn for it is 0.3 mm larger than the lid.
    const lidOf = (all: typeof parts) => bounds(all.find(({ id }) => id === 'lid')?.outline as Contour)
    const [path, lid] = [lidOf(parts), lidOf(partsOf(solve(design)))]
    expect(path.maxX - path.minX - (lid.maxX - lid.minX)).toBeCloseTo(0.3, 9)
    const told = held.find((one) => one.name.endsWith('read-me.txt'))?.bytes.toString()
    for (const sentence of sheets.said) expect(told).toContain(sentence)
  })

  it('says what no machine can follow and what is larger than the stock, and holds the rest', async () => {
    const reading = checkDesign({ ...tea, cutting: { process: 'laser', sheetLength: 100, sheetWidth: 100 } })
    if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
    const { paths, cautions } = await makeBundle(reading.design)
    expect(cautions.join(' ')).toMatch(
      /Lid is .* as it lies, and a sheet of .* The bundle holds no sheets of stock/,
    )
    expect(paths.some((path) => path.includes('/paths-laser/'))).toBe(true)
    expect(paths.some((path) => path.includes('/sheets-of-stock/'))).toBe(false)
  })

  it('tells how far it is, from nothing to all', async () => {
    const told: [number, number][] = []
    await makeBundle(tea, { onStep: (done, of) => told.push([done, of]) })
    expect(told[0]?.[0]).toBe(0)
    expect(told.at(-1)?.[0]).toBe(told.at(-1)?.[1])
    expect(told.map(([done]) => done)).toEqual(told.map((_, index) => index))
  })

  it('has names that no disk refuses and no path that leads out, whatever the title', async () => {
    for (const title of ['../../a\\b:c*?"<>|', 'CON', '\u202e孔']) {
      const reading = checkDesign({ ...tea, title })
      if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
      const { paths, name } = await makeBundle(reading.design)
      for (const path of [...paths, name]) {
        expect(path).toMatch(/^([a-z0-9-]+\/)*[a-z0-9-]+(\.[a-z]+)+$/)
        expect(path).not.toMatch(/\.\.|(^|\/)(con|prn|aux|nul)[./]/)
      }
      expect(new Set(paths.map((path) => path.toLowerCase())).size).toBe(paths.length)
    }
  })
})
