/** Several things at once: taken away, copied, locked, grouped, put in line, spaced, put in another order. */
import {
  type Bounds,
  type Change,
  change,
  clean,
  type Design,
  type FieldSet,
  indexOfThing,
  type Layout,
  moveFields,
  type Placed,
  type Point,
  solve,
  type Thing,
  thingCalled,
} from '../../geometry/index.ts'
import { aroundOnce } from './around-once.ts'
import { selectAll, selectedThings, withGroups } from './bench.ts'
import { enter, type Outcome, settledBench } from './commit.ts'
import { freeName, measuresOf } from './relations.ts'

const NOTHING: Outcome = { ok: false, sentence: 'Choose at least one thing first.' }

const placedOf = (layout: Layout, ids: readonly string[]): Placed[] =>
  ids.flatMap((id) => layout.placed.filter((one) => one.thing.id === id))

/** Sets the same fields on every one of the things, as one entry. */
function setAll(ids: readonly string[], label: string, fields: (thing: Thing) => Partial<Thing>): Outcome {
  const design = settledBench()
  const wanted = new Set(ids)
  const set = design.things.flatMap((thing, index): FieldSet[] =>
    wanted.has(thing.id)
      ? Object.entries(fields(thing)).map(([name, value]) => [['things', index, name], value])
      : [],
  )
  return set.length === 0 ? NOTHING : enter(label, change(design, ...set))
}

/** Locks the things, or lets all go where all were locked. */
export function toggleLocked(ids: readonly string[] = selectedThings()): Outcome {
  const design = settledBench()
  const all = design.things.filter((thing) => ids.includes(thing.id))
  const locked = !all.every((thing) => thing.locked)
  return setAll(ids, locked ? 'Lock' : 'Unlock', () => ({ locked }))
}

/** Binds the things into one group of a name that is free. */
export function groupThings(ids: readonly string[] = selectedThings()): Outcome {
  if (ids.length < 2) return { ok: false, sentence: 'A group takes at least two things: choose them first.' }
  const taken = new Set(settledBench().things.map((thing) => thing.group))
  let number = 1
  while (taken.has(`group ${number}`)) number += 1
  return setAll(ids, 'Group', () => ({ group: `group ${number}` }))
}

export const ungroupThings = (ids: readonly string[] = selectedThings()): Outcome =>
  setAll(withGroups(settledBench(), ids), 'Ungroup', () => ({ group: '' }))

export type Edge = 'centres along' | 'centres across' | 'minX' | 'maxX' | 'minY' | 'maxY'

/** Lines the others up with the leading one: by their centres, or by one of their edges. */
export function alignThings(edge: Edge, ids: readonly string[] = selectedThings()): Outcome {
  const design = settledBench()
  const layout = solve(design)
  const all = placedOf(layout, ids)
  const lead = all.at(-1)
  const others = all.filter((one) => one !== lead && one.face === lead?.face && !one.thing.locked)
  if (!lead || others.length === 0)
    return { ok: false, sentence: 'Choose two things or more on one face; the last one chosen stays.' }
  const fields = others.flatMap((one) => {
    const by =
      edge === 'centres along'
        ? { x: 0, y: lead.at.y - one.at.y }
        : edge === 'centres across'
          ? { x: lead.at.x - one.at.x, y: 0 }
          : byOf(edge, lead.bounds[edge] - one.bounds[edge])
    return moveFields(layout, [one], by)
  })
  return enter('Align', change(design, ...once(fields)))
}

const byOf = (edge: keyof Bounds, way: number): Point =>
  edge === 'minX' || edge === 'maxX' ? { x: way, y: 0 } : { x: 0, y: way }

/** A partner that follows is moved by way of the one it follows: the first word stands. */
function once(fields: readonly FieldSet[]): FieldSet[] {
  const seen = new Set<string>()
  return fields.filter(([path]) => {
    const key = path.join(' ')
    if (seen.has(key)) return false
    seen.add(key)
    return true
  })
}

