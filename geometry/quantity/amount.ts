/** What a part of a sum is worth while it is being read: a length, or a number that may yet become one. */
import { Refusal } from './refusal.ts'
import type { LengthUnit } from './tokens.ts'
import { inchesToMm } from './units.ts'

/** `value` is millimetres once a unit has been met, and a plain number until then. */
export interface Amount {
  readonly value: number
  readonly isLength: boolean
}

/** Millimetres in so many of a unit: the foot is 12 in, the inch 25.4 mm (see `inchesToMm`). */
export function toMm(value: number, unit: LengthUnit): number {
  switch (unit) {
    case 'mm':
      return value
    case 'cm':
      return value * 10
    case 'm':
      return value * 1000
    case 'in':
      return inchesToMm(value)
    case 'ft':
      return inchesToMm(value * 12)
  }
}

/** A product, at most one side a length; throws a `Refusal` otherwise. */
export function multiplied(a: Amount, b: Amount): Amount {
  if (a.isLength && b.isLength) {
    throw new Refusal('a length times a length is an area', 'Take the unit off one of the two')
  }
  return { value: a.value * b.value, isLength: a.isLength || b.isLength }
}

/** A quotient by a plain number that is not nought; throws a `Refusal` otherwise. */
export function divided(a: Amount, b: Amount): Amount {
  if (b.isLength) {
    const remedy = a.isLength
      ? 'Take the unit off the second, or leave the division out'
      : 'Put the unit behind the whole: (9 1/2 / 2) in, or 1/2 in without spaces for a fraction'
    throw new Refusal('what is divided by a length is no length', remedy)
  }
  if (b.value === 0) throw new Refusal('that divides by zero', 'Divide by something else')
  return { value: a.value / b.value, isLength: a.isLength }
}
