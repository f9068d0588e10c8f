/**
 * The stretched string: pull, pitch and length.
 *
 * Millimetres, newtons, hertz; unit mass in kilograms per millimetre (1e-6 of it is one gram per metre).
 * Source: M. Mersenne, "Harmonicorum Libri" (1636), in the form of any university physics text:
 * `f = (1 / 2L) √(T / µ)`, so `T = µ (2 L f)²`.
 */
import { positive } from '../quantity/demand.ts'

/** kg·mm/s² in one newton. */
const PER_NEWTON = 1000

/**
 * Pull, in newtons, that brings a string of this unit mass to pitch over this length.
 * Example: plain steel of 0.254 mm, 0.398323e-6 kg/mm, at E4 (329.6276 Hz) over 635 mm pulls 69.81 N.
 */
export function tensionOf(unitMass: number, length: number, pitch: number): number {
  const speed = 2 * positive(length, 'the length of a string') * positive(pitch, 'a pitch')
  return (positive(unitMass, 'a unit mass') * speed * speed) / PER_NEWTON
}

/** Pitch in hertz under a pull. Example: 0.398323e-6 kg/mm under 69.8055 N over 635 mm gives 329.63 Hz. */
export function pitchOf(unitMass: number, length: number, tension: number): number {
  return waveSpeed(unitMass, tension) / (2 * positive(length, 'the length of a string'))
}

/** Unit mass, in kg/mm, that has this pull at this pitch over this length. */
export function unitMassFor(tension: number, length: number, pitch: number): number {
  const speed = 2 * positive(length, 'the length of a string') * positive(pitch, 'a pitch')
  return (positive(tension, 'a tension') * PER_NEWTON) / (speed * speed)
}

/** Length, in mm, over which a string of this unit mass under this pull has the pitch. */
export function lengthFor(unitMass: number, tension: number, pitch: number): number {
  return waveSpeed(unitMass, tension) / (2 * positive(pitch, 'a pitch'))
}

/**
 * Speed of a wave on the string in mm/s, `√(T / µ)`.
 * Example: 0.309e-6 kg/mm under 56.4 N carries it at 427 230 mm/s (University Physics 1, sec. 16.3).
 */
export function waveSpeed(unitMass: number, tension: number): number {
  return Math.sqrt((positive(tension, 'a tension') * PER_NEWTON) / positive(unitMass, 'a unit mass'))
}
