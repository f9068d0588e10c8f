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

/** Up to this many boxes are asked one after another: an index of so few costs more than it saves. */
const FEW = 24

function fewNeighbours(boxes: readonly Bounds[]): Neighbours {
  for (const box of boxes) mustBeFinite(box)
  return {
    near: (box, grow = 0) => {
      const found: number[] = []
      boxes.forEach((one, index) => {
        const beside = one.minX > box.maxX + grow || one.maxX < box.minX - grow
        if (!beside && one.minY <= box.maxY + grow && one.maxY >= box.minY - grow) found.push(index)
      })
      return found
    },
  }
}

function mustBeFinite({ minX, minY, maxX, maxY }: Bounds): void {
  if (!Number.isFinite(minX + minY + maxX + maxY)) {
    throw new RangeError(`A box needs four finite sides, not x ${minX} to ${maxX}, y ${minY} to ${maxY}.`)
  }
}

/**
 * An index of boxes, numbered in the order given. Throws for a box with a number that is not finite.
 *
 * @example neighbours([bounds(a), bounds(b)]).near(bounds(c), 3) // those that may be within 3 mm of c
 */
export function neighbours(boxes: readonly Bounds[]): Neighbours {
  if (boxes.length <= FEW) return fewNeighbours(boxes)
  const tree = treeOf(boxes)
  return { near: (box, grow = 0) => searchTree(tree, box, grow) }
}

/** The nearest other contour, by its number in the list, and the wood between. */
export interface NearestGap {
  readonly other: number
  readonly gap: number
}

/** How many others are tried before the field is narrowed: enough that one of them is mostly the nearest. */
const TRIED_FIRST = 4

/**
 * For each contour the other one with the least `gap`, if that is at most `limit` mm, else null. Of equally
 * near ones the first in the list is named. Throws if the limit is not a number.
 *
 * Time grows about in step with the number of contours: a few that lie round a contour's middle bound the gap,
 * and then only those whose boxes come that near are measured. One contour that holds or touches all others is
 * measured with each of them, once from either side; only a heap in which most lie upon most others costs
 * every pair.
 *
 * @example nearestGaps([circle({ x: 0, y: 0 }, 1), circle({ x: 5, y: 0 }, 1)], 10) // gap 3, both ways
 */
export function nearestGaps(contours: readonly Contour[], limit: number): (NearestGap | null)[] {
  if (Number.isNaN(limit)) throw new RangeError('The limit for nearest gaps must be a length in mm, not NaN.')
  if (contours.length < 2) return contours.map(() => null)
  const boxes = contours.map(bounds)
  const tree = treeOf(boxes)
  return contours.map((contour, self) => {
    const box = boxes[self]
    if (box === undefined) return null
    let other = -1
    let least = Number.POSITIVE_INFINITY
    const measure = (i: number): void => {
      const candidate = contours[i]
      if (candidate === undefined) return
      const wood = gap(contour, candidate)
      if (wood > least || (wood === least && i > other)) return
      least = wood
      other = i
    }
    const middleX = (box.minX + box.maxX) / 2
    const middleY = (box.minY + box.maxY) / 2
    const tried = tree.neighbors(middleX, middleY, TRIED_FIRST, Number.POSITIVE_INFINITY, (i) => i !== self)
    for (const i of tried) measure(i)
    // Wood is never less than the gap between the boxes, unless these overlap.
    const grow = Math.max(0, Math.min(least, limit))
    for (const i of searchTree(tree, box, grow)) {
      const near = boxes[i]
      if (i === self || near === undefined || tried.includes(i)) continue
      const between = boxGapSquared(box, near)
      if (between > 0 && Math.sqrt(between) > least) continue
      measure(i)
    }
    return least <= limit ? { other, gap: least } : null
  })
}

function treeOf(boxes: readonly Bounds[]): Flatbush {
  const tree = new Flatbush(boxes.length)
  for (const box of boxes) {
    mustBeFinite(box)
    tree.add(box.minX, box.minY, box.maxX, box.maxY)
  }
  tree.finish()
  return tree
}

function searchTree(tree: Flatbush, box: Bounds, grow: number): number[] {
  return tree.search(box.minX - grow, box.minY - grow, box.maxX + grow, box.maxY + grow).sort((a, b) => a - b)
}
