import { describe, expect, it } from 'vitest'
import { atMoisture } from '../../../geometry/neck/moisture.ts'
import {
  BARS,
  LONG_TERM,
  PANELS,
  standing,
  TRUE_STIFFNESS,
  WOODS,
  type WoodName,
} from '../../../geometry/neck/woods.ts'
import { expectShare, expectWithin } from '../../support/near.ts'

const PER_PSI = 0.006894757293

describe('woods', () => {
  // USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), Table 5-3a, rows at 12 % moisture content:
  // specific gravity, modulus of rupture in kPa, modulus of elasticity in MPa.
  it.each<[WoodName, number, number, number]>([
    ['ash, white', 0.6, 103_000, 12_000],
    ['basswood', 0.37, 60_000, 10_100],
    ['beech', 0.64, 103_000, 11_900],
    ['birch, yellow', 0.62, 114_000, 13_900],
    ['cherry', 0.5, 85_000, 10_300],
    ['hickory, shagbark', 0.72, 139_000, 14_900],
    ['hickory, mockernut', 0.72, 132_000, 15_300],
    ['maple, sugar', 0.63, 109_000, 12_600],
    ['maple, red', 0.54, 92_000, 11_300],
    ['oak, red', 0.63, 99_000, 12_500],
    ['oak, white', 0.68, 105_000, 12_300],
    ['sweetgum', 0.52, 86_000, 11_300],
    ['walnut', 0.55, 101_000, 11_600],
    ['poplar', 0.42, 70_000, 10_900],
    ['cedar, western red', 0.32, 51_700, 7_700],
    ['douglas fir', 0.48, 85_000, 13_400],
    ['pine, white', 0.35, 59_000, 8_500],
    ['pine, ponderosa', 0.4, 65_000, 8_900],
    ['pine, loblolly', 0.51, 88_000, 12_300],
    ['pine, longleaf', 0.59, 100_000, 13_700],
    ['redwood', 0.4, 69_000, 9_200],
    ['spruce, sitka', 0.4, 70_000, 10_800],
    ['spruce, engelmann', 0.35, 64_000, 8_900],
  ])('%s as in the handbook', (name, gravity, rupture, elasticity) => {
    const wood = WOODS[name]
    expectShare(wood.density, gravity * 1.12 * 1000e-9, 1e-12)
    expectShare(wood.strength, rupture / 1000, 0.005)
    expectShare(wood.stiffness, elasticity, 0.005)
    expect(wood.source).toContain('Table 5-3a')
  })

  // The same book, 2021 edition (FPL-GTR-282), Table 5-3a, in a second transcription.
  it.each<[WoodName, number]>([
    ['cherry', 10_300],
    ['maple, sugar', 12_600],
    ['oak, red', 12_500],
    ['oak, white', 12_300],
    ['poplar', 10_900],
    ['ash, white', 12_000],
  ])('%s as in the edition of 2021', (name, elasticity) => expect(WOODS[name].stiffness).toBe(elasticity))

  // The same book, 1974 edition in inches and pounds: modulus of rupture in psi, of elasticity in 10^6 psi, and its
  // conversion worked out; the metric rows are rounded to 100 MPa.
  it.each<[WoodName, number, number, number]>([
    ['birch, yellow', 16_600, 2.01, 13_858.5],
    ['cedar, western red', 7_500, 1.11, 7_653.2],
    ['douglas fir', 12_400, 1.95, 13_444.8],
    ['pine, white', 8_600, 1.24, 8_549.5],
    ['spruce, sitka', 10_200, 1.57, 10_824.8],
    ['pine, loblolly', 12_800, 1.79, 12_341.6],
    ['pine, longleaf', 14_500, 1.98, 13_651.6],
  ])('%s as in the edition in pounds', (name, rupture, elasticity, converted) => {
    expectShare(elasticity * 1e6 * PER_PSI, converted, 1e-4)
    expectShare(WOODS[name].stiffness, converted, 0.008)
    expectShare(WOODS[name].strength, rupture * PER_PSI, 0.01)
  })

  // Wood Handbook, FPL-GTR-113 (1999), Table 4-5b, and FPL-GTR-190, Table 5-5b: psi; gravity on the green volume.
  it.each<[WoodName, number, number, number]>([
    ['mahogany', 0.45, 11_500, 1.5e6],
    ['mahogany, african', 0.42, 10_700, 1.4e6],
    ['cedar, spanish', 0.41, 11_500, 1.44e6],
  ])('%s as in the table of imported woods', (name, green, rupture, elasticity) => {
    const wood = WOODS[name]
    expectShare(wood.strength, rupture * PER_PSI, 0.005)
    expectShare(wood.stiffness, elasticity * PER_PSI, 0.005)
    // Dried to 12 % it has shrunk: denser than the green gravity says, by less than a tenth.
    expect(wood.density).toBeGreaterThan(green * 1120e-9)
    expect(wood.density).toBeLessThan(green * 1120e-9 * 1.1)
  })

  // A wood shrinks in volume by about 26.5 % times its green gravity until it is dry, from 30 % moisture on, and by 18 of 30
  // parts of that down to 12 % (Wood Handbook, ch. 4; from memory): green gravity 0.45 shrinks by 7.155 % and weighs
  // 0.45 / 0.92845 × 1120 = 542.84 kg/m³; 0.42 by 6.678 %; 0.41 by 6.519 %.
  it.each<[WoodName, number]>([
    ['mahogany', 542.84e-9],
    ['mahogany, african', 504.06e-9],
    ['cedar, spanish', 491.23e-9],
  ])('%s weighs what its green gravity comes to when it has shrunk', (name, density) =>
    expectShare(WOODS[name].density, density, 1e-4),
  )

  // Densities of the common run, kg/m³ (common practice, from memory): plywood 500 to 700, hardboard 900 to 1100, steel 7850,
  // aluminium 2700, carbon rod 1500 to 1600; mild steel yields from 235 to 250 N/mm².
  it.each([
    ['plywood', PANELS.plywood.density, 500, 700],
    ['hardboard', PANELS.hardboard.density, 900, 1100],
    ['steel', BARS.steel.density, 7800, 7900],
    ['aluminium', BARS.aluminium.density, 2650, 2750],
    ['carbon', BARS.carbon.density, 1500, 1600],
  ])('%s weighs what its like do', (_, density, least, most) => {
    expect(density * 1e9).toBeGreaterThanOrEqual(least)
    expect(density * 1e9).toBeLessThanOrEqual(most)
  })

  it('steel yields where mild steel does', () => {
    expect(BARS.steel.strength).toBeGreaterThanOrEqual(235)
    expect(BARS.steel.strength).toBeLessThanOrEqual(250)
  })

  // Wood Handbook, FPL-GTR-190, ch. 5: density is 1000 SG (1 + MC/100); black cherry, 0.50, has 560 kg/m³.
  it('weigh what their gravity at 12 % says', () => expectShare(WOODS.cherry.density, 560e-9, 1e-6))

  // Wood Handbook, FPL-GTR-190, ch. 12 (Cai and Ross), Table 12-1: clear wood beside panels, GPa and MPa.
  it.each<[WoodName, number, number | null]>([
    ['oak, white', 12.27, 104.8],
    ['maple, red', 11.31, 92.39],
    ['douglas fir', 13.44, null],
    ['pine, longleaf', 13.65, null],
  ])('%s as in chapter 12', (name, elasticity, rupture) => {
    expectShare(WOODS[name].stiffness, elasticity * 1000, 0.005)
    if (rupture !== null) expectShare(WOODS[name].strength, rupture, 0.005)
  })

  // The same table: ranges in GPa, strength in MPa; MDF also in a materials database: 4.0 GPa, 750 kg/m³.
  it('panels keep to the lower end of their range', () => {
    expectShare(PANELS.plywood.stiffness, 6960, 0.003)
    expectShare(PANELS.plywood.strength, 33.72, 0.003)
    expectShare(PANELS.hardboard.stiffness, 3100, 0.003)
    const board = PANELS['fibreboard, medium density']
    expectShare(board.stiffness, 3590, 0.003)
    expectShare(board.strength, 35.85, 0.003)
    expectShare(board.stiffness, 4000, 0.11)
    expectShare(board.density, 750e-9, 0.02)
  })

  // OpenStax, University Physics 1, Table 12.1: steel 200, aluminium 70 GPa; hardwood 15, a round figure.
  it('and metals against a textbook', () => {
    expectShare(BARS.steel.stiffness, 200_000, 0.05)
    expectShare(BARS.aluminium.stiffness, 70_000, 0.05)
    for (const name of ['maple, sugar', 'oak, white', 'beech', 'hickory, shagbark'] as const) {
      expectShare(WOODS[name].stiffness * TRUE_STIFFNESS, 15_000, 0.15)
    }
  })

  // Wood Handbook (1974), note to the table of strengths: the true modulus is 1.10 times the tabulated one; by beam
  // theory, Eqs 9-2 to 9-4 of FPL-GTR-282, 1 + 1.2 (E/G)(h/L)² with E/G = 16 at a span of 14 depths.
  it('are a tenth stiffer than tests with shear in them say', () => {
    expectWithin(TRUE_STIFFNESS, 1.1, 0.01)
    expectWithin(1 + 1.2 * 16 * (1 / 14) ** 2, 1.09796, 1e-4)
    expectWithin(TRUE_STIFFNESS, 1.09796, 0.005)
  })

  it('bear less when the load stays', () => {
    expect(standing(WOODS.poplar)).toEqual({ stiffness: 10_900, strength: 70 * LONG_TERM })
    // Timber design allows 0.9 for a permanent load and 1.6 for ten minutes (NDS, table 2.3.2; from memory).
    expectWithin(LONG_TERM, 0.9 / 1.6, 0.005)
  })

  it('each say where they come from', () => {
    for (const wood of [...Object.values(WOODS), ...Object.values(PANELS), ...Object.values(BARS)]) {
      expect(wood.source.length).toBeGreaterThan(10)
    }
  })
})

