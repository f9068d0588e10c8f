import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Avoided, SEAM_CLEARANCE, sheetsFor, spansAlong } from '../../../exporters/pdf/seams.ts'

const cases = fc.record({
  from: fc.integer({ min: -500, max: 500 }),
  length: fc.integer({ min: 5, max: 2500 }),
  window: fc.integer({ min: 110, max: 560 }),
  overlap: fc.integer({ min: 6, max: 40 }),
  avoided: fc.array(
    fc.record({ at: fc.integer({ min: -500, max: 3000 }), reach: fc.integer({ min: 0, max: 30 }) }),
    { maxLength: 30 },
  ),
})

describe('spansAlong', () => {
  test('together the sheets cover the whole, none is wider than the window, neighbours share the overlap', () => {
    fc.assert(
      fc.property(cases, ({ from, length, window, overlap, avoided }) => {
        const to = from + length
        const { spans } = spansAlong(from, to, window, overlap, avoided)
        expect(spans[0]?.from).toBe(from)
        expect(spans.at(-1)?.to).toBe(to)
        for (const [index, span] of spans.entries()) {
          expect(span.to - span.from).toBeLessThanOrEqual(window + 1e-9)
          const next = spans[index + 1]
          if (next === undefined) continue
          expect(span.to - next.from).toBeCloseTo(overlap, 9)
          expect(next.from).toBeGreaterThan(span.from)
        }
      }),
    )
  })

  test('no sheet more than the arithmetic asks for, but one where a seam has no other place', () => {
    fc.assert(
      fc.property(cases, ({ from, length, window, overlap, avoided }) => {
        const { spans } = spansAlong(from, from + length, window, overlap, avoided)
        const fewest = sheetsFor(length, window, overlap)
        expect(spans.length).toBeGreaterThanOrEqual(fewest)
        expect(spans.length).toBeLessThanOrEqual(fewest + 1)
        expect(spansAlong(from, from + length, window, overlap, []).spans).toHaveLength(fewest)
      }),
    )
  })

  test('what it says about seams through centres is so', () => {
    fc.assert(
      fc.property(cases, ({ from, length, window, overlap, avoided }) => {
        const { spans, hits } = spansAlong(from, from + length, window, overlap, avoided)
        const near = spans
          .slice(1)
          .filter((span) => avoided.some(({ at }) => Math.abs(at - span.from) < SEAM_CLEARANCE))
        expect(near).toHaveLength(hits)
      }),
    )
  })

  // ceil((L - overlap) / (window - overlap)): 600 mm on A4 with margins and overlap of 10 mm, 277 mm printable
  // lying and 190 upright.
  test.each([
    [600, 277, 10, 3],
    [600, 190, 10, 4],
    [277, 277, 10, 1],
    [278, 277, 10, 2],
    [544, 277, 10, 2],
  ])('%d mm on windows of %d mm with an overlap of %d mm: %d sheets', (length, window, overlap, count) => {
    expect(sheetsFor(length, window, overlap)).toBe(count)
  })

  test('frets 25.4 mm apart: no seam along one, though the even place lies on one', () => {
    const frets: Avoided[] = Array.from({ length: 20 }, (_, index) => ({ at: index * 25, reach: 0 }))
    const { spans, hits } = spansAlong(0, 500, 260, 10, frets)
    expect(hits).toBe(0)
    expect(spans.length).toBe(2)
    for (const fret of frets)
      expect(Math.abs((spans[1]?.from ?? 0) - fret.at)).toBeGreaterThanOrEqual(SEAM_CLEARANCE)
  })

  test('an opening is not cut where the sheets have room to spare', () => {
    const { spans } = spansAlong(0, 300, 200, 10, [{ at: 145, reach: 30 }])
    expect(Math.abs((spans[1]?.from ?? 145) - 145)).toBeGreaterThan(30)
  })

  test('misuse throws with the numbers', () => {
    expect(() => spansAlong(0, 100, 15, 10, [])).toThrow('15 mm with an overlap of 10 mm')
    expect(() => spansAlong(0, Number.NaN, 200, 10, [])).toThrow('NaN')
  })
})
