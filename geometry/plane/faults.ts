/**
 * What is wrong with a contour, in words. Makers never make a faulty one; this is for curves from outside, for
 * guards before a file is written, and for tests.
 */

import { closest, noWay } from './closest.ts'
import type { Chain, Contour, Vertex } from './contour.ts'
import { crossings } from './crossings.ts'
import { area } from './measure.ts'
import { neighbours } from './neighbours.ts'
import { type Piece, piecesOf } from './pieces.ts'
import { boxGapSquared, distanceToPiece } from './spot.ts'
import { SAME_POINT } from './tolerance.ts'

/** Up to this many pieces every pair is looked at; above, only pairs whose boxes meet. */
const FEW = 200

/**
 * A meeting of two neighbours this near to their common vertex is that vertex, mm: where they are tangent,
 * rounding of a coordinate (1e-13) moves the computed meeting by its root times the root of the radius.
 */
const NEAR_VERTEX = 1e-4
const NEAR_VERTEX_PER_RADIUS = 1e-6

/**
 * Sentences that say what is wrong with a contour; none for a sound one. Found are: too few vertices, numbers
 * that are not finite, neighbouring vertices in one place (within SAME_POINT), a line that crosses or touches
 * itself or doubles back (exact for lines and arcs), a closed contour that runs clockwise or encloses nothing,
 * a circle without radius. Of several crossings the first is named.
 *
 * @example faults({ shape: 'circle', centre: { x: 0, y: 0 }, radius: -1 }) // ['The radius of the circle is -1 mm; …']
 */
export function faults(contour: Contour): string[] {
  if (contour.shape === 'circle') {
    const { centre, radius } = contour
    if (!Number.isFinite(centre.x) || !Number.isFinite(centre.y)) {
      return [`The centre of the circle is (${centre.x}, ${centre.y}); both must be finite lengths in mm.`]
    }
    if (radius > 0 && Number.isFinite(radius)) return []
    return [`The radius of the circle is ${radius} mm; it must be a finite length above 0.`]
  }
  const found = vertexFaults(contour)
  // A chain with these cannot be measured any further.
  if (found.length > 0) return found
  const crossing = selfCrossing(piecesOf(contour).list, contour.closed)
  if (crossing !== undefined) found.push(crossing)
  if (contour.closed) {
    const enclosed = area(contour)
    if (Math.abs(enclosed) <= SAME_POINT * SAME_POINT) found.push('The closed chain encloses no area.')
    else if (enclosed < 0) {
      found.push('The closed chain runs clockwise; a closed contour must run counter-clockwise.')
    }
  }
  return found
}

function vertexFaults({ vertices, closed }: Chain): string[] {
  if (vertices.length < 2) {
    const kind = closed ? 'A closed chain' : 'An open chain'
    return [`${kind} needs at least 2 vertices; this one has ${vertices.length}.`]
  }
  const found: string[] = []
  vertices.forEach(({ x, y, bulge }, i) => {
    if (Number.isFinite(x) && Number.isFinite(y) && Number.isFinite(bulge)) return
    found.push(`Vertex ${i + 1} is (${x}, ${y}) with bulge ${bulge}; all three must be finite.`)
  })
  if (found.length > 0) return found
  const count = closed ? vertices.length : vertices.length - 1
  for (let i = 0; i < count; i++) {
    const next = (i + 1) % vertices.length
    if (!together(vertices[i], vertices[next])) continue
    found.push(
      next === 0
        ? `The last vertex (${i + 1}) repeats the first; a closed chain closes by itself.`
        : `Vertices ${i + 1} and ${next + 1} lie in one place.`,
    )
  }
  return found
}

function together(a: Vertex | undefined, b: Vertex | undefined): boolean {
  return a !== undefined && b !== undefined && Math.hypot(a.x - b.x, a.y - b.y) <= SAME_POINT
}

function selfCrossing(pieces: readonly Piece[], closed: boolean): string | undefined {
  const count = pieces.length
  const index = count > FEW ? neighbours(pieces) : undefined
  for (let i = 0; i < count; i++) {
    const a = pieces[i]
    if (a === undefined) continue
    for (const j of index?.near(a, SAME_POINT) ?? laterThan(i, count)) {
      const b = pieces[j]
      if (j <= i || b === undefined) continue
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
  const near = NEAR_VERTEX + NEAR_VERTEX_PER_RADIUS * Math.max(a.radius, b.radius)
  const met: number[] = []
  const count = crossings(a, b, met)
  for (let i = 0; i < count; i++) {
    const x = met[2 * i] ?? 0
    const y = met[2 * i + 1] ?? 0
    if (follows && Math.hypot(x - a.x2, y - a.y2) <= near) continue
    if (closes && Math.hypot(x - a.x1, y - a.y1) <= near) continue
    return `cross or touch at (${words(x)}, ${words(y)})`
  }
  // An end that comes to lie on the other segment without crossing it touches too.
  if (follows && closes) return undefined
  const [freeOfA, freeOfB] = follows
    ? [
        { x: a.x1, y: a.y1 },
        { x: b.x2, y: b.y2 },
      ]
    : [
        { x: a.x2, y: a.y2 },
        { x: b.x1, y: b.y1 },
      ]
  if (distanceToPiece(b, freeOfA.x, freeOfA.y) <= SAME_POINT) {
    return `cross or touch at (${words(freeOfA.x)}, ${words(freeOfA.y)})`
  }
  if (distanceToPiece(a, freeOfB.x, freeOfB.y) <= SAME_POINT) {
    return `cross or touch at (${words(freeOfB.x)}, ${words(freeOfB.y)})`
  }
  return undefined
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
