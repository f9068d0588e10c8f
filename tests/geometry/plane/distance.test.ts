import { describe, expect, it } from 'vitest'
import type { Chain, Contour, Point } from '../../../geometry/plane/index.ts'
import {
  chain,
  circle,
  distance,
  distanceToPoint,
  line,
  nearest,
  nearestPoint,
  polygon,
  rectangle,
  roundedRectangle,
  stadium,
} from '../../../geometry/plane/index.ts'
import { notchedPlate } from './shapes.ts'

const origin = { x: 0, y: 0 }

/** An open arc about a centre, from one angle in degrees to another. */
function arc(centre: Point, radius: number, from: number, to: number): Chain {
  const at = (degrees: number) => ({
    x: centre.x + radius * Math.cos((degrees * Math.PI) / 180),
    y: centre.y + radius * Math.sin((degrees * Math.PI) / 180),
  })
  const bulge = Math.tan(((to - from) * Math.PI) / 720)
  return {
    shape: 'chain',
    closed: false,
    vertices: [
      { ...at(from), bulge },
      { ...at(to), bulge: 0 },
    ],
  }
}

/** Both orders must tell the same; both ends must lie where they claim. */
function expectApart(a: Contour, b: Contour, expected: number): void {
  expect(distance(a, b)).toBeCloseTo(expected, 10)
  expect(distance(b, a)).toBeCloseTo(expected, 10)
  for (const [first, second] of [
    [a, b],
    [b, a],
  ] as const) {
    const way = nearest(first, second)
    expect(way.distance).toBeCloseTo(expected, 10)
    expect(Math.hypot(way.from.x - way.to.x, way.from.y - way.to.y)).toBeCloseTo(expected, 10)
    expect(distanceToPoint(first, way.from)).toBeCloseTo(0, 9)
    expect(distanceToPoint(second, way.to)).toBeCloseTo(0, 9)
  }
}

describe('degenerate meetings', () => {
  it('the same contour twice is 0 apart from itself', () => {
    for (const shape of [circle(origin, 3), rectangle(0, 0, 3, 2), stadium(origin, 9, 4)]) {
      expectApart(shape, shape, 0)
    }
  })

  it('concentric circles are a ring apart', () => {
    expectApart(circle(origin, 5), circle(origin, 3), 2)
  })

  it('circles that touch from outside and from inside', () => {
    expectApart(circle(origin, 5), circle({ x: 8, y: 0 }, 3), 0)
    expectApart(circle(origin, 5), circle({ x: 0, y: -2 }, 3), 0)
  })

  it('a line that touches a circle', () => {
    expectApart(line({ x: -9, y: 5 }, { x: 9, y: 5 }), circle(origin, 5), 0)
  })

  it('lines along one straight line: apart, end to end, overlapping', () => {
    const first = line(origin, { x: 3, y: 1 })
    expectApart(first, line({ x: 6, y: 2 }, { x: 9, y: 3 }), Math.sqrt(10))
    expectApart(first, line({ x: 3, y: 1 }, { x: 6, y: 2 }), 0)
    expectApart(first, line({ x: 1.5, y: 0.5 }, { x: 6, y: 2 }), 0)
  })

  it('lines that seem to cross because the sides of their ends are rounding noise are still apart', () => {
    // Both lie on one straight line, to rounding; the signs of the noise say "opposite sides" four times.
    const first = line(
      { x: 4.087815284729004, y: 5.44252872467041 },
      { x: 4.986181259155273, y: 7.874655817629446 },
    )
    const second = line(
      { x: 6.772155284881592, y: 12.709785307105221 },
      { x: 7.203844100236893, y: 13.878487254241563 },
    )
    expectApart(
      first,
      second,
      Math.hypot(6.772155284881592 - 4.986181259155273, 12.709785307105221 - 7.874655817629446),
    )
  })

  it('circles whose centres differ by less than any number can show are concentric', () => {
    expectApart(
      circle({ x: 1.5717277847026288e-162, y: 0 }, 0.5),
      circle({ x: 0, y: -1.5717277847026288e-162 }, 0.25),
      0.25,
    )
    expectApart(circle({ x: 1.5717277847026288e-162, y: 0 }, 0.5), circle(origin, 0.5), 0)
    expectApart(
      arc({ x: 1.5717277847026288e-162, y: 1.5717277847026288e-162 }, 5, 10, 200),
      arc(origin, 3, 100, 300),
      2,
    )
    const on = nearestPoint(circle(origin, 0.5), { x: 0, y: 1.5717277847026288e-162 })
    expect(Math.hypot(on.x, on.y)).toBeCloseTo(0.5, 12)
  })

  it('lines along one slanting straight line are as far apart as their ends', () => {
    const slope = (x: number) => ({ x, y: 0.1 + x * 0.3 })
    for (let i = 0; i < 40; i++) {
      const a = line(slope(i * 0.1), slope(i * 0.1 + 0.7))
      const b = line(slope(i * 0.1 + 1.7), slope(i * 0.1 + 3.3))
      expect(distance(a, b)).toBeCloseTo(Math.hypot(1, 0.3), 10)
    }
  })

  it('a crossing at the end of one line counts, whichever comes first', () => {
    expectApart(line(origin, { x: 10, y: 0 }), line({ x: 5, y: 0 }, { x: 5, y: 7 }), 0)
    expectApart(line(origin, { x: 10, y: 0 }), line({ x: 5, y: 7 }, { x: 5, y: 0 }), 0)
  })

  it('arcs on one circle: apart by the chord between their ends, 0 where they overlap', () => {
    expectApart(arc(origin, 10, 0, 60), arc(origin, 10, 120, 200), 10)
    expectApart(arc(origin, 10, 0, 60), arc(origin, 10, 30, 200), 0)
  })
})

