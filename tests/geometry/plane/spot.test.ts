/** From a place to a line or arc, against looking all along it; between boxes, by hand. */
import { describe, expect, it, test } from 'vitest'
import {
  boxGapSquared,
  boxToPointSquared,
  distanceToPiece,
  nearestOnPiece,
} from '../../../geometry/plane/spot.ts'
import { law, seed } from './law.ts'
import { arc, pieceOf, searchedFrom, segments, straight } from './segments.ts'
import { apart, points } from './shapes.ts'

describe(`spots (seed ${seed})`, () => {
  it('the place nearest on a line or arc is the one that looking all along it finds', () => {
    law(
      [segments, points],
      (drawn, { x, y }) => {
        const piece = pieceOf(drawn)
        const seen = searchedFrom(drawn, { x, y })
        expect(Math.abs(distanceToPiece(piece, x, y) - seen.distance)).toBeLessThan(1e-6)
        const spot = { x: Number.NaN, y: Number.NaN }
        nearestOnPiece(piece, x, y, spot)
        expect(Math.abs(apart(spot, { x, y }) - seen.distance)).toBeLessThan(1e-6)
        expect(searchedFrom(drawn, spot).distance).toBeLessThan(1e-6)
      },
      250,
    )
  })

  test('beyond either end of a line it is that end, and from a centre the middle of the arc', () => {
    const spot = { x: 0, y: 0 }
    const level = pieceOf(straight(2, 1, 10, 1))
    for (const [x, y, toX, distance] of [
      [-1, 5, 2, 5],
      [13, -3, 10, 5],
      [2, 4, 2, 3],
      [10, 4, 10, 3],
      [6, -2, 6, 3],
    ] as const) {
      nearestOnPiece(level, x, y, spot)
      expect(spot).toEqual({ x: toX, y: 1 })
      expect(distanceToPiece(level, x, y)).toBeCloseTo(distance, 12)
    }
    const bow = pieceOf(arc(1, 2, 5, 30, 90))
    nearestOnPiece(bow, 1, 2, spot)
    expect(spot.x).toBeCloseTo(1 + 5 / 2, 9)
    expect(spot.y).toBeCloseTo(2 + 5 * (Math.sqrt(3) / 2), 9)
    expect(distanceToPiece(bow, 1, 2)).toBeCloseTo(5, 12)
    // As far from either end: the first is named.
    nearestOnPiece(pieceOf(arc(0, 0, 5, 90, 270)), 9, 0, spot)
    expect(spot).toEqual({ x: expect.closeTo(0, 9), y: expect.closeTo(5, 9) })
  })

  test('boxes are apart by what lies between them, each way', () => {
    const box = { minX: 0, minY: 0, maxX: 10, maxY: 4 }
    const at = (x: number, y: number) => ({ minX: x, minY: y, maxX: x + 2, maxY: y + 1 })
    for (const [x, y, squared] of [
      [13, 1, 9],
      [-5, 1, 9],
      [3, 8, 16],
      [3, -5, 16],
      [13, 8, 25],
      [-5, -5, 25],
      [10, 4, 0],
      [4, 2, 0],
    ] as const) {
      expect(boxGapSquared(box, at(x, y))).toBe(squared)
      expect(boxGapSquared(at(x, y), box)).toBe(squared)
    }
    for (const [x, y, squared] of [
      [13, 2, 9],
      [-3, 2, 9],
      [5, 8, 16],
      [5, -4, 16],
      [13, -4, 25],
      [10, 4, 0],
      [5, 2, 0],
    ] as const)
      expect(boxToPointSquared(box, x, y)).toBe(squared)
  })
})
