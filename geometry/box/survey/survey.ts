/** What a box's readings come to: its corners, how sure each dimension is, and which reading disagrees. */

import type { Design } from '../../design/schema.ts'
import type { Point } from '../../plane/index.ts'
import { notes } from '../../quantity/notes.ts'
import { type Adjusted, adjust, derivativesOf, lengthOf } from './adjust.ts'
import { DISTANCES, type Distance, TRIANGLES } from './distances.ts'
import { quadratic } from './normal.ts'
import {
  type Assumption,
  meansOf,
  observationsOf,
  readingsOf,
  startOf,
  type TapeReading,
} from './observations.ts'

export interface ReadingResult extends TapeReading {
  /** What the agreed shape makes of it, less what was read. */
  readonly residual: number
  /** The residual in its own standard deviations. */
  readonly standardized: number
  /** How much of an error in this reading would show: 0 nothing, 1 all of it. */
  readonly redundancy: number
  /** By how much it seems to be too long, from all that disagrees with it; 0 where nothing can be told. */
  readonly excess: number
}

export interface DistanceResult {
  /** How often it was read. */
  readonly readings: number
  readonly mean: number | null
  readonly adjusted: number
  /** Standard error of `adjusted`; what was never read has one too, if the others give it. */
  readonly standardError: number
}

export interface Disagreement {
  /** Largest standardized residual. */
  readonly worst: number
  /** The reading that disagrees, or all that might be it: where no distance is spare enough, several look alike. */
  readonly suspects: readonly ReadingResult[]
}

export interface Survey {
  readonly adjusted: Adjusted
  readonly readings: readonly ReadingResult[]
  readonly distances: Readonly<Record<Distance, DistanceResult>>
  readonly assumptions: readonly Assumption[]
  /** Readings beyond what five numbers need. */
  readonly redundancy: number
  /** Standard deviation of one reading, from the rule; and how many times as much the readings scatter, if they do. */
  readonly sigma: number
  readonly scatter: number
  readonly disagreement: Disagreement | null
}

/** Why readings make no box. */
export type SurveyTrouble =
  | {
      readonly why: 'no triangle'
      readonly long: Distance
      readonly short: readonly [Distance, Distance]
      readonly by: number
    }
  | { readonly why: 'crossed' }

export type SurveyResult =
  | { readonly ok: true; readonly survey: Survey }
  | { readonly ok: false; readonly trouble: SurveyTrouble; readonly readings: readonly TapeReading[] }

/** Baarda's critical value for one reading in a thousand called wrong though it is right; normal tables. */
export const CRITICAL = 3.29

/** Residuals so alike in size that none can be called the worst. */
const AS_BAD = 0.98

/** Within a rounding error of the file, a triangle that is flat still counts as one. */
const FLAT = 1e-6

const known = notes<Design['box'], { readonly graduation: number; readonly result: SurveyResult | null }>()

/**
 * The box as its readings have it, or why they make none; `null` where no side or diagonal and no height was read.
 * A reading counts as good to half the rule's `graduation`, taken as its standard deviation: a rule read at both ends to the
 * nearest line is off by √2 · graduation / √12 (JCGM 100:2008, 4.3.7), which is 0.41 of it. Remembered per box.
 * Example: `surveyOf({ ...box, survey: { ...none, bass: [240], treble: [241] } }, 1)`.
 */
export function surveyOf(box: Design['box'], graduation: number): SurveyResult | null {
  if (!box.survey) return null
  const before = known.get(box)
  if (before && before.graduation === graduation) return before.result
  const readings = readingsOf(box.survey)
  const heights = box.survey.heightNeckBass.length + box.survey.heightNeckTreble.length
  const any =
    readings.length + heights + box.survey.heightTailBass.length + box.survey.heightTailTreble.length
  const result = any > 0 ? surveyFrom(readings, box, graduation / 2) : null
  known.set(box, { graduation, result })
  return result
}

/** The same from any list of readings: what a slip would mean is found by leaving readings out. */
export function surveyFrom(
  readings: readonly TapeReading[],
  box: Design['box'],
  sigma: number,
): SurveyResult {
  const means = meansOf(readings)
  const broken = brokenTriangle(means)
  if (broken) return { ok: false, trouble: broken, readings }
  const { observations, assumptions } = observationsOf(readings, box, sigma)
  const adjusted = adjust(observations, startOf(means, box))
  if (!adjusted || !isConvex(adjusted.corners)) return { ok: false, trouble: { why: 'crossed' }, readings }
  return { ok: true, survey: told(adjusted, readings, means, assumptions, sigma) }
}

