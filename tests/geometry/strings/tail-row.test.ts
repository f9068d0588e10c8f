import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { countsOf, holesFor, partsOf, scheduleOf, solve, tailPathsOf } from '../../../geometry/index.ts'
import { tailRow } from '../../../geometry/strings/tail-row.ts'
import { designOf, type Stated } from '../../support/designs.ts'

const both = (tailpiece: Stated, count = 4) =>
  designOf({ strings: { count }, tailpiece: { row: 'for each count', alsoFor: 3, span: 45, ...tailpiece } })

describe('a row for each count', () => {
  test('four and three over 45 mm: outer holes shared, the middle one of three between the inner two of four', () => {
    // By a pencil: four at -22.5, -7.5, 7.5, 22.5; three at -22.5, 0, 22.5. 7.5 less 2.4 leaves 5.1, more than 4.
    const design = both({})
    expect(tailRow(design).map((y) => Math.round(y * 1e6) / 1e6)).toEqual([-22.5, -7.5, 0, 7.5, 22.5])
    expect(holesFor(design, 4)).toEqual([0, 1, 3, 4])
    expect(holesFor(design, 3)).toEqual([0, 2, 4])
  })

  test('four and two: holes nearer than the web become one, half way, alike on both sides', () => {
    // Five over 20 stand at -10, -5, 0, 5, 10; four at -10, -3.33, 3.33, 10. 1.67 mm apart: one hole at 4.17.
    const design = both({ alsoFor: 5, span: 20 })
    expect(tailRow(design).map((y) => Math.round(y * 100) / 100)).toEqual([-10, -4.17, 0, 4.17, 10])
    expect(holesFor(design, 5)).toEqual([0, 1, 2, 3, 4])
    expect(holesFor(design, 4)).toEqual([0, 1, 3, 4])
  })

  test('whatever the counts: alike on both sides, rising, every count served, each string by a hole of its own', () => {
    const counts = fc.integer({ min: 1, max: 12 })
    fc.assert(
      fc.property(counts, counts, counts, fc.integer({ min: 1, max: 80 }), (count, alsoFor, andFor, span) => {
        const design = both({ alsoFor, andFor, span }, count)
        const row = tailRow(design)
        for (const [index, y] of row.entries()) {
          expect(y + (row[row.length - 1 - index] ?? Number.NaN)).toBeCloseTo(0, 9)
          expect(y).toBeGreaterThan(row[index - 1] ?? Number.NEGATIVE_INFINITY)
        }
        for (const wanted of countsOf(design)) {
          const holes = holesFor(design, wanted)
          expect(holes).toHaveLength(wanted)
          expect(new Set(holes).size).toBe(wanted)
          expect(holes.every((hole) => hole !== undefined && hole >= 0 && hole < row.length)).toBe(true)
          expect([...holes].sort((a = 0, b = 0) => a - b)).toEqual(holes)
        }
      }),
    )
  })

  test('equal holes stay as they were', () => {
    const design = designOf({ strings: { count: 4 }, tailpiece: { holes: 5, span: 26, alsoFor: 3 } })
    expect(tailRow(design)).toEqual([-13, -6.5, 0, 6.5, 13])
    expect(holesFor(design, 4)).toEqual([0, 1, 3, 4])
    expect(holesFor(design, 3)).toEqual([0, 2, 4])
  })
})

describe('which counts', () => {
  const counts = (count: number, tailpiece: Stated) => countsOf(both(tailpiece, count))

  test('the instrument’s own first, each once, none for nought', () => {
    expect(counts(4, { alsoFor: 3, andFor: 0 })).toEqual([4, 3])
    expect(counts(4, { alsoFor: 0, andFor: 2 })).toEqual([4, 2])
    expect(counts(4, { alsoFor: 4, andFor: 1 })).toEqual([4, 1])
    expect(counts(3, { alsoFor: 1, andFor: 1 })).toEqual([3, 1])
    expect(counts(1, { alsoFor: 0, andFor: 0 })).toEqual([1])
  })

  test('a single string of a row for three has its hole in the middle', () => {
    const design = both({ alsoFor: 1 }, 3)
    expect(tailRow(design)).toEqual([-22.5, 0, 22.5])
    expect(holesFor(design, 1)).toEqual([1])
    expect(holesFor(design, 3)).toEqual([0, 1, 2])
  })

  test('a count that the row is not made for takes what is nearest of it', () => {
    // Five holes, made for 4 and 3; two strings take the outer ones.
    expect(holesFor(both({}), 2)).toEqual([0, 4])
  })
})

