import { expect, it } from 'vitest'
import { check, RULES, ruleOf, SOURCES, solve } from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'

/** Two runs that differ in the tuning alone: what only the second one finds was reckoned from the strings' pull. */
it('names the source of every number that is reckoned rather than measured', () => {
  const bare = designOf({ strings: { count: 3 } })
  const tuned = designOf({ strings: { count: 3 }, stringing: { tuning: ['G2', 'D3', 'G3'] } })
  const without = new Set(check(solve(bare)).map((one) => one.rule))
  const reckoned = new Set(check(solve(tuned)).map((one) => one.rule))
  const only = [...reckoned].filter((name) => !without.has(name))
  expect(only.length).toBeGreaterThan(12)
  expect(only.filter((name) => (ruleOf(name).basis ?? []).length === 0)).toEqual([])
  for (const { basis = [] } of RULES) for (const name of basis) expect(SOURCES[name]).toMatch(/[:.]/)
})
