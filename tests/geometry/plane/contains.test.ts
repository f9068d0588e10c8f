import { describe, expect, it } from 'vitest'
import type { Chain } from '../../../geometry/plane/index.ts'
import {
  chain,
  circle,
  clearance,
  deepest,
  depthAt,
  isInside,
  isWithin,
  line,
  move,
  oval,
  polygon,
  rectangle,
  roundedRectangle,
  stadium,
  turn,
} from '../../../geometry/plane/index.ts'
import { notchedPlate } from './shapes.ts'

const origin = { x: 0, y: 0 }

/** A plate 60 x 40 with a half-round notch of radius 10 in the middle of its top. */
const notched = notchedPlate

describe('isInside', () => {
  it('of an open chain is refused', () => {
    expect(() => isInside(origin, line(origin, { x: 1, y: 0 }))).toThrow('of 2 vertices is open')
  })

  it('counts the line itself, corners and arcs included', () => {
    const slot = stadium(origin, 30, 10)
    const onLine = [
      { x: 0, y: 5 },
      { x: 0, y: -5 },
      { x: 15, y: 0 },
      { x: -15, y: 0 },
      { x: 10, y: 5 },
      { x: 13, y: 4 },
    ]
    for (const point of onLine) expect(isInside(point, slot)).toBe(true)
    for (const corner of rectangle(0, 0, 4, 2).vertices)
      expect(isInside(corner, rectangle(0, 0, 4, 2))).toBe(true)
    expect(isInside({ x: 5, y: 0 }, circle(origin, 5))).toBe(true)
  })

  it('tells a hundred-thousandth of a millimetre outside from on the line', () => {
    expect(isInside({ x: 15.00001, y: 0 }, stadium(origin, 30, 10))).toBe(false)
    expect(isInside({ x: 0, y: 5.00001 }, stadium(origin, 30, 10))).toBe(false)
  })

  it('a notch belongs to the outside, the lips beside it to the inside', () => {
    expect(isInside({ x: 30, y: 35 }, notched)).toBe(false)
    expect(isInside({ x: 30, y: 30.00001 }, notched)).toBe(false)
    expect(isInside({ x: 30, y: 29.99 }, notched)).toBe(true)
    expect(isInside({ x: 21, y: 33 }, notched)).toBe(true)
    expect(isInside({ x: 39, y: 33 }, notched)).toBe(true)
  })

  it('on the chord of an arc, which is no line of the contour, answers by where the arc bulges', () => {
    // Points exactly on the chords of round ends, level with vertices, and on the chord of a notch.
    for (const angle of [0, Math.PI / 2, Math.PI, -Math.PI / 2]) {
      const slot = turn(stadium(origin, 30, 10), angle)
      for (const y of [-4, -1, 0, 2, 4]) {
        for (const x of [10, -10]) {
          const at = turn(circle({ x, y }, 1), angle).centre
          expect(isInside(at, slot)).toBe(true)
        }
      }
      const cut = turn(notched, angle)
      for (const x of [21, 25, 30, 38]) {
        expect(isInside(turn(circle({ x, y: 40 }, 1), angle).centre, cut)).toBe(false)
      }
    }
  })

  it('an arc of more than half a turn holds what lies beyond its chord', () => {
    // A disc of radius 5 with a flat cut at x = 3.
    const flat = chain(
      [
        { x: 3, y: 4, bulge: Math.tan((2 * Math.PI - 2 * Math.atan2(4, 3)) / 4) },
        { x: 3, y: -4, bulge: 0 },
      ],
      true,
    )
    expect(isInside({ x: -4.9, y: 0 }, flat)).toBe(true)
    expect(isInside({ x: 0, y: 4.9 }, flat)).toBe(true)
    expect(isInside({ x: 2.9, y: 0 }, flat)).toBe(true)
    expect(isInside({ x: 3.1, y: 0 }, flat)).toBe(false)
    expect(isInside({ x: 3, y: 4.1 }, flat)).toBe(false)
  })
})

