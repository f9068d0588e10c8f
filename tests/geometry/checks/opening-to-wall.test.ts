/** Walls stand under lid and base, 6 thick: inside 6 to 234 along the box and 84 to either side. */
import { describe, expect, test } from 'vitest'
import type { Stated } from '../../support/designs.ts'
import { hole, merged, screw, things } from './breaking/case.ts'
import { told } from './told.ts'

const saysOf = (stated: Stated, more: Stated = {}) => told('opening-to-wall', merged(things(stated), more))

describe('a hole 4 from the inside of one wall', () => {
  test.each([
    ['lid', 22.5, 0, '(10, 0) to (6, 0)'],
    ['lid', 217.5, 0, '(230, 0) to (234, 0)'],
    ['lid', 120, 67.5, '(120, 80) to (120, 84)'],
    ['lid', 120, -67.5, '(120, -80) to (120, -84)'],
    ['base', 22.5, 0, '(10, 0) to (6, 0)'],
    ['base', 120, 67.5, '(120, 80) to (120, 84)'],
  ] as const)('in the %s at %d and %d', (face, along, across, line) => {
    expect(saysOf(hole({ face, along, across }))).toEqual([`care hole: 4 of 6, ${face} ${line}`])
  })

  test('walls of other thickness', () => {
    const walls = { neckEnd: 10, tailEnd: 12, bass: 15, treble: 18 }
    const line = (along: number, across: number) => saysOf(hole({ along, across }), { box: { walls } })[0]
    expect(line(30, 0)).toBe('clear hole: 7.5 of 6, lid (17.5, 0) to (10, 0)')
    expect(line(208, 0)).toBe('clear hole: 7.5 of 6, lid (220.5, 0) to (228, 0)')
    expect(line(120, -55)).toBe('clear hole: 7.5 of 6, lid (120, -67.5) to (120, -75)')
    expect(line(120, 52)).toBe('clear hole: 7.5 of 6, lid (120, 64.5) to (120, 72)')
  })

  test('a base let in between the walls has its own frame', () => {
    // It begins where the neck-end wall ends, or a play's breadth behind it: the hole still lies where it lies.
    const let_ = { box: { base: { fit: 'between the walls' } } }
    expect(saysOf(hole({ face: 'base', along: 120, across: 67.5 }), let_)[0]).toMatch(/^care hole: 4 of 6,/)
  })
})

test('six are enough; what touches the wall is a risk and what lies over it a stop', () => {
  expect(saysOf(hole({ across: 65.5 }))[0]).toMatch(/^clear hole: 6 of 6,/)
  expect(saysOf(hole({ across: 65.51 }))[0]).toMatch(/^care hole: 5.99 of 6,/)
  expect(saysOf(hole({ across: 71.5 }))[0]).toMatch(/^care hole: 0 of 6,/)
  expect(saysOf(hole({ across: 71.51 }))[0]).toMatch(/^stop hole: -0.01 of 6,/)
})

test('of the many holes of a rosette the outline of all is told, once', () => {
  // A field of 40 whose middle is 24 from the wall.
  const rosette = { kind: 'rosette', id: 'rose', along: 120, across: 60, diameter: 40, hole: 3, pitch: 6 }
  const lines = saysOf(rosette)
  expect(lines).toHaveLength(1)
  expect(lines[0]).toMatch(/^(care|clear) rose: /)
})

test('of a hole with a rim let into the face the hole itself is told: the rim may lie over the wall', () => {
  // 84 - 50 - 12.5
  expect(saysOf(hole({ across: 50, rimWidth: 10 }))).toEqual([
    'clear hole: 21.5 of 6, lid (60, 62.5) to (60, 84)',
  ])
})

test('says nothing of screws, of walls, or of a box without an inside', () => {
  expect(saysOf(screw({ across: 88 }))).toEqual([])
  expect(saysOf(hole({ face: 'treble-wall', along: 0, across: 23 }))).toEqual([])
  expect(saysOf(hole(), { box: { length: 40, walls: { neckEnd: 30, tailEnd: 30 } } })).toEqual([])
  expect(saysOf(hole(), { box: { width: 50, walls: { bass: 25, treble: 25 } } })).toEqual([])
})
