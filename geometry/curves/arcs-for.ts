/** Curves of any sort as arcs of circles, as near as is wanted. */
import type { Point, Vertex } from '../plane/index.ts'
import type { Segment } from './path-words.ts'

/** Places along a curve at which an arc is held against it. */
const SAMPLES = 12
/** A curve is halved at most so often; then what is left is a line. */
const DEEPEST = 14

/** A radius so many times its chord, or so small a part of it, is lost in the rounding of numbers. */
const BEYOND_MEASURE = 1e6

type Curve = (share: number) => Point

/**
 * The corners of a chain of arcs and lines that follows a segment to `tolerance`, without the segment's last place.
 * Arcs of circles stay as they are; other curves are halved until one arc through three of their places is near enough.
 */
export function arcsFor(from: Point, segment: Segment, tolerance: number): Vertex[] {
  if (segment.kind === 'line') return [{ ...from, bulge: 0 }]
  if (segment.kind === 'cubic') return fitted(cubicAt(from, segment), tolerance)
  return arcSegment(from, segment, tolerance)
}

const cubicAt =
  (a: Point, { c1, c2, to }: Extract<Segment, { kind: 'cubic' }>): Curve =>
  (t) => {
    const u = 1 - t
    const [p, q, r, s] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t]
    return { x: p * a.x + q * c1.x + r * c2.x + s * to.x, y: p * a.y + q * c1.y + r * c2.y + s * to.y }
  }

function fitted(curve: Curve, tolerance: number, t0 = 0, t1 = 1, depth = 0): Vertex[] {
  const a = curve(t0)
  const b = curve(t1)
  const bulge = bulgeThrough(a, curve((t0 + t1) / 2), b)
  const near = Math.abs(bulge) <= 1 && strays(curve, t0, t1, a, b, bulge) <= tolerance
  // The first halving is always made: a curve that comes back to where it began looks like nothing at all.
  if ((near && depth > 0) || depth >= DEEPEST) return [{ ...a, bulge: near ? bulge : 0 }]
  const middle = (t0 + t1) / 2
  return [
    ...fitted(curve, tolerance, t0, middle, depth + 1),
    ...fitted(curve, tolerance, middle, t1, depth + 1),
  ]
}

/** Bulge of the arc from a through m to b: the tangent of half the angle that the chord makes at the middle place. */
function bulgeThrough(a: Point, m: Point, b: Point): number {
  const [ux, uy, vx, vy] = [m.x - a.x, m.y - a.y, b.x - m.x, b.y - m.y]
  // The angle between the two chords is half the sweep, by the inscribed angle.
  const half = Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy)
  return Math.tan(half / 2)
}

/** The farthest that the curve strays from the arc between two of its places. */
function strays(curve: Curve, t0: number, t1: number, a: Point, b: Point, bulge: number): number {
  const chord = Math.hypot(b.x - a.x, b.y - a.y)
  if (chord === 0) return Number.POSITIVE_INFINITY
  const [ux, uy] = [(b.x - a.x) / chord, (b.y - a.y) / chord]
  let most = 0
  for (let index = 1; index < SAMPLES; index++) {
    const at = curve(t0 + ((t1 - t0) * index) / SAMPLES)
    const along = (at.x - a.x) * ux + (at.y - a.y) * uy
    const aside = (at.y - a.y) * ux - (at.x - a.x) * uy
    most = Math.max(most, Math.abs(offArc(along, aside, chord, bulge)))
  }
  return most
}

/** Distance of a place from an arc, in the frame of its chord. */
function offArc(along: number, aside: number, chord: number, bulge: number): number {
  const beyond = Math.max(-along, along - chord, 0)
  if (Math.abs(bulge) < 1e-9) return Math.hypot(aside, beyond)
  const radius = (chord * (1 + bulge * bulge)) / (4 * bulge)
  // A positive bulge lies to the right of its chord and its centre to the left.
  const centre = radius - (bulge * chord) / 2
  const off = Math.hypot(along - chord / 2, aside - centre) - Math.abs(radius)
  return beyond > 0 ? Math.hypot(off, beyond) : off
}

/**
 * Ends and radii of an elliptical arc to its centre and angles. Source: W3C SVG 2, implementation notes, "Conversion
 * from endpoint to center parameterization", with radii that are too small made larger.
 */
function arcSegment(from: Point, arc: Extract<Segment, { kind: 'arc' }>, tolerance: number): Vertex[] {
  const { to, large, sweep } = arc
  let { rx, ry } = arc
  if (from.x === to.x && from.y === to.y) return []
  // SVG 1.1, F.6.2: without a radius an arc is a straight line. So is one whose radius is beyond any measure of its chord.
  const chord = Math.hypot(to.x - from.x, to.y - from.y)
  const measurable = (radius: number) => radius > chord / BEYOND_MEASURE && radius < chord * BEYOND_MEASURE
  if (!measurable(rx) || !measurable(ry)) return [{ ...from, bulge: 0 }]
  const turn = (arc.turn * Math.PI) / 180
  const [cosine, sine] = [Math.cos(turn), Math.sin(turn)]
  const [dx, dy] = [(from.x - to.x) / 2, (from.y - to.y) / 2]
  const x = cosine * dx + sine * dy
  const y = cosine * dy - sine * dx
  const short = (x * x) / (rx * rx) + (y * y) / (ry * ry)
  if (short > 1) {
    rx *= Math.sqrt(short)
    ry *= Math.sqrt(short)
  }
  const below = rx * rx * y * y + ry * ry * x * x
  const factor = Math.sqrt(Math.max(0, (rx * rx * ry * ry - below) / below)) * (large === sweep ? -1 : 1)
  const [cx, cy] = [(factor * rx * y) / ry, (-factor * ry * x) / rx]
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }
  const centre = { x: cosine * cx - sine * cy + middle.x, y: sine * cx + cosine * cy + middle.y }
  const start = Math.atan2((y - cy) / ry, (x - cx) / rx)
  let angle = Math.atan2((-y - cy) / ry, (-x - cx) / rx) - start
  if (sweep && angle < 0) angle += 2 * Math.PI
  if (!sweep && angle > 0) angle -= 2 * Math.PI
  const at: Curve = (share) => {
    const here = start + angle * share
    const [ex, ey] = [rx * Math.cos(here), ry * Math.sin(here)]
    return { x: centre.x + cosine * ex - sine * ey, y: centre.y + sine * ex + cosine * ey }
  }
  if (Math.abs(rx - ry) > 1e-9 * Math.max(rx, ry)) return fitted(at, tolerance)
  // A circle's own arc, in pieces of at most half a turn.
  const pieces = Math.abs(angle) > Math.PI ? 2 : 1
  const bulge = Math.tan(angle / pieces / 4)
  return Array.from({ length: pieces }, (_, index) => ({
    ...(index === 0 ? from : at(index / pieces)),
    bulge,
  }))
}