/** Two sides must reach past the ends of the third, whatever the tape says. */
function brokenTriangle(means: Partial<Record<Distance, number>>): SurveyTrouble | null {
  let worst: (SurveyTrouble & { why: 'no triangle' }) | null = null
  for (const triangle of TRIANGLES)
    for (const long of triangle) {
      const [a, b] = triangle.filter((one) => one !== long)
      const [most, first, second] = [means[long], a && means[a], b && means[b]]
      if (!a || !b || most === undefined || first === undefined || second === undefined) continue
      const by = most - first - second
      if (by > -FLAT && (!worst || by > worst.by)) worst = { why: 'no triangle', long, short: [a, b], by }
    }
  return worst
}

/** Do the corners turn left all the way round? */
function isConvex(corners: readonly Point[]): boolean {
  return corners.every((here, index) => {
    const [next, after] = [corners[(index + 1) % 4], corners[(index + 2) % 4]]
    if (!next || !after) return false
    const [ax, ay, bx, by] = [next.x - here.x, next.y - here.y, after.x - next.x, after.y - next.y]
    return ax * by - ay * bx > LEAST_TURN * Math.hypot(ax, ay) * Math.hypot(bx, by)
  })
}

/** Sine of the least angle of a corner: what is folded flatter is no box, and its readings agree with nothing. */
const LEAST_TURN = 0.01

function told(
  adjusted: Adjusted,
  readings: readonly TapeReading[],
  means: Partial<Record<Distance, number>>,
  assumptions: readonly Assumption[],
  sigma: number,
): Survey {
  const { corners, covariance, redundancy } = adjusted
  const results = readings.map((one, index): ReadingResult => {
    const residual = adjusted.residuals[index] ?? 0
    const shows = adjusted.redundancies[index] ?? 0
    const standardized = adjusted.standardized[index] ?? 0
    return {
      ...one,
      residual,
      standardized,
      redundancy: shows,
      excess: standardized === 0 ? 0 : -residual / shows,
    }
  })
  // What was assumed is no witness against a reading; then only readings of the same distance are.
  const judged = assumptions.length > 0 ? amongThemselves(results, means, sigma) : results
  const scatter =
    assumptions.length === 0 && adjusted.sum > mostSum(redundancy) ? Math.sqrt(adjusted.sum / redundancy) : 1
  const distances = {} as Record<Distance, DistanceResult>
  for (const of of DISTANCES)
    distances[of] = {
      readings: readings.filter((one) => one.of === of).length,
      mean: means[of] ?? null,
      adjusted: lengthOf(of, corners),
      standardError: scatter * Math.sqrt(Math.max(0, quadratic(derivativesOf(of, corners), covariance))),
    }
  return {
    adjusted,
    readings: judged,
    distances,
    assumptions,
    redundancy:
      assumptions.length > 0 ? Math.max(0, readings.length - Object.keys(means).length) : redundancy,
    sigma,
    scatter,
    disagreement: disagreementOf(judged),
  }
}

/** Readings held against the mean of their own distance only. */
function amongThemselves(
  results: readonly ReadingResult[],
  means: Partial<Record<Distance, number>>,
  sigma: number,
): ReadingResult[] {
  return results.map((one) => {
    const count = results.filter((other) => other.of === one.of).length
    const redundancy = 1 - 1 / count
    const residual = (means[one.of] ?? one.value) - one.value
    return {
      ...one,
      residual,
      redundancy,
      standardized: count > 1 ? residual / (sigma * Math.sqrt(redundancy)) : 0,
      excess: count > 1 ? -residual / redundancy : 0,
    }
  })
}

function disagreementOf(readings: readonly ReadingResult[]): Disagreement | null {
  const worst = readings.reduce((most, one) => Math.max(most, Math.abs(one.standardized)), 0)
  if (worst <= CRITICAL) return null
  return { worst, suspects: readings.filter((one) => Math.abs(one.standardized) >= AS_BAD * worst) }
}

/** 99 % point of the normal distribution. */
const ONE_IN_HUNDRED = 2.326348

/**
 * The sum of squared residuals that readings as good as the rule exceed once in a hundred boxes: the 99 % point of
 * chi-square with `redundancy` degrees of freedom (Wilson and Hilferty, 1931, good to 1 %).
 */
function mostSum(redundancy: number): number {
  if (redundancy < 1) return Number.POSITIVE_INFINITY
  const part = 2 / (9 * redundancy)
  return redundancy * (1 - part + ONE_IN_HUNDRED * Math.sqrt(part)) ** 3
}
