/** The least size on the builder's rule that passes: plain counting. */
import { describe, expect, it } from 'vitest'
import { thinnest } from '../../../geometry/neck/cure.ts'
import { expectShare } from '../../support/near.ts'

describe('thinnest', () => {
  it('asks for sizes on the rule only, and few of them', () => {
    const asked: number[] = []
    const found = thinnest(
      (size) => {
        asked.push(size)
        return size >= 17.25
      },
      10,
      30,
      0.25,
    )
    expect(found).toBe(17.25)
    // 81 sizes are halved in seven questions, after the one about the greatest.
    expect(asked.length).toBeLessThanOrEqual(8)
    for (const size of asked) {
      expect(Number.isInteger(size / 0.25)).toBe(true)
      expect(size >= 10 && size <= 30).toBe(true)
    }
  })

  it('is the least on the rule that passes', () => {
    expect(thinnest((height) => height ** 3 > 5000, 10, 30, 0.5)).toBe(17.5)
    expect(thinnest(() => true, 10, 30, 0.5)).toBe(10)
    expect(thinnest(() => false, 10, 30, 0.5)).toBeNull()
    expect(thinnest(() => true, 10, 9, 0.5)).toBeNull()
    // Only one size, and none: 29.9 lies between two lines of the rule.
    expect(thinnest(() => true, 10, 10, 0.5)).toBe(10)
    expect(thinnest((height) => height >= 30, 10, 29.9, 0.5)).toBeNull()
    // Tenths are no whole numbers to a machine, which has 0.3 / 0.1 as a little less than 3 and 1.1 / 0.1 as more than 11.
    expect(thinnest((height) => height > 0.25, 0.1, 0.3, 0.1)).toBeCloseTo(0.3, 12)
    expect(thinnest(() => true, 1.1, 2, 0.1)).toBeCloseTo(1.1, 12)
    expectShare(thinnest((height) => height >= 19.049, 5, 30, 25.4 / 32)!, 19.05, 1e-12)
  })
})
