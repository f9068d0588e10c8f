/** A lid swung about its hinge: what it meets, how deep it bites, and how far it opens. Radians and millimetres. */
import type { Point } from '../../plane/index.ts'
import { type Meeting, meet, type Slab } from './clip.ts'
import type { LidSection, Moving, Standing } from './section.ts'

/** Two pieces that come near each other while the lid opens. */
export interface Encounter {
  readonly moving: string
  readonly standing: string
  /**
   * How deep one goes into the other: what would have to come off, straight along or straight down, whichever is less.
   * 0 where they stay clear.
   */
  readonly bite: number
  /** Least room between them along the section, or along the pin where they pass side by side; 0 where they bite. */
  readonly room: number
  /** Do they pass side by side, the room lying along the pin? */
  readonly sideways: boolean
  /** The opening at which they are deepest in each other, or nearest. */
  readonly angle: number
  /** Where, in the section with the lid at that angle, and along the pin. */
  readonly at: Point
  readonly s: number
}

export interface Swing {
  /** How far the lid opens before something stops it; at most what was asked for. */
  readonly reached: number
  readonly wanted: number
  /** Deepest first, then the nearest. */
  readonly encounters: readonly Encounter[]
}

/** Turns a section about the pin by an angle, opening. Turned by 0 it is the very same. */
export function swung(section: readonly Point[], angle: number): readonly Point[] {
  if (angle === 0) return section
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  return section.map(({ x, y }) => ({ x: x * cos - y * sin, y: x * sin + y * cos }))
}

/** Half a degree: between two steps a corner 300 mm from the pin strays from its chord by under 0.003 mm. */
const STEP = Math.PI / 360

/** Millimetres: what touches does not bite. */
const TOUCH = 1e-6

/** A piece nearer to the pin than this carries it: the room to it is that of the hinge itself, and not told. */
const AT_PIN = 1

/** Farther apart than this along the pin two pieces have nothing to do with each other. */
const NEAR = 5

/** Least and greatest distance of a section and of a rectangle from the pin: pieces whose rings part never meet. */
const ringOf = (points: readonly Point[]) => {
  let most = 0
  for (const { x, y } of points) most = Math.max(most, Math.hypot(x, y))
  return most
}

const leastOf = ({ u0, u1, z0, z1 }: Standing) => Math.hypot(Math.max(u0, -u1, 0), Math.max(z0, -z1, 0))

/** The rectangle that a section sweeps while it opens: its corners' ends, and where one passes an axis. */
function sweptBy(points: readonly Point[], wanted: number): Slab {
  const swept = { u0: 0, u1: 0, z0: 0, z1: 0 }
  const take = (u: number, z: number) => {
    swept.u0 = Math.min(swept.u0, u)
    swept.u1 = Math.max(swept.u1, u)
    swept.z0 = Math.min(swept.z0, z)
    swept.z1 = Math.max(swept.z1, z)
  }
  for (const { x, y } of points) {
    const radius = Math.hypot(x, y)
    const start = Math.atan2(y, x)
    for (const angle of [start, start + wanted]) take(radius * Math.cos(angle), radius * Math.sin(angle))
    for (let quarter = -2; quarter <= 4; quarter++) {
      const angle = (quarter * Math.PI) / 2
      if (angle > start && angle < start + wanted) take(radius * Math.cos(angle), radius * Math.sin(angle))
    }
  }
  return swept
}

/** Does what is swept come so near a rectangle that the room between them matters? */
const reaches = (swept: Slab, { u0, u1, z0, z1 }: Slab): boolean =>
  swept.z1 > z0 && swept.z0 < z1 && swept.u1 > u0 - NEAR && swept.u0 < u1 + NEAR

/** Angles at which a corner crosses the upper or lower edge of a rectangle: there an overlap may end at its largest. */
function crossings(section: readonly Point[], { z0, z1 }: Standing, wanted: number): number[] {
  const angles: number[] = []
  for (const { x, y } of section) {
    const radius = Math.hypot(x, y)
    const start = Math.atan2(y, x)
    for (const level of [z0, z1]) {
      if (Math.abs(level) > radius) continue
      const rise = Math.asin(level / radius)
      for (const end of [rise, Math.PI - rise])
        for (const turn of [-2 * Math.PI, 0, 2 * Math.PI]) {
          const angle = end - start + turn
          for (const near of [angle - 1e-7, angle + 1e-7]) if (near > 0 && near < wanted) angles.push(near)
        }
    }
  }
  return angles
}

