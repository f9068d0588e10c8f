import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { freeBand, saddleLine } from '../../../geometry/strings/saddle-line.ts'
import { expectWithin } from '../../support/near.ts'

describe('saddleLine', () => {
  it('goes through setbacks that lie on a line', () => {
    const line = saddleLine([-10, 0, 10], [3, 2.5, 2])
    expectWithin(line.atCentre, 2.5, 1e-12)
    expectWithin(Math.tan(line.slant), -0.05, 1e-12)
    expectWithin(line.farthest, 0, 1e-12)
  })

  // Worked by hand: mean 2, slope Σ y s / Σ y² = (10·(−1)) / 200 ... of −10, 0, 10 with 2, 3, 1.
  it('goes between those that do not, by least squares', () => {
    const line = saddleLine([-10, 0, 10], [2, 3, 1])
    expectWithin(line.atCentre, 2, 1e-12)
    expectWithin(Math.tan(line.slant), -0.05, 1e-12)
    expectWithin(line.farthest, 1, 1e-12)
  })

  it('lies square across for one string, and for strings in one place', () => {
    expect(saddleLine([3], [2])).toEqual({ atCentre: 2, slant: 0, setbacks: [2], farthest: 0 })
    expect(saddleLine([0, 0], [1, 3]).slant).toBe(0)
  })

  it('mirrors with the instrument', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: -30, max: 30 }), fc.integer({ min: 0, max: 6 })), {
          minLength: 1,
          maxLength: 12,
        }),
        (strings) => {
          const setbacks = strings.map(([, setback]) => setback)
          const line = saddleLine(
            strings.map(([y]) => y),
            setbacks,
          )
          const mirrored = saddleLine(
            strings.map(([y]) => -y),
            setbacks,
          )
          expectWithin(mirrored.atCentre, line.atCentre, 1e-9)
          expectWithin(mirrored.slant, -line.slant, 1e-9)
        },
      ),
    )
  })

  it('throws where strings and setbacks do not go together', () => {
    expect(() => saddleLine([], [])).toThrow('not 0 for 0')
    expect(() => saddleLine([1, 2], [1])).toThrow('not 1 for 2')
  })
})

describe('freeBand', () => {
  it('spans all setbacks with something to spare', () => {
    expect(freeBand([1.2, 2.8], 6)).toEqual({ from: -4.8, to: 8.8 })
    expect(() => freeBand([], 6)).toThrow('not 0')
  })
})
