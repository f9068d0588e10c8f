/** What a DXF is about as a whole, and how its numbers are written. */
import type { Bounds } from '../../geometry/index.ts'
import type { LengthUnit } from '../drawing/layers.ts'
import { INCH_DIGITS, lengthLabel, MILLIMETRE_DIGITS } from '../numbers.ts'

export interface FileFacts {
  readonly unit: LengthUnit
  /** The first line of the file, ASCII. */
  readonly comment: string
  /** The box of all that is drawn, in the unit of the file. */
  readonly extent: Bounds
}

/**
 * A real number of a DXF: plain decimals with a point, as fine as the unit of the file asks for.
 *
 * @param value in the unit of the file
 * @throws RangeError naming `what` and the value when it is not finite or not below a million
 * @example realText(5, 'A radius', 'mm') // '5.0'
 */
export function realText(value: number, what: string, unit: LengthUnit): string {
  return lengthLabel(value, what, unit === 'mm' ? MILLIMETRE_DIGITS : INCH_DIGITS)
}
