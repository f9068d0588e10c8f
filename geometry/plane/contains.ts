/**
 * Points inside or outside a contour, exact for lines and arcs.
 *
 * The boundary belongs to the inside: a point on the line of a contour (within SAME_POINT) is inside it. A
 * contour that crosses itself is inside where it goes round an odd number of times.
 */
import type { Chain, Contour, Point } from './contour.ts'
import { distanceToPieces } from './distance.ts'
import { type Pieces, piecesOf } from './pieces.ts'
import { boxToPointSquared } from './spot.ts'
import { SAME_POINT } from './tolerance.ts'

/**
 * True if the point lies inside the contour or on its line. Throws for an open chain, which has no inside.
 *
 * @example isInside({ x: 1, y: 0 }, circle({ x: 0, y: 0 }, 5)) // true
 */
export function isInside(point: Point, contour: Contour): boolean {
  mustBeClosed(contour, 'has an inside')
  return depthAt(point, contour) >= -SAME_POINT
}

/**
 * How deep a point lies inside a contour, mm: the distance to its line, negative outside. From an open chain,
 * which has no inside, every point is outside.
 *
 * @example depthAt({ x: 1, y: 0 }, circle({ x: 0, y: 0 }, 5)) // 4
 */
export function depthAt(point: Point, contour: Contour): number {
  if (contour.shape === 'circle') {
    const dx = point.x - contour.centre.x
    const dy = point.y - contour.centre.y
    return contour.radius - Math.sqrt(dx * dx + dy * dy)
  }
  const pieces = piecesOf(contour)
  const reach = distanceToPieces(pieces, point.x, point.y)
  return goesRound(pieces, point.x, point.y) ? reach : 0 - reach
}

/** Throws for an open chain, saying what only a closed contour does. */
export function mustBeClosed(contour: Contour, does: string): void {
  if (contour.shape === 'circle' || contour.closed) return
  const { length } = (contour as Chain).vertices
  throw new RangeError(`Only a closed contour ${does}; this chain of ${length} vertices is open.`)
}

/**
 * True where the pieces go round a point an odd number of times. On the line itself either answer may come.
 *
 * The chords are counted as a polygon is: those that a ray to the right crosses, each with its lower end and
 * without its upper one (crossing number, Shimrat 1962, from memory). Each arc then turns the answer round for
 * the points between itself and its chord: inside its circle, on the arc's side of the chord.
 */
export function goesRound(pieces: Pieces, x: number, y: number): boolean {
  if (!pieces.closed || boxToPointSquared(pieces, x, y) > 0) return false
  let inside = false
  for (const piece of pieces.list) {
    const dx = piece.x2 - piece.x1
    const dy = piece.y2 - piece.y1
    // Above 0 where the point lies to the left of the chord.
    const side = dx * (y - piece.y1) - dy * (x - piece.x1)
    if (piece.y1 <= y !== piece.y2 <= y && (dy > 0 ? side > 0 : side < 0)) inside = !inside
    if (!piece.isArc) continue
    const fromX = x - piece.cx
    const fromY = y - piece.cy
    if (fromX * fromX + fromY * fromY > piece.radius * piece.radius) continue
    // On the chord itself the count above takes the point as a hair to the right, or for a level chord above.
    const settled = side !== 0 ? side : dy !== 0 ? -dy : dx
    if (piece.sweep > 0 ? settled < 0 : settled > 0) inside = !inside
  }
  return inside
}
