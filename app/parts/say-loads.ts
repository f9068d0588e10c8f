/** Pulls, cents, angles and small bends as the screen says them. */
import { formatLength, type Layout, roundedLength } from '../../geometry/index.ts'

const POUNDS_FORCE = 4.4482216152605

/** A pull in newtons, and in pounds where the rule is in inches (1 lbf = 4.4482216152605 N, NIST SP 811). */
export const sayPull = (newtons: number, { display }: Layout['design']['units']): string =>
  display === 'mm'
    ? `${newtons.toFixed(0)} N`
    : `${newtons.toFixed(0)} N, ${(newtons / POUNDS_FORCE).toFixed(1)} lb`

/** What no rule shows: always in millimetres, to the hundredth. */
export const sayFine = (mm: number): string =>
  formatLength(mm, { display: 'mm', fraction: 0 }, { unit: true, decimals: 2 })

/** `+3.2`, `−1.0`, `0.0`; a dash where nothing sounds. */
export function sayCents(cents: number | null): string {
  if (cents === null) return '–'
  const text = Math.abs(cents).toFixed(1)
  return text === '0.0' ? text : `${cents > 0 ? '+' : '−'}${text}`
}

export const sayDegrees = (radians: number): string =>
  `${((radians * 180) / Math.PI).toFixed(1).replace('-', '−')}°`

/** A length as the builder's rule shows it, in millimetres: what a button that names it takes over. */
export const onTheRule = (mm: number, units: Layout['design']['units']): number =>
  Math.round((mm + roundedLength(mm, units).errorMm) * 1e4) / 1e4
