import { describe, expect, it } from 'vitest'
import type { Chain } from '../../../geometry/plane/index.ts'
import {
  area,
  bounds,
  centroid,
  chain,
  circle,
  length,
  line,
  move,
  place,
  polygon,
  rectangle,
  reversed,
  turn,
} from '../../../geometry/plane/index.ts'
import { law } from './law.ts'
import { notchedPlate, placements, sampled, stars } from './shapes.ts'

const origin = { x: 0, y: 0 }

/** A piece of pie without its point: chord 2 a, `bulge` on the arc, closed by the chord. */
function segment(a: number, bulge: number): Chain {
  return {
    shape: 'chain',
    closed: true,
    vertices: [
      { x: -a, y: 0, bulge },
      { x: a, y: 0, bulge: 0 },
    ],
  }
}

describe('bounds', () => {
  it('of a slot of four vertices, centres 20 apart, radius 5, reach its round ends: x 5 to 35', () => {
    // The same slot is read as x 5 to 35 by ezdxf, GDAL and the `dxf` package.
    const slot: Chain = {
      shape: 'chain',
      closed: true,
      vertices: [
        { x: 10, y: 10, bulge: 0 },
        { x: 30, y: 10, bulge: 1 },
        { x: 30, y: 20, bulge: 0 },
        { x: 10, y: 20, bulge: 1 },
      ],
    }
    expect(bounds(slot)).toEqual({ minX: 5, minY: 10, maxX: 35, maxY: 20 })
  })

  it('of a circle and of straight lines, each side by itself', () => {
    expect(bounds(circle({ x: 3, y: -4 }, 2))).toEqual({ minX: 1, minY: -6, maxX: 5, maxY: -2 })
    const corners = [
      { x: 4, y: 1 },
      { x: 9, y: 3 },
      { x: 2, y: 12 },
      { x: -5, y: -7 },
    ]
    expect(bounds(polygon(corners))).toEqual({ minX: -5, minY: -7, maxX: 9, maxY: 12 })
    expect(bounds(line({ x: 4, y: 1 }, { x: -2, y: 1 }))).toEqual({ minX: -2, minY: 1, maxX: 4, maxY: 1 })
    expect(bounds(line({ x: 4, y: 1 }, { x: 4, y: -3 }))).toEqual({ minX: 4, minY: -3, maxX: 4, maxY: 1 })
  })

  it('of an arc more than half round reach past the chord on both sides', () => {
    // Three quarters of a circle of radius 5 from (5, 0) to (0, -5).
    const { minX, minY, maxX, maxY } = bounds({
      shape: 'chain',
      closed: false,
      vertices: [
        { x: 5, y: 0, bulge: Math.tan((3 * Math.PI) / 8) },
        { x: 0, y: -5, bulge: 0 },
      ],
    })
    expect([minX, minY, maxX, maxY].map((v) => Math.round(v * 1e9) / 1e9)).toEqual([-5, -5, 5, 5])
  })

  it('of an arc that passes no compass point are those of its ends', () => {
    const r = Math.SQRT1_2 * 10
    const from = { x: 10 * Math.cos(0.1), y: 10 * Math.sin(0.1), bulge: Math.tan((Math.PI / 4 - 0.1) / 4) }
    const box = bounds({ shape: 'chain', closed: false, vertices: [from, { x: r, y: r, bulge: 0 }] })
    expect(box).toEqual({ minX: r, minY: from.y, maxX: from.x, maxY: r })
  })

  it('of a chain without length are refused', () => {
    const none: Chain = { shape: 'chain', closed: true, vertices: [{ x: 1, y: 1, bulge: 0 }] }
    expect(() => bounds(none)).toThrow('this one has 1')
  })
})

describe('area', () => {
  it('of an open chain is refused', () => {
    expect(() => area(line(origin, { x: 1, y: 0 }))).toThrow('of 2 vertices is open')
  })

  it('is positive counter-clockwise and negative clockwise', () => {
    const corners = [origin, { x: 4, y: 0 }, { x: 0, y: 3 }].map((p) => ({ ...p, bulge: 0 }))
    expect(area({ shape: 'chain', closed: true, vertices: corners })).toBe(6)
    expect(area({ shape: 'chain', closed: true, vertices: [...corners].reverse() })).toBe(-6)
  })

  it('of a circle is pi r^2, and of two half-round segments the same', () => {
    expect(area(circle(origin, 3))).toBeCloseTo(9 * Math.PI, 12)
    expect(
      area(
        chain(
          [
            { x: -3, y: 0, bulge: 1 },
            { x: 3, y: 0, bulge: 1 },
          ],
          true,
        ),
      ),
    ).toBeCloseTo(9 * Math.PI, 12)
  })

  it.each([60, 90, 180, 270, 350])(
    'of a circular segment of %d degrees is r^2 (t - sin t) / 2',
    (degrees) => {
      // Handbook formula for the circular segment (common handbook formula, from memory).
      const t = (degrees * Math.PI) / 180
      const r = 7
      expect(area(segment(r * Math.sin(t / 2), Math.tan(t / 4)))).toBeCloseTo(
        (r * r * (t - Math.sin(t))) / 2,
        10,
      )
    },
  )

  it('of half discs of every size is pi d^2 / 8, of a diameter of one too', () => {
    for (const d of [0.5, 1, 2, 30]) expect(area(segment(d / 2, 1))).toBeCloseTo((Math.PI * d * d) / 8, 12)
  })

  it('of a flat arc keeps its digits on both sides of where the series takes over', () => {
    // Nearly a parabola: two thirds of chord times sagitta; the next terms of the series are worked by hand.
    for (const b of [1e-7, 1e-5, 1e-3, 0.0299, 0.0301]) {
      const chord = 20
      const sagitta = (b * chord) / 2
      const expected = (2 / 3) * chord * sagitta * (1 + b ** 2 / 5 - b ** 4 / 35)
      expect(area(segment(10, b)) / expected).toBeCloseTo(1, 9)
    }
  })

  it('far from the origin loses nothing that counts', () => {
    const small = rectangle(0, 0, 3, 2)
    expect(area(move(small, 1e6, -1e6))).toBeCloseTo(6, 8)
  })
})

