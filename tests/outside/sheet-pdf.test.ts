/** The build sheet and the label as PDF, read by Poppler, which this project did not write. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import jsqr from 'jsqr'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readCarried } from '../../exporters/label/carried.ts'
import { reportOf } from '../../exporters/report.ts'
import { buildSheet } from '../../exporters/sheet/build-sheet.ts'
import { printLabel, printSheet } from '../../exporters/sheet/printing.ts'
import { checkDesign, type Design } from '../../geometry/index.ts'
import { needPoppler } from '../support/outsideTools.ts'
import { readPng } from '../support/readPng.ts'
import { samples } from '../support/samples.ts'

const folder = mkdtempSync(join(tmpdir(), 'lidwright-sheet-'))
beforeAll(needPoppler)
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function said(command: string, ...words: string[]): string {
  const { stdout, stderr, status } = spawnSync(command, words, { encoding: 'utf8', maxBuffer: 1e8 })
  if (status !== 0) throw new Error(`${command}: ${stderr}`)
  return stdout
}

function kept(bytes: Uint8Array): string {
  const file = join(folder, 'made.pdf')
  writeFileSync(file, bytes)
  return file
}

/** Page sizes in mm: ISO 216, and ANSI Letter. */
const PAPERS = [
  ['a4', 210, 297],
  ['letter', 215.9, 279.4],
] as const

const chosen = samples().filter(({ name }) => /^(tea|cutlery|wine)/.test(name))

describe.each(chosen.map(({ name, design }) => ({ name, design })))('the sheet of $name', ({ design }) => {
  it.each(PAPERS)(
    'on %s is of the paper’s size, unscaled, with every fret on one line',
    async (paper, wide, tall) => {
      const file = kept((await printSheet(buildSheet(design), paper)).bytes)
      const info = said('pdfinfo', file)
      const [, x = 0, y = 0] = (/Page size:\s+([\d.]+) x ([\d.]+)/.exec(info) ?? []).map(Number)
      expect((x / 72) * 25.4).toBeCloseTo(wide, 1)
      expect((y / 72) * 25.4).toBeCloseTo(tall, 1)
      expect(readFileSync(file, 'latin1')).toMatch(/\/PrintScaling \/None/)
      const text = said('pdftotext', '-layout', file, '-')
      const fine = (mm: number) => (design.units.display === 'mm' ? mm.toFixed(2) : (mm / 25.4).toFixed(3))
      for (const fret of reportOf(design).frets.filter((one) => one.number > 0))
        expect(text).toMatch(
          new RegExp(`^ *${fret.number} +${fine(fret.fromNut).replace('.', '\\.')} +\\S`, 'm'),
        )
      const pages = Number(/Pages:\s+(\d+)/.exec(info)?.[1])
      for (let page = 1; page <= pages; page++) expect(text).toMatch(new RegExp(`${page} ?/ ?${pages}$`, 'm'))
      for (const section of buildSheet(design).sections) expect(text).toContain(section.title)
    },
  )

  it('keeps every word on its page', async () => {
    const file = kept((await printSheet(buildSheet(design), 'letter')).bytes)
    const boxes = [
      ...said('pdftotext', '-bbox', file, '-').matchAll(
        /xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)"/g,
      ),
    ]
    expect(boxes.length).toBeGreaterThan(300)
    for (const [, x0, y0, x1, y1] of boxes) {
      expect(Number(x0)).toBeGreaterThan(20)
      expect(Number(y0)).toBeGreaterThan(10)
      expect(Number(x1)).toBeLessThan(612 - 20)
      expect(Number(y1)).toBeLessThan(792 - 10)
    }
  })
})

const tea = samples().find(({ name }) => name.startsWith('tea-box'))?.design as Design

it('the same sheet gives the same bytes', async () => {
  const one = await printSheet(buildSheet(structuredClone(tea)), 'a4')
  const other = await printSheet(buildSheet(structuredClone(tea)), 'a4')
  expect(Buffer.compare(one.bytes, other.bytes)).toBe(0)
})

it('says which letters it cannot print, and prints the rest', async () => {
  const reading = checkDesign({ ...tea, title: 'Tee 茶' })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  const { bytes, cautions } = await printSheet(buildSheet(reading.design), 'a4')
  expect(cautions.join(' ')).toContain('茶')
  expect(said('pdftotext', kept(bytes), '-')).toContain('Tee')
})

it('prints long notes to their end', async () => {
  const notes = `${'It took three evenings and a new blade. '.repeat(40)}The end of the notes.`
  const reading = checkDesign({ ...tea, record: { notes } })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  const { bytes } = await printSheet(buildSheet(reading.design), 'a4')
  const text = said('pdftotext', kept(bytes), '-').replace(/\s+/g, ' ')
  expect(text).toContain('The end of the notes.')
  expect(text.split('three evenings')).toHaveLength(41)
})

it('the label is a page of its own size, and its code gives the design back', async () => {
  const file = kept((await printLabel(tea)).bytes)
  const [, x = 0, y = 0] = (/Page size:\s+([\d.]+) x ([\d.]+)/.exec(said('pdfinfo', file)) ?? []).map(Number)
  expect((x / 72) * 25.4).toBeCloseTo(106, 1)
  expect((y / 72) * 25.4).toBeCloseTo(60, 1)
  said('pdftoppm', '-r', '300', '-png', '-singlefile', file, join(folder, 'label'))
  const { width, height, pixel } = readPng(readFileSync(join(folder, 'label.png')))
  const pixels = new Uint8ClampedArray(width * height * 4)
  for (let at = 0; at < width * height; at++)
    pixels.set([...pixel(at % width, Math.floor(at / width)), 255], at * 4)
  expect(readCarried(jsqr(pixels, width, height)?.data ?? '')).toEqual({ ok: true, design: tea })
})
