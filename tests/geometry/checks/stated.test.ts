/** What is stated must make an instrument: a hand, a box with an inside, a neck before it, and places that can be found. */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { hole, things } from './breaking/case.ts'
import { told } from './told.ts'

test('a hand is stated or it is not', () => {
  const along = 'plan (-150, 0) to (740.2, 0)'
  expect(told('hand-stated', { hand: 'left' })).toEqual([`clear hand: 1 of 1, ${along}`])
  expect(told('hand-stated', { hand: 'right' })).toEqual([`clear hand: 1 of 1, ${along}`])
  expect(told('hand-stated', { hand: 'not stated' })).toEqual([`stop hand: 0 of 1, ${along}`])
})

describe('the inside of the box', () => {
  const said = (box: Stated) => {
    const layout = solve(designOf({ box }))
    const finding = check(layout).find(({ rule }) => rule === 'box-has-inside')
    if (!finding) throw new Error('nothing is said')
    return sentenceOf(finding, layout)
  }

  test.each([
    // 55 - 8 deep, 180 - 12 wide, 240 - 12 long.
    [{}, 'clear box: 47 of 0', 'deep'],
    [{ width: 50 }, 'clear box: 38 of 0', 'wide'],
    [{ length: 50 }, 'clear box: 38 of 0', 'long'],
    [{ width: 60, walls: { bass: 30, treble: 29.9 } }, 'clear box: 0.1 of 0', 'wide'],
    [{ width: 60, walls: { bass: 30, treble: 30 } }, 'stop box: 0 of 0', 'wide'],
    [{ width: 60, walls: { bass: 20.5, treble: 40 } }, 'stop box: -0.5 of 0', 'wide'],
    [{ length: 60, walls: { neckEnd: 35, tailEnd: 30 } }, 'stop box: -5 of 0', 'long'],
    [{ depth: 20, lid: { thickness: 6 }, base: { thickness: 10 } }, 'clear box: 4 of 0', 'deep'],
  ])('%j', (box, line, which) => {
    expect(told('box-has-inside', { box })[0]).toMatch(line)
    expect(said(box)).toContain(which)
  })

  test('is shown in the section, from the base to the lid', () => {
    expect(told('box-has-inside', {})).toEqual(['clear box: 47 of 0, section (462.2, -51) to (702.2, -4)'])
  })
})

describe('the neck before the box', () => {
  test.each([
    // The saddle 172.8 along the lid.
    [172.9, 'clear neck + box: 0.1 of 0, plan (0, 0) to (0.1, 0)'],
    [172.7, 'stop neck + box: -0.1 of 0, plan (0, 0) to (-0.1, 0)'],
  ])('of a scale of %d', (length, line) => {
    expect(told('neck-before-box', { scale: { length, frets: { by: 'equal', count: 0 } } })).toEqual([line])
  })
})

test('a nut that falls just on the box has no neck before it', () => {
  const just = { scale: { length: 200, frets: { by: 'equal', count: 0 } }, saddle: { place: 200 } }
  expect(told('neck-before-box', just)).toEqual(['stop neck + box: 0 of 0, plan (0, 0) to (0, 0)'])
})

describe('a place that follows what cannot be followed', () => {
  const saysOf = (...list: Stated[]) => told('place-followed', things(...list))

  test('is told on the face and at the place where the thing stands meanwhile', () => {
    const lost = hole({ face: 'treble-wall', along: 30, across: { mirror: 'gone' } })
    const [line] = saysOf(lost)
    expect(line).toMatch(/^stop hole \+ across: 0 of 1, treble-wall \(30, (-?[\d.]+)\) to \(30, \1\)$/)
    expect(saysOf(hole({ along: { mirror: 'gone' }, across: { mirror: 'gone' } }))).toHaveLength(2)
  })

  test('is told of the saddle on the lid, where it stands meanwhile', () => {
    expect(told('place-followed', { saddle: { place: { ofScale: 0.1 } } })).toEqual([
      expect.stringMatching(/^stop saddle \+ along: 0 of 1, lid \(([\d.]+), 0\) to \(\1, 0\)$/),
    ])
  })

  test('is not told of one that can', () => {
    expect(
      saysOf(hole(), hole({ id: 'other', along: { mirror: 'hole' }, across: { mirror: 'hole' } })),
    ).toEqual([])
  })
})
