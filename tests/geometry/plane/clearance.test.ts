/** Room of a hole in the faces that most boxes have, side by side and corner by corner, by hand. */
import { describe, expect, it, test } from 'vitest'
import type { Chain, Contour, Placement } from '../../../geometry/plane/index.ts'
import {
  chain,
  circle,
  clearance,
  isWithin,
  place,
  polygon,
  rectangle,
} from '../../../geometry/plane/index.ts'

const near = (x: number, y: number) => ({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) })

/** The same plate from each of its corners on. */
const begunAnywhere = ({ vertices, ...rest }: Chain): Chain[] =>
  vertices.map((_, index) => ({ ...rest, vertices: [...vertices.slice(index), ...vertices.slice(0, index)] }))

describe('a round hole in a rectangular plate', () => {
  // 60 × 40 about (10, 5): sides at x -20 and 40, y -15 and 25.
  const plates = begunAnywhere(rectangle(-20, -15, 40, 25))
  const table: readonly (readonly [string, number, number, number, number, readonly number[]])[] = [
    ['at the left', -13, 3, 4, 3, [-17, 3, -20, 3]],
    ['at the right', 33, 3, 4, 3, [37, 3, 40, 3]],
    ['at the foot', 8, -9, 4, 2, [8, -13, 8, -15]],
    ['at the head', 8, 19, 4, 2, [8, 23, 8, 25]],
    ['over the left side', -18, 3, 4, -2, [-22, 3, -20, 3]],
    ['over the right side', 39, 3, 4, -3, [43, 3, 40, 3]],
    ['over the foot', 8, -14, 4, -3, [8, -18, 8, -15]],
    ['over the head', 8, 22, 4, -1, [8, 26, 8, 25]],
    ['beyond the left side, level with it', -30, 3, 4, -14, [-34, 3, -20, 3]],
    ['beyond the head, level with it', 8, 40, 4, -19, [8, 44, 8, 25]],
    // 3-4-5 out of a corner: 5 to the centre, and the radius.
    ['beyond a corner', 43, 29, 2, -7, [43 + 6 / 5, 29 + 8 / 5, 40, 25]],
    ['beyond the other corner', -23, -19, 2, -7, [-23 - 6 / 5, -19 - 8 / 5, -20, -15]],
  ]
  test.each(table)('%s', (_, x, y, radius, room, [fromX, fromY, toX, toY]) => {
    for (const plate of plates) {
      const { distance, from, to } = clearance(circle({ x, y }, radius), plate)
      expect(distance).toBeCloseTo(room, 9)
      expect(from).toEqual(near(fromX!, fromY!))
      expect(to).toEqual(near(toX!, toY!))
      expect(isWithin(circle({ x, y }, radius), plate)).toBe(room >= 0)
    }
  })

  it('is the same in a plate that lies askew, where its places turn with it', () => {
    const at: Placement = { x: 3, y: -8, turn: 0.7, mirrored: true }
    for (const [, x, y, radius, room] of table) {
      const hole = circle({ x, y }, radius)
      expect(clearance(place(hole, at), place(plates[0]!, at)).distance).toBeCloseTo(room, 8)
    }
  })
})

