/** What is tightest on a head: strings against posts, tuners against each other, wood that is left. Plane geometry. */

import { type Chain, depthAt, distanceToPoint, gap, line, type Point } from '../plane/index.ts'
import { notes } from '../quantity/notes.ts'
import type { Layout } from '../solve/layout.ts'
import { type HeadLayout, type HeadPath, headOf, type Tuner } from './head-layout.ts'

/** The least of something, and the two places it lies between, on the face of the head. */
export interface Tight {
  readonly mm: number
  readonly from: Point
  readonly to: Point
  /** Numbers of strings or posts it is about, as the trade counts. */
  readonly a: number
  readonly b: number
}

export interface HeadRoom {
  /** From a string to a post that it only passes. */
  readonly passing: Tight | null
  /** Between the middles of two strings on their way to their posts; less than 0 where they cross. */
  readonly strings: Tight | null
  readonly knobs: Tight | null
  readonly knobToEdge: Tight | null
  readonly bodies: Tight | null
  readonly holes: Tight | null
  readonly holeToEdge: Tight | null
  /** From a pilot hole to the nearest other hole, or to the edge. */
  readonly screws: Tight | null
}

const known = notes<HeadLayout, HeadRoom>()

/** Remembered with the head it was measured on. Example: `headRoomOf(layout).holes` is the wood between two post holes. */
export function headRoomOf(layout: Layout): HeadRoom {
  const head = headOf(layout)
  const before = known.get(head)
  if (before) return before
  const room = measured(head, layout.design.headstock.screwPilot / 2)
  known.set(head, room)
  return room
}

/** Is it less than the least so far? Only then is it worth writing down. */
const isLess = (mm: number, least: Tight | null): boolean => least === null || mm < least.mm

const inDirection = (way: Point, { x, y }: Point): number => way.x * x + way.y * y

/**
 * Room between what two tuners have. Where their edges run alike, as the two edges of most heads do, both are boxes along
 * the same two ways, and it is that between two boxes.
 */
function apartOf(one: Tuner, its: Chain, other: Tuner, others: Chain): number {
  const { along, outward } = one
  if (Math.abs(inDirection(outward, other.along)) > HAIR) return gap(its, others)
  const beside = alongside(its, others, along)
  const beyond = alongside(its, others, outward)
  if (beside <= 0 && beyond <= 0) return gap(its, others)
  const [a, b] = [Math.max(beside, 0), Math.max(beyond, 0)]
  return Math.sqrt(a * a + b * b)
}

/** Room between two outlines as they lie in one direction; less than 0 where they overlap there. */
function alongside(one: Chain, other: Chain, way: Point): number {
  const [a, b] = [spread(one, way), spread(other, way)]
  return Math.max(a.low, b.low) - Math.min(a.high, b.high)
}

function spread({ vertices }: Chain, way: Point): { readonly low: number; readonly high: number } {
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (const vertex of vertices) {
    const at = inDirection(way, vertex)
    if (at < low) low = at
    if (at > high) high = at
  }
  return { low, high }
}

/**
 * From a knob to the edge of the head. Where the edge beside it is the outermost of the head and runs as its tuners do, as
 * most do, it is how much farther out the knob begins; else it is measured from line to line.
 */
function beyondEdge({ along, outward }: Tuner, knob: Chain, outline: Chain): number {
  const [one, two] = knob.vertices
  if (!one || !two) return gap(knob, outline)
  const begins = inDirection(outward, one)
  const [a, b] = [inDirection(along, one), inDirection(along, two)]
  const { vertices } = outline
  const outermost = spread(outline, outward).high
  if (begins < outermost) return gap(knob, outline)
  for (let i = 0; i < vertices.length; i++) {
    const from = vertices[i]!
    const to = vertices[i + 1] ?? vertices[0]!
    if (inDirection(outward, from) < outermost - HAIR || inDirection(outward, to) < outermost - HAIR) continue
    const [c, d] = [inDirection(along, from), inDirection(along, to)]
    if (Math.min(a, b) <= Math.max(c, d) && Math.max(a, b) >= Math.min(c, d)) return begins - outermost
  }
  return gap(knob, outline)
}

/** Millimetres: nearer together two places are one. */
const HAIR = 1e-9

/** How far an outline reaches from a post. */
function reachOf(outline: Chain | null, post: Point): number {
  let square = 0
  for (const { x, y } of outline?.vertices ?? [])
    square = Math.max(square, (x - post.x) * (x - post.x) + (y - post.y) * (y - post.y))
  return Math.sqrt(square)
}

