/**
 * Whether a chain comes back to itself: exact for lines and arcs.
 */
import { closest, noWay } from './closest.ts'
import type { Piece } from './pieces.ts'
import { arcCovers, boxGapSquared, distanceToPiece, type Spot } from './spot.ts'
import { AT_CENTRE, SAME_POINT } from './tolerance.ts'

/** Up to this many pieces every pair is looked at; above, only pairs whose boxes meet. */
const FEW = 200

/**
 * How far rounding can move a computed meeting for each millimetre of radius: coordinates carry 1e-16 of it,
 * and a few operations.
 */
const ROUNDING_PER_RADIUS = 1e-12

/**
 * A sentence that names the first two segments of a chain that cross, touch or run back along each other, or
 * undefined if there are none. Segments that follow each other may share their vertex.
 */
export function selfCrossing(pieces: readonly Piece[], closed: boolean): string | undefined {
  const count = pieces.length
  const meeting = count > FEW ? boxesThatMeet(pieces) : undefined
  for (let i = 0; i < count; i++) {
    const a = pieces[i]!
    for (const j of meeting?.[i] ?? laterThan(i, count)) {
      const b = pieces[j]!
      const follows = j === i + 1
      const closes = closed && i === 0 && j === count - 1
      const fault = follows || closes ? neighbourFault(a, b, follows, closes) : strangerFault(a, b)
      if (fault !== undefined) return `Segments ${i + 1} and ${j + 1} ${fault}.`
    }
  }
  return undefined
}

function* laterThan(i: number, count: number): Generator<number> {
  for (let j = i + 1; j < count; j++) yield j
}

/**
 * For each piece the later ones whose boxes meet its own, ascending. A sweep along x: the first screen judges curves
 * too, and does without the index that others use for nearness.
 */
function boxesThatMeet(pieces: readonly Piece[]): number[][] {
  const order = pieces.map((_, index) => index).sort((a, b) => pieces[a]!.minX - pieces[b]!.minX)
  const later: number[][] = pieces.map(() => [])
  order.forEach((i, place) => {
    const a = pieces[i]!
    for (let next = place + 1; next < order.length; next++) {
      const j = order[next]!
      const b = pieces[j]!
      if (b.minX > a.maxX + SAME_POINT) break
      if (b.minY <= a.maxY + SAME_POINT && b.maxY >= a.minY - SAME_POINT)
        later[Math.min(i, j)]!.push(Math.max(i, j))
    }
  })
  for (const list of later) list.sort((a, b) => a - b)
  return later
}

/** Segments that share no vertex must not come together anywhere. */
function strangerFault(a: Piece, b: Piece): string | undefined {
  if (boxGapSquared(a, b) > SAME_POINT * SAME_POINT) return undefined
  const way = noWay()
  closest(a, b, way)
  if (way.distance > SAME_POINT) return undefined
  return `cross or touch at (${words(way.ax)}, ${words(way.ay)})`
}

/** Segments that share a vertex must meet nowhere else, nor run back along each other. */
function neighbourFault(a: Piece, b: Piece, follows: boolean, closes: boolean): string | undefined {
  const [shorter, longer] = a.length <= b.length ? [a, b] : [b, a]
  const middle = middleOf(shorter)
  // A thousandth of the length tells a segment hardly longer than SAME_POINT from one that runs back.
  const upon = Math.min(SAME_POINT, shorter.length / 1000)
  if (distanceToPiece(longer, middle.x, middle.y) <= upon) return 'run back along each other'
  // Two segments that share both ends have no third place to share: no two circles have.
  if (follows && closes) return undefined
  const again = follows ? secondMeeting(backwards(a), forwards(b)) : secondMeeting(forwards(a), backwards(b))
  return again === undefined ? undefined : `cross or touch at (${words(again.x)}, ${words(again.y)})`
}

