/** Lengths, angles and shares as the user reads them. What is shown is rounded; what is kept never is. */
import { inchesToMm, mmToInches, type Units, unitName } from './units.ts'

export interface FormatOptions {
  /** Put the unit behind the number: `58.0 mm`, `11 1/16 in`. Off by default. */
  readonly unit?: boolean
  /** Places behind the point, 0 to 9; 1 for millimetres and 3 for decimal inches by default. */
  readonly decimals?: number
}

/** A length as shown, and how far that is from the length itself. */
export interface RoundedLength {
  readonly text: string
  /** The length that `text` states, in millimetres. */
  readonly shownMm: number
  /** Shown minus true, in millimetres: positive where the text says too much. */
  readonly errorMm: number
}

/** A rounding tie is as wide as this share of a step, so that 0.35 rounds as written, not as stored. */
const TIE = 1e-9
/** A thousand kilometres in millimetres: beyond it the number is a fault upstream, not a length. */
const FARTHEST = 1e9

/**
 * A length for reading: `58.0`, `11 1/16`, `7/16`, `0`, `−3/8`, `11.063`. Rounded half away from zero;
 * a negative number carries the true minus sign (U+2212); fractions are reduced.
 * `readLength` reads the text back as the shown length.
 *
 * @throws RangeError for what is not finite, or for decimals outside 0 to 9
 * @example formatLength(281, { display: 'inches', fraction: 16 }, { unit: true }) // '11 1/16 in'
 */
export function formatLength(mm: number, units: Units, options: FormatOptions = {}): string {
  return roundedLength(mm, units, options).text
}

/**
 * A length for reading, with the rounding error beside it: a builder with a 1/32 rule must see that a fret is
 * 0.3 mm off. The shown value is for the eye and goes into no other computation.
 *
 * @throws RangeError for what is not finite, or for decimals outside 0 to 9
 * @example roundedLength(281, { display: 'inches', fraction: 16 })
 * // { text: '11 1/16', shownMm: 280.9875, errorMm: -0.0125 } (to within a last binary digit)
 */
export function roundedLength(mm: number, units: Units, options: FormatOptions = {}): RoundedLength {
  if (!(Math.abs(mm) <= FARTHEST))
    throw new RangeError(`A length to show must be finite and below 1e9 mm, not ${mm}`)
  const { figures, shownMm } = shown(Math.abs(mm), units, options.decimals)
  const signedMm = mm < 0 && shownMm !== 0 ? -shownMm : shownMm
  const text = signed(figures, signedMm < 0) + (options.unit ? ` ${unitName(units)}` : '')
  return { text, shownMm: signedMm, errorMm: signedMm - mm }
}

/**
 * A length too fine for a rule, to the hundredth of a millimetre or the thousandth of an inch: gauges, bows, places of frets.
 *
 * @throws RangeError for what is not finite
 * @example formatFine(0.2286, { display: 'inches', fraction: 32 }, { unit: true }) // '0.009 in'
 */
export const formatFine = (
  mm: number,
  { display }: Pick<Units, 'display'>,
  { unit = false }: Pick<FormatOptions, 'unit'> = {},
): string => formatLength(mm, { display, fraction: 0 }, { unit, decimals: display === 'mm' ? 2 : 3 })

/**
 * An angle in radians as degrees: `14.0°`, `−2.5°`. One decimal unless told otherwise.
 * 180° is π radians (NIST SP 811, table 6).
 *
 * @throws RangeError for what is not finite, or for decimals outside 0 to 9
 * @example formatAngle(Math.PI / 12) // '15.0°'
 */
export function formatAngle(radians: number, options: { readonly decimals?: number } = {}): string {
  return `${decimal((radians * 180) / Math.PI, options.decimals ?? 1)}°`
}

/**
 * A share of one as a percentage: `63%`, `2.5%`. Whole percents unless told otherwise.
 *
 * @throws RangeError for what is not finite, or for decimals outside 0 to 9
 * @example formatShare(0.625, { decimals: 1 }) // '62.5%'
 */
export function formatShare(share: number, options: { readonly decimals?: number } = {}): string {
  return `${decimal(share * 100, options.decimals ?? 0)}%`
}

function shown(mm: number, units: Units, decimals: number | undefined): { figures: string; shownMm: number } {
  if (units.display === 'mm') {
    const figures = unsignedDecimal(mm, decimals ?? 1)
    return { figures, shownMm: Number(figures) }
  }
  if (units.fraction === 0) {
    const figures = unsignedDecimal(mmToInches(mm), decimals ?? 3)
    return { figures, shownMm: inchesToMm(Number(figures)) }
  }
  const steps = nearestStep(mmToInches(mm * units.fraction))
  return { figures: mixed(steps, units.fraction), shownMm: inchesToMm(steps / units.fraction) }
}

/** Nearest whole step to a number not below zero, ties upwards. */
function nearestStep(value: number): number {
  return Math.floor(value + 0.5 + TIE)
}

function mixed(steps: number, denominator: number): string {
  const whole = Math.floor(steps / denominator)
  let above = steps % denominator
  let below = denominator
  if (above === 0) return `${whole}`
  while (above % 2 === 0) {
    above /= 2
    below /= 2
  }
  return whole === 0 ? `${above}/${below}` : `${whole} ${above}/${below}`
}

function decimal(value: number, decimals: number): string {
  const figures = unsignedDecimal(Math.abs(value), decimals)
  return signed(figures, value < 0 && Number(figures) !== 0)
}

function unsignedDecimal(value: number, decimals: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`A number to show must be finite, not ${value}`)
  if (!Number.isInteger(decimals) || decimals < 0 || decimals > 9) {
    throw new RangeError(`Decimals must be a whole number from 0 to 9, not ${decimals}`)
  }
  const scale = 10 ** decimals
  return (nearestStep(value * scale) / scale).toFixed(decimals)
}

function signed(figures: string, negative: boolean): string {
  return negative ? `−${figures}` : figures
}
