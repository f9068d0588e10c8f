import { describe, expect, it } from 'vitest'
import { fretShare } from '../../../geometry/scale/frets.ts'
import { coreArea } from '../../../geometry/strings/mass.ts'
import { heightAtSaddle, pullFromStretch, sharpening, stretchOf } from '../../../geometry/strings/stretch.ts'
import { expectShare } from '../../support/near.ts'

/** The stretch that a pull makes, from the function the other way round. */
const stretchUnder = (pull: number, stiffness: number, length: number) =>
  pull / pullFromStretch(stiffness, 1, length)

// OpenStax, University Physics, Volume 1, sec. 12.3, unless named otherwise; E in N/mm², E A in N.
describe('stretch and pull', () => {
  it('example: a steel rod of 30 mm² and 2 m under 550 kg', () => {
    const pull = 550 * 9.8
    expectShare(pull / 30, 180, 0.005)
    expectShare(stretchUnder(pull, 200_000 * 30, 2000), 1.8, 0.005)
  })

  it('problem: a nylon rope of 8 mm and 35 m under 65 kg', () => {
    expectShare(stretchUnder(65 * 9.8, 1350 * coreArea(8), 35_000), 329, 0.002)
  })

  it('problem: copper of 1 mm and 1 m stretched 3 mm', () => {
    expectShare(pullFromStretch(110_000 * coreArea(1), 3, 1000), 259, 0.001)
  })

  // The printed 1.44 cm needs 210 GPa, though the book's table says 200.
  it('problem: a tightrope of 5 mm over 15 m at 5 degrees', () => {
    const length = 15_000 / Math.cos((5 * Math.PI) / 180)
    expectShare(stretchUnder(3940, 210_000 * coreArea(5), length), 14.4, 0.004)
  })

  // College Physics, sec. 5.3, problem; the book prints no answer.
  it.each([
    [200_000, 672.534],
    [210_000, 706.16],
  ])('a piano wire of 0.85 mm and 1.35 m stretched 8 mm, E = %i', (stiffness, newtons) => {
    expectShare(pullFromStretch(stiffness * coreArea(0.85), 8, 1350), newtons, 1e-5)
  })
})

// G. U. Varieschi and C. M. Gower, "Intonation and Compensation of Fretted String Instruments", Am. J. Phys. 78, 47
// (2010); numbers worked out from its formulas.
describe('pressing a string', () => {
  it('stretches it, exactly and by the series for small heights', () => {
    expectShare(stretchOf(635, 317.5, 2, 2), 0.0125983, 2e-5)
    expectShare((2 ** 2 / 2) * (1 / 317.5 + 1 / 317.5), 0.0125984, 2e-5)
  })

  it('sharpens .010 in steel by 2.5 cents', () => {
    const stiffness = 206_800 * coreArea(0.254)
    expectShare(stiffness, 10478.7, 1e-4)
    const gained = pullFromStretch(stiffness, 0.0125983, 635)
    expectShare(gained, 0.2079, 1e-4)
    expectShare(sharpening(72.6, gained), 2.4752, 1e-4)
  })

  it('sharpens 0.8 mm nylon by a quarter of that', () => {
    const stiffness = 5000 * coreArea(0.8)
    expectShare(stiffness, 2513.27, 1e-4)
    expectShare(sharpening(70, pullFromStretch(stiffness, 0.0125983, 635)), 0.61638, 1e-4)
  })

  it('sharpens less where 120 mm more can slide', () => {
    const cents = sharpening(72.6, pullFromStretch(10478.7, 0.0125983, 635 + 120))
    expectShare(cents, 2.0823, 1e-4)
    expectShare(635 / 755, 0.84106, 1e-4)
  })

  it.each([
    [1, 0.0053874, 1.0593],
    [3, 0.0055691, 1.0951],
    [5, 0.0071142, 1.3986],
    [7, 0.0090501, 1.7788],
    [12, 0.015243, 2.994],
  ])('at fret %i of a sloping action gains %d mm and %d cents', (fret, gained, cents) => {
    const saddle = heightAtSaddle(0.4, 2.2)
    expectShare(saddle, 4, 1e-12)
    const stretch = stretchOf(635, 635 * fretShare(100 * fret), 0.4, saddle)
    expectShare(stretch, gained, 2e-4)
    expectShare(sharpening(72.6, pullFromStretch(206_800 * coreArea(0.254), stretch, 635)), cents, 2e-4)
  })

  it('stretches nothing where there is nowhere to go down', () => {
    expect(stretchOf(635, 200, 0, 0)).toBe(0)
  })

  it('throws for a fret that is not under the string', () => {
    expect(() => stretchOf(635, 700, 1, 1)).toThrow('a fret must lie between 0 and 635, not at 700')
    expect(() => stretchOf(635, Number.NaN, 1, 1)).toThrow('NaN')
    expect(() => sharpening(0, 1)).toThrow('a tension must be above 0, not 0')
  })
})