/** A segment seen from the vertex it shares with another: where it sets out, which way, and its far end. */
interface Departure {
  readonly piece: Piece
  readonly x: number
  readonly y: number
  readonly toX: number
  readonly toY: number
  /** Radians, counter-clockwise positive. */
  readonly sweep: number
}

function forwards(piece: Piece): Departure {
  return { piece, x: piece.x1, y: piece.y1, toX: piece.x2, toY: piece.y2, sweep: piece.sweep }
}

function backwards(piece: Piece): Departure {
  return { piece, x: piece.x2, y: piece.y2, toX: piece.x1, toY: piece.y1, sweep: 0 - piece.sweep }
}

/**
 * Where two segments that set out from one vertex meet again, if they do.
 *
 * Their full circles meet again in the image of the vertex in the line of their centres; a line and a circle
 * in its image across the foot of the centre. Where they are tangent the image is the vertex itself, to plain
 * rounding; solving for both meetings would lose half the digits there.
 */
function secondMeeting(a: Departure, b: Departure): Spot | undefined {
  const image = imageOf(a, b)
  if (image === undefined) return undefined
  const reach = Math.hypot(image.x - a.x, image.y - a.y)
  if (reach <= SAME_POINT + ROUNDING_PER_RADIUS * Math.max(a.piece.radius, b.piece.radius)) return undefined
  return comesTo(a, image, reach) && comesTo(b, image, reach) ? image : undefined
}

function imageOf(a: Departure, b: Departure): Spot | undefined {
  if (a.piece.isArc && b.piece.isArc) {
    const dx = b.piece.cx - a.piece.cx
    const dy = b.piece.cy - a.piece.cy
    const apart = Math.hypot(dx, dy)
    // Arcs of one circle that do not run back along each other only share their vertex.
    if (apart <= AT_CENTRE) return undefined
    const ux = dx / apart
    const uy = dy / apart
    const aside = (a.x - a.piece.cx) * uy - (a.y - a.piece.cy) * ux
    return { x: a.x - 2 * aside * uy, y: a.y + 2 * aside * ux }
  }
  if (!a.piece.isArc && !b.piece.isArc) return undefined
  const [line, arc] = a.piece.isArc ? [b, a] : [a, b]
  const { ux, uy } = line.piece
  const along = (arc.piece.cx - line.x) * ux + (arc.piece.cy - line.y) * uy
  return { x: line.x + 2 * along * ux, y: line.y + 2 * along * uy }
}

/**
 * True if a segment comes to a place that lies on its line or circle, `reach` mm from where it sets out. For a
 * line and up to half a turn the place must lie ahead and no farther than the far end, which says it sharply
 * for the flattest arc; of a longer arc the direction from the centre tells.
 */
function comesTo({ piece, x, y, toX, toY, sweep }: Departure, place: Spot, reach: number): boolean {
  if (Math.hypot(place.x - toX, place.y - toY) <= SAME_POINT) return true
  if (piece.cosHalf < 0) {
    return arcCovers(piece, place.x - piece.cx, place.y - piece.cy, piece.radius)
  }
  // An arc sets out half its sweep to the other side of its chord.
  const cosine = Math.cos(sweep / 2)
  const sine = Math.sin(sweep / 2)
  const aheadX = cosine * (toX - x) + sine * (toY - y)
  const aheadY = cosine * (toY - y) - sine * (toX - x)
  const ahead = (place.x - x) * aheadX + (place.y - y) * aheadY
  return ahead > 0 && reach <= Math.hypot(toX - x, toY - y)
}

function middleOf(piece: Piece): { readonly x: number; readonly y: number } {
  return piece.isArc
    ? { x: piece.cx + piece.ux * piece.radius, y: piece.cy + piece.uy * piece.radius }
    : { x: (piece.x1 + piece.x2) / 2, y: (piece.y1 + piece.y2) / 2 }
}

/** A coordinate for a sentence: to a thousandth of a millimetre, with a dot in every country. */
function words(length: number): string {
  return String(Math.round(length * 1000) / 1000 + 0)
}
