/** Where the holes of a rosette lie: on rings, on a spiral, or in rows, as many as fit in a field. */
import { area, bounds, type Contour, circle, depthAt, nearest, type Point } from '../plane/index.ts'

export interface Strewing {
  readonly pattern: 'rings' | 'spiral' | 'rows' | 'staggered rows'
  readonly hole: number
  readonly pitch: number
  /** Diameter of the middle that is left free. */
  readonly inner: number
  readonly flipped: boolean
}

export interface Strewn {
  readonly centres: readonly Point[]
  /** The least wood between two holes and where; reckoned when first asked for. */
  web(): { readonly wood: number; readonly from: Point; readonly to: Point } | null
}

/** More holes than these are not laid out: nobody drills them, and a laser is a day at it. */
export const MOST_HOLES = 6000

/** About how many holes a field takes: its area by the area that each hole has to itself. */
export function estimate(it: Strewing, field: Contour): number {
  const own = it.pattern === 'rows' ? it.pitch * it.pitch : (Math.sqrt(3) / 2) * it.pitch * it.pitch
  return Math.round(Math.max(0, area(field) - (Math.PI / 4) * it.inner * it.inner) / own)
}

/** Patterns laid out last; a drag asks for the same one in every frame. */
const kept = new Map<string, Strewn>()
const MOST_KEPT = 12

/** The holes that lie wholly in the field, `key` naming its shape. The same fields give the same answer. */
export function strewn(it: Strewing, key: string, fieldOf: () => Contour): Strewn {
  const whole = [key, it.pattern, it.hole, it.pitch, it.inner, it.flipped].join()
  const known = kept.get(whole)
  if (known) return known
  const field = fieldOf()
  const centres = estimate(it, field) > MOST_HOLES ? [] : within(it, field)
  let web: ReturnType<Strewn['web']> | undefined
  const made: Strewn = {
    centres,
    web: () => {
      if (web === undefined) web = leastWeb(centres, it.hole)
      return web
    },
  }
  if (kept.size >= MOST_KEPT) kept.delete(kept.keys().next().value ?? '')
  kept.set(whole, made)
  return made
}

function within(it: Strewing, field: Contour): Point[] {
  const { maxX, maxY } = bounds(field)
  const free = it.inner > 0 ? it.inner / 2 + it.hole / 2 : 0
  const turn = it.flipped ? -1 : 1
  const found: Point[] = []
  for (const { x, y } of places(it, maxX, maxY)) {
    if (free > 0 && x * x + y * y < free * free - HAIR) continue
    if (depthAt({ x, y }, field) < it.hole / 2 - HAIR) continue
    found.push({ x, y: turn * y + 0 })
  }
  return found
}

/** Rounding must not throw out a hole that just fits. */
const HAIR = 1e-9

function places(it: Strewing, halfAlong: number, halfAcross: number): Generator<Point> {
  const reach = Math.hypot(halfAlong, halfAcross)
  if (it.pattern === 'rings') return rings(it.pitch, reach)
  if (it.pattern === 'spiral') return spiral(it.pitch, reach)
  return rows(it.pitch, halfAlong, halfAcross, it.pattern === 'staggered rows')
}

/** One in the middle, then rings a pitch apart with six more holes each: neighbours on a ring are about a pitch apart. */
function* rings(pitch: number, reach: number): Generator<Point> {
  yield { x: 0, y: 0 }
  for (let ring = 1; ring * pitch <= reach; ring++)
    for (let index = 0; index < 6 * ring; index++) {
      const angle = (index * Math.PI) / (3 * ring)
      yield { x: ring * pitch * Math.cos(angle), y: ring * pitch * Math.sin(angle) }
    }
}

/** Turn from one seed to the next, pi (3 - sqrt 5). */
const GOLDEN = Math.PI * (3 - Math.sqrt(5))

/**
 * The sunflower's spiral: the n-th hole at radius c sqrt(n + 1/2), each a golden angle on. Source: H. Vogel, "A better way
 * to construct the sunflower head", Mathematical Biosciences 44 (1979), from memory. c is chosen so that every hole
 * has as much area as in rows staggered by `pitch`.
 */
function* spiral(pitch: number, reach: number): Generator<Point> {
  const c = pitch * Math.sqrt(Math.sqrt(3) / (2 * Math.PI))
  for (let n = 0; c * Math.sqrt(n + 0.5) <= reach; n++) {
    const r = c * Math.sqrt(n + 0.5)
    yield { x: r * Math.cos(n * GOLDEN), y: r * Math.sin(n * GOLDEN) }
  }
}

/** Rows through the centre, alike on all sides. */
function* rows(pitch: number, halfAlong: number, halfAcross: number, staggered: boolean): Generator<Point> {
  const step = staggered ? (pitch * Math.sqrt(3)) / 2 : pitch
  const up = Math.floor(halfAcross / step)
  const out = Math.floor(halfAlong / pitch) + 1
  for (let row = -up; row <= up; row++) {
    const shift = staggered && row % 2 !== 0 ? pitch / 2 : 0
    for (let column = -out; column <= out; column++)
      if (Math.abs(column * pitch + shift) <= halfAlong) yield { x: column * pitch + shift, y: row * step }
  }
}

/** The two holes nearest each other, by a sweep along x; of pairs equally near the first in the list. */
function leastWeb(centres: readonly Point[], hole: number): ReturnType<Strewn['web']> {
  const order = centres.map((at, index) => ({ at, index })).sort((a, b) => a.at.x - b.at.x)
  let least = Number.POSITIVE_INFINITY
  let pair: readonly [number, number] | null = null
  order.forEach((one, place) => {
    for (let next = place + 1; next < order.length; next++) {
      const other = order[next]!
      const dx = other.at.x - one.at.x
      if (dx > least) break
      const dy = other.at.y - one.at.y
      const apart = Math.sqrt(dx * dx + dy * dy)
      const named =
        one.index < other.index ? ([one.index, other.index] as const) : ([other.index, one.index] as const)
      const earlier = pair !== null && (named[0] < pair[0] || (named[0] === pair[0] && named[1] < pair[1]))
      if (apart > least || (apart === least && !earlier)) continue
      least = apart
      pair = named
    }
  })
  if (!pair) return null
  const [one, other] = (pair as readonly [number, number]).map((index) => circle(centres[index]!, hole / 2))
  if (!one || !other) return null
  const { from, to } = nearest(one, other)
  return { wood: least - hole, from, to }
}
