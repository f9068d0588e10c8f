/** Proposed sizes in whole steps of the builder's own rule. */
import { inchesToMm, type Units } from '../quantity/units.ts'

export interface Rounding {
  up(mm: number): number
  down(mm: number): number
  near(mm: number): number
}

/** Half a millimetre, or a sixteenth of an inch where the builder thinks in inches; in millimetres. */
export const roundingStep = (units: Units): number => (units.display === 'mm' ? 0.5 : inchesToMm(1 / 16))

/**
 * Rounds millimetres to half millimetres, or to sixteenths where the builder thinks in inches; still in millimetres.
 * Example: `roundingFor({ display: 'inches', fraction: 32 }).up(38)` is 38.1, an inch and a half.
 */
export function roundingFor(units: Units): Rounding {
  const perStep = roundingStep(units)
  const to = (round: (steps: number) => number) => (mm: number) => tidy(round(mm / perStep) * perStep)
  // A size that is a whole number of steps but for its last digit is left as it is.
  return {
    up: to((steps) => Math.ceil(steps - 1e-6)),
    down: to((steps) => Math.floor(steps + 1e-6)),
    near: to(Math.round),
  }
}

/** A sixteenth of an inch has four decimals in millimetres; what lies behind them is the computer's. */
const tidy = (mm: number) => Math.round(mm * 1e4) / 1e4
