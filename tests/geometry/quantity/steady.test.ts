/** Lists compared once: told or walked, the answer is the same. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { othersThan, steadyFilter, tellOthers } from '../../../geometry/quantity/steady.ts'

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
