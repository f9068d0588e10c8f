import { describe, expect, it } from 'vitest'
import type { Contour } from '../../../geometry/plane/index.ts'
import {
  circle,
  gap,
  line,
  move,
  polygon,
  rectangle,
  roundedRectangle,
  stadium,
  turn,
} from '../../../geometry/plane/index.ts'

const origin = { x: 0, y: 0 }

function expectGap(a: Contour, b: Contour, expected: number, digits = 9): void {
  expect(gap(a, b)).toBeCloseTo(expected, digits)
  expect(gap(b, a)).toBeCloseTo(expected, digits)
}

describe('gap between circles', () => {
  it('is always the distance of centres less both radii', () => {
    for (const x of [0, 1, 4, 7, 8, 9, 30]) expectGap(circle(origin, 5), circle({ x, y: 0 }, 3), x - 8)
  })
})

describe('gap between a circle and another opening', () => {
  const slot = stadium(origin, 30, 10)

  it('is the wood between them where they are apart', () => {
    expectGap(circle({ x: 0, y: 12 }, 3), slot, 4)
    expectGap(circle({ x: 25, y: 0 }, 3), slot, 7)
  })

  it('is 0 where they touch from outside', () => {
    expectGap(circle({ x: 0, y: 8 }, 3), slot, 0)
  })

  it('is minus the depth that the circle bites in, and more the deeper its centre lies', () => {
    expectGap(circle({ x: 0, y: 7 }, 3), slot, -1)
    expectGap(circle({ x: 0, y: 5 }, 3), slot, -3)
    expectGap(circle({ x: 0, y: 0 }, 3), slot, -8)
  })

  it('never jumps while a circle crosses a slot', () => {
    let before = gap(circle({ x: -3, y: -20 }, 4), slot)
    for (let y = -20; y < 20; y += 0.05) {
      const now = gap(circle({ x: -3, y }, 4), slot)
      expect(Math.abs(now - before)).toBeLessThan(0.0501)
      before = now
    }
  })

  it('of a line is told as if the line had no width', () => {
    expectGap(circle({ x: 5, y: 4 }, 3), line(origin, { x: 10, y: 0 }), 1)
    expectGap(circle({ x: 5, y: 2 }, 3), line(origin, { x: 10, y: 0 }), -1)
  })
})

describe('gap between chains', () => {
  const plate = rectangle(0, 0, 10, 4)

  it('is their distance where they are apart, 0 where they touch', () => {
    expectGap(plate, rectangle(13, 8, 20, 20), 5)
    expectGap(plate, rectangle(10, 3, 20, 20), 0)
    expectGap(plate, rectangle(10, 4, 20, 20), 0)
  })

  it('of an overlap at a corner is minus its lesser width', () => {
    expectGap(plate, rectangle(8, 3, 20, 20), -1)
    expectGap(plate, rectangle(9.5, 2, 20, 20), -0.5)
  })

  it('of an overlap along a side is minus its depth', () => {
    expectGap(rectangle(0, 0, 100, 20), rectangle(0, 19.5, 100, 40), -0.5, 2)
  })

  it('of crossing slots is minus the greatest sum of depths, at the middle of the cross', () => {
    expectGap(rectangle(-50, -5, 50, 5), rectangle(-4, -50, 4, 50), -9)
  })

  it('of one in the other is minus the depth of its middle in both', () => {
    expectGap(rectangle(0, 0, 100, 40), rectangle(10, 10, 20, 20), -(15 + 5))
  })

  it('of the same opening twice is minus its whole width, not 0', () => {
    const slot = turn(stadium(origin, 30, 10), 0.3)
    expect(gap(slot, slot)).toBeLessThanOrEqual(-9)
    expect(gap(slot, slot)).toBeGreaterThanOrEqual(-10)
    const round = roundedRectangle(origin, 40, 30, 6)
    expectGap(round, round, -30)
  })

  it('of an opening in the arm of a hollow one counts the wood round the arm, not the hull', () => {
    const corner = polygon([
      origin,
      { x: 30, y: 0 },
      { x: 30, y: 10 },
      { x: 10, y: 10 },
      { x: 10, y: 30 },
      { x: 0, y: 30 },
    ])
    expectGap(corner, rectangle(12, 13, 25, 25), 2)
    expectGap(corner, rectangle(9.7, 11, 25, 25), -0.3, 2)
  })

  it('of lines that cross is 0, of a line through an opening minus how deep it runs', () => {
    expectGap(line({ x: -5, y: 0 }, { x: 5, y: 0 }), line({ x: 0, y: -5 }, { x: 0, y: 5 }), 0)
    expectGap(line({ x: -5, y: 1 }, { x: 25, y: 1 }), rectangle(0, 0, 10, 4), -1)
  })

  it('never jumps while one chain crosses another', () => {
    const slot = turn(stadium(origin, 20, 6), 0.5)
    let before = gap(move(slot, -40, 2), rectangle(-15, -9, 15, 9))
    for (let x = -40; x < 40; x += 0.1) {
      const now = gap(move(slot, x, 2), rectangle(-15, -9, 15, 9))
      expect(Math.abs(now - before)).toBeLessThan(0.103)
      before = now
    }
    expect(before).toBeGreaterThan(10)
  })
})
