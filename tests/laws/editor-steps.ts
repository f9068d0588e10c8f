/** Random steps of somebody at work: changes, drags, undo and redo, and everything that is done with things. */
import fc from 'fast-check'
import { FACES, KINDS } from '../../geometry/index.ts'
import { designs, type Pick, picks } from './random-changes.ts'

export type Step =
  | { readonly do: 'commit'; readonly picks: readonly Pick[] }
  | {
      readonly do: 'gesture'
      readonly frames: readonly (readonly Pick[])[]
      readonly end: 'finish' | 'cancel' | 'undo'
    }
  | { readonly do: 'undo' | 'redo'; readonly times: number }
  | { readonly do: 'travel'; readonly by: number }
  | { readonly do: 'back and forth'; readonly times: number; readonly again: number }
  | { readonly do: 'same again' }
  | { readonly do: OnThing; readonly which: number }
  | { readonly do: Together; readonly which: readonly number[] }
  | { readonly do: 'row'; readonly which: number; readonly count: number; readonly distance: number }
  | { readonly do: 'rename'; readonly which: number; readonly to: string }
  | { readonly do: 'add'; readonly kind: string; readonly face: number }
  | { readonly do: 'open'; readonly name: string }

const ON_THING = ['select', 'remove', 'duplicate', 'mirror', 'earlier', 'later', 'turn', 'grow'] as const
export type OnThing = (typeof ON_THING)[number]

const TOGETHER = [
  ...['lock', 'group', 'ungroup', 'part', 'duplicate all', 'remove all', 'space along', 'space across'],
  ...['centres along', 'centres across', 'minX', 'maxX', 'minY', 'maxY'],
] as const
export type Together = (typeof TOGETHER)[number] & string

const one = fc.array(picks, { minLength: 1, maxLength: 2 })
const few = fc.integer({ min: 1, max: 4 })
const which = fc.nat(20)
const weighed = <T>(weight: number, arbitrary: fc.Arbitrary<T>) => ({ weight, arbitrary })
const always = <const T extends string>(what: T) => fc.constant(what)

export const step: fc.Arbitrary<Step> = fc.oneof(
  weighed(6, fc.record({ do: always('commit'), picks: one })),
  weighed(
    3,
    fc.record({
      do: always('gesture'),
      frames: fc.array(one, { maxLength: 4 }),
      end: fc.constantFrom('finish', 'cancel', 'undo'),
    }),
  ),
  weighed(2, fc.record({ do: fc.constantFrom('undo', 'redo'), times: few })),
  weighed(1, fc.record({ do: always('travel'), by: fc.integer({ min: -6, max: 6 }) })),
  weighed(3, fc.record({ do: always('back and forth'), times: few, again: few })),
  weighed(1, fc.record({ do: always('same again') })),
  weighed(6, fc.record({ do: fc.constantFrom(...ON_THING), which })),
  weighed(
    5,
    fc.record({
      do: fc.constantFrom(...TOGETHER),
      which: fc.array(which, { minLength: 1, maxLength: 4 }),
    }),
  ),
  weighed(
    1,
    fc.record({
      do: always('row'),
      which,
      count: fc.integer({ min: 1, max: 6 }),
      distance: fc.constantFrom(-40, 0, 12.5, 60),
    }),
  ),
  weighed(
    1,
    fc.record({
      do: always('rename'),
      which,
      to: fc.constantFrom('eye', 'screw', 'new-name', 'Not An Id', '', '__proto__', 'constructor'),
    }),
  ),
  weighed(
    2,
    fc.record({
      do: always('add'),
      kind: fc.constantFrom(...Object.keys(KINDS)),
      face: fc.nat(FACES.length - 1),
    }),
  ),
  weighed(1, fc.record({ do: always('open'), name: fc.constantFrom(...Object.keys(designs)) })),
)
