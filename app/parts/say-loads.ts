/** Pulls, cents, angles and small bends as the screen says them. */
import { formatFine, type Layout, roundedLength, unbroken } from '../../geometry/index.ts'

type Units = Layout['design']['units']

const POUNDS_FORCE = 4.4482216152605

/** A pull in newtons, and in pounds where the rule is in inches (1 lbf = 4.4482216152605 N, NIST SP 811). */
export const sayPull = (newtons: number, { display }: Units): string =>
  display === 'mm'
    ? `${newtons.toFixed(0)} N`
    : `${newtons.toFixed(0)} N, ${(newtons / POUNDS_FORCE).toFixed(1)} lb`

/** What no rule shows, `0.10 mm` or `0.004 in`: to the hundredth of a millimetre or the thousandth of an inch. */
export const sayFine = (mm: number, units: Units): string => unbroken(formatFine(mm, units, { unit: true }))

/** `+3.2`, `−1.0`, `0.0`; a dash where nothing sounds. */
export function sayCents(cents: number | null): string {
  if (cents === null) return '–'
  const text = Math.abs(cents).toFixed(1)
  return text === '0.0' ? text : `${cents > 0 ? '+' : '−'}${text}`
}

export const sayDegrees = (radians: number): string =>
  `${((radians * 180) / Math.PI).toFixed(1).replace('-', '−')}°`

/** A length as the builder's rule shows it, in millimetres: what a button that names it takes over. */
export const onTheRule = (mm: number, units: Units): number =>
  Math.round((mm + roundedLength(mm, units).errorMm) * 1e4) / 1e4
