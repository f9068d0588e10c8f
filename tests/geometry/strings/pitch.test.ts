import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  centsBetween,
  hertzOf,
  midiOf,
  nameOf,
  nearestKey,
  readPitch,
  STANDARD_A4,
} from '../../../geometry/strings/pitch.ts'
import { expectShare, expectWithin } from '../../support/near.ts'

describe('equal temperament', () => {
  // J. Wolfe, UNSW School of Physics, "Note names, MIDI numbers and frequencies", formula section; prints 1.059.
  it('steps by the twelfth root of two', () => {
    const step = hertzOf(70) / hertzOf(69)
    expectShare(step, 1.0594630943592953, 1e-12)
    expectWithin(step, 1.059, 0.0005)
  })

  // ISO 16:1975, Acoustics - Standard tuning frequency (standard musical pitch).
  it('stands on 440 Hz', () => {
    expect(STANDARD_A4).toBe(440)
    expect(hertzOf(69)).toBe(440)
  })

  // OEIS A320304, frequency of MIDI note number n; note 8 is printed 12.9782 and rounds to 12.9783.
  it.each([
    ...[8.1758, 8.662, 9.177, 9.7227, 10.3009, 10.9134, 11.5623].entries(),
    ...([12.2499, 12.9782, 13.75, 14.5676, 15.4339, 16.3516] as const).map(
      (hertz, index) => [index + 7, hertz] as const,
    ),
  ])('gives key %i %d Hz, lowest octave', (midi, hertz) => {
    expectWithin(hertzOf(midi), hertz, 1e-4)
  })

  // J. Wolfe, as above: A4 is 69, 440 Hz; the table to four decimals is worked out from it.
  const fromC2 = [
    65.4064, 69.2957, 73.4162, 77.7817, 82.4069, 87.3071, 92.4986, 97.9989, 103.8262, 110, 116.5409, 123.4708,
    130.8128, 138.5913, 146.8324, 155.5635, 164.8138, 174.6141, 184.9972, 195.9977, 207.6523, 220, 233.0819,
    246.9417, 261.6256, 277.1826, 293.6648, 311.127, 329.6276, 349.2282, 369.9944, 391.9954, 415.3047, 440,
    466.1638, 493.8833, 523.2511, 554.3653, 587.3295, 622.254, 659.2551,
  ]
  it.each(fromC2.map((hertz, index) => [36 + index, hertz]))('gives key %i %d Hz', (midi, hertz) => {
    expectWithin(hertzOf(midi!), hertz!, 6e-5)
    expectWithin(midiOf(hertz!), midi!, 2e-5)
  })

  // MiniScript language wiki, NoteFreq function reference, value table (five figures).
  it.each([
    [28, 41.203],
    [33, 55],
    [36, 65.406],
    [38, 73.416],
    [40, 82.407],
    [41, 87.307],
    [43, 97.999],
    [45, 110],
    [46, 116.54],
    [47, 123.47],
  ])('gives bass key %i %d Hz', (midi, hertz) => expectShare(hertzOf(midi), hertz, 6e-5))

  // OpenStax, University Physics, Volume 1, sec. 16.3, "The Wave Speed of a Guitar String", Significance.
  it.each([
    ['E4', 329.63],
    ['B3', 246.94],
    ['G3', 196],
    ['D3', 146.83],
    ['A2', 110],
    ['E2', 82.41],
  ])('reads the open string %s as %d Hz', (text, hertz) => {
    const reading = readPitch(text)
    expectWithin(reading.ok ? reading.hertz : Number.NaN, hertz, 0.005)
  })

  // OpenStax, Contemporary Mathematics, "Calculating the Frequency Values of Octaves": C4 taken as 262 Hz.
  it('doubles with every octave', () => {
    const a4 = 262 / 2 ** ((60 - 69) / 12)
    expectShare(hertzOf(84, a4), 1048, 1e-12)
    expect(hertzOf(81)).toBe(880)
  })

  // G. P. Scavone, McGill University, MUMT 307 notes, week 1: 453 Hz lies 50.4 cents above 440.
  it('counts cents', () => {
    expectWithin(centsBetween(440, 453), 50.4, 0.06)
    expectWithin(nearestKey(440 * 2 ** (0.49 / 12)).cents, 49, 1e-9)
    // OpenStax (University Physics 1, sec. 16.3) calls 393.88 Hz E4; it lies 8 cents above G4.
    const near = nearestKey(393.88)
    expect(nameOf(near.midi)).toBe('G4')
    expectWithin(near.cents, 8.3, 0.1)
    // 390 Hz lies 8.8 cents under G4, 391.9954 Hz: still G4.
    const under = nearestKey(390)
    expect(nameOf(under.midi)).toBe('G4')
    expectWithin(under.cents, 1200 * Math.log2(390 / 391.9954), 1e-3)
  })

  it('follows another A4', () => {
    expectShare(hertzOf(60, 415), 261.6256 * (415 / 440), 1e-6)
    expect(readPitch('A3', 432)).toEqual({ ok: true, hertz: 216, midi: 57 })
    expect(readPitch('216 Hz', 432)).toEqual({ ok: true, hertz: 216, midi: 57 })
  })
})

