import { describe, expect, it } from 'vitest'
import { addedBend, USUAL_STRIPS } from '../../../geometry/lid/brace.ts'
import { type Foot, type Lid, sagOf } from '../../../geometry/lid/plate.ts'
import { evenSheet, solidWood, stiffnessOf } from '../../../geometry/lid/sheet.ts'
import { firstThatPasses } from '../../../geometry/neck/cure.ts'
import { PANELS, WOODS } from '../../../geometry/neck/woods.ts'
import { expectShare, expectWithin } from '../../support/near.ts'

const E = 7000
const lid = (length: number, width: number, thickness = 4): Lid => ({
  length,
  width,
  thickness,
  stuff: evenSheet(E),
})
const D = (thickness = 4) => (E * thickness ** 3) / (12 * (1 - 0.3 ** 2))
const middle = ({ length, width }: Lid, force: number, long: number, wide: number): Foot => ({
  force,
  along: length / 2,
  across: width / 2,
  long,
  wide,
})

describe('a resting plate', () => {
  // S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., Table 23 (from memory): load P in the
  // middle, w = α P a² / D, a the short side. The table was reckoned with few terms; art. 34 gives the same by a single
  // series, α = Σ (tanh c − c / cosh² c) / 2 π³ m³ over odd m, c = m π b / 2a.
  it.each([
    [1, 0.0116],
    [1.1, 0.01265],
    [1.2, 0.01353],
    [1.4, 0.01484],
    [1.6, 0.0157],
    [1.8, 0.0162],
    [2, 0.01651],
    [3, 0.0169],
  ])('%d times as long as wide, loaded on a point in the middle: %d', (ratio, alpha) => {
    const plate = lid(200 * ratio, 200)
    const { sag } = sagOf(plate, middle(plate, 50, 0, 0))
    const found = (sag * D()) / (50 * 200 ** 2)
    expectShare(found, alpha, 0.002)
    let single = 0
    for (let m = 1; m < 400; m += 2) {
      const c = Math.min((m * Math.PI * ratio) / 2, 300)
      single += (Math.tanh(c) - c / Math.cosh(c) ** 2) / m ** 3 / (2 * Math.PI ** 3)
    }
    expectShare(found, single, 0.001)
    const turned = lid(200, 200 * ratio)
    expectShare(sagOf(turned, middle(turned, 50, 0, 0)).sag, sag, 1e-9)
  })

  // Roark's Formulas for Stress and Strain, 7th ed., Table 11.4, case 1b (from memory): y = α W b² / (E t³), ν = 0.3, and
  // for a small circle of radius r, σ = 3 W / (2 π t²) ((1 + ν) ln(2 b / (π r)) + β). A square of side u spreads its load
  // as a circle of radius 0.57 u does (Timoshenko, art. 37).
  it.each([
    [1, 0.1267, 0.435],
    [1.2, 0.1478, 0.65],
    [1.4, 0.1621, 0.789],
    [1.6, 0.1715, 0.875],
    [1.8, 0.177, 0.927],
    [2, 0.1805, 0.958],
  ])('%d times as long as wide, by the other book: %d and %d', (ratio, alpha, beta) => {
    const plate = lid(200 * ratio, 200)
    const side = 16
    const { sag } = sagOf(plate, middle(plate, 50, 0, 0))
    expectShare(sag, (alpha * 50 * 200 ** 2) / (E * 4 ** 3), 2e-3)
    const { stressAlong, stressAcross } = sagOf(plate, middle(plate, 50, side, side))
    const stress =
      ((3 * 50) / (2 * Math.PI * 16)) * (1.3 * Math.log((2 * 200) / (Math.PI * 0.57 * side)) + beta)
    expectShare(Math.max(stressAlong, stressAcross), stress, 0.02)
  })

  // Timoshenko, Table 8 (from memory): q all over, w = α q a⁴ / D, moments β q a² across the short and β₁ q a² across the
  // long side.
  it.each([
    [1, 0.00406, 0.0479, 0.0479],
    [1.2, 0.00564, 0.0627, 0.0501],
    [1.5, 0.00772, 0.0812, 0.0498],
    [2, 0.01013, 0.1017, 0.0464],
    [3, 0.01223, 0.1189, 0.0406],
  ])('%d times as long as wide, loaded all over: %d, %d, %d', (ratio, alpha, beta, betaLong) => {
    const plate = lid(200 * ratio, 200)
    const load = 0.001
    const { sag, stressAlong, stressAcross } = sagOf(
      plate,
      middle(plate, load * plate.length * plate.width, plate.length, plate.width),
    )
    expectShare((sag * D()) / (load * 200 ** 4), alpha, 0.002)
    const moment = (stress: number) => (stress * 16) / 6 / (load * 200 ** 2)
    expectWithin(moment(stressAcross), beta, 1e-4)
    expectWithin(moment(stressAlong), betaLong, 1e-4)
  })

  it('much longer than wide is a row of strips', () => {
    const plate = lid(4000, 200)
    const { sag } = sagOf(plate, middle(plate, 0.001 * 4000 * 200, 4000, 200))
    expectShare(sag, (5 * 0.001 * 200 ** 4) / (384 * D()), 0.005)
  })

  it('sags in step with the load, against the cube of its thickness, and alike seen from both ends', () => {
    const plate = lid(240, 180)
    const foot: Foot = { force: 60, along: 160, across: 90, long: 5, wide: 50 }
    const one = sagOf(plate, foot)
    expectShare(sagOf(plate, { ...foot, force: 120 }).sag, 2 * one.sag, 1e-12)
    expectShare(sagOf({ ...plate, thickness: 8 }, foot).sag, one.sag / 8, 1e-12)
    expectShare(sagOf({ ...plate, thickness: 8 }, foot).stressAlong, one.stressAlong / 4, 1e-12)
    expectShare(sagOf(plate, { ...foot, along: 80 }).sag, one.sag, 1e-9)
    expectShare(sagOf(plate, { ...foot, across: 90.0000001 }).sag, one.sag, 1e-6)
  })

  it('sags less the nearer the foot is to a wall, and the wider it is', () => {
    const plate = lid(240, 180)
    const foot: Foot = { force: 60, along: 120, across: 90, long: 5, wide: 50 }
    let last = Number.POSITIVE_INFINITY
    for (const along of [120, 150, 180, 210, 230]) {
      const { sag } = sagOf(plate, { ...foot, along })
      expect(sag).toBeLessThan(last)
      last = sag
    }
    expect(sagOf(plate, { ...foot, wide: 120 }).sag).toBeLessThan(sagOf(plate, foot).sag)
  })

  it('keeps a foot that hangs over on the lid', () => {
    const plate = lid(240, 180)
    const inside = sagOf(plate, { force: 60, along: 237.5, across: 90, long: 5, wide: 50 })
    expectShare(sagOf(plate, { force: 60, along: 500, across: 90, long: 5, wide: 50 }).sag, inside.sag, 1e-12)
    for (const value of Object.values(inside)) expect(Number.isFinite(value)).toBe(true)
  })

  it('throws for a lid that is none', () => {
    expect(() => sagOf(lid(240, 180, 0), middle(lid(240, 180), 1, 5, 5))).toThrow(
      'the thickness of a lid must be above 0, not 0',
    )
    expect(() => sagOf(lid(240, 180), middle(lid(240, 180), Number.NaN, 5, 5))).toThrow(
      'a force must be above 0, not NaN',
    )
  })
})

