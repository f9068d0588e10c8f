/**
 * Pitches: names with octave numbers, semitone numbers and hertz, and reading a pitch as it is typed.
 *
 * Semitones are counted as MIDI counts them: 69 is A4, 60 is C4 (middle C), 12 to the octave; a pitch between two
 * keys has a number between theirs. Equal temperament, `f = A4 · 2^((midi − 69) / 12)`; source: J. Wolfe, UNSW School
 * of Physics, "Note names, MIDI numbers and frequencies". A4 is 440 Hz unless another is given (ISO 16:1975).
 */
import { positive } from '../quantity/demand.ts'
import { Refusal, sentenceOf } from '../quantity/refusal.ts'
import { centsOf } from '../scale/ratio.ts'

/** ISO 16:1975, standard tuning frequency, in hertz. */
export const STANDARD_A4 = 440
const A4_MIDI = 69

/** A pitch read, or one sentence to show instead: what was read, what is wrong, what would do. */
export type PitchReading =
  | { readonly ok: true; readonly hertz: number; readonly midi: number }
  | { readonly ok: false; readonly sentence: string }

/** Semitones above C of the seven letters. */
const LETTERS: Readonly<Record<string, number>> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 }
const SHARP_NAMES = ['C', 'C♯', 'D', 'D♯', 'E', 'F', 'F♯', 'G', 'G♯', 'A', 'A♯', 'B']
const FLAT_NAMES = ['C', 'D♭', 'D', 'E♭', 'E', 'F', 'G♭', 'G', 'A♭', 'A', 'B♭', 'B']

/** The range that MIDI has numbers for, C−1 to G9; far more than a string can do. */
const LOWEST_MIDI = 0
const HIGHEST_MIDI = 127
const EXAMPLES = 'G2, F♯3 or 98 Hz'

/** Hertz of a semitone number. Example: `hertzOf(60)` is 261.6256, `hertzOf(69, 432)` is 432. */
export function hertzOf(midi: number, a4 = STANDARD_A4): number {
  return positive(a4, 'the frequency of A4') * 2 ** ((midi - A4_MIDI) / 12)
}

/** Semitone number of a frequency, with its fraction. Example: `midiOf(220)` is 57. */
export function midiOf(hertz: number, a4 = STANDARD_A4): number {
  return A4_MIDI + 12 * Math.log2(positive(hertz, 'a frequency') / positive(a4, 'the frequency of A4'))
}

/**
 * Cents from one frequency up to another, negative down. Example: `centsBetween(440, 453)` is 50.4.
 * Source: A. J. Ellis, in Helmholtz, "On the Sensations of Tone", App. XX.
 */
export function centsBetween(from: number, to: number): number {
  return centsOf(positive(to, 'a frequency') / positive(from, 'a frequency'))
}

/** Name of the key nearest to a semitone number. Example: `nameOf(54)` is `F♯3`, `nameOf(54, 'flats')` is `G♭3`. */
export function nameOf(midi: number, spelling: 'sharps' | 'flats' = 'sharps'): string {
  const key = Math.round(midi)
  const octave = Math.floor(key / 12) - 1
  const names = spelling === 'sharps' ? SHARP_NAMES : FLAT_NAMES
  return `${names[key - 12 * (octave + 1)]}${octave < 0 ? '−' : ''}${Math.abs(octave)}`
}

/**
 * The key a frequency is nearest to and how far it lies above it, in cents from −50 to 50.
 * Example: `nearestKey(98)` is `{ midi: 43, cents: 0.02 }`, that is G2.
 */
export function nearestKey(
  hertz: number,
  a4 = STANDARD_A4,
): { readonly midi: number; readonly cents: number } {
  const exact = midiOf(hertz, a4)
  const midi = Math.round(exact)
  return { midi, cents: 100 * (exact - midi) }
}

