/** The strings of a starting design: a usual tuning for their count, in a key that suits the scale, and gauges for it. */
import { nearestString, usualStock } from '../strings/gauges.ts'
import { hertzOf, nameOf } from '../strings/pitch.ts'
import { tunedTo, tuningsFor } from '../strings/tunings.ts'
import type { Make } from './sections/stringing.ts'

export interface StartingStrings {
  readonly tuning: readonly string[]
  readonly gauges: readonly number[]
  readonly makes: readonly Pick<Make, 'construction'>[]
}

/** Newtons for each string, as an empty file wants it. */
const WANTED = 70
const LEAST = 50
const MOST = 95
/** Millimetres: a thicker bass string on a short scale is a cable. */
const THICKEST = 1.3
/** Of the breaking load, well under what is cared for. */
const SHARE = 0.65
/** Plain up to here where a file does not say, as `loads/strung.ts` has it. */
const THICKEST_PLAIN = 0.56
/** Semitones by which a tuning is moved where none of its usual keys suits the scale: nearest first, lower first. */
const SHIFTS = Array.from(
  { length: 48 },
  (_, index) => (index % 2 === 0 ? -1 : 1) * Math.ceil((index + 1) / 2),
)

const stock = usualStock().filter(({ make }) => make.diameter <= THICKEST)

/**
 * Pitches and gauges for `count` strings over `scale` millimetres, bass first. The first usual tuning of the count that
 * steel strings sold singly can take at an even pull, in its usual keys first. More than six strings have no usual
 * tuning: then nothing is stated. Common practice, no source.
 * Example: three strings over 635 mm are `G2 D3 G3`.
 */
export function startingStrings(count: number, scale: number): StartingStrings {
  const nothing = { tuning: [], gauges: [], makes: [] }
  const tunings = tuningsFor(count)
  for (const tuning of tunings)
    for (const key of tuning.keys) {
      const found = strungAt(tunedTo(tuning, key), scale)
      if (found) return found
    }
  const [first] = tunings
  if (!first) return nothing
  for (const shift of SHIFTS) {
    const found = strungAt(tunedTo(first, first.keys[0] + shift), scale)
    if (found) return found
  }
  return nothing
}

function strungAt(midis: readonly number[], scale: number): StartingStrings | null {
  const chosen = midis.flatMap((midi) => {
    const best = nearestString(stock, hertzOf(midi), scale, WANTED, SHARE)
    return best && best.tension >= LEAST && best.tension <= MOST ? [best.stock.make] : []
  })
  if (chosen.length < midis.length) return null
  const usual = chosen.every(
    ({ construction, diameter }) => construction === (diameter > THICKEST_PLAIN ? 'wound' : 'plain'),
  )
  return {
    tuning: midis.map((midi) => nameOf(midi)),
    gauges: chosen.map(({ diameter }) => Math.round(diameter * 1e4) / 1e4),
    makes: usual ? [] : chosen.map(({ construction }) => ({ construction })),
  }
}
