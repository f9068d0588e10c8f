import { areaD, differenceD, FillRule, type PathsD, unionD } from 'clipper2-ts'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  area,
  type Contour,
  chain,
  circle,
  flatten,
  type Loops,
  place,
  rectangle,
  takenOut,
  united,
} from '../../../geometry/plane/index.ts'
import { notchedPlate, placements, stars } from './shapes.ts'

const sum = ({ outers, holes }: Loops): number =>
  outers.reduce((all, one) => all + area(one), 0) - holes.reduce((all, one) => all + area(one), 0)

/** A library that knows straight lines only, given short ones. */
const all = (paths: PathsD): number => paths.reduce((sum, one) => sum + areaD(one), 0)
const path = (contour: Contour) => [flatten(contour, 0.0005).map(({ x, y }) => ({ x, y }))]

/** For a busy machine, ms. */
const PATIENCE = 30_000

describe('one contour taken out of another', () => {
  test('a slot that runs out over an edge leaves a notch', () => {
    const left = takenOut(rectangle(0, 0, 100, 40), rectangle(40, 30, 60, 41))
    expect(left.outers).toHaveLength(1)
    expect(left.outers[0]?.vertices).toHaveLength(8)
    expect(sum(left)).toBeCloseTo(4000 - 20 * 10, 9)
  })

  test('a cut right across leaves two pieces, one inside a hole, one over everything nothing', () => {
    const plate = rectangle(0, 0, 100, 40)
    expect(takenOut(plate, rectangle(40, -1, 60, 41)).outers).toHaveLength(2)
    const holed = takenOut(plate, circle({ x: 50, y: 20 }, 5))
    expect([holed.outers.length, holed.holes.length]).toEqual([1, 1])
    expect(takenOut(plate, rectangle(-1, -1, 101, 41))).toEqual({ outers: [], holes: [], torn: false })
  })

  test('a cut that ends on the edge itself leaves no line there', () => {
    expect(sum(takenOut(rectangle(0, 0, 100, 40), rectangle(40, 30, 60, 40)))).toBeCloseTo(3800, 9)
  })

  test(
    'any two of lines and arcs: the areas that a library of polygons finds',
    () => {
      fc.assert(
        fc.property(stars, placements, stars, placements, (a, atA, b, atB) => {
          const [one, other] = [place(a, atA), place(b, atB)]
          const difference = all(differenceD(path(one), path(other), FillRule.NonZero, 6))
          const union = all(unionD(path(one), path(other), FillRule.NonZero, 6))
          expect([takenOut(one, other).torn, united(one, other).torn]).toEqual([false, false])
          expect(Math.abs(sum(takenOut(one, other)) - difference)).toBeLessThan(0.3)
          expect(Math.abs(sum(united(one, other)) - union)).toBeLessThan(0.3)
        }),
        { numRuns: 200 },
      )
    },
    PATIENCE,
  )
})

describe('contours that share a part of their lines', () => {
  const at = { x: 4, y: -7, turn: 0.3, mirrored: true }
  const level = { x: 0, y: 0, turn: 0, mirrored: false }
  /** The upper or lower half of a disc of 5 about the origin. */
  const half = (upper: boolean): Contour =>
    chain(
      [
        { x: upper ? 5 : -5, y: 0, bulge: 1 },
        { x: upper ? -5 : 5, y: 0, bulge: 0 },
      ],
      true,
    )
  const disc = circle({ x: 0, y: 0 }, 5)
  // 60 × 40 with a half-round bay of 10 in its head, and what fills the bay and stands out as far again.
  const bay = notchedPlate
  const plug = circle({ x: 30, y: 40 }, 10)
  const table: readonly (readonly [string, Contour, Contour, number, number])[] = [
    // Name, the one, the other, what is left of the one, and both together: by hand.
    ['a disc and its upper half', disc, half(true), 12.5 * Math.PI, 25 * Math.PI],
    ['a disc and its lower half', disc, half(false), 12.5 * Math.PI, 25 * Math.PI],
    ['the halves of a disc', half(true), half(false), 12.5 * Math.PI, 25 * Math.PI],
    ['a half and its disc', half(true), disc, 0, 25 * Math.PI],
    ['a disc twice', disc, circle({ x: 0, y: 0 }, 5), 0, 25 * Math.PI],
    ['a bay and what fills it', bay, plug, 2400 - 50 * Math.PI, 2400 + 50 * Math.PI],
    ['what fills a bay, and the bay', plug, bay, 100 * Math.PI, 2400 + 50 * Math.PI],
    ['plates side by side', rectangle(0, 0, 10, 6), rectangle(10, 2, 20, 9), 60, 130],
    ['plates one on another', rectangle(0, 0, 10, 6), rectangle(3, 6, 7, 8), 60, 68],
    ['a plate within another along its foot', rectangle(0, 0, 10, 6), rectangle(2, 0, 5, 4), 48, 60],
    ['a plate within another along two sides', rectangle(0, 0, 10, 6), rectangle(7, 0, 10, 4), 48, 60],
    ['a plate and one that holds it along a side', rectangle(2, 0, 5, 4), rectangle(0, 0, 10, 6), 0, 60],
  ]
  test.each(table)('%s', (_, one, other, left, both) => {
    for (const how of [level, at]) {
      const [a, b] = [place(one, how), place(other, how)]
      const [cut, joined] = [takenOut(a, b), united(a, b)]
      expect([cut.torn, joined.torn]).toEqual([false, false])
      expect(sum(cut)).toBeCloseTo(left, 6)
      expect(sum(joined)).toBeCloseTo(both, 6)
      expect(joined.outers).toHaveLength(1)
      expect(joined.holes).toEqual([])
    }
  })
})

describe('two contours as one', () => {
  test('that share a side lose it', () => {
    const both = united(rectangle(0, 0, 10, 10), rectangle(10, 0, 20, 10))
    expect(both.outers).toHaveLength(1)
    expect(sum(both)).toBeCloseTo(200, 9)
  })

  test('that lie apart stay two', () => {
    expect(united(rectangle(0, 0, 10, 10), circle({ x: 50, y: 0 }, 5)).outers).toHaveLength(2)
  })
})
