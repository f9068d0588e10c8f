/**
 * The engine remembers what it worked out for the parts of a design that a change leaves alone. That must never show:
 * a changed design that shares everything else with the one before gives the answers of one made from nothing.
 */
import { expect, test } from 'vitest'
import { apply, change, type Design, sections, solve, type Thing } from '../../geometry/index.ts'
import { answers } from '../support/answers.ts'
import { forDesigns, forEveryDesign, manyDesigns, PATIENCE } from '../support/every-design.ts'

type Section = Exclude<keyof Design, 'format' | 'version'>

/** The design after it: the one whose fields are lent to it. */
const neighbourOf = (design: Design): Design => {
  const all = manyDesigns()
  return all[(all.indexOf(design) + 1) % all.length] ?? design
}

/** Designs that a section is lent to; two solves each. */
const MOST = 80

function wrongAfter(before: Design, after: Design): string[] {
  answers(solve(before))
  return answers(solve(after)) === answers(solve(structuredClone(after))) ? [] : ['what was remembered shows']
}

test.each([...sections(), 'hand', 'title', 'overruled', 'things'] as Section[])(
  'a change of %s gives what a new design gives',
  { timeout: PATIENCE },
  (section) => {
    const lent = (design: Design) => neighbourOf(design)[section]
    const changed = manyDesigns().filter(
      (design) => JSON.stringify(lent(design)) !== JSON.stringify(design[section]),
    )
    expect(changed.length).toBeGreaterThan(30)
    const every = Math.ceil(changed.length / MOST)
    forDesigns(
      changed.filter((_, index) => index % every === 0),
      (design) => wrongAfter(design, { ...design, [section]: lent(design) }),
    )
  },
)

test('a change of one thing gives what a new design gives', { timeout: PATIENCE }, () => {
  let changed = 0
  forEveryDesign((design) => {
    const [first] = design.things
    if (!first) return []
    changed += 1
    const moved = apply(
      design,
      change(design, [['things', 0, 'along'], 33], [['things', 0, 'turnDegrees'], 45]),
    )
    const dressed = apply(design, change(design, [['things', 0, 'name'], 'Another name']))
    return [...wrongAfter(design, moved), ...wrongAfter(design, dressed), ...wrongAfter(moved, design)]
  }, 3)
  expect(changed).toBeGreaterThan(50)
})

test('a thing that stays while what it follows moves is not left behind', { timeout: PATIENCE }, () => {
  let changed = 0
  forEveryDesign((design) => {
    const [first, ...others] = design.things
    if (!first || others.length === 0) return []
    changed += 1
    const followers = others.map(
      (one) => ({ ...one, along: { mirror: first.id }, across: { mirror: first.id } }) as Thing,
    )
    const before = { ...design, things: [first, ...followers] }
    return wrongAfter(before, {
      ...design,
      things: [{ ...first, along: 41, across: 17 } as Thing, ...followers],
    })
  }, 3)
  expect(changed).toBeGreaterThan(50)
})