describe('how near two holes may come before they are one', () => {
  // Holes of 2.4: no less wood than the limit, nor less than a diameter. 6 and 5 over a span: the second from outside
  // lies at 3/10 and 1/4 of it from the middle, a twentieth apart.
  const holes = (span: number, limits: Stated = {}) =>
    tailRow(
      designOf({
        strings: { count: 6 },
        tailpiece: { row: 'for each count', alsoFor: 5, andFor: 0, span, diameter: 2.4 },
        limits,
      }),
    ).length

  test('as near as the limit and a diameter: two; a little nearer: one', () => {
    // 6 and 5 have nine places: the outer two shared, 6 more on the sides of 6 and 5, the middle of 5. 6.4 / 0.05 = 128.
    expect(holes(128.01, { tailHoleWeb: 4 })).toBe(9)
    expect(holes(127.9, { tailHoleWeb: 4 })).toBe(7)
    // Never less wood than the hole is wide: 4.8 / 0.05 = 96.
    expect(holes(96.01, { tailHoleWeb: 1 })).toBe(9)
    expect(holes(95.9, { tailHoleWeb: 1 })).toBe(7)
  })
})

describe('paths of every count', () => {
  test('holes in line with the strings turn them by nothing', () => {
    // 30 at the nut and the saddle, 30 at the holes: straight on.
    const layout = solve(
      designOf({
        strings: { count: 4, spanAtNut: 30, spanAtSaddle: 30 },
        tailpiece: { row: 'for each count', alsoFor: 3, span: 30 },
      }),
    )
    const paths = tailPathsOf(layout)
    expect(paths.map(({ count, string }) => `${count}:${string}`).join(' ')).toBe(
      '4:4 4:3 4:2 4:1 3:3 3:2 3:1',
    )
    for (const { sideways } of paths) expect(sideways).toBeCloseTo(0, 9)
  })

  test('sideways and down are those of the two right triangles behind the saddle', () => {
    const layout = solve(
      designOf({ strings: { spanAtNut: 26, spanAtSaddle: 26 }, tailpiece: { span: 40, alsoFor: 2 } }),
    )
    const path = tailPathsOf(layout).find(({ count, string }) => count === 2 && string === 1)
    const hole = layout.tailHoles.at(-1)
    const behind = (hole?.x ?? 0) - layout.saddle.x
    expect(path?.sideways).toBeCloseTo(Math.atan((20 - 13) / behind), 9)
    expect(path?.down).toBeCloseTo(Math.atan((layout.saddle.top - (hole?.z ?? 0)) / behind), 9)
  })
})

describe('what is cut', () => {
  test('the drilling strip names under each hole the counts it serves', () => {
    const strip = partsOf(solve(both({}))).find(({ id }) => id === 'tail-strip')
    const notes = strip?.operations.filter((one) => one.kind === 'note') ?? []
    const at = (text: string) => notes.filter((one) => one.text === text).map((one) => Math.round(one.at.x))
    expect(at('4')).toHaveLength(4)
    expect(at('3')).toHaveLength(3)
    expect(at('3')[1]).toBe(-1)
  })

  test('the ground wire has its hole through the tail-end wall, in the schedule too', () => {
    const layout = solve(designOf({ tailpiece: { groundHole: 3 }, neck: { width: 38, slotPlay: 0.4 } }))
    const row = scheduleOf(layout).find((one) => one.of === 'Ground wire')
    // Half of 38.4, 8 mm of wood and half the hole: 28.7 from the centreline.
    expect(row).toMatchObject({ part: 'tail-end-wall', diameter: 3 })
    expect(row?.line.distance).toBeCloseTo(28.7, 9)
    expect(scheduleOf(solve(designOf())).some((one) => one.of === 'Ground wire')).toBe(false)
  })
})
