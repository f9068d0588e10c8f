/** What a neck slot leaves of its wall, below and beside it, at both ends. */
import { describe, expect, test } from 'vitest'
import type { Stated } from '../../support/designs.ts'
import { told } from './told.ts'

const both = (rule: string, stated: Stated, line: (face: string) => string) =>
  expect(told(rule, stated)).toEqual([line('neck-end-wall'), line('tail-end-wall')])

describe('wall under the slot', () => {
  // A wall of 47 under a lid of 4; the neck goes its thickness less those 4 deep.
  test.each([
    [45, 'clear', 6, 41],
    [45.1, 'care', 5.9, 41.1],
    [51, 'care', 0, 47],
    [51.1, 'stop', -0.1, 47.1],
  ])('of a neck %d thick', (thickness, grade, left, deep) => {
    both(
      'wall-under-slot',
      { neck: { thickness } },
      (face) => `${grade} ${face}: ${left} of 6, ${face} (0, -${deep}) to (0, -47)`,
    )
  })

  test('of a raised neck there is more', () => {
    both(
      'wall-under-slot',
      { neck: { rise: 5 } },
      (face) => `clear ${face}: 37 of 6, ${face} (0, -10) to (0, -47)`,
    )
  })

  test('a neck that ends inside is let into one wall', () => {
    const inside = { neck: { ends: 'at a block' } }
    expect(told('wall-under-slot', inside)).toEqual([
      'clear neck-end-wall: 32 of 6, neck-end-wall (0, -15) to (0, -47)',
    ])
    expect(told('wall-beside-slot', inside)).toHaveLength(1)
  })
})

describe('wall beside the slot', () => {
  // The slot is 38.4 wide; half the box less the side wall's 6.
  test.each([
    [80.4, 'clear', 15, 34.2],
    [80.2, 'care', 14.9, 34.1],
    [50.4, 'care', 0, 19.2],
    [50.2, 'stop', -0.1, 19.2],
  ])('of a box %d wide', (width, grade, left, to) => {
    both(
      'wall-beside-slot',
      { box: { width } },
      (face) => `${grade} ${face}: ${left} of 15, ${face} (19.2, -7.5) to (${to}, -7.5)`,
    )
  })

  test('goes by half the slot’s depth, and by the thicker side wall', () => {
    both(
      'wall-beside-slot',
      { neck: { thickness: 24 } },
      (face) => `clear ${face}: 64.8 of 15, ${face} (19.2, -10) to (84, -10)`,
    )
    for (const side of ['bass', 'treble'])
      expect(told('wall-beside-slot', { box: { width: 130, walls: { [side]: 40 } } })[0]).toMatch(
        /^care neck-end-wall: 5.8 of 15,/,
      )
  })
})
