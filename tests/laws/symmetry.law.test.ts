/** What must not matter: the hand, the unit, the order and the names of things. And what a mirror must do. */
import { describe, expect, test } from 'vitest'
import { check, type Design, sentenceOf, solve } from '../../geometry/index.ts'
import { designOf } from '../support/designs.ts'
import { forEveryDesign, manyDesigns, PATIENCE } from '../support/every-design.ts'
import { MIRRORED, mirrorsTheOther, WHAT_A_MIRROR_DOES, WHAT_MUST_NOT_MATTER } from './symmetry-laws.ts'

describe('what must not matter', { timeout: PATIENCE }, () => {
  test.each(WHAT_MUST_NOT_MATTER)('$name', ({ wrong }) => forEveryDesign(wrong))
})

test('the unit changes the words, or it would be of no use', () => {
  const said = (display: 'mm' | 'inches') => {
    const layout = solve(designOf({ units: { display } }))
    return check(layout).map((one) => sentenceOf(one, layout))
  }
  const [metric, inches] = [said('mm'), said('inches')]
  expect(metric).toHaveLength(inches.length)
  expect(metric.filter((one, index) => one !== inches[index]).length).toBeGreaterThan(20)
})

describe('a mirror', { timeout: PATIENCE }, () => {
  test.each(WHAT_A_MIRROR_DOES)('$name', ({ wrong }) => forEveryDesign(wrong))

  test.each(MIRRORED)('makes the %s of a left-handed build of that of a right-handed one', (id, axis) =>
    forEveryDesign(mirrorsTheOther(id, axis)),
  )
})

test('the designs drawn hold things whose places follow others, or renaming proves little', () => {
  const following = manyDesigns().filter((design: Design) =>
    design.things.some(({ along, across }) =>
      [along, across].some((place) => typeof place === 'object' && ('mirror' in place || 'midway' in place)),
    ),
  )
  expect(following.length).toBeGreaterThan(100)
})