/** Gives all gaps between the things the same width; the outermost two stay. */
export function spaceEvenly(axis: 'x' | 'y', ids: readonly string[] = selectedThings()): Outcome {
  const design = settledBench()
  const layout = solve(design)
  const [low, high] = axis === 'x' ? (['minX', 'maxX'] as const) : (['minY', 'maxY'] as const)
  const all = placedOf(layout, ids).sort((a, b) => a.at[axis] - b.at[axis])
  const [first, last] = [all[0], all.at(-1)]
  if (!first || !last || all.length < 3 || all.some((one) => one.face !== first.face))
    return { ok: false, sentence: 'Choose three things or more on one face; the outermost two stay.' }
  const widths = all.map((one) => one.bounds[high] - one.bounds[low])
  const inner = widths.slice(1, -1).reduce((sum, one) => sum + one, 0)
  const gap = (last.bounds[low] - first.bounds[high] - inner) / (all.length - 1)
  let next = first.bounds[high] + gap
  const fields = all.slice(1, -1).flatMap((one, index) => {
    const way = next - one.bounds[low]
    next += (widths[index + 1] ?? 0) + gap
    return one.thing.locked
      ? []
      : moveFields(layout, [one], axis === 'x' ? { x: way, y: 0 } : { x: 0, y: way })
  })
  return enter('Space evenly', change(design, ...once(fields)))
}

export interface RowWanted {
  readonly shape: 'row along' | 'row across' | 'ring'
  /** How many in all, the one that is selected included. */
  readonly count: number
  /** Centre to centre in a row; the radius of a ring. */
  readonly distance: number
  /** Of a ring: is the selected one the first of it, or does it stay in the middle? */
  readonly first: 'on the ring' | 'in the middle'
  /** Turns each copy with its place on the ring. */
  readonly turning: boolean
}

/**
 * Makes a row or a ring from one thing. The copies stand so far from it and follow where it goes. A row runs towards
 * the tail or the treble; a ring with its first on it has its middle towards the tail.
 */
export function makeRow(id: string, wanted: RowWanted): Outcome {
  const design = settledBench()
  const first = thingCalled(design, id)
  if (!first) return NOTHING
  const { count, distance } = wanted
  if (!Number.isInteger(count) || count < 2 || count > 200)
    return { ok: false, sentence: `${count} is no count for a row; write a whole number from 2 to 200.` }
  if (!(Math.abs(distance) > 0.01))
    return { ok: false, sentence: 'The copies would lie on one another; write a distance larger than 0.' }
  const plan = first.face === 'lid' || first.face === 'base'
  let grown = design
  const copies: Thing[] = []
  for (const { by, turn } of stepsOf(wanted)) {
    const copy = {
      ...first,
      id: freeName(first.kind, grown),
      // A name given by hand is counted on: copies called alike could not be told apart by ear.
      name: first.name === '' ? '' : `${first.name} ${copies.length + 2}`.slice(0, 80),
      along: { from: id, by: clean(by.x) },
      across: { from: id, by: clean(plan ? by.y : -by.y) },
      turnDegrees: wanted.turning ? aroundOnce(first.turnDegrees + turn) : first.turnDegrees,
      locked: false,
    } as Thing
    copies.push(copy)
    grown = { ...grown, things: [...grown.things, copy] }
  }
  const label = wanted.shape === 'ring' ? 'Make a ring' : 'Make a row'
  return enter(label, change(design, [['things'], grown.things]))
}

