import { areaD, differenceD, FillRule, type PathsD, unionD } from 'clipper2-ts'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  area,
  type Contour,
  circle,
  flatten,
  type Loops,
  place,
  rectangle,
  takenOut,
  united,
} from '../../../geometry/plane/index.ts'
import { placements, stars } from './shapes.ts'

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
