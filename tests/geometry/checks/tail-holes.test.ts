/**
 * The row of string holes: wood between them, to every edge they may break out of, and what other counts of strings find.
 *
 * Unless said otherwise three holes of 2.4, 26 over all, 14 behind the box, which ends at 702.2; the tail goes 38 on.
 */
import { describe, expect, test } from 'vitest'
import type { Stated } from '../../support/designs.ts'
import { at, to4, told } from './told.ts'

describe('wood between string holes', () => {
  const saysOf = (tailpiece: Stated, more: Stated = {}) => told('tail-hole-web', { ...more, tailpiece })

  test('is what is left between the first two of an even row', () => {
    expect(saysOf({})).toEqual(['clear tailpiece: 10.6 of 4, plan (716.2, -11.8) to (716.2, -1.2)'])
    expect(saysOf({ holes: 5, span: 40 })).toEqual([
      'clear tailpiece: 7.6 of 4, plan (716.2, -18.8) to (716.2, -11.2)',
    ])
    expect(saysOf({ holes: 2 })).toEqual(['clear tailpiece: 23.6 of 4, plan (716.2, -11.8) to (716.2, 11.8)'])
  })

  test('is wanted as much as one hole is wide, or the limit where that is more', () => {
    expect(saysOf({ span: 12.8 })[0]).toMatch(/^clear tailpiece: 4 of 4,/)
    expect(saysOf({ span: 12.79 })[0]).toMatch(/^care tailpiece: 3.995 of 4,/)
    expect(saysOf({ diameter: 6.5 })[0]).toMatch(/^clear tailpiece: 6.5 of 6.5,/)
    expect(saysOf({ diameter: 6.6 })[0]).toMatch(/^care tailpiece: 6.4 of 6.6,/)
  })

  test('holes that touch are a risk, holes that run into each other cannot be', () => {
    expect(saysOf({ span: 4.8 })[0]).toMatch(/^care tailpiece: 0 of 4,/)
    expect(saysOf({ span: 4.78 })[0]).toMatch(/^stop tailpiece: -0.01 of 4,/)
  })

  test('is told between the nearest two of an uneven row', () => {
    // Three strings want holes at 0 and 20 to either side, four at a third of that and at 20.
    const row = { row: 'for each count', alsoFor: 4, span: 40 }
    const third = 20 / 3
    expect(saysOf(row)).toEqual([
      `clear tailpiece: ${to4(third - 2.4)} of 4, plan ${at(716.2, -third + 1.2)} to ${at(716.2, -1.2)}`,
    ])
  })

  test('of one hole there is nothing to say', () => expect(saysOf({ holes: 1 })).toEqual([]))
})