function stepsOf({ shape, count, distance, first }: RowWanted): { by: Point; turn: number }[] {
  if (shape !== 'ring')
    return Array.from({ length: count - 1 }, (_, index) => {
      const way = distance * (index + 1)
      return { by: shape === 'row along' ? { x: way, y: 0 } : { x: 0, y: way }, turn: 0 }
    })
  if (first === 'in the middle')
    return Array.from({ length: count - 1 }, (_, index) => {
      const angle = (2 * Math.PI * index) / (count - 1)
      return {
        by: { x: distance * Math.cos(angle), y: distance * Math.sin(angle) },
        turn: (360 * index) / (count - 1),
      }
    })
  // The first is at the neck end of the ring; the middle lies a radius towards the tail.
  return Array.from({ length: count - 1 }, (_, index) => {
    const angle = Math.PI + (2 * Math.PI * (index + 1)) / count
    return {
      by: { x: distance + distance * Math.cos(angle), y: distance * Math.sin(angle) },
      turn: (360 * (index + 1)) / count,
    }
  })
}

/** Lets things go their own way: whatever they follow becomes a measure, nothing moves. */
export function partThings(ids: readonly string[] = selectedThings()): Outcome {
  const layout = solve(settledBench())
  const standing = new Map(layout.placed.map((one) => [one.thing.id, measuresOf(one)]))
  const own = (thing: Thing, axis: 'along' | 'across') => {
    const place = thing[axis]
    const follows = typeof place === 'object' && ('mirror' in place || 'from' in place)
    return follows ? { [axis]: clean(standing.get(thing.id)?.[axis] ?? 0) } : {}
  }
  return setAll(ids, 'Part from its partner', (thing) => ({
    ...own(thing, 'along'),
    ...own(thing, 'across'),
  }))
}

/** Puts a thing one place later or earlier in the list: the order in which they are drawn, listed and read. */
export function reorder(id: string, by: 1 | -1): Outcome {
  const design = settledBench()
  const from = indexOfThing(design, id)
  const thing = design.things[from]
  if (!thing) return NOTHING
  // Its neighbour on the same face: one place in the list that is seen, not in the file.
  let to = from + by
  while (design.things[to] && design.things[to]?.face !== thing.face) to += by
  if (!design.things[to]) return { ok: false, sentence: 'It is at the end of its list already.' }
  const things = [...design.things]
  things.splice(from, 1)
  things.splice(to, 0, thing)
  return enter(by > 0 ? 'Later in the list' : 'Earlier in the list', change(design, [['things'], things]))
}

/** Copies several things beside themselves, as far apart as they are, and selects the copies. */
export function duplicateAll(ids: readonly string[]): Outcome {
  const design = settledBench()
  const layout = solve(design)
  const all = placedOf(layout, ids)
  if (all.length === 0) return NOTHING
  const wide = Math.max(...all.map((one) => one.bounds.maxX)) - Math.min(...all.map((one) => one.bounds.minX))
  const step = Math.ceil(wide + 5)
  let grown: Design = design
  const names = new Map<string, string>()
  for (const { thing } of all) {
    const id = freeName(thing.kind, grown)
    names.set(thing.id, id)
    grown = { ...grown, things: [...grown.things, { ...thing, id }] }
  }
  const copies = grown.things.slice(design.things.length).map((copy, index) => {
    const placed = all[index]
    if (!placed) return copy
    const at = { x: placed.at.x + step, y: placed.at.y }
    const stands = measuresOf({ face: placed.face, at })
    const [along, across] = [renamedPlace(copy.along, names), renamedPlace(copy.across, names)]
    return {
      ...copy,
      along: along ?? clean(stands.along),
      across: across ?? copy.across,
      locked: false,
    } as Thing
  })
  const added: Change = change(design, [['things'], [...design.things, ...copies]])
  const ids2 = copies.map((copy) => copy.id)
  const outcome = enter(`Duplicate ${all.length} things`, added, { selecting: ids2.at(-1) ?? null })
  if (outcome.ok) selectAll(ids2)
  return outcome
}

/** A place that follows one of those copied follows its copy; any other is left to the caller. */
function renamedPlace(place: Thing['along'] | Thing['across'], names: ReadonlyMap<string, string>) {
  if (typeof place !== 'object') return null
  if ('mirror' in place) return names.has(place.mirror) ? { mirror: names.get(place.mirror) } : null
  if ('from' in place) return names.has(place.from) ? { ...place, from: names.get(place.from) } : null
  return null
}
