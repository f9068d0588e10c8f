/**
 * What lies near a place while things are dragged among thousands that stand still: an index of the layout the drag began
 * from, and beside it whatever has moved since. Nobody looks at every thing in every frame.
 */
import {
  type Bounds,
  type Layout,
  type Neighbours,
  neighbours,
  notes,
  othersThan,
  type Placed,
} from '../../geometry/index.ts'
import { dragging } from './dragging.ts'

interface Index {
  readonly boxes: Neighbours
  readonly byId: ReadonlyMap<string, number>
  /** Things with bodies behind their face, by their numbers. */
  readonly bodied: readonly number[]
  /** Numbers of those whose place is no measure: it hangs on others. */
  readonly hanging: readonly number[]
  /** Numbers of all, the largest first. */
  readonly bySize: readonly number[]
}

const known = notes<Layout, Index>()

function indexOf(start: Layout): Index {
  const before = known.get(start)
  if (before) return before
  const { placed } = start
  const index = {
    boxes: neighbours(placed.map(({ bounds }) => bounds)),
    byId: new Map(placed.map(({ thing }, number) => [thing.id, number])),
    bodied: placed.flatMap(({ kind }, number) => (kind.bodies === undefined ? [] : number)),
    hanging: placed.flatMap(({ thing: { along, across } }, number) =>
      typeof along === 'number' && typeof across === 'number' ? [] : number,
    ),
    bySize: placed.map((_, number) => number).sort((a, b) => sizeOf(placed[b]!) - sizeOf(placed[a]!)),
  }
  known.set(start, index)
  return index
}

/** Half of a thing's longer side, millimetres. */
export const sizeOf = ({ bounds: { minX, maxX, minY, maxY } }: Placed): number =>
  Math.max(maxX - minX, maxY - minY) / 2

/** All lists may hold some that moved and lie elsewhere now, and in no order. */
export interface Among {
  /** Things whose box comes within so many millimetres of a box, whatever their face. */
  near(box: Bounds, grow: number): readonly Placed[]
  /** Things of more than this size. */
  larger(size: number): readonly Placed[]
  /** Things with bodies behind their face. */
  bodied(): readonly Placed[]
  withIds(ids: ReadonlySet<string>): readonly Placed[]
  /** Some of them in the order of the design: a finding about two is called after the earlier first. */
  inOrder(some: Iterable<Placed>): Placed[]
}

const lately = notes<Layout, { readonly start: Layout; readonly them: Among | null }>()

/** `layout` as it is now, `start` as it was: the same things in the same order, or `null` where that is not so. */
export function among(layout: Layout, start: Layout): Among | null {
  const before = lately.get(layout)
  if (before?.start === start) return before.them
  const them = compared(layout, start)
  lately.set(layout, { start, them })
  return them
}

/** Things by their ids, in the order of the design. */
export function thingsCalled(layout: Layout, ids: ReadonlySet<string>): readonly Placed[] {
  const start = dragging.start()
  const them = start && ids.size > 0 ? among(layout, start) : null
  if (them) return them.inOrder(them.withIds(ids))
  return ids.size === 0 ? [] : layout.placed.filter(({ thing }) => ids.has(thing.id))
}

/** What is being dragged now, where it has come to. */
export const movingNow = (layout: Layout): readonly Placed[] => thingsCalled(layout, dragging.moving())

function compared(layout: Layout, start: Layout): Among | null {
  const [now, then] = [layout.placed, start.placed]
  // What stands as a thing stands as it did: the lists of things are compared, and nothing is looked into.
  const [are, were] = [layout.design.things, start.design.things]
  const others = othersThan(are, were)
  if (!others?.every((number) => are[number]!.id === were[number]!.id)) return null
  const moved = [...others]
  const index = indexOf(start)
  // What hangs on others moves without being another.
  for (const number of index.hanging) {
    const [a, b] = [now[number]!.at, then[number]!.at]
    if (are[number] === were[number] && (a.x !== b.x || a.y !== b.y)) moved.push(number)
  }
  const isMoved = new Set(moved)
  const numberOf = ({ thing }: Placed): number => index.byId.get(thing.id) ?? 0
  const withMoved = (numbers: readonly number[]): Placed[] => {
    const all = moved.map((number) => now[number]!)
    for (const number of numbers) if (!isMoved.has(number)) all.push(now[number]!)
    return all
  }
  return {
    near: (box, grow) => withMoved(index.boxes.near(box, grow)),
    larger: (size) => {
      const { bySize } = index
      let many = 0
      while (many < bySize.length && sizeOf(then[bySize[many]!]!) > size) many++
      return withMoved(bySize.slice(0, many))
    },
    bodied: () => withMoved(index.bodied),
    withIds: (ids) => [...ids].flatMap((id) => now[index.byId.get(id) ?? -1] ?? []),
    inOrder: (some) => [...some].sort((a, b) => numberOf(a) - numberOf(b)),
  }
}
