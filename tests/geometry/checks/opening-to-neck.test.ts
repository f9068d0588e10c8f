/** The neck lies under the lid from its neck-end edge to where the neck ends. */
import { describe, expect, test } from 'vitest'
import type { Stated } from '../../support/designs.ts'
import { hole, merged, pickup, things } from './breaking/case.ts'
import { told } from './told.ts'

const saysOf = (stated: Stated, more: Stated = {}) => told('opening-to-neck', merged(things(stated), more))

describe('beside a neck 38 wide', () => {
  test.each([
    // 37.5 - 12.5 - 19
    [37.5, 'clear hole: 6 of 6, lid (60, 25) to (60, 19)'],
    [37.49, 'care hole: 5.99 of 6, lid (60, 24.99) to (60, 19)'],
    [-37.5, 'clear hole: 6 of 6, lid (60, -25) to (60, -19)'],
    [-36, 'care hole: 4.5 of 6, lid (60, -23.5) to (60, -19)'],
  ])('a hole of 25 at %d', (across, line) => expect(saysOf(hole({ across }))).toEqual([line]))

  test('what touches it is a risk, what lies over it cannot be', () => {
    expect(saysOf(hole({ across: 31.5 }))[0]).toMatch(/^care hole: 0 of 6,/)
    expect(saysOf(hole({ across: 31.49 }))[0]).toMatch(/^stop hole: -0.01 of 6,/)
  })

  test('a narrower neck leaves more room', () => {
    expect(saysOf(hole({ across: 35 }), { neck: { width: 30, widthAtNut: 30 } })).toEqual([
      'clear hole: 7.5 of 6, lid (60, 22.5) to (60, 15)',
    ])
  })
})

describe('a tongue that ends in the box', () => {
  // Stated from the inside of the neck-end wall, 6 thick: it ends at 86. 4 more to the hole, 12.5 its radius.
  const tongue = { neck: { ends: 'at a block', tongue: 80 } }

  test('is kept clear of at its end', () => {
    expect(saysOf(hole({ along: 102.5, across: 0 }), tongue)).toEqual([
      'care hole: 4 of 6, lid (90, 0) to (86, 0)',
    ])
    expect(saysOf(hole({ along: 104.5, across: 0 }), tongue)[0]).toMatch(/^clear hole: 6 of 6,/)
    // Over a through neck the same hole would be a stop: it would have to go 19 + 12.5 aside.
    expect(saysOf(hole({ along: 102.5, across: 0 }))[0]).toMatch(/^stop hole: -31.5 of 6,/)
  })

  test('is kept clear of at its corner', () => {
    // 12 behind its end and 9 beside its side: 15 from the corner less 12.5.
    expect(saysOf(hole({ along: 98, across: 28 }), tongue)).toEqual([
      'care hole: 2.5 of 6, lid (88, 20.5) to (86, 19)',
    ])
  })
})

test('the shortest tongue in a lid with the most play ends where the lid begins, and is kept clear of all the same', () => {
  // 5 inside the wall, where the lid with 5 of play begins.
  const shortest = {
    neck: { ends: 'at a block', tongue: 5 },
    box: { lid: { fit: 'between the walls', play: 5 } },
  }
  expect(saysOf(hole({ along: 16.5, across: 0 }), shortest)).toEqual([
    'care hole: 4 of 6, lid (4, 0) to (0, 0)',
  ])
})

test('says nothing of a pickup, which belongs over the neck, nor of another face', () => {
  expect(saysOf(pickup())).toEqual([])
  expect(saysOf(hole({ across: 0, face: 'base' }))).toEqual([])
  // A strip glued under the lid is not cut into it.
  expect(saysOf({ kind: 'glued-brace', id: 'strip', along: 60, across: 0 })).toEqual([])
})
