/**
 * The shapes of the trade, made ready to measure and cut: closed ones counter-clockwise, none with a segment
 * that has no length. Misuse throws; limits that a user can run into belong to the fields of a kind.
 */
import { bulgeOf } from './arcs.ts'
import type { Chain, Circle, Contour, Point, Vertex } from './contour.ts'
import { area } from './measure.ts'
import { SAME_POINT } from './tolerance.ts'
import { reversed } from './transform.ts'

/** A quarter circle, tan(22.5 degrees). */
const QUARTER = bulgeOf(Math.PI / 2)
const HALF = 1

function positive(value: number, of: string): void {
  if (!(value > 0 && Number.isFinite(value))) {
    throw new RangeError(`The ${of} must be a length above 0 mm, not ${value}.`)
  }
}

function finite(value: number, of: string): void {
  if (!Number.isFinite(value)) throw new RangeError(`The ${of} must be a finite length in mm, not ${value}.`)
}

/**
 * A circle about `centre` with `radius` mm. Throws for a radius that is not above 0.
 *
 * @example circle({ x: 0, y: 0 }, 5)
 */
export function circle(centre: Point, radius: number): Circle {
  positive(radius, 'radius of a circle')
  finite(centre.x, 'centre x of a circle')
  finite(centre.y, 'centre y of a circle')
  return { shape: 'circle', centre: { x: centre.x, y: centre.y }, radius }
}

/**
 * A chain through `vertices` in order. Segments without length are dropped, a repeated first vertex at the end
 * of a closed chain too, and a closed chain that runs clockwise is turned round (its first vertex stays).
 * Throws for a number that is not finite and for fewer than two places.
 *
 * @example chain([{ x: 0, y: 0, bulge: 1 }, { x: 10, y: 0, bulge: 1 }], true) // a circle of diameter 10
 */
export function chain(vertices: readonly Vertex[], closed: boolean): Chain {
  const kept: Vertex[] = []
  for (const { x, y, bulge } of vertices) {
    finite(x, 'x of a vertex')
    finite(y, 'y of a vertex')
    finite(bulge, 'bulge of a vertex')
    const before = kept.at(-1)
    // The earlier of two vertices in one place goes: it is its segment that has no length.
    if (before !== undefined && together(before, { x, y })) {
      kept[kept.length - 1] = { x: before.x, y: before.y, bulge }
    } else {
      kept.push({ x, y, bulge })
    }
  }
  const first = kept[0]
  if (closed && first !== undefined) {
    for (
      let last = kept.at(-1);
      last !== undefined && last !== first && together(first, last);
      last = kept.at(-1)
    ) {
      kept.pop()
    }
  }
  if (kept.length < 2) {
    throw new RangeError(
      `A chain needs two vertices apart from each other; ${vertices.length} came, all in one place.`,
    )
  }
  const made: Chain = { shape: 'chain', closed, vertices: kept }
  return closed && area(made) < 0 ? reversed(made) : made
}

function together(a: Point, b: Point): boolean {
  const dx = a.x - b.x
  const dy = a.y - b.y
  return dx * dx + dy * dy <= SAME_POINT * SAME_POINT
}

/** A closed chain whose vertices are known to lie apart and to run counter-clockwise: nothing is left to check. */
const sound = (vertices: readonly Vertex[]): Chain => ({ shape: 'chain', closed: true, vertices })

/**
 * A closed chain of straight lines through `points`, turned counter-clockwise if need be.
 * Throws for fewer than three places.
 *
 * @example polygon([{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 0, y: 3 }])
 */
export function polygon(points: readonly Point[]): Chain {
  const made = chain(
    points.map(({ x, y }) => ({ x, y, bulge: 0 })),
    true,
  )
  if (made.vertices.length < 3) {
    throw new RangeError(`A polygon needs three corners apart from each other, not ${made.vertices.length}.`)
  }
  return made
}

/**
 * A straight line, open. Throws if both ends are one point.
 *
 * @example line({ x: 0, y: 0 }, { x: 10, y: 0 })
 */
export function line(from: Point, to: Point): Chain {
  const vertices = [
    { x: from.x, y: from.y, bulge: 0 },
    { x: to.x, y: to.y, bulge: 0 },
  ]
  const apart = Math.abs(to.x - from.x) + Math.abs(to.y - from.y)
  // Ends in one place, or nowhere, are `chain`'s to refuse.
  return apart > 2 * SAME_POINT && apart < Number.POSITIVE_INFINITY
    ? { shape: 'chain', closed: false, vertices }
    : chain(vertices, false)
}

/**
 * A rectangle with its sides along x and y, from its lower left corner. Throws unless it has a size.
 *
 * @example rectangle(0, 0, 100, 50)
 */
export function rectangle(minX: number, minY: number, maxX: number, maxY: number): Chain {
  positive(maxX - minX, 'length of a rectangle')
  positive(maxY - minY, 'width of a rectangle')
  const vertices = [
    { x: minX, y: minY, bulge: 0 },
    { x: maxX, y: minY, bulge: 0 },
    { x: maxX, y: maxY, bulge: 0 },
    { x: minX, y: maxY, bulge: 0 },
  ]
  return Math.min(maxX - minX, maxY - minY) > SAME_POINT ? sound(vertices) : chain(vertices, true)
}