describe('solid wood', () => {
  it('with equal numbers both ways is an even sheet', () => {
    const { along, across, coupling, mixed } = stiffnessOf(evenSheet(E), 4)
    expectShare(along, D(), 1e-12)
    expect(across).toBe(along)
    expectShare(coupling, 0.3 * along, 1e-12)
    expectShare(mixed, along, 1e-12)
  })

  // USDA Wood Handbook, Table 5-1, yellow-poplar: E across the grain 0.043 and 0.092, G 0.075 and 0.069 of E along it.
  it('is far weaker across the grain', () => {
    const stuff = solidWood(10_900, 'along')
    expect(stuff.stiffnessAcross / stuff.stiffnessAlong).toBeGreaterThan(0.043)
    expect(stuff.stiffnessAcross / stuff.stiffnessAlong).toBeLessThan(0.092)
    expect(stuff.shear / stuff.stiffnessAlong).toBeGreaterThanOrEqual(0.069)
    expect(stuff.shear / stuff.stiffnessAlong).toBeLessThanOrEqual(0.075)
  })

  it('turned with the plate is the same plate', () => {
    const along: Lid = { length: 240, width: 180, thickness: 3, stuff: solidWood(9900, 'along') }
    const across: Lid = { length: 180, width: 240, thickness: 3, stuff: solidWood(9900, 'across') }
    const one = sagOf(along, { force: 60, along: 160, across: 90, long: 5, wide: 50 })
    const two = sagOf(across, { force: 60, along: 90, across: 160, long: 50, wide: 5 })
    expectShare(two.sag, one.sag, 1e-9)
    expectShare(two.stressAcross, one.stressAlong, 1e-9)
    expect(one.sag).toBeGreaterThan(
      sagOf({ ...along, stuff: evenSheet(9900) }, { force: 60, along: 160, across: 90, long: 5, wide: 50 })
        .sag,
    )
  })

  it('refuses numbers that no stuff has', () => {
    expect(() => stiffnessOf({ stiffnessAlong: 1, stiffnessAcross: 20, shear: 1, poisson: 0.3 }, 4)).toThrow(
      "Poisson's ratio of 0.3",
    )
  })
})