describe('string holes to the edge', () => {
  const saysOf = (tailpiece: Stated, more: Stated = {}) => told('tail-hole-to-end', { ...more, tailpiece })

  test('in the tail, to its end and its side', () => {
    expect(saysOf({})).toEqual([
      'clear tailpiece: 22.8 of 10, plan (716.2, 0) to (740.2, 0)',
      'clear tailpiece + side: 4.8 of 2.5, plan (716.2, 13) to (716.2, 19)',
    ])
    expect(saysOf({ fromEdge: 20, span: 20 }, { neck: { tail: 30, width: 30, widthAtNut: 30 } })).toEqual([
      'care tailpiece: 8.8 of 10, plan (722.2, 0) to (732.2, 0)',
      'clear tailpiece + side: 3.8 of 2.5, plan (722.2, 10) to (722.2, 15)',
    ])
  })

  test.each([
    [{ fromEdge: 26.8 }, 'clear tailpiece: 10 of 10', 'clear tailpiece + side: 4.8 of 2.5'],
    [{ fromEdge: 26.81 }, 'care tailpiece: 9.99 of 10', 'clear tailpiece + side: 4.8 of 2.5'],
    [{ fromEdge: 36.8 }, 'care tailpiece: 0 of 10', 'clear tailpiece + side: 4.8 of 2.5'],
    [{ fromEdge: 36.81 }, 'stop tailpiece: -0.01 of 10', 'clear tailpiece + side: 4.8 of 2.5'],
    // 19 - 1.2 less half the span
    [{ span: 30.6 }, 'clear tailpiece: 22.8 of 10', 'clear tailpiece + side: 2.5 of 2.5'],
    [{ span: 30.62 }, 'clear tailpiece: 22.8 of 10', 'care tailpiece + side: 2.49 of 2.5'],
    [{ span: 35.6 }, 'clear tailpiece: 22.8 of 10', 'care tailpiece + side: 0 of 2.5'],
    [{ span: 35.62 }, 'clear tailpiece: 22.8 of 10', 'stop tailpiece + side: -0.01 of 2.5'],
  ])('%j', (tailpiece, end, side) => {
    const lines = saysOf(tailpiece)
    expect(lines.map((line) => line.split(',')[0])).toEqual([end, side])
  })

  test('in the lid, to whichever of its ends is nearer', () => {
    const lid = (fromEdge: number) => saysOf({ at: 'the lid', fromEdge })[0]
    // The lid lies from 462.2 to 702.2.
    expect(lid(14)).toBe('clear tailpiece: 12.8 of 10, plan (688.2, 0) to (702.2, 0)')
    expect(lid(9)).toBe('care tailpiece: 7.8 of 10, plan (693.2, 0) to (702.2, 0)')
    expect(lid(231)).toBe('care tailpiece: 7.8 of 10, plan (471.2, 0) to (462.2, 0)')
    expect(lid(119)).toBe('clear tailpiece: 117.8 of 10, plan (583.2, 0) to (702.2, 0)')
    expect(lid(121)).toBe('clear tailpiece: 117.8 of 10, plan (581.2, 0) to (462.2, 0)')
  })

  test('in a lid let in between walls, to its own edges', () => {
    // 0.5 of play all round: 240 - 12 - 1 = 227 long. Its saddle stands 0.72 of that along: it begins at 635 - 163.44.
    const [from, to] = [471.56, 698.56]
    const box = (walls: Stated) => ({ box: { lid: { fit: 'between the walls' }, walls } })
    const row = (fields: Stated) => ({ at: 'the lid', span: 96, ...fields })
    // A wall of 40 leaves 90 - 40 - 0.5 to its side: 1.5 beside the hole at 48.
    expect(saysOf(row({}), box({ bass: 40 }))).toEqual([
      `clear tailpiece: 12.8 of 10, plan ${at(to - 14, 0)} to ${at(to, 0)}`,
      `care tailpiece + side: 0.3 of 2.5, plan ${at(to - 14, -48)} to ${at(to - 14, -49.5)}`,
    ])
    expect(saysOf(row({ fromEdge: 222 }), box({ treble: 40 }))).toEqual([
      `care tailpiece: 3.8 of 10, plan ${at(from + 5, 0)} to ${at(from, 0)}`,
      `care tailpiece + side: 0.3 of 2.5, plan ${at(from + 5, 48)} to ${at(from + 5, 49.5)}`,
    ])
  })

  test('in the tail-end wall, down to whichever of its edges is nearer, and to its end', () => {
    // The wall is 47 tall and 180 wide; its frame begins at the middle of its upper edge.
    const wall = (fields: Stated) => saysOf({ at: 'the tail-end wall', ...fields })
    expect(wall({ fromEdge: 10 })).toEqual([
      'care tailpiece: 8.8 of 10, tail-end-wall (0, -10) to (0, 0)',
      'clear tailpiece + side: 75.8 of 2.5, tail-end-wall (13, -10) to (90, -10)',
    ])
    expect(wall({ fromEdge: 40, span: 170 })).toEqual([
      'care tailpiece: 5.8 of 10, tail-end-wall (0, -40) to (0, -47)',
      'clear tailpiece + side: 3.8 of 2.5, tail-end-wall (85, -40) to (90, -40)',
    ])
    expect(wall({ fromEdge: 23 })[0]).toBe('clear tailpiece: 21.8 of 10, tail-end-wall (0, -23) to (0, 0)')
    expect(wall({ fromEdge: 24 })[0]).toBe('clear tailpiece: 21.8 of 10, tail-end-wall (0, -24) to (0, -47)')
  })
})

