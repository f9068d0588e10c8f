/** What a fret in the wrong place costs, in cents; lengths in mm. */
import { finite, positive } from '../quantity/demand.ts'
import { centsOf } from '../scale/ratio.ts'

/**
 * Cents by which a note is off when its fret lies at `cut` instead of `fromNut`; sharp where it is nearer the saddle.
 * `1200 log2(L_n / (L_n − dx))`, from the definition of the cent (A. J. Ellis, 1885).
 * Example: half a millimetre too near the saddle on 635 mm, at the octave: `misplacedCents(635, 317.5, 318)` is 2.73.
 */
export function misplacedCents(length: number, fromNut: number, cut: number): number {
  const meant = positive(
    positive(length, 'the length of a string') - fromNut,
    'what a fret leaves of the string',
  )
  return centsOf(
    meant / positive(length - finite(cut, 'the place of a fret'), 'what a fret leaves of the string'),
  )
}

export interface RoundedFret {
  readonly cut: number
  /** `cut − fromNut`. */
  readonly off: number
  readonly cents: number
}

/**
 * The frets as they fall on a rule whose lines are `step` apart, and what that costs in tune. A step of 0 rounds
 * nothing. Example: on 635 mm with sixteenths of an inch the seventh fret is cut at 211.1375, 0.05 mm low, −0.2 cents.
 */
export function roundedFrets(length: number, places: readonly number[], step: number): RoundedFret[] {
  return places.map((fromNut) => {
    const cut = step > 0 ? Math.round(fromNut / step) * step : fromNut
    return { cut, off: cut - fromNut, cents: misplacedCents(length, fromNut, cut) }
  })
}
