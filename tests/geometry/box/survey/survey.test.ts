import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { lengthOf } from '../../../../geometry/box/survey/adjust.ts'
import { DISTANCES, type Distance } from '../../../../geometry/box/survey/distances.ts'
import {
  check,
  heightsOf,
  readingsOf,
  type Survey,
  sentenceOf,
  slipsOf,
  solve,
  squarenessOf,
  surveyOf,
} from '../../../../geometry/index.ts'
import { designOf, type Stated } from '../../../support/designs.ts'

/** 240 × 180 is 60 times 4 and 3; its diagonals are 300. */
const SQUARE: Record<Distance, number[]> = {
  bass: [240],
  treble: [240],
  neckEnd: [180],
  tailEnd: [180],
  diagonalFromBass: [300],
  diagonalFromTreble: [300],
}

const boxOf = (survey: Stated, box: Stated = {}) => designOf({ box: { ...box, survey } }).box

function surveyed(survey: Stated, graduation = 1): Survey {
  const result = surveyOf(boxOf(survey), graduation)
  if (!result?.ok) throw new Error(`these readings make no box: ${JSON.stringify(result)}`)
  return result.survey
}

const slips = (survey: Stated) => {
  const box = boxOf(survey)
  const result = surveyOf(box, 1)
  if (!result || !box.survey) throw new Error('nothing was read')
  return slipsOf(result, readingsOf(box.survey), box, 0.5)
}

const words = (rule: string, survey: Stated, more: Stated = {}) => {
  const layout = solve(designOf({ ...more, box: { survey } }))
  return check(layout)
    .filter((one) => one.rule === rule)
    .map((one) => sentenceOf(one, layout))
    .join(' ')
}

describe('a survey', () => {
  test('of a square box finds it square, and agrees', () => {
    const survey = surveyed(SQUARE)
    const { worst, overLength, diagonals } = squarenessOf(survey)
    expect(Math.abs(worst.angle - Math.PI / 2)).toBeLessThan(1e-9)
    expect(overLength).toBeLessThan(1e-6)
    expect(diagonals).toBeCloseTo(0, 9)
    expect(survey).toMatchObject({ redundancy: 1, scatter: 1, disagreement: null, assumptions: [] })
  })

  test('is none where nothing was read, and then nothing changes', () => {
    expect(surveyOf(designOf().box, 1)).toBeNull()
    expect(surveyOf(boxOf({}), 1)).toBeNull()
    const { real, panels } = solve(designOf({ box: { survey: {} } }))
    expect(real).toBeNull()
    expect(panels.lid.outline).toEqual(solve(designOf()).panels.lid.outline)
  })

  test('repeated readings make the standard error smaller by the root of their number', () => {
    const once = surveyed(SQUARE).distances.bass.standardError
    const four = surveyed(
      Object.fromEntries(DISTANCES.map((of) => [of, [0, 1, 2, 3].map(() => SQUARE[of][0])])),
    ).distances.bass.standardError
    expect(four).toBeCloseTo(once / 2, 9)
  })

  test('of one condition: the standard error of a side falls from σ by what the others know of it', () => {
    // Redundancy number of a side of 240: 240² over 2 (300² + 240² + 180²); the rest of σ² remains.
    const share = 240 ** 2 / (2 * (300 ** 2 + 240 ** 2 + 180 ** 2))
    expect(surveyed(SQUARE).distances.bass.standardError).toBeCloseTo(0.5 * Math.sqrt(1 - share), 9)
  })

  test('a coarser rule says so in every standard error', () => {
    const fine = surveyed(SQUARE, 1).distances.treble.standardError
    expect(surveyed(SQUARE, 2).distances.treble.standardError).toBeCloseTo(2 * fine, 9)
  })
})

