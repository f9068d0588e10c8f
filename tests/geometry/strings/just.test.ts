import { describe, expect, it } from 'vitest'
import { centsOf, ratioOf } from '../../../geometry/scale/ratio.ts'
import {
  beatsBetween,
  beatsOfNeighbours,
  pureOffsets,
  pureRatio,
  rootOf,
} from '../../../geometry/strings/just.ts'
import { hertzOf } from '../../../geometry/strings/pitch.ts'
import { expectWithin } from '../../support/near.ts'

describe('cents of pure intervals', () => {
  // "List of intervals in 5-limit just intonation", open encyclopaedia, interval table (two decimals).
  it.each([
    ['81/80', 21.51],
    ['128/125', 41.06],
    ['25/24', 70.67],
    ['256/243', 90.22],
    ['135/128', 92.18],
    ['16/15', 111.73],
    ['27/25', 133.24],
    ['800/729', 160.9],
    ['10/9', 182.4],
    ['9/8', 203.91],
    ['256/225', 223.46],
    ['125/108', 253.08],
    ['75/64', 274.58],
    ['5/4', 386.31],
  ])('%s is %d as printed', (text, cents) => expectWithin(centsOf(ratioOf(text)), cents, 0.006))

  // Helmholtz, transl. Ellis, "On the Sensations of Tone", 2nd English ed. 1885, App. XX: four decimals worked out.
  it.each([
    ['16/15', 111.7313],
    ['10/9', 182.4037],
    ['9/8', 203.91],
    ['6/5', 315.6413],
    ['5/4', 386.3137],
    ['4/3', 498.045],
    ['45/32', 590.2237],
    ['64/45', 609.7763],
    ['3/2', 701.955],
    ['8/5', 813.6863],
    ['5/3', 884.3587],
    ['9/5', 1017.5963],
    ['15/8', 1088.2687],
    ['2/1', 1200],
    ['7/4', 968.8259],
    ['7/6', 266.8709],
  ])('%s is %d', (text, cents) => expectWithin(centsOf(ratioOf(text)), cents, 6e-5))

  // Ellis, as above.
  it('gives the commas', () => {
    expectWithin(centsOf(3 ** 12 / 2 ** 19), 23.46, 6e-5)
    expectWithin(centsOf(81 / 80), 21.5063, 6e-5)
    expectWithin(centsOf(32805 / 32768), 1.9537, 6e-5)
  })

  // J. M. Barbour, "Tuning and Temperament", 1951, ch. III: the rule of 18 for frets.
  it('makes the rule of 18 fall short of the octave', () => {
    expectWithin(centsOf(18 / 17), 98.9546, 5e-4)
    expectWithin(12 * centsOf(18 / 17) - 1200, -12.545, 1e-3)
  })
})

describe('pureRatio', () => {
  // Helmholtz, transl. Ellis, as above, App. XX: the five-limit scale over its root.
  it.each([
    [0, '1/1'],
    [1, '16/15'],
    [2, '9/8'],
    [3, '6/5'],
    [4, '5/4'],
    [5, '4/3'],
    [6, '45/32'],
    [7, '3/2'],
    [8, '8/5'],
    [9, '5/3'],
    [10, '9/5'],
    [11, '15/8'],
    [12, '2/1'],
    [14, '9/4'],
    [19, '3/1'],
    [-1, '15/16'],
    [-10, '9/16'],
    [-17, '3/8'],
  ])('of %i semitones is %s', (semitones, text) => {
    const { above, below } = pureRatio(semitones)
    expect(`${above}/${below}`).toBe(text)
  })
})

