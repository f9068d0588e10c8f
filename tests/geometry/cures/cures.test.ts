/** Every cure offered is applied, solved and checked again here: none may promise what it does not keep. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { leastSteps } from '../../../geometry/cures/least.ts'
import {
  apply,
  type Cure,
  check,
  checkDesign,
  curesOf,
  type Design,
  type Finding,
  fieldsOf,
  fieldsOfEntry,
  fieldsOfKind,
  KINDS,
  RULES,
  sections,
  solve,
} from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { CASES } from '../checks/breaking/cases.ts'

const RANK = { clear: 0, note: 1, care: 2, stop: 3 }
const rankOf = (findings: readonly Finding[], key: string) =>
  Math.max(0, ...findings.filter((one) => one.key === key).map((one) => RANK[one.grade]))

/** What a cure says against what a fresh look at the design after it says. */
function liesOf(design: Design, finding: Finding, cure: Cure): string[] {
  const before = check(solve(design))
  const made = apply(design, cure.change)
  if (!checkDesign(made).ok) return [`${cure.words}: no valid design`]
  const after = check(solve(made))
  const now = rankOf(after, finding.key)
  const lies: string[] = []
  if (cure.outcome === 'gone' && now > 0) lies.push(`${cure.words}: still there`)
  if (cure.outcome === 'better' && now >= RANK[finding.grade]) lies.push(`${cure.words}: no better`)
  const told = new Set(cure.worse.map((one) => one.finding.key))
  for (const { key } of after)
    if (key !== finding.key && rankOf(after, key) > rankOf(before, key) && !told.has(key))
      lies.push(`${cure.words}: says nothing of ${key}`)
  const graver = cure.worse.filter(
    (one) => RANK[one.finding.grade] > Math.max(rankOf(before, one.finding.key), RANK[finding.grade]),
  )
  if (graver.length > 0) lies.push(`${cure.words}: graver than what it mends`)
  return lies
}

/** So many holes that trying a dozen sizes takes a second. */
const SLOW = 'tens of thousands of holes'

const tried = RULES.flatMap((rule) =>
  (CASES[rule.name]?.breaks ?? []).filter((one) => one.what !== SLOW).map((one) => ({ rule, ...one })),
).map(({ rule, what, design: stated }) => {
  const design = designOf(stated)
  const finding = check(solve(design)).find((one) => one.rule === rule.name) as Finding
  return { rule, what, design, finding, cures: curesOf(solve(design), finding) }
})

describe('over every design made to break a rule', () => {
  test('no cure is a lie', () => {
    expect(
      tried.flatMap(({ design, finding, cures }) => cures.flatMap((one) => liesOf(design, finding, one))),
    ).toEqual([])
  })

  test('three findings of four get one', () => {
    const cured = tried.filter((one) => one.cures.length > 0)
    expect(cured.length / tried.length).toBeGreaterThan(0.7)
  })

  test('those without are about what was measured, bought, wired or tuned, or have no room here', () => {
    const never = RULES.filter(
      ({ name }) => !tried.some((one) => one.rule.name === name && one.cures.length > 0),
    )
    expect(never.map((rule) => rule.name).sort()).toEqual(NEVER)
  })

  test('the same design gets the same cures', () => {
    for (const { design, finding, cures } of tried.filter((_, index) => index % 9 === 0)) {
      const again = structuredClone(design)
      expect(curesOf(solve(again), finding).map((one) => one.words)).toEqual(cures.map((one) => one.words))
    }
  })
})

const NEVER = [
  ...['balance-near-wall', 'box-has-inside', 'box-twist', 'brace-clear', 'head-flush', 'inside-fits'],
  ...['neck-gives-way', 'out-of-square', 'pull-slackest', 'pull-tightest', 'rosette-holes', 'saddle-setback'],
  ...['string-can-be-made', 'string-slack', 'survey-agrees', 'survey-makes-box', 'tuning-stated'],
  ...['wiring-grounded', 'wiring-heard', 'wiring-jack', 'wiring-knobs', 'wiring-shorted', 'wiring-silent'],
  'wiring-strings',
].sort()

const hole = (fields: Stated = {}) => ({
  kind: 'sound-hole',
  id: 'hole',
  along: 60,
  across: 70,
  diameter: 25,
  ...fields,
})
const first = (design: Design, rule: string) => {
  const finding = check(solve(design)).find(
    (one) => one.rule === rule && one.grade !== 'clear' && one.about[0] !== 'b',
  )
  if (!finding) throw new Error(`${rule} finds nothing`)
  return { finding, cures: curesOf(solve(design), finding) }
}