/**
 * Swings a lid open. Pieces that stand in each other before it moves are left to the rules that tell of that.
 * Example: a lid of 4 mm whose pin lies at the lower edge of a flush shoulder bites 4 mm into it.
 */
export function swing(section: LidSection, wanted: number): Swing {
  const encounters: Encounter[] = []
  let reached = wanted
  for (const moving of section.moving) {
    const sweep = sweptBy(moving.section, wanted)
    for (const standing of section.standing) {
      const apart = Math.max(standing.s0 - moving.s1, moving.s0 - standing.s1)
      if (apart > NEAR || ringOf(moving.section) < leastOf(standing) || !reaches(sweep, standing)) continue
      const found = pass(moving, standing, wanted)
      if (!found) continue
      const side = apart >= -TOUCH
      const s = (Math.max(moving.s0, standing.s0) + Math.min(moving.s1, standing.s1)) / 2
      if (side) {
        // Beside each other: they only rub if they would meet, were they not.
        if (found.bite > 0)
          encounters.push({
            ...named(moving, standing),
            bite: 0,
            room: Math.max(apart, 0),
            sideways: true,
            angle: found.angle,
            at: found.at,
            s,
          })
        continue
      }
      if (found.within) continue
      if (found.first < reached) reached = found.first
      if (found.bite > 0 || (Number.isFinite(found.room) && leastOf(standing) > AT_PIN))
        encounters.push({
          ...named(moving, standing),
          bite: found.bite,
          room: found.bite > 0 ? 0 : found.room,
          sideways: false,
          angle: found.angle,
          at: found.at,
          s,
        })
    }
  }
  encounters.sort((a, b) => b.bite - a.bite || a.room - b.room)
  return { reached, wanted, encounters }
}

const named = (moving: Moving, standing: Standing) => ({ moving: moving.what, standing: standing.what })

interface Pass {
  readonly bite: number
  readonly room: number
  /** The first opening at which they are in each other; `Infinity` if they never are. */
  readonly first: number
  readonly angle: number
  readonly at: Point
  /** Are they in each other while the lid is closed? */
  readonly within: boolean
}

const isIn = ({ along, up }: Meeting) => along > TOUCH && up > TOUCH

/** One piece of the lid past one that stays, sections alone. `null` where they never share a height. */
function pass(moving: Moving, standing: Standing, wanted: number): Pass | null {
  const closed = meet(moving.section, standing)
  const steps = Math.max(1, Math.ceil(wanted / STEP))
  const angles = [
    ...Array.from({ length: steps }, (_, index) => (wanted * (index + 1)) / steps),
    ...crossings(moving.section, standing, wanted),
  ].sort((a, b) => a - b)
  let along = 0
  let up = 0
  let room = closed.beside
  let first = Number.POSITIVE_INFINITY
  let before = 0
  let deepest = { depth: 0, angle: 0, at: closed.at }
  let nearest = { angle: 0, at: closed.at }
  for (const angle of angles) {
    const met = meet(swung(moving.section, angle), standing)
    if (isIn(met)) {
      along = Math.max(along, met.along)
      up = Math.max(up, met.up)
      const depth = Math.min(met.along, met.up)
      if (depth > deepest.depth) deepest = { depth, angle, at: met.at }
      if (first > angle) first = firstBetween(moving, standing, before, angle)
    } else if (met.beside < room) {
      room = met.beside
      nearest = { angle, at: met.at }
    }
    before = angle
  }
  const bite = Math.min(along, up)
  if (isIn(closed))
    return {
      bite: Math.max(bite, Math.min(closed.along, closed.up)),
      room,
      first,
      ...nearest,
      within: true,
    }
  if (bite > TOUCH) return { bite, room: 0, first, angle: deepest.angle, at: deepest.at, within: false }
  return room < Number.POSITIVE_INFINITY
    ? { bite: 0, room, first: Number.POSITIVE_INFINITY, ...nearest, within: false }
    : null
}

/** About a thousandth of a degree. */
const FINEST = 2e-5

/** The opening at which they first touch, halved down to a thousandth of a degree. */
function firstBetween(moving: Moving, standing: Standing, from: number, to: number): number {
  let [clear, met] = [from, to]
  while (met - clear > FINEST) {
    const middle = (clear + met) / 2
    if (isIn(meet(swung(moving.section, middle), standing))) met = middle
    else clear = middle
  }
  // What is stopped so soon does not open at all.
  return clear < FINEST ? 0 : clear
}
