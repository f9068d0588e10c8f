/**
 * The one place where a number becomes text.
 *
 * Files for saws and printers are read by programs that forgive nothing: `1e-7`, `-0`, `NaN` and
 * seventeen digits of 0.1 + 0.2 have each spoilt somebody's cut. Everything written by an exporter
 * therefore passes through here and is either a plain decimal number or an error with the value in it.
 */

/**
 * Decimal places of a length in millimetres. 1e-6 mm is one nanometre: a thousand times finer than the
 * micrometre that templates promise, so that sums over a long neck stay inside it, and still short
 * enough for readers that keep a number in 32 characters.
 */
export const MILLIMETRE_DIGITS = 6

/** Decimal places of a length in inches: 1e-8 in = 0.25 nm, the nearest step at least as fine as in mm. */
export const INCH_DIGITS = 8

/**
 * Decimal places of a bulge (the tangent of a quarter of an arc's sweep). The rise of an arc is bulge
 * times half its chord, so an error of 1e-12 over the largest chord allowed, 1e6 mm, moves it by
 * 0.5e-6 mm: no coarser than its end points.
 */
export const BULGE_DIGITS = 12

/** Decimal places of an angle in degrees: 1e-6 degree over a 1 m line of text is 17 nm. */
export const DEGREE_DIGITS = 6

/** Nothing that leaves this tool is a kilometre away; a number this large is a mistake made earlier. */
export const LARGEST = 1e6

/**
 * Whether a number may be written at all: finite and below a million. Cheap, for whoever looks at many.
 *
 * @example isWritable(Number.NaN) // false
 */
export function isWritable(value: number): boolean {
  return Number.isFinite(value) && Math.abs(value) < LARGEST
}

/** Throws the RangeError for a number that may not be written, with what it is and its value. */
export function refuse(value: number, what: string): never {
  const needed = Number.isFinite(value) ? 'holds nothing of a million or more' : 'needs a finite number'
  throw new RangeError(`${what} is ${value}: a template ${needed}.`)
}

/**
 * Up to this many last digits, and this close to the middle between two of them, a product rounded by the
 * machine and the exact value fall on the same side: below 1e13 the product is off by 0.001 at most.
 */
const MOST_LAST_DIGITS = 1e13
const SURELY_NEARER = 0.49

/** Last digits in one, by decimal places. */
const SCALES = Array.from({ length: 16 }, (_, digits) => 10 ** digits)

/**
 * A number as plain decimal text: finite, below a million, never in exponent form, never `-0`, without
 * trailing zeros.
 *
 * @param value the number, in any unit
 * @param what what it is, for the error: `"radius of a circle on DRILL-THROUGH"`
 * @param digits decimal places kept, 0 to 15
 * @throws RangeError naming `what` and the value when it is not finite or not below a million
 * @example numberText(0.1 + 0.2, 'width') // '0.3'
 */
export function numberText(value: number, what: string, digits: number = MILLIMETRE_DIGITS): string {
  const rounded = roundedShortly(value, what, digits)
  if (rounded === 0) return '0'
  return Number.isNaN(rounded) ? exactText(value, digits) : String(rounded)
}

/** The number whose shortest decimal is the one wanted, or NaN where only the long way finds it. */
function roundedShortly(value: number, what: string, digits: number): number {
  if (!isWritable(value)) refuse(value, what)
  // The short way: a whole number of last digits, divided again, has at most 13 digits, and the shortest
  // decimal that means it is the one wanted (ECMA-262, Number::toString). Exponents begin below 1e-6.
  const scale = SCALES[digits] ?? Number.NaN
  const scaled = value * scale
  const whole = Math.round(scaled)
  if (Math.abs(scaled) < MOST_LAST_DIGITS && Math.abs(scaled - whole) < SURELY_NEARER) {
    const rounded = whole / scale
    if (rounded === 0 || Math.abs(rounded) >= 1e-6) return rounded
  }
  return Number.NaN
}

/** The long way: toFixed rounds the exact value once and knows no exponent form below 1e21 (ECMA-262). */
function exactText(value: number, digits: number): string {
  const fixed = value.toFixed(digits)
  const text = fixed.includes('.') ? fixed.replace(/0+$/, '').replace(/\.$/, '') : fixed
  return text === '-0' ? '0' : text
}

/**
 * A length for people and layer names: at least one decimal, at most `digits`.
 *
 * @example lengthLabel(3, 'depth') // '3.0'
 * @example lengthLabel(0.58, 'width of a slot') // '0.58'
 */
export function lengthLabel(value: number, what: string, digits = 3): string {
  const rounded = roundedShortly(value, what, digits)
  if (rounded === 0) return '0.0'
  if (Number.isInteger(rounded)) return `${rounded}.0`
  if (!Number.isNaN(rounded)) return String(rounded)
  const text = exactText(value, digits)
  return text.includes('.') ? text : `${text}.0`
}

/**
 * A length in both units, for sheets that leave the house of whoever chose one.
 *
 * @param length mm
 * @example bothUnits(25.4, 'A length') // '25.4 mm (1 in)'
 */
export function bothUnits(length: number, what: string): string {
  return `${lengthLabel(length, what, 2)} mm (${numberText(length / 25.4, what, 3)} in)`
}
