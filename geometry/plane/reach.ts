/**
 * The place on one contour that lies deepest within another, or farthest beyond it.
 *
 * A search by halving (branch and bound): the depth is measured at the middle of a stretch. Over the stretch it
 * can grow by no more than half its length, and by no more than the stretch can draw away from the line or
 * place found nearest to its middle. A stretch that cannot beat the best so far by more than SEARCH is dropped,
 * so the answer is never too large and at most SEARCH (0.001 mm) too small.
 */
import { goesRound } from './contains.ts'
import type { Chain, Contour } from './contour.ts'
import { spotOnPieces } from './distance.ts'
import { type Piece, piecesOf } from './pieces.ts'
import { arcCovers, distanceToPiece, type Spot } from './spot.ts'
import { SEARCH } from './tolerance.ts'

/** A place (x, y) on one contour, `value` mm within or beyond another whose line is nearest at (toX, toY). */
export interface Reach {
  value: number
  x: number
  y: number
  toX: number
  toY: number
}

/** Part of a piece, from `start` to `end` millimetres along it. */
interface Stretch {
  readonly piece: Piece
  readonly start: number
  readonly end: number
}

/** Three corners, written into again and again. */
type Hull = readonly [Spot, Spot, Spot]

/** Arcs are first cut into stretches no wider than this, so that the tangents at their ends meet nearby. */
const WIDEST_STRETCH = Math.PI / 2

/**
 * The place on the line of `contour` deepest `within` the chain `region`, or farthest `beyond` it, millimetres; the
 * other side counts negative; in a circle the centre tells. `atLeast` is a place already known: only better ones are looked for.
 */
export function farthest(contour: Contour, region: Chain, side: 'within' | 'beyond', atLeast: Reach): Reach {
  const target = piecesOf(region)
  const best: Reach = { ...atLeast }
  const at: Spot = { x: 0, y: 0 }
  const near: Spot = { x: 0, y: 0 }
  const hull: Hull = [{ ...at }, { ...at }, { ...at }]
  let nearPiece: Piece | undefined

  const measure = (x: number, y: number): number => {
    nearPiece = spotOnPieces(target, x, y, near)
    const apart = Math.sqrt((x - near.x) ** 2 + (y - near.y) ** 2)
    const value = goesRound(target, x, y) === (side === 'within') ? apart : 0 - apart
    if (value > best.value) {
      best.value = value
      best.x = x
      best.y = y
      best.toX = near.x
      best.toY = near.y
    }
    return value
  }

  const stretches: Stretch[] = []
  for (const piece of piecesOf(contour).list) {
    const count = Math.max(1, Math.ceil(Math.abs(piece.sweep) / WIDEST_STRETCH))
    for (let i = 0; i < count; i++) {
      stretches.push({ piece, start: (piece.length * i) / count, end: (piece.length * (i + 1)) / count })
    }
    // The corners first: a good start lets most stretches drop at their first look.
    measure(piece.x1, piece.y1)
    measure(piece.x2, piece.y2)
  }
  for (let stretch = stretches.pop(); stretch !== undefined; stretch = stretches.pop()) {
    const { piece, start, end } = stretch
    const middle = (start + end) / 2
    placeAlong(piece, middle, at)
    const value = measure(at.x, at.y)
    const enough = best.value + SEARCH
    if (value + (end - start) / 2 <= enough || nearPiece === undefined) continue
    hullOf(stretch, at, hull)
    if (farthestFromSpot(hull, near) <= enough || farthestFromPiece(hull, nearPiece) <= enough) continue
    stretches.push({ piece, start, end: middle }, { piece, start: middle, end })
  }
  return best
}

function placeAlong(piece: Piece, along: number, into: Spot): void {
  if (!piece.isArc) {
    into.x = piece.x1 + along * piece.ux
    into.y = piece.y1 + along * piece.uy
    return
  }
  const angle = (along / piece.length) * piece.sweep
  const cosine = Math.cos(angle)
  const sine = Math.sin(angle)
  const dx = piece.x1 - piece.cx
  const dy = piece.y1 - piece.cy
  into.x = piece.cx + cosine * dx - sine * dy
  into.y = piece.cy + sine * dx + cosine * dy
}

/** Three corners between which the stretch lies: its ends, and for an arc where the tangents there meet. */
function hullOf({ piece, start, end }: Stretch, middle: Spot, [first, last, outer]: Hull): void {
  placeAlong(piece, start, first)
  placeAlong(piece, end, last)
  if (piece.isArc) {
    const out = 1 / Math.cos((end - start) / (2 * piece.radius))
    outer.x = piece.cx + (middle.x - piece.cx) * out
    outer.y = piece.cy + (middle.y - piece.cy) * out
  } else {
    outer.x = first.x
    outer.y = first.y
  }
}

/** Distance to one place grows outwards, so over a triangle it is greatest at a corner. */
function farthestFromSpot(hull: Hull, spot: Spot): number {
  let squared = 0
  for (const { x, y } of hull) squared = Math.max(squared, (x - spot.x) ** 2 + (y - spot.y) ** 2)
  return Math.sqrt(squared)
}

/**
 * No place in the hull is farther from the piece than this. From a line the corners tell. From an arc that all
 * corners face, the farthest place out is a corner, and the farthest in can lie on a side: between two
 * places at least d from the centre and e from each other, none comes nearer to it than sqrt(d^2 - e^2 / 4).
 */
function farthestFromPiece(hull: Hull, piece: Piece): number {
  if (!piece.isArc) {
    let worst = 0
    for (const { x, y } of hull) worst = Math.max(worst, distanceToPiece(piece, x, y))
    return worst
  }
  if (piece.cosHalf < 0) return Number.POSITIVE_INFINITY
  let outermost = 0
  let innermost = Number.POSITIVE_INFINITY
  let side = 0
  for (const corner of hull) {
    const dx = corner.x - piece.cx
    const dy = corner.y - piece.cy
    const reach = Math.sqrt(dx * dx + dy * dy)
    if (!arcCovers(piece, dx, dy, reach)) return Number.POSITIVE_INFINITY
    outermost = Math.max(outermost, reach)
    innermost = Math.min(innermost, reach)
    side = Math.max(side, farthestFromSpot(hull, corner))
  }
  const nearestIn = Math.sqrt(Math.max(0, innermost * innermost - (side * side) / 4))
  return Math.max(outermost - piece.radius, piece.radius - nearestIn)
}
