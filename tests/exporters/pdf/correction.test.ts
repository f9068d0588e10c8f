import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { correctionFrom, correctionLine, judged } from '../../../exporters/pdf/correction.ts'

describe('correctionFrom', () => {
  // By hand: 150 / 149.2 = 1.005362, 150 / 142.5 = 1.052632.
  test('true length over measured length, each way by itself', () => {
    const reading = correctionFrom(149.2, 150.3, 150)
    expect(reading).toEqual({
      ok: true,
      correction: { x: expect.closeTo(1.005362, 6), y: expect.closeTo(0.998004, 6) },
    })
  })

  test('over 5 % it asks whether fit to page was on', () => {
    const reading = correctionFrom(142.5, 150, 150)
    expect(reading).toMatchObject({ ok: true, correction: { x: expect.closeTo(1.052632, 6) } })
    expect(reading.ok && reading.question).toMatch(/5\.3 % along X: was "fit to page" on\?/)
    expect(correctionFrom(96, 100)).not.toHaveProperty('question')
  })

  test.each([
    [80, 100, /off by 25 % along X/],
    [100, 112, /off by 10\.7 % along Y/],
    [0, 100, /Bar X measures 0/],
    [100, -3, /Bar Y measures -3/],
    [Number.NaN, 100, /Bar X measures NaN/],
    [100, Number.POSITIVE_INFINITY, /Bar Y measures Infinity/],
  ])('%d and %d are refused with a sentence', (x, y, sentence) => {
    const reading = correctionFrom(x, y)
    expect(reading.ok).toBe(false)
    expect(!reading.ok && reading.sentence).toMatch(sentence)
  })

  test('measured on a corrected print, it corrects that print once more', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.97, max: 1.03, noNaN: true }), (shrink) => {
        // A printer that shrinks: 100 mm come out as 100 * shrink, and corrected as 100 * shrink * factor.
        const first = correctionFrom(100.4 * shrink, 100)
        if (!first.ok) throw new Error(first.sentence)
        const second = correctionFrom(100 * shrink * first.correction.x, 100, 100, first.correction)
        if (!second.ok) throw new Error(second.sentence)
        expect(second.correction.x * shrink).toBeCloseTo(1, 9)
      }),
    )
  })
})

test('a correction that is no number is refused', () => {
  expect(judged({ x: Number.NaN, y: 1 })).toMatchObject({ ok: false, sentence: expect.stringMatching(/X/) })
})

test('the sheet says what was done', () => {
  expect(correctionLine({ x: 1, y: 1 })).toBe('not corrected for a printer')
  expect(correctionLine({ x: 1.005362, y: 0.998 })).toBe('corrected for this printer: X × 1.0054, Y × 0.998')
})
