/** Wood behind the last fret, and a board that runs on over the lid. */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { told } from './told.ts'

const twelve = (more: Stated = {}): Stated => ({ scale: { frets: { by: 'equal', count: 12 } }, ...more })
/** Fret 12 of 635 lies at its half. */
const board = (length: number) => twelve({ board: { ends: 'at a length', length } })

describe('wood behind the last fret', () => {
  test.each([
    [320.5, 'clear board: 3 of 3, plan (317.5, 0) to (320.5, 0)'],
    [320.4, 'care board: 2.9 of 3, plan (317.5, 0) to (320.4, 0)'],
    [317.5, 'care board: 0 of 3, plan (317.5, 0) to (317.5, 0)'],
    [317.4, 'stop board: -0.1 of 3, plan (317.5, 0) to (317.4, 0)'],
  ])('of a board %d long', (length, line) => {
    expect(told('board-behind-last-fret', board(length))).toEqual([line])
  })

  test('of a bare neck ends where it is cut down to go under the lid', () => {
    // A notch at 462.2, where the box begins.
    expect(told('board-behind-last-fret', twelve({ board: { fitted: false } }))).toEqual([
      'clear neck: 144.7 of 3, plan (317.5, 0) to (462.2, 0)',
    ])
    // Let in as deep as the lid is thick it needs no notch: only the relief of 3 under the lid, 10 inside the wall of 6.
    expect(told('board-behind-last-fret', twelve({ board: { fitted: false }, neck: { rise: -4 } }))).toEqual([
      'clear neck: 160.7 of 3, plan (317.5, 0) to (478.2, 0)',
    ])
    // Deeper it is cut down nowhere: to the end of its tail.
    expect(told('board-behind-last-fret', twelve({ board: { fitted: false }, neck: { rise: -8 } }))).toEqual([
      'clear neck: 422.7 of 3, plan (317.5, 0) to (740.2, 0)',
    ])
  })

  test('names the fret', () => {
    const layout = solve(designOf(board(310)))
    const finding = check(layout).find(({ rule }) => rule === 'board-behind-last-fret')
    if (!finding) throw new Error('nothing is said')
    expect(sentenceOf(finding, layout)).toMatch(/^Fret 12 falls 7\.5 mm behind/)
  })

  test('is not asked for where there is no fret', () => {
    const none = { scale: { frets: { by: 'equal', count: 0 } } }
    expect(told('board-behind-last-fret', none)).toEqual([])
    expect(
      told('board-behind-last-fret', { scale: { start: 'zero fret', frets: { by: 'equal', count: 0 } } }),
    ).toEqual([])
    const first = { scale: { frets: { by: 'equal', count: 1 } } }
    expect(told('board-behind-last-fret', first)).toHaveLength(1)
  })
})

describe('a board over the lid', () => {
  const over = (rise: number, length = 500) =>
    told('board-over-lid', { board: { ends: 'at a length', length }, neck: { rise } })

  // The lid begins at 462.2; the board's underside is the neck's top.
  test.each([
    [0, 'clear board: 0 of 0, section (462.2, 0) to (500, 0)'],
    [2, 'clear board: 2 of 0, section (462.2, 2) to (500, 2)'],
    [-0.1, 'stop board: -0.1 of 0, section (462.2, -0.1) to (500, -0.1)'],
  ])('raised by %d', (rise, line) => expect(over(rise)).toEqual([line]))

  test('is none where it ends before the lid, or is not there', () => {
    expect(over(-2, 462.2)).toEqual([])
    expect(over(-2, 462.3)).toHaveLength(1)
    expect(told('board-over-lid', { board: { fitted: false }, neck: { rise: -2 } })).toEqual([])
  })
})
