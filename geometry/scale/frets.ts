/** Where the frets go. Every position is measured from the nut, never fret to fret: errors do not add up. */

import type { Design } from '../design/schema.ts'
import { listOf } from '../quantity/list-of.ts'
import { notes } from '../quantity/notes.ts'
import { centsOf, ratioOf } from './ratio.ts'

export interface Fret {
  /** 1 for the first behind the nut; 0 for a zero fret. */
  readonly number: number
  /** Millimetres from the nut's edge, or the zero fret's crown. */
  readonly fromNut: number
  /** From the fret before it, only to check the work by. */
  readonly step: number
  /** Interval above the open string. */
  readonly cents: number
}

/**
 * Share of the scale from the nut to the fret that raises the open string by `cents`: `1 - 2^(-cents/1200)`.
 * Source: G. Byers, "Intonation" (American Lutherie 47, 1996), Fret Placement: `X_n = X_0 2^(-n/12)` from the saddle.
 * Example: `fretShare(1200)` is exactly 0.5.
 */
export const fretShare = (cents: number): number => 1 - 2 ** (-cents / 1200)

/** The intervals a fret list asks for, in cents above the open string, in the order given. */
export function centsOfFrets(frets: Design['scale']['frets']): number[] {
  switch (frets.by) {
    case 'equal':
      return listOf(frets.count, (index) => 100 * (index + 1))
    case 'steps':
      return frets.list.map((semitones) => 100 * semitones)
    case 'cents':
      return [...frets.list]
    case 'ratios':
      return frets.list.map((ratio) => centsOf(ratioOf(ratio)))
  }
}

/**
 * The frets of a scale, nearest the nut first. A ratio at or under the open string, or one that cannot be
 * reckoned, is left out here and refused when a file is read.
 * Example: `fretsOf({ length: 635, frets: { by: 'equal', count: 12 }, … })[11].fromNut` is 317.5.
 */
export function fretsOf(scale: Design['scale']): readonly Fret[] {
  const before = known.get(scale)
  if (before) return before
  const frets = reckon(scale)
  known.set(scale, frets)
  return frets
}

const known = notes<Design['scale'], readonly Fret[]>()

function reckon(scale: Design['scale']): Fret[] {
  const cents = centsOfFrets(scale.frets)
    .filter((value) => value > 0 && Number.isFinite(value))
    .sort((a, b) => a - b)
  let before = 0
  return cents.map((value, index) => {
    const fromNut = scale.length * fretShare(value)
    const fret = { number: index + 1, fromNut, step: fromNut - before, cents: value }
    before = fromNut
    return fret
  })
}
