/**
 * Contours grown and shrunk: the line that a tool's middle follows when its edge is to follow the contour.
 *
 * Circles, rectangles, rounded rectangles and slots have closed forms. Every other contour of lines and arcs is
 * worked out from its parallel lines: each piece moved aside, an arc about each corner on its outer side, all cut
 * where they meet, and only what lies at the full distance from the contour kept (after X.-Z. Liu and others, "An
 * offset algorithm for polyline curves", Computers in Industry 58, 2007, from memory). Arcs stay arcs.
 */

import { mustBeClosed } from './contains.ts'
import type { Chain, Contour, Point } from './contour.ts'
import { distanceToPieces } from './distance.ts'
import { roundedRectangle } from './makers.ts'
import { type Piece, piecesOf } from './pieces.ts'
import { cutWhereMet, joined, middleOf, type Stretch } from './stretches.ts'
import { SAME_POINT } from './tolerance.ts'
import { turn } from './transform.ts'

/** What became of a contour. */
export interface Offset {
  /** What lies inside: nothing where a contour shrank away, several where it came apart. */
  readonly outers: readonly Contour[]
  /** Holes that a growing contour closed round: bays whose mouths are narrower than twice the offset. */
  readonly holes: readonly Contour[]
  /** Whether its lines did not join, as of a contour that crosses itself: then it is not to be relied on. */
  readonly torn: boolean
}

const NOTHING: Offset = { outers: [], holes: [], torn: false }

/** Nearer to the contour than the offset less this, mm, a parallel line is not the nearest one. */
const NEARER = 1e-6

/**
 * A closed contour that runs counter-clockwise, every point of its line moved outwards by `by` mm, inwards where
 * negative. Outer corners come out round: all of the new line is `|by|` from the old one.
 *
 * @param contour closed and not crossing itself
 * @param by mm
 * @throws for an open chain and for a number that is not finite
 * @example offset(circle({ x: 0, y: 0 }, 5), -1).outers // a circle of radius 4
 */
export function offset(contour: Contour, by: number): Offset {
  mustBeClosed(contour, 'can be offset')
  if (!Number.isFinite(by)) throw new RangeError(`An offset must be a length in mm, not ${by}.`)
  if (Math.abs(by) < SAME_POINT) return { outers: [contour], holes: [], torn: false }
  if (contour.shape === 'circle') {
    const radius = contour.radius + by
    return radius <= SAME_POINT
      ? NOTHING
      : { outers: [{ shape: 'circle', centre: contour.centre, radius }], holes: [], torn: false }
  }
  const box = asBox(contour)
  return box === undefined ? offsetOfChain(contour, by) : offsetOfBox(box, by)
}

function offsetOfBox({ centre, length, width, radius, angle }: Box, by: number): Offset {
  const [long, wide] = [length + 2 * by, width + 2 * by]
  if (Math.min(long, wide) <= 2 * SAME_POINT) return NOTHING
  const level = roundedRectangle(centre, long, wide, Math.max(0, radius + by))
  return { outers: [turn(level, angle, centre)], holes: [], torn: false }
}

/** The general way, for any chain; exported so that tests can hold it against the closed forms. */
export function offsetOfChain(chain: Chain, by: number): Offset {
  const pieces = piecesOf(chain)
  const raw = parallels(pieces.list, by)
  const reach = Math.abs(by) - NEARER
  const kept = cutWhereMet(raw, raw).filter((one) => {
    const { x, y } = middleOf(one)
    return distanceToPieces(pieces, x, y) >= reach
  })
  return joined(kept)
}

/** Directions of travel at both ends of a piece. */
function tangents(piece: Piece): { readonly start: Point; readonly end: Point } {
  if (!piece.isArc) return { start: { x: piece.ux, y: piece.uy }, end: { x: piece.ux, y: piece.uy } }
  const way = Math.sign(piece.sweep) / piece.radius
  return {
    start: { x: -(piece.y1 - piece.cy) * way, y: (piece.x1 - piece.cx) * way },
    end: { x: -(piece.y2 - piece.cy) * way, y: (piece.x2 - piece.cx) * way },
  }
}

