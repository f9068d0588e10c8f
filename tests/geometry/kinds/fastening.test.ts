/** Screws, pilots and threads against published tables, and the sentence a builder reads in a thick wall. */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { pilotFor, screwFor, WOOD_SCREWS } from '../../../geometry/kinds/wood-screws.ts'
import { designOf } from '../../support/designs.ts'

const INCH = 25.4

describe('wood screws', () => {
  // Basic diameters in inches, ASME B18.6.1 (wood screws), as trade tables print them.
  test.each([
    [2, 0.086],
    [4, 0.112],
    [6, 0.138],
    [8, 0.164],
    [10, 0.19],
  ])('No. %i is %d inch thick', (gauge, inches) => {
    const screw = WOOD_SCREWS.find((one) => one.gauge === gauge)
    expect((screw?.shank ?? 0) / INCH).toBeCloseTo(inches, 6)
  })

  /**
   * Pilots in sixty-fourths of an inch as three published charts give them, least and most, softwood then hardwood:
   * "Wood Screw Pilot Hole Sizes" (plate 6B, reprinted workshop chart, gauges 6 to 10) and a comparison of the American
   * Wood Council's 70 % and 90 % of the root with looser advice (gauges 2 to 10).
   */
  test.each([
    [2, [2, 4], [3, 4]],
    [4, [3, 4], [4, 5]],
    [6, [4, 5], [5, 7]],
    [8, [5, 6], [6, 8]],
    [10, [6, 7], [7, 9]],
  ] as const)('the pilots of No. %i lie within what charts give', (gauge, soft, hard) => {
    const screw = WOOD_SCREWS.find((one) => one.gauge === gauge)
    for (const [pilot, [least, most]] of [
      [screw?.softwood ?? 0, soft],
      [screw?.hardwood ?? 0, hard],
    ] as const) {
      expect((pilot / INCH) * 64).toBeGreaterThanOrEqual(least - 1e-9)
      expect((pilot / INCH) * 64).toBeLessThanOrEqual(most + 1e-9)
    }
  })

  test('a clearance hole tells the screw, and the wood its pilot', () => {
    expect([3.6, 4.4, 5].map((hole) => screwFor(hole).gauge)).toEqual([6, 8, 10])
    expect(screwFor(1).gauge).toBe(2)
    // Sugar maple 0.63, eastern white pine 0.35 (Wood Handbook, FPL-GTR-190, table 5-3).
    expect(pilotFor(3.6, 0.63) / INCH).toBeCloseTo(3 / 32, 9)
    expect(pilotFor(3.6, 0.35) / INCH).toBeCloseTo(5 / 64, 9)
  })

  test('the sentence names wood, gauge and pilot', () => {
    const layout = solve(
      designOf({
        neck: { wood: 'maple, sugar' },
        things: [{ kind: 'screw', id: 's', along: 120, across: 0, clearance: 3.6, head: 7, screwLength: 18 }],
      }),
    )
    const [holds] = check(layout).filter((one) => one.rule === 'screw-holds')
    expect(holds && sentenceOf(holds, layout)).toContain('of the neck: a No. 6 wants a pilot of 2.38 mm')
  })
})

test('a jack in a thick wall: how wide, how deep and from where to bore', () => {
  const layout = solve(
    designOf({
      box: { walls: { treble: 9.5 } },
      things: [{ kind: 'jack', id: 'jack', face: 'treble-wall', along: 0, across: 25, thread: 7, nut: 1 }],
    }),
  )
  const [finding] = check(layout).filter((one) => one.rule === 'thread-through')
  expect(finding && sentenceOf(finding, layout)).toBe(
    'The jack’s thread is 7.0 mm and the wall is 9.5 mm: bore 22.0 mm wide, 3.5 mm deep from inside.',
  )
})