describe('length', () => {
  it('is the sum of its parts: sides, and radius times sweep', () => {
    expect(length(rectangle(0, 0, 3, 4))).toBe(14)
    expect(length(circle(origin, 2))).toBeCloseTo(4 * Math.PI, 12)
    expect(length(segment(5, 1))).toBeCloseTo(5 * Math.PI + 10, 12)
  })

  it('of an open chain leaves out the way back', () => {
    const corners = [origin, { x: 3, y: 0 }, { x: 3, y: 4 }].map((p) => ({ ...p, bulge: 0 }))
    expect(length(chain(corners, false))).toBe(7)
    expect(length(chain(corners, true))).toBe(12)
  })
})

describe('centroid', () => {
  it('of an open chain and of nothing are refused', () => {
    expect(() => centroid(line(origin, { x: 1, y: 0 }))).toThrow('is open')
    expect(() => centroid(segment(5, 0))).toThrow('encloses no area')
  })

  it('of a half disc lies 4 r / (3 pi) from its diameter', () => {
    // Handbook formula (common handbook formula, from memory). A bulge of 1 from left to right lies below.
    const { x, y } = centroid(segment(6, 1))
    expect(x).toBeCloseTo(0, 12)
    expect(y).toBeCloseTo((-4 * 6) / (3 * Math.PI), 12)
  })

  it('of a flat segment lies two fifths of the sagitta from its chord, on both sides of the series', () => {
    // 20 b / 5 (1 + 3 b^2 / 35 - ...): worked by hand.
    for (const b of [1e-6, 1e-3, 0.0299, 0.0301]) {
      expect(centroid(segment(10, b)).y / (-4 * b * (1 + (3 / 35) * b * b))).toBeCloseTo(1, 7)
    }
  })

  it('of a triangle is the mean of its corners, wherever it lies', () => {
    const { x, y } = centroid(move(polygon([origin, { x: 6, y: 0 }, { x: 0, y: 3 }]), 500, 700))
    expect(x).toBeCloseTo(502, 9)
    expect(y).toBeCloseTo(701, 9)
  })

  it('of any star is where the triangles of its dense samples balance, run either way (seed 20)', () => {
    law(
      [stars, placements],
      (star, placement) => {
        const shape = place(star, placement)
        const points = sampled(shape, 200)
        let [area2, x3, y3] = [0, 0, 0]
        points.forEach((p, i) => {
          const q = points[(i + 1) % points.length]!
          const twice = p.x * q.y - q.x * p.y
          area2 += twice
          x3 += twice * (p.x + q.x)
          y3 += twice * (p.y + q.y)
        })
        for (const one of [shape, reversed(shape)]) {
          const { x, y } = centroid(one)
          // Arcs of up to a quarter millimetre's rise in 200 steps leave out far less than this.
          expect(Math.abs(x - x3 / (3 * area2))).toBeLessThan(1e-3)
          expect(Math.abs(y - y3 / (3 * area2))).toBeLessThan(1e-3)
        }
      },
      100,
    )
  })

  it('of segments of every sweep lies where calculus has it: 2 r sin³(t/2) / (3 (t/2 - sin(t/2) cos(t/2)))', () => {
    // Handbook formula of the circular segment (from memory); from the centre of its circle.
    for (const t of [0.5, 1, 2, Math.PI, 4, 5.5]) {
      const [r, half] = [7, t / 2]
      const a = r * Math.sin(half)
      const from = (2 * r * Math.sin(half) ** 3) / (3 * (half - Math.sin(half) * Math.cos(half)))
      // From (-a, 0) to (a, 0) counter-clockwise: the arc lies below, its circle's centre at r cos(t/2) above the chord.
      const { x, y } = centroid(segment(a, Math.tan(t / 4)))
      expect(x).toBeCloseTo(0, 9)
      expect(y).toBeCloseTo(r * Math.cos(half) - from, 9)
    }
  })

  it('of a notched plate balances: plate less notch', () => {
    // 60 x 40 less a half disc of radius 10 at the middle of its top: moments by hand.
    const notched = notchedPlate
    const notch = 50 * Math.PI
    const expected = (2400 * 20 - notch * (40 - 40 / (3 * Math.PI))) / (2400 - notch)
    expect(area(notched)).toBeCloseTo(2400 - notch, 9)
    expect(centroid(notched).x).toBeCloseTo(30, 9)
    expect(centroid(notched).y).toBeCloseTo(expected, 9)
    expect(centroid(turn(notched, Math.PI / 2)).x).toBeCloseTo(-expected, 9)
  })
})
