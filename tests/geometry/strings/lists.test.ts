/** Lists that builders choose from: gauges on offer, tunings by name, partials that can be heard. */
import { expect, test } from 'vitest'
import { usualStock } from '../../../geometry/strings/gauges.ts'
import { beatsBetween } from '../../../geometry/strings/just.ts'
import { nameOf } from '../../../geometry/strings/pitch.ts'
import { TUNINGS, tunedTo } from '../../../geometry/strings/tunings.ts'

test('gauges on offer rise without repeats, plain ones first and none of them thicker than .020', () => {
  const mils = usualStock().map(({ name }) => Number(name.replace(/[^\d]/g, '')))
  const wound = mils.findIndex((one, index) => index > 0 && one <= (mils[index - 1] ?? 0))
  expect(mils[wound - 1]).toBe(20)
  for (const list of [mils.slice(0, wound), mils.slice(wound)])
    for (const [index, one] of list.entries())
      if (index > 0) expect(one).toBeGreaterThan(list[index - 1] ?? 0)
})

/** Semitones over the root of equal temperament; an octave counts as the root. */
const SEMITONES: Readonly<Record<string, number>> = {
  root: 0,
  octave: 0,
  third: 4,
  fifth: 7,
  'minor seventh': 10,
}

test('a tuning’s steps are what its name says', () => {
  let told = 0
  for (const { title, steps } of TUNINGS) {
    const words = (title.split(':')[0] ?? '').toLowerCase().split(/, | and /)
    const named = words.map((word) => SEMITONES[word])
    if (named.length !== steps.length || named.some((one) => one === undefined)) continue
    const [first = 0] = named
    expect({ title, steps: steps.map((step) => step % 12) }).toEqual({
      title,
      steps: named.map((one) => ((one ?? 0) - first + 12) % 12),
    })
    told += 1
  }
  expect(told).toBeGreaterThanOrEqual(6)
  expect(TUNINGS.find(({ title }) => title.startsWith('Root and two fifths'))?.steps).toEqual([0, 7, 7])
})

test('the eighth partial is still heard: a minor sixth of 8 to 5', () => {
  // |8 × 100 − 5 × 160.5| = 2.5.
  expect(beatsBetween(100, 160.5)).toBeCloseTo(2.5, 9)
})

// Sets as they are sold, thousandths of an inch; common practice, from memory. What is wound is marked.
test.each([
  ['light electric', '9 11 16 24w 32w 42w'],
  ['regular electric', '10 13 17 26w 36w 46w'],
  ['heavier electric', '11 14 18 28w 38w 48w'],
  ['light acoustic', '12 16 24w 32w 42w 54w'],
  ['medium acoustic', '13 17 26w 36w 46w 56w'],
  ['five-string banjo', '10 12 14 22w 10'],
  ['four of a bass', '45w 65w 85w 105w'],
  ['light four of a bass', '40w 60w 80w 100w'],
  ['heavier four of a bass', '50w 70w 85w 105w'],
  ['short bass', '45w 65w 75w 95w'],
  ['tenor in fifths', '9 15 20w 30w'],
  ['singles', '8 15 19 20 34w 40w 44w 52w 90w'],
])('%s: %s is on offer', (_, set) => {
  const names = new Set(usualStock().map(({ name }) => name))
  for (const gauge of set.split(' '))
    expect([...names]).toContain(`.${gauge.endsWith('w') ? gauge.padStart(4, '0') : gauge.padStart(3, '0')}`)
})

test('every gauge of the trade is a whole even step or one that a set calls for', () => {
  const wound = usualStock().flatMap(({ name }) =>
    name.endsWith('w') ? [Number.parseInt(name.slice(1), 10)] : [],
  )
  // Up to .056 in steps of two, and .045 for the thinnest of a bass; from .060 in fives. Common practice, from memory.
  expect(wound.filter((mils) => mils <= 56 && mils % 2 === 1)).toEqual([45])
  expect(wound.filter((mils) => mils > 56 && mils % 5 !== 0)).toEqual([])
  expect([wound[0], wound.at(-1)]).toEqual([20, 105])
})

// OpenStax, University Physics, Volume 1, sec. 16.3, for the guitar; MiniScript language wiki, NoteFreq, for the bass; the
// others common practice, no source.
test.each([
  ['guitar', 'E2 A2 D3 G3 B3 E4'],
  ['guitar-top-four', 'D3 G3 B3 E4'],
  ['guitar-top-three', 'G3 B3 E4'],
  ['bass', 'E1 A1 D2 G2'],
  ['fifths', 'C3 G3 D4 A4'],
  ['ukulele', 'G4 C4 E4 A4'],
  ['plectrum', 'C3 G3 B3 D4'],
  ['five-string-banjo', 'G4 D3 G3 B3 D4'],
  ['open-six-fifth', 'D2 G2 D3 G3 B3 D4'],
  ['open-six-root', 'D2 A2 D3 F♯3 A3 D4'],
  ['root-fifth-octave', 'G2 D3 G3'],
  ['root-third-fifth', 'G3 B3 D4'],
  ['open-four', 'G2 D3 G3 B3'],
  ['root-fifth-fifth', 'D3 A3 A3'],
])('%s is %s in its own key', (name, pitches) => {
  const tuning = TUNINGS.find((one) => one.name === name)
  expect(
    tuning &&
      tunedTo(tuning)
        .map((midi) => nameOf(midi))
        .join(' '),
  ).toBe(pitches)
})

test('every key is one of the letters without a sharp, sung by a string between E1 and G4', () => {
  for (const { name, keys } of TUNINGS)
    for (const key of keys) {
      expect({ name, key: nameOf(key) }).toEqual({ name, key: expect.stringMatching(/^[CDEGA]\d$/) })
      expect(key).toBeGreaterThanOrEqual(28)
      expect(key).toBeLessThanOrEqual(67)
    }
})
