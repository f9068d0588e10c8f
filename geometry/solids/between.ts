/** How far two solids are apart, or how far one runs into the other; and where. */

import {
  type Bounds,
  type Contour,
  depthAt,
  flatten,
  gap,
  nearest,
  nearestPoint,
  type Point,
} from '../plane/index.ts'
import { notes } from '../quantity/notes.ts'
import type { Axis, Box3, Solid } from './solid.ts'

export interface Point3 {
  readonly x: number
  readonly y: number
  readonly z: number
}

export interface Between {
  /**
   * Millimetres of room between the two; negative where they run into each other: then the least way, along one of
   * the axes or across a common one, by which one would have to be moved to be free.
   */
  readonly room: number
  /** The nearest places, or two corners of the box in which they share room. */
  readonly from: Point3
  readonly to: Point3
}

/**
 * Room between two solids. Exact for prisms along one axis; for prisms along two axes exact to 0.005 mm, the
 * flattening of their arcs, where they overlap, and to about 0.001 mm where they are apart.
 *
 * @example roomBetween(block(a, …), block(b, …)).room // -2 where they share 2 mm
 */
export function roomBetween(a: Solid, b: Solid): Between {
  if (a.axis === b.axis) return alongOne(a, b)
  const met = crossed(a, b)
  if (met) return met
  // Which of the two the walk begins in shows in the ninth decimal: it is never the one that happens to be named first.
  if (a.axis < b.axis) return apart(a, b)
  const { room, from, to } = apart(b, a)
  return { room, from: to, to: from }
}

const AXES: readonly Axis[] = ['x', 'y', 'z']

/** The two axes of a prism's contour, in their order. */
export const planeOf = (axis: Axis): readonly [Axis, Axis] =>
  axis === 'z' ? ['x', 'y'] : axis === 'y' ? ['x', 'z'] : ['y', 'z']

const point3 = (axis: Axis, { x, y }: Point, along: number): Point3 =>
  axis === 'z' ? { x, y, z: along } : axis === 'y' ? { x, y: along, z: y } : { x: along, y: x, z: y }

function alongOne(a: Solid, b: Solid): Between {
  const flat = gap(a.contour, b.contour)
  const steep = Math.max(a.from - b.to, b.from - a.to)
  const low = Math.max(a.from, b.from)
  const high = Math.min(a.to, b.to)
  if (flat < 0 && steep < 0) return { room: Math.max(flat, steep), ...shared(a.box, b.box) }
  const { from, to } = nearest(a.contour, b.contour)
  const middle = (low + high) / 2
  const [alongA, alongB] = steep < 0 ? [middle, middle] : a.from > b.to ? [a.from, b.to] : [a.to, b.from]
  const room = flat > 0 && steep > 0 ? Math.hypot(flat, steep) : Math.max(flat, steep)
  return { room, from: point3(a.axis, from, alongA), to: point3(a.axis, to, alongB) }
}

/** Opposite corners of the box that two boxes share. */
function shared(a: Box3, b: Box3): Pick<Between, 'from' | 'to'> {
  return {
    from: { x: Math.max(a.minX, b.minX), y: Math.max(a.minY, b.minY), z: Math.max(a.minZ, b.minZ) },
    to: { x: Math.min(a.maxX, b.maxX), y: Math.min(a.maxY, b.maxY), z: Math.min(a.maxZ, b.maxZ) },
  }
}

type Stretch = readonly [low: number, high: number]

/**
 * Prisms along two axes, p and q, share the third, r. They meet where one r serves both: where the first's contour
 * is met by the second's stretch of q, and the second's by the first's stretch of p. `null` where they do not.
 */
function crossed(a: Solid, b: Solid): Between | null {
  const third = AXES.find((axis) => axis !== a.axis && axis !== b.axis) ?? 'z'
  const rOfA = extent(a, b.axis, [b.from, b.to], third)
  const rOfB = extent(b, a.axis, [a.from, a.to], third)
  if (!rOfA || !rOfB) return null
  const r: Stretch = [Math.max(rOfA[0], rOfB[0]), Math.min(rOfA[1], rOfB[1])]
  if (r[1] <= r[0]) return null
  const pOfB = extent(b, third, rOfA, a.axis)
  const qOfA = extent(a, third, rOfB, b.axis)
  if (!pOfB || !qOfA) return null
  const ways = [
    rOfB[1] - rOfA[0],
    rOfA[1] - rOfB[0],
    pOfB[1] - a.from,
    a.to - pOfB[0],
    qOfA[1] - b.from,
    b.to - qOfA[0],
  ]
  return { room: -Math.min(...ways), ...shared(a.box, b.box) }
}

