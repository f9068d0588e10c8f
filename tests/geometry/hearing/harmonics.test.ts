import { describe, expect, test } from 'vitest'
import { harmonicHeard, stoppedLength } from '../../../geometry/index.ts'

const upTo = (most: number) => Array.from({ length: most }, (_, index) => index + 1)

describe('a pickup heard as a point', () => {
  // "Properties of the guitar signal" (forum article with measurements): at a quarter of the string every fourth is missing.
  test('at a quarter of the string harmonics 4, 8, 12 and 16 are missing, and no others', () => {
    expect(upTo(16).filter((n) => harmonicHeard(n, 1 / 4) < 1e-9)).toEqual([4, 8, 12, 16])
  })

  // Standing waves on a string: at x/L = p/q in lowest terms the first still harmonic is q.
  test.each([
    [1 / 2, 2],
    [1 / 3, 3],
    [1 / 5, 5],
    [1 / 8, 8],
    [3 / 8, 8],
  ])('at %f of the string the first that is missing is %i', (share, first) => {
    expect(upTo(16).find((n) => harmonicHeard(n, share) < 1e-9)).toBe(first)
  })

  // The same article measures a pickup 6.0625 in from the saddle of a 25.5 in scale; the figures are |sin(n π x / L)|.
  test.each([
    [1, 0.679366],
    [2, 0.997037],
    [3, 0.783885],
    [4, 0.153392],
    [5, 0.558767],
    [8, 0.303153],
    [21, 0.023098],
  ])('6.0625 in from the saddle of a 25.5 in scale harmonic %i is heard by %f', (n, heard) => {
    expect(harmonicHeard(n, 6.0625 / 25.5)).toBeCloseTo(heard, 5)
  })

  // Stopping shortens the string and not the distance to the saddle: 160 of 640 mm is a half at the octave.
  test.each([
    [5, 0.33371],
    [7, 0.374577],
    [12, 0.5],
  ])('stopped %i semitones up, a quarter becomes %f of the string', (semitones, share) => {
    expect(0.25 / stoppedLength(semitones)).toBeCloseTo(share, 5)
  })
})

describe('a pickup that hears a length of string', () => {
  test('is the mean of what all its points hear, taken by sums', () => {
    for (const [n, share, heard] of [
      [1, 0.1, 0.04],
      [7, 0.21, 0.03],
      [16, 0.13, 0.1],
    ] as const) {
      const steps = 20000
      const sum = upTo(steps).reduce(
        (total, step) => total + Math.sin(n * Math.PI * (share + heard * ((step - 0.5) / steps - 0.5))),
        0,
      )
      expect(harmonicHeard(n, share, heard)).toBeCloseTo(Math.abs(sum / steps), 7)
    }
  })

  test('is deaf to a harmonic whose whole wave fits into it', () => {
    // A wave of harmonic n is 2 L / n long.
    expect(harmonicHeard(10, 0.23, 2 / 10)).toBeCloseTo(0, 9)
  })
})

test.each([
  [0, 0.1, 0],
  [1.5, 0.1, 0],
  [1, Number.NaN, 0],
  [1, 0.1, -1],
])('harmonic %f at %f over %f is misuse', (n, share, heard) => {
  expect(() => harmonicHeard(n, share, heard)).toThrow(RangeError)
})
