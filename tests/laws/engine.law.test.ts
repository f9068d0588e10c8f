/** What holds of every design there can be, however foolish: the engine answers, soundly, and always the same. */
import { describe, expect, test } from 'vitest'
import { check, type Design, FACES, KINDS, loadsOf, solve } from '../../geometry/index.ts'
import { forEveryDesign, manyDesigns, PATIENCE } from '../support/every-design.ts'
import { ENGINE_LAWS, numbersIn } from './engine-laws.ts'

test('the designs drawn are of many sorts, or these laws would prove little', { timeout: PATIENCE }, () => {
  const designs = manyDesigns()
  const share = (is: (design: Design) => boolean) => designs.filter(is).length / designs.length
  const found = (design: Design) => check(solve(design)).filter((one) => one.rule !== 'hand-stated')
  expect(share((one) => found(one).every(({ grade }) => grade !== 'stop'))).toBeGreaterThan(0.05)
  expect(share((one) => found(one).some(({ grade }) => grade === 'stop'))).toBeGreaterThan(0.3)
  expect(share((one) => one.things.length > 2)).toBeGreaterThan(0.3)
  expect(share((one) => solve(one).problems.length > 0)).toBeGreaterThan(0.05)
  for (const face of FACES)
    expect(share((one) => one.things.some((thing) => thing.face === face))).toBeGreaterThan(0.03)
  for (const kind of Object.keys(KINDS))
    expect(share((one) => one.things.some((thing) => thing.kind === kind))).toBeGreaterThan(0.05)
  expect(share((one) => loadsOf(solve(one)).missing === null)).toBeGreaterThan(0.15)
  expect(share((one) => loadsOf(solve(one)).neck !== null)).toBeGreaterThan(0.1)
  const outcomes = new Set(
    designs.flatMap((one) => check(solve(one)).map(({ rule, grade }) => `${rule} ${grade}`)),
  )
  expect(outcomes.size).toBeGreaterThan(80)
})

describe('for every design', { timeout: PATIENCE }, () => {
  test('all numbers of layout, parts and findings are finite', () => {
    let numbers = 0
    forEveryDesign((design) => {
      const { count, unsound } = numbersIn(design)
      numbers += count
      return unsound
    })
    expect(numbers).toBeGreaterThan(200_000)
  })

  test.each(ENGINE_LAWS)('$name', ({ wrong, every }) => forEveryDesign(wrong, every))
})
