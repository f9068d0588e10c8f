/**
 * Contours to try the laws on, and the slow, plain ways of measuring them that the engine is held against.
 * The ways here share no formula with the engine: arcs come from turning complex numbers, distances from dense
 * samples, inside and outside from winding angles.
 */
import fc from 'fast-check'
import {
  type Chain,
  type Contour,
  chain,
  circle,
  oval,
  type Placement,
  type Point,
  place,
  rectangle,
  roundedRectangle,
  stadium,
  type Vertex,
} from '../../../geometry/plane/index.ts'

/** Distance between two points. */
export function apart(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y)
}

/**
 * The point a share `t` along the arc from z1 to z2 that turns by theta = 4 atan(bulge). The centre c of the
 * turn solves z2 - c = e^(i theta) (z1 - c).
 */
function along(from: Vertex, to: Point, t: number): Point {
  if (from.bulge === 0) return { x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) }
  const theta = 4 * Math.atan(from.bulge)
  const cosine = Math.cos(theta)
  const sine = Math.sin(theta)
  const topX = to.x - (cosine * from.x - sine * from.y)
  const topY = to.y - (sine * from.x + cosine * from.y)
  const square = (1 - cosine) ** 2 + sine ** 2
  const cx = (topX * (1 - cosine) + topY * -sine) / square
  const cy = (topY * (1 - cosine) - topX * -sine) / square
  const c = Math.cos(theta * t)
  const s = Math.sin(theta * t)
  return {
    x: cx + c * (from.x - cx) - s * (from.y - cy),
    y: cy + s * (from.x - cx) + c * (from.y - cy),
  }
}

/** `count` points along every segment, evenly spaced; a circle is taken as two half turns. */
export function sampled(contour: Contour, count: number): Point[] {
  const { vertices, closed } = contour.shape === 'circle' ? twoHalves(contour) : contour
  const points: Point[] = []
  const last = closed ? vertices.length : vertices.length - 1
  for (let i = 0; i < last; i++) {
    const from = vertices[i] as Vertex
    const to = vertices[(i + 1) % vertices.length] as Vertex
    for (let k = 0; k < count; k++) points.push(along(from, to, k / count))
  }
  if (!closed) points.push(vertices[vertices.length - 1] as Vertex)
  return points
}

function twoHalves({ centre, radius }: { readonly centre: Point; readonly radius: number }): Chain {
  return {
    shape: 'chain',
    closed: true,
    vertices: [
      { x: centre.x - radius, y: centre.y, bulge: 1 },
      { x: centre.x + radius, y: centre.y, bulge: 1 },
    ],
  }
}

/** The longest step between neighbouring samples: no place of the contour is farther than half of it from one. */
export function longestStep(points: readonly Point[]): number {
  let longest = 0
  for (let i = 1; i < points.length; i++) {
    longest = Math.max(longest, apart(points[i - 1] as Point, points[i] as Point))
  }
  return longest
}

/** Least distance between any two samples. */
export function sampledDistance(a: readonly Point[], b: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY
  for (const p of a) for (const q of b) least = Math.min(least, (p.x - q.x) ** 2 + (p.y - q.y) ** 2)
  return Math.sqrt(least)
}

/** How often the polygon winds round the point, by adding up the angles it is seen under. */
export function windings(point: Point, polygon: readonly Point[]): number {
  let angle = 0
  for (let i = 0; i < polygon.length; i++) {
    const p = polygon[i] as Point
    const q = polygon[(i + 1) % polygon.length] as Point
    const ax = p.x - point.x
    const ay = p.y - point.y
    const bx = q.x - point.x
    const by = q.y - point.y
    angle += Math.atan2(ax * by - ay * bx, ax * bx + ay * by)
  }
  return Math.round(angle / (2 * Math.PI))
}

/** Depth of a point in a densely sampled outline: positive inside, negative outside. */
export function sampledDepth(point: Point, outline: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY
  for (const p of outline) least = Math.min(least, apart(point, p))
  return windings(point, outline) === 0 ? 0 - least : least
}