/** Each piece moved `by` to the right of travel, and arcs about the corners that leave a gap there. */
function parallels(list: readonly Piece[], by: number): Stretch[] {
  const raw: Stretch[] = []
  for (const [index, piece] of list.entries()) {
    const { start, end } = tangents(piece)
    // To the right of (x, y) lies (y, -x).
    const [x2, y2] = [piece.x2 + by * end.y, piece.y2 - by * end.x]
    const radius = piece.sweep > 0 ? piece.radius + by : piece.radius - by
    // An arc that shrinks past its centre is nowhere the nearest.
    if (!piece.isArc || radius > SAME_POINT) {
      const bulge = piece.isArc ? Math.tan(piece.sweep / 4) : 0
      raw.push({ x1: piece.x1 + by * start.y, y1: piece.y1 - by * start.x, x2, y2, bulge })
    }
    const following = list[(index + 1) % list.length] as Piece
    const next = tangents(following).start
    const turned = turnAt(end, next, () => bend(piece) + bend(following))
    if (turned * by <= 1e-12) continue
    const to = { x: piece.x2 + by * next.y, y: piece.y2 - by * next.x }
    raw.push({ x1: x2, y1: y2, x2: to.x, y2: to.y, bulge: Math.tan(turned / 4) })
  }
  return raw
}

/** How much a piece bends to the left, per mm. */
const bend = (piece: Piece): number => (piece.isArc ? Math.sign(piece.sweep) / piece.radius : 0)

/** Turned back so nearly that the directions no longer tell which way, rad. */
const BACK = 1e-9

/**
 * Radians turned to the left from one direction to the next. Where a line turns right back, as at the tip between an edge and
 * an arc that comes out tangent to it, the two bends tell: wood that runs out to nothing is turned about to the left, a
 * gap that does to the right.
 */
function turnAt(end: Point, next: Point, bends: () => number): number {
  const across = end.x * next.y - end.y * next.x
  const along = end.x * next.x + end.y * next.y
  return along < 0 && Math.abs(across) < BACK ? (bends() < 0 ? Math.PI : -Math.PI) : Math.atan2(across, along)
}

/** A rectangle with round corners, turned about its centre. */
interface Box {
  readonly centre: Point
  readonly length: number
  readonly width: number
  readonly radius: number
  readonly angle: number
}

/** How far a corner may lie from where a box would have it, mm. */
const TRUE = 1e-9

/** The box that a chain is: a rectangle, a rounded one or a slot, however it is turned; else `undefined`. */
function asBox(chain: Chain): Box | undefined {
  const { list } = piecesOf(chain)
  const count = list.length
  if ((count !== 4 && count !== 8) || chain.vertices.length !== count) return undefined
  const lines = list.filter((piece) => !piece.isArc)
  const arcs = list.filter((piece) => piece.isArc)
  const [first] = lines
  if (first === undefined || (arcs.length !== 0 && arcs.length !== lines.length)) return undefined
  const radius = arcs[0]?.radius ?? 0
  const [cosine, sine] = [first.ux, first.uy]
  let [minU, minV, maxU, maxV] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const piece of list) {
    // In the box's own directions: along its first straight side, and to the left of it.
    for (const [x, y] of piece.isArc
      ? [[piece.cx, piece.cy]]
      : [
          [piece.x1, piece.y1],
          [piece.x2, piece.y2],
        ]) {
      const [u, v] = [Number(x) * cosine + Number(y) * sine, Number(y) * cosine - Number(x) * sine]
      const grown = piece.isArc ? radius : 0
      ;[minU, maxU] = [Math.min(minU, u - grown), Math.max(maxU, u + grown)]
      ;[minV, maxV] = [Math.min(minV, v - grown), Math.max(maxV, v + grown)]
    }
  }
  const [length, width] = [maxU - minU, maxV - minV]
  const [u, v] = [(minU + maxU) / 2, (minV + maxV) / 2]
  const centre = { x: u * cosine - v * sine, y: u * sine + v * cosine }
  const angle = Math.atan2(sine, cosine)
  if (!(length > 0 && width > 0)) return undefined
  const box = { centre, length, width, radius, angle }
  return matches(chain, turn(roundedRectangle(centre, length, width, radius), angle, centre))
    ? box
    : undefined
}

/** Do two chains have the same corners and bulges, wherever they start? */
function matches({ vertices }: Chain, other: Contour): boolean {
  if (other.shape === 'circle' || other.vertices.length !== vertices.length) return false
  const [start] = vertices
  if (start === undefined) return false
  const at = other.vertices.findIndex(({ x, y }) => Math.hypot(x - start.x, y - start.y) < TRUE)
  if (at < 0) return false
  return vertices.every(({ x, y, bulge }, index) => {
    const twin = other.vertices[(at + index) % vertices.length]
    return (
      twin !== undefined && Math.hypot(x - twin.x, y - twin.y) < TRUE && Math.abs(bulge - twin.bulge) < TRUE
    )
  })
}