describe('pureOffsets', () => {
  // Ellis, as above: tempered less pure, so what the pure string lies under the tuner's mark.
  it.each([
    ['minor third', 3, -15.6413],
    ['major third', 4, 13.6863],
    ['fourth', 5, 1.955],
    ['fifth', 7, -1.955],
    ['minor sixth', 8, -13.6863],
    ['major sixth', 9, 15.6413],
  ])('puts a pure %s %#', (_, semitones, temperedLessPure) => {
    const [pure] = pureOffsets([43 + semitones], 43)
    expectWithin(-(pure?.offset ?? Number.NaN), temperedLessPure, 6e-5)
  })

  // Common practice, no source: an open major chord tuned by ear leaves its third about 14 cents under the tuner.
  it('leaves the third of an open chord about 14 cents low, wherever it lies', () => {
    for (const chord of [
      [43, 50, 55, 59],
      [50, 55, 59, 62],
      [55, 59, 62],
      [38, 45, 50, 54, 57, 62],
    ]) {
      const root = rootOf(chord)!
      const thirds = pureOffsets(chord, root).filter((_, index) => (chord[index]! - root + 48) % 12 === 4)
      expect(thirds.length).toBe(1)
      for (const { offset } of thirds) expectWithin(offset, -14, 0.5)
    }
  })

  it('leaves the root and its octaves alone', () => {
    expect(pureOffsets([43, 55, 31], 43).map(({ offset }) => offset)).toEqual([0, 0, 0])
  })

  it('tunes a seventh as asked', () => {
    const offset = (seventh: '9/5' | '16/9' | '7/4') => pureOffsets([53], 43, seventh)[0]!.offset
    expectWithin(offset('9/5'), 17.5963, 6e-5)
    expectWithin(offset('16/9'), -3.91, 1e-3)
    expectWithin(offset('7/4'), -31.1741, 6e-5)
  })

  it('spans octaves both ways in lowest terms', () => {
    expect(pureRatio(16)).toEqual({ above: 5, below: 2 })
    expect(pureRatio(12)).toEqual({ above: 2, below: 1 })
    expect(pureRatio(-5)).toEqual({ above: 3, below: 4 })
    expect(pureRatio(-12)).toEqual({ above: 1, below: 2 })
    expect(pureRatio(24)).toEqual({ above: 4, below: 1 })
  })
})

describe('rootOf', () => {
  it.each([
    ['G D G', [43, 50, 55], 43],
    ['G D G B', [43, 50, 55, 59], 43],
    ['D G B D', [50, 55, 59, 62], 55],
    ['G B D', [55, 59, 62], 55],
    ['gDGBD', [67, 50, 55, 59, 62], 55],
    ['A C E', [45, 48, 52], 45],
    ['D A D', [38, 45, 50], 38],
    ['D A A', [50, 57, 57], 50],
    ['G B', [43, 47], 43],
    ['B G', [47, 55], 55],
    ['G B D F', [43, 47, 50, 53], 43],
    ['C E G B♭', [48, 52, 55, 58], 48],
    ['E C', [52, 48], 48],
    ['A', [45], 45],
    ['G G', [43, 55], 43],
    ['E G C', [52, 55, 60], 60],
  ])('finds it in %s', (_, chord, root) => expect(rootOf(chord)).toBe(root))

  // Any text on harmony: of two notes the root is the lower of a third, fifth or seventh, the upper of their inversions.
  it.each([
    [1, null],
    [2, 45],
    [3, 43],
    [4, 43],
    [5, 48],
    [6, null],
    [7, 43],
    [8, 51],
    [9, 52],
    [10, 43],
    [11, null],
    [12, 43],
  ])('of G and %i semitones over it is %s', (semitones, root) => {
    expect(rootOf([43, 43 + semitones])).toBe(root)
  })

  it('finds none in a guitar or a uke', () => {
    expect(rootOf([40, 45, 50, 55, 59, 64])).toBeNull()
    expect(rootOf([67, 60, 64, 69])).toBeNull()
    expect(rootOf([])).toBeNull()
  })
})

describe('beats', () => {
  // Ellis, as above: |3 f1 − 2 f2| for A3 and a tempered E4.
  it('counts those of a tempered fifth', () => {
    expectWithin(beatsBetween(220, hertzOf(64))!, 0.7449, 1e-4)
    expectWithin(beatsBetween(hertzOf(64), 220)!, 0.7449, 1e-4)
  })

  it('finds none where the interval is pure', () => {
    expect(beatsBetween(200, 300)).toBe(0)
    expect(beatsBetween(200, 500)).toBe(0)
    expect(beatsBetween(200, 200)).toBe(0)
    expectWithin(beatsOfNeighbours([98, 147, 196, 245])[2]!, 0, 1e-9)
  })

  it('counts plainly for two strings that should agree', () =>
    expectWithin(beatsBetween(110, 111.5)!, 1.5, 1e-12))

  it('says nothing of intervals whose partials nobody hears', () => {
    expect(beatsBetween(200, hertzOf(60))).not.toBeNull()
    expect(beatsBetween(hertzOf(60), hertzOf(66))).toBeNull()
    expect(beatsBetween(hertzOf(60), hertzOf(61))).toBeNull()
  })
})