describe('a brace', () => {
  const plate = lid(240, 180, 3)
  const foot: Foot = { force: 60, along: 160, across: 90, long: 5, wide: 50 }

  it('that adds nothing changes nothing', () => {
    const { sag, stressAlong } = sagOf(plate, foot)
    const weak = sagOf(plate, foot, { runs: 'across', at: 160, bend: 0 })
    expectShare(weak.sag, sag, 1e-12)
    expectShare(weak.stressAlong, stressAlong, 1e-12)
  })

  it('helps the more the stiffer it is, and holds its line where it cannot bend', () => {
    let last = Number.POSITIVE_INFINITY
    for (const bend of [0, 1e6, 1e7, 1e8, 1e9]) {
      const { sag } = sagOf(plate, foot, { runs: 'across', at: 160, bend })
      expect(sag).toBeLessThan(last)
      last = sag
    }
    const small: Foot = { ...foot, long: 0 }
    expect(sagOf(plate, small, { runs: 'across', at: 160, bend: 1e14 }).sag).toBeLessThan(
      1e-5 * sagOf(plate, small).sag,
    )
  })

  // Beam on two supports with a force spread over the middle u of its span: F (8 L³ − 4 L u² + u³) / 384 E I and
  // F (2 L − u) / 8 (any mechanics text); the lid so thin that the brace does all.
  it('alone is a beam', () => {
    const thin = lid(240, 180, 0.02)
    const [bend, u] = [5e7, 50]
    const { sag, braceMoment } = sagOf(thin, { ...foot, long: 0 }, { runs: 'across', at: 160, bend })
    expectShare(sag, (60 * (8 * 180 ** 3 - 4 * 180 * u * u + u ** 3)) / (384 * bend), 1e-3)
    expectShare(braceMoment, (60 * (2 * 180 - u)) / 8, 0.01)
  })

  it('runs along as it runs across, on a lid turned round', () => {
    const turned = lid(180, 240, 3)
    const one = sagOf(plate, foot, { runs: 'across', at: 150, bend: 1e7 })
    const two = sagOf(
      turned,
      { force: 60, along: 90, across: 160, long: 50, wide: 5 },
      { runs: 'along', at: 150, bend: 1e7 },
    )
    expectShare(two.sag, one.sag, 1e-9)
    expectShare(two.stressAcross, one.stressAlong, 1e-9)
    expectShare(two.braceMoment, one.braceMoment, 1e-9)
  })

  // The same plate by the same waves, solved row by row with elimination instead of the closed form.
  it('agrees with the equations solved outright', () => {
    const [terms, bend, at] = [60, 1e7, 150]
    const quarter = (240 * 180) / 4
    const d = D(3)
    let sag = 0
    for (let n = 1; n <= terms; n++) {
      const kn = (n * Math.PI) / 180
      const matrix = Array.from({ length: terms }, (_, row) =>
        Array.from({ length: terms + 1 }, (_, column) => {
          const [km, kc] = [((row + 1) * Math.PI) / 240, ((column + 1) * Math.PI) / 240]
          if (column === terms) {
            const spread = (k: number, size: number) => Math.sin((k * size) / 2) / ((k * size) / 2)
            return 60 * Math.sin(km * 160) * spread(km, 5) * Math.sin(kn * 90) * spread(kn, 50)
          }
          const brace = bend * kn ** 4 * 90 * Math.sin(km * at) * Math.sin(kc * at)
          return brace + (row === column ? quarter * d * (km * km + kn * kn) ** 2 : 0)
        }),
      )
      const waves = eliminated(matrix)
      waves.forEach((wave, index) => {
        sag += wave * Math.sin((((index + 1) * Math.PI) / 240) * 160) * Math.sin(kn * 90)
      })
    }
    expectShare(sagOf(plate, foot, { runs: 'across', at, bend }).sag, sag, 1e-9)
  })

  it('glued counts with the lid as one section', () => {
    const spruce = WOODS['spruce, sitka']
    const strip = { width: 8, height: 10, stuff: spruce }
    const alone = (spruce.stiffness * 8 * 10 ** 3) / 12
    const glued = addedBend(strip, { thickness: 3, stiffness: PANELS.plywood.stiffness })
    expect(glued).toBeGreaterThan(2 * alone)
    // It can never do more than an endless flange would: the strip about its own upper edge.
    expect(glued).toBeLessThan((spruce.stiffness * 8 * 13 ** 3) / 3)
  })

  it('that suffices is found', () => {
    const stuff = WOODS['spruce, sitka']
    const sag = ([width, height]: readonly [number, number]) =>
      sagOf(plate, foot, {
        runs: 'across',
        at: 160,
        bend: addedBend({ width, height, stuff }, { thickness: 3, stiffness: E }),
      }).sag
    expect(sagOf(plate, foot).sag).toBeGreaterThan(0.5)
    const chosen = firstThatPasses(USUAL_STRIPS, (strip) => sag(strip) <= 0.5)!
    expect(sag(chosen)).toBeLessThanOrEqual(0.5)
  })
})

/** Gaussian elimination of rows with their right side last; the matrices here need no swaps. */
function eliminated(rows: number[][]): number[] {
  const size = rows.length
  for (let pivot = 0; pivot < size; pivot++) {
    for (let row = pivot + 1; row < size; row++) {
      const times = rows[row]![pivot]! / rows[pivot]![pivot]!
      for (let column = pivot; column <= size; column++) rows[row]![column]! -= times * rows[pivot]![column]!
    }
  }
  const solved = new Array<number>(size).fill(0)
  for (let row = size - 1; row >= 0; row--) {
    let rest = rows[row]![size]!
    for (let column = row + 1; column < size; column++) rest -= rows[row]![column]! * solved[column]!
    solved[row] = rest / rows[row]![row]!
  }
  return solved
}
