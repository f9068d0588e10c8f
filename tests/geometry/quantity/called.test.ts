/** Finding by name comes to what walking the list comes to, whatever list was asked before. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { byName } from '../../../geometry/quantity/called.ts'

interface Named {
  readonly id: string
}

const lists = fc.array(fc.uniqueArray(fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f'), { maxLength: 6 }), {
  minLength: 1,
  maxLength: 8,
})

test('in list after list the number is that of a search from the front', () => {
  fc.assert(
    fc.property(lists, fc.array(fc.constantFrom('a', 'c', 'f'), { minLength: 1 }), (ids, asked) => {
      const numberCalled = byName(({ id }: Named) => id)
      for (const list of ids) {
        const named = list.map((id) => ({ id }))
        for (const id of asked) expect(numberCalled(named, id)).toBe(list.indexOf(id))
      }
    }),
  )
})

test('what stayed where it was is found without walking the list', () => {
  let looked = 0
  const numberCalled = byName((one: Named) => {
    looked += 1
    return one.id
  })
  const thousand = Array.from({ length: 1000 }, (_, index) => ({ id: `thing-${index}` }))
  expect(numberCalled(thousand, 'thing-900')).toBe(900)
  looked = 0
  expect(numberCalled([...thousand], 'thing-900')).toBe(900)
  expect(looked).toBe(1)
})
