/**
 * The pull of strings, each by its mass at its pitch: `T = mu (2 L f)^2` (M. Mersenne, "Harmonicorum Libri", 1636), over
 * 635 mm.
 */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { merged, pullOf, strung, weighed } from './breaking/case.ts'
import { graded, to4, told } from './told.ts'

/** Strings of these masses in grams per metre, bass first, all at 300 Hz. */
const masses = (list: readonly number[], ...more: Stated[]): Stated =>
  merged(
    {
      stringing: {
        tuning: list.map(() => '300 Hz'),
        makes: list.map((unitMass) => ({ construction: 'stated', unitMass })),
      },
      strings: { count: list.length, gauges: [0.254] },
    },
    ...more,
  )
const pull = (mass: number) => pullOf(300, mass)
/** From nut to saddle: bass, middle and treble of three strings, 24 over all at the nut and 26 at the saddle. */
const BASS = 'plan (0, -12) to (635, -13)'
const MIDDLE = 'plan (0, 0) to (635, 0)'
const TREBLE = 'plan (0, 12) to (635, 13)'
/** Least strength of .010 in music wire, 387 ksi, on its area. ASTM A228, "Tensile requirements by diameter". */
const BREAKS = 387 * 6.894757293 * (Math.PI / 4) * 0.254 ** 2

const sentence = (rule: string, stated: Stated): string => {
  const layout = solve(designOf(stated))
  const finding = check(layout).find((one) => one.rule === rule)
  if (!finding) throw new Error(`${rule} says nothing`)
  return sentenceOf(finding, layout)
}

describe('a string too slack or too hard', () => {
  test.each([
    ['string-slack', 'stringSlack', 1],
    ['string-high', 'stringHigh', -1],
  ] as const)('%s: just inside and just outside the limit', (rule, limit, side) => {
    const grade = (value: number) => graded(rule, masses([0.4], { limits: { [limit]: value } }))
    expect(grade(pull(0.4) - side * 1e-6)).toEqual(['clear'])
    expect(grade(pull(0.4) + side * 1e-6)).toEqual(['care'])
  })

  test('strings of nylon may be half as slack', () => {
    const nylon = (mass: number) =>
      merged(masses([mass]), {
        stringing: { makes: [{ construction: 'stated', unitMass: mass, material: 'nylon' }] },
      })
    // 20 newtons at 300 Hz are 0.13778 g/m.
    expect(told('string-slack', nylon(0.138))[0]).toMatch(`clear string 1: ${to4(pull(0.138))} of 20,`)
    expect(told('string-slack', nylon(0.137))[0]).toMatch(`care string 1: ${to4(pull(0.137))} of 20,`)
  })
})

describe('the share of what breaks a string', () => {
  const share = (mass: number) => pull(mass) / BREAKS
  const saysOf = (mass: number, limits: Stated = {}) =>
    told('string-breaking', masses([mass], { limits }))[0] ?? ''

  test.each([
    [0.69, 'clear', 0.75],
    [0.71, 'care', 0.75],
    [0.83, 'care', 0.75],
    [0.85, 'stop', 0.9],
  ])('of a string of %d g/m', (mass, grade, limit) => {
    expect(saysOf(mass)).toMatch(`${grade} string 1: `)
    expect(saysOf(mass)).toMatch(` of ${limit}, plan (0, 0) to (635, 0)`)
    expect(Number(/: ([\d.]+) of/.exec(saysOf(mass))?.[1])).toBeCloseTo(share(mass), 2)
  })

  test('just inside and just outside either limit', () => {
    const measured = Number(/: ([\d.]+) of/.exec(saysOf(0.4))?.[1])
    const grade = (stringStrained: number, stringBreaking: number) =>
      saysOf(0.4, { stringStrained, stringBreaking }).split(' ')[0]
    expect(grade(measured + 1e-4, 1)).toBe('clear')
    expect(grade(measured - 1e-4, 1)).toBe('care')
    expect(grade(0.1, measured + 1e-4)).toBe('care')
    expect(grade(0.1, measured - 1e-4)).toBe('stop')
  })

  test('care that is stated above what breaks it is care up to there', () => {
    expect(saysOf(0.4, { stringStrained: 0.95, stringBreaking: 0.8 })).toMatch(
      /^clear string 1: [\d.]+ of 0.8,/,
    )
  })

  test('is told with its pull', () => {
    expect(sentence('string-breaking', masses([0.4]))).toContain(`pulls ${Math.round(pull(0.4))} N`)
  })
})