const NOTE =
  /^([A-Ga-g]) ?(♯♯|##|♭♭|bb|[♯#♭b♮])? ?(-?\d{1,3})(?: ?([+-]) ?(\d+(?:[.,]\d+)?) ?(?:cents?|ct|c|¢))?$/
const FREQUENCY = /^([\d.,]+) ?(?:hz|hertz)$/i
const FIGURES = /^(?:\d+(?:[.,]\d*)?|[.,]\d+)$/

/**
 * Read a pitch as builders write it: a note with its octave (`G2`, `f#3`, `B♭2`, `E flat 4`), with cents if wanted
 * (`B3 -14 cents`), or a frequency (`98 Hz`, `82,4 hertz`). Never throws for what is typed: what cannot be read comes
 * back as a sentence. The octave number turns over at C; C4 is middle C.
 *
 * @param a4 hertz of A4; a note follows it, a frequency does not
 * @example readPitch('A3') // { ok: true, hertz: 220, midi: 57 }
 */
export function readPitch(text: string, a4 = STANDARD_A4): PitchReading {
  const line = text.replace(/\s+/g, ' ').trim().replace(/\p{C}/gu, '\uFFFD')
  if (line === '')
    return { ok: false, sentence: `Nothing is written here. Write a pitch, such as ${EXAMPLES}.` }
  try {
    const { midi, hertz } = pitchIn(plain(line), a4)
    if (!(midi >= LOWEST_MIDI && midi <= HIGHEST_MIDI)) throw outOfRange(midi)
    return { ok: true, hertz, midi }
  } catch (trouble) {
    if (trouble instanceof Refusal) return { ok: false, sentence: sentenceOf(line, trouble) }
    throw trouble
  }
}

/** Every way of writing a figure, a sharp, a flat and a minus reduced to one. */
function plain(line: string): string {
  return line
    .normalize('NFKC')
    .replace(/[−–—‐‑]/g, '-')
    .replace(/ ?-?sharp ?/gi, '#')
    .replace(/(?<=^[A-Ga-g]) ?-?flat ?/gi, 'b')
}

function pitchIn(line: string, a4: number): { midi: number; hertz: number } {
  const frequency = FREQUENCY.exec(line)
  if (frequency) {
    const hertz = hertzIn(frequency[1] ?? '')
    return { midi: midiOf(hertz, a4), hertz }
  }
  const note = NOTE.exec(line)
  if (!note) throw whyNoPitch(line)
  const [, letter = '', accidental = '', octave = '', sign, cents] = note
  const raised = /[♯#]/.test(accidental)
    ? accidental.length
    : /[♭b]/.test(accidental)
      ? -accidental.length
      : 0
  const key = 12 * (Number(octave) + 1) + (LETTERS[letter.toUpperCase()] ?? 0) + raised
  const midi = key + (cents ? ((sign === '-' ? -1 : 1) * Number(cents.replace(',', '.'))) / 100 : 0)
  return { midi, hertz: hertzOf(midi, a4) }
}

function hertzIn(figures: string): number {
  if (!FIGURES.test(figures)) {
    throw new Refusal(
      'the figures can be read in two ways',
      'Use one decimal point or comma, as in 146.83 Hz',
    )
  }
  const hertz = Number(figures.replace(',', '.'))
  if (!(hertz > 0)) throw new Refusal('a frequency must be above 0', `Write a pitch, such as ${EXAMPLES}`)
  return hertz
}

/** Words for what is most often typed instead of a pitch. */
function whyNoPitch(line: string): Refusal {
  if (/^[\d.,]+$/.test(line)) {
    return new Refusal('nothing says that this is a frequency', `Write ${line} Hz, or a note such as G2`)
  }
  if (/^[A-Ga-g] ?(♯♯|##|♭♭|bb|[♯#♭b♮])?$/.test(line)) {
    return new Refusal(
      'the octave is missing',
      `Add its number, as in ${line.slice(0, 1).toUpperCase()}3; middle C is C4`,
    )
  }
  if (/^h/i.test(line)) {
    return new Refusal(
      'notes are called A to G here',
      'Write B for the note that some call H, and B♭ for the one they call B',
    )
  }
  return new Refusal('this is neither a note nor a frequency', `Write a pitch, such as ${EXAMPLES}`)
}

function outOfRange(midi: number): Refusal {
  return new Refusal(
    midi < LOWEST_MIDI ? 'that is lower than any string sounds' : 'that is higher than any string sounds',
    `Write a pitch between ${nameOf(LOWEST_MIDI)} and ${nameOf(HIGHEST_MIDI)}, such as ${EXAMPLES}`,
  )
}
