/** From the readings of a box to what is adjusted: readings with their σ, what has to be assumed, and a start. */
import type { Design } from '../../design/schema.ts'
import type { Point } from '../../plane/index.ts'
import type { Observation } from './adjust.ts'
import { DISTANCES, type Distance, OPPOSITE } from './distances.ts'

/** Five distances between four corners make a quadrilateral; with fewer, something has to be taken for granted. */
const ENOUGH = 5

/**
 * How well opposite sides, or the two diagonals, of a box that nobody measured agree, as a standard deviation in
 * millimetres. Common practice, no source: two boxes of one make differ by 1 to 2 mm, old ones warp by more.
 */
export const ALIKE = 3

/** One reading, by its place in the file. */
export interface TapeReading {
  readonly of: Distance
  readonly index: number
  readonly value: number
}

/** What was taken for granted because it was not measured. */
export interface Assumption {
  readonly of: Distance
  /** `opposite`: as long as what lies over against it. `stated`: as the box's length or width says. */
  readonly as: 'opposite' | 'stated'
}

type Box = Design['box']

export const readingsOf = (survey: NonNullable<Box['survey']>): TapeReading[] =>
  DISTANCES.flatMap((of) => survey[of].map((value, index) => ({ of, index, value })))

/** Readings as observations of one σ, and behind them what has to be assumed for want of readings. */
export function observationsOf(readings: readonly TapeReading[], box: Box, sigma: number) {
  const read = new Set(readings.map((one) => one.of))
  const observed = readings.map(({ of, value }): Observation => ({ of, value, sigma }))
  if (read.size >= ENOUGH) return { observations: observed, assumptions: [] }
  const assumptions: Assumption[] = []
  const assumed: Observation[] = []
  const alike = (of: Distance) => {
    assumptions.push({ of, as: 'opposite' })
    assumed.push({ of, less: OPPOSITE[of], value: 0, sigma: ALIKE })
  }
  for (const [of, stated] of [
    ['bass', box.length],
    ['treble', box.length],
    ['neckEnd', box.width],
    ['tailEnd', box.width],
  ] as const) {
    if (read.has(of)) continue
    if (read.has(OPPOSITE[of])) alike(of)
    else {
      assumptions.push({ of, as: 'stated' })
      assumed.push({ of, value: stated, sigma: ALIKE })
    }
  }
  if (!read.has('diagonalFromBass')) alike('diagonalFromBass')
  else if (!read.has('diagonalFromTreble')) alike('diagonalFromTreble')
  return { observations: [...observed, ...assumed], assumptions }
}

/** Mean of the readings of each distance, where there are any. */
export function meansOf(readings: readonly TapeReading[]): Partial<Record<Distance, number>> {
  const means: Partial<Record<Distance, number>> = {}
  for (const of of DISTANCES) {
    const values = readings.filter((one) => one.of === of).map((one) => one.value)
    if (values.length > 0) means[of] = values.reduce((sum, value) => sum + value, 0) / values.length
  }
  return means
}

/** The third corner of a triangle, to the left of the way from `a` to `b`: law of cosines. */
function apex(a: Point, b: Point, fromA: number, fromB: number): Point {
  const base = Math.max(Math.hypot(b.x - a.x, b.y - a.y), 1e-9)
  const along = (fromA ** 2 - fromB ** 2 + base ** 2) / (2 * base)
  const across = Math.sqrt(Math.max(fromA ** 2 - along ** 2, 1e-6))
  const u = { x: (b.x - a.x) / base, y: (b.y - a.y) / base }
  return { x: a.x + along * u.x - across * u.y, y: a.y + along * u.y + across * u.x }
}

/** Corners near enough to begin with: triangles where they were measured, a rectangle where not. */
export function startOf(
  means: Partial<Record<Distance, number>>,
  box: Box,
): readonly [Point, Point, Point, Point] {
  const length = means.bass ?? means.treble ?? box.length
  const width = means.neckEnd ?? means.tailEnd ?? box.width
  const first = { x: 0, y: 0 }
  const second = { x: length, y: 0 }
  const { treble, neckEnd, tailEnd, diagonalFromBass, diagonalFromTreble } = means
  let third: Point | null =
    diagonalFromBass && tailEnd ? apex(first, second, diagonalFromBass, tailEnd) : null
  let fourth: Point | null =
    neckEnd && diagonalFromTreble ? apex(first, second, neckEnd, diagonalFromTreble) : null
  if (third && !fourth && neckEnd && treble) fourth = apex(first, third, neckEnd, treble)
  if (fourth && !third && treble && tailEnd) third = apex(fourth, second, treble, tailEnd)
  return [first, second, third ?? { x: treble ?? length, y: width }, fourth ?? { x: 0, y: width }]
}
