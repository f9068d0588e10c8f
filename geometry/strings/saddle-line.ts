/** One straight saddle for strings that each want their own setback. Millimetres, radians. */
import { finite } from '../quantity/demand.ts'

/** Strings nearer than this lie in one place, and no line through their setbacks has a direction; mm. */
const ONE_PLACE = 0.01

export interface SaddleLine {
  /** Setback on the centreline of the instrument. */
  readonly atCentre: number
  /** Angle from square across, in radians; positive where the treble side stands farther back. */
  readonly slant: number
  /** Setback of the line at each string, in the order given. */
  readonly setbacks: readonly number[]
  /** The farthest a string is from its own setback. */
  readonly farthest: number
}

/**
 * Straight line through the setbacks by least squares (C. F. Gauss; any text on statistics). `across` are the strings'
 * places, treble positive; strings in one place, or a single string, give a line square across. Throws where there is
 * no string or the two lists differ in length.
 * Example: setbacks 3 and 2 mm at −10 and 10 mm give 2.5 mm at the centre and a slant of −0.05.
 */
export function saddleLine(across: readonly number[], setbacks: readonly number[]): SaddleLine {
  const count = across.length
  if (count === 0 || setbacks.length !== count) {
    throw new RangeError(
      `a saddle line needs one setback for each string, not ${setbacks.length} for ${count}`,
    )
  }
  let middle = 0
  let mean = 0
  for (let index = 0; index < count; index++) {
    middle += finite(across[index]!, 'the place of a string') / count
    mean += finite(setbacks[index]!, 'a setback') / count
  }
  let spread = 0
  let together = 0
  for (let index = 0; index < count; index++) {
    spread += (across[index]! - middle) ** 2
    together += (across[index]! - middle) * (setbacks[index]! - mean)
  }
  const rise = spread > ONE_PLACE ** 2 ? together / spread : 0
  const atCentre = mean - rise * middle
  const onLine = across.map((y) => atCentre + rise * y)
  return {
    atCentre,
    slant: Math.atan(rise),
    setbacks: onLine,
    farthest: onLine.reduce((most, at, index) => Math.max(most, Math.abs(at - setbacks[index]!)), 0),
  }
}

/**
 * The band in which a loose saddle must be free to move: all setbacks and something to spare on both sides, from the
 * bare scale on. Example: `freeBand([1.2, 2.8], 6)` is `{ from: -4.8, to: 8.8 }`.
 */
export function freeBand(
  setbacks: readonly number[],
  spare: number,
): { readonly from: number; readonly to: number } {
  if (setbacks.length === 0) throw new RangeError('a band needs at least one setback, not 0')
  return { from: Math.min(...setbacks) - spare, to: Math.max(...setbacks) + spare }
}