describe('names', () => {
  it('turn their octave over at C', () => {
    expect(nameOf(59)).toBe('B3')
    expect(nameOf(60)).toBe('C4')
    expect(nameOf(54)).toBe('F♯3')
    expect(nameOf(58, 'flats')).toBe('B♭3')
    expect(nameOf(0)).toBe('C−1')
    expect(nameOf(11)).toBe('B−1')
    expect(nameOf(12)).toBe('C0')
  })

  it('are of the nearest key, from below and from above', () => {
    expect(nameOf(59.6)).toBe('C4')
    expect(nameOf(60.4)).toBe('C4')
    expect(nameOf(60.6, 'flats')).toBe('D♭4')
  })

  it('come back when read, in both spellings', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 127 }),
        fc.constantFrom('sharps' as const, 'flats' as const),
        (midi, how) => {
          const reading = readPitch(nameOf(midi, how))
          expect(reading.ok && reading.midi).toBe(midi)
        },
      ),
    )
  })
})

describe('readPitch', () => {
  it.each([
    ['G2', 43],
    [' g2 ', 43],
    ['f#3', 54],
    ['F♯3', 54],
    ['F sharp 3', 54],
    ['f-sharp 3', 54],
    ['Bb2', 46],
    ['B♭2', 46],
    ['bb2', 46],
    ['b2', 47],
    ['E flat 4', 63],
    ['F##3', 55],
    ['C♭4', 59],
    ['B♯3', 60],
    ['D♮3', 50],
    ['C-1', 0],
    ['C−1', 0],
    ['G 2', 43],
    ['G₂', 43],
    ['G9', 127],
    ['E ♭ 4', 63],
    ['Ebb4', 62],
    ['d♭♭4', 60],
  ])('reads %s as key %i', (text, midi) => {
    const reading = readPitch(text)
    expect(reading.ok && reading.midi).toBe(midi)
  })

  it.each([
    ['98 Hz', 98],
    ['98hz', 98],
    ['82,4 hertz', 82.4],
    ['146.83 Hz', 146.83],
    ['98. Hz', 98],
    ['44,0Hz', 44],
  ])('reads %s as hertz', (text, hertz) => {
    const reading = readPitch(text)
    expect(reading.ok ? reading.hertz : Number.NaN).toBe(hertz)
  })

  it.each([
    ['B3 -14 cents', 58.86],
    ['B3 −13.7¢', 58.863],
    ['G2+5c', 43.05],
    ['A4 + 50 cents', 69.5],
    ['A4 +1 cent', 69.01],
    ['A4 -2,5 ct', 68.975],
  ])('reads %s with its cents', (text, midi) => {
    const reading = readPitch(text)
    expectWithin(reading.ok ? reading.midi : Number.NaN, midi, 1e-9)
  })

  it.each([
    ['', /^Nothing is written here\. Write a pitch/],
    ['98', /^“98”: nothing says that this is a frequency\. Write 98 Hz/],
    ['G', /^“G”: the octave is missing\. Add its number, as in G3/],
    ['G', /as in G3; middle C is C4\.$/],
    ['A sharp', /^“A sharp”: the octave is missing\. Add its number, as in A3/],
    ['b♭', /^“b♭”: the octave is missing\. Add its number, as in B3/],
    ['f ##', /^“f ##”: the octave is missing\. Add its number, as in F3/],
    ['C-1 Hz', /neither a note nor a frequency/],
    ['82,4', /^“82,4”: nothing says that this is a frequency\. Write 82,4 Hz, or a note/],
    ['G♯9', /^“G♯9”: that is higher than any string sounds\. Write a pitch between C−1 and G9, such as G2/],
    ['C♭-1', /^“C♭-1”: that is lower than any string sounds\. Write a pitch between C−1 and G9/],
    ['H3', /^“H3”: notes are called A to G here\. Write B/],
    ['X2', /^“X2”: this is neither a note nor a frequency/],
    ['1,234.5 Hz', /two ways/],
    ['0 Hz', /must be above 0/],
    ['-5 Hz', /neither a note nor a frequency/],
    ['C12', /higher than any string sounds/],
    ['C-2', /lower than any string sounds/],
    ['3 Hz', /lower than any string sounds/],
    [`G2${'!'.repeat(200)}`, /…”: /],
  ])('answers %j with one sentence that says what would do', (text, expected) => {
    const reading = readPitch(text)
    expect(reading.ok ? reading : reading.sentence).toMatch(expected)
  })

  it('never throws and never gives a number that is none', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.string({ unit: 'grapheme' }),
          fc.stringMatching(/^[A-Ha-h#b♯♭ 0-9.,+\-HZhz]{0,9}$/),
        ),
        (text) => {
          const reading = readPitch(text)
          if (reading.ok) expect(reading.hertz > 0 && Number.isFinite(reading.midi)).toBe(true)
          else expect(reading.sentence).toMatch(/\.$/)
        },
      ),
    )
  })

  it('throws for a frequency that is none, with the value', () => {
    expect(() => hertzOf(60, 0)).toThrow('the frequency of A4 must be above 0, not 0')
    expect(() => midiOf(Number.NaN)).toThrow('not NaN')
    expect(() => centsBetween(1, -1)).toThrow('not -1')
  })
})
