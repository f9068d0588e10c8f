/**
 * From a point to a single line or arc, and between boxes: the small sums that every distance is made of.
 */
import type { Bounds } from './contour.ts'
import type { Piece } from './pieces.ts'
import { AT_CENTRE } from './tolerance.ts'

/** True if the arc, seen from its centre, runs through direction (dx, dy) of length `reach`. */
export function arcCovers(arc: Piece, dx: number, dy: number, reach: number): boolean {
  return dx * arc.ux + dy * arc.uy >= reach * arc.cosHalf
}

/** Millimetres from a point to the nearest place on a line or arc. */
export function distanceToPiece(piece: Piece, x: number, y: number): number {
  if (piece.isArc) {
    const dx = x - piece.cx
    const dy = y - piece.cy
    const reach = Math.sqrt(dx * dx + dy * dy)
    if (arcCovers(piece, dx, dy, reach)) return Math.abs(reach - piece.radius)
    return Math.sqrt(squaredToNearerEnd(piece, x, y))
  }
  const dx = x - piece.x1
  const dy = y - piece.y1
  const along = dx * piece.ux + dy * piece.uy
  if (along <= 0 || along >= piece.length) return Math.sqrt(squaredToNearerEnd(piece, x, y))
  return Math.abs(dx * piece.uy - dy * piece.ux)
}

function squaredToNearerEnd(piece: Piece, x: number, y: number): number {
  const ax = x - piece.x1
  const ay = y - piece.y1
  const bx = x - piece.x2
  const by = y - piece.y2
  return Math.min(ax * ax + ay * ay, bx * bx + by * by)
}

/** A place that a search writes its answer into, so that asking a thousand times allocates once. */
export interface Spot {
  x: number
  y: number
}

/** Writes the place on a line or arc nearest to a point. From an arc's own centre, its middle is named. */
export function nearestOnPiece(piece: Piece, x: number, y: number, into: Spot): void {
  if (piece.isArc) {
    const dx = x - piece.cx
    const dy = y - piece.cy
    const reach = Math.sqrt(dx * dx + dy * dy)
    if (reach <= AT_CENTRE) {
      into.x = piece.cx + piece.ux * piece.radius
      into.y = piece.cy + piece.uy * piece.radius
      return
    }
    if (arcCovers(piece, dx, dy, reach)) {
      into.x = piece.cx + (dx / reach) * piece.radius
      into.y = piece.cy + (dy / reach) * piece.radius
      return
    }
  } else {
    const along = (x - piece.x1) * piece.ux + (y - piece.y1) * piece.uy
    if (along > 0 && along < piece.length) {
      into.x = piece.x1 + along * piece.ux
      into.y = piece.y1 + along * piece.uy
      return
    }
  }
  const ax = x - piece.x1
  const ay = y - piece.y1
  const bx = x - piece.x2
  const by = y - piece.y2
  const first = ax * ax + ay * ay <= bx * bx + by * by
  into.x = first ? piece.x1 : piece.x2
  into.y = first ? piece.y1 : piece.y2
}

/** Square of the gap between two boxes, 0 where they overlap or touch. */
export function boxGapSquared(a: Bounds, b: Bounds): number {
  const dx = Math.max(a.minX - b.maxX, b.minX - a.maxX, 0)
  const dy = Math.max(a.minY - b.maxY, b.minY - a.maxY, 0)
  return dx * dx + dy * dy
}

/** Square of the distance from a point to a box, 0 inside it. */
export function boxToPointSquared(box: Bounds, x: number, y: number): number {
  const dx = Math.max(box.minX - x, x - box.maxX, 0)
  const dy = Math.max(box.minY - y, y - box.maxY, 0)
  return dx * dx + dy * dy
}
