/** What hangs in the box and what is let into its faces, against their depth. */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { hole, pickup, screw, things } from './breaking/case.ts'
import { told } from './told.ts'

describe('room under the neck', () => {
  // The neck's underside 19 below the lid's face, the base's inner side 51; inside from 468.2 to 696.2.
  test.each([
    [{ box: { depth: 25 } }, 'clear neck: 2 of 2, section (582.2, -19) to (582.2, -21)'],
    [{ box: { depth: 24.9 } }, 'care neck: 1.9 of 2, section (582.2, -19) to (582.2, -20.9)'],
    [{ box: { depth: 23 } }, 'care neck: 0 of 2, section (582.2, -19) to (582.2, -19)'],
    [{ box: { depth: 22.9 } }, 'stop neck: -0.1 of 2, section (582.2, -19) to (582.2, -18.9)'],
    // Raised or thicker.
    [{ neck: { rise: 3 } }, 'clear neck: 35 of 2, section (582.2, -16) to (582.2, -51)'],
    [{ neck: { thickness: 30 } }, 'clear neck: 21 of 2, section (582.2, -30) to (582.2, -51)'],
    [{ box: { base: { thickness: 6 } } }, 'clear neck: 30 of 2, section (582.2, -19) to (582.2, -49)'],
    // A tongue of 80 ends at 548.2: half way from the wall to there.
    [{ neck: { ends: 'at a block' } }, 'clear neck: 32 of 2, section (508.2, -19) to (508.2, -51)'],
  ] as const)('%j', (design, line) => expect(told('room-under-neck', design)).toEqual([line]))
})

describe('room under hardware', () => {
  const saysOf = (...list: Stated[]) => told('room-under-hardware', things(...list))

  test.each([
    // A pickup a tenth of the scale before the saddle: at 571.5.
    [49, 'clear pickup: 2 of 2, section (571.5, -49) to (571.5, -51)'],
    [49.1, 'care pickup: 1.9 of 2, section (571.5, -49.1) to (571.5, -51)'],
    [51, 'care pickup: 0 of 2, section (571.5, -51) to (571.5, -51)'],
    [51.1, 'stop pickup: -0.1 of 2, section (571.5, -51.1) to (571.5, -51)'],
  ])('a pickup %d deep', (depth, line) => expect(saysOf(pickup({ depth }))).toEqual([line]))

  test('is shown where each of them hangs', () => {
    const two = saysOf(pickup({ along: 40, depth: 20 }), pickup({ id: 'other', along: 100, depth: 30 }))
    expect(two).toEqual([
      'clear pickup: 31 of 2, section (502.2, -20) to (502.2, -51)',
      'clear other: 21 of 2, section (562.2, -30) to (562.2, -51)',
    ])
  })

  test('is not asked of holes, of screws, or of what hangs on another face', () => {
    expect(saysOf(hole())).toEqual([])
    expect(saysOf(screw())).toEqual([])
    expect(saysOf({ kind: 'jack', id: 'jack', face: 'treble-wall', along: 0, across: 25 })).toEqual([])
  })
})

describe('a rim', () => {
  const saysOf = (rule: string, fields: Stated, more: Stated = {}) =>
    told(rule, { ...more, ...things(hole({ rimWidth: 4, ...fields })) })
  const ON = 'lid (60, 60) to (60, 60)'

  test.each([
    // Half of a lid of 4; all of it, and it falls through.
    [2, 'clear hole: 2 of 2'],
    [2.01, 'care hole: 2.01 of 2'],
    [3.99, 'care hole: 3.99 of 2'],
    [4, 'stop hole: 4 of 2'],
  ])('%d deep', (rimDepth, said) => expect(saysOf('rim-depth', { rimDepth })).toEqual([`${said}, ${ON}`]))

  test('goes by the thickness of its own face, and more than all of it cannot be wanted', () => {
    expect(
      saysOf('rim-depth', { face: 'base', rimDepth: 3 }, { box: { base: { thickness: 6 } } })[0],
    ).toMatch(/^clear hole: 3 of 3, base/)
    expect(saysOf('rim-depth', { rimDepth: 3 }, { limits: { rimShare: 0.75 } })[0]).toMatch(
      /^clear hole: 3 of 3,/,
    )
    expect(saysOf('rim-depth', { rimDepth: 3.5 }, { limits: { rimShare: 2 } })[0]).toMatch(
      /^clear hole: 3.5 of 4,/,
    )
    expect(saysOf('rim-depth', { rimDepth: 4.5 }, { limits: { rimShare: 2 } })[0]).toMatch(
      /^stop hole: 4.5 of 4,/,
    )
  })

  test('that falls through is told how thin the wood is', () => {
    const layout = solve(designOf(things(hole({ rimWidth: 4, rimDepth: 4.5 }))))
    const finding = check(layout).find(({ rule }) => rule === 'rim-depth')
    if (!finding) throw new Error('nothing is said')
    expect(sentenceOf(finding, layout)).toContain('4.5 mm deep and the wood only 4.0 mm')
  })

  test.each([
    [3, 'clear hole: 3 of 3'],
    [2.99, 'care hole: 2.99 of 3'],
    [0.5, 'care hole: 0.5 of 3'],
  ])('with a ledge of %d', (rimWidth, said) => {
    expect(saysOf('rim-ledge', { rimWidth })).toEqual([`${said}, ${ON}`])
  })

  test('is not asked of a hole that has none', () => {
    for (const rule of ['rim-depth', 'rim-ledge']) {
      expect(saysOf(rule, { rimWidth: 0 })).toEqual([])
      expect(told(rule, things(pickup()))).toEqual([])
    }
  })
})
