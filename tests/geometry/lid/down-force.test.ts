import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { breakAngle, downForce, pushForward } from '../../../geometry/lid/down-force.ts'
import { expectShare, expectWithin } from '../../support/near.ts'

const degrees = Math.PI / 180

describe('break angle', () => {
  // Plane geometry, a 3-4-5 triangle behind and a level string before.
  it('is how far the string falls away on either side', () => {
    const angle = breakAngle({ x: 0, z: 10 }, { x: 600, z: 10 }, { x: 640, z: -20 })
    expect(angle.before).toBe(0)
    expectShare(Math.sin(angle.behind), 0.6, 1e-12)
    expectShare(angle.total, angle.behind, 1e-12)
  })

  it('is less than nothing where the string climbs', () => {
    expect(breakAngle({ x: 0, z: 0 }, { x: 100, z: 0 }, { x: 200, z: 5 }).behind).toBeLessThan(0)
  })

  // Common practice, no source, worked out by builders: at the nut with a 6.4 mm (1/4 in) lower head, 9° at 40 mm, 6° at 60,
  // 4° at 90, 3° at 120.
  it.each([
    [40, 9],
    [60, 6],
    [90, 4],
    [120, 3],
  ])('of a post %i mm behind the nut on a straight head is %i degrees', (back, expected) => {
    const { before } = breakAngle({ x: -back, z: 0 }, { x: 0, z: 6.35 }, { x: 635, z: 6.35 })
    expectWithin(before / degrees, expected, 0.5)
  })

  it('throws for places out of order', () => {
    expect(() => breakAngle({ x: 0, z: 0 }, { x: 0, z: 1 }, { x: 5, z: 0 })).toThrow('not 0, 0, 5')
  })
})

describe('down-force', () => {
  // Equilibrium: 100 N bent by 10° on one side.
  it('is the pull times the sines', () => {
    expectWithin(downForce(100, { before: 0, behind: 10 * degrees }), 17.365, 0.001)
    expectWithin(downForce(100, { before: 5 * degrees, behind: 10 * degrees }), 26.08, 0.001)
  })

  // Common practice, no source, worked out by builders as pull × 2 × sin(half the angle): 200 to 350 N over 15° press
  // with 52 to 91 N, 450 N over 20° with 156 N.
  it.each([
    [200, 15, 52],
    [350, 15, 91],
    [450, 20, 156],
  ])('of %i N over %i degrees is about %i N', (pull, angle, expected) => {
    expectShare(
      downForce(pull, { before: (angle / 2) * degrees, behind: (angle / 2) * degrees }),
      expected,
      0.01,
    )
    // All of the angle on one side presses hardly less.
    expectShare(downForce(pull, { before: 0, behind: angle * degrees }), expected, 0.02)
  })

  it('is balanced by what pushes the saddle forward: the forces close', () => {
    const angle = fc.double({ min: 0, max: 1.2, noNaN: true })
    fc.assert(
      fc.property(angle, angle, (before, behind) => {
        const [down, forward] = [downForce(80, { before, behind }), pushForward(80, { before, behind })]
        expectWithin(Math.hypot(down, forward), 2 * 80 * Math.sin((before + behind) / 2), 1e-9)
      }),
    )
    expect(pushForward(80, { before: 0.1, behind: 0.3 })).toBeGreaterThan(0)
  })

  it('of no pull is none', () => {
    expect(downForce(0, { before: 1, behind: 1 })).toBe(0)
    expect(() => downForce(Number.NaN, { before: 0, behind: 0 })).toThrow('not NaN')
  })
})
