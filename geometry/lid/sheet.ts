/**
 * Bending stiffness of sheet: `E h³ / 12 (1 − ν²)` for stuff alike both ways, four numbers for solid wood. N·mm.
 * Source: S. Timoshenko and S. Woinowsky-Krieger, "Theory of Plates and Shells", 2nd ed., arts. 21 and 85.
 */
import { positive } from '../quantity/demand.ts'

export interface SheetStuff {
  /** Young's modulus along the strings and across them, N/mm². */
  readonly stiffnessAlong: number
  readonly stiffnessAcross: number
  /** Shear modulus in the plane of the sheet. */
  readonly shear: number
  /** Poisson's ratio, how much a pull along the strings narrows it. */
  readonly poisson: number
}

/** A usual value for sheet stuff and wood alike, from memory; it moves a sag by a few parts in a hundred. */
const POISSON = 0.3

/** Plywood, pressed board, metal: alike both ways. `G = E / 2 (1 + ν)`. */
export function evenSheet(stiffness: number, poisson = POISSON): SheetStuff {
  positive(stiffness, 'a stiffness')
  return {
    stiffnessAlong: stiffness,
    stiffnessAcross: stiffness,
    shear: stiffness / (2 * (1 + poisson)),
    poisson,
  }
}

const CROSS = (0.043 + 0.092) / 2
const SHEAR = (0.069 + 0.075) / 2

/**
 * A board of solid wood: across the grain 0.043 (flat-sawn) to 0.092 (quarter-sawn) and in shear 0.069 to 0.075 of the
 * stiffness along it, here the middle of each. Source: Wood Handbook, Table 5-1, yellow-poplar; other woods differ by
 * half as much again.
 * `grain` is the way it runs; Poisson's ratio is that of a pull along the grain.
 */
export function solidWood(stiffness: number, grain: 'along' | 'across'): SheetStuff {
  positive(stiffness, 'a stiffness')
  const cross = CROSS * stiffness
  const shear = SHEAR * stiffness
  return grain === 'along'
    ? { stiffnessAlong: stiffness, stiffnessAcross: cross, shear, poisson: POISSON }
    : { stiffnessAlong: cross, stiffnessAcross: stiffness, shear, poisson: POISSON * CROSS }
}

export interface LidStiffness {
  readonly along: number
  readonly across: number
  /** What a bend one way shares with the other: `ν D`. */
  readonly coupling: number
  /** `coupling` and twice the twisting stiffness: `H` of the plate equation. */
  readonly mixed: number
}

/** The four stiffnesses of a sheet of this thickness. Example: 4 mm of `evenSheet(10000)` has 58 608 N·mm both ways. */
export function stiffnessOf(stuff: SheetStuff, thickness: number): LidStiffness {
  const cube = positive(thickness, 'a thickness') ** 3 / 12
  const ratio = stuff.stiffnessAcross / stuff.stiffnessAlong
  const solid = 1 - stuff.poisson * stuff.poisson * ratio
  if (!(solid > 0))
    throw new RangeError(`no sheet has a Poisson's ratio of ${stuff.poisson} with these stiffnesses`)
  const along = (stuff.stiffnessAlong * cube) / solid
  const across = (stuff.stiffnessAcross * cube) / solid
  const coupling = stuff.poisson * across
  return { along, across, coupling, mixed: coupling + 2 * positive(stuff.shear, 'a shear modulus') * cube }
}
