/** How far strings turn sideways at saddle and nut: the one that turns most is told. */
import { describe, expect, test } from 'vitest'
import type { Stated } from '../../support/designs.ts'
import { graded, to4, told } from './told.ts'

const degrees = (radians: number) => (radians * 180) / Math.PI

describe('over the saddle', () => {
  /** From `y` to a hole 81.2 behind, less the way of a string that comes from `nut`, 635 before. */
  const turn = (nut: number, y: number, hole: number) =>
    Math.abs(degrees(Math.atan((hole - y) / 81.2) - Math.atan((y - nut) / 635)))
  const saysOf = (tailpiece: Stated, more: Stated = {}) =>
    told('side-angle-at-saddle', { ...more, tailpiece })

  test.each([
    [36, 18],
    [16, 8],
  ])('to holes %d over all', (span, hole) => {
    const angle = turn(-12, -13, -hole)
    expect(saysOf({ span })).toEqual([
      `${angle > 3 ? 'care' : 'clear'} saddle + string 3: ${to4(angle)} of 3, plan (635, -13) to (716.2, -${hole})`,
    ])
  })

  test('just inside and just outside the limit', () => {
    const angle = turn(-12, -13, -18)
    const grade = (sideAngleAtSaddle: number) =>
      graded('side-angle-at-saddle', { tailpiece: { span: 36 }, limits: { sideAngleAtSaddle } })
    expect(grade(angle + 1e-6)).toEqual(['clear'])
    expect(grade(angle - 1e-6)).toEqual(['care'])
  })

  test('a string without a hole is not asked', () => {
    // The one hole lies in the middle; the middle string runs straight to it.
    const [line, ...rest] = saysOf({ holes: 1 })
    expect(rest).toEqual([])
    expect(line).toMatch(/^clear saddle \+ string 2: 0 of 3, plan \(635, 0\) to \(716.2, 0\)$/)
  })
})

describe('at the nut', () => {
  const saysOf = (headstock: Stated, more: Stated = {}) => told('side-angle-at-nut', { ...more, headstock })

  test('the string that turns most is told, from where it lies to its post', () => {
    // Strings at -12, 0 and 12; posts at (-45, -y), (-77, -y) and (-45, y).
    const side = (edge: number) => 19 - edge
    const outer = (y: number) => degrees(Math.atan((12 - y) / 45) + Math.atan(1 / 635))
    const middle = (y: number) => degrees(Math.atan(y / 77))
    // Near the edge the middle string has the longest way out, near the middle the outer ones have it in.
    expect(saysOf({ postEdge: 5 })).toEqual([
      `care nut + string 2: ${to4(middle(side(5)))} of 8, plan (0, 0) to (-77, -14)`,
    ])
    const [near = ''] = saysOf({ postEdge: 14 })
    expect(near).toMatch(
      /^(care|clear) nut \+ string [13]: [\d.]+ of 8, plan \(0, (-12|12)\) to \(-45, (-5|5)\)$/,
    )
    // The outer strings come 1 in from 635 in front: what they turn is that much more or less.
    const measured = Number(/: ([\d.]+) of/.exec(near)?.[1])
    expect(Math.abs(measured - outer(5))).toBeLessThan(2 * degrees(Math.atan(1 / 635)) + 1e-3)
  })

  test('just inside and just outside the limit', () => {
    const angle = degrees(Math.atan(14 / 77))
    const grade = (sideAngleAtNut: number) =>
      graded('side-angle-at-nut', { headstock: { postEdge: 5 }, limits: { sideAngleAtNut } })
    expect(grade(angle + 1e-6)).toEqual(['clear'])
    expect(grade(angle - 1e-6)).toEqual(['care'])
  })

  test('without posts there is nothing to say', () => {
    expect(saysOf({ bassTuners: 0, trebleTuners: 0 })).toEqual([])
  })
})