/** No tool makes a rounder corner than this, in mm: a smaller radius is a square corner. */
const LEAST_CORNER = 1e-3

/**
 * A rectangle `length` along x and `width` along y about `centre`, its corners rounded with `radius`. A radius
 * over half the shorter side is taken as half of it: then the short sides vanish into half circles, and of a
 * square only a circle is left. Radius 0 leaves sharp corners. Throws for a negative radius or no size.
 *
 * @example roundedRectangle({ x: 0, y: 0 }, 100, 50, 5) // eight vertices
 */
export function roundedRectangle(centre: Point, length: number, width: number, radius: number): Contour {
  positive(length, 'length of a rounded rectangle')
  positive(width, 'width of a rounded rectangle')
  finite(centre.x, 'centre x of a rounded rectangle')
  finite(centre.y, 'centre y of a rounded rectangle')
  if (!(radius >= 0)) throw new RangeError(`The radius of a corner must be 0 mm or more, not ${radius}.`)
  const left = centre.x - length / 2
  const right = centre.x + length / 2
  const foot = centre.y - width / 2
  const head = centre.y + width / 2
  if (radius < LEAST_CORNER) return rectangle(left, foot, right, head)

  // Sides shorter than a point are no sides: the two quarters at their ends are one half circle.
  const noLength = length - 2 * radius <= SAME_POINT
  const noWidth = width - 2 * radius <= SAME_POINT
  if (noLength && noWidth && Math.abs(length - width) <= SAME_POINT) {
    return circle(centre, Math.min(length, width) / 2)
  }
  const r = Math.min(radius, length / 2, width / 2)
  if (noWidth && length > width) {
    return sound([
      { x: left + r, y: foot, bulge: 0 },
      { x: right - r, y: foot, bulge: HALF },
      { x: right - r, y: head, bulge: 0 },
      { x: left + r, y: head, bulge: HALF },
    ])
  }
  if (noLength) {
    return sound([
      { x: right, y: foot + r, bulge: 0 },
      { x: right, y: head - r, bulge: HALF },
      { x: left, y: head - r, bulge: 0 },
      { x: left, y: foot + r, bulge: HALF },
    ])
  }
  return sound([
    { x: left + r, y: foot, bulge: 0 },
    { x: right - r, y: foot, bulge: QUARTER },
    { x: right, y: foot + r, bulge: 0 },
    { x: right, y: head - r, bulge: QUARTER },
    { x: right - r, y: head, bulge: 0 },
    { x: left + r, y: head, bulge: QUARTER },
    { x: left, y: head - r, bulge: 0 },
    { x: left, y: foot + r, bulge: QUARTER },
  ])
}

/**
 * A slot with round ends, `length` over all along x and `width` across, about `centre`. Wider than long it
 * stands along y; as wide as long it is a circle. Throws for no size.
 *
 * @example stadium({ x: 0, y: 0 }, 50, 10) // half circles of radius 5 about (-20, 0) and (20, 0)
 */
export function stadium(centre: Point, length: number, width: number): Contour {
  // As round as it will go.
  return roundedRectangle(centre, length, width, Number.POSITIVE_INFINITY)
}

/**
 * The four-centre oval of the drawing board, `length` along x and `width` along y about `centre`: two arcs
 * round the ends and two along the sides, tangent where they meet. Equal axes give a circle. It comes close to
 * an ellipse with the same axes but is none.
 *
 * Source: the chord construction of technical drawing books (common practice, from memory): with half axes
 * a >= b and d = hypot(a, b), take a - b off the chord from end to side; the perpendicular through the middle
 * of the rest, s = (d - (a - b)) / 2 from the end, cuts the axes at both centres. Radii s d / a at the ends and
 * (d - s) d / b along the sides. The arcs meet on that perpendicular, in direction (b, a) / d.
 *
 * @example oval({ x: 0, y: 0 }, 100, 60) // box from -50 to 50 and -30 to 30
 */
export function oval(centre: Point, length: number, width: number): Contour {
  positive(length, 'length of an oval')
  positive(width, 'width of an oval')
  if (Math.abs(length - width) <= SAME_POINT) return circle(centre, Math.min(length, width) / 2)
  const a = Math.max(length, width) / 2
  const b = Math.min(length, width) / 2
  const d = Math.hypot(a, b)
  const endRadius = (((d - (a - b)) / 2) * d) / a
  // Along and across the long axis, from the middle to where an end meets a side.
  const along = a - endRadius + (endRadius * b) / d
  const across = (endRadius * a) / d
  // The end sweeps twice the angle of (b, a), the side what is left of half a turn: half-angle formula.
  const end = a / (b + d)
  const side = b / (a + d)
  const lying: readonly Vertex[] = [
    { x: along, y: -across, bulge: end },
    { x: along, y: across, bulge: side },
    { x: -along, y: across, bulge: end },
    { x: -along, y: -across, bulge: side },
  ]
  return chain(
    lying.map(({ x, y, bulge }) =>
      length > width
        ? { x: centre.x + x, y: centre.y + y, bulge }
        : { x: centre.x - y, y: centre.y + x, bulge },
    ),
    true,
  )
}
