import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type Corners,
  cornerFault,
  homography,
  type Point,
  project,
  windingOf,
} from '../../../geometry/plane/index.ts'

const corners = (...list: [number, number][]) => list.map(([x, y]) => ({ x, y })) as unknown as Corners
const unit = corners([0, 0], [1, 0], [1, 1], [0, 1])

const near = (got: Point | null, [x, y]: [number, number], digits: number) => {
  expect(got?.x).toBeCloseTo(x, digits)
  expect(got?.y).toBeCloseTo(y, digits)
}

/** Coefficients and places worked out by the formula square to quadrilateral of Heckbert (1989), sec. 2.2.3. */
describe('published projections', () => {
  it('takes the unit square to a trapezoid', () => {
    const map = homography(unit, corners([0, 0], [4, 0], [3, 3], [1, 3]))
    const wanted = [4, 2, 0, 0, 6, 0, 0, 1]
    map.forEach((value, index) => {
      expect(value).toBeCloseTo(wanted[index]!, 10)
    })
    // The middle goes to the crossing of the diagonals, not to the middle of the area.
    near(project(map, { x: 0.5, y: 0.5 }), [2, 2], 10)
    near(project(map, { x: 0.5, y: 1 }), [2, 3], 10)
  })

  it('takes the unit square to any quadrilateral', () => {
    const map = homography(unit, corners([10, 20], [110, 30], [95, 140], [5, 120]))
    const wanted = [88.137255, -4.5343137, 10, 6.7647059, 111.17647, 20, -0.10784314, 0.09313725]
    map.forEach((value, index) => {
      expect(value).toBeCloseTo(wanted[index]!, index < 6 ? 5 : 8)
    })
    near(project(map, { x: 0.5, y: 0.5 }), [52.185185, 79.555556], 6)
    near(project(map, { x: 0.25, y: 0.75 }), [27.455934, 100.75206], 5)
  })

  it('takes a pixel of a photograph to millimetres of a lid of 220 × 150', () => {
    const map = homography(
      corners([120, 90], [840, 130], [800, 610], [150, 560]),
      corners([0, 0], [220, 0], [220, 150], [0, 150]),
    )
    near(project(map, { x: 480, y: 350 }), [112.50808, 71.909516], 4)
  })
})

describe('any projection', () => {
  const corner = (x: number, y: number) =>
    fc
      .tuple(fc.double({ min: -30, max: 30, noNaN: true }), fc.double({ min: -30, max: 30, noNaN: true }))
      .map(([dx, dy]) => ({ x: x + dx, y: y + dy }))
  // A square of 100 with each corner moved by up to 30 is always convex or nearly so.
  const seen = fc
    .tuple(corner(0, 0), corner(100, 0), corner(100, 100), corner(0, 100))
    .filter((four) => cornerFault(four) === null)

  it('maps its own corners exactly, and back again', () => {
    fc.assert(
      fc.property(seen, seen, (from, to) => {
        const there = homography(from, to)
        const back = homography(to, from)
        for (const [index, one] of from.entries()) {
          const at = project(there, one)!
          expect(Math.hypot(at.x - to[index]!.x, at.y - to[index]!.y)).toBeLessThan(1e-7)
          const home = project(back, at)!
          expect(Math.hypot(home.x - one.x, home.y - one.y)).toBeLessThan(1e-6)
        }
      }),
    )
  })

  it('maps straight lines to straight lines and keeps the cross ratio 4/3 of four even steps', () => {
    fc.assert(
      fc.property(seen, fc.double({ min: 0, max: 1, noNaN: true }), (to, slant) => {
        const map = homography(unit, to)
        const on = [0, 1, 2, 3].map(
          (step) => project(map, { x: 0.1 + 0.25 * step, y: 0.1 + 0.25 * step * slant })!,
        )
        const [a, b, c, d] = on as [Point, Point, Point, Point]
        const span = Math.hypot(d.x - a.x, d.y - a.y)
        for (const one of [b, c])
          expect(Math.abs((d.x - a.x) * (one.y - a.y) - (d.y - a.y) * (one.x - a.x)) / span).toBeLessThan(
            1e-7,
          )
        const far = (one: Point, two: Point) => Math.hypot(one.x - two.x, one.y - two.y)
        expect((far(a, c) * far(b, d)) / (far(b, c) * far(a, d))).toBeCloseTo(4 / 3, 6)
      }),
    )
  })
})

describe('corners that no camera sees', () => {
  it.each([
    ['together', corners([0, 0], [0, 0], [1, 1], [0, 1])],
    ['together', corners([3, 3], [3, 3], [3, 3], [3, 3])],
    ['in line', corners([0, 0], [1, 0], [2, 0], [0, 1])],
    ['crossed', corners([0, 0], [1, 0], [0, 1], [1, 1])],
    ['hollow', corners([0, 0], [4, 0], [1, 1], [0, 4])],
  ])('are %s', (fault, four) => {
    expect(cornerFault(four)).toBe(fault)
    expect(() => homography(unit, four)).toThrow(fault)
  })

  it('are as wrong, or as good, of a stamp as of a barn door', () => {
    for (const scale of [1e-4, 1, 1e6]) {
      const at = (...four: readonly (readonly [number, number])[]) =>
        corners(...(four.map(([x, y]) => [x * scale, y * scale]) as unknown as Parameters<typeof corners>))
      expect(cornerFault(at([0, 0], [1, 0], [1, 1], [0, 1]))).toBeNull()
      expect(cornerFault(at([0, 0], [1, 1e-7], [2, 0], [0, 1]))).toBe('in line')
    }
  })

  it('are judged by how they lie to each other, wherever that is and whichever way round they go', () => {
    for (const [dx, dy] of [
      [1000, 1000],
      [-1000, 500],
      [0, -2000],
    ] as const) {
      const at = (four: Corners) => four.map(({ x, y }) => ({ x: x + dx, y: y + dy })) as unknown as Corners
      const back = (four: Corners) => [...four].reverse() as unknown as Corners
      expect(cornerFault(at(unit))).toBeNull()
      expect(cornerFault(at(back(unit)))).toBeNull()
      expect(windingOf(at(unit))).toBe(1)
      expect(windingOf(at(back(unit)))).toBe(-1)
      expect(cornerFault(at(corners([0, 0], [1, 0], [0, 1], [1, 1])))).toBe('crossed')
      expect(cornerFault(at(corners([0, 0], [0, 4], [1, 1], [4, 0])))).toBe('hollow')
      for (const four of [
        corners([0, 0], [0, 0], [1, 1], [0, 1]),
        corners([0, 0], [1, 0], [1, 1], [0, 0]),
        corners([0, 0], [1, 0], [0, 0], [0, 1]),
      ])
        expect(cornerFault(at(four))).toBe('together')
    }
    // Long and slanting, as no sum of its corners is; still one way round.
    const long = corners([0, 0], [90, 30], [92, 35], [1, 6])
    expect([cornerFault(long), windingOf(long)]).toEqual([null, 1])
    // A point moved by half a thousandth of the size is a corner of its own, not one in line.
    expect(cornerFault(corners([0, 0], [0.5, -5e-4], [1, 0], [0, 1]))).toBeNull()
  })

  it('go one way or the other', () => {
    expect(windingOf(unit)).toBe(1)
    expect(windingOf([...unit].reverse() as unknown as Corners)).toBe(-1)
  })
})
