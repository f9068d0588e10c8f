/** The files of a build sheet: the page, a CSV of every table, and one JSON of everything. */
import type { Design } from '../../geometry/index.ts'
import { inOrder, partsOf, solve } from '../../geometry/index.ts'
import { tidied } from '../report.ts'
import { writeCsv } from '../tables/csv.ts'
import type { TemplateFile } from '../templates.ts'
import { slug } from '../words/plain.ts'
import { buildSheet } from './build-sheet.ts'
import { writeSheetHtml } from './html/write-html.ts'
import { type Sheet, tablesOf } from './model.ts'
import { sourceOf } from './source.ts'

/** Raised when a key of the JSON of everything changes its meaning or goes away. */
export const EVERYTHING_VERSION = 1

/** A CSV of every table of a sheet, by its name: `tea-box-frets.csv`. */
export const tableFiles = (sheet: Sheet): TemplateFile[] =>
  tablesOf(sheet).map((table) => ({
    name: `${slug(sheet.title, 'sheet')}-${table.id}.csv`,
    text: writeCsv(table, sheet.units),
  }))

/**
 * Everything there is about a design as one JSON text: the design itself, the report, the tables of the sheet and the
 * parts with their operations. Lengths in millimetres, angles in radians.
 */
export function everythingText(design: Design, sheet: Sheet): string {
  const tables = tablesOf(sheet).map(({ id, title, columns, rows }) => ({
    id,
    title,
    columns: columns.map(({ key, title: heading, as }) => ({ key, title: heading, as })),
    rows,
  }))
  return `${JSON.stringify(
    {
      format: 'lidwright-everything',
      version: EVERYTHING_VERSION,
      checksum: sheet.checksum,
      design: inOrder(design),
      report: sourceOf(design).report,
      ...tidied({ tables, parts: partsOf(solve(design)) }),
    },
    null,
    1,
  )}\n`
}

/** The page, the tables and the JSON of everything. The same design gives the same bytes. */
export function sheetFiles(design: Design): TemplateFile[] {
  const sheet = buildSheet(design)
  const start = slug(sheet.title, 'sheet')
  return [
    { name: `${start}-build-sheet.html`, text: writeSheetHtml(sheet) },
    ...tableFiles(sheet),
    { name: `${start}-everything.json`, text: everythingText(design, sheet) },
  ]
}
