/** While a thing is dragged only what is near is asked; it must come to what asking everything comes to. */
import fc from 'fast-check'
import { afterEach, expect, test } from 'vitest'
import { among } from '../../../app/canvas/among.ts'
import { distancesOf } from '../../../app/canvas/distances.ts'
import { dragging } from '../../../app/canvas/dragging.ts'
import { findingsNow } from '../../../app/canvas/findings-now.ts'
import { check, type Design, type Finding, type Placed, solve } from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'

afterEach(() => dragging.release())

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** More things than are looked at one by one; a few of them large, some behind the face, some that hang on another. */
const things = fc
  .array(
    fc.record({
      kind: fc.constantFrom('sound-hole', 'screw', 'pot', 'slot'),
      face: fc.constantFrom('lid', 'base', 'lid'),
      along: fc.oneof(
        { weight: 4, arbitrary: mm(5, 395) },
        { weight: 1, arbitrary: fc.constant({ from: 't0', by: 30 }) },
      ),
      across: mm(-110, 110),
      large: fc.nat(9),
    }),
    { minLength: 40, maxLength: 120 },
  )
  .map((all) =>
    all.map(({ kind, large, along, ...one }, index) => ({
      ...one,
      kind,
      face: kind === 'pot' ? 'lid' : one.face,
      id: `t${index}`,
      along: index === 0 ? 200 : along,
      ...(kind === 'sound-hole' ? { diameter: large === 0 ? 120 : 6 } : {}),
    })),
  )

const lid = (all: readonly object[]): Design => designOf({ box: { length: 400, width: 240 }, things: all })

const about = (findings: readonly Finding[], id: string) =>
  findings
    .filter((one) => one.grade !== 'clear' && one.about.includes(id))
    .map(({ key, measured }) => `${key} ${measured?.toFixed(9)}`)
    .sort()

test('what is wrong with a dragged thing, and what it is nearest to, among many', () => {
  let wrong = 0
  let near = 0
  fc.assert(
    fc.property(things, fc.nat(), mm(-150, 150), mm(-100, 100), (all, which, dx, dy) => {
      const design = lid(all)
      const index = which % all.length
      const own = design.things[index]!
      const by = (value: unknown, way: number) => (typeof value === 'number' ? value + way : value)
      const moved = {
        ...own,
        along: by(own.along, dx),
        across: by(own.across, dy),
      } as Design['things'][number]
      const start = solve(design)
      const now = solve({ ...design, things: design.things.map((one, at) => (at === index ? moved : one)) })
      const placed = now.placed[index]!
      const alone = distancesOf(now, placed)

      dragging.begin(() => undefined)
      dragging.moves(new Set([own.id]), start)
      // Of many that lie over each other a rule names the tightest; among fewer it may name one more.
      expect(about(findingsNow(now).news, own.id)).toEqual(expect.arrayContaining(about(check(now), own.id)))
      const shown = distancesOf(now, placed)
      expect(shown.map(({ of, mm }) => `${of} ${mm.toFixed(9)}`)).toEqual(
        alone.map(({ of, mm }) => `${of} ${mm.toFixed(9)}`),
      )
      dragging.release()
      wrong += about(check(now), own.id).length
      near += alone.filter(({ of }) => of === 'neighbour').length
    }),
    { seed: 3, numRuns: 60, endOnFailure: true },
  )
  expect(wrong).toBeGreaterThan(50)
  expect(near).toBeGreaterThan(20)
})

test('a box finds all that come near it and what has moved, also what only hangs on what moved', () => {
  const all = Array.from({ length: 60 }, (_, index) => ({
    kind: 'sound-hole',
    id: `t${index}`,
    along: 10 + 6 * index,
    across: 0,
    diameter: 4,
  }))
  const design = lid([...all, { ...all[0], id: 'follower', along: { from: 't0', by: 3 }, across: 60 }])
  const start = solve(design)
  const [first, ...others] = design.things
  const now = solve({ ...design, things: [{ ...first!, along: 300 }, ...others] })
  const them = among(now, start)
  const ids = (found: readonly Placed[] | undefined) => found?.map(({ thing }) => thing.id).sort()
  expect(ids(them?.near({ minX: 100, maxX: 104, minY: -1, maxY: 1 }, 3))).toEqual([
    'follower',
    't0',
    't15',
    't16',
  ])
  expect(ids(them?.larger(3))).toEqual(['follower', 't0'])
  expect(ids(them?.withIds(new Set(['t5'])))).toEqual(['t5'])
  // Another list of things is another matter.
  expect(among(solve({ ...design, things: others }), start)).toBeNull()
})
