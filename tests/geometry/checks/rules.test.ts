import { describe, expect, test } from 'vitest'
import { LIMITS, type LimitName } from '../../../geometry/design/limits.ts'
import {
  blocks,
  check,
  type Design,
  type Finding,
  RULES,
  type Rule,
  sentenceOf,
  solve,
} from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'
import { CASES } from './breaking/cases.ts'

const findingsOf = (rule: string, design: Design): Finding[] =>
  check(solve(design)).filter((one) => one.rule === rule)

const wrong = (finding: Finding) => finding.grade !== 'clear'
/** The finding a broken design was made for: the gravest, and of those the tightest. */
const worst = (rule: string, design: Design) => findingsOf(rule, design)[0]

describe('every rule has designs that break it', () => {
  test.each(RULES.map((rule) => rule.name))('%s', (name) => {
    expect(CASES[name]?.breaks.length ?? 0).toBeGreaterThan(0)
  })

  test('and no design stands here for a rule that is gone', () => {
    const names = RULES.map((rule) => rule.name)
    expect(Object.keys(CASES).filter((name) => !names.includes(name))).toEqual([])
  })

  test('no two rules share a name or a title', () => {
    expect(new Set(RULES.map((rule) => rule.name)).size).toBe(RULES.length)
    expect(new Set(RULES.map((rule) => rule.title)).size).toBe(RULES.length)
  })
})

const breakings = RULES.flatMap((rule) =>
  (CASES[rule.name]?.breaks ?? []).map((one) => ({ name: rule.name, rule, ...one })),
)

describe.each(breakings)('$name: $what', ({ name, rule, design, grade, measured, within }) => {
  const broken = designOf(design)
  const finding = worst(name, broken)

  test(`is ${grade}, by the measure worked out beside it`, () => {
    expect(finding?.grade).toBe(grade)
    if (within === undefined) expect(finding?.measured).toBeCloseTo(measured, 9)
    else expect(Math.abs((finding?.measured ?? 0) / measured - 1)).toBeLessThan(within)
  })

  test('says so in a sentence, in millimetres and on a rule of thirty-seconds', () => {
    if (!finding) throw new Error(`${name} found nothing`)
    const layout = solve(broken)
    proveSentence(sentenceOf(finding, layout), rule, 'mm')
    const inches = solve({ ...broken, units: { display: 'inches', fraction: 32 } })
    proveSentence(sentenceOf(finding, inches), rule, 'in')
  })

  test('shows where, on a place that can be drawn', () => {
    const { from, to } = finding?.where ?? {}
    expect([from?.x, from?.y, to?.x, to?.y].filter(Number.isFinite)).toHaveLength(4)
  })

  test('keeps its grade when it is overruled, and then does not block', () => {
    if (!finding) throw new Error(`${name} found nothing`)
    expect(blocks(finding)).toBe(grade === 'stop')
    const lived = worst(
      name,
      designOf({ ...design, overruled: { [finding.key]: 'Tried on scrap; it holds.' } }),
    )
    expect(lived).toMatchObject({ key: finding.key, grade, overruled: 'Tried on scrap; it holds.' })
    expect(lived && blocks(lived)).toBe(false)
  })
})

/** Findings that tell of a state, not of a size. */
const WITHOUT_A_NUMBER = [
  ...['hand-stated', 'place-followed', 'wiring-jack', 'wiring-grounded', 'wiring-strings', 'wiring-shorted'],
  ...['wiring-knobs', 'wiring-silent'],
]

function proveSentence(sentence: string, rule: Rule, unit: 'mm' | 'in') {
  expect(sentence).toMatch(/^[\p{Lu}\d−“].*\.$/u)
  expect(sentence).not.toMatch(/NaN|undefined|null|Infinity|\[object|\s\s/)
  if (WITHOUT_A_NUMBER.includes(rule.name)) return
  if (rule.unit === 'degrees') expect(sentence).toMatch(/\d\.\d°/)
  else if (rule.unit === 'count') expect(sentence).toMatch(/\d/)
  else if (rule.unit === 'share') expect(sentence).toMatch(/\d%/)
  else if (rule.unit === 'newtons') expect(sentence).toMatch(/\d N\b/)
  else expect(sentence).toMatch(unit === 'mm' ? /\d\.\d+ mm\b/ : /\d in\b/)
  if (unit === 'in') expect(sentence).not.toMatch(/\d\.\d+ mm\b(?!²)/)
}

describe.each(RULES)('$name', (rule) => {
  const keeping = designOf(CASES[rule.name]?.holds)

  test('finds nothing wrong with a design that keeps it', () => {
    expect(findingsOf(rule.name, keeping).filter(wrong)).toEqual([])
  })

  test('speaks of what holds as well', () => {
    for (const finding of findingsOf(rule.name, keeping)) {
      proveSentence(sentenceOf(finding, solve(keeping)), rule, 'mm')
      expect(finding.unit).toBe(rule.unit)
    }
  })

  test.each(rule.limits.map((name) => [name] as const))(
    'is held against the limit %s of the design',
    (name) => {
      // Nothing is 1000 mm away; nothing turns by less than nothing.
      const strict = rule.wants === 'least' ? 1000 : 0
      const before = findingsOf(rule.name, keeping)
      const after = findingsOf(rule.name, designOf({ ...keeping, limits: { [name]: strict } }))
      expect(before.some(wrong)).toBe(false)
      expect(after.some(wrong)).toBe(true)
    },
  )
})

test('every limit is the limit of a rule', () => {
  const used = new Set(RULES.flatMap((rule) => rule.limits))
  expect((Object.keys(LIMITS) as LimitName[]).filter((name) => !used.has(name))).toEqual([])
})

describe('a limit that is lowered lets pass what was care', () => {
  test.each([
    ['opening-to-edge', 'a hole near the edge', 'openingToEdge', 7.5],
    ['opening-to-neck', 'a hole beside the neck', 'openingToNeck', 3.5],
    ['neck-left', 'a thin neck', 'neckLeft', 9],
    ['first-post', 'a post near the nut', 'firstPost', 35],
    ['blank-length', 'a blank used up', 'blankSpare', 0],
    ['side-angle-at-saddle', 'string holes farther apart than the strings', 'sideAngleAtSaddle', 4],
    ['rim-depth', 'a rim over half the lid', 'rimShare', 0.7],
    ['saddle-to-tail-wall', 'a saddle near the wall', 'saddleToTailWall', 15],
  ] as const)('%s: %s', (rule, what, limit, value) => {
    const design = CASES[rule]?.breaks.find((one) => one.what === what)?.design
    expect(worst(rule, designOf(design))?.grade).toBe('care')
    expect(worst(rule, designOf({ ...design, limits: { [limit]: value } }))?.grade).toBe('clear')
  })
})
