/** The outer strings inside what a pickup hears, where they run over it. */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { hole, pickup, things } from './breaking/case.ts'
import { told } from './told.ts'

const saysOf = (fields: Stated, more: Stated = {}) =>
  told('string-inside-pickup', { ...more, ...things(pickup(fields)) })

describe('a pickup a tenth of the scale before the saddle', () => {
  // The outer strings run from 12 aside at the nut to 13 at the saddle: 12.9 at nine tenths.
  test.each([
    [27.8, 'clear pickup: 1 of 1, plan (571.5, -12.9) to (571.5, -13.9)'],
    [27.7, 'care pickup: 0.95 of 1, plan (571.5, -12.9) to (571.5, -13.85)'],
    [25.7, 'care pickup: -0.05 of 1, plan (571.5, -12.9) to (571.5, -12.85)'],
  ])('that hears %d', (activeWidth, line) => expect(saysOf({ activeWidth })).toEqual([line]))

  test.each([
    // Moved aside, the string on the other side is the nearest to its end; its end lies as far aside as it does.
    [2, 'clear pickup: 5.1 of 1, plan (571.5, -12.9) to (571.5, -18)'],
    [-2, 'clear pickup: 5.1 of 1, plan (571.5, 12.9) to (571.5, 18)'],
  ])('moved %d aside', (across, line) => expect(saysOf({ across, activeWidth: 40 })).toEqual([line]))

  test('names the string that is nearest to leaving it', () => {
    const said = (across: number) => {
      const layout = solve(designOf(things(pickup({ across }))))
      const finding = check(layout).find(({ rule }) => rule === 'string-inside-pickup')
      if (!finding) throw new Error('nothing is said')
      return sentenceOf(finding, layout)
    }
    expect(said(3)).toContain('hears string 3')
    expect(said(-3)).toContain('hears string 1')
  })

  test('of a single string in its middle, either end is as far', () => {
    expect(saysOf({ activeWidth: 10 }, { strings: { count: 1 } })).toEqual([
      'clear pickup: 5 of 1, plan (571.5, 0) to (571.5, 5)',
    ])
  })
})

test('is asked of pickups alone, and not of one that feels the lid itself', () => {
  expect(told('string-inside-pickup', things(hole()))).toEqual([])
  expect(saysOf({ shape: 'disc under the lid' })).toEqual([])
})