describe('distance between lines and arcs', () => {
  it('of parallel lines is the width between them where they pass each other', () => {
    expectApart(line(origin, { x: 10, y: 0 }), line({ x: 4, y: 3 }, { x: 20, y: 3 }), 3)
  })

  it('of lines past each other is from corner to corner (3-4-5)', () => {
    expectApart(line(origin, { x: 10, y: 0 }), line({ x: 13, y: 4 }, { x: 20, y: 4 }), 5)
  })

  it('of a line that stops short of another is from either of its ends', () => {
    expectApart(line(origin, { x: 10, y: 0 }), line({ x: 5, y: 7 }, { x: 5, y: 3 }), 3)
    expectApart(line(origin, { x: 10, y: 0 }), line({ x: 5, y: 3 }, { x: 5, y: 7 }), 3)
    expectApart(arc(origin, 5, 0, 180), line({ x: 0, y: 11 }, { x: 0, y: 7 }), 2)
    expectApart(arc(origin, 5, 0, 180), line({ x: 0, y: 7 }, { x: 0, y: 11 }), 2)
  })

  it('of a line and the bow of an arc is from the foot through the centre', () => {
    expectApart(line({ x: -9, y: 8 }, { x: 9, y: 8 }), arc(origin, 5, 45, 135), 3)
  })

  it('of a line and the hollow of an arc is to an end of the arc', () => {
    // The arc's ends lie at y = -4, x = 3 and -3; the line above the centre faces the hollow.
    const below = (Math.atan2(-4, 3) * 180) / Math.PI
    expectApart(line({ x: -9, y: 1 }, { x: 9, y: 1 }), arc(origin, 5, -180 - below, below), 5)
  })

  it('of a line through the gap of an open arc is to the nearer end', () => {
    // Three quarters of a circle, open to the upper right; the line comes in through the opening.
    expectApart(line({ x: 2, y: 2 }, { x: 9, y: 9 }), arc(origin, 5, 90, 360), Math.hypot(2.5, 2.5))
  })

  it('of arcs that face each other is between their bows, back to back, or one in the other', () => {
    expectApart(arc(origin, 5, -45, 45), arc({ x: 13, y: 0 }, 5, 135, 225), 3)
    expectApart(arc(origin, 10, -45, 45), arc({ x: 2, y: 0 }, 5, -45, 45), 3)
    expectApart(arc({ x: 2, y: 0 }, 5, -45, 45), arc(origin, 10, -45, 45), 3)
    // Turned away from each other only their ends count: (-5, 0) is not on them.
    expectApart(arc(origin, 5, 90, 270), arc({ x: 20, y: 0 }, 5, -90, 90), 20)
  })

  it('of crossing arcs is 0, and of arcs whose circles cross elsewhere it is not', () => {
    expectApart(arc(origin, 5, 0, 90), arc({ x: 5, y: 0 }, 5, 90, 180), 0)
    // The circles cross at (2.5, +-4.33); these quarters lie on the far sides.
    expect(distance(arc(origin, 5, 180, 270), arc({ x: 5, y: 0 }, 5, 0, 45))).toBeGreaterThan(5)
  })
})