describe('strings alike', () => {
  test('the slackest against the mean, wherever it lies', () => {
    // Pulls as 1 to 3 to 2, mean 2.
    expect(told('pull-slackest', masses([0.2, 0.6, 0.4]))).toEqual([
      `care strings + string 3: 0.5 of 0.6, ${BASS}`,
    ])
    expect(told('pull-slackest', masses([0.6, 0.2, 0.4]))).toEqual([
      `care strings + string 2: 0.5 of 0.6, ${MIDDLE}`,
    ])
    expect(told('pull-slackest', masses([0.6, 0.4, 0.2]))).toEqual([
      `care strings + string 1: 0.5 of 0.6, ${TREBLE}`,
    ])
  })

  test('the tightest against the mean, wherever it lies', () => {
    expect(told('pull-tightest', masses([0.6, 0.2, 0.4]))).toEqual([
      `clear strings + string 3: 1.5 of 1.6, ${BASS}`,
    ])
    expect(told('pull-tightest', masses([0.2, 0.6, 0.4]))).toEqual([
      `clear strings + string 2: 1.5 of 1.6, ${MIDDLE}`,
    ])
    // As 9 to 2 to 2: 27 / 13.
    expect(told('pull-tightest', masses([0.2, 0.2, 0.9]))).toEqual([
      `care strings + string 1: ${to4(27 / 13)} of 1.6, ${TREBLE}`,
    ])
  })

  test('just inside and just outside the limit', () => {
    const slackest = (pullLeast: number) =>
      graded('pull-slackest', masses([0.2, 0.6, 0.4], { limits: { pullLeast } }))
    expect(slackest(0.499)).toEqual(['clear'])
    expect(slackest(0.501)).toEqual(['care'])
    const tightest = (pullMost: number) =>
      graded('pull-tightest', masses([0.2, 0.6, 0.4], { limits: { pullMost } }))
    expect(tightest(1.501)).toEqual(['clear'])
    expect(tightest(1.499)).toEqual(['care'])
  })

  test('tells both pulls', () => {
    const said = sentence('pull-slackest', masses([0.2, 0.6, 0.4]))
    expect(said).toContain(`${Math.round(pull(0.2))} N, 50% of the mean of ${Math.round(pull(0.4))} N`)
  })

  test('one string is like itself, and two are enough', () => {
    expect(told('pull-slackest', masses([0.4]))).toEqual([])
    expect(told('pull-tightest', masses([0.4]))).toEqual([])
    expect(told('pull-slackest', masses([0.4, 0.5]))).toHaveLength(1)
  })
})

describe('room for the winding', () => {
  const made = (...makes: Stated[]) =>
    told('string-can-be-made', { strings: { gauges: [0.66] }, stringing: { makes } })
  const wound = (core: number, more: Stated = {}) => ({ construction: 'wound', core, ...more })

  test('is what the core leaves of the string, across its corners', () => {
    expect(made(wound(0.34))[0]).toBe(`clear string 3: 0.32 of 0, ${BASS}`)
    expect(made(wound(0.5, { coreShape: 'hexagonal' }))[0]).toBe(
      `clear string 3: ${to4(0.66 - 1 / Math.sqrt(3))} of 0, ${BASS}`,
    )
    expect(made(wound(0.66))[0]).toBe(`stop string 3: 0 of 0, ${BASS}`)
  })

  test('is not asked of a plain string, nor of one whose core nobody stated', () => {
    expect(made({ construction: 'plain' })).toEqual([])
    expect(made(wound(0))).toEqual([])
  })

  test('a string that goes by its own mass needs one', () => {
    expect(made({ construction: 'stated' })[0]).toBe(`stop string 3: 0 of 0, ${BASS}`)
    expect(made({ construction: 'stated', unitMass: 1 })).toEqual([])
    // Its core, where it is stated, is as thick as it is, whatever its shape.
    expect(made({ construction: 'stated', unitMass: 1, core: 0.4 })[0]).toMatch(/^clear string 3: 0.26 of 0,/)
  })

  test('each by its own make', () => {
    expect(made(wound(0.7), wound(0.34), wound(0.5)).map((line) => line.split(',')[0])).toEqual([
      'stop string 3: -0.04 of 0',
      'clear string 1: 0.16 of 0',
    ])
  })
})

describe('a pitch for every string', () => {
  test.each([
    [[], 'note strings: 0 of nothing', '3 strings'],
    [['G2'], 'care strings: 1 of 3', '1 pitch for 3 strings'],
    [['G2', 'D3', 'G3'], 'clear strings: 3 of 3', '3 pitches for 3 strings'],
    [['G2', 'D3', 'G3', 'B3'], 'care strings: 4 of 3', '4 pitches for 3 strings'],
  ])('of %j', (tuning, line, words) => {
    const design = strung({ stringing: { tuning } })
    expect(told('tuning-stated', design)).toEqual([`${line}, plan (0, 0) to (637.5, 0)`])
    expect(sentence('tuning-stated', design)).toContain(words)
  })
})

test('without a pitch nothing is said of pulls', () => {
  for (const rule of ['string-slack', 'string-high', 'string-breaking', 'pull-slackest', 'pull-tightest'])
    expect(told(rule, {})).toEqual([])
  expect(graded('string-high', weighed(300, 0.4))).toEqual(['clear'])
})