const corners = notes<Contour, readonly Point[]>()

function cornersOf(contour: Contour): readonly Point[] {
  const known = corners.get(contour)
  if (known) return known
  const made = flatten(contour, FLAT)
  corners.set(contour, made)
  return made
}

const FLAT = 0.005

/** How far a prism's contour reaches along `of` where `within` holds the other axis; `null` where it does not come. */
function extent(solid: Solid, held: Axis, [low, high]: Stretch, of: Axis): Stretch | null {
  const first = planeOf(solid.axis)[0]
  const own = (one: Point, axis: Axis) => (axis === first ? one.x : one.y)
  const points = cornersOf(solid.contour)
  let least = Number.POSITIVE_INFINITY
  let most = Number.NEGATIVE_INFINITY
  const take = (value: number) => {
    least = Math.min(least, value)
    most = Math.max(most, value)
  }
  points.forEach((from, index) => {
    const to = points[(index + 1) % points.length] ?? from
    const [h1, h2, v1, v2] = [own(from, held), own(to, held), own(from, of), own(to, of)]
    if (h1 >= low && h1 <= high) take(v1)
    for (const line of [low, high])
      if (h1 < line !== h2 < line) take(v1 + ((v2 - v1) * (line - h1)) / (h2 - h1))
  })
  return most > least ? [least, most] : null
}

/** Rounds of walking from one solid to the other; what is not settled by then is settled to a hundredth. */
const MOST_ROUNDS = 400
const SETTLED = 1e-5

/**
 * Prisms along two axes that do not meet: from a place in one to the nearest in the other and back, until the two
 * stay. Source: alternating projections on convex sets come to a nearest pair (Cheney and Goldstein 1959, from
 * memory).
 */
function apart(a: Solid, b: Solid): Between {
  let there: Point3 = middleOf(b.box)
  let here: Point3 = nearestIn(a, there)
  for (let round = 0; round < MOST_ROUNDS; round++) {
    there = nearestIn(b, here)
    const next = nearestIn(a, there)
    const moved = Math.abs(next.x - here.x) + Math.abs(next.y - here.y) + Math.abs(next.z - here.z)
    here = next
    if (moved < SETTLED) break
  }
  const room = Math.hypot(here.x - there.x, here.y - there.y, here.z - there.z)
  return { room, from: here, to: there }
}

const middleOf = (box: Box3): Point3 => ({
  x: (box.minX + box.maxX) / 2,
  y: (box.minY + box.maxY) / 2,
  z: (box.minZ + box.maxZ) / 2,
})

/** The place of a solid nearest to a point: the point itself where it lies inside. */
function nearestIn({ axis, contour, from, to }: Solid, at: Point3): Point3 {
  const [u, v] = planeOf(axis)
  const flat = { x: at[u], y: at[v] }
  const near = depthAt(flat, contour) >= 0 ? flat : nearestPoint(contour, flat)
  return point3(axis, near, Math.min(to, Math.max(from, at[axis])))
}

/** Is a place inside a solid, or on its skin? */
export function inSolid(solid: Solid, at: Point3): boolean {
  const [u, v] = planeOf(solid.axis)
  const along = at[solid.axis]
  return along >= solid.from && along <= solid.to && depthAt({ x: at[u], y: at[v] }, solid.contour) >= 0
}

/** Where the boxes of two solids are at most `grow` apart along every axis. */
export const boxesNear = (a: Box3, b: Box3, grow: number): boolean =>
  a.minX <= b.maxX + grow &&
  b.minX <= a.maxX + grow &&
  a.minY <= b.maxY + grow &&
  b.minY <= a.maxY + grow &&
  a.minZ <= b.maxZ + grow &&
  b.minZ <= a.maxZ + grow

/** The box of a solid as the plan sees it. */
export const planOf = ({ box: { minX, minY, maxX, maxY } }: Solid): Bounds => ({ minX, minY, maxX, maxY })
