/**
 * How far contours and points are apart, measured between the lines themselves: a hole drawn inside another is
 * as far from it as the ring between them is wide. Closed forms for lines, arcs and circles. For the wood
 * between two openings see `gap`, for room inside an outline see `clearance`.
 */
import { closest, noWay, type Way } from './closest.ts'
import type { Circle, Contour, Point } from './contour.ts'
import { type Piece, type Pieces, piecesOf } from './pieces.ts'
import {
  arcCovers,
  boxGapSquared,
  boxToPointSquared,
  distanceToPiece,
  nearestOnPiece,
  type Spot,
} from './spot.ts'
import { AT_CENTRE } from './tolerance.ts'

/** The shortest way between two contours: `from` lies on the first, `to` on the second, mm. */
export interface Nearest {
  readonly distance: number
  readonly from: Point
  readonly to: Point
}

/**
 * Millimetres between the lines of two contours, 0 where they cross or touch. Swapping them changes nothing.
 *
 * @example distance(circle({ x: 0, y: 0 }, 5), circle({ x: 20, y: 0 }, 5)) // 10
 */
export function distance(a: Contour, b: Contour): number {
  if (a.shape === 'circle') return b.shape === 'circle' ? betweenCircles(a, b) : circleToChain(a, piecesOf(b))
  if (b.shape === 'circle') return circleToChain(b, piecesOf(a))
  return search(a, b).distance
}

/**
 * The shortest way between the lines of two contours; where they cross, a place of crossing twice.
 *
 * @example nearest(circle({ x: 0, y: 0 }, 5), circle({ x: 20, y: 0 }, 5)) // from (5, 0) to (15, 0), 10 apart
 */
export function nearest(a: Contour, b: Contour): Nearest {
  if (a.shape === 'circle') {
    const straight = b.shape === 'circle' ? circleWay(a, b) : chainWay(a, piecesOf(b))
    if (straight !== undefined) return straight
  } else if (b.shape === 'circle') {
    const straight = chainWay(b, piecesOf(a))
    if (straight !== undefined) return { distance: straight.distance, from: straight.to, to: straight.from }
  }
  const way = search(a, b)
  return { distance: way.distance, from: { x: way.ax, y: way.ay }, to: { x: way.bx, y: way.by } }
}

/**
 * Millimetres from a point to the line of a contour, whether the point lies inside or outside.
 *
 * @example distanceToPoint(circle({ x: 0, y: 0 }, 5), { x: 2, y: 0 }) // 3
 */
export function distanceToPoint(contour: Contour, point: Point): number {
  return contour.shape === 'circle'
    ? Math.abs(fromCentre(contour, point) - contour.radius)
    : distanceToPieces(piecesOf(contour), point.x, point.y)
}

/**
 * The place on the line of a contour nearest to a point.
 *
 * @example nearestPoint(circle({ x: 0, y: 0 }, 5), { x: 2, y: 0 }) // { x: 5, y: 0 }
 */
export function nearestPoint(contour: Contour, point: Point): Point {
  const spot: Spot = { x: 0, y: 0 }
  spotOnPieces(piecesOf(contour), point.x, point.y, spot)
  return spot
}

function fromCentre(circle: Circle, point: Point): number {
  const dx = point.x - circle.centre.x
  const dy = point.y - circle.centre.y
  return Math.sqrt(dx * dx + dy * dy)
}

function betweenCircles(a: Circle, b: Circle): number {
  const apart = fromCentre(a, b.centre)
  const reach = a.radius + b.radius
  if (apart >= reach) return apart - reach
  return Math.max(0, Math.abs(a.radius - b.radius) - apart)
}

/**
 * A circle and a chain meet if the chain comes nearer to the centre than the radius and also goes farther;
 * otherwise its nearest or its farthest place counts. One pass, no pairing of pieces.
 */
function circleToChain(circle: Circle, pieces: Pieces): number {
  const { x, y } = circle.centre
  const { radius } = circle
  const near = distanceToPieces(pieces, x, y)
  if (near >= radius) return near - radius
  return Math.max(0, radius - farthestOfPieces(pieces, x, y, unread))
}

