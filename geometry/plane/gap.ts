/**
 * The wood between two openings.
 *
 * Said in one way for all cases: minus the greatest sum of depths that one place can have inside both. Between
 * two openings that are apart that is their distance; for two circles it is always the distance of the centres
 * less both radii, overlapping or not; and by this definition it never jumps while one opening crosses another.
 */
import { depthAt, goesRound } from './contains.ts'
import type { Chain, Contour, Point } from './contour.ts'
import { deepest } from './deepest.ts'
import { nearest } from './distance.ts'
import { piecesOf } from './pieces.ts'
import { farthest, type Reach } from './reach.ts'
import { SAME_POINT } from './tolerance.ts'

/**
 * Millimetres of wood between two openings: their distance if they are apart, 0 if they touch, and minus the
 * depth of their overlap if they overlap or one lies in the other. Swapping them changes nothing.
 *
 * Exact whenever they are apart or one is a circle. The overlap of two chains is never overstated; it is taken
 * from the deepest places of either line in the other (to 0.001 mm) and of either shape, and can fall
 * short where the deepest place of the overlap is neither. An open chain has no inside: it counts as a line.
 *
 * @example gap(circle({ x: 0, y: 0 }, 5), circle({ x: 9, y: 0 }, 5)) // -1
 */
export function gap(a: Contour, b: Contour): number {
  // A circle is every place within its radius of the centre: no place adds more depth than the centre has.
  if (a.shape === 'circle') return 0 - a.radius - depthAt(a.centre, b)
  if (b.shape === 'circle') return 0 - b.radius - depthAt(b.centre, a)
  const near = nearest(a, b)
  const meet = near.distance <= SAME_POINT
  const aLiesInB = !meet && startsIn(a, b)
  const bLiesInA = !meet && startsIn(b, a)
  if (!meet && !aLiesInB && !bLiesInA) return near.distance

  const { from, to } = near
  const start: Reach = { value: 0, x: from.x, y: from.y, toX: to.x, toY: to.y }
  for (const middle of [deepestOf(a), deepestOf(b)]) {
    if (middle !== undefined) start.value = Math.max(start.value, depthAt(middle, a) + depthAt(middle, b))
  }
  // The line of the one that holds the other is nowhere within it. Both searches start from the same, so that
  // swapping the two changes nothing.
  const ofA = bLiesInA ? start : farthest(a, b, 'within', start)
  const ofB = aLiesInB ? start : farthest(b, a, 'within', start)
  return 0 - Math.max(ofA.value, ofB.value)
}

function startsIn(a: Chain, b: Chain): boolean {
  const start = piecesOf(a).list[0]
  return start !== undefined && goesRound(piecesOf(b), start.x1, start.y1)
}

function deepestOf(chain: Chain): Point | undefined {
  return chain.closed ? deepest(chain) : undefined
}
