/**
 * From where a thing is dragged to, to what the design must say. A measure stays a measure and a share stays a
 * share; what follows a partner moves the partner; what was meant as midway becomes a measure once it is moved.
 */
import { edgesAt, endsOf } from '../box/outlines.ts'
import { indexOfThing, thingCalled } from '../design/called.ts'
import type { Path } from '../design/changes.ts'
import type { Across, Along } from '../design/place.ts'
import type { Design, Thing } from '../design/schema.ts'
import type { Point } from '../plane/index.ts'
import { stepOf } from '../quantity/index.ts'
import type { Layout, Placed } from './layout.ts'

/** One field and what it is to hold: `change` takes a list of them. */
export type FieldSet = readonly [Path, unknown]

/** The thing that decides a place: the thing itself, or the partner at the end of the chain of mirrors. */
interface Source {
  readonly thing: Thing
  readonly index: number
  /** -1 where the chain turned the place over an odd number of times. */
  readonly sign: 1 | -1
}

function sourceOf(design: Design, thing: Thing, axis: 'along' | 'across'): Source {
  let here = thing
  let sign: 1 | -1 = 1
  const seen = new Set<string>()
  for (;;) {
    const place: Along | Across = here[axis]
    const partner =
      typeof place === 'object' && 'mirror' in place ? thingCalled(design, place.mirror) : undefined
    if (!partner || seen.has(partner.id)) break
    seen.add(here.id)
    const plan = here.face === 'lid' || here.face === 'base'
    if (axis === 'across' && plan) sign = sign === 1 ? -1 : 1
    here = partner
  }
  return { thing: here, index: indexOfThing(design, here.id), sign }
}

/** Fields to set so that `placed` comes to lie with its centre at `to`, in its face's frame. */
export function placeFields(
  layout: Layout,
  placed: Placed,
  to: Point,
  /** Things that are moved by the same way: where their going takes this one along, nothing is set for it. */
  together: ReadonlySet<string> = ALONE,
): FieldSet[] {
  const { design } = layout
  return (['along', 'across'] as const).flatMap((axis): FieldSet[] => {
    if (together.size > 1 && isCarried(design, placed.thing, axis, together)) return []
    const now = axis === 'along' ? placed.at.x : placed.at.y
    const wanted = axis === 'along' ? to.x : to.y
    if (Math.abs(wanted - now) < 1e-9) return []
    const source = sourceOf(design, placed.thing, axis)
    const own = layout.placed[source.index]
    if (!own) return []
    // A partner on the other of lid and base has another origin, so it is moved by the same way.
    const target = (axis === 'along' ? own.at.x : own.at.y) + source.sign * (wanted - now)
    return [[['things', source.index, axis], restated(layout, own, axis, target)]]
  })
}

const ALONE: ReadonlySet<string> = new Set()

/** Does this one go along by itself when the others are moved? */
function isCarried(
  design: Design,
  thing: Thing,
  axis: 'along' | 'across',
  together: ReadonlySet<string>,
): boolean {
  let here = thing
  const seen = new Set<string>()
  while (!seen.has(here.id)) {
    seen.add(here.id)
    const place: Along | Across = here[axis]
    if (typeof place !== 'object') return false
    if ('midway' in place) return place.midway.every((name) => together.has(name))
    const leader = 'mirror' in place ? place.mirror : 'from' in place ? place.from : null
    const next = thingCalled(design, leader)
    if (!next) return false
    if (together.has(next.id)) return true
    here = next
  }
  return false
}

/** Fields that move several things by the same way, each as it is meant. */
export function moveFields(layout: Layout, all: readonly Placed[], by: Point): FieldSet[] {
  const together = new Set(all.map((one) => one.thing.id))
  return all.flatMap((placed) =>
    placeFields(layout, placed, { x: placed.at.x + by.x, y: placed.at.y + by.y }, together),
  )
}

function restated(layout: Layout, placed: Placed, axis: 'along' | 'across', target: number): Along | Across {
  const place = placed.thing[axis]
  const { minY, maxY } = edgesAt(layout, placed.face, placed.at)
  const [minX, maxX] = endsOf(layout, placed.face)
  const plan = placed.face === 'lid' || placed.face === 'base'
  if (typeof place === 'object' && 'share' in place) {
    if (axis === 'along') return { share: clean((target - minX) / (maxX - minX)) }
    return { share: clean(plan ? (target >= 0 ? target / maxY : target / -minY) : -target / (maxY - minY)) }
  }
  if (typeof place === 'object' && 'from' in place) {
    const way = target - (axis === 'along' ? placed.at.x : placed.at.y)
    return { ...place, by: clean(place.by + (axis === 'across' && !plan ? -way : way)) }
  }
  if (typeof place === 'object' && 'ofScale' in place) {
    const x = target + layout.panels[placed.face].originX
    return { ofScale: clean(Math.min(1, Math.max(0, (layout.saddle.x - x) / layout.design.scale.length))) }
  }
  return clean(axis === 'across' && !plan ? -target : target)
}

/** Numbers are kept to the millionth: a drag leaves no tail of digits in the file. */
export const clean = (value: number): number => Math.round(value * 1e6) / 1e6 + 0

/** The finest step that is shown: a tenth of a millimetre, or the finest line of an inch rule; millimetres. */
export const shownStep = (units: Design['units']): number => (units.display === 'mm' ? 0.1 : stepOf(units))

/** A free place on the user's own rule: no finer than its finest line, a tenth where it is metric. */
export function onRule(mm: number, units: Design['units']): number {
  const step = shownStep(units)
  return Math.round(mm / step) * step
}

/** Fields to set so that the saddle stands `along` millimetres from the lid's neck-end edge. */
export function saddleFields(layout: Layout, along: number): FieldSet[] {
  const { place } = layout.design.saddle
  const [minX, maxX] = endsOf(layout, 'lid')
  const within = Math.min(maxX * 1.4, Math.max(minX - maxX * 0.4, along))
  const stated =
    typeof place === 'object' && 'share' in place
      ? { share: clean((within - minX) / (maxX - minX)) }
      : clean(within)
  return [[['saddle', 'place'], stated]]
}

/** What moves when this thing does: everything whose place hangs on it, by way of partners or midways. */
export function followersOf(design: Design, id: string): Set<string> {
  const followers = new Set<string>()
  const names = (place: Along | Across): readonly string[] =>
    typeof place !== 'object'
      ? []
      : 'mirror' in place
        ? [place.mirror]
        : 'from' in place
          ? [place.from]
          : 'midway' in place
            ? place.midway
            : []
  for (let grew = true; grew; ) {
    grew = false
    for (const thing of design.things) {
      if (thing.id === id || followers.has(thing.id)) continue
      if (
        [...names(thing.along), ...names(thing.across)].some((name) => name === id || followers.has(name))
      ) {
        followers.add(thing.id)
        grew = true
      }
    }
  }
  return followers
}

/** Followers of a thing, the partners it follows, and their followers: none of them may hold it while it moves. */
export function relatedTo(design: Design, id: string): Set<string> {
  const related = followersOf(design, id)
  const thing = thingCalled(design, id)
  if (!thing) return related
  for (const axis of ['along', 'across'] as const) {
    const root = sourceOf(design, thing, axis).thing.id
    if (root === id) continue
    related.add(root)
    for (const follower of followersOf(design, root)) related.add(follower)
  }
  related.delete(id)
  return related
}
