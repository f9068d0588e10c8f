/** What every part of the sheet is made from: the design, what follows from it, and the letters of what stands on it. */
import { type Design, formatLength, type Layout, notes, solve } from '../../geometry/index.ts'
import { type Report, reportOf } from '../report.ts'

export interface Source {
  readonly design: Design
  readonly layout: Layout
  /** The numbers of every table: the sheet says what the report says. */
  readonly report: Report
  /** Letter of each thing, in the order of the design: A … Z, AA, AB … */
  readonly letters: ReadonlyMap<string, string>
  /** A length on the builder's rule, with its unit. */
  say(mm: number): string
}

const known = notes<Design, Source>()

/** The source of a design's sheet and label, remembered: a bundle asks for it several times. */
export function sourceOf(design: Design): Source {
  const before = known.get(design)
  if (before) return before
  const source: Source = {
    design,
    layout: solve(design),
    report: reportOf(design),
    letters: new Map(design.things.map(({ id }, index) => [id, letterOf(index)])),
    say: (mm) => formatLength(mm, design.units, { unit: true }),
  }
  known.set(design, source)
  return source
}

const ALPHABET = 26

/** `A` for 0, `Z` for 25, `AA` for 26. */
export function letterOf(index: number): string {
  const letter = String.fromCharCode(65 + (index % ALPHABET))
  return index < ALPHABET ? letter : letterOf(Math.floor(index / ALPHABET) - 1) + letter
}

export const FACE_WORDS: Readonly<Record<string, string>> = {
  lid: 'lid',
  base: 'base',
  'neck-end-wall': 'neck-end wall',
  'tail-end-wall': 'tail-end wall',
  'bass-wall': 'bass wall',
  'treble-wall': 'treble wall',
}

/** The first letter of a sentence or a heading. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
