/** Lists compared once: told or walked, the answer is the same. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { apply, change, type Design } from '../../../geometry/index.ts'
import { othersThan, steadyFilter, tellOthers } from '../../../geometry/quantity/steady.ts'
import { designOf } from '../../support/designs.ts'

const lists = fc.array(fc.array(fc.integer({ min: 0, max: 4 }), { maxLength: 6 }), { maxLength: 12 })

test('a filter that remembers keeps what a filter keeps', () => {
  fc.assert(
    fc.property(lists, (all) => {
      const even = steadyFilter((n: number) => n % 2 === 0)
      for (const list of all) expect(even(list)).toEqual(list.filter((n) => n % 2 === 0))
    }),
  )
})

test('it gives the very same list while nothing kept comes or goes, and asks only what is another', () => {
  let asked = 0
  const even = steadyFilter((n: number) => {
    asked += 1
    return n % 2 === 0
  })
  const first = even([1, 2, 3, 4])
  asked = 0
  expect(even([5, 2, 3, 4])).toBe(first)
  expect(asked).toBe(2)
  // Compared with the newest: what changed before is not asked again.
  asked = 0
  expect(even([5, 2, 7, 4])).toBe(first)
  expect(asked).toBe(2)
  expect(even([6, 2, 7, 4])).toEqual([6, 2, 4])
})

test('others than before are numbered, and none are where the lists are of different length', () => {
  const [a, b, c] = [{}, {}, {}]
  const list = [a, b, c]
  expect(othersThan(list, list)).toEqual([])
  expect(othersThan([a, c, c], list)).toEqual([1])
  expect(othersThan([a, b], list)).toBeNull()
})

test('what was told is believed for the newest list alone', () => {
  const [first, second, third] = [
    [1, 2],
    [1, 3],
    [4, 3],
  ]
  // Told more than there is: that it comes back shows that nobody compared.
  tellOthers(second!, first!, [0, 1])
  expect(othersThan(second!, first!)).toEqual([0, 1])
  tellOthers(third!, second!, [0])
  expect(othersThan(third!, second!)).toEqual([0])
  expect(othersThan(second!, first!)).toEqual([1])
  expect(othersThan(third!, first!)).toEqual([0, 1])
})

test('of two made from one only what either was told is looked at', () => {
  const base = [1, 2, 3, 4]
  const [one, other] = [
    [1, 9, 3, 4],
    [1, 9, 3, 8],
  ]
  tellOthers(one, base, [1])
  tellOthers(other, base, [1, 3])
  expect(othersThan(other, one)).toEqual([3])
  expect(othersThan(one, other)).toEqual([3])
  // Not told: that it stays unseen shows that nobody compared.
  const hidden = [7, 9, 3, 4]
  tellOthers(hidden, base, [1])
  expect(othersThan(hidden, one)).toEqual([])
})

test('a change tells what it made another, however it goes about a list', () => {
  const field = fc.oneof(
    fc.record({ at: fc.nat({ max: 4 }), to: fc.constant('more' as const) }),
    fc.record({ at: fc.nat({ max: 4 }), to: fc.constant('away' as const) }),
    fc.record({ at: fc.nat({ max: 4 }), to: fc.integer({ min: 1, max: 60 }) }),
  )
  const start = designOf({
    things: [0, 1, 2, 3, 4].map((n) => ({ kind: 'sound-hole', id: `h${n}`, along: 20 + 10 * n, across: 0 })),
  })
  fc.assert(
    fc.property(fc.array(fc.array(field, { maxLength: 4 }), { minLength: 2, maxLength: 5 }), (changes) => {
      const made: Design[] = [start]
      for (const [index, edits] of changes.entries()) {
        // By turns from the newest and from the first, as edits and the steps of a drag are.
        const from = index % 2 === 0 ? start : (made.at(-1) as Design)
        made.push(
          edits.reduce((design, { at, to }) => {
            const path = ['things', Math.min(at, design.things.length - 1)]
            if (to === 'more') return apply(design, { edits: [{ path, after: design.things[0] }] })
            if (to !== 'away') return apply(design, change(design, [[...path, 'along'], to]))
            return design.things.length > 1 ? apply(design, change(design, [path, undefined])) : design
          }, from),
        )
      }
      for (const { things: list } of made)
        for (const { things: before } of made) {
          const told = othersThan(list, before)
          if (list.length !== before.length) expect(told).toBeNull()
          else
            for (const [index, one] of list.entries())
              if (one !== before[index]) expect(told).toContain(index)
        }
    }),
  )
})
