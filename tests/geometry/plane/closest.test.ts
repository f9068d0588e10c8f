/** The shortest way between two lines or arcs, against looking all along both. */
import { describe, expect, it, test } from 'vitest'
import { closest, noWay } from '../../../geometry/plane/closest.ts'
import { law, seed } from './law.ts'
import { arc, pieceOf, searchedBetween, searchedFrom, segments, straight } from './segments.ts'

describe(`closest (seed ${seed})`, () => {
  it('are as short as looking all along both says, from line to line', () => {
    const met = { apart: 0, crossing: 0 }
    law(
      [segments, segments],
      (a, b) => {
        const way = noWay()
        closest(pieceOf(a), pieceOf(b), way)
        expect(Math.abs(way.distance - searchedBetween(a, b))).toBeLessThan(2e-4)
        expect(Math.abs(way.distance - Math.hypot(way.ax - way.bx, way.ay - way.by))).toBeLessThan(1e-9)
        expect(searchedFrom(a, { x: way.ax, y: way.ay }).distance).toBeLessThan(1e-5)
        expect(searchedFrom(b, { x: way.bx, y: way.by }).distance).toBeLessThan(1e-5)
        if (way.distance > 0) met.apart++
        else met.crossing++
      },
      150,
    )
    expect(Math.min(met.apart, met.crossing)).toBeGreaterThan(8)
  })

  test('ways that only one kind of meeting has, by hand', () => {
    for (const [a, b, wanted] of [
      // Bow to bow: centres 13 apart, radii 5 and 3 about them.
      [arc(0, 0, 5, 0, 90), arc(5, 12, 3, 200, 300), 5],
      // One within the other, off its centre by 1: 10 - 1 - 4 where both face the same way.
      [arc(0, 0, 10, -60, 60), arc(1, 0, 4, -60, 60), 5],
      // The same, seen from the smaller one, the centres the other way about.
      [arc(0, 0, 4, 120, 240), arc(1, 0, 10, 120, 240), 5],
      // A line past the bow of an arc, by 8 - 5; before and beyond its foot only the line's end counts.
      [straight(-9, 8, 9, 8), arc(0, 0, 5, 45, 135), 3],
      [straight(3, 9, 30, 9), arc(0, 0, 5, 0, 180), Math.hypot(3, 9) - 5],
      [straight(-30, 9, -3, 9), arc(0, 0, 5, 0, 180), Math.hypot(3, 9) - 5],
    ] as const) {
      for (const [one, other] of [
        [a, b],
        [b, a],
      ] as const) {
        const way = noWay()
        closest(pieceOf(one), pieceOf(other), way)
        expect(way.distance).toBeCloseTo(wanted, 9)
      }
    }
  })

  test('arcs whose circles cross, but not where the arcs run, are as far apart as looking says', () => {
    // Circles of 5 and 4 whose centres lie 6 apart: every pair of quarters, and of three quarters.
    for (const long of [90, 270])
      for (let i = 0; i < 4; i++)
        for (let k = 0; k < 4; k++) {
          const [a, b] = [arc(0, 0, 5, 90 * i + 10, 90 * i + long), arc(6, 0, 4, 90 * k + 20, 90 * k + long)]
          const [there, back] = [noWay(), noWay()]
          closest(pieceOf(a), pieceOf(b), there)
          closest(pieceOf(b), pieceOf(a), back)
          expect(Math.abs(there.distance - searchedBetween(a, b))).toBeLessThan(1e-4)
          expect(back.distance).toBeCloseTo(there.distance, 9)
        }
  })

  test('a way already found is kept where no shorter one is there', () => {
    const known = { distance: 2, ax: 1, ay: 2, bx: 3, by: 4 }
    const way = { ...known }
    closest(pieceOf(straight(0, 0, 10, 0)), pieceOf(straight(0, 3, 10, 3)), way)
    expect(way).toEqual(known)
    closest(pieceOf(straight(0, 0, 10, 0)), pieceOf(straight(4, 1, 4, 3)), way)
    expect(way).toEqual({ distance: 1, ax: 4, ay: 0, bx: 4, by: 1 })
  })
})
