/**
 * The user's unit, and the one place an inch meets a millimetre. Everything inside is millimetres; this is
 * for the door where numbers come in and go out.
 */

/** The unit a user thinks in, and how finely their rule divides it. */
export interface Units {
  readonly display: 'mm' | 'inches'
  /** Denominator of the smallest fraction of an inch shown; 0 for decimal inches. Unused in millimetres. */
  readonly fraction: 0 | 8 | 16 | 32 | 64
}

/**
 * Millimetres in so many inches: exactly 25.4 each (16 CFR 500.19; NIST SP 811, appendix B).
 * Multiplied by 254 and divided by 10, because 25.4 itself has no exact binary form: any fraction of an inch
 * down a power of two then comes out as near to the true value as a number can be.
 *
 * @example inchesToMm(11.0625) // 280.9875
 */
export function inchesToMm(inches: number): number {
  return (inches * 254) / 10
}

/**
 * Inches in so many millimetres, the inverse of `inchesToMm`; same source.
 *
 * @example mmToInches(280.9875) // 11.0625
 */
export function mmToInches(mm: number): number {
  return (mm * 10) / 254
}

/**
 * The sign that stands behind a number in the user's unit (`mm`, `in`: NIST SP 811, section 5 and appendix B).
 *
 * @example unitName({ display: 'inches', fraction: 16 }) // 'in'
 */
export function unitName(units: Units): 'mm' | 'in' {
  return units.display === 'mm' ? 'mm' : 'in'
}

/**
 * One step of the user's rule in millimetres: what an arrow key nudges by. 1 mm on a metric rule, the chosen
 * fraction of an inch, or 1/100 in where inches are decimal. Common practice of graduated rules, no source.
 *
 * @example stepOf({ display: 'inches', fraction: 16 }) // 1.5875
 */
export function stepOf(units: Units): number {
  if (units.display === 'mm') return 1
  return inchesToMm(units.fraction === 0 ? 1 / 100 : 1 / units.fraction)
}
