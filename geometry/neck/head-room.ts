/** What is tightest on a head: strings against posts, tuners against each other, wood that is left. Plane geometry. */

import { depthAt, distanceToPoint, gap, line, type Point } from '../plane/index.ts'
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
  tuners.forEach((one, i) => {
    const toEdge = depthAt(one.post, outline) - one.hole.radius
    room.holeToEdge = tighter(room.holeToEdge, at(toEdge, one.post, one.post, i, i))
    if (one.knob)
      room.knobToEdge = tighter(room.knobToEdge, at(gap(one.knob, outline), one.post, knobEnd(one), i, i))
    for (const screw of one.screws) {
      room.screws = tighter(room.screws, at(depthAt(screw, outline) - pilot, screw, screw, i, i))
      tuners.forEach((other, j) => {
        const apart = Math.hypot(screw.x - other.post.x, screw.y - other.post.y)
        room.screws = tighter(room.screws, at(apart - pilot - other.hole.radius, screw, other.post, i, j))
      })
    }
    tuners.slice(0, i).forEach((other, j) => {
      room.holes = tighter(room.holes, at(gap(one.hole, other.hole), other.post, one.post, j, i))
      if (one.body && other.body)
        room.bodies = tighter(room.bodies, at(gap(one.body, other.body), other.post, one.post, j, i))
      if (one.knob && other.knob)
        room.knobs = tighter(room.knobs, at(gap(one.knob, other.knob), knobEnd(other), knobEnd(one), j, i))
    })
  })
  paths.forEach((path, i) => {
    room.passing = tighter(room.passing, passing(path, tuners))
    paths.slice(0, i).forEach((other) => {
      room.strings = tighter(room.strings, between(other, path))
    })
  })
  return room
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
