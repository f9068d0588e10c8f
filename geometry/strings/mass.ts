/**
 * Unit mass of a string, kilograms per millimetre, from what it is made of. Lengths mm, densities kg/mm³.
 *
 * Wound: one layer of round wire on a core, turns touching. Each turn is `π (c + w)` long and takes `w` of the string,
 * so `µ = ρc A + ρw π² w (c + w) / 4` (geometry of the helix; exact for turns that touch, since a steeper helix also
 * advances more). Flattened and polished windings and several layers fill more; for those state or weigh the mass.
 */
import { positive } from '../quantity/demand.ts'

export type CoreShape = 'round' | 'hexagonal'

/** Area of a core in mm²; a hexagonal one is measured across its flats, `(√3 / 2) a²`. */
export function coreArea(core: number, shape: CoreShape = 'round'): number {
  const square = positive(core, 'the diameter of a core') ** 2
  return shape === 'round' ? (Math.PI / 4) * square : (Math.sqrt(3) / 2) * square
}

/** Second moment of a core's area in mm⁴: `π d⁴ / 64`, hexagonal `5 √3 / 144 a⁴` (any mechanics text). */
export function coreInertia(core: number, shape: CoreShape = 'round'): number {
  const fourth = positive(core, 'the diameter of a core') ** 4
  return shape === 'round' ? (Math.PI / 64) * fourth : ((5 * Math.sqrt(3)) / 144) * fourth
}

/** Diameter that the winding lies on: the core's own, or across the corners of a hexagonal one. */
export function seat(core: number, shape: CoreShape = 'round'): number {
  return shape === 'round' ? core : (2 / Math.sqrt(3)) * core
}

/** Plain string, `ρ π d² / 4`. Example: steel of 0.254 mm, `plainMass(0.254, 7861e-9)`, is 0.3983e-6 kg/mm. */
export function plainMass(diameter: number, density: number): number {
  return coreArea(diameter) * positive(density, 'a density')
}

export interface Winding {
  /** Outside diameter of the whole string. */
  readonly diameter: number
  readonly core: number
  readonly coreDensity: number
  readonly wrapDensity: number
  readonly coreShape?: CoreShape
}

export interface WoundMass {
  /** Diameter of the wire that is wound on. */
  readonly wrap: number
  readonly unitMass: number
  /** The core's part of it. */
  readonly coreMass: number
}

/**
 * Wound string; `null` where the core fills the whole diameter and leaves no room for a winding.
 * Example: steel core 0.38 mm with nickel wire 0.25 mm, outside 0.88 mm, is 4.353e-6 kg/mm.
 */
export function woundMass(winding: Winding): WoundMass | null {
  const { diameter, core, coreShape = 'round' } = winding
  const on = seat(core, coreShape)
  const wrap = (positive(diameter, 'the diameter of a string') - on) / 2
  if (!(wrap > 0)) return null
  const coreMass = coreArea(core, coreShape) * positive(winding.coreDensity, 'a density')
  const wrapMass = positive(winding.wrapDensity, 'a density') * (Math.PI ** 2 / 4) * wrap * (on + wrap)
  return { wrap, coreMass, unitMass: coreMass + wrapMass }
}

/** From a weighed length without ends and ball: kilograms over millimetres. Example: 2.6 g on 1 m is 2.6e-6 kg/mm. */
export function weighedMass(mass: number, length: number): number {
  return positive(mass, 'a mass') / positive(length, 'a length')
}

/**
 * Core of a wound string as a share of its diameter, where nobody has measured it: `0.135 + 0.25 mm / d` for metal
 * cores, never more than 0.7: cores vary little, windings much. Fitted to what is
 * usual from .022 to .105 in; common practice, from memory. A change of 0.1 moves the mass by a few parts in a hundred,
 * but stretch and strength with the square: measure the bared end where it matters.
 */
export function usualCoreShare(diameter: number): number {
  return Math.min(0.7, 0.135 + 0.25 / positive(diameter, 'the diameter of a string'))
}

/** The same for a core of nylon floss, which is thick and thinly wound. Common practice, from memory. */
export const USUAL_FLOSS_SHARE = 0.72
