/** Measure, limit, grade and line of every finding agree, on every design made to keep or break a rule. */
import { expect, test } from 'vitest'
import { check, solve } from '../../../geometry/index.ts'
import {
  DRAWN_AS_MEASURED,
  GRADED_BY_MORE,
  gradesAgainstMeasure,
  linesAgainstMeasure,
} from '../../laws/finding-laws.ts'
import { designOf } from '../../support/designs.ts'
import { CASES } from './breaking/cases.ts'

test.each(Object.entries(CASES))('around %s', (_, { holds, breaks }) => {
  for (const stated of [holds, ...breaks.map((one) => one.design)]) {
    const findings = check(solve(designOf(stated)))
    expect(gradesAgainstMeasure(findings)).toEqual([])
    expect(linesAgainstMeasure(findings)).toEqual([])
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
  expect([...DRAWN_AS_MEASURED, ...GRADED_BY_MORE].filter((rule) => !met.has(rule))).toEqual([])
})

test('a grade or a line that is wrong is told', () => {
  const [one] = check(solve(designOf({}))).filter(({ rule }) => rule === 'neck-left')
  if (!one) throw new Error('the neck is not looked at')
  expect(gradesAgainstMeasure([{ ...one, grade: 'stop' }])).toHaveLength(1)
  expect(gradesAgainstMeasure([{ ...one, margin: 0 }])).toHaveLength(1)
  expect(linesAgainstMeasure([{ ...one, where: { ...one.where, to: { x: 999, y: 0 } } }])).toHaveLength(1)
})
