/**
 * Lines and arcs as any reader of a drawing can name them: two ends and the middle. Two segments with the same
 * three points are the same, whichever way round they run and however the file says it.
 */
import type { Contour, Point } from '../../geometry/index.ts'

export interface Segment {
  readonly from: Point
  readonly middle: Point
  readonly to: Point
}

export interface DrawnCircle {
  readonly centre: Point
  readonly radius: number
}

/** What one contour came out as. */
export type Drawn = DrawnCircle | readonly Segment[]

export function isCircle(drawn: Drawn): drawn is DrawnCircle {
  return 'radius' in drawn
}

/**
 * The middle of a bulged segment: bulge times half the chord to the right of the chord's middle (Autodesk
 * ActiveX reference, "GetBulge": positive runs counter-clockwise, so the arc lies right of the chord).
 */
export function bulgedSegment(from: Point, to: Point, bulge: number): Segment {
  const middle = {
    x: (from.x + to.x) / 2 + (bulge / 2) * (to.y - from.y),
    y: (from.y + to.y) / 2 - (bulge / 2) * (to.x - from.x),
  }
  return { from: { x: from.x, y: from.y }, middle, to: { x: to.x, y: to.y } }
}

/** The segments of a list of vertices with bulges. */
export function bulgedSegments(
  vertices: readonly { x: number; y: number; bulge?: number | undefined }[],
  closed: boolean,
): Segment[] {
  return vertices.flatMap((from, index) => {
    const to = vertices[index + 1] ?? (closed ? vertices[0] : undefined)
    return to === undefined ? [] : [bulgedSegment(from, to, from.bulge ?? 0)]
  })
}

export function drawnOf(contour: Contour): Drawn {
  return contour.shape === 'circle' ? contour : bulgedSegments(contour.vertices, contour.closed)
}

function apart(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y)
}

function segmentError(a: Segment, b: Segment): number {
  const forwards = Math.max(apart(a.from, b.from), apart(a.to, b.to))
  const backwards = Math.max(apart(a.from, b.to), apart(a.to, b.from))
  return Math.max(Math.min(forwards, backwards), apart(a.middle, b.middle))
}

/** The largest distance between what was drawn and what was wanted, mm; infinite where something is missing. */
export function drawnError(a: Drawn, b: Drawn): number {
  if (isCircle(a) || isCircle(b)) {
    if (!isCircle(a) || !isCircle(b)) return Number.POSITIVE_INFINITY
    return apart(a.centre, b.centre) + Math.abs(a.radius - b.radius)
  }
  if (a.length !== b.length) return Number.POSITIVE_INFINITY
  const left = [...b]
  let worst = 0
  for (const segment of a) {
    const errors = left.map((other) => segmentError(segment, other))
    const least = Math.min(...errors)
    worst = Math.max(worst, least)
    left.splice(errors.indexOf(least), 1)
  }
  return worst
}

/** For each thing wanted, the one drawn nearest to it; all must be used, or the error is infinite. */
export function worstError(wanted: readonly Drawn[], drawn: readonly Drawn[]): number {
  if (wanted.length !== drawn.length) return Number.POSITIVE_INFINITY
  const left = [...drawn]
  let worst = 0
  for (const each of wanted) {
    const errors = left.map((other) => drawnError(each, other))
    const least = Math.min(...errors)
    worst = Math.max(worst, least)
    left.splice(errors.indexOf(least), 1)
  }
  return worst
}
