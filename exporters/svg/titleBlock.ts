/** The title block: rows of cells, each with a small label and what it says (after ISO 7200). */
import { line, rectangle } from '../../geometry/index.ts'
import { BOLD, fitLine } from '../words/width.ts'
import { type Attributes, element, type Markup, titleElement } from './element.ts'
import { shapeElement } from './shape.ts'
import { FAINT_INK, textElement } from './textElement.ts'

/** Widest title block, mm: ISO 7200 gives 180, which fits a sheet of A4 with margins; ours leaves room for a bar. */
export const BLOCK_WIDTH = 168

export interface Cell {
  readonly label: string
  readonly value: string
  /** Share of the row's width; the shares of a row add up to 1. */
  readonly share: number
}

export interface Row {
  readonly height: number
  /** Size of the words, the em, mm. */
  readonly size: number
  readonly bold?: boolean
  readonly cells: readonly Cell[]
}

const LABEL_SIZE = 2
const SMALLEST = 2
const INSET = 1.6
const FRAME: Attributes = { fill: 'none', stroke: FAINT_INK, 'stroke-width': '0.1' }

export function titleBlockHeight(rows: readonly Row[]): number {
  return rows.reduce((sum, row) => sum + row.height, 0)
}

/** @param x mm, left edge; @param y mm, upper edge */
export function titleBlock(rows: readonly Row[], x: number, y: number): Markup {
  const height = titleBlockHeight(rows)
  const out: Markup[] = [shapeElement(rectangle(x, y, x + BLOCK_WIDTH, y + height), FRAME)]
  let top = y
  for (const row of rows) {
    if (top > y) out.push(shapeElement(line({ x, y: top }, { x: x + BLOCK_WIDTH, y: top }), FRAME))
    let left = x
    for (const cell of row.cells) {
      const width = cell.share * BLOCK_WIDTH
      if (left > x) out.push(shapeElement(line({ x: left, y: top }, { x: left, y: top + row.height }), FRAME))
      const bold = row.bold === true
      const room = (width - 2 * INSET) / (bold ? BOLD : 1)
      const value = fitLine(cell.value, row.size, SMALLEST, room)
      out.push(
        textElement(left + INSET, top + 1 + LABEL_SIZE, LABEL_SIZE, cell.label, { colour: FAINT_INK }),
        textElement(left + INSET, top + row.height - 1.8, value.size, value.text, { bold }),
      )
      left += width
    }
    top += row.height
  }
  return element('g', { id: 'title-block' }, [titleElement('Title block'), ...out])
}
