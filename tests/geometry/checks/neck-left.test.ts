/**
 * What is left of the neck where it is thinnest over the box: ten by usual practice, and 0.12 of its stiffness, which goes
 * with the cube of the thickness (Gere, "Mechanics of Materials": I = b h³ / 12).
 */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { to4, told } from './told.ts'

const saysOf = (neck: Stated, more: Stated = {}) => told('neck-left', { ...more, neck })

test.each([
  // Less the lid's 4 and the relief; the relief lies from 478.2 to 686.2, inside the walls and 10 from them.
  [{ relief: 5 }, 'clear neck: 10 of 10, section (582.2, -9) to (582.2, -19)'],
  [{ relief: 5.01 }, 'care neck: 9.99 of 10, section (582.2, -9.01) to (582.2, -19)'],
  [{ thickness: 17 }, 'clear neck: 10 of 10, section (582.2, -7) to (582.2, -17)'],
  [{ rise: -1, relief: 6 }, 'clear neck: 10 of 10, section (582.2, -10) to (582.2, -20)'],
] as const)('%j', (neck, line) => {
  // Where the cut is taken is half way along the relief; how far it reaches is proved with the neck.
  const [said = ''] = saysOf(neck)
  const [measure, where] = line.split(', section ')
  expect(said.startsWith(`${measure}, section `)).toBe(true)
  const heights = [...(where ?? '').matchAll(/, (-[\d.]+)\)/g)].map(([, y]) => y)
  expect([...said.matchAll(/, (-[\d.]+)\)/g)].map(([, y]) => y)).toEqual(heights)
})

describe('stiffness', () => {
  // 0.12 of a cube is 0.49324 of the thickness: of 30 that is 14.797.
  const least = 30 * Math.cbrt(0.12)
  const left = (mm: number) => saysOf({ thickness: 30, relief: 30 - 4 - mm })[0]

  test('that is too little stops a neck thick enough by its millimetres', () => {
    expect(left(least + 0.001)).toMatch(`clear neck: ${to4(least + 0.001)} of ${to4(least)},`)
    expect(left(least - 0.001)).toMatch(`stop neck: ${to4(least - 0.001)} of ${to4(least)},`)
  })

  test('as a share goes by what is stated', () => {
    const half = saysOf({ thickness: 30, relief: 10.999 }, { limits: { neckStiffnessLeft: 0.125 } })
    expect(half[0]).toMatch(/^clear neck: 15.001 of 15,/)
    expect(saysOf({ thickness: 30, relief: 11.001 }, { limits: { neckStiffnessLeft: 0.125 } })[0]).toMatch(
      /^stop neck: 14.999 of 15,/,
    )
    // Nothing left is a stop, whatever is wanted.
    const none = { limits: { neckStiffnessLeft: 0, neckLeft: 0 } }
    expect(saysOf({ relief: 15 }, none)[0]).toMatch(/^stop neck: 0 of 0,/)
    expect(saysOf({ relief: 14.9 }, none)[0]).toMatch(/^clear neck: 0.1 of 0,/)
  })

  test('is told in hundredths', () => {
    const layout = solve(designOf({ neck: { thickness: 30, relief: 11 } }))
    const finding = check(layout).find(({ rule }) => rule === 'neck-left')
    if (!finding) throw new Error('nothing is said')
    // Half of the thickness, an eighth of the stiffness.
    expect(sentenceOf(finding, layout)).toContain('15.0 mm of the neck’s 30.0 mm are left')
    expect(sentenceOf(finding, layout)).toContain('13 % of its stiffness')
  })
})

test('the cut is shown half way along the thinnest stretch', () => {
  // A neck without a relief is thinnest in the notch for the lid, from 462.2 to the other end of the box at 702.2.
  expect(saysOf({ relief: 0 })).toEqual(['clear neck: 15 of 10, section (582.2, -4) to (582.2, -19)'])
})
