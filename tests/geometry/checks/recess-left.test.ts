/** What is let into a face must leave some of it; and the web between the holes of a rosette, wherever it is turned. */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { hole, screw, things } from './breaking/case.ts'
import { told } from './told.ts'

const saysOf = (thing: Stated, more: Stated = {}) => told('recess-left', { ...more, ...things(thing) })
const plate = (fields: Stated = {}): Stated => ({
  kind: 'name-plate',
  id: 'plate',
  along: 60,
  across: 60,
  ...fields,
})

describe('wood left under what is let in', () => {
  test.each([
    // Of a lid of 4.
    [0.5, 'clear plate: 3.5 of 1'],
    [3, 'clear plate: 1 of 1'],
    [3.01, 'care plate: 0.99 of 1'],
    [3.99, 'care plate: 0.01 of 1'],
    // A hair is a hair; nothing is nothing.
    [3.9995, 'care plate: 0.0005 of 1'],
    [4, 'stop plate: 0 of 1'],
    [4.5, 'stop plate: -0.5 of 1'],
  ])('a plate %d deep', (depth, said) => {
    expect(saysOf(plate({ depth }))).toEqual([`${said}, lid (60, 60) to (60, 60)`])
  })

  test('goes by the thickness of its own face', () => {
    expect(saysOf(plate({ face: 'treble-wall', along: 20, across: 20, depth: 5 }))).toEqual([
      'clear plate: 1 of 1, treble-wall (20, -20) to (20, -20)',
    ])
    expect(saysOf(plate({ face: 'base', depth: 5 }), { box: { base: { thickness: 7 } } })[0]).toMatch(
      /^clear plate: 2 of 1, base/,
    )
  })

  test('of a countersink goes by its depth, and tells how deep and how thick', () => {
    // A head of 10 over a hole of 3 goes (10 - 3) / 2 in.
    expect(saysOf(screw({ head: 6, clearance: 3 }))[0]).toMatch(/^clear screw: 2.5 of 1,/)
    const layout = solve(designOf(things(screw({ head: 10, clearance: 3 }))))
    const finding = check(layout).find(({ rule }) => rule === 'recess-left')
    if (!finding) throw new Error('nothing is said')
    expect(finding).toMatchObject({ grade: 'care', measured: 0.5, limit: 1 })
    expect(sentenceOf(finding, layout)).toContain('is let in 3.5 mm and the wood is 4.0 mm')
  })

  test('a bore from either side is one', () => {
    const jack = { kind: 'jack', id: 'jack', face: 'treble-wall', along: 0, across: 25, boreDepth: 5.5 }
    for (const bore of ['from inside', 'from outside'])
      expect(saysOf({ ...jack, bore })[0]).toMatch(/^care jack: 0.5 of 1,/)
    expect(saysOf({ ...jack, bore: 'none' })).toEqual([])
  })

  test('is not asked of what goes right through, of a rim, or of what is not let in', () => {
    expect(saysOf(hole())).toEqual([])
    expect(saysOf(hole({ rimWidth: 4, rimDepth: 3.9 }))).toEqual([])
    expect(saysOf(screw({ head: 0 }))).toEqual([])
    expect(saysOf({ kind: 'rosette', id: 'rose', along: 60, across: 50 })).toEqual([])
  })
})
