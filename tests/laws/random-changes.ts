/** Designs to begin with, and changes made of random picks: the same picks give the same change. */
import fc from 'fast-check'
import { type Change, change, checkDesign, type Design, type Path, valueAt } from '../../geometry/index.ts'

function designOf(fields: object): Design {
  const reading = checkDesign({ format: 'lidwright', version: 1, ...fields })
  if (!reading.ok) throw new Error(`${reading.faults[0]?.path}: ${reading.faults[0]?.sentence}`)
  return reading.design
}

/** A plain box; one with every sort of relation between its things; one whose lists matter. */
export const designs: Readonly<Record<string, Design>> = {
  plain: designOf({}),
  related: designOf({
    title: 'Four strings over a drawer',
    strings: { count: 4, gauges: [1.1, 0.8, 0.6, 0.4] },
    saddle: { place: { midway: ['eye', 'tail-end wall'] } },
    things: [
      { kind: 'sound-hole', id: 'eye', along: 60, across: 55, name: 'Eye' },
      { kind: 'sound-hole', id: 'other-eye', along: { mirror: 'eye' }, across: { mirror: 'eye' } },
      { kind: 'pickup', id: 'pickup', along: { ofScale: 0.2 } },
      { kind: 'screw', id: 'screw', along: { share: 0.9 }, across: { midway: ['eye', 'treble edge'] } },
      { kind: 'sound-hole', id: 'side-hole', face: 'bass-wall', along: 10, across: 25, turnDegrees: 30 },
    ],
    overruled: { 'opening-to-edge eye': 'It is meant to be there.' },
    limits: { openingToEdge: 9 },
  }),
  listed: designOf({
    scale: { frets: { by: 'ratios', list: ['9/8', '5/4', '4/3', '3/2', '2'] } },
    hand: 'left',
    units: { display: 'inches' },
    strings: { count: 2, gauges: [0.5, 0.5] },
    things: Array.from({ length: 12 }, (_, index) => ({
      kind: 'screw',
      id: `screw-${index}`,
      along: 15 * index,
    })),
  }),
}

/** Which field, counted over all there are, and what to put there. */
export interface Pick {
  readonly field: number
  readonly value: unknown
}

/** What stands for "take it away" in a pick. */
export const AWAY = Symbol('away')

const values = fc.oneof(
  fc.double({ min: -200, max: 700, noNaN: true }).filter((value) => !Object.is(value, -0)),
  fc.integer({ min: 0, max: 40 }),
  fc.string({ maxLength: 12 }),
  fc.boolean(),
  fc.constantFrom(
    { share: 0.5 },
    { mirror: 'eye' },
    { midway: ['saddle', 'tail-end edge'] },
    'left',
    'inches',
    'oval',
  ),
  fc.constant(AWAY),
)

export const picks: fc.Arbitrary<Pick> = fc.record({ field: fc.nat(), value: values })

/** Every path of a value: fields, lists, members of lists, and the place behind the last member. */
export function pathsOf(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [path]
  const inner = Object.entries(value).flatMap(([key, child]) =>
    pathsOf(child, [...path, Array.isArray(value) ? Number(key) : key]),
  )
  return [
    ...(path.length > 0 ? [path] : []),
    ...inner,
    ...(Array.isArray(value) ? [[...path, value.length]] : []),
  ]
}

/**
 * The edits of some picks, as one change. Only the last of a list is taken away by its index: whoever takes one from
 * the middle says so of the whole list.
 */
export function changeOf(design: Design, some: readonly Pick[]): Change {
  const edits = some.reduce<{ at: Design; edits: Change['edits'] }>(
    ({ at, edits }, { field, value }) => {
      const paths = pathsOf(at).filter((path) => value !== AWAY || mayGo(at, path))
      const path = paths[field % paths.length] ?? []
      const one = change(at, [path, value === AWAY ? undefined : value])
      return { at: applied(at, path, value), edits: [...edits, ...one.edits] }
    },
    { at: design, edits: [] },
  )
  return { edits: edits.edits }
}

function mayGo(design: Design, path: Path): boolean {
  const list = valueAt(design, path.slice(0, -1))
  if (!Array.isArray(list)) return true
  return path.at(-1) === list.length - 1
}

/** The slow and obvious way to set a field: copy everything, then set it. */
export function applied(design: Design, path: Path, value: unknown): Design {
  // Through text, so that no two places of the copy are one object.
  const copy: Design = JSON.parse(JSON.stringify(design))
  const holder = valueAt(copy, path.slice(0, -1)) as Record<PropertyKey, unknown>
  const key = path.at(-1) ?? ''
  if (value !== AWAY && value !== undefined) holder[key] = value
  else if (Array.isArray(holder)) holder.splice(Number(key), 1)
  else delete holder[key]
  return copy
}