describe('depthAt', () => {
  it('is positive inside, negative outside, 0 on the line, and never positive in an open chain', () => {
    expect(depthAt({ x: 3, y: 1 }, rectangle(0, 0, 10, 10))).toBe(1)
    expect(depthAt({ x: 3, y: -1 }, rectangle(0, 0, 10, 10))).toBe(-1)
    expect(depthAt({ x: 3, y: 0 }, rectangle(0, 0, 10, 10))).toBeCloseTo(0, 12)
    expect(depthAt({ x: 1, y: 0 }, circle(origin, 5))).toBe(4)
    expect(depthAt({ x: 1, y: 2 }, line(origin, { x: 9, y: 0 }))).toBe(-2)
  })
})

describe('clearance inside', () => {
  it('of an open outline is refused', () => {
    expect(() => clearance(circle(origin, 1), line(origin, { x: 1, y: 0 }))).toThrow('is open')
  })

  it('is the least distance to the outline, with its two ends', () => {
    expect(clearance(circle(origin, 5), rectangle(-11, -10, 12, 13))).toEqual({
      distance: 5,
      from: { x: 0, y: -5 },
      to: { x: 0, y: -10 },
    })
  })

  it('in a round outline is radius less radius less distance of centres', () => {
    const { distance, from, to } = clearance(circle({ x: 3, y: 4 }, 2), circle(origin, 12))
    expect(distance).toBeCloseTo(5, 12)
    expect(Math.hypot(from.x, from.y)).toBeCloseTo(7, 12)
    expect(Math.hypot(to.x, to.y)).toBeCloseTo(12, 12)
  })

  it('of a concentric hole is the ring', () => {
    expect(clearance(circle(origin, 5), circle(origin, 8)).distance).toBeCloseTo(3, 12)
  })

  it('of a line inside counts the line', () => {
    expect(clearance(line({ x: 2, y: 3 }, { x: 8, y: 3 }), rectangle(0, 0, 10, 10)).distance).toBe(2)
  })

  it('touching from inside, at a point or along a side, is 0 and counts as within', () => {
    const plate = rectangle(-10, -10, 10, 10)
    for (const inner of [
      circle({ x: 5, y: 0 }, 5),
      rectangle(-10, -3, 0, 3),
      rectangle(0, 0, 10, 10),
      plate,
      oval(origin, 20, 8),
    ]) {
      expect(clearance(inner, plate).distance).toBe(0)
      expect(isWithin(inner, plate)).toBe(true)
    }
    const round = roundedRectangle(origin, 40, 30, 6)
    expect(clearance(round, round).distance).toBe(0)
    expect(clearance(circle({ x: 0, y: 2 }, 3), circle(origin, 5)).distance).toBe(0)
  })
})

