/**
 * Where a line or arc crosses another: at most two places, in closed form.
 */
import type { Piece } from './pieces.ts'
import { arcCovers } from './spot.ts'
import { AT_CENTRE, SAME_POINT } from './tolerance.ts'

/**
 * Writes the places that two lines or arcs share, as x, y, x, y, and says how many there are: 0, 1 or 2.
 * Pieces that lie on one line or one circle share no single place and count as 0; the distance between them is
 * told by their ends.
 *
 * Source: two circles meet on the line across their centres' join at (D^2 + r1^2 - r2^2) / (2 D) from the
 * first centre; a line meets a circle half a chord sqrt(r^2 - d^2) either side of the foot of the
 * perpendicular (school geometry).
 */
export function crossings(a: Piece, b: Piece, into: number[]): number {
  if (!a.isArc && !b.isArc) return lineWithLine(a, b, into)
  if (!a.isArc) return lineWithArc(a, b, into)
  if (!b.isArc) return lineWithArc(b, a, into)
  return arcWithArc(a, b, into)
}

function lineWithLine(a: Piece, b: Piece, into: number[]): number {
  // Signed distances of each line's ends from the other: opposite signs twice means a crossing.
  const a1 = b.ux * (a.y1 - b.y1) - b.uy * (a.x1 - b.x1)
  const a2 = b.ux * (a.y2 - b.y1) - b.uy * (a.x2 - b.x1)
  if ((a1 > 0 && a2 > 0) || (a1 < 0 && a2 < 0) || a1 === a2) return 0
  const b1 = a.ux * (b.y1 - a.y1) - a.uy * (b.x1 - a.x1)
  const b2 = a.ux * (b.y2 - a.y1) - a.uy * (b.x2 - a.x1)
  if ((b1 > 0 && b2 > 0) || (b1 < 0 && b2 < 0) || b1 === b2) return 0
  const share = a1 / (a1 - a2)
  const x = a.x1 + share * (a.x2 - a.x1)
  const y = a.y1 + share * (a.y2 - a.y1)
  // Two lines along one straight line show noise for sides; what they then seem to share must lie on both.
  const along = (x - b.x1) * b.ux + (y - b.y1) * b.uy
  if (along < -SAME_POINT || along > b.length + SAME_POINT) return 0
  into[0] = x
  into[1] = y
  return 1
}

function lineWithArc(line: Piece, arc: Piece, into: number[]): number {
  const dx = arc.cx - line.x1
  const dy = arc.cy - line.y1
  const along = dx * line.ux + dy * line.uy
  const aside = Math.abs(dx * line.uy - dy * line.ux)
  if (aside > arc.radius) return 0
  const half = Math.sqrt((arc.radius - aside) * (arc.radius + aside))
  let count = 0
  for (let side = -1; side <= 1; side += 2) {
    const t = along + side * half
    if (t < 0 || t > line.length) continue
    const x = line.x1 + t * line.ux
    const y = line.y1 + t * line.uy
    if (!arcCovers(arc, x - arc.cx, y - arc.cy, arc.radius)) continue
    into[2 * count] = x
    into[2 * count + 1] = y
    count++
    if (half === 0) break
  }
  return count
}

function arcWithArc(a: Piece, b: Piece, into: number[]): number {
  const dx = b.cx - a.cx
  const dy = b.cy - a.cy
  const apart = Math.sqrt(dx * dx + dy * dy)
  if (apart <= AT_CENTRE || apart > a.radius + b.radius || apart < Math.abs(a.radius - b.radius)) return 0
  const along = (apart * apart + (a.radius - b.radius) * (a.radius + b.radius)) / (2 * apart)
  const half = Math.sqrt(Math.max(0, (a.radius - along) * (a.radius + along)))
  const ux = dx / apart
  const uy = dy / apart
  let count = 0
  for (let side = -1; side <= 1; side += 2) {
    const x = along * ux - side * half * uy
    const y = along * uy + side * half * ux
    if (!arcCovers(a, x, y, a.radius)) continue
    if (!arcCovers(b, x - dx, y - dy, b.radius)) continue
    into[2 * count] = a.cx + x
    into[2 * count + 1] = a.cy + y
    count++
    if (half === 0) break
  }
  return count
}
