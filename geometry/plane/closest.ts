/**
 * The shortest way from one line or arc to another, in closed form.
 *
 * A shortest way either starts at an end of one of the two, or stands square on both, or has no length because
 * they cross. Square on a line and an arc means through the arc's centre; square on two arcs means along the
 * line of their centres. Of those only ways between pieces whose full circles (or circle and line) do not
 * meet are shortest; where they do meet, moving along either shortens them.
 */
import { crossings } from './crossings.ts'
import type { Piece } from './pieces.ts'
import { arcCovers, distanceToPiece, nearestOnPiece } from './spot.ts'
import { AT_CENTRE } from './tolerance.ts'

/** The shortest way found so far; `distance` starts at infinity and only falls. */
export interface Way {
  distance: number
  ax: number
  ay: number
  bx: number
  by: number
}

export function noWay(): Way {
  return { distance: Number.POSITIVE_INFINITY, ax: 0, ay: 0, bx: 0, by: 0 }
}

const crossed: number[] = []
const spot = { x: 0, y: 0 }

/** Shortens `way` if there is a shorter one from `a` to `b`. */
export function closest(a: Piece, b: Piece, way: Way): void {
  if (crossings(a, b, crossed) > 0) {
    offer(way, 0, crossed[0]!, crossed[1]!, crossed[0]!, crossed[1]!)
    return
  }
  if (a.isArc && b.isArc) betweenArcs(a, b, way)
  else if (b.isArc) fromLineToArc(a, b, way, true)
  else if (a.isArc) fromLineToArc(b, a, way, false)
  fromEnd(a.x1, a.y1, b, way, true)
  fromEnd(a.x2, a.y2, b, way, true)
  fromEnd(b.x1, b.y1, a, way, false)
  fromEnd(b.x2, b.y2, a, way, false)
}

function offer(way: Way, distance: number, ax: number, ay: number, bx: number, by: number): void {
  if (distance >= way.distance) return
  way.distance = distance
  way.ax = ax
  way.ay = ay
  way.bx = bx
  way.by = by
}

/** From an end (of the first piece if `endIsA`) to anywhere on the other piece. */
function fromEnd(x: number, y: number, piece: Piece, way: Way, endIsA: boolean): void {
  const distance = distanceToPiece(piece, x, y)
  if (distance >= way.distance) return
  nearestOnPiece(piece, x, y, spot)
  if (endIsA) offer(way, distance, x, y, spot.x, spot.y)
  else offer(way, distance, spot.x, spot.y, x, y)
}

function fromLineToArc(line: Piece, arc: Piece, way: Way, lineIsA: boolean): void {
  const along = (arc.cx - line.x1) * line.ux + (arc.cy - line.y1) * line.uy
  if (along <= 0 || along >= line.length) return
  const x = line.x1 + along * line.ux
  const y = line.y1 + along * line.uy
  const dx = x - arc.cx
  const dy = y - arc.cy
  const aside = Math.sqrt(dx * dx + dy * dy)
  // A foot inside the circle: the line meets it, and what the arc has of it is reached from the ends.
  if (aside < arc.radius || aside <= AT_CENTRE || !arcCovers(arc, dx, dy, aside)) return
  const distance = aside - arc.radius
  const onArcX = arc.cx + (dx / aside) * arc.radius
  const onArcY = arc.cy + (dy / aside) * arc.radius
  if (lineIsA) offer(way, distance, x, y, onArcX, onArcY)
  else offer(way, distance, onArcX, onArcY, x, y)
}

function betweenArcs(a: Piece, b: Piece, way: Way): void {
  const dx = b.cx - a.cx
  const dy = b.cy - a.cy
  const apart = Math.sqrt(dx * dx + dy * dy)
  // Concentric arcs run side by side: an end of one of them lies square to the other.
  if (apart <= AT_CENTRE) return
  const ux = dx / apart
  const uy = dy / apart
  // From each centre, +1 looks towards the other centre's side of the join, -1 away from it.
  let fromA: number
  let fromB: number
  let distance: number
  if (apart >= a.radius + b.radius) {
    fromA = 1
    fromB = -1
    distance = apart - (a.radius + b.radius)
  } else if (apart <= a.radius - b.radius) {
    fromA = 1
    fromB = 1
    distance = a.radius - b.radius - apart
  } else if (apart <= b.radius - a.radius) {
    fromA = -1
    fromB = -1
    distance = b.radius - a.radius - apart
  } else {
    return
  }
  if (!arcCovers(a, fromA * ux, fromA * uy, 1) || !arcCovers(b, fromB * ux, fromB * uy, 1)) return
  const reachA = fromA * a.radius
  const reachB = fromB * b.radius
  offer(way, distance, a.cx + reachA * ux, a.cy + reachA * uy, b.cx + reachB * ux, b.cy + reachB * uy)
}