describe('clearance beyond the outline', () => {
  const plate = rectangle(-10, -10, 20, 20)

  it('of a hole across a side is minus what sticks out', () => {
    const { distance, from, to } = clearance(circle({ x: -8, y: 0 }, 5), plate)
    expect(distance).toBeCloseTo(-3, 9)
    expect(from.x).toBeCloseTo(-13, 9)
    expect(to.x).toBeCloseTo(-10, 9)
    expect(isWithin(circle({ x: -8, y: 0 }, 5), plate)).toBe(false)
  })

  it('of a hole with its centre beyond a side is more than its radius', () => {
    expect(clearance(circle({ x: -12, y: 0 }, 5), plate).distance).toBeCloseTo(-7, 9)
  })

  it('of a hole over a corner is measured from the corner where that is farther', () => {
    // The hole about the corner itself sticks out by its radius, all along the quarter outside.
    expect(clearance(circle({ x: -10, y: -10 }, 5), plate).distance).toBeCloseTo(-5, 2)
    // Diagonally outside: from the corner to the centre, and the radius (3-4-5).
    expect(clearance(circle({ x: -13, y: -14 }, 2), plate).distance).toBeCloseTo(-7, 9)
  })

  it('of a hole over a narrow notch is told from the lips of the notch, not through the wood beside it', () => {
    // A plate 60 x 40 with a saw cut 4 wide from its top to its middle; the hole's centre lies in the cut.
    const sawn = polygon([
      { x: 0, y: 0 },
      { x: 60, y: 0 },
      { x: 60, y: 40 },
      { x: 32, y: 40 },
      { x: 32, y: 20 },
      { x: 28, y: 20 },
      { x: 28, y: 40 },
      { x: 0, y: 40 },
    ])
    // Straight up, 3 above the top and 2 beside each lip.
    const { distance, from } = clearance(circle({ x: 30, y: 38 }, 5), sawn)
    expect(distance).toBeCloseTo(-Math.hypot(2, 3), 2)
    expect(from.y).toBeCloseTo(43, 1)
  })

  it('of a hole with its centre on the outline is minus its radius', () => {
    expect(clearance(circle({ x: 20, y: 5 }, 3), plate).distance).toBeCloseTo(-3, 2)
    expect(clearance(circle({ x: 20 + 1e-9, y: 5 }, 3), plate).distance).toBeCloseTo(-3, 2)
  })

  it('of a hole wholly outside is to its far side, not its near one', () => {
    expect(clearance(circle({ x: -90, y: 0 }, 5), plate).distance).toBeCloseTo(-85, 9)
    expect(clearance(rectangle(-30, 0, -20, 5), plate).distance).toBeCloseTo(-20, 9)
  })

  it('of an opening round the outline is the widest rim beyond it', () => {
    expect(clearance(rectangle(-12, -13, 24, 21), plate).distance).toBeCloseTo(-5, 2)
    expect(clearance(circle(origin, 12), circle(origin, 10)).distance).toBeCloseTo(-2, 9)
    expect(clearance(rectangle(-6, -8, 6, 8), circle(origin, 7)).distance).toBeCloseTo(-3, 9)
  })

  it('of a straight edge across a notch is found between its corners', () => {
    // The slot's top at y = 38 crosses the mouth of the notch: deepest beyond the outline at x = 30.
    const wide = rectangle(10, 20, 50, 38)
    const { distance, from } = clearance(wide, notched)
    // At the middle the nearest wood is the bottom of the notch, 8 below, or its lips, sqrt(10^2 + 2^2) away.
    expect(distance).toBeLessThanOrEqual(-8 + 0.0011)
    expect(distance).toBeGreaterThanOrEqual(-8 - 1e-9)
    expect(from.x).toBeCloseTo(30, 1)
  })

  it('follows a hole that moves out without a jump', () => {
    const hole = stadium(origin, 8, 4)
    for (let x = 10; x < 30; x += 0.05) {
      // The outline's right side lies at 20; the slot's tip is 4 ahead of its middle.
      expect(clearance(move(hole, x, 0), plate).distance).toBeCloseTo(Math.min(8, 16 - x), 2)
    }
  })
})

describe('deepest', () => {
  it('of a circle is its centre', () => {
    expect(deepest(circle({ x: 2, y: 3 }, 4))).toEqual({ x: 2, y: 3 })
  })

  it('of a hollow shape lies inside it, at nine tenths of the best depth or more', () => {
    // A thick U: arms and floor 10 wide, with 5 the best depth along them and more in its corners.
    const u = polygon([
      origin,
      { x: 40, y: 0 },
      { x: 40, y: 30 },
      { x: 30, y: 30 },
      { x: 30, y: 10 },
      { x: 10, y: 10 },
      { x: 10, y: 30 },
      { x: 0, y: 30 },
    ])
    // In a corner a circle touches both outer sides and the inner corner: r = 10 (2 - sqrt(2)), by hand.
    const best = 10 * (2 - Math.SQRT2)
    const depth = depthAt(deepest(u), u)
    expect(depth).toBeGreaterThanOrEqual(0.9 * best)
    expect(depth).toBeLessThanOrEqual(best)
  })

  it('of a long thin slanting slot is found without filling it with squares', () => {
    const slot = turn(stadium(origin, 200, 2), 0.4)
    expect(depthAt(deepest(slot), slot)).toBeGreaterThanOrEqual(0.9)
  })

  it('of an open chain is refused', () => {
    const open: Chain = line(origin, { x: 1, y: 0 })
    expect(() => deepest(open)).toThrow('is open')
  })
})
