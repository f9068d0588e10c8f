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

const tighter = (a: Tight | null, b: Tight | null): Tight | null => (!a || (b && b.mm < a.mm) ? b : a)

/** Is it less than the least so far? Only then is it worth writing down. */
const isLess = (mm: number, least: Tight | null): boolean => least === null || mm < least.mm

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
      const mm = gap(one.knob, outline)
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
      const holes = gap(one.hole, other.hole)
      if (isLess(holes, room.holes)) room.holes = at(holes, other.post, one.post, j, i)
      // Outlines that cannot be nearer than the nearest so far, even if each reached straight for the other, are not measured.
      if (one.body && other.body && isLess(apart - bodies[i]! - bodies[j]!, room.bodies)) {
        const mm = gap(one.body, other.body)
        if (isLess(mm, room.bodies)) room.bodies = at(mm, other.post, one.post, j, i)
      }
      if (one.knob && other.knob && isLess(apart - knobs[i]! - knobs[j]!, room.knobs)) {
        const mm = gap(one.knob, other.knob)
        if (isLess(mm, room.knobs)) room.knobs = at(mm, knobEnd(other), knobEnd(one), j, i)
      }
    }
  }
  for (let i = 0; i < paths.length; i++) {
    const path = paths[i]!
    room.passing = tighter(room.passing, passing(path, tuners))
    for (let j = 0; j < i; j++) room.strings = tighter(room.strings, between(paths[j]!, path))
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

/** The nearest post that a string passes on the way to its own: from skin to skin. */
function passing({ from, to, gauge, number, tuner }: HeadPath, tuners: readonly Tuner[]): Tight | null {
  const way = line(from, to)
  return tuners.reduce<Tight | null>((near, other, index) => {
    if (index === tuner) return near
    const mm = distanceToPoint(way, other.post) - other.round.radius - gauge / 2
    return tighter(near, { mm, from: other.post, to, a: number, b: index + 1 })
  }, null)
}

/** Two strings as far as both run: from the nut to the nearer post. Less than 0 where the one has come over the other. */
function between(bassward: HeadPath, trebleward: HeadPath): Tight {
  // A post that stands before the nut has no way behind it.
  const end = Math.min(0, Math.max(bassward.to.x, trebleward.to.x))
  const yAt = ({ from, to }: HeadPath, x: number) =>
    from.y + ((to.y - from.y) * (x - from.x)) / Math.min(to.x - from.x, -1e-9)
  const apart = (x: number) => yAt(trebleward, x) - yAt(bassward, x)
  const x = apart(0) <= apart(end) ? 0 : end
  return {
    mm: apart(x),
    from: { x, y: yAt(bassward, x) },
    to: { x, y: yAt(trebleward, x) },
    a: bassward.number,
    b: trebleward.number,
  }
}