function measured({ tuners, paths, outline }: HeadLayout, pilot: number): HeadRoom {
  const room = {
    passing: null as Tight | null,
    strings: null as Tight | null,
    knobs: null as Tight | null,
    knobToEdge: null as Tight | null,
    bodies: null as Tight | null,
    holes: null as Tight | null,
    holeToEdge: null as Tight | null,
    screws: null as Tight | null,
  }
  const knobs = tuners.map(({ knob, post }) => reachOf(knob, post))
  const bodies = tuners.map(({ body, post }) => reachOf(body, post))
  for (let i = 0; i < tuners.length; i++) {
    const one = tuners[i]!
    const toEdge = depthAt(one.post, outline) - one.hole.radius
    if (isLess(toEdge, room.holeToEdge)) room.holeToEdge = at(toEdge, one.post, one.post, i, i)
    if (one.knob) {
      const mm = beyondEdge(one, one.knob, outline)
      if (isLess(mm, room.knobToEdge)) room.knobToEdge = at(mm, one.post, knobEnd(one), i, i)
    }
    for (const screw of one.screws) {
      const mm = depthAt(screw, outline) - pilot
      if (isLess(mm, room.screws)) room.screws = at(mm, screw, screw, i, i)
      for (let j = 0; j < tuners.length; j++) {
        const other = tuners[j]!
        const apart = distanceOf(screw, other.post) - pilot - other.hole.radius
        if (isLess(apart, room.screws)) room.screws = at(apart, screw, other.post, i, j)
      }
    }
    for (let j = 0; j < i; j++) {
      const other = tuners[j]!
      const apart = distanceOf(one.post, other.post)
      const holes = apart - one.hole.radius - other.hole.radius
      if (isLess(holes, room.holes)) room.holes = at(holes, other.post, one.post, j, i)
      // Outlines that cannot be nearer than the nearest so far, even if each reached straight for the other, are not measured.
      if (one.body && other.body && isLess(apart - bodies[i]! - bodies[j]!, room.bodies)) {
        const mm = apartOf(one, one.body, other, other.body)
        if (isLess(mm, room.bodies)) room.bodies = at(mm, other.post, one.post, j, i)
      }
      if (one.knob && other.knob && isLess(apart - knobs[i]! - knobs[j]!, room.knobs)) {
        const mm = apartOf(one, one.knob, other, other.knob)
        if (isLess(mm, room.knobs)) room.knobs = at(mm, knobEnd(other), knobEnd(one), j, i)
      }
    }
  }
  for (let i = 0; i < paths.length; i++) {
    const path = paths[i]!
    room.passing = passing(path, tuners, room.passing)
    for (let j = 0; j < i; j++) room.strings = between(paths[j]!, path, room.strings)
  }
  return room
}

function distanceOf(a: Point, b: Point): number {
  const [x, y] = [a.x - b.x, a.y - b.y]
  return Math.sqrt(x * x + y * y)
}

const at = (mm: number, from: Point, to: Point, a: number, b: number): Tight => ({
  mm,
  from,
  to,
  a: a + 1,
  b: b + 1,
})

/** The middle of a knob's near end: its first two corners. */
function knobEnd({ knob, post }: Tuner): Point {
  const [one, two] = knob?.vertices ?? []
  return one && two ? { x: (one.x + two.x) / 2, y: (one.y + two.y) / 2 } : post
}

/** The nearest post that a string passes on the way to its own, from skin to skin, where it is less than the least so far. */
function passing(
  { from, to, gauge, number, tuner }: HeadPath,
  tuners: readonly Tuner[],
  least: Tight | null,
): Tight | null {
  const way = line(from, to)
  let near = least
  for (let index = 0; index < tuners.length; index++) {
    if (index === tuner) continue
    const { post, round } = tuners[index]!
    const mm = distanceToPoint(way, post) - round.radius - gauge / 2
    if (isLess(mm, near)) near = { mm, from: post, to, a: number, b: index + 1 }
  }
  return near
}

/** Where a string lies across the head at x, on its way from the nut. */
const acrossAt = ({ from, to }: HeadPath, x: number): number =>
  from.y + ((to.y - from.y) * (x - from.x)) / Math.min(to.x - from.x, -1e-9)

/**
 * Two strings as far as both run: from the nut to the nearer post. Less than 0 where the one has come over the other. Where
 * it is less than the least so far, else that.
 */
function between(bassward: HeadPath, trebleward: HeadPath, least: Tight | null): Tight | null {
  // A post that stands before the nut has no way behind it.
  const end = Math.min(0, Math.max(bassward.to.x, trebleward.to.x))
  const atNut = acrossAt(trebleward, 0) - acrossAt(bassward, 0)
  const atEnd = acrossAt(trebleward, end) - acrossAt(bassward, end)
  const mm = Math.min(atNut, atEnd)
  if (!isLess(mm, least)) return least
  const x = atNut <= atEnd ? 0 : end
  return {
    mm,
    from: { x, y: acrossAt(bassward, x) },
    to: { x, y: acrossAt(trebleward, x) },
    a: bassward.number,
    b: trebleward.number,
  }
}
