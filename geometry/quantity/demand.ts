/**
 * What a caller owes a formula: numbers that mean something. Breaking this is a fault of the program and throws
 * with the value in the message; what a user can get wrong is caught before and comes back as a value.
 */

/** A finite number above 0. Example: `positive(0, 'a diameter')` throws `a diameter must be above 0, not 0`. */
export function positive(value: number, what: string): number {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY))
    throw new RangeError(`${what} must be above 0, not ${value}`)
  return value
}

/** A finite number, 0 or more. */
export function notNegative(value: number, what: string): number {
  if (!(value >= 0 && value < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${what} must be 0 or more, not ${value}`)
  }
  return value
}

/** Any finite number. */
export function finite(value: number, what: string): number {
  if (!Number.isFinite(value)) throw new RangeError(`${what} must be a finite number, not ${value}`)
  return value
}
