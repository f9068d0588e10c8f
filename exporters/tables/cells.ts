/** Cells as words: every number of the sheet becomes text here, in the builder's unit. */
import {
  formatAngle,
  formatFine,
  formatLength,
  formatShare,
  type Units,
  unitName,
} from '../../geometry/index.ts'
import type { Cell, Column, Measure } from './table.ts'

/** 1 lbf = 4.4482216152605 N (NIST SP 811, appendix B). */
const POUND_FORCE = 4.4482216152605

/** What stands where nothing is known. */
export const NOTHING = '–'

/** A figure with a true minus sign; with a plus where wanted, unless it shows nought. */
function figure(value: number, decimals: number, signed: boolean): string {
  const plain = Math.abs(value).toFixed(decimals)
  if (Number(plain) === 0) return plain
  return value < 0 ? `−${plain}` : signed ? `+${plain}` : plain
}

/**
 * A cell as it is shown, without its unit, which stands in the heading.
 * Example: `cellText(35.64, { as: 'length', … }, inches)` is `1 13/32`.
 */
export function cellText(
  cell: Cell,
  { as, signed = false }: Pick<Column, 'as' | 'signed'>,
  units: Units,
): string {
  if (cell === null) return NOTHING
  if (typeof cell === 'string') return cell
  switch (as) {
    case 'words':
    case 'count':
      return String(cell)
    case 'length':
      return plus(formatLength(cell, units), cell, signed)
    case 'exact':
    case 'gauge':
      return plus(formatFine(cell, units), cell, signed)
    case 'cents':
      return figure(cell, 1, signed)
    case 'hertz':
      return figure(cell, 2, false)
    case 'pull':
      return units.display === 'mm'
        ? figure(cell, 0, false)
        : `${figure(cell, 0, false)} (${figure(cell / POUND_FORCE, 1, false)})`
    case 'share':
      return formatShare(cell)
    case 'angle':
      return formatAngle(cell)
  }
}

const plus = (text: string, value: number, signed: boolean): string =>
  signed && value > 0 && /[1-9]/.test(text) ? `+${text}` : text

/** A pull in a sentence. Example: `pullWords(71.2, inches)` is `71 N (16.0 lb)`. */
export const pullWords = (newtons: number, { display }: Units): string =>
  display === 'mm'
    ? `${figure(newtons, 0, false)} N`
    : `${figure(newtons, 0, false)} N (${figure(newtons / POUND_FORCE, 1, false)} lb)`

/** What the heading adds to a column's title: its unit. */
export function unitOf(as: Measure, units: Units): string {
  switch (as) {
    case 'words':
    case 'count':
    case 'share':
    case 'angle':
      return ''
    case 'length':
    case 'exact':
    case 'gauge':
      return unitName(units)
    case 'cents':
      return 'cents'
    case 'hertz':
      return 'Hz'
    case 'pull':
      return units.display === 'mm' ? 'N' : 'N (lb)'
  }
}

/** Title and unit. Example: `from the nut, in`. */
export function headingOf({ title, as }: Column, units: Units): string {
  const unit = unitOf(as, units)
  return unit === '' ? title : `${title}, ${unit}`
}

/** Figures stand to the right of their column, words to the left. */
export const isFigure = ({ as }: Column): boolean => as !== 'words'
