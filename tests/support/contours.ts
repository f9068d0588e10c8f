/**
 * What is wrong with a contour, worked out without the engine: arcs are halved again and again by the half-angle
 * formula for bulges, and every pair of the straight steps that are left is looked at. The engine's own `faults`
 * goes another way, by closed forms.
 */
import type { Contour, Point, Vertex } from '../../geometry/index.ts'

/** Steps an arc is halved into: 2 to this power. */
const HALVINGS = 4
/** Nearer than this, lines touch, mm. */
const TOUCH = 1e-9

/** Points along a contour, arcs as sixteen straight steps; of a circle, a regular polygon of 64 corners. */
export function stepsAlong(contour: Contour): Point[] {
  if (contour.shape === 'circle') {
    const { centre, radius } = contour
    return Array.from({ length: 64 }, (_, index) => ({
      x: centre.x + radius * Math.cos((index * Math.PI) / 32),
      y: centre.y + radius * Math.sin((index * Math.PI) / 32),
    }))
  }
  const { vertices, closed } = contour
  const points = vertices.flatMap((vertex, index) => {
    const next = vertices[(index + 1) % vertices.length]
    return next && (closed || index < vertices.length - 1) ? halved(vertex, next, HALVINGS) : []
  })
  const last = vertices.at(-1)
  return closed || !last ? points : [...points, { x: last.x, y: last.y }]
}

/**
 * Start of a segment and the points inside it. The middle of an arc lies half its bulge times the chord to the
 * right of the chord's middle; each half has the tangent of half the angle: tan(t / 2) = (sqrt(1 + tan² t) − 1) / tan t.
 */
function halved(from: Vertex, to: Point, times: number): Point[] {
  if (times === 0 || from.bulge === 0) return [{ x: from.x, y: from.y }]
  const middle = {
    x: (from.x + to.x) / 2 + ((to.y - from.y) * from.bulge) / 2,
    y: (from.y + to.y) / 2 - ((to.x - from.x) * from.bulge) / 2,
  }
  const bulge = (Math.sqrt(1 + from.bulge ** 2) - 1) / from.bulge
  return [...halved({ ...from, bulge }, middle, times - 1), ...halved({ ...middle, bulge }, to, times - 1)]
}

/** The area inside a ring of points, mm², positive where it runs counter-clockwise. */
export function ringArea(points: readonly Point[]): number {
  const first = points[0]
  if (!first) return 0
  return points.reduce((sum, point, index) => {
    const next = points[(index + 1) % points.length] ?? first
    return sum + ((point.x - first.x) * (next.y - first.y) - (next.x - first.x) * (point.y - first.y)) / 2
  }, 0)
}

/** Is a point inside a ring of points? Counts the sides that a ray to the right crosses. */
export function inRing({ x, y }: Point, ring: readonly Point[]): boolean {
  return (
    ring.filter((a, index) => {
      const b = ring[(index + 1) % ring.length] ?? a
      return a.y > y !== b.y > y && x < a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)
    }).length %
      2 ===
    1
  )
}

/** Sentences for everything wrong with a contour that should be closed, simple and counter-clockwise. */
export function troublesOf(contour: Contour): string[] {
  if (contour.shape === 'circle') {
    const { centre, radius } = contour
    return [centre.x, centre.y, radius].every(Number.isFinite) && radius > 0 ? [] : ['is no circle']
  }
  if (contour.vertices.some((one) => ![one.x, one.y, one.bulge].every(Number.isFinite)))
    return ['is not finite']
  if (!contour.closed) return ['is open']
  const ring = stepsAlong(contour)
  const area = ringArea(ring)
  const troubles = area > 0 ? [] : [`encloses ${area} mm²`]
  const crossing = selfCrossing(ring)
  return crossing ? [...troubles, crossing] : troubles
}

function selfCrossing(ring: readonly Point[]): string | null {
  const count = ring.length
  for (let i = 0; i < count; i++) {
    const [a, b] = [ring[i], ring[(i + 1) % count]]
    if (!a || !b) continue
    if (Math.hypot(a.x - b.x, a.y - b.y) < TOUCH) return `has no length at (${a.x}, ${a.y})`
    for (let j = i + 2; j < count; j++) {
      if ((j + 1) % count === i) continue
      const [c, d] = [ring[j], ring[(j + 1) % count]]
      if (c && d && meet(a, b, c, d)) return `meets itself near (${a.x}, ${a.y})`
    }
  }
  return null
}

const side = (a: Point, b: Point, p: Point) => (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)

function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  if (Math.max(a.x, b.x) < Math.min(c.x, d.x) || Math.max(c.x, d.x) < Math.min(a.x, b.x)) return false
  if (Math.max(a.y, b.y) < Math.min(c.y, d.y) || Math.max(c.y, d.y) < Math.min(a.y, b.y)) return false
  return side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0
}
