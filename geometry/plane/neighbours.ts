/**
 * Who lies near whom, without asking every pair.
 */
import Flatbush from 'flatbush'
import type { Bounds } from './contour.ts'

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
