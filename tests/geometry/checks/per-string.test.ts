/**
 * A rule of strings tells each that breaks it, where it runs, and of those that keep it the one that comes nearest to
 * breaking it. Pulls by `T = mu (2 L f)^2` (M. Mersenne, "Harmonicorum Libri", 1636), over 635 mm at 300 Hz.
 */
import { describe, expect, test } from 'vitest'
import type { Stated } from '../../support/designs.ts'
import { pullOf } from './breaking/case.ts'
import { to4, told } from './told.ts'

/** Strings of these masses in grams per metre, bass first; of nylon those that are named so. */
const masses = (list: readonly number[], nylon: readonly number[] = []): Stated => ({
  stringing: {
    tuning: list.map(() => '300 Hz'),
    makes: list.map((unitMass) => ({
      construction: 'stated',
      unitMass,
      ...(nylon.includes(unitMass) ? { material: 'nylon' } : {}),
    })),
  },
  strings: { count: list.length, gauges: [0.254] },
})
const pull = (mass: number) => pullOf(300, mass)
/** From nut to saddle: bass, middle and treble of three strings, 24 over all at the nut and 26 at the saddle. */
const BASS = 'plan (0, -12) to (635, -13)'
const MIDDLE = 'plan (0, 0) to (635, 0)'
const TREBLE = 'plan (0, 12) to (635, 13)'

describe('per string', () => {
  test('of those that hold the nearest to the limit is told', () => {
    // 58, 73 and 65 newtons against a least of 40 and a most of 110.
    const three = masses([0.4, 0.5, 0.45])
    expect(told('string-slack', three)).toEqual([`clear string 3: ${to4(pull(0.4))} of 40, ${BASS}`])
    expect(told('string-high', three)).toEqual([`clear string 2: ${to4(pull(0.5))} of 110, ${MIDDLE}`])
    // Of equal ones the first.
    expect(told('string-high', masses([0.4, 0.4]))[0]).toMatch(/^clear string 2: /)
  })

  test('each that does not is told, in order, and then the nearest of the others', () => {
    const mixed = masses([0.2, 0.4, 0.25, 0.45])
    expect(told('string-slack', mixed).map((line) => line.split(',')[0])).toEqual([
      `care string 4: ${to4(pull(0.2))} of 40`,
      `care string 2: ${to4(pull(0.25))} of 40`,
      `clear string 3: ${to4(pull(0.4))} of 40`,
    ])
    expect(told('string-high', masses([0.8, 0.4, 0.9]))).toEqual([
      `care string 3: ${to4(pull(0.8))} of 110, ${BASS}`,
      `care string 1: ${to4(pull(0.9))} of 110, ${TREBLE}`,
      `clear string 2: ${to4(pull(0.4))} of 110, ${MIDDLE}`,
    ])
  })

  test('near is near to the string’s own limit', () => {
    // Nylon may pull 20 and pulls 36, steel must pull 40 and pulls 51: it has less to spare.
    expect(told('string-slack', masses([0.25, 0.35], [0.25]))).toEqual([
      `clear string 1: ${to4(pull(0.35))} of 40, ${TREBLE}`,
    ])
  })
})
