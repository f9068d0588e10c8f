/**
 * Arcs between two ways of saying them: two ends and a bulge, as a chain stores them, or centre, radius and
 * sweep, as a compass draws them.
 */
import type { Point, Vertex } from './contour.ts'
import { SAME_POINT, STRAIGHT_BULGE } from './tolerance.ts'

export interface Arc {
  readonly centre: Point
  readonly radius: number
  /** Radians from the x axis to the start, in (-pi, pi]. */
  readonly startAngle: number
  /** Radians travelled, counter-clockwise positive, less than a full turn either way. */
  readonly sweep: number
}

/** True where a bulge bends so little that its segment is treated as a straight line. */
export function isStraight(bulge: number): boolean {
  return Math.abs(bulge) < STRAIGHT_BULGE
}

/**
 * The bulge of an arc that sweeps `sweep` radians: the tangent of a quarter of it, negative clockwise.
 * Throws for a full turn or more, which one segment cannot hold.
 *
 * Source: Autodesk ActiveX reference, "GetBulge".
 *
 * @example bulgeOf(Math.PI) // 1, a half circle
 */
export function bulgeOf(sweep: number): number {
  if (!(Math.abs(sweep) < 2 * Math.PI)) {
    throw new RangeError(`An arc must sweep less than a full turn (6.283 radians), not ${sweep}.`)
  }
  return Math.tan(sweep / 4)
}

/** The sweep in radians of a segment with this bulge; 0 is straight. The inverse of `bulgeOf`. */
export function sweepOf(bulge: number): number {
  return 4 * Math.atan(bulge)
}

/**
 * The arc a chain runs along from one vertex to the next. Throws where there is none: the segment is straight,
 * or its ends are one point.
 *
 * Source: bulge from the Autodesk ActiveX reference, "GetBulge"; with chord c the half-angle formulas give
 * radius c (1 + b^2) / (4 |b|) and a centre c (1 - b^2) / (4 b) to the left of the chord's middle.
 *
 * @example arcBetween({ x: 10, y: 0, bulge: Math.SQRT2 - 1 }, { x: 0, y: 10 }) // a quarter about (0, 0), radius 10
 */
export function arcBetween(from: Vertex, to: Point): Arc {
  const { bulge } = from
  if (!Number.isFinite(bulge) || isStraight(bulge)) {
    throw new RangeError(`A segment with bulge ${bulge} is not an arc: an arc's bulge is finite and not 0.`)
  }
  const dx = to.x - from.x
  const dy = to.y - from.y
  const chord = Math.hypot(dx, dy)
  if (chord <= SAME_POINT) {
    throw new RangeError(`An arc needs two ends apart from each other, not (${from.x}, ${from.y}) twice.`)
  }
  const left = (1 - bulge * bulge) / (4 * bulge)
  const x = (from.x + to.x) / 2 - dy * left
  const y = (from.y + to.y) / 2 + dx * left
  return {
    centre: { x, y },
    radius: (chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge)),
    startAngle: Math.atan2(from.y - y, from.x - x),
    sweep: sweepOf(bulge),
  }
}

/**
 * The two ends of an arc, the first with its bulge: what a chain would store. The inverse of `arcBetween`.
 *
 * @example arcEnds({ centre: { x: 5, y: 0 }, radius: 5, startAngle: Math.PI, sweep: Math.PI }).from.bulge // 1
 */
export function arcEnds(arc: Arc): { readonly from: Vertex; readonly to: Point } {
  const { centre, radius, startAngle, sweep } = arc
  return {
    from: {
      x: centre.x + radius * Math.cos(startAngle),
      y: centre.y + radius * Math.sin(startAngle),
      bulge: bulgeOf(sweep),
    },
    to: {
      x: centre.x + radius * Math.cos(startAngle + sweep),
      y: centre.y + radius * Math.sin(startAngle + sweep),
    },
  }
}
