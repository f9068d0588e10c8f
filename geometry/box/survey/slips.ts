/**
 * Slips of the pen that have a shape: an inch too many or too few, inches taken for millimetres or the other way about,
 * centimetres for millimetres. They are recognised and asked about; nothing here changes a reading.
 */

import type { Design } from '../../design/schema.ts'
import { notes } from '../../quantity/notes.ts'
import { lengthOf } from './adjust.ts'
import { ALIKE, type TapeReading } from './observations.ts'
import { type SurveyResult, surveyFrom } from './survey.ts'

const INCH = 25.4

export type SlipKind =
  | 'an inch too long'
  | 'an inch too short'
  | 'inches for millimetres'
  | 'millimetres for inches'
  | 'centimetres for millimetres'

export interface Slip {
  readonly reading: TapeReading
  readonly kind: SlipKind
  /** What it would be without the slip. */
  readonly meant: number
  /** What the other readings make of this distance, and how sure they are of it. */
  readonly others: number
  readonly othersError: number
  /** How far the reading could lie from that before it was doubted. */
  readonly allowed: number
}

/** What a wrong entry was meant to be. */
const SLIPS: readonly (readonly [SlipKind, (read: number) => number])[] = [
  ['an inch too long', (read) => read - INCH],
  ['an inch too short', (read) => read + INCH],
  ['inches for millimetres', (read) => read * INCH],
  ['millimetres for inches', (read) => read / INCH],
  ['centimetres for millimetres', (read) => read * 10],
]

/** A correction is believed within so many standard deviations of what the others say. */
const BELIEVED = 3
/** A reading is only doubted when the others contradict it by so many. */
const DOUBTED = 6
/** More readings than these are not gone through one by one: the work grows with their square. */
const MOST_READINGS = 60

const known = notes<SurveyResult, readonly Slip[]>()

/**
 * The slips that would explain why readings disagree, the likeliest first; none where they agree. Each is tried by leaving the
 * reading out and asking the others. Remembered with the result.
 * Example: 265.4 among 240.0, 239.8 and diagonals that fit 240 is "an inch too long".
 */
export function slipsOf(
  result: SurveyResult,
  readings: readonly TapeReading[],
  box: Design['box'],
  sigma: number,
): readonly Slip[] {
  const before = known.get(result)
  if (before) return before
  const wrong = !result.ok || result.survey.disagreement !== null || assumptionStrained(result)
  const slips = wrong && readings.length <= MOST_READINGS ? searched(readings, box, sigma) : []
  known.set(result, slips)
  return slips
}

/** Sides that are taken to be alike and are far from it: nothing else could show a slip in a box measured with few readings. */
function assumptionStrained(result: SurveyResult & { ok: true }): boolean {
  const { distances, assumptions } = result.survey
  if (assumptions.length === 0) return false
  const apart = (a: number, b: number) => Math.abs(a - b) > DOUBTED * ALIKE
  return (
    apart(distances.bass.adjusted, distances.treble.adjusted) ||
    apart(distances.neckEnd.adjusted, distances.tailEnd.adjusted)
  )
}

interface Candidate extends Slip {
  /** How far from a rectangle the box is without the slip: the less, the likelier. */
  readonly crooked: number
}

function searched(readings: readonly TapeReading[], box: Design['box'], sigma: number): Slip[] {
  const found: Candidate[] = []
  for (const reading of readings) {
    const without = surveyFrom(
      readings.filter((one) => one !== reading),
      box,
      sigma,
    )
    if (!without.ok) continue
    const { adjusted, standardError } = without.survey.distances[reading.of]
    const error = Math.hypot(sigma, standardError)
    if (Math.abs(reading.value - adjusted) <= DOUBTED * error) continue
    for (const [kind, mend] of SLIPS) {
      const meant = mend(reading.value)
      if (meant <= 0 || Math.abs(meant - adjusted) > BELIEVED * error) continue
      const mended = surveyFrom(
        readings.map((one) => (one === reading ? { ...one, value: meant } : one)),
        box,
        sigma,
      )
      if (!mended.ok || mended.survey.disagreement) continue
      const { corners } = mended.survey.adjusted
      const crooked =
        Math.abs(lengthOf('bass', corners) - lengthOf('treble', corners)) +
        Math.abs(lengthOf('neckEnd', corners) - lengthOf('tailEnd', corners))
      found.push({
        reading,
        kind,
        meant,
        others: adjusted,
        othersError: standardError,
        allowed: DOUBTED * error,
        crooked,
      })
    }
  }
  return found.sort((a, b) => a.crooked - b.crooked).map(({ crooked: _told, ...slip }) => slip)
}