describe('distance between closed contours', () => {
  it('of circles is between centres less both radii', () => {
    expectApart(circle(origin, 5), circle({ x: 30, y: 40 }, 15), 30)
  })

  it('of a circle in a plate is to the nearest side, measured between the lines', () => {
    expectApart(circle({ x: 12, y: 20 }, 5), rectangle(0, 0, 60, 40), 7)
    expectApart(circle({ x: 12, y: 20 }, 5), roundedRectangle({ x: 30, y: 20 }, 60, 40, 6), 7)
  })

  it('of a circle and a corner is from the corner (3-4-5)', () => {
    expectApart(circle({ x: -3, y: -4 }, 2), rectangle(0, 0, 60, 40), 3)
  })

  it('of a plate inside a circle is from its farthest corner outwards', () => {
    expectApart(circle(origin, 13), rectangle(-3, -4, 3, 4), 8)
  })

  it('of what lies in a circle is from its farthest place, a corner or straight across a round end', () => {
    expectApart(circle({ x: 10, y: 20 }, 13), rectangle(7, 16, 12, 23), 8)
    expectApart(circle({ x: 10, y: 20 }, 13), rectangle(8, 17, 13, 24), 8)
    // Round ends of 3 about (0, 6) and (8, 6): from (1, 2) the farther centre is hypot(7, 4) away.
    expectApart(circle({ x: 1, y: 2 }, 20), stadium({ x: 4, y: 6 }, 14, 6), 20 - Math.hypot(7, 4) - 3)
    // The hollow of a notch looks the other way: from (30, -10) the corners of the plate are farthest, by hypot(30, 50).
    const notched = notchedPlate
    expectApart(circle({ x: 30, y: -10 }, 70), notched, 70 - Math.hypot(30, 50))
    // About the very centre of its arc all of a half disc's bow is as far.
    const halfDisc = chain(
      [
        { x: 4, y: 1, bulge: 1 },
        { x: -2, y: 1, bulge: 0 },
      ],
      true,
    )
    expectApart(circle({ x: 1, y: 1 }, 7), halfDisc, 4)
  })

  it('of circles that cross is 0, at a place that both share', () => {
    expectApart(circle(origin, 5), circle({ x: 6, y: 0 }, 5), 0)
    expectApart(circle({ x: 3, y: 4 }, 5), circle({ x: 3, y: 9 }, 1.5), 0)
    expectApart(circle({ x: 3, y: 4 }, 5), circle({ x: 6, y: 4 }, 2.5), 0)
  })

  it('of a circle within another is what is left on the nearer side', () => {
    expectApart(circle({ x: 3, y: 4 }, 10), circle({ x: 6, y: 8 }, 2), 3)
    expectApart(circle({ x: 6, y: 8 }, 2), circle({ x: 3, y: 4 }, 10), 3)
    expectApart(circle({ x: 3, y: 4 }, 10), circle({ x: 3, y: 1 }, 2.25), 4.75)
  })

  it('of a circle that cuts a side is 0, although neither centre nor corner is near', () => {
    expectApart(circle({ x: 30, y: -3 }, 5), rectangle(0, 0, 60, 40), 0)
  })

  it('of slots side by side is what is left between their sides', () => {
    expectApart(stadium(origin, 30, 6), stadium({ x: 5, y: 10 }, 30, 6), 4)
  })

  it('of slots end to end is between their round ends', () => {
    expectApart(stadium(origin, 30, 6), stadium({ x: 33, y: 4 }, 30, 6), Math.hypot(9, 4) - 6)
  })

  it('names a place of crossing that lies on both', () => {
    const { from, to } = nearest(rectangle(0, 0, 10, 10), rectangle(5, -5, 15, 5))
    expect(from).toEqual(to)
    expect([
      { x: 5, y: 0 },
      { x: 10, y: 5 },
    ]).toContainEqual(from)
  })
})

