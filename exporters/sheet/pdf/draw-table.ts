/** A table on pages: columns as wide as they need, words wrapped, rows never cut, headings on every page. */
import { FAINT, INK } from '../../pdf/ink.ts'
import { cellText, headingOf, isFigure } from '../../tables/cells.ts'
import type { Sheet, Table } from '../model.ts'
import { type Flow, LEADING } from './flow.ts'

const SIZE = 3
const HEAD = 2.6
const GAP = 3.4
/** Room over and under the words of a row. */
const AIR = 0.9
/** Least width of a column of words that is wrapped, mm. */
const LEAST = 18
/** A table of so many rows is kept on one page; of those that are to be kept, so many. */
const SHORT = 14
const KEPT = 36
/** Height of a row for a pencil, and how many of them. */
const EMPTY = 8
const EMPTY_ROWS = 6

/** A row of cells, each in lines. */
type Lines = readonly (readonly string[])[]

interface Laid {
  readonly widths: readonly number[]
  readonly head: Lines
  readonly rows: readonly Lines[]
}

function laid(flow: Flow, table: Table, sheet: Sheet): Laid {
  const { typeface } = flow.wording
  const wide = (text: string, size: number) => typeface.width(flow.wording.printable(text), size)
  const texts = table.rows.map((row) =>
    table.columns.map((column, index) => cellText(row[index] ?? null, column, sheet.units)),
  )
  const heads = table.columns.map((column) => headingOf(column, sheet.units))
  const room = flow.width - GAP * (table.columns.length - 1)
  // A heading takes two lines at most where there is room for that.
  const headingWide = (text: string) =>
    Math.max(wide(text, HEAD) * 0.56, ...text.split(' ').map((word) => wide(word, HEAD)))
  const wanted = table.columns.map((_, index) =>
    Math.max(headingWide(heads[index] ?? ''), ...texts.map((row) => wide(row[index] ?? '', SIZE))),
  )
  const widths =
    table.rows.length === 0 ? wanted.map(() => room / wanted.length) : narrowed(table, wanted, room)
  const lines = (row: readonly string[], size: number): Lines =>
    row.map((text, index) => flow.broken(text, size, (widths[index] ?? LEAST) + 0.01))
  return { widths, head: lines(heads, HEAD), rows: texts.map((row) => lines(row, SIZE)) }
}

/** Columns of words give way where all together are too wide: the widest first. */
function narrowed(table: Table, wanted: readonly number[], room: number): number[] {
  const widths = [...wanted]
  const total = () => widths.reduce((sum, one) => sum + one, 0)
  const wordy = table.columns.flatMap((column, index) => (isFigure(column) || column.whole ? [] : [index]))
  const giving = wordy.length > 0 ? wordy : widths.map((_, index) => index)
  while (total() > room + 1e-6) {
    const widest = giving.reduce((best, index) => ((widths[index] ?? 0) > (widths[best] ?? 0) ? index : best))
    const before = widths[widest] ?? 0
    const over = total() - room
    const next = Math.max(LEAST, before - Math.max(over / 4, 0.5))
    if (next >= before) return widths.map((one) => (one * room) / total())
    widths[widest] = next
  }
  return widths
}

const heightOf = (row: Lines, size: number): number =>
  Math.max(1, ...row.map((cell) => cell.length)) * size * LEADING + 2 * AIR

/** Draws a table where the cursor stands. */
export function drawTable(flow: Flow, table: Table, sheet: Sheet): void {
  const { widths, head, rows } = laid(flow, table, sheet)
  const headTall = heightOf(head, HEAD)
  const tall = rows.map((row) => heightOf(row, SIZE))
  const whole = tall.reduce((sum, one) => sum + one, 0) + headTall + 8
  const first = rows.length === 0 ? EMPTY_ROWS * EMPTY : (tall[0] ?? 0)
  flow.need(
    Math.min(
      rows.length <= (table.keep ? KEPT : SHORT)
        ? Math.max(whole, first + headTall + 8)
        : headTall + first + 12,
      flow.tallest,
    ),
  )
  flow.line(table.title, 3.3)
  const drawRow = (row: Lines, size: number, height: number, faint: boolean) => {
    const top = flow.y - AIR
    let x = flow.left
    for (const [index, cell] of row.entries()) {
      const column = table.columns[index]
      const right = column !== undefined && isFigure(column)
      const width = widths[index] ?? 0
      // Headings stand on their line, words hang from theirs.
      const start = faint ? flow.y - height + AIR + cell.length * size * LEADING : top
      for (const [number, text] of cell.entries())
        flow.ink.words(
          { x: right ? x + width : x, y: start - (number + 1) * size * LEADING + size * 0.36 },
          size,
          text,
          { anchor: right ? 'end' : 'start', colour: faint ? FAINT : INK },
        )
      x += width + GAP
    }
    flow.down(height)
    const end = Math.min(x - GAP, flow.left + flow.width)
    const line = [
      { x: flow.left, y: flow.y },
      { x: end, y: flow.y },
    ] as const
    flow.ink.lines([line], { colour: faint ? INK : '#b5b5b5', width: faint ? 0.3 : 0.13 })
  }
  const drawHead = () => drawRow(head, HEAD, headTall, true)
  drawHead()
  for (const [index, row] of rows.entries()) {
    if (flow.need(tall[index] ?? 0)) drawHead()
    drawRow(row, SIZE, tall[index] ?? 0, false)
  }
  if (rows.length === 0)
    for (let index = 0; index < EMPTY_ROWS; index++) {
      flow.need(EMPTY)
      drawRow(
        table.columns.map(() => []),
        SIZE,
        EMPTY,
        false,
      )
    }
  if (table.note !== undefined) {
    flow.down(1)
    flow.paragraph(table.note, 2.7, { faint: true, width: Math.min(flow.width, 150) })
  }
  flow.down(4)
}
