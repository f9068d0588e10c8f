/**
 * Single lines and arcs to try closed forms on, and slow ways of asking the same: an arc is walked by turning a vector,
 * step by step, and the shortest way is looked for on a grid of places that grows finer where it is shortest.
 */
import fc from 'fast-check'
import type { Chain, Point } from '../../../geometry/plane/index.ts'
import { type Piece, piecesOf } from '../../../geometry/plane/pieces.ts'
import { apart, evenly } from './shapes.ts'

/** A line, or an arc about a centre from one angle on by a sweep, radians, counter-clockwise where positive. */
export type Segment =
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point }
  | {
      readonly kind: 'arc'
      readonly centre: Point
      readonly radius: number
      readonly start: number
      readonly sweep: number
    }

/** The place a share `t` along it. */
export function placeOn(segment: Segment, t: number): Point {
  if (segment.kind === 'line') {
    const { from, to } = segment
    return { x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) }
  }
  const angle = segment.start + t * segment.sweep
  return {
    x: segment.centre.x + segment.radius * Math.cos(angle),
    y: segment.centre.y + segment.radius * Math.sin(angle),
  }
}

/** The same as the open chain that the engine knows; the bulge is the tangent of a quarter of the sweep. */
export function chainOf(segment: Segment): Chain {
  const bulge = segment.kind === 'line' ? 0 : Math.tan(segment.sweep / 4)
  return {
    shape: 'chain',
    closed: false,
    vertices: [
      { ...placeOn(segment, 0), bulge },
      { ...placeOn(segment, 1), bulge: 0 },
    ],
  }
}

export function pieceOf(segment: Segment): Piece {
  const [piece] = piecesOf(chainOf(segment)).list
  if (!piece) throw new Error('a segment without length')
  return piece
}

export const arc = (x: number, y: number, radius: number, from: number, to: number): Segment => ({
  kind: 'arc',
  centre: { x, y },
  radius,
  start: (from * Math.PI) / 180,
  sweep: ((to - from) * Math.PI) / 180,
})

export const straight = (x1: number, y1: number, x2: number, y2: number): Segment => ({
  kind: 'line',
  from: { x: x1, y: y1 },
  to: { x: x2, y: y2 },
})

/** Lines and arcs of either turn, short ones and nearly whole circles, within some 30 mm. */
export const segments: fc.Arbitrary<Segment> = fc.oneof(
  fc
    .tuple(evenly(-20, 20), evenly(-20, 20), evenly(-20, 20), evenly(-20, 20))
    .filter(([x1, y1, x2, y2]) => Math.hypot(x2 - x1, y2 - y1) > 0.5)
    .map(([x1, y1, x2, y2]) => straight(x1, y1, x2, y2)),
  fc
    .tuple(evenly(-12, 12), evenly(-12, 12), evenly(1, 18), evenly(-180, 180), evenly(15, 345), fc.boolean())
    .map(([x, y, radius, from, turn, left]) => arc(x, y, radius, from, from + (left ? turn : -turn))),
)

/** The least distance from a place to a segment, to a millionth: the best of a row of places, and rows about it. */
export function searchedFrom(
  segment: Segment,
  point: Point,
): { readonly distance: number; readonly t: number } {
  const at = (t: number) => apart(placeOn(segment, t), point)
  let best = { distance: Number.POSITIVE_INFINITY, t: 0 }
  let [from, to] = [0, 1]
  for (let round = 0; round < 7; round++) {
    const step = (to - from) / 24
    for (let i = 0; i <= 24; i++) {
      const t = from + i * step
      if (at(t) < best.distance) best = { distance: at(t), t }
    }
    ;[from, to] = [Math.max(0, best.t - step), Math.min(1, best.t + step)]
  }
  return best
}

/** The least distance between two segments: from places all along the first, finer about the three best of them. */
export function searchedBetween(a: Segment, b: Segment): number {
  const from = (t: number) => ({ ...searchedFrom(b, placeOn(a, t)), along: t })
  const row = Array.from({ length: 61 }, (_, i) => from(i / 60))
  const starts = row.filter(
    ({ distance }, i) =>
      distance <= (row[i - 1]?.distance ?? Number.POSITIVE_INFINITY) &&
      distance <= (row[i + 1]?.distance ?? Number.POSITIVE_INFINITY),
  )
  let least = Number.POSITIVE_INFINITY
  for (const start of starts) {
    let [centre, step] = [start.along, 1 / 60]
    for (let round = 0; round < 9; round++) {
      let near = from(centre)
      for (let i = -4; i <= 4; i++) {
        const tried = from(Math.min(1, Math.max(0, centre + (i / 4) * step)))
        if (tried.distance < near.distance) near = tried
      }
      ;[centre, step] = [near.along, step / 3]
      least = Math.min(least, near.distance)
    }
  }
  return least
}