describe('distance to a point', () => {
  it('from the centre of a circle is the radius', () => {
    expect(distanceToPoint(circle({ x: 1, y: 1 }, 4), { x: 1, y: 1 })).toBe(4)
    const on = nearestPoint(circle({ x: 1, y: 1 }, 4), { x: 1, y: 1 })
    expect(Math.hypot(on.x - 1, on.y - 1)).toBeCloseTo(4, 12)
  })

  it('does not ask inside or outside', () => {
    expect(distanceToPoint(rectangle(0, 0, 10, 10), { x: 5, y: 3 })).toBe(3)
    expect(distanceToPoint(rectangle(0, 0, 10, 10), { x: 5, y: -3 })).toBe(3)
    expect(distanceToPoint(circle(origin, 5), { x: 3, y: 4 })).toBe(0)
  })

  it('on an arc goes to the arc where it is, else to its end', () => {
    const quarter = arc(origin, 10, 0, 90)
    expect(distanceToPoint(quarter, { x: 3, y: 4 })).toBeCloseTo(5, 12)
    expect(distanceToPoint(quarter, { x: 10, y: -7 })).toBeCloseTo(7, 12)
    expect(nearestPoint(quarter, { x: 10, y: -7 })).toEqual({ x: 10, y: 0 })
  })

  it('on an arc of more than half a turn, too', () => {
    const most = arc(origin, 10, 45, 315)
    expect(distanceToPoint(most, { x: 20, y: 0 })).toBeCloseTo(
      Math.hypot(20 - Math.SQRT1_2 * 10, Math.SQRT1_2 * 10),
      10,
    )
    expect(distanceToPoint(most, { x: -1, y: 0 })).toBeCloseTo(9, 12)
  })
})

describe('flat arcs', () => {
  it('a bow of a hundredth of a millimetre on a 300 mm side is measured to a millionth', () => {
    const b = 0.01 / 150
    const bowed = chain(
      [
        { x: 0, y: 0, bulge: b },
        { x: 300, y: 0, bulge: 0 },
        { x: 300, y: 100, bulge: 0 },
        { x: 0, y: 100, bulge: 0 },
      ],
      true,
    )
    const drill = circle({ x: 150, y: -5 }, 1)
    expect(distance(drill, bowed)).toBeCloseTo(4 - 0.01, 6)
  })

  it('a bow too flat to be an arc is measured as a line', () => {
    const flat = chain(
      [
        { x: 0, y: 0, bulge: 1e-12 },
        { x: 300, y: 0, bulge: 0 },
      ],
      false,
    )
    expect(
      distance(
        flat,
        polygon([
          { x: 1, y: 2 },
          { x: 9, y: 2 },
          { x: 5, y: 7 },
        ]),
      ),
    ).toBeCloseTo(2, 12)
  })
})
