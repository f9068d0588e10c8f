/**
 * What a single contour measures: box, area, length, centre of area. Exact for lines and arcs.
 */
import { isStraight } from './arcs.ts'
import type { Bounds, Chain, Contour, Point } from './contour.ts'
import { piecesOf } from './pieces.ts'

/** Below this bulge the closed forms cancel; the first terms of their series are then true to 1e-11. */
const SHALLOW = 0.03

/**
 * The smallest box with sides along x and y that holds the contour, mm; exact where an arc reaches past its
 * ends. Throws for a chain without length.
 *
 * @example bounds(circle({ x: 0, y: 0 }, 5)) // -5 to 5 both ways
 */
export function bounds(contour: Contour): Bounds {
  if (contour.shape === 'circle') {
    const { centre, radius } = contour
    return {
      minX: centre.x - radius,
      minY: centre.y - radius,
      maxX: centre.x + radius,
      maxY: centre.y + radius,
    }
  }
  return straightBounds(contour.vertices) ?? boundsOfPieces(contour)
}

function boundsOfPieces(contour: Contour): Bounds {
  const { minX, minY, maxX, maxY } = piecesOf(contour)
  return { minX, minY, maxX, maxY }
}

/** The box of the corners, which is that of a chain without arcs, as most are; `null` where there is an arc. */
function straightBounds(vertices: Chain['vertices']): Bounds | null {
  let minX = Number.POSITIVE_INFINITY
  let minY = Number.POSITIVE_INFINITY
  let maxX = Number.NEGATIVE_INFINITY
  let maxY = Number.NEGATIVE_INFINITY
  for (const { x, y, bulge } of vertices) {
    if (bulge !== 0) return null
    minX = Math.min(minX, x)
    minY = Math.min(minY, y)
    maxX = Math.max(maxX, x)
    maxY = Math.max(maxY, y)
  }
  // A chain without length, or with a number that is none, is for `piecesOf` to refuse.
  return maxX > minX || maxY > minY ? { minX, minY, maxX, maxY } : null
}

/**
 * Square millimetres enclosed, positive for a contour that runs counter-clockwise. Throws for an open chain,
 * which encloses nothing.
 *
 * Source: trapezium (shoelace) formula for the chords, plus for each arc the circular segment
 * r^2 (theta - sin theta) / 2, written in chord and bulge so that flat arcs keep their digits.
 *
 * @example area(circle({ x: 0, y: 0 }, 1)) // 3.14159
 */
export function area(contour: Contour): number {
  if (contour.shape === 'circle') return Math.PI * contour.radius * contour.radius
  return sumOver(contour, 'an area').area
}

/**
 * Millimetres along the contour; of an open chain from end to end.
 *
 * @example length(circle({ x: 0, y: 0 }, 1)) // 6.28319
 */
export function length(contour: Contour): number {
  if (contour.shape === 'circle') return 2 * Math.PI * contour.radius
  let sum = 0
  for (const piece of piecesOf(contour).list) sum += piece.length
  return sum
}

/**
 * The centre of the enclosed area, where a plate cut to the contour would balance. It may lie outside a hollow
 * shape. Throws for an open chain and for one that encloses nothing.
 *
 * Source: first moments of trapezia; a circular segment over chord c adds the moment c^3 / 12 about the centre
 * of its circle, towards the arc (common handbook formula, from memory).
 *
 * @example centroid(rectangle(0, 0, 10, 4)) // (5, 2)
 */
export function centroid(contour: Contour): Point {
  if (contour.shape === 'circle') return contour.centre
  const sum = sumOver(contour, 'a centroid')
  if (sum.area === 0) throw new RangeError('A contour that encloses no area has no centroid.')
  return { x: sum.fromX + sum.momentX / sum.area, y: sum.fromY + sum.momentY / sum.area }
}

interface Sums {
  area: number
  momentX: number
  momentY: number
  readonly fromX: number
  readonly fromY: number
}

function sumOver(chain: Chain, what: string): Sums {
  const { vertices, closed } = chain
  const first = vertices[0]
  if (!closed || first === undefined) {
    throw new RangeError(
      `Only a closed contour has ${what}; this chain of ${vertices.length} vertices is open.`,
    )
  }
  // Measured from the first vertex: far from the origin the products would lose the digits that count.
  const sums: Sums = { area: 0, momentX: 0, momentY: 0, fromX: first.x, fromY: first.y }
  for (let i = 0; i < vertices.length; i++) {
    const from = vertices[i]!
    const to = vertices[i + 1] ?? first
    const x1 = from.x - first.x
    const y1 = from.y - first.y
    const x2 = to.x - first.x
    const y2 = to.y - first.y
    const triangle = (x1 * y2 - x2 * y1) / 2
    sums.area += triangle
    sums.momentX += (triangle * (x1 + x2)) / 3
    sums.momentY += (triangle * (y1 + y2)) / 3
    if (!isStraight(from.bulge)) addSegment(sums, x1, y1, x2, y2, from.bulge)
  }
  return sums
}

/** Adds the circular segment between a chord and its arc; a clockwise arc takes it away. */
function addSegment(sums: Sums, x1: number, y1: number, x2: number, y2: number, bulge: number): void {
  const dx = x2 - x1
  const dy = y2 - y1
  const squared = dx * dx + dy * dy
  if (squared === 0) return
  const b2 = bulge * bulge
  const piece =
    Math.abs(bulge) < SHALLOW
      ? squared * bulge * (1 / 3 + b2 * (1 / 15 + b2 * (-1 / 105 + b2 / 315)))
      : (squared / (8 * b2)) * ((1 + b2) * (1 + b2) * Math.atan(bulge) - bulge * (1 - b2))
  // How far the segment's own centroid lies from its chord, as a share of it, to the right of travel for a positive bulge.
  const rise =
    Math.abs(bulge) < SHALLOW
      ? bulge * (1 / 5 + b2 * (3 / 175 - (19 / 2625) * b2))
      : squared / (12 * piece) - (1 - b2) / (4 * bulge)
  sums.area += piece
  sums.momentX += piece * ((x1 + x2) / 2 + rise * dy)
  sums.momentY += piece * ((y1 + y2) / 2 - rise * dx)
}