/** Area of a polygon by triangles from the origin. */
export function polygonArea(points: readonly Point[]): number {
  let sum = 0
  for (let i = 0; i < points.length; i++) {
    const p = points[i] as Point
    const q = points[(i + 1) % points.length] as Point
    sum += (p.x * q.y - q.x * p.y) / 2
  }
  return sum
}

/**
 * Numbers spread evenly between two bounds, in steps of 1e-4. (`fc.double` spreads evenly over all numbers a
 * machine can write, most of which lie next to 0.)
 */
export const evenly = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.ceil(min * 1e4), max: Math.floor(max * 1e4) }).map((steps) => steps / 1e4)

const origin: Point = { x: 0, y: 0 }

export const placements: fc.Arbitrary<Placement> = fc.record({
  x: evenly(-40, 40),
  y: evenly(-40, 40),
  turn: fc.oneof(evenly(-4, 4), fc.constantFrom(0, Math.PI / 2, Math.PI, -Math.PI / 2)),
  mirrored: fc.boolean(),
})

/**
 * A ragged star seen from its middle: corners in order of their angle, arcs between them that bulge less than
 * the corners' angles allow, so that it never crosses itself.
 */
export const stars: fc.Arbitrary<Chain> = fc
  .array(fc.record({ step: evenly(1, 2), reach: evenly(12, 30), bend: evenly(-1, 1), bent: fc.boolean() }), {
    minLength: 3,
    maxLength: 8,
  })
  .map((corners) => {
    const whole = corners.reduce((sum, { step }) => sum + step, 0)
    let angle = 0
    const vertices = corners.map(({ step, reach, bend, bent }): Vertex => {
      const vertex = { x: reach * Math.cos(angle), y: reach * Math.sin(angle), bulge: bent ? bow(bend) : 0 }
      angle += (2 * Math.PI * step) / whole
      return vertex
    })
    return { shape: 'chain', closed: true, vertices }
  })

/** A bulge up to a tenth either way, never so small that the sampling above would lose it. */
function bow(bend: number): number {
  return Math.abs(bend) < 1e-4 ? 0 : bend * 0.1
}

/** Shapes about the origin; laws move them where they need them. */
const shapes: fc.Arbitrary<Contour> = fc.oneof(
  evenly(0.5, 25).map((radius) => circle(origin, radius)),
  fc
    .tuple(evenly(1, 50), evenly(1, 50))
    .map(([length, width]) => rectangle(-length / 2, -width / 2, length / 2, width / 2)),
  fc.tuple(evenly(1, 50), evenly(1, 50), evenly(0, 30)).map(([l, w, r]) => roundedRectangle(origin, l, w, r)),
  fc.tuple(evenly(1, 50), evenly(1, 50)).map(([length, width]) => stadium(origin, length, width)),
  fc.tuple(evenly(2, 50), evenly(2, 50)).map(([length, width]) => oval(origin, length, width)),
  stars,
)

/** Closed contours of every kind, anywhere within some 40 mm, turned and mirrored. */
export const contours: fc.Arbitrary<Contour> = fc
  .tuple(shapes, placements)
  .map(([shape, placement]) => place(shape, placement))

export const points: fc.Arbitrary<Point> = fc.record({ x: evenly(-60, 60), y: evenly(-60, 60) })

/** Two contours that may be apart, cross or lie in each other. */
export const pairs: fc.Arbitrary<readonly [Contour, Contour]> = fc.tuple(contours, contours)

/** A plate 60 × 40 with a half-round notch of radius 10 in the middle of its top. */
export const notchedPlate = chain(
  [
    { x: 0, y: 0, bulge: 0 },
    { x: 60, y: 0, bulge: 0 },
    { x: 60, y: 40, bulge: 0 },
    { x: 40, y: 40, bulge: -1 },
    { x: 20, y: 40, bulge: 0 },
    { x: 0, y: 40, bulge: 0 },
  ],
  true,
)
