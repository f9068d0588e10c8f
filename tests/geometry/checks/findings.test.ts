/** Measure, limit, grade and line of every finding agree, on every design made to keep or break a rule. */
import { expect, test } from 'vitest'
import { check, solve } from '../../../geometry/index.ts'
import {
  DRAWN_AS_APART,
  DRAWN_AS_MEASURED,
  GRADED_BY_MORE,
  gradesAgainstMeasure,
  linesAgainstMeasure,
  linesOffTheirThings,
  SHOWN_ON_THE_THING,
} from '../../laws/finding-laws.ts'
import { designOf } from '../../support/designs.ts'
import { CASES } from './breaking/cases.ts'

test.each(Object.entries(CASES))('around %s', (_, { holds, breaks }) => {
  for (const stated of [holds, ...breaks.map((one) => one.design)]) {
    const layout = solve(designOf(stated))
    const findings = check(layout)
    expect(gradesAgainstMeasure(findings)).toEqual([])
    expect(linesAgainstMeasure(findings)).toEqual([])
    expect(linesOffTheirThings(layout, findings)).toEqual([])
  }
})

test('every rule of which this is said is met', () => {
  const met = new Set(
    Object.values(CASES).flatMap(({ breaks }) =>
      breaks.flatMap(({ design }) =>
        check(solve(designOf(design))).flatMap(({ rule, measured }) => (measured === null ? [] : [rule])),
      ),
    ),
  )
  const said = [...DRAWN_AS_MEASURED, ...DRAWN_AS_APART, ...SHOWN_ON_THE_THING, ...GRADED_BY_MORE]
  expect(said.filter((rule) => !met.has(rule))).toEqual([])
})

test('a grade or a line that is wrong is told', () => {
  const [one] = check(solve(designOf({}))).filter(({ rule }) => rule === 'neck-left')
  if (!one) throw new Error('the neck is not looked at')
  expect(gradesAgainstMeasure([{ ...one, grade: 'stop' }])).toHaveLength(1)
  expect(gradesAgainstMeasure([{ ...one, margin: 0 }])).toHaveLength(1)
  expect(linesAgainstMeasure([{ ...one, where: { ...one.where, to: { x: 999, y: 0 } } }])).toHaveLength(1)
  const layout = solve(designOf({ things: [{ kind: 'sound-hole', id: 'hole', along: 60, across: 40 }] }))
  const edge = check(layout).filter(({ rule }) => rule === 'opening-to-edge')
  const away = edge.map((at) => ({ ...at, where: { ...at.where, from: { x: 1, y: 1 }, to: { x: 1, y: 1 } } }))
  expect(linesOffTheirThings(layout, away)).toHaveLength(1)
})
