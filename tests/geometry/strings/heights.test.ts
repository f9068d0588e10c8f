import { describe, expect, it } from 'vitest'
import { neckCure, saddleHeight } from '../../../geometry/strings/heights.ts'
import { expectWithin } from '../../support/near.ts'

describe('height of the saddle', () => {
  const level = { crowns: 6, slope: 0, overNut: 0.5, octaveAction: 2, scale: 635 }

  // Plane geometry: the octave lies half way, so the strings rise by the same again behind it.
  it('is crowns, and twice the action less the nut', () => {
    expect(saddleHeight(level)).toBe(9.5)
    expect(saddleHeight({ ...level, overNut: 0 })).toBe(10)
  })

  it('falls with a neck that falls towards the tail', () => {
    expectWithin(saddleHeight({ ...level, slope: -0.01 }), 9.5 - 6.35, 1e-12)
  })

  it('is cured by raising the neck or by tilting it', () => {
    const height = saddleHeight(level)
    const { raise, tilt } = neckCure(height, 12, 635, 330)
    expect(saddleHeight({ ...level, crowns: level.crowns + raise })).toBe(12)
    // Turned about the wall at 330, crowns at the nut go down as those behind it go up.
    const turned = { ...level, crowns: level.crowns - 330 * Math.tan(tilt), slope: Math.tan(tilt) }
    expectWithin(saddleHeight(turned), 12, 1e-9)
    expect(() => neckCure(9, 12, 635, 700)).toThrow('must be above 0, not -65')
  })
})
