import { describe, expect, it } from 'vitest'
import { MATERIALS, materialOf } from '../../../geometry/strings/materials.ts'
import { expectShare } from '../../support/near.ts'

const PER_PSI = 0.006894757293
const PER_POUND_PER_CUBIC_INCH = 27679.9047e-9

describe('string materials', () => {
  // Spring Materials (Round Wire) data sheet: ASTM A228 / B159 / A313 rows.
  it.each([
    ['music wire', 0.284, 30e6],
    ['phosphor bronze', 0.32, 15e6],
    ['stainless steel', 0.286, 28e6],
  ])('%s as on a wire data sheet', (name, density, stiffness) => {
    const material = materialOf(name)
    expectShare(material.density, density * PER_POUND_PER_CUBIC_INCH, 0.01)
    // The mill's own sheet for C51000 gives bronze 110 instead of 103 GPa.
    expectShare(material.stiffness, stiffness * PER_PSI, name === 'phosphor bronze' ? 0.07 : 0.01)
  })

  it('music wire in SI, from the same sheet', () => {
    expectShare(0.284 * PER_POUND_PER_CUBIC_INCH, 7861.09e-9, 1e-5)
    expectShare(30e6 * PER_PSI, 206_843, 1e-5)
    expectShare(MATERIALS['music wire'].density, 7861.09e-9, 2e-5)
    expectShare(MATERIALS['music wire'].stiffness, 206_843, 3e-4)
  })

  // A materials database, "ASTM A228 (SWP-A, K08500) Music Wire": averages; its 190 GPa is a generic steel.
  it('music wire against a database', () => {
    expectShare(MATERIALS['music wire'].density, 7800e-9, 0.01)
    expectShare(MATERIALS['music wire'].stiffness, 190_000, 0.09)
    expectShare(MATERIALS['music wire'].strength(0.5), 2450, 0.03)
  })

  // Alloy data sheet, C51000 (ASTM B103), physical properties.
  it('phosphor bronze', () => {
    expectShare(MATERIALS['phosphor bronze'].density, 8860e-9, 1e-9)
    expectShare(MATERIALS['phosphor bronze'].stiffness, 110_000, 1e-9)
  })

  // "What is the density of nickel?", web page; a materials handbook has 8913.
  it('nickel', () => expectShare(MATERIALS.nickel.density, 8908e-9, 0.003))

  // Engineers' table of plastics: nylon 6/6 and PVDF, specific gravity and bulk modulus; drawn line is stiffer.
  it('nylon and fluorocarbon', () => {
    expectShare(MATERIALS.nylon.density, 1140e-9, 0.02)
    expectShare(MATERIALS.fluorocarbon.density, 1770e-9, 0.02)
    expect(MATERIALS.nylon.stiffness).toBeGreaterThan(390_000 * PER_PSI)
    expect(MATERIALS.fluorocarbon.stiffness).toBeGreaterThan(320_000 * PER_PSI)
  })

  // OpenStax, College Physics (Urone, Hinrichs), Table 11.1 (densities) and Table 5.3; University Physics 1, Table 12.1.
  it('against textbooks', () => {
    expectShare(MATERIALS['music wire'].density, 7800e-9, 0.01)
    expectShare(MATERIALS['brass bronze'].density, 8440e-9, 0.03)
    expectShare(MATERIALS['silvered copper'].density, 8800e-9, 0.015)
    expectShare(MATERIALS['music wire'].stiffness, 200_000, 0.05)
    expectShare(MATERIALS['music wire'].stiffness, 210_000, 0.1)
    expectShare(MATERIALS['silvered copper'].stiffness, 110_000, 0.05)
    expectShare(MATERIALS.nylon.stiffness, 5_000, 0.1)
  })

  it('each say where they come from', () => {
    for (const material of Object.values(MATERIALS)) expect(material.source.length).toBeGreaterThan(15)
  })

  it('throws for a name that is not there', () => {
    expect(() => materialOf('cheese')).toThrow('no string material called "cheese"')
    expect(() => materialOf('toString')).toThrow('"toString"')
  })
})
