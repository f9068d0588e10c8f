/** The build sheet as a printer gets it: printed by Chromium on both papers, read by Poppler, which is not ours. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { reportOf } from '../../exporters/report.ts'
import { buildSheet } from '../../exporters/sheet/build-sheet.ts'
import { writeSheetHtml } from '../../exporters/sheet/html/write-html.ts'
import type { Design } from '../../geometry/index.ts'
import { newContext } from '../support/browser.ts'
import { needPoppler } from '../support/outsideTools.ts'
import { samples } from '../support/samples.ts'

const folder = mkdtempSync(join(tmpdir(), 'lidwright-print-'))

beforeAll(needPoppler)
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const said = (command: string, ...words: string[]): string => {
  const { stdout, stderr, status } = spawnSync(command, words, { encoding: 'utf8' })
  if (status !== 0) throw new Error(`${command}: ${stderr}`)
  return stdout
}

async function printed(design: Design, format: 'A4' | 'Letter'): Promise<string> {
  const context = await newContext()
  const page = await context.newPage()
  const requests: string[] = []
  page.on('request', (request) => requests.push(request.url()))
  const file = join(folder, 'sheet.html')
  writeFileSync(file, writeSheetHtml(buildSheet(design)))
  await page.goto(`file://${file}`)
  const path = join(folder, `${format}.pdf`)
  await page.pdf({ path, format, printBackground: true })
  await context.close()
  expect(requests).toHaveLength(1)
  return path
}

const names = ['tea-box-three-strings', 'cutlery-box-four-strings', 'wine-case-six-strings']
const chosen = samples().filter(({ name }) => names.includes(name))

// Page sizes in points of 1/72 in: ISO 216 A4 is 210 × 297 mm, ANSI Letter 8.5 × 11 in.
const PAPERS = [
  ['A4', 210, 297],
  ['Letter', 215.9, 279.4],
] as const

describe.each(chosen.map(({ name, design }) => ({ name, design })))('$name', ({ design }) => {
  test.each(PAPERS)(
    'on %s: the paper’s size, every fret on one line, page numbers on every page',
    async (paper, wide, tall) => {
      const file = await printed(design, paper)
      const info = said('pdfinfo', file)
      const [, x = 0, y = 0] = (/Page size:\s+([\d.]+) x ([\d.]+)/.exec(info) ?? []).map(Number)
      expect((x / 72) * 25.4).toBeCloseTo(wide, 0)
      expect((y / 72) * 25.4).toBeCloseTo(tall, 0)
      const pages = Number(/Pages:\s+(\d+)/.exec(info)?.[1])
      const text = said('pdftotext', '-layout', file, '-')
      const fine = (mm: number) => (design.units.display === 'mm' ? mm.toFixed(2) : (mm / 25.4).toFixed(3))
      // A row that a page break cuts in two does not come out as one line.
      for (const fret of reportOf(design).frets.filter((one) => one.number > 0))
        expect(text).toMatch(
          new RegExp(`^ *${fret.number} +${fine(fret.fromNut).replace('.', '\\.')} +\\S`, 'm'),
        )
      for (let page = 1; page <= pages; page++) expect(text).toMatch(new RegExp(`${page} ?/ ?${pages}$`, 'm'))
      expect(text).toContain(design.title)
    },
  )
})
