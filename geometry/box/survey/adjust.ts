/**
 * Least squares of a quadrilateral: the four corners that agree best with every distance read.
 *
 * Parametric adjustment with weights 1/σ², solved by Gauss-Newton with halved steps; residuals, covariance,
 * redundancy numbers and standardized residuals after Ghilani, "Adjustment Computations" (chapters 11, 14, 21), and
 * Baarda, "A testing procedure for use in geodetic networks", 1968; all from memory. The textbook case of a braced
 * quadrilateral with its six lengths is among the tests.
 */
import type { Point } from '../../plane/index.ts'
import { type Distance, ENDS } from './distances.ts'
import { inverseOf, type Matrix, quadratic } from './normal.ts'

/** One reading of a distance; or, with `less`, what a distance exceeds another by: that is assumed, never read. */
export interface Observation {
  readonly of: Distance
  readonly less?: Distance
  readonly value: number
  /** Standard deviation, millimetres. */
  readonly sigma: number
}

export interface Adjusted {
  /** Counter-clockwise from neck-end bass, which lies at 0, 0 with the bass side along x. */
  readonly corners: readonly [Point, Point, Point, Point]
  /** Of the five free coordinates x1, x2, y2, x3, y3, for the σ given. */
  readonly covariance: Matrix
  /** Adjusted less observed, in the order of the observations. */
  readonly residuals: readonly number[]
  /** How much of an error each observation shows in its own residual: 0 nothing, 1 all of it. They sum to `redundancy`. */
  readonly redundancies: readonly number[]
  /** Residuals in units of their own standard deviations; 0 where a residual can show nothing. */
  readonly standardized: readonly number[]
  readonly redundancy: number
  /** Sum of squared residuals over σ². */
  readonly sum: number
}

const UNKNOWNS = 5
/** Millimetres: no corner of a box that anybody carries lies farther from another. */
const FARTHEST = 1e5
const MOST_STEPS = 60
const MOST_HALVINGS = 30
/** Millimetres: a step shorter than this is the end. */
const SETTLED = 1e-10
/** A residual that shows less than this share of an error cannot point at it. */
const SHOWS_NOTHING = 1e-6

type Unknowns = readonly number[]

const cornersOf = (p: Unknowns): [Point, Point, Point, Point] => [
  { x: 0, y: 0 },
  { x: p[0] ?? 0, y: 0 },
  { x: p[1] ?? 0, y: p[2] ?? 0 },
  { x: p[3] ?? 0, y: p[4] ?? 0 },
]

/** Where the coordinates of each corner stand among the unknowns; -1: fixed. */
const PLACES: readonly (readonly [number, number])[] = [
  [-1, -1],
  [0, -1],
  [1, 2],
  [3, 4],
]

/** Length of a distance between `corners`. Example: `lengthOf('bass', corners)`. */
export function lengthOf(distance: Distance, corners: readonly Point[]): number {
  const [from, to] = ENDS[distance]
  const [a, b] = [corners[from], corners[to]]
  return a && b ? Math.hypot(b.x - a.x, b.y - a.y) : Number.NaN
}

/** Derivatives of a distance by the five unknowns. */
export function derivativesOf(distance: Distance, corners: readonly Point[]): number[] {
  const row = new Array<number>(UNKNOWNS).fill(0)
  const [from, to] = ENDS[distance]
  const [a, b] = [corners[from], corners[to]]
  if (!a || !b) return row
  const long = Math.max(Math.hypot(b.x - a.x, b.y - a.y), 1e-9)
  const along = { x: (b.x - a.x) / long, y: (b.y - a.y) / long }
  for (const [corner, sign] of [
    [from, -1],
    [to, 1],
  ] as const) {
    const [x, y] = PLACES[corner] ?? [-1, -1]
    if (x >= 0) row[x] = (row[x] ?? 0) + sign * along.x
    if (y >= 0) row[y] = (row[y] ?? 0) + sign * along.y
  }
  return row
}

const shown = ({ of, less }: Observation, corners: readonly Point[]): number =>
  lengthOf(of, corners) - (less ? lengthOf(less, corners) : 0)

function rowOf({ of, less }: Observation, corners: readonly Point[]): number[] {
  const row = derivativesOf(of, corners)
  if (!less) return row
  const other = derivativesOf(less, corners)
  return row.map((value, index) => value - (other[index] ?? 0))
}

const misfit = (observations: readonly Observation[], corners: readonly Point[]): number =>
  observations.reduce((sum, one) => sum + ((shown(one, corners) - one.value) / one.sigma) ** 2, 0)

/** The normal matrix and the right side for the step from here. */
function normalAt(observations: readonly Observation[], corners: readonly Point[]) {
  const matrix = Array.from({ length: UNKNOWNS }, () => new Array<number>(UNKNOWNS).fill(0))
  const right = new Array<number>(UNKNOWNS).fill(0)
  for (const one of observations) {
    const row = rowOf(one, corners)
    const weight = 1 / one.sigma ** 2
    const gap = one.value - shown(one, corners)
    for (let i = 0; i < UNKNOWNS; i++) {
      const scaled = weight * (row[i] ?? 0)
      right[i] = (right[i] ?? 0) + scaled * gap
      const line = matrix[i]
      if (line) for (let k = 0; k < UNKNOWNS; k++) line[k] = (line[k] ?? 0) + scaled * (row[k] ?? 0)
    }
  }
  return { matrix, right }
}

/**
 * The quadrilateral that agrees best, from a start near it; `null` where the observations do not determine one.
 * Example: six readings of a square make its four corners, and a redundancy of 1.
 */
export function adjust(
  observations: readonly Observation[],
  start: readonly [Point, Point, Point, Point],
): Adjusted | null {
  let p: Unknowns = [start[1].x, start[2].x, start[2].y, start[3].x, start[3].y]
  let sum = misfit(observations, cornersOf(p))
  for (let step = 0; step < MOST_STEPS; step++) {
    const { matrix, right } = normalAt(observations, cornersOf(p))
    const inverse = inverseOf(matrix)
    if (!inverse) return null
    const way = inverse.map((line) => line.reduce((total, value, k) => total + value * (right[k] ?? 0), 0))
    let share = 1
    let next = p
    let better = sum
    for (let halving = 0; halving < MOST_HALVINGS; halving++, share /= 2) {
      next = p.map((value, index) => value + share * (way[index] ?? 0))
      better = misfit(observations, cornersOf(next))
      if (better <= sum) break
    }
    if (!(better <= sum)) break
    p = next
    sum = better
    if (way.every((value) => Math.abs(value * share) < SETTLED)) break
  }
  // Readings that agree with nothing drive the corners farther and farther apart.
  return p.every((value) => Math.abs(value) < FARTHEST) ? told(observations, cornersOf(p)) : null
}

/** Everything that follows at the corners found. */
function told(observations: readonly Observation[], corners: Adjusted['corners']): Adjusted | null {
  const covariance = inverseOf(normalAt(observations, corners).matrix)
  if (!covariance) return null
  const residuals = observations.map((one) => shown(one, corners) - one.value)
  const redundancies = observations.map(
    (one) => 1 - quadratic(rowOf(one, corners), covariance) / one.sigma ** 2,
  )
  const standardized = observations.map((one, index) => {
    const shows = redundancies[index] ?? 0
    return shows > SHOWS_NOTHING ? (residuals[index] ?? 0) / (one.sigma * Math.sqrt(shows)) : 0
  })
  return {
    corners,
    covariance,
    residuals,
    redundancies,
    standardized,
    redundancy: observations.length - UNKNOWNS,
    sum: misfit(observations, corners),
  }
}
