/** How far a surveyed box is out of square, and how far its walls are from one height. */
import type { Design } from '../../design/schema.ts'
import type { Point } from '../../plane/index.ts'
import { CORNERS, type Corner, HEIGHTS } from './distances.ts'
import { quadratic } from './normal.ts'
import type { Survey } from './survey.ts'

export interface CornerAngle {
  readonly corner: Corner
  /** Inside angle, radians, and its standard error. */
  readonly angle: number
  readonly standardError: number
}

export interface Squareness {
  readonly angles: readonly CornerAngle[]
  /** The corner farthest from a right angle. */
  readonly worst: CornerAngle
  /** What a square laid on the end at that corner misses at the far end of the side: millimetres, never negative. */
  readonly overLength: number
  readonly overLengthError: number
  /** First diagonal less second. */
  readonly diagonals: number
}

/** Inside angle at one of the corners, radians. */
export function angleAt(corners: readonly Point[], index: number): number {
  const [before, here, after] = [corners[(index + 3) % 4], corners[index], corners[(index + 1) % 4]]
  if (!before || !here || !after) return Number.NaN
  const a = { x: after.x - here.x, y: after.y - here.y }
  const b = { x: before.x - here.x, y: before.y - here.y }
  return Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y)
}

const STEP = 1e-4

/** Standard error of an angle by its derivatives, taken by differences over the five free coordinates. */
function angleError({ adjusted, scatter }: Survey, index: number): number {
  const row = [0, 1, 2, 3, 4].map((unknown) => {
    const at = (step: number) =>
      angleAt(
        adjusted.corners.map((corner, which) => ({
          x: corner.x + (X_OF[which] === unknown ? step : 0),
          y: corner.y + (Y_OF[which] === unknown ? step : 0),
        })),
        index,
      )
    return (at(STEP) - at(-STEP)) / (2 * STEP)
  })
  return scatter * Math.sqrt(Math.max(0, quadratic(row, adjusted.covariance)))
}

/** Which unknown each corner's coordinates are; -1: fixed. */
const X_OF = [-1, 0, 1, 3]
const Y_OF = [-1, -1, 2, 4]

/** How far out of square. Example: of a rectangle all angles are π/2 and `overLength` is 0. */
export function squarenessOf(survey: Survey): Squareness {
  const { corners } = survey.adjusted
  const angles = CORNERS.map((corner, index) => ({
    corner,
    angle: angleAt(corners, index),
    standardError: angleError(survey, index),
  }))
  const off = ({ angle }: CornerAngle) => Math.abs(angle - Math.PI / 2)
  const worst = angles.reduce((most, one) => (off(one) > off(most) + 1e-12 ? one : most))
  const { distances } = survey
  const side = (worst.corner.endsWith('bass') ? distances.bass : distances.treble).adjusted
  return {
    angles,
    worst,
    overLength: side * Math.tan(Math.min(off(worst), 1.5)),
    overLengthError: side * worst.standardError,
    diagonals: distances.diagonalFromBass.adjusted - distances.diagonalFromTreble.adjusted,
  }
}

export interface Heights {
  /** In the order of the corners; where none was read, `null`. */
  readonly at: readonly (number | null)[]
  /**
   * How far the tail-end treble corner stands above the plane through the other three, and its standard error; `null` unless all
   * four were read. Below it is negative.
   */
  readonly twist: { readonly by: number; readonly standardError: number } | null
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length

/** Wall heights at the corners; `null` where no height was read at all. */
export function heightsOf(box: Design['box'], sigma: number): Heights | null {
  const { survey } = box
  if (!survey) return null
  const lists = HEIGHTS.map((height) => survey[height])
  if (lists.every((list) => list.length === 0)) return null
  const at = lists.map((list) => (list.length > 0 ? mean(list) : null))
  const [neckBass, tailBass, tailTreble, neckTreble] = at
  if (neckBass == null || tailBass == null || tailTreble == null || neckTreble == null)
    return { at, twist: null }
  return {
    at,
    twist: {
      by: tailTreble - (tailBass + neckTreble - neckBass),
      standardError: sigma * Math.sqrt(lists.reduce((sum, list) => sum + 1 / list.length, 0)),
    },
  }
}
