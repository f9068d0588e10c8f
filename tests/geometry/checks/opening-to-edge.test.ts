/** Every face has its own edges; each is told by the nearest of them. */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { hole, screw, things } from './breaking/case.ts'
import { told } from './told.ts'

const saysOf = (stated: Stated) => told('opening-to-edge', things(stated))

/** Lid and base 240 along and 90 to either side; side walls 120 to either side and 47 tall, end walls 90. Holes of 25. */
describe('a hole 7.5 from one edge', () => {
  test.each([
    ['lid', 20, 0, '(7.5, 0) to (0, 0)'],
    ['lid', 220, 0, '(232.5, 0) to (240, 0)'],
    ['lid', 120, 70, '(120, 82.5) to (120, 90)'],
    ['lid', 120, -70, '(120, -82.5) to (120, -90)'],
    ['base', 20, 0, '(7.5, 0) to (0, 0)'],
    ['base', 120, -70, '(120, -82.5) to (120, -90)'],
    ['bass-wall', 100, 23.5, '(112.5, -23.5) to (120, -23.5)'],
    ['bass-wall', -100, 23.5, '(-112.5, -23.5) to (-120, -23.5)'],
    ['treble-wall', 0, 20, '(0, -7.5) to (0, 0)'],
    ['treble-wall', 0, 27, '(0, -39.5) to (0, -47)'],
    ['neck-end-wall', 70, 23.5, '(82.5, -23.5) to (90, -23.5)'],
    ['tail-end-wall', -70, 23.5, '(-82.5, -23.5) to (-90, -23.5)'],
  ] as const)('on the %s at %d and %d', (face, along, across, line) => {
    expect(saysOf(hole({ face, along, across }))).toEqual([`care hole: 7.5 of 12, ${face} ${line}`])
  })
})

test('twelve are enough for a hole and one and a half for a screw, a little less is not', () => {
  expect(saysOf(hole({ across: 65.5 }))[0]).toMatch(/^clear hole: 12 of 12,/)
  expect(saysOf(hole({ across: 65.51 }))[0]).toMatch(/^care hole: 11.99 of 12,/)
  expect(saysOf(screw({ along: 4.5 }))[0]).toMatch(/^clear screw: 1.5 of 1.5,/)
  expect(saysOf(screw({ along: 4.49 }))[0]).toMatch(/^care screw: 1.49 of 1.5,/)
})

test('what just touches the edge is a risk, what reaches over it cannot be', () => {
  expect(saysOf(hole({ across: 77.5 }))[0]).toMatch(/^care hole: 0 of 12,/)
  expect(saysOf(hole({ across: 77.51 }))[0]).toMatch(/^stop hole: -0.01 of 12,/)
})

test('is told as what it is', () => {
  const said = (thing: Stated) => {
    const layout = solve(designOf(things(thing)))
    const finding = check(layout).find(({ rule }) => rule === 'opening-to-edge')
    if (!finding) throw new Error('nothing is said')
    return sentenceOf(finding, layout)
  }
  expect(said(hole({ across: 70 }))).toContain('a hole this size wants 12.0 mm')
  expect(said(screw({ along: 4 }))).toContain('a screw this size wants 1.5 mm')
})

test('says nothing of what is not cut into the face', () => {
  expect(saysOf({ kind: 'glued-brace', id: 'strip', along: 5, across: 60 })).toEqual([])
})
