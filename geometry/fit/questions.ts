/** What is asked of a box: which scale lengths, how many strings, where on the lid the saddle. */
import type { Design } from '../design/schema.ts'
import { inchesToMm } from '../quantity/units.ts'

/** Where the strings of a row come from: chosen for each row, or the builder's own set wherever its count is asked for. */
export type StringsFrom = 'chosen for each' | 'as stated'

export interface Questions {
  /** Millimetres, rising. */
  readonly scales: readonly number[]
  /** Rising. */
  readonly counts: readonly number[]
  /** Shares of the lid from its neck-end edge, rising. */
  readonly places: readonly number[]
  readonly strings: StringsFrom
}

export interface UsualScale {
  /** Millimetres. */
  readonly length: number
  /** What is usually built on it. */
  readonly title: string
}

const usual = (inches: number, title: string): UsualScale => ({ length: inchesToMm(inches), title })

/** Scale lengths in use. All of it is common practice, no source; from memory. */
export const USUAL_SCALES: readonly UsualScale[] = [
  usual(13, 'soprano ukulele'),
  usual(15, 'concert ukulele'),
  usual(17, 'tenor ukulele'),
  usual(20, 'baritone ukulele, travel guitar'),
  usual(22, 'tenor of four strings, short'),
  usual(23, 'tenor of four strings'),
  usual(24, 'short guitar'),
  usual(24.75, 'guitar, shorter'),
  usual(25, 'box guitar'),
  usual(25.5, 'guitar, longer'),
  usual(27, 'stick dulcimer, baritone guitar'),
  usual(30, 'short bass'),
]

/** More of each are not asked at once. */
export const MOST_ASKED = { scales: 40, counts: 12, places: 40 } as const
/** What the fields of a design take. */
const SCALE = { least: 150, most: 1300 }
const COUNT = { least: 1, most: 12 }
const PLACE = { least: 0.02, most: 0.98 }

/** One, three, four and six strings are what is mostly built, and two. Common practice, no source. */
const USUAL_COUNTS = [2, 3, 4, 6]
/** Between the middle of the lid and where it grows stiff. Common practice, no source. */
const USUAL_PLACES = { from: 0.52, to: 0.84, howMany: 9 }

/** So many places, evenly from one share of the lid to another. Example: `placesBetween(0.5, 0.7, 3)` is 0.5, 0.6, 0.7. */
export function placesBetween(from: number, to: number, howMany: number): number[] {
  const [low, high] = [Math.min(from, to), Math.max(from, to)]
  const steps = Math.max(1, Math.min(MOST_ASKED.places, Math.round(howMany)) - 1)
  if (howMany <= 1 || low === high) return [tidy((low + high) / 2)]
  return Array.from({ length: steps + 1 }, (_, index) => tidy(low + ((high - low) * index) / steps))
}

const tidy = (share: number) => Math.round(share * 1e4) / 1e4

/**
 * Questions in order: what no design can hold left out, each asked once. What is not asked is usual, and what the design
 * itself has is among it. Example: `questionsFor(design, { counts: [3] })` asks the usual scales for three strings.
 */
export function questionsFor(design: Design, asked: Partial<Questions> = {}): Questions {
  const { place } = design.saddle
  const usualPlaces = placesBetween(USUAL_PLACES.from, USUAL_PLACES.to, USUAL_PLACES.howMany)
  const own = typeof place === 'object' && 'share' in place ? [place.share] : []
  const scales = asked.scales ?? [...USUAL_SCALES.map((one) => one.length), design.scale.length]
  const counts = asked.counts ?? [...USUAL_COUNTS, design.strings.count]
  return {
    scales: sorted(scales, SCALE, SAME_SCALE).slice(0, MOST_ASKED.scales),
    counts: sorted(counts.map(Math.round), COUNT, 0).slice(0, MOST_ASKED.counts),
    places: sorted(asked.places ?? [...usualPlaces, ...own], PLACE, 0).slice(0, MOST_ASKED.places),
    strings: asked.strings ?? 'chosen for each',
  }
}

/** Millimetres: 648 mm and 25 1/2 in are one scale. */
const SAME_SCALE = 0.5

function sorted(values: readonly number[], { least, most }: typeof SCALE, same: number): number[] {
  const rising = values.filter((value) => value >= least && value <= most).sort((a, b) => a - b)
  return rising.filter((value, index) => index === 0 || value - (rising[index - 1] ?? value) > same)
}