describe('missing readings', () => {
  test.each(DISTANCES)(
    'without %s the other five still make the box, and say how sure they are of it',
    (of) => {
      const { distances, assumptions, redundancy } = surveyed({ ...SQUARE, [of]: [] })
      expect(distances[of].adjusted).toBeCloseTo(SQUARE[of][0] ?? 0, 6)
      expect(distances[of].readings).toBe(0)
      // σ times the root of the other squared lengths over its own: what the condition equation makes of five errors.
      const own = SQUARE[of][0] ?? 0
      expect(distances[of].standardError).toBeCloseTo((0.5 * Math.sqrt(360000 - own ** 2)) / own, 5)
      expect([assumptions.length, redundancy]).toEqual([0, 0])
    },
  )

  test('without both diagonals the corners are taken as square, to within a few millimetres', () => {
    const survey = surveyed({ ...SQUARE, diagonalFromBass: [], diagonalFromTreble: [] })
    expect(survey.assumptions).toEqual([{ of: 'diagonalFromBass', as: 'opposite' }])
    expect(survey.distances.diagonalFromBass.adjusted).toBeCloseTo(300, 6)
    // Half of a difference of 3 mm between the diagonals goes to each.
    expect(survey.distances.diagonalFromBass.standardError).toBeGreaterThan(1.4)
    expect(squarenessOf(survey).overLengthError).toBeGreaterThan(1)
  })

  test('one reading is enough to begin with: the rest is as stated', () => {
    const { distances, assumptions } = surveyed({ bass: [250] })
    expect(distances.bass.adjusted).toBeCloseTo(250, 6)
    expect(distances.treble.adjusted).toBeCloseTo(250, 6)
    expect(distances.neckEnd.adjusted).toBeCloseTo(180, 6)
    expect(assumptions.map((one) => one.of)).toEqual(['treble', 'neckEnd', 'tailEnd', 'diagonalFromBass'])
  })
})

describe('the reading that disagrees', () => {
  const twice = Object.fromEntries(DISTANCES.map((of) => [of, [...SQUARE[of], ...SQUARE[of]]]))

  test('is named where there are enough others', () => {
    const { disagreement } = surveyed({ ...twice, treble: [240, 240, 247] })
    expect(disagreement?.suspects).toMatchObject([{ of: 'treble', index: 2 }])
    expect(disagreement?.suspects[0]?.excess).toBeCloseTo(7, 0)
    expect(words('survey-agrees', { ...twice, treble: [240, 240, 247] })).toMatch(
      /^The treble side, read as 247\.0 mm, seems 7\.\d mm too long for the rest\. Measure it again\.$/,
    )
  })

  test('cannot be told among six that were taken once, and no name is guessed', () => {
    const { disagreement } = surveyed({ ...SQUARE, diagonalFromBass: [306] })
    expect(disagreement?.suspects.map((one) => one.of).sort()).toEqual([...DISTANCES].sort())
    expect(words('survey-agrees', { ...SQUARE, diagonalFromBass: [306] })).toMatch(
      /cannot be told which is off/,
    )
  })

  test('readings that scatter more than the rule explains make every standard error larger', () => {
    const apart = Object.fromEntries(
      DISTANCES.map((of) => [of, [-1.2, 0, 1.2].map((off) => (SQUARE[of][0] ?? 0) + off)]),
    )
    const survey = surveyed(apart)
    expect(survey.scatter).toBeGreaterThan(1.5)
    const even = surveyed(
      Object.fromEntries(DISTANCES.map((of) => [of, [0, 0, 0].map(() => SQUARE[of][0] ?? 0)])),
    )
    expect(survey.distances.bass.standardError / even.distances.bass.standardError).toBeCloseTo(
      survey.scatter,
      6,
    )
  })
})

