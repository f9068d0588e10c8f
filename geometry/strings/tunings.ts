/**
 * The usual tunings of the trade, by interval pattern: the same pattern in another key is the same tuning on strings
 * of another gauge. All of it is common practice, no source; octaves and keys from memory.
 */
import { positive } from '../quantity/demand.ts'
import { nameOf } from './pitch.ts'

export interface Tuning {
  /** Short and stable. */
  readonly name: string
  /** What it is called or good for. */
  readonly title: string
  /** Semitones of each string above the first one listed, the bass side first; below it where negative. */
  readonly steps: readonly number[]
  /** Semitone numbers (MIDI) that the first string is usually tuned to, the most usual first. */
  readonly keys: readonly [number, ...number[]]
}

const tuning = (
  name: string,
  title: string,
  steps: readonly number[],
  ...keys: readonly [number, ...number[]]
): Tuning => ({ name, title, steps, keys })

const [E1, C2, D2, E2, G2, A2, C3, D3, E3, G3, G4] = [28, 36, 38, 40, 43, 45, 48, 50, 52, 55, 67] as const

export const TUNINGS: readonly Tuning[] = [
  tuning('one', 'One string', [0], A2, E2, G2, D3),
  tuning('root-fifth', 'Root and fifth', [0, 7], G2, A2, E2, D3),
  tuning('root-octave', 'Root and octave', [0, 12], G2, A2, E2, D3),
  tuning('root-fifth-octave', 'Root, fifth, octave', [0, 7, 12], G2, A2, D3, E2, C3, D2),
  tuning('root-third-fifth', 'Root, third, fifth: major chord, for slide', [0, 4, 7], G3, A2, D3),
  tuning('root-fifth-seventh', 'Root, fifth, minor seventh', [0, 7, 10], A2, E2),
  tuning('guitar-top-three', 'Top three of a guitar', [0, 4, 9], G3),
  tuning('root-fifth-fifth', 'Root and two fifths in unison, for a stick dulcimer', [0, 7, 7], D3, C3, G2),
  tuning('open-four', 'Root, fifth, octave, third: open chord', [0, 7, 12, 16], G2, A2, E2, D2),
  tuning('two-fifths', 'Root, fifth, octave, fifth', [0, 7, 12, 19], G2, A2, E2, D2),
  tuning('fifth-below', 'Fifth, root, third, fifth: open chord', [0, 5, 9, 12], D3, E3, C3),
  tuning('guitar-top-four', 'Top four of a guitar, or a ukulele with a low fourth', [0, 5, 9, 14], D3, G3),
  tuning('ukulele', 'Ukulele, fourth string an octave up', [0, -7, -3, 2], G4),
  tuning('fifths', 'In fifths, as a tenor or a mandolin', [0, 7, 14, 21], C3, G2, G3),
  tuning('plectrum', 'Four-string plectrum banjo', [0, 7, 11, 14], C3),
  tuning('bass', 'In fourths, as a bass', [0, 5, 10, 15], E1, E2),
  tuning('open-five', 'Root, fifth, octave, third, fifth: open chord', [0, 7, 12, 16, 19], G2, A2),
  tuning('five-string-banjo', 'Five-string banjo, short string first', [0, -17, -12, -8, -5], G4),
  tuning('guitar', 'Guitar', [0, 5, 10, 15, 19, 24], E2),
  tuning('open-six-fifth', 'Guitar in an open chord, fifth lowest', [0, 5, 12, 17, 21, 24], D2),
  tuning('open-six-root', 'Guitar in an open chord, root lowest', [0, 7, 12, 16, 19, 24], D2, E2, C2),
]

/** The tunings for a number of strings, the most usual first; none for more than six. */
export function tuningsFor(strings: number): Tuning[] {
  return TUNINGS.filter(({ steps }) => steps.length === positive(strings, 'the number of strings'))
}

/**
 * Semitone numbers of a tuning's strings, the bass side first, in a key given by its first string.
 * Example: the pattern root, fifth, octave from 43 is `[43, 50, 55]`, that is G2 D3 G3.
 */
export function tunedTo(pattern: Pick<Tuning, 'steps' | 'keys'>, first: number = pattern.keys[0]): number[] {
  return pattern.steps.map((step) => first + step)
}

/** What players call it: the letters from bass to treble. Example: `lettersOf([43, 50, 55])` is `GDG`. */
export function lettersOf(midis: readonly number[], spelling: 'sharps' | 'flats' = 'sharps'): string {
  return midis.map((midi) => nameOf(midi, spelling).replace(/−?\d+$/, '')).join('')
}