describe('a move', () => {
  test('goes as far as is missing and no farther', () => {
    // 90 - 70 - 12.5 leave 7.5 of 12.
    const { cures } = first(designOf({ things: [hole()] }), 'opening-to-edge')
    expect(cures[0]?.words).toBe('Move sound hole hole 4.5 mm towards the centreline')
  })

  test('is a whole number of lines of an inch rule, and still holds', () => {
    const design = designOf({ units: { display: 'inches', fraction: 32 }, things: [hole()] })
    const { cures } = first(design, 'opening-to-edge')
    // 4.5 mm are 5.67 thirty-seconds: six of them.
    expect(cures[0]?.words).toBe('Move sound hole hole 3/16 in towards the centreline')
    const moved = apply(design, cures[0]?.change ?? { edits: [] })
    expect(moved.things[0]?.across).toBeCloseTo(70 - (6 * 25.4) / 32, 9)
  })

  test('goes slantwise where that is shorter, each way rounded outwards', () => {
    const design = designOf({
      things: [hole({ across: 50 }), hole({ id: 'other', along: 80, across: 30, locked: true })],
    })
    const { cures } = first(design, 'between-openings')
    // Wanted between centres 25 + 12.5; there are 28.28: 9.22 straight away are 6.52 either way.
    expect(cures[0]?.words).toMatch(
      /^Move sound hole hole 6\.[56] mm towards the treble side and 6\.[56] mm towards the neck$/,
    )
  })

  test('leaves locked things alone, also those that would follow', () => {
    const alone = first(designOf({ things: [hole({ locked: true })] }), 'opening-to-edge')
    expect(alone.cures.filter((one) => one.words.startsWith('Move'))).toEqual([])
    const follower = hole({ id: 'b', across: { mirror: 'hole' }, along: 120, locked: true })
    const { cures } = first(designOf({ things: [hole(), follower] }), 'opening-to-edge')
    expect(cures.filter((one) => one.words.includes('centreline'))).toEqual([])
  })

  test('keeps a share a share and a partner a partner', () => {
    const design = designOf({
      things: [
        // 65.7 / 90 is 0.73 exactly, which a share of six decimals can say.
        hole({ across: { share: 70 / 90 }, diameter: 24.6 }),
        hole({ id: 'b', along: { mirror: 'hole' }, across: { mirror: 'hole' } }),
      ],
    })
    const { cures } = first(design, 'opening-to-edge')
    expect(cures[0]?.words).toBe(
      'Move sound hole hole 4.3 mm towards the centreline, and sound hole b with it',
    )
    expect(cures[0]?.loosens).toBeNull()
    const after = apply(design, cures[0]?.change ?? { edits: [] })
    expect(after.things[1]?.across).toEqual({ mirror: 'hole' })
    const share = after.things[0]?.across as { share: number } | undefined
    expect(share?.share).toBeCloseTo(0.73, 9)
  })

  test('says where it gives up what was meant', () => {
    const design = designOf({
      things: [hole({ across: 45, along: { midway: ['saddle', 'saddle'] } })],
    })
    const cures = first(design, 'saddle-to-opening').cures.filter((one) => one.loosens)
    for (const cure of cures) expect(cure.loosens).toContain('no longer midway between saddle and saddle')
  })
})

test('a size of one of a pair is changed on both', () => {
  const design = designOf({
    things: [
      hole({ rimWidth: 4, rimDepth: 3, across: 50 }),
      hole({ id: 'b', rimWidth: 4, rimDepth: 3, along: { mirror: 'hole' }, across: { mirror: 'hole' } }),
    ],
  })
  const { cures } = first(design, 'rim-depth')
  expect(
    apply(design, cures[0]?.change ?? { edits: [] }).things.map((one) => 'rimDepth' in one && one.rimDepth),
  ).toEqual([2, 2])
})

test('which hand plucks is offered and left to the builder', () => {
  const { cures } = first(designOf({ hand: 'not stated' }), 'hand-stated')
  expect(cures.map((one) => [one.words, one.yours])).toEqual([
    ['Hand: right, instead of not stated', true],
    ['Hand: left, instead of not stated', true],
  ])
})

test('what a rule says mends it is a field that there is', () => {
  const words = ['place', 'size', 'strings.gauges', 'scale.frets.count', 'saddle.place']
  const known = new Set([
    ...words,
    ...fieldsOf('').map(({ name }) => name),
    ...sections().flatMap((section) => fieldsOf(section).map(({ name }) => `${section}.${name}`)),
    ...Object.keys(KINDS).flatMap((kind) => fieldsOfKind(kind).map(({ name }) => `thing.${name}`)),
    ...fieldsOfEntry('box.inside').map(({ name }) => `inside.${name}`),
  ])
  expect(RULES.flatMap(({ mendedBy = [] }) => mendedBy).filter((one) => !known.has(one))).toEqual([])
})

test('what is overruled gets no cure', () => {
  const design = designOf({ things: [hole()], overruled: { 'opening-to-edge hole': 'The edge is lined.' } })
  expect(first(design, 'opening-to-edge').cures).toEqual([])
})

test('the least number of steps is that of counting one by one, wherever all beyond it pass', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 0, max: 400 }), (from, start) => {
      const passes = (steps: number) => steps >= from
      const counted = Array.from({ length: 250 }, (_, index) => index + 1).find(passes) ?? null
      expect(leastSteps(passes, Math.min(start, from), 250)).toBe(counted)
    }),
  )
})