describe('slips are recognised and asked about, never mended', () => {
  test.each([
    ['an inch too long', 'bass', 265.4, 240],
    ['an inch too short', 'tailEnd', 154.6, 180],
    ['inches for millimetres', 'neckEnd', 180 / 25.4, 180],
    ['centimetres for millimetres', 'diagonalFromBass', 30, 300],
  ] as const)('%s', (kind, of, read, meant) => {
    const stated = { ...SQUARE, [of]: [read] }
    const [likeliest] = slips(stated)
    expect(likeliest).toMatchObject({ kind, reading: { of, index: 0 } })
    expect(likeliest?.meant).toBeCloseTo(meant, 6)
    expect(boxOf(stated).survey?.[of]).toEqual([read])
  })

  test('millimetres for inches', () => {
    // 60.4 mm written as inches is 1534 mm.
    const small = {
      bass: [80, 80],
      treble: [80],
      neckEnd: [60],
      tailEnd: [60],
      diagonalFromBass: [100],
      diagonalFromTreble: [100],
    }
    expect(slips({ ...small, neckEnd: [60 * 25.4] })[0]).toMatchObject({
      kind: 'millimetres for inches',
      reading: { of: 'neckEnd' },
    })
  })

  test('the question stands in the sentence, in the builder’s unit', () => {
    expect(words('survey-agrees', { ...SQUARE, bass: [265.4] })).toMatch(
      /The bass side was read as 265\.4 mm; an inch less, 240\.0 mm, would agree with the rest/,
    )
    expect(
      words('survey-agrees', { ...SQUARE, bass: [265.4] }, { units: { display: 'inches', fraction: 32 } }),
    ).toMatch(/an inch less, 9 7\/16 in/)
  })

  test('with few readings two sides an inch apart are asked about too', () => {
    expect(slips({ bass: [265.4], treble: [240] }).map((one) => one.kind)).toContain('an inch too long')
  })

  test('a box that is really crooked is not talked out of it', () => {
    expect(slips({ ...SQUARE, diagonalFromBass: [304], diagonalFromTreble: [295.9] })).toEqual([])
    expect(slips({ bass: [241], treble: [240] })).toEqual([])
  })
})

describe('readings that make no box', () => {
  test('a diagonal longer than two sides together', () => {
    const survey = { ...SQUARE, diagonalFromBass: [430] }
    expect(surveyOf(boxOf(survey), 1)).toMatchObject({
      ok: false,
      trouble: { why: 'no triangle', long: 'diagonalFromBass' },
    })
    expect(words('survey-makes-box', survey)).toMatch(
      /^The diagonal from neck-end bass is read 10\.0 mm longer than the \w+ (side|end) and the \w+ (side|end) together, which no box has\./,
    )
  })

  test('the layout then stands as stated, and nothing is thrown', () => {
    const layout = solve(designOf({ box: { survey: { ...SQUARE, bass: [10], treble: [4000] } } }))
    expect(layout.real).toBeNull()
    expect(check(layout).find((one) => one.rule === 'survey-makes-box')?.grade).toBe('stop')
  })

  test('any readings at all give a box, a trouble or nothing', () => {
    const list = fc.array(fc.double({ min: 1, max: 5000, noNaN: true }), { maxLength: 3 })
    fc.assert(
      fc.property(fc.record(Object.fromEntries(DISTANCES.map((of) => [of, list]))), (survey) => {
        const result = surveyOf(boxOf(survey), 1)
        if (!result?.ok) return
        for (const of of DISTANCES) {
          expect(result.survey.distances[of].adjusted).toBeGreaterThan(0)
          expect(result.survey.distances[of].standardError).toBeGreaterThanOrEqual(0)
        }
      }),
      { numRuns: 200 },
    )
  })
})

describe('wall heights', () => {
  test('three corners make a plane and the fourth the twist', () => {
    const heights = heightsOf(
      boxOf({
        heightNeckBass: [50, 51],
        heightNeckTreble: [52],
        heightTailBass: [49],
        heightTailTreble: [53],
      }),
      0.5,
    )
    // 53 - (49 + 52 - 50.5), and half a millimetre of each, of the first over the root of two
    expect(heights?.twist?.by).toBeCloseTo(2.5, 12)
    expect(heights?.twist?.standardError).toBeCloseTo(0.5 * Math.sqrt(3.5), 12)
  })

  test('fewer than four say nothing of it', () => {
    expect(heightsOf(boxOf({ heightNeckBass: [50] }), 0.5)).toMatchObject({ twist: null })
    expect(heightsOf(boxOf({ bass: [240] }), 0.5)).toBeNull()
  })
})

