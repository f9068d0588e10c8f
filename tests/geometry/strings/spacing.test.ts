import { describe, expect, test } from 'vitest'
import { holesServing, inchesToMm, solve, stringAt } from '../../../geometry/index.ts'
import { gaugesFor, holeCentres, stringCentres } from '../../../geometry/strings/spacing.ts'
import { designOf } from '../../support/designs.ts'

describe('equal centres', () => {
  // Common practice, no source: four strings 11/16 in from centre to centre take 2 1/16 in over all.
  test('four strings 11/16 in apart span 2 1/16 in', () => {
    const centres = stringCentres(4, inchesToMm(2 + 1 / 16), 'equal centres', [])
    expect(centres).toHaveLength(4)
    for (let n = 1; n < 4; n++)
      expect((centres[n] ?? 0) - (centres[n - 1] ?? 0)).toBeCloseTo(inchesToMm(11 / 16), 12)
    expect(inchesToMm(2 + 1 / 16)).toBeCloseTo(3 * inchesToMm(11 / 16), 12)
  })

  test.each([2, 3, 4, 5, 6, 12])(
    '%d strings lie alike on both sides of the centreline, bass first',
    (count) => {
      const centres = stringCentres(count, 50, 'equal centres', [])
      expect(centres[0]).toBe(-25)
      expect(centres.at(-1)).toBe(25)
      centres.forEach((centre, index) => {
        expect(centre).toBeCloseTo(-(centres[count - 1 - index] ?? Number.NaN), 12)
      })
      expect([...centres].sort((a, b) => a - b)).toEqual(centres)
    },
  )

  test('a single string lies on the centreline, whatever its span', () => {
    expect(stringCentres(1, 50, 'equal centres', [])).toEqual([0])
    expect(stringCentres(1, 50, 'equal gaps', [1])).toEqual([0])
  })
})

describe('equal gaps', () => {
  const edges = (centres: readonly number[], gauges: readonly number[]) =>
    centres
      .slice(1)
      .map(
        (centre, index) =>
          centre - (gauges[index + 1] ?? 0) / 2 - ((centres[index] ?? 0) + (gauges[index] ?? 0) / 2),
      )

  test('leave the same room between the edges of thick and thin strings', () => {
    const gauges = [1.35, 1.07, 0.66, 0.43, 0.33]
    const centres = stringCentres(5, 44, 'equal gaps', gauges)
    const room = edges(centres, gauges)
    // 44 mm from first to last centre, less half of the outer and all of the inner strings, in four.
    const wanted = (44 - 1.35 / 2 - 1.07 - 0.66 - 0.43 - 0.33 / 2) / 4
    for (const one of room) expect(one).toBeCloseTo(wanted, 12)
    expect(centres[0]).toBe(-22)
    expect(centres.at(-1)).toBeCloseTo(22, 12)
  })

  test('are equal centres where all strings are alike', () => {
    const gauges = [0.4, 0.4, 0.4, 0.4]
    const [gaps, centres] = (['equal gaps', 'equal centres'] as const).map((how) =>
      stringCentres(4, 30, how, gauges),
    )
    gaps?.forEach((one, index) => {
      expect(one).toBeCloseTo(centres?.[index] ?? Number.NaN, 12)
    })
  })
})

describe('gauges', () => {
  test('the last one stated stands for those that are missing, and more than the strings are left', () => {
    expect(gaugesFor([1, 0.8], 4)).toEqual([1, 0.8, 0.8, 0.8])
    expect(gaugesFor([1, 0.8, 0.6], 2)).toEqual([1, 0.8])
  })

  test('without any, all strings are alike', () => {
    const gauges = gaugesFor([], 3)
    expect(new Set(gauges).size).toBe(1)
    expect(gauges[0]).toBeGreaterThan(0)
  })
})

describe('holes of a tail strip', () => {
  // Common practice, no source: five equal holes serve four strings by leaving out the middle one, and three by
  // every second one.
  test('five serve five, four, three, two and one', () => {
    expect(holesServing(5, 5)).toEqual([0, 1, 2, 3, 4])
    expect(holesServing(5, 4)).toEqual([0, 1, 3, 4])
    expect(holesServing(5, 3)).toEqual([0, 2, 4])
    expect(holesServing(5, 2)).toEqual([0, 4])
    expect(holesServing(5, 1)).toEqual([2])
  })

  test('a row serves every count up to its own: rising, none twice, the outer ones first, alike on both sides', () => {
    for (let holes = 1; holes <= 24; holes++) {
      for (let strings = 1; strings <= holes; strings++) {
        const serving = holesServing(holes, strings).map((hole) => hole ?? Number.NaN)
        expect(serving).toHaveLength(strings)
        for (let n = 1; n < strings; n++) expect(serving[n]).toBeGreaterThan(serving[n - 1] ?? Number.NaN)
        if (strings > 1) expect([serving[0], serving.at(-1)]).toEqual([0, holes - 1])
        // An even row has no hole for a middle string.
        if (holes % 2 === 1 || strings % 2 === 0)
          expect(serving.map((hole) => holes - 1 - hole).reverse()).toEqual(serving)
      }
    }
  })

  test('fewer than the strings go to the middle strings', () => {
    expect(holesServing(2, 4)).toEqual([undefined, 0, 1, undefined])
    expect(holesServing(1, 3)).toEqual([undefined, 0, undefined])
    expect(holesServing(2, 3)).toEqual([0, 1, undefined])
  })

  test('are as far apart as stated, and one alone is on the centreline', () => {
    expect(holeCentres(5, 40)).toEqual([-20, -10, 0, 10, 20])
    expect(holeCentres(1, 40)).toEqual([0])
  })
})

describe('the strings of a design', () => {
  const { strings, saddle } = solve(designOf({ strings: { count: 4, gauges: [1, 0.8, 0.6, 0.4] } }))

  test('are numbered as the trade counts, the treble string first', () => {
    expect(strings.map((string) => string.number)).toEqual([4, 3, 2, 1])
    expect(strings.map((string) => string.gauge)).toEqual([1, 0.8, 0.6, 0.4])
    expect(strings.map((string) => Math.sign(string.yAtNut))).toEqual([-1, -1, 1, 1])
  })

  test('run straight from nut to saddle', () => {
    const [bass] = strings
    if (!bass) throw new Error('no string')
    expect(stringAt(bass, 0, saddle.x)).toBe(-12)
    expect(stringAt(bass, saddle.x, saddle.x)).toBeCloseTo(-13, 12)
    expect(stringAt(bass, saddle.x / 2, saddle.x)).toBeCloseTo(-12.5, 12)
  })

  test('stand as high as board and nut, and as the saddle, say', () => {
    const layout = solve(
      designOf({ neck: { rise: 2 }, board: { thickness: 6 }, nut: { height: 1.5 }, saddle: { height: 14 } }),
    )
    expect(layout.playingTop).toBe(8)
    for (const string of layout.strings) {
      expect(string.zAtNut).toBe(9.5)
      expect(string.zAtSaddle).toBe(14)
    }
  })

  test('run to the holes that serve them, and to none where there are too few', () => {
    const held = solve(designOf({ strings: { count: 4 }, tailpiece: { holes: 5, span: 40 } })).strings
    expect(held.map((string) => string.tail?.y)).toEqual([-20, -10, 10, 20])
    const short = solve(designOf({ strings: { count: 4 }, tailpiece: { holes: 2 } })).strings
    expect(short.map((string) => string.tail?.hole ?? null)).toEqual([null, 0, 1, null])
  })
})
