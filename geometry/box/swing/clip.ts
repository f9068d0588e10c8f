/** A convex polygon against an upright rectangle: how far one is in the other, or beside it. Millimetres. */
import type { Point } from '../../plane/index.ts'

/** A rectangle of the section; `u` runs away from the hinge, `z` up. */
export interface Slab {
  readonly u0: number
  readonly u1: number
  readonly z0: number
  readonly z1: number
}

/** What of a convex polygon lies on one side of a line `value(point) >= 0`. */
function half(points: readonly Point[], value: (point: Point) => number): Point[] {
  const kept: Point[] = []
  points.forEach((point, index) => {
    const next = points[(index + 1) % points.length] ?? point
    const [here, there] = [value(point), value(next)]
    if (here >= 0) kept.push(point)
    if (here < 0 !== there < 0) {
      const share = here / (here - there)
      kept.push({ x: point.x + share * (next.x - point.x), y: point.y + share * (next.y - point.y) })
    }
  })
  return kept
}

export interface Meeting {
  /** How far the polygon reaches into the rectangle along u and along z; both 0 where they only touch. */
  readonly along: number
  readonly up: number
  /** Room left between them along u at the heights that both have; `Infinity` where they have none in common. */
  readonly beside: number
  /** Middle of what they share, or of the nearest place. */
  readonly at: Point
}

const NOWHERE: Meeting = { along: 0, up: 0, beside: Number.POSITIVE_INFINITY, at: { x: 0, y: 0 } }

/**
 * How a convex polygon, x as u and y as z, meets a rectangle. Sutherland and Hodgman, "Reentrant Polygon Clipping",
 * Communications of the ACM 17 (1974).
 */
export function meet(polygon: readonly Point[], { u0, u1, z0, z1 }: Slab): Meeting {
  const band = half(
    half(polygon, (point) => point.y - z0),
    (point) => z1 - point.y,
  )
  if (band.length < 2) return NOWHERE
  const us = extent(band, (point) => point.x)
  const zs = extent(band, (point) => point.y)
  // What only touches the band's edge shares no height with the rectangle.
  if (zs.most - zs.least <= HAIR) return NOWHERE
  const beside = Math.max(u0 - us.most, us.least - u1)
  if (beside >= 0)
    return {
      along: 0,
      up: 0,
      beside,
      at: { x: us.least > u1 ? (us.least + u1) / 2 : (us.most + u0) / 2, y: (zs.least + zs.most) / 2 },
    }
  const shared = half(
    half(band, (point) => point.x - u0),
    (point) => u1 - point.x,
  )
  if (shared.length < 3) return { ...NOWHERE, beside: 0 }
  const [su, sz] = [extent(shared, (point) => point.x), extent(shared, (point) => point.y)]
  return {
    // Out by the shorter way along u, whichever side that is.
    along: Math.min(su.most - u0, u1 - su.least),
    up: sz.most - sz.least,
    beside: 0,
    at: { x: (su.least + su.most) / 2, y: (sz.least + sz.most) / 2 },
  }
}

/** Millimetres: what touches does not bite. */
const HAIR = 1e-9

function extent(points: readonly Point[], of: (point: Point) => number) {
  let least = Number.POSITIVE_INFINITY
  let most = Number.NEGATIVE_INFINITY
  for (const point of points) {
    const value = of(point)
    if (value < least) least = value
    if (value > most) most = value
  }
  return { least, most }
}