describe('a tail to hold the strings', () => {
  const saysOf = (neck: Stated, tailpiece: Stated = {}) => told('tail-to-hold', { neck, tailpiece })

  test.each([
    [{ tail: 14 }, 'clear tailpiece + neck: 14 of 14, plan (702.2, 0) to (716.2, 0)'],
    [{ tail: 13.99 }, 'stop tailpiece + neck: 13.99 of 14, plan (702.2, 0) to (716.2, 0)'],
    [{ tail: 38, ends: 'at a block' }, 'stop tailpiece + neck: 0 of 14, plan (702.2, 0) to (716.2, 0)'],
  ])('%j', (neck, line) => expect(saysOf(neck)).toEqual([line]))

  test('is wanted only by strings that are held there', () => {
    for (const held of ['the lid', 'the tail-end wall'])
      expect(saysOf({ ends: 'at a block' }, { at: held })).toEqual([])
  })
})

describe('a hole for every string', () => {
  const saysOf = (tailpiece: Stated) => told('tail-holes-for-strings', { tailpiece })

  test.each([
    [{ holes: 2 }, 'stop tailpiece: 2 of 3, plan (716.2, -13) to (716.2, 13)'],
    [{ holes: 3, span: 30 }, 'clear tailpiece: 3 of 3, plan (716.2, -15) to (716.2, 15)'],
    [{ holes: 4 }, 'clear tailpiece: 4 of 3, plan (716.2, -13) to (716.2, 13)'],
    [{ holes: 1 }, 'stop tailpiece: 1 of 3, plan (716.2, 0) to (716.2, 0)'],
  ])('%j', (tailpiece, line) => expect(saysOf(tailpiece)).toEqual([line]))
})

describe('other counts of strings', () => {
  const saysOf = (tailpiece: Stated, more: Stated = {}) => told('tail-other-counts', { ...more, tailpiece })
  const degrees = (radians: number) => (radians * 180) / Math.PI
  /** From `y` at the saddle to a hole 81.2 behind it, for a string that comes straight from `nut` at the nut. */
  const turn = (nut: number, y: number, hole: number) =>
    Math.abs(degrees(Math.atan((hole - y) / 81.2) - Math.atan((y - nut) / 635)))

  test('are not asked about where none but the own is stated', () => {
    expect(saysOf({})).toEqual([])
    expect(saysOf({ alsoFor: 3 })).toEqual([])
  })

  test('one finding each, in the order stated', () => {
    const [two, five] = saysOf({ alsoFor: 2, andFor: 5, holes: 5, span: 40 })
    const [other, ...rest] = saysOf({ andFor: 2, holes: 5, span: 40 })
    expect(rest).toEqual([])
    expect(other).toBe(two)
    // Two strings 24 apart at the nut and 26 at the saddle in the outermost holes, 40 apart.
    expect(two).toBe(
      `care tailpiece + 2 strings: ${to4(turn(-12, -13, -20))} of 3, plan (635, -13) to (716.2, -20)`,
    )
    expect(five).toBe(
      `care tailpiece + 5 strings: ${to4(turn(-12, -13, -20))} of 3, plan (635, -13) to (716.2, -20)`,
    )
  })

  test('the string that turns most is told, not the outermost', () => {
    // Four strings at thirds of 26, of which the inner two, alike, go to the second and fourth of five holes 7.5 apart.
    const inner = to4(turn(-4, -13 / 3, -7.5))
    const [line] = saysOf({ alsoFor: 4, holes: 5, span: 30 })
    const to = (side: 1 | -1) => `plan ${at(635, (side * 13) / 3)} to ${at(716.2, side * 7.5)}`
    expect(
      [1, -1].map((side) => `clear tailpiece + 4 strings: ${inner} of 3, ${to(side as 1 | -1)}`),
    ).toContain(line)
  })

  test('just inside and just outside the limit', () => {
    const most = turn(-12, -13, -20)
    const strict = (limit: number) =>
      saysOf({ alsoFor: 2, span: 40 }, { limits: { sideAngleAtSaddle: limit } })[0]?.split(' ')[0]
    expect(strict(most + 1e-6)).toBe('clear')
    expect(strict(most - 1e-6)).toBe('care')
  })

  test('a string without a hole turns straight across, whatever may be borne with', () => {
    expect(saysOf({ alsoFor: 5 })).toEqual([
      'stop tailpiece + 5 strings: 90 of 3, plan (635, -13) to (635, -13)',
    ])
    expect(saysOf({ alsoFor: 5 }, { limits: { sideAngleAtSaddle: 120 } })).toEqual([
      'stop tailpiece + 5 strings: 90 of 90, plan (635, -13) to (635, -13)',
    ])
  })
})
