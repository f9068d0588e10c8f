/**
 * A contour taken apart into lines and arcs, with everything that measuring asks for again and again worked out
 * once. Kept beside the contour for as long as the contour lives: contours never change.
 */
import { notes } from '../quantity/notes.ts'
import { isStraight, sweepOf } from './arcs.ts'
import type { Bounds, Chain, Circle, Contour } from './contour.ts'

/** One line or arc. A circle is one arc of a full turn that starts and ends at its rightmost point. */
export interface Piece extends Bounds {
  readonly isArc: boolean
  readonly x1: number
  readonly y1: number
  readonly x2: number
  readonly y2: number
  /** A line's unit direction; for an arc the unit direction from its centre to its middle. */
  readonly ux: number
  readonly uy: number
  /** Millimetres along the piece. */
  readonly length: number
  /** Centre, radius and sweep of an arc; a line has zeros. */
  readonly cx: number
  readonly cy: number
  readonly radius: number
  readonly sweep: number
  /** Cosine of half the sweep: a direction lies in the arc if its cosine to (ux, uy) is no less. */
  readonly cosHalf: number
}

export interface Pieces extends Bounds {
  readonly list: readonly Piece[]
  readonly closed: boolean
}

/** Below -1, so that no rounding can leave a direction out of a full circle. */
const EVERY_DIRECTION = -2

/**
 * Added to the cosine of half the sweep before an arc may reach past its ends: an arc that ends on a compass
 * point of its circle then takes its box from that end, without the rounding of centre plus radius. What an
 * arc can reach past an end this close is below 1e-12 of its radius.
 */
const ENDS_THERE = 1e-12

const known = notes<Contour, Pieces>()

/**
 * The lines and arcs of a contour in order, and the box around them. A segment without length is left out: it
 * adds nothing to any measure (`faults` reports it).
 */
export function piecesOf(contour: Contour): Pieces {
  let pieces = known.get(contour)
  if (pieces === undefined) {
    pieces = contour.shape === 'circle' ? circlePieces(contour) : chainPieces(contour)
    known.set(contour, pieces)
  }
  return pieces
}

function circlePieces(circle: Circle): Pieces {
  const { x, y } = circle.centre
  const { radius } = circle
  const box = { minX: x - radius, minY: y - radius, maxX: x + radius, maxY: y + radius }
  const piece: Piece = {
    isArc: true,
    x1: x + radius,
    y1: y,
    x2: x + radius,
    y2: y,
    ux: -1,
    uy: 0,
    length: 2 * Math.PI * radius,
    cx: x,
    cy: y,
    radius,
    sweep: 2 * Math.PI,
    cosHalf: EVERY_DIRECTION,
    ...box,
  }
  return { list: [piece], closed: true, ...box }
}

function chainPieces(chain: Chain): Pieces {
  const { vertices, closed } = chain
  const list: Piece[] = []
  let minX = Number.POSITIVE_INFINITY
  let minY = Number.POSITIVE_INFINITY
  let maxX = Number.NEGATIVE_INFINITY
  let maxY = Number.NEGATIVE_INFINITY
  const last = closed ? vertices.length : vertices.length - 1
  for (let i = 0; i < last; i++) {
    const from = vertices[i]!
    const to = vertices[i + 1] ?? vertices[0]!
    if (from.x === to.x && from.y === to.y) continue
    const piece = isStraight(from.bulge)
      ? linePiece(from.x, from.y, to.x, to.y)
      : arcPiece(from.x, from.y, to.x, to.y, from.bulge)
    list.push(piece)
    minX = Math.min(minX, piece.minX)
    minY = Math.min(minY, piece.minY)
    maxX = Math.max(maxX, piece.maxX)
    maxY = Math.max(maxY, piece.maxY)
  }
  if (list.length === 0) {
    throw new RangeError(
      `A chain needs two vertices apart from each other to be measured; this one has ${vertices.length} in one place.`,
    )
  }
  return { list, closed, minX, minY, maxX, maxY }
}

function linePiece(x1: number, y1: number, x2: number, y2: number): Piece {
  const dx = x2 - x1
  const dy = y2 - y1
  const length = Math.sqrt(dx * dx + dy * dy)
  return {
    isArc: false,
    x1,
    y1,
    x2,
    y2,
    ux: dx / length,
    uy: dy / length,
    length,
    cx: 0,
    cy: 0,
    radius: 0,
    sweep: 0,
    cosHalf: 0,
    minX: Math.min(x1, x2),
    minY: Math.min(y1, y2),
    maxX: Math.max(x1, x2),
    maxY: Math.max(y1, y2),
  }
}

/** Formulas as in `arcBetween`; cos(sweep / 2) = (1 - b^2) / (1 + b^2) needs no angle. */
function arcPiece(x1: number, y1: number, x2: number, y2: number, bulge: number): Piece {
  const dx = x2 - x1
  const dy = y2 - y1
  const chord = Math.sqrt(dx * dx + dy * dy)
  const square = bulge * bulge
  const left = (1 - square) / (4 * bulge)
  const cx = (x1 + x2) / 2 - dy * left
  const cy = (y1 + y2) / 2 + dx * left
  const radius = (chord * (1 + square)) / (4 * Math.abs(bulge))
  // The middle of the arc lies to the right of the chord for a positive bulge, to the left for a negative one.
  const sign = bulge > 0 ? 1 : -1
  const ux = (sign * dy) / chord
  const uy = (-sign * dx) / chord
  const cosHalf = (1 - square) / (1 + square)
  const sweep = sweepOf(bulge)
  const past = cosHalf + ENDS_THERE
  return {
    isArc: true,
    x1,
    y1,
    x2,
    y2,
    ux,
    uy,
    length: Math.abs(sweep) * radius,
    cx,
    cy,
    radius,
    sweep,
    cosHalf,
    // An arc reaches past its ends only where it runs through a compass point of its circle.
    minX: -ux > past ? Math.min(cx - radius, x1, x2) : Math.min(x1, x2),
    minY: -uy > past ? Math.min(cy - radius, y1, y2) : Math.min(y1, y2),
    maxX: ux > past ? Math.max(cx + radius, x1, x2) : Math.max(x1, x2),
    maxY: uy > past ? Math.max(cy + radius, y1, y2) : Math.max(y1, y2),
  }
}