/** The shortest way between circles that do not cross, along the line of their centres. */
function circleWay(a: Circle, b: Circle): Nearest | undefined {
  const apart = fromCentre(a, b.centre)
  const outside = apart >= a.radius + b.radius
  const wider = a.radius >= b.radius ? a : b
  if (!outside && apart > Math.abs(a.radius - b.radius)) return undefined
  // Concentric circles are as far apart in every direction: the x axis is named.
  const ux = apart <= AT_CENTRE ? 1 : (b.centre.x - a.centre.x) / apart
  const uy = apart <= AT_CENTRE ? 0 : (b.centre.y - a.centre.y) / apart
  // Apart, each looks at the other; one in the other, both look to where the inner one lies off centre.
  const fromA = outside || wider === a ? a.radius : -a.radius
  const fromB = !outside && wider === a ? b.radius : -b.radius
  return {
    distance: betweenCircles(a, b),
    from: { x: a.centre.x + fromA * ux, y: a.centre.y + fromA * uy },
    to: { x: b.centre.x + fromB * ux, y: b.centre.y + fromB * uy },
  }
}

/** The shortest way from a circle to a chain it does not cross, along a radius. */
function chainWay(circle: Circle, pieces: Pieces): Nearest | undefined {
  const { centre, radius } = circle
  const to: Spot = { x: 0, y: 0 }
  spotOnPieces(pieces, centre.x, centre.y, to)
  let reach = fromCentre(circle, to)
  if (reach < radius) {
    reach = farthestOfPieces(pieces, centre.x, centre.y, to)
    if (reach > radius) return undefined
  }
  const share = radius / reach
  return {
    distance: Math.abs(reach - radius),
    from: { x: centre.x + (to.x - centre.x) * share, y: centre.y + (to.y - centre.y) * share },
    to,
  }
}

/** Where a search writes a place that nobody asks for. */
const unread: Spot = { x: 0, y: 0 }

/** Millimetres from a point to the nearest of the pieces. */
export function distanceToPieces(pieces: Pieces, x: number, y: number): number {
  let best = Number.POSITIVE_INFINITY
  for (const piece of pieces.list) {
    if (boxToPointSquared(piece, x, y) >= best * best) continue
    const reach = distanceToPiece(piece, x, y)
    if (reach < best) best = reach
  }
  return best
}

/** Writes the place on the pieces nearest to a point and gives the piece it lies on. */
export function spotOnPieces(pieces: Pieces, x: number, y: number, into: Spot): Piece {
  let best = Number.POSITIVE_INFINITY
  let found: Piece | undefined
  for (const piece of pieces.list) {
    if (found !== undefined && boxToPointSquared(piece, x, y) >= best * best) continue
    const reach = distanceToPiece(piece, x, y)
    if (reach >= best) continue
    best = reach
    found = piece
  }
  if (found === undefined) throw new RangeError(`No distance can be told from the point (${x}, ${y}).`)
  nearestOnPiece(found, x, y, into)
  return found
}

/** Writes the place on the pieces farthest from a point and gives its distance, mm. */
export function farthestOfPieces(pieces: Pieces, x: number, y: number, into: Spot): number {
  let best = -1
  for (const piece of pieces.list) {
    if (piece.isArc) {
      // Farthest of all is straight across the centre, if the arc runs there.
      const dx = piece.cx - x
      const dy = piece.cy - y
      const reach = Math.sqrt(dx * dx + dy * dy)
      if (reach > AT_CENTRE && reach + piece.radius > best && arcCovers(piece, dx, dy, reach)) {
        best = reach + piece.radius
        into.x = piece.cx + (dx / reach) * piece.radius
        into.y = piece.cy + (dy / reach) * piece.radius
      }
    }
    const toStart = Math.sqrt((piece.x1 - x) ** 2 + (piece.y1 - y) ** 2)
    if (toStart > best) {
      best = toStart
      into.x = piece.x1
      into.y = piece.y1
    }
    const toEnd = Math.sqrt((piece.x2 - x) ** 2 + (piece.y2 - y) ** 2)
    if (toEnd > best) {
      best = toEnd
      into.x = piece.x2
      into.y = piece.y2
    }
  }
  return best
}

/** Every pair of pieces near enough to matter, by their boxes. */
function search(a: Contour, b: Contour): Way {
  const piecesA = piecesOf(a)
  const piecesB = piecesOf(b)
  const way = noWay()
  for (const pieceA of piecesA.list) {
    if (boxGapSquared(pieceA, piecesB) >= way.distance * way.distance) continue
    for (const pieceB of piecesB.list) {
      if (boxGapSquared(pieceA, pieceB) >= way.distance * way.distance) continue
      closest(pieceA, pieceB, way)
      if (way.distance === 0) return way
    }
  }
  return way
}
