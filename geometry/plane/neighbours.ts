/**
 * Who lies near whom, without asking every pair.
 */
import Flatbush from 'flatbush'
import type { Bounds, Contour } from './contour.ts'
import { gap } from './gap.ts'
import { bounds } from './measure.ts'
import { boxGapSquared } from './spot.ts'

/** An index of boxes by place. */
export interface Neighbours {
  /**
   * Numbers of the boxes that come within `grow` mm of `box` in x and in y, ascending; touching counts.
   * A box that is itself in the index finds itself.
   */
  near(box: Bounds, grow?: number): number[]
}

/**
 * An index of boxes, numbered in the order given. Throws for a box with a number that is not finite.
 *
 * @example neighbours([bounds(a), bounds(b)]).near(bounds(c), 3) // those that may be within 3 mm of c
 */
export function neighbours(boxes: readonly Bounds[]): Neighbours {
  if (boxes.length === 0) return { near: () => [] }
  const tree = new Flatbush(boxes.length)
  for (const { minX, minY, maxX, maxY } of boxes) {
    if (!Number.isFinite(minX + minY + maxX + maxY)) {
      throw new RangeError(`A box needs four finite sides, not x ${minX} to ${maxX}, y ${minY} to ${maxY}.`)
    }
    tree.add(minX, minY, maxX, maxY)
  }
  tree.finish()
  return {
    near: ({ minX, minY, maxX, maxY }, grow = 0) =>
      tree.search(minX - grow, minY - grow, maxX + grow, maxY + grow).sort((a, b) => a - b),
  }
}

/** The nearest other contour, by its number in the list, and the wood between. */
export interface NearestGap {
  readonly other: number
  readonly gap: number
}

/**
 * For each contour the other one with the least `gap`, if that is at most `limit` mm, else null. Of equally
 * near ones the first in the list is named.
 *
 * Time grows about in step with the number of contours: each looks only round itself, in rings that widen until
 * the nearest is certain. One contour that holds or touches all others is compared with each of them, once
 * from either side; only a heap in which most lie upon most others costs every pair.
 *
 * @example nearestGaps([circle({ x: 0, y: 0 }, 1), circle({ x: 5, y: 0 }, 1)], 10) // [{ other: 1, gap: 3 }, { other: 0, gap: 3 }]
 */
export function nearestGaps(contours: readonly Contour[], limit: number): (NearestGap | null)[] {
  if (Number.isNaN(limit)) throw new RangeError('The limit for nearest gaps must be a length in mm, not NaN.')
  const boxes = contours.map(bounds)
  const index = neighbours(boxes)
  const first = Math.min(limit, usualSpacing(boxes))
  return contours.map((contour, i) => {
    const box = boxes[i]
    return box === undefined ? null : nearestTo(contour, box, i, contours, boxes, index, first, limit)
  })
}

/** Side of the square of ground that falls to each box: about how far apart evenly spread ones lie. */
function usualSpacing(boxes: readonly Bounds[]): number {
  let minX = Number.POSITIVE_INFINITY
  let minY = Number.POSITIVE_INFINITY
  let maxX = Number.NEGATIVE_INFINITY
  let maxY = Number.NEGATIVE_INFINITY
  for (const box of boxes) {
    minX = Math.min(minX, box.minX)
    minY = Math.min(minY, box.minY)
    maxX = Math.max(maxX, box.maxX)
    maxY = Math.max(maxY, box.maxY)
  }
  return Math.sqrt(((maxX - minX) * (maxY - minY)) / Math.max(1, boxes.length))
}

function nearestTo(
  contour: Contour,
  box: Bounds,
  self: number,
  contours: readonly Contour[],
  boxes: readonly Bounds[],
  index: Neighbours,
  first: number,
  limit: number,
): NearestGap | null {
  return null
}
