/**
 * Tables as CSV after RFC 4180: commas, CRLF, quotes doubled, one heading line, UTF-8.
 *
 * A spreadsheet runs a cell that begins with a formula sign. Words that could be run are led by an apostrophe, so
 * that they are shown and not reckoned; figures are left as they are, so that they can be reckoned with.
 */
import type { Units } from '../../geometry/index.ts'
import { numberText } from '../numbers.ts'
import { plainLine } from '../words/plain.ts'
import { cellText, unitOf } from './cells.ts'
import type { Cell, Column, Table } from './table.ts'

/** What spreadsheets take for the beginning of a formula, their full-width twins among them. */
const FORMULA = /^[=+\-@|%\t\r\n＝＋－＠]/u

/** Plain figures as we write them: nothing a spreadsheet could run. */
const FIGURE = /^-?\d+(\.\d+)?$/

/** Words made harmless: one line, no marks that turn the reading, no beginning of a formula. */
export function harmless(text: string): string {
  const line = plainLine(text, Number.POSITIVE_INFINITY)
  return FORMULA.test(line) && !FIGURE.test(line) ? `'${line}` : line
}

const quoted = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)

/** The unit a bare figure of a CSV is in. */
const RAW_UNITS: Partial<Record<Column['as'], string>> = {
  length: 'mm',
  exact: 'mm',
  gauge: 'mm',
  cents: 'cents',
  hertz: 'Hz',
  pull: 'N',
  share: 'of 1',
  angle: 'radians',
}

/** Headings: a column of lengths comes twice, in millimetres and as the builder's rule shows it. */
function headings(column: Column): string[] {
  const unit = RAW_UNITS[column.as]
  const own = unit === undefined ? column.title : `${column.title} (${unit})`
  return onRule(column) ? [own, `${column.title} (on the rule)`] : [own]
}

const onRule = ({ as }: Column): boolean => as === 'length' || as === 'gauge'

function cells(cell: Cell, column: Column, units: Units): string[] {
  const own =
    cell === null
      ? ''
      : typeof cell === 'number'
        ? numberText(cell, `${column.title} of a table`)
        : harmless(cell)
  return onRule(column) ? [own, shown(cell, column, units)] : [own]
}

/** As the rule shows it, with its unit: a spreadsheet would make a day in March of 3/8. */
function shown(cell: Cell, column: Column, units: Units): string {
  if (cell === null) return ''
  const text = harmless(cellText(cell, column, units))
  return typeof cell === 'number' ? `${text} ${unitOf(column.as, units)}` : text
}

/**
 * A table as the text of a CSV file. The same table gives the same text.
 * Throws a RangeError for a number that is not finite.
 * Example: a fret table begins `Fret,From the nut (mm),Set on the rule (mm),Set on the rule (on the rule)`.
 */
export function writeCsv({ columns, rows }: Table, units: Units): string {
  const line = (texts: readonly string[]) => `${texts.map(quoted).join(',')}\r\n`
  const head = line(columns.flatMap(headings).map(harmless))
  return (
    head +
    rows
      .map((row) => line(columns.flatMap((column, index) => cells(row[index] ?? null, column, units))))
      .join('')
  )
}
