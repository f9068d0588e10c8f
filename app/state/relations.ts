/** Places that follow other things (`{ mirror }`, `{ from }`, `{ midway }`), and what becomes of them when a thing changes its name. */
import type { Across, Along, Design, Path, Place, Placed } from '../../geometry/index.ts'
import { indexOfThing, valueAt } from '../../geometry/index.ts'

/** Every place of a design, with the id of whose place it is. */
export function placesOf(
  design: Design,
): { readonly path: Path; readonly of: string; readonly place: Place }[] {
  return [
    { path: ['saddle', 'place'], of: 'saddle', place: design.saddle.place },
    ...design.things.flatMap((thing, index) => [
      { path: ['things', index, 'along'], of: thing.id, place: thing.along },
      { path: ['things', index, 'across'], of: thing.id, place: thing.across },
    ]),
  ]
}

/** The things and lines a place follows. Example: `followed({ mirror: 'hole' })` is `['hole']`. */
export function followed(place: Place): readonly string[] {
  if (typeof place === 'number') return []
  if ('mirror' in place) return [place.mirror]
  if ('from' in place) return [place.from]
  return 'midway' in place ? place.midway : []
}

/** Every name that a new thing must not take: ids, what places follow, and what overruled findings are about. */
export function namesIn(design: Design): Set<string> {
  return new Set([
    ...design.things.map((thing) => thing.id),
    ...placesOf(design).flatMap(({ place }) => followed(place)),
    ...design.measures.flatMap(({ from, to }) => [from.of, to.of]),
    ...design.wiring.components.map(({ thing }) => thing),
    ...Object.keys(design.overruled).flatMap((key) => key.split(' ')),
  ])
}

/** The first name that is free: the kind's own, else with a number. Example: `screw`, then `screw-2`. */
export function freeName(kind: string, design: Design): string {
  const taken = namesIn(design)
  let name = kind
  for (let number = 2; taken.has(name); number++) name = `${kind}-${number}`
  return name
}

/** Where something stands, as the measures that put it there: the reverse of reading them. */
export function measuresOf({ face, at }: Pick<Placed, 'face' | 'at'>): { along: number; across: number } {
  const plan = face === 'lid' || face === 'base'
  // Adding 0 turns the negative zero of -0 into the plain one.
  return { along: at.x + 0, across: (plan ? at.y : -at.y) + 0 }
}

/**
 * Fields that take the components of the wiring away that stand where these things do, with the wires to them: last in their
 * lists first, since what stands before goes by index.
 */
export function unsoldered(design: Design, going: ReadonlySet<string>): (readonly [Path, undefined])[] {
  const { components, wires } = design.wiring
  const gone = new Set(components.flatMap(({ id, thing }) => (going.has(thing) ? [id] : [])))
  const loose = (terminal: string) => gone.has(terminal.split('.')[0] ?? '')
  const without = <T>(list: 'components' | 'wires', all: readonly T[], goes: (one: T) => boolean) =>
    all
      .flatMap((one, index): (readonly [Path, undefined])[] =>
        goes(one) ? [[['wiring', list, index], undefined]] : [],
      )
      .reverse()
  return [
    ...without('wires', wires, ({ from, to }) => loose(from) || loose(to)),
    ...without('components', components, ({ id }) => gone.has(id)),
  ]
}

/** Fields that make every place that follows `from` follow `to`, and every component that stands there. */
export function renamed(design: Design, from: string, to: string): (readonly [Path, unknown])[] {
  const put = (name: string) => (name === from ? to : name)
  const places = placesOf(design)
    .filter(({ place }) => followed(place).includes(from))
    .map(({ path, place }) => [path, withNames(place, put)] as const)
  const overruled = Object.entries(design.overruled).flatMap(([key, reason]) => {
    const [rule = '', ...about] = key.split(' ')
    if (!about.includes(from)) return []
    return [
      [['overruled', key], undefined] as const,
      [['overruled', [rule, ...about.map(put)].join(' ')], reason] as const,
    ]
  })
  const measures = design.measures.flatMap((measure, index) =>
    (['from', 'to'] as const)
      .filter((end) => measure[end].of === from)
      .map((end) => [['measures', index, end, 'of'], to] as const),
  )
  const components = design.wiring.components.flatMap(({ thing }, index) =>
    thing === from ? [[['wiring', 'components', index, 'thing'], to] as const] : [],
  )
  return [...places, ...measures, ...components, ...overruled]
}

function withNames(place: Place, put: (name: string) => string): Along | Across {
  if (typeof place === 'number') return place
  if ('mirror' in place) return { mirror: put(place.mirror) }
  if ('from' in place) return { ...place, from: put(place.from) }
  return 'midway' in place ? ({ midway: place.midway.map(put) } as Along) : place
}

/** The index of a thing in the design's list, or `null` where there is none of that id. */
export function indexOf(design: Design, id: string): number | null {
  const index = indexOfThing(design, id)
  return index < 0 ? null : index
}

/** Is this the path of a thing's id? Then its index. */
export function idPathIndex(design: Design, path: Path): number | null {
  const [list, index, field] = path
  const isId = path.length === 3 && list === 'things' && typeof index === 'number' && field === 'id'
  return isId && valueAt(design, path) !== undefined ? index : null
}