describe('what is not quite a rectangle is measured as it is', () => {
  const hole = circle({ x: 10, y: 5 }, 4)
  const bowed = (index: number, bulge: number): Contour =>
    chain(
      rectangle(-20, -15, 40, 25).vertices.map((one, at) => (at === index ? { ...one, bulge } : one)),
      true,
    )
  test('a side that bows in comes nearer by its rise, whichever it is', () => {
    // A bulge of -0.2 on a side: its rise is a tenth of the chord: 6 on 60, 4 on 40.
    for (const [index, room] of [
      [0, 20 - 6 - 4],
      [1, 30 - 4 - 4],
      [2, 20 - 6 - 4],
      [3, 30 - 4 - 4],
    ] as const)
      expect(clearance(hole, bowed(index, -0.2)).distance).toBeCloseTo(Math.min(16, room), 9)
  })

  test('a corner moved in, a side that slants, four corners of which none is square', () => {
    const sides = (...list: readonly (readonly [number, number])[]) =>
      polygon(list.map(([x, y]) => ({ x, y })))
    // From (10, 5) to the line through (40, -15) and (30, 25): direction (-1, 4) / √17, (30, -20) beside it.
    const slant = (30 * 4 - 20) / Math.sqrt(17)
    for (const plate of [
      sides([-20, -15], [40, -15], [30, 25], [-20, 25]),
      sides([40, -15], [30, 25], [-20, 25], [-20, -15]),
      sides([30, 25], [-20, 25], [-20, -15], [40, -15]),
      sides([-20, 25], [-20, -15], [40, -15], [30, 25]),
    ])
      expect(clearance(circle({ x: 10, y: 5 }, 4), plate).distance).toBeCloseTo(Math.min(20, slant) - 4, 9)
    // A square stood on its corner: 20 / √2 from its middle to a side.
    const stood = sides([10, -15], [30, 5], [10, 25], [-10, 5])
    expect(clearance(hole, stood).distance).toBeCloseTo(20 / Math.SQRT2 - 4, 9)
  })

  test('a plate of five corners, and one with a corner let in', () => {
    const sides = (...list: readonly (readonly [number, number])[]) =>
      polygon(list.map(([x, y]) => ({ x, y })))
    const let_in = sides([-20, -15], [40, -15], [40, 15], [20, 15], [20, 25], [-20, 25])
    // The inner corner lies 10 right and 10 up of the centre.
    expect(clearance(hole, let_in).distance).toBeCloseTo(Math.SQRT2 * 10 - 4, 9)
    const { from, to } = clearance(hole, let_in)
    expect(from).toEqual(near(10 + 4 * Math.SQRT1_2, 5 + 4 * Math.SQRT1_2))
    expect(to).toEqual(near(20, 15))
  })
})

describe('in a round outline', () => {
  const outline = circle({ x: 10, y: 20 }, 25)
  test('the place of the inner one farthest from its centre tells, inside and out, with its two ends', () => {
    // A plate whose farthest corner lies (15, 20), and so 25, from the centre: it touches.
    expect(clearance(rectangle(5, 12, 25, 40), outline).distance).toBe(0)
    // One at (9, 12): 15, and 10 are left.
    const { distance, from, to } = clearance(rectangle(5, 12, 19, 32), outline)
    expect(distance).toBeCloseTo(10, 9)
    expect(from).toEqual(near(19, 32))
    expect(to).toEqual(near(10 + 15, 20 + 20))
    // One at (24, 32): 40, 15 beyond.
    expect(clearance(rectangle(5, 12, 34, 52), outline).distance).toBeCloseTo(-15, 9)
    // A hole: 25 - 5 - 4.
    expect(clearance(circle({ x: 13, y: 24 }, 4), outline).distance).toBeCloseTo(16, 9)
  })
})

describe('a hole over a line', () => {
  const plate = rectangle(0, 0, 100, 50)
  it('with its centre a hair within or beyond the line sticks out by its radius, to the thousandth', () => {
    for (const off of [-1e-9, 0, 1e-9])
      for (const [x, y] of [
        [50, off],
        [50, 50 + off],
        [off, 25],
        [100 + off, 25],
      ] as const) {
        const { distance } = clearance(circle({ x, y }, 3), plate)
        expect(distance).toBeGreaterThan(-3 - 1e-6)
        expect(distance).toBeLessThan(-3 + 0.0011)
      }
  })

  it('that touches has no room, and 0 is not negative zero', () => {
    for (const hole of [circle({ x: 3, y: 25 }, 3), circle({ x: 50, y: 47 }, 3), circle({ x: 97, y: 25 }, 3)])
      expect(Object.is(clearance(hole, plate).distance, 0)).toBe(true)
  })
})
