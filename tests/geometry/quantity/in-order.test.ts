import fc from 'fast-check'
import { expect, test } from 'vitest'
import { inOrder } from '../../../geometry/quantity/in-order.ts'

test('numbers come in the order that the platform’s own sort gives', () => {
  fc.assert(
    fc.property(fc.array(fc.double({ noNaN: true }), { maxLength: 40 }), (numbers) => {
      expect(inOrder([...numbers]).map(plain)).toEqual([...numbers].sort((a, b) => a - b).map(plain))
    }),
  )
})

/** Minus nothing is nothing: neither order puts the two apart. */
const plain = (number: number) => number + 0
