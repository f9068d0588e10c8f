/**
 * The room between a hole and the outline it must stay in.
 */
import { isInside, mustBeClosed } from './contains.ts'
import type { Chain, Circle, Contour, Point } from './contour.ts'
import { type Nearest, farthestSpot, nearest } from './distance.ts'
import { farthest, type Reach } from './reach.ts'
import { piecesOf } from './pieces.ts'
import { SAME_POINT } from './tolerance.ts'

/**
 * How much room is left between `inner` and the `outer` outline it must stay in, mm, with the two places where
 * it is told: `from` on the inner contour, `to` on the outline.
 *
 * Positive: `inner` lies inside and this is the least distance between the lines, exact. 0: it touches from
 * inside (within SAME_POINT). Negative: it crosses the outline or lies outside it, and minus the distance
 * says how far its farthest place lies beyond; exact where either is a circle and the other allows a closed
 * form, otherwise up to 0.001 mm too little (see `farthest`). `inner` may be open. Throws for an open `outer`.
 *
 * @example clearance(circle({ x: 0, y: 0 }, 5), rectangle(-10, -10, 20, 10)).distance // 5, from (-5, 0) to (-10, 0)
 */
export function clearance(inner: Contour, outer: Contour): Nearest {
  mustBeClosed(outer, 'can hold another')
  if (outer.shape === 'circle') return clearanceInCircle(inner, outer)
  const near = nearest(inner, outer)
  if (near.distance > SAME_POINT) {
    const { vertices } = piecesOf ...
  }
}
