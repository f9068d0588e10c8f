/**
 * Tempered and pure: what a tuner shows when an open chord is tuned until it stands still, and how fast neighbouring
 * strings beat when it is not. Pitches as semitone numbers (MIDI), frequencies in hertz, offsets in cents.
 * Source: H. von Helmholtz, transl. A. J. Ellis, "On the Sensations of Tone", 2nd English ed. 1885, App. XX.
 */
import { finite, positive } from '../quantity/demand.ts'
import { centsOf } from '../scale/ratio.ts'

export interface Ratio {
  readonly above: number
  readonly below: number
}

const ratio = (above: number, below: number): Ratio => ({ above, below })

/** Simple ratios of the twelve intervals within the octave, five-limit. */
const PURE: readonly Ratio[] = [
  ratio(1, 1),
  ratio(16, 15),
  ratio(9, 8),
  ratio(6, 5),
  ratio(5, 4),
  ratio(4, 3),
  ratio(45, 32),
  ratio(3, 2),
  ratio(8, 5),
  ratio(5, 3),
  ratio(9, 5),
  ratio(15, 8),
]

/** The minor seventh has three pure forms: a third over the fifth, two fourths, or the natural seventh partial. */
export type Seventh = '9/5' | '16/9' | '7/4'
const SEVENTHS: Readonly<Record<Seventh, Ratio>> = {
  '9/5': ratio(9, 5),
  '16/9': ratio(16, 9),
  '7/4': ratio(7, 4),
}

/**
 * Pure ratio of an interval of whole semitones, up or down and over as many octaves as it spans.
 * Example: `pureRatio(16)`, a third over the octave, is 5 to 2; `pureRatio(-5)` is 3 to 4.
 */
export function pureRatio(semitones: number, seventh: Seventh = '9/5'): Ratio {
  const steps = Math.round(finite(semitones, 'an interval'))
  const octaves = Math.floor(steps / 12)
  const within = steps - 12 * octaves
  const { above, below } = within === 10 ? SEVENTHS[seventh] : (PURE[within] ?? ratio(1, 1))
  return reduced(octaves >= 0 ? above * 2 ** octaves : above, octaves >= 0 ? below : below * 2 ** -octaves)
}

function reduced(above: number, below: number): Ratio {
  let [a, b] = [above, below]
  while (b > 0) [a, b] = [b, a % b]
  return ratio(above / a, below / a)
}

export interface PureString {
  /** Pure ratio to the root. */
  readonly ratio: Ratio
  /** Where the string rests, in cents over its tempered pitch: what a tuner shows. */
  readonly offset: number
}

/**
 * Offsets of every string of an open chord from its tempered pitch, the root staying where it is.
 * `1200 log2(ratio) − 100 n`. Example: over a root G2, `pureOffsets([43, 50, 55, 59], 43)` ends with a third of 5 to 2
 * that rests 13.69 cents under the tuner's mark.
 */
export function pureOffsets(midis: readonly number[], root: number, seventh: Seventh = '9/5'): PureString[] {
  return midis.map((midi) => {
    const semitones = Math.round(midi) - Math.round(finite(root, 'the root'))
    const pure = pureRatio(semitones, seventh)
    return { ratio: pure, offset: centsOf(pure.above / pure.below) - 100 * semitones }
  })
}

/** Intervals over a root that make a chord, the commonest first. */
const CHORDS: readonly (readonly number[])[] = [[0, 4, 7], [0, 3, 7], [0, 7], [0, 4, 7, 10], [0, 4], [0]]

/**
 * The root of an open chord: the lowest string over which all others are parts of a major or minor chord or of bare
 * fifths and octaves; `null` where the strings make no such chord (a guitar's own tuning does not).
 * Example: `rootOf([50, 55, 59, 62])`, D G B D, is 55.
 */
export function rootOf(midis: readonly number[]): number | null {
  for (const chord of CHORDS) {
    let lowest: number | null = null
    for (const root of midis) {
      const fits = midis.every((midi) => chord.includes((((midi - root) % 12) + 12) % 12))
      if (fits && (lowest === null || root < lowest)) lowest = root
    }
    if (lowest !== null) return lowest
  }
  return null
}

/** Beats between partials higher than this are too faint to hear. Common practice, no source. */
const HIGHEST_PARTIAL = 8

/**
 * Beats a second between two strings whose interval is nearly pure: of the lowest partials that nearly agree,
 * `|p f1 − q f2|`. `null` where these lie beyond the eighth and no ear hears them.
 * Example: a tempered fifth, 220 and 329.6276 Hz, beats 0.745 times a second.
 */
export function beatsBetween(one: number, other: number): number | null {
  const semitones = 12 * Math.log2(positive(other, 'a frequency') / positive(one, 'a frequency'))
  const { above, below } = pureRatio(semitones, '7/4')
  return Math.max(above, below) <= HIGHEST_PARTIAL ? Math.abs(above * one - below * other) : null
}

/** Beats of each string with the next, in the order given: one fewer than strings. */
export function beatsOfNeighbours(pitches: readonly number[]): (number | null)[] {
  return pitches.slice(1).map((pitch, index) => beatsBetween(pitches[index]!, pitch))
}