describe('moisture', () => {
  // Wood Handbook, FPL-GTR-282, Eq. 5-3, the worked example on p. 5-34: white ash, 103 000 and 66 000 kPa, at 8 %.
  it('makes white ash stronger as it dries', () => {
    expectWithin(1000 * atMoisture(103, 66, 0.08, 0.24), 119_500, 100)
  })

  it('changes nothing at 12 %, and nothing more above the intersection', () => {
    expect(atMoisture(103, 66, 0.12)).toBe(103)
    expect(atMoisture(103, 66, 0.3)).toBe(66)
    expectShare(atMoisture(103, 66, 0.2499999), 66, 1e-5)
    expect(() => atMoisture(103, 66, 12)).toThrow('moisture must be a share from 0 to 1, not 12')
    expect(() => atMoisture(103, 66, 1)).toThrow('not 1')
    expect(() => atMoisture(103, 66, -0.01)).toThrow('not -0.01')
    // Bone dry: 103 (103 / 66)^(0.12 / 0.13).
    expectShare(atMoisture(103, 66, 0), 103 * (103 / 66) ** (12 / 13), 1e-12)
    expect(atMoisture(103, 66, 0.25)).toBe(66)
    expect(atMoisture(103, 66, 0.999)).toBe(66)
  })
})
