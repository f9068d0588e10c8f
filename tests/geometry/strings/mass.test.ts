import { describe, expect, it } from 'vitest'
import {
  coreArea,
  coreInertia,
  plainMass,
  seat,
  usualCoreShare,
  weighedMass,
  woundMass,
} from '../../../geometry/strings/mass.ts'
import { expectShare, expectWithin } from '../../support/near.ts'

describe('unit mass', () => {
  // OpenStax, University Physics, Volume 1, sec. 16.3: 0.06 kg on 2.00 m.
  it('of a weighed length', () => expectShare(weighedMass(0.06, 2000), 0.03e-3, 1e-9))

  // Geometry of one close-wound helical layer of round wire; densities of a wire data sheet and of nickel.
  const winding = { diameter: 0.88, core: 0.38, coreDensity: 7861e-9, wrapDensity: 8908e-9 }

  it('of a wound string', () => {
    const { wrap, coreMass, unitMass } = woundMass(winding)!
    expectWithin(wrap, 0.25, 1e-12)
    expectShare(coreMass, 0.000891528e-3, 2e-5)
    expectShare(unitMass - coreMass, 0.00346179e-3, 2e-5)
    expectShare(unitMass, 0.00435332e-3, 2e-5)
  })

  // The same with every turn advancing by its own thickness along the string, however steep: 0.63 % more at most.
  it('stays within two thirds of a percent of turns counted with their slope', () => {
    expectShare(woundMass(winding)!.unitMass, 0.00438082e-3, 0.0066)
  })

  // Geometry: a touching layer of round wire fills π/4 of its ring, whatever the diameters.
  it.each([
    [0.5, 0.3],
    [1.2, 0.4],
    [0.9, 0.8],
  ])('fills pi/4 of the ring of a %d mm string on a %d mm core', (diameter, core) => {
    const { unitMass, coreMass } = woundMass({ diameter, core, coreDensity: 1, wrapDensity: 1 })!
    const ring = (Math.PI / 4) * (diameter ** 2 - core ** 2)
    expectWithin((unitMass - coreMass) / ring, 0.785398163, 1e-8)
  })

  // Geometry of a regular hexagon, measured across its flats.
  it('of a hexagonal core', () => {
    expectShare(coreArea(0.4, 'hexagonal'), 0.1385641, 2e-6)
    expectShare(coreArea(0.4, 'hexagonal') / coreArea(0.4), 1.102658, 2e-6)
    expectShare(seat(0.4, 'hexagonal'), 0.46188, 1e-5)
  })

  // Second moment of a hexagon by its six triangles, side s = a/√3: (5 √3 / 16) s⁴; any mechanics text.
  it('of bending: round and hexagonal', () => {
    expectShare(coreInertia(0.432), 0.00170964, 2e-5)
    expectShare(coreInertia(0.4, 'hexagonal'), ((5 * Math.sqrt(3)) / 16) * (0.4 / Math.sqrt(3)) ** 4, 1e-12)
  })

  it('is none where the core fills the string', () => {
    expect(woundMass({ ...winding, core: 0.88 })).toBeNull()
    expect(woundMass({ ...winding, core: 1.2 })).toBeNull()
    expect(woundMass({ ...winding, core: 0.8, coreShape: 'hexagonal' })).toBeNull()
  })

  it('throws for sizes that are none', () => {
    expect(() => plainMass(0, 7861e-9)).toThrow('must be above 0, not 0')
    expect(() => woundMass({ ...winding, core: -1 })).toThrow('not -1')
    expect(() => weighedMass(0.001, 0)).toThrow('a length must be above 0, not 0')
  })

  // Common practice, no source: cores of .012 to .014 in under .024 to .030 in, of about .018 under .056.
  it('takes a usual core where none is known', () => {
    for (const [mils, least, most] of [
      [24, 12, 14],
      [30, 12, 15],
      [42, 14, 18],
      [56, 16, 19],
      [105, 20, 25],
    ] as const) {
      const core = mils * usualCoreShare((mils / 1000) * 25.4)
      expect(core).toBeGreaterThan(least)
      expect(core).toBeLessThan(most)
    }
    expect(usualCoreShare(0.3)).toBe(0.7)
  })
})
