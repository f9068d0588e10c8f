/**
 * While a thing is dragged only what is about it is measured, and rules marked as never naming a thing are not asked.
 * That must never hide a finding.
 */
import { expect, test } from 'vitest'
import { check, findingsAbout, solve } from '../../geometry/index.ts'
import { forEveryDesign, PATIENCE } from '../support/every-design.ts'

test('what is found about things is what a whole check finds about them', { timeout: PATIENCE }, () => {
  let found = 0
  forEveryDesign((design) => {
    const layout = solve(design)
    const ids = new Set(design.things.map(({ id }) => id))
    const isAbout = (name: string) => ids.has(name)
    const whole = check(layout).filter((one) => one.about.some(isAbout))
    found += whole.length
    return JSON.stringify(findingsAbout(layout, isAbout)) === JSON.stringify(whole)
      ? []
      : ['a finding about a thing was left out, or is another']
  }, 2)
  expect(found).toBeGreaterThan(300)
})
