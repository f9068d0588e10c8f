/**
 * The few formulas of a passive circuit. Ohms, farads, hertz.
 *
 * T. R. Kuphaldt, "Lessons in Electric Circuits", vol. I, ch. 6 (divider) and vol. II, ch. 8 (filters).
 */
import { positive } from '../quantity/demand.ts'

/**
 * Frequency at which a resistance and a capacitance give way to each other: `f = 1 / (2 π R C)`; there 0.707 is left.
 * Example: `cornerHertz(250e3, 22e-9)` is 28.9.
 */
export const cornerHertz = (ohms: number, farads: number): number =>
  1 / (2 * Math.PI * positive(ohms, 'a resistance') * positive(farads, 'a capacitance'))

/** What a load leaves of a source with its own resistance: `R_L / (R_S + R_L)`. Example: 8 kΩ into 250 kΩ leaves 0.969. */
export const loadedShare = (source: number, load: number): number =>
  load / (positive(load, 'a load') + positive(source, 'a resistance'))

/** Resistances side by side: `1 / Σ 1/R`. */
export const inParallel = (...ohms: readonly number[]): number =>
  1 / ohms.reduce((sum, one) => sum + 1 / positive(one, 'a resistance'), 0)

/** A share as decibels: `20 log10`. */
export const decibels = (share: number): number => 20 * Math.log10(share)
