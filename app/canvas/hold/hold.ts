/**
 * Lines take hold of a thing while it is moved, each with the name that is shown when it does. Nothing is
 * remembered from one frame to the next, so nothing sticks: where the pointer is decides alone.
 */
import { type Bounds, type Layout, neighbours, type Placed, type Point } from '../../../geometry/index.ts'
import { HOLDERS } from './holders.ts'
import { type Asked, type AxisName, type Holder, isNear, type Line, type Offered } from './line.ts'

export type { Line } from './line.ts'

export interface Held {
  readonly at: Point
  readonly lines: readonly Line[]
}

/** What is equally near to this fraction of a millimetre goes to the earlier holder of the list. */
const AS_NEAR = 1e-9

/** What holds while one thing is moved. `apart` are ids of things that move with it and can give no hold. */
export interface Grip {
  /** The place after the nearest line of each axis, if one is within `reach` millimetres, has taken hold. */
  hold(at: Point, reach: number): Held
}

export function gripOn(layout: Layout, placed: Placed, apart: ReadonlySet<string>): Grip {
  const { bounds, at: own } = placed
  const edges = {
    minX: bounds.minX - own.x,
    maxX: bounds.maxX - own.x,
    minY: bounds.minY - own.y,
    maxY: bounds.maxY - own.y,
  }
  const others = layout.placed.filter(
    (other) => other.face === placed.face && other.thing.id !== placed.thing.id && !apart.has(other.thing.id),
  )
  const around = surroundings(others, edges)
  let near: readonly Placed[] = others
  const ask = (at: Point, reach: number, axes: readonly AxisName[], holders: readonly Holder[]): Held =>
    nearestOf({ layout, placed, at, edges, others: near }, reach, axes, holders)
  return {
    hold(at, reach) {
      if (reach <= 0) return { at, lines: [] }
      near = around(at)
      const first = ask(at, reach, ['x', 'y'], FIRST)
      const free = (['x', 'y'] as const).filter((axis) => !first.lines.some((line) => line.axis === axis))
      if (free.length === 0) return first
      // Both axes free: one margin is enough, the other would answer to a place that is no more.
      const then = ask(first.at, reach, free.slice(0, free.length === 2 ? 2 : 1), AFTER)
      const lines = free.length === 2 ? nearer(then.lines, first.at) : then.lines
      const at2 = { ...first.at }
      for (const line of lines) at2[line.axis] = line.at
      return { at: at2, lines: [...first.lines, ...lines] }
    },
  }
}

/** Of more things than these only those within reach of the eye give a hold. */
const MANY = 200
/** Millimetres to all sides, here and across the centreline: as far as there are not many yet. */
const IN_SIGHT = [15, 30, 60]

/** The things that may give a hold at a place: all of a few, of many those near it or near its mirror place. */
function surroundings(
  others: readonly Placed[],
  { minX, maxX, minY, maxY }: Bounds,
): (at: Point) => readonly Placed[] {
  if (others.length <= MANY) return () => others
  const index = neighbours(others.map((one) => one.bounds))
  return ({ x, y }) => {
    const here = { minX: x + minX, maxX: x + maxX, minY: y + minY, maxY: y + maxY }
    const across = { ...here, minY: -here.maxY, maxY: -here.minY }
    let found: readonly number[] = []
    for (const far of IN_SIGHT) {
      const wider = merged(index.near(here, far), index.near(across, far))
      if (found.length > 0 && wider.length > MANY) break
      found = wider
    }
    return found.map((one) => others[one]!)
  }
}

/** The numbers of two ascending lists, ascending, each once. */
function merged(some: readonly number[], more: readonly number[]): number[] {
  const all: number[] = []
  let [here, there] = [0, 0]
  while (here < some.length || there < more.length) {
    const [one, other] = [some[here] ?? Number.POSITIVE_INFINITY, more[there] ?? Number.POSITIVE_INFINITY]
    all.push(Math.min(one, other))
    if (one <= other) here++
    if (other <= one) there++
  }
  return all
}

const FIRST = HOLDERS.filter((one) => !one.after)
const AFTER = HOLDERS.filter((one) => one.after)

const nearer = (lines: readonly Line[], at: Point): readonly Line[] =>
  lines.length < 2
    ? lines
    : [...lines].sort((a, b) => Math.abs(a.at - at[a.axis]) - Math.abs(b.at - at[b.axis])).slice(0, 1)

interface Best extends Offered {
  readonly at: number
  readonly name: () => string
}

function nearestOf(
  asked: Omit<Asked, 'near'>,
  reach: number,
  axes: readonly AxisName[],
  holders: readonly Holder[],
): Held {
  const best: { x: Best | null; y: Best | null } = { x: null, y: null }
  const [x, y] = [axes.includes('x') ? reach : Number.NaN, axes.includes('y') ? reach : Number.NaN]
  const near = {
    minX: asked.at.x - x,
    maxX: asked.at.x + x,
    minY: asked.at.y - y,
    maxY: asked.at.y + y,
  }
  const full: Asked = { ...asked, near }
  for (const holder of holders)
    holder.lines(full, (axis, at, name, more) => {
      if (!isNear(full, axis, at)) return
      const before = best[axis]
      const off = Math.abs(at - asked.at[axis])
      if (before && off >= Math.abs(before.at - asked.at[axis]) - AS_NEAR) return
      best[axis] = { at, name, ...more }
    })
  const at = { ...asked.at }
  const lines: Line[] = []
  for (const axis of ['x', 'y'] as const) {
    const one = best[axis]
    if (!one) continue
    at[axis] = one.at
    lines.push({ axis, at: one.at, shows: one.shows ?? one.at, name: one.name(), gaps: one.gaps ?? [] })
  }
  return { at, lines }
}