/** Normal noise from two even draws: G. E. P. Box and M. E. Muller, 1958. */
const noise = (a: number, b: number) => Math.sqrt(-2 * Math.log(a)) * Math.cos(2 * Math.PI * b)

describe('statistics', () => {
  /** 99.73 % of a normal distribution lies within three standard deviations, 68.27 % within one (normal tables). */
  test('boxes drawn from random corners and noisy readings are recovered as often as the normal distribution says', () => {
    const even = fc.noBias(fc.integer({ min: 1, max: 2 ** 30 })).map((one) => one / 2 ** 30)
    const draws = fc.sample(
      fc.record({
        long: fc.integer({ min: 150, max: 500 }),
        wide: fc.integer({ min: 100, max: 300 }),
        corners: fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 8, maxLength: 8 }),
        times: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 6, maxLength: 6 }),
        noise: fc.array(even, { minLength: 36, maxLength: 36 }),
      }),
      { seed: 240, numRuns: 1500 },
    )
    let dimensions = 0
    let [withinOne, withinThree] = [0, 0]
    for (const { long, wide, corners, times, noise: even } of draws) {
      const off = (index: number) => (corners[index] ?? 0) / 10
      const truth = [
        { x: off(0), y: off(1) },
        { x: long + off(2), y: off(3) },
        { x: long + off(4), y: wide + off(5) },
        { x: off(6), y: wide + off(7) },
      ]
      let drawn = 0
      const sigma = 0.5
      const survey = Object.fromEntries(
        DISTANCES.map((of, index) => [
          of,
          Array.from({ length: times[index] ?? 1 }, () => {
            const [a = 0.5, b = 0.5] = even.slice(drawn, drawn + 2)
            drawn += 2
            return lengthOf(of, truth) + sigma * noise(a, b)
          }),
        ]),
      )
      const { distances } = surveyed(survey, 2 * sigma)
      for (const of of DISTANCES) {
        const { adjusted, standardError } = distances[of]
        const apart = Math.abs(adjusted - lengthOf(of, truth)) / standardError
        dimensions += 1
        if (apart <= 1) withinOne += 1
        if (apart <= 3) withinThree += 1
      }
    }
    expect(dimensions).toBe(9000)
    // Six dimensions of one box hang together, so the spread of these shares is that of 1500 boxes: 4 of its own σ.
    expect(Math.abs(withinOne / dimensions - 0.6827)).toBeLessThan(4 * Math.sqrt((0.6827 * 0.3173) / 1500))
    expect(withinThree / dimensions).toBeGreaterThan(0.9973 - 4 * Math.sqrt((0.9973 * 0.0027) / 1500))
    expect(withinThree / dimensions).toBeLessThan(1)
  })

  test('right readings are called wrong about once in a thousand, as the critical value promises', () => {
    const even = fc.noBias(fc.integer({ min: 1, max: 2 ** 30 })).map((one) => one / 2 ** 30)
    const draws = fc.sample(fc.array(even, { minLength: 12, maxLength: 12 }), { seed: 329, numRuns: 3000 })
    const wrong = draws.filter((list) => {
      const survey = Object.fromEntries(
        DISTANCES.map((of, index) => [
          of,
          [(SQUARE[of][0] ?? 0) + 0.5 * noise(list[2 * index] ?? 0.5, list[2 * index + 1] ?? 0.5)],
        ]),
      )
      return surveyed(survey).disagreement !== null
    }).length
    // One condition, one test: 3000 times 0.001, within 4 of the root of that.
    expect(Math.abs(wrong - 3)).toBeLessThan(4 * Math.sqrt(3))
  })
})
