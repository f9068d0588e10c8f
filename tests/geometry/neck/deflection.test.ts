import { describe, expect, it } from 'vitest'
import { bendFromRoot } from '../../../geometry/neck/deflection.ts'
import { plank, sectionOf } from '../../../geometry/neck/sections.ts'
import { expectShare, expectWithin } from '../../support/near.ts'

/** Rise and slope at the end of a beam of this length whose root is level, cut at `cuts` into so many intervals. */
function bent(length: number, bend: number, moment: (from: number) => number, cuts: readonly number[] = []) {
  const ends = [0, ...cuts, length]
  const lengths = ends.slice(1).map((end, index) => end - ends[index]!)
  const curvature = new Array<number>(3 * lengths.length).fill(0)
  for (const [index, span] of lengths.entries()) {
    const from = ends[index]!
    // A hair inside, so that a moment with a corner at a cut is read on the right side of it.
    for (const [place, at] of [from + 1e-9 * span, from + span / 2, from + span - 1e-9 * span].entries()) {
      curvature[3 * index + place] = moment(at) / bend
    }
  }
  const rise = new Array<number>(curvature.length).fill(0)
  const slope = bendFromRoot({ lengths }, curvature, 0, rise)
  return { rise: rise.at(-1)!, slope, all: rise }
}

describe('a cantilever', () => {
  // Beam tutorial problems, Q1 to Q5, in metres, newtons and N·m²; δ = F L³ / 3 E I, w L⁴ / 8 E I.
  it('of 6 m with 20 kN at its tip', () => {
    const { rise, slope } = bent(6, 1.1e8, (u) => 20_000 * (6 - u))
    expectShare(slope, 0.00327273, 1e-5)
    expectShare(rise, 0.0130909, 1e-5)
  })

  it('of 6 m under 1 kN/m', () => {
    const { rise, slope } = bent(6, 1e8, (u) => 500 * (6 - u) ** 2, [3])
    expectShare(slope, 0.00036, 1e-6)
    // A quartic: parabolas through three points of the moment are exact.
    expectShare(rise, 0.00162, 1e-6)
  })

  it('of 5 m that sinks 3 mm under 50 kN has the stiffness asked for', () => {
    expectShare(bent(5, 6.94444e8, (u) => 50_000 * (5 - u)).rise, 0.003, 3e-5)
  })

  // A cantilever question, inputs read: 3 m, 25 kN, I = 1e8 mm⁴, E = 210 GPa.
  it('of 3 m of steel', () => {
    const { rise, slope } = bent(3000, 210_000 * 1e8, (u) => 25_000 * (3000 - u))
    expectShare(slope, 0.00535714, 2e-6)
    expectShare(rise, 10.7143, 2e-6)
  })

  // MATHalino, solution to problem 639: 900 lb up at 6 ft, 200 lb/ft down over 8 ft, E I = 9e7 lb·in²; printed −0.09984 in.
  it('under loads that oppose each other', () => {
    const moment = (u: number) => (900 * Math.max(0, 6 - u) - 100 * (8 - u) ** 2) * 12
    const { rise } = bent(96, 9e7, (u) => moment(u / 12), [72])
    expectWithin(rise, -0.09984, 5e-6)
  })

  // Roark's Formulas, cantilever with end couple: maple 40 × 20 mm, 400 mm, 200 N at 12 mm: M L² / 2 E I.
  it('bent by a couple', () => {
    const section = sectionOf([plank(40, -10, 10, { stiffness: 12_600, strength: 100 })])!
    const { rise, slope, all } = bent(400, section.bend, () => 2400)
    expectShare(rise, 0.571429, 2e-5)
    expectShare(slope, 2 * (0.571429 / 400), 2e-5)
    expectShare(all[1]!, 0.571429 / 4, 2e-5)
  })
})

describe('a beam on two supports', () => {
  // Beam tutorial, as above: 4 m, 200 kN in the middle; half of it is a cantilever with half the load at its end.
  it('of 4 m loaded in the middle', () => {
    const { rise, slope } = bent(2, 3e8, (u) => 100_000 * (2 - u))
    expectShare(slope, 0.000666667, 2e-6)
    expectShare(rise, 0.000888889, 2e-6)
  })

  // USDA Wood Handbook, FPL-GTR-282, Eq. 9-2, Table 9-1: bending coefficients kb of δ = kb W L³ / E I for W = L = EI = 1.
  it.each([
    ['evenly loaded, resting', 0.013020833, 0.5, (u: number) => (1 - 4 * u * u) / 8, []],
    ['loaded in the middle, resting', 0.020833333, 0.5, (u: number) => (0.5 - u) / 2, []],
    ['loaded at its quarters, resting', 0.014322917, 0.5, (u: number) => Math.min(0.25, 0.5 - u) / 2, [0.25]],
    ['evenly loaded, a cantilever', 0.125, 1, (u: number) => (1 - u) ** 2 / 2, []],
    ['loaded at its end, a cantilever', 0.333333333, 1, (u: number) => 1 - u, []],
    ['evenly loaded, clamped', 0.002604167, 0.5, (u: number) => (6 * u - 6 * u * u - 1) / 12, []],
    ['loaded in the middle, clamped', 0.005208333, 0.5, (u: number) => (4 * u - 1) / 8, []],
  ])('%s: %d', (_, coefficient, length, moment, cuts) => {
    expectShare(Math.abs(bent(length, 1, moment, cuts).rise), coefficient, 1e-6)
  })

  // The same, Eq. 9-2 with its bending part: white oak 50 × 12 mm on 500 mm, 100 N in the middle. Shear, a hundredth
  // more here, is not counted for necks, which are bent by couples.
  it('of white oak', () => {
    const section = sectionOf([plank(50, 0, 12, { stiffness: 12_300, strength: 105 })])!
    expectShare(bent(250, section.bend, (u) => 50 * (250 - u)).rise, 2.94057, 2e-5)
  })
})

describe('bendFromRoot', () => {
  it('starts at the slope given', () => {
    const rise = new Array<number>(3).fill(0)
    const slope = bendFromRoot({ lengths: [100] }, new Array<number>(3).fill(0), 0.01, rise)
    expect([...rise]).toEqual([0, 0.5, 1])
    expect(slope).toBe(0.01)
  })

  it('throws where the lists do not fit', () => {
    expect(() =>
      bendFromRoot(
        { lengths: new Array<number>(2).fill(0) },
        new Array<number>(3).fill(0),
        0,
        new Array<number>(3).fill(0),
      ),
    ).toThrow('2 intervals need 6 stations, not 3')
  })
})
