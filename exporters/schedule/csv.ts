/** The schedule as a table that any spreadsheet opens: RFC 4180, one hole to a row. */
import {
  type Design,
  formatLength,
  type ScheduleRow,
  scheduleOf,
  solve,
  type Units,
} from '../../geometry/index.ts'
import { harmless } from '../tables/csv.ts'

type Cell = string | number | null

interface Column {
  readonly head: string
  cell(row: ScheduleRow, units: Units): Cell
}

/** A millionth is finer than any drill, and the same on every machine. */
const tidy = (mm: number): number => (Math.round(mm * 1e6) || 0) / 1e6
/** With its unit, or a spreadsheet makes a day in March of 3/8. */
const shown = (mm: number, units: Units) => formatLength(mm, units, { unit: true })

const COLUMNS: readonly Column[] = [
  { head: 'order', cell: (row) => row.order },
  { head: 'part', cell: (row) => row.partTitle },
  { head: 'worked', cell: (row) => row.seen },
  { head: 'work', cell: (row) => row.work },
  { head: 'what', cell: (row) => row.of },
  { head: 'how many', cell: (row) => row.count },
  { head: 'edge', cell: (row) => row.edge.from },
  { head: 'from edge mm', cell: (row) => tidy(row.edge.distance) },
  { head: 'from edge on the rule', cell: (row, units) => shown(row.edge.distance, units) },
  { head: 'edge towards', cell: (row) => row.edge.towards },
  { head: 'measured to', cell: (row) => row.at },
  { head: 'line', cell: (row) => row.line.from },
  { head: 'from line mm', cell: (row) => tidy(row.line.distance) },
  { head: 'from line on the rule', cell: (row, units) => shown(row.line.distance, units) },
  { head: 'line towards', cell: (row) => row.line.towards },
  { head: 'diameter mm', cell: (row) => row.diameter && tidy(row.diameter) },
  {
    head: 'diameter on the rule',
    cell: (row, units) => row.diameter && shown(row.diameter, units),
  },
  { head: 'drill', cell: (row) => row.choice?.drill.size ?? '' },
  { head: 'drill series', cell: (row) => row.choice?.drill.series ?? '' },
  {
    head: 'tool',
    cell: (row) => (row.work === 'countersink' ? 'countersink' : (row.choice?.drill.tool ?? '')),
  },
  { head: 'drill mm', cell: (row) => row.choice && tidy(row.choice.drill.diameter) },
  { head: 'drill over mm', cell: (row) => row.choice && tidy(row.choice.over) },
  { head: 'along mm', cell: (row) => row.size && tidy(row.size.along) },
  { head: 'across mm', cell: (row) => row.size && tidy(row.size.across) },
  { head: 'depth mm', cell: (row) => tidy(row.depth) },
  { head: 'depth on the rule', cell: (row, units) => shown(row.depth, units) },
  { head: 'through', cell: (row) => (row.through ? 'yes' : 'no') },
  { head: 'over an edge', cell: (row) => (row.open ? 'yes' : 'no') },
]

/** For several designs in one table: a first column with the file, and the heading only once. */
export interface CsvOptions {
  readonly file?: string
  readonly heading?: boolean
}

/**
 * The drill and cut schedule of a design as CSV after RFC 4180: comma, double quotes where needed, lines ended by CRLF,
 * one heading row. Numbers have a point and stand in the unit their heading names; `on the rule` is the builder's
 * unit. Never throws for a valid design.
 * Example: `scheduleCsv(design).split('\r\n')[0]` begins `order,part,worked`.
 */
export function scheduleCsv(design: Design, { file, heading = true }: CsvOptions = {}): string {
  const first = (cell: Cell): Cell[] => (file === undefined ? [] : [cell])
  const rows = scheduleOf(solve(design)).map((row) => [
    ...first(file ?? ''),
    ...COLUMNS.map(({ cell }) => cell(row, design.units)),
  ])
  const lines = heading ? [[...first('file'), ...COLUMNS.map(({ head }) => head)], ...rows] : rows
  return lines.map((cells) => `${cells.map(written).join(',')}\r\n`).join('')
}

function written(cell: Cell): string {
  if (cell === null) return ''
  const text = typeof cell === 'number' ? String(cell) : harmless(cell)
  return /[",]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}
