/** Widths of a tool in words: finer than the lines of a rule. */
import { formatLength, type Layout } from '../../../geometry/index.ts'

/** `0.10 mm`, `.004 in`. */
export function sayFine(mm: number, { display }: Layout['design']['units']): string {
  return formatLength(mm, { display, fraction: 0 }, { unit: true, decimals: display === 'mm' ? 2 : 3 })
}
