/** Against the platform's own sort, which ECMAScript 2019 (23.1.3.30) holds to be stable. */
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { sorted } from '../../../geometry/quantity/sorted.ts'

it('puts items in the order of the platform, equal ones as they came', () => {
  let long = 0
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 20 }), { maxLength: 200, size: 'max' }), (keys) => {
      const items = keys.map((key, came) => ({ key, came }))
      const byKey = (a: { key: number }, b: { key: number }) => a.key - b.key
      if (items.length > 64) long++
      expect(sorted([...items], byKey)).toEqual([...items].sort(byKey))
    }),
    { seed: 5, numRuns: 500 },
  )
  expect(long).toBeGreaterThan(50)
})
