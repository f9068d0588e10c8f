import { describe, expect, it } from 'vitest'
import type { Chain, Contour } from '../../../geometry/plane/index.ts'
import {
  arcBetween,
  area,
  bounds,
  bulgeOf,
  chain,
  circle,
  faults,
  length,
  line,
  oval,
  polygon,
  rectangle,
  roundedRectangle,
  stadium,
} from '../../../geometry/plane/index.ts'

const origin = { x: 0, y: 0 }

function asChain(contour: Contour): Chain {
  if (contour.shape !== 'chain') throw new Error(`expected a chain, got a ${contour.shape}`)
  return contour
}

describe('chain', () => {
  it('drops a vertex that repeats its neighbour, and keeps the bulge of the segment that has length', () => {
    const made = chain(
      [
        { x: 0, y: 0, bulge: 0.3 },
        { x: 0, y: 0, bulge: 0 },
        { x: 10, y: 0, bulge: 1 },
        { x: 10, y: 5, bulge: 0 },
      ],
      true,
    )
    expect(made.vertices).toEqual([
      { x: 0, y: 0, bulge: 0 },
      { x: 10, y: 0, bulge: 1 },
      { x: 10, y: 5, bulge: 0 },
    ])
  })

  it('drops a last vertex that repeats the first of a closed chain', () => {
    const corners = [
      { x: 0, y: 0, bulge: 0 },
      { x: 4, y: 0, bulge: 0 },
      { x: 0, y: 3, bulge: 0.2 },
    ]
    expect(chain([...corners, { x: 0, y: 0, bulge: 9 }], true).vertices).toEqual(corners)
  })

  it('drops every last vertex that repeats the first, though they may lie apart from each other', () => {
    const corners = [
      { x: 0, y: 0, bulge: 0 },
      { x: 4, y: 0, bulge: 0 },
      { x: 0, y: 3, bulge: 0.2 },
    ]
    const [left, right] = [
      { x: -9e-7, y: 0, bulge: 1 },
      { x: 9e-7, y: 0, bulge: 2 },
    ]
    expect(chain([...corners, left, right], true).vertices).toEqual(corners)
  })

  it('leaves a small one that runs counter-clockwise as it came', () => {
    const corners = [
      { x: 5, y: 5, bulge: 0 },
      { x: 5.5, y: 5, bulge: 0 },
      { x: 5, y: 5.5, bulge: 0 },
    ]
    expect(chain(corners, true).vertices).toEqual(corners)
  })

  it('keeps a last vertex that repeats the first of an open chain', () => {
    const corners = [
      { x: 0, y: 0, bulge: 0 },
      { x: 4, y: 0, bulge: 0 },
      { x: 0, y: 0, bulge: 0 },
    ]
    expect(chain(corners, false).vertices).toEqual(corners)
  })

  it('turns a clockwise closed chain round, arcs and all, from the same first vertex', () => {
    // A square whose top bows outwards, run clockwise.
    const made = chain(
      [
        { x: 0, y: 0, bulge: 0 },
        { x: 0, y: 10, bulge: -0.5 },
        { x: 10, y: 10, bulge: 0 },
        { x: 10, y: 0, bulge: 0 },
      ],
      true,
    )
    expect(made.vertices).toEqual([
      { x: 0, y: 0, bulge: 0 },
      { x: 10, y: 0, bulge: 0 },
      { x: 10, y: 10, bulge: 0.5 },
      { x: 0, y: 10, bulge: 0 },
    ])
    expect(bounds(made).maxY).toBeCloseTo(12.5, 12)
  })

  it('refuses one place, no place, and numbers that are not finite', () => {
    expect(() => chain([{ x: 1, y: 1, bulge: 0 }], true)).toThrow('1 came')
    expect(() => chain([], false)).toThrow('0 came')
    expect(() => chain([{ x: Number.NaN, y: 1, bulge: 0 }], true)).toThrow('not NaN')
  })
})

describe('circle, line, polygon, rectangle', () => {
  it('refuse what has no size, naming what came', () => {
    expect(() => circle(origin, 0)).toThrow('not 0')
    expect(() => circle(origin, -2)).toThrow('not -2')
    expect(() => circle({ x: Number.POSITIVE_INFINITY, y: 0 }, 1)).toThrow('not Infinity')
    expect(() => line(origin, origin)).toThrow('2 came')
    expect(() => polygon([origin, { x: 1, y: 0 }])).toThrow('not 2')
    expect(() => rectangle(0, 0, 0, 5)).toThrow('not 0')
    expect(() => rectangle(0, 5, 5, 0)).toThrow('not -5')
  })

  it('a line of no length is refused wherever it lies, as is one without end', () => {
    for (const at of [
      { x: 5, y: 7 },
      { x: -5, y: 7 },
      { x: 5, y: -7 },
    ]) {
      expect(() => line(at, at)).toThrow('2 came')
      expect(() => line(at, { x: at.x + 5e-7, y: at.y - 5e-7 })).toThrow('2 came')
    }
    expect(() => line(origin, { x: Number.POSITIVE_INFINITY, y: 0 })).toThrow('not Infinity')
    expect(() => line({ x: 0, y: Number.NaN }, { x: 1, y: 0 })).toThrow('not NaN')
  })

  it('a line hardly longer than a point is wide is a line still', () => {
    const short = line({ x: 1, y: 2 }, { x: 1 + 1.5e-6, y: 2 })
    expect([short.closed, short.vertices.length]).toEqual([false, 2])
  })

  it('a rectangle has four square corners from its lower left one, and one too thin for a side has two', () => {
    expect(rectangle(1, 2, 5, 4)).toEqual({
      shape: 'chain',
      closed: true,
      vertices: [
        { x: 1, y: 2, bulge: 0 },
        { x: 5, y: 2, bulge: 0 },
        { x: 5, y: 4, bulge: 0 },
        { x: 1, y: 4, bulge: 0 },
      ],
    })
    for (const thin of [rectangle(100, 4, 110, 4 + 5e-7), rectangle(4, 100, 4 + 5e-7, 110)])
      expect([thin.closed, thin.vertices.length]).toEqual([true, 2])
  })

  it('a line is open and straight', () => {
    expect(line({ x: 1, y: 2 }, { x: 4, y: 6 })).toEqual({
      shape: 'chain',
      closed: false,
      vertices: [
        { x: 1, y: 2, bulge: 0 },
        { x: 4, y: 6, bulge: 0 },
      ],
    })
  })

  it('a polygon given clockwise comes out counter-clockwise', () => {
    const made = polygon([origin, { x: 0, y: 3 }, { x: 4, y: 0 }])
    expect(area(made)).toBeCloseTo(6, 12)
    expect(made.vertices[0]).toEqual({ x: 0, y: 0, bulge: 0 })
  })
})

describe('roundedRectangle', () => {
  it('has eight vertices with bulge tan(22.5 degrees) at the corners (0.414213562, as in a drawing file)', () => {
    const { vertices } = asChain(roundedRectangle({ x: 10, y: 20 }, 100, 50, 5))
    expect(vertices).toHaveLength(8)
    expect(vertices.map(({ bulge }) => bulge > 0)).toEqual([
      false,
      true,
      false,
      true,
      false,
      true,
      false,
      true,
    ])
    for (const { bulge } of vertices) if (bulge !== 0) expect(bulge).toBeCloseTo(0.414213562, 9)
  })

  it('with radius 0 is a plain rectangle of four vertices', () => {
    expect(roundedRectangle({ x: 5, y: 5 }, 10, 10, 0)).toEqual(rectangle(0, 0, 10, 10))
  })

  it('with half the shorter side as radius is a slot of four vertices, lying or standing', () => {
    for (const [lengthAlong, width] of [
      [30, 10],
      [10, 30],
    ] as const) {
      const made = asChain(roundedRectangle(origin, lengthAlong, width, 5))
      expect(made.vertices.map(({ bulge }) => bulge)).toEqual([0, 1, 0, 1])
      expect(faults(made)).toEqual([])
      expect(bounds(made)).toEqual({
        minX: -lengthAlong / 2,
        minY: -width / 2,
        maxX: lengthAlong / 2,
        maxY: width / 2,
      })
    }
  })

  it('a radius too large is taken as half the shorter side', () => {
    expect(roundedRectangle(origin, 30, 10, 500)).toEqual(roundedRectangle(origin, 30, 10, 5))
    expect(roundedRectangle(origin, 10, 30, Number.POSITIVE_INFINITY)).toEqual(
      roundedRectangle(origin, 10, 30, 5),
    )
  })

  it('a square with half its side as radius is a circle', () => {
    expect(roundedRectangle({ x: 1, y: 2 }, 10, 10, 5)).toEqual(circle({ x: 1, y: 2 }, 5))
  })

  it('never has a segment without length, however near the radius comes to half a side', () => {
    for (const short of [1e-3, 1e-6, 5e-7, 1e-9, 1e-12, 0, -1e-9]) {
      for (const [l, w] of [
        [30, 10],
        [10, 30],
        [10, 10],
        [10, 10 + 1e-7],
        [10 + 1e-5, 10],
      ] as const) {
        expect(faults(roundedRectangle(origin, l, w, 5 - short))).toEqual([])
        expect(faults(roundedRectangle(origin, l, w, Math.abs(short)))).toEqual([])
      }
    }
  })

  it('encloses 100 x 50 - (4 - pi) 5^2 and is 300 - (8 - 2 pi) 5 round (closed form)', () => {
    const made = roundedRectangle({ x: -7, y: 11 }, 100, 50, 5)
    expect(area(made)).toBeCloseTo(5000 - (4 - Math.PI) * 25, 9)
    expect(length(made)).toBeCloseTo(300 - (8 - 2 * Math.PI) * 5, 9)
  })

  it('refuses a negative radius and no size', () => {
    expect(() => roundedRectangle(origin, 10, 10, -1)).toThrow('not -1')
    expect(() => roundedRectangle(origin, 10, 0, 1)).toThrow('not 0')
  })
})

describe('stadium', () => {
  it('over centres 40 apart with radius 5 encloses 400 + 25 pi (closed form)', () => {
    const slot = stadium(origin, 50, 10)
    expect(area(slot)).toBeCloseTo(400 + 25 * Math.PI, 9)
    expect(length(slot)).toBeCloseTo(80 + 10 * Math.PI, 9)
  })

  it('as long as wide is a circle, and wider than long it stands', () => {
    expect(stadium({ x: 3, y: 0 }, 8, 8)).toEqual(circle({ x: 3, y: 0 }, 4))
    expect(bounds(stadium(origin, 4, 9))).toEqual({ minX: -2, minY: -4.5, maxX: 2, maxY: 4.5 })
  })
})

describe('oval', () => {
  const cases = [
    [100, 60],
    [60, 100],
    [80, 79.9],
    [100, 2],
  ] as const

  it.each(cases)('%d by %d fills its box', (lengthAlong, width) => {
    const box = bounds(oval({ x: 3, y: -4 }, lengthAlong, width))
    expect(box.minX).toBeCloseTo(3 - lengthAlong / 2, 9)
    expect(box.maxX).toBeCloseTo(3 + lengthAlong / 2, 9)
    expect(box.minY).toBeCloseTo(-4 - width / 2, 9)
    expect(box.maxY).toBeCloseTo(-4 + width / 2, 9)
  })

  it.each(cases)('%d by %d: its four arcs have two radii, centres on the axes, and are tangent', (l, w) => {
    const { vertices } = asChain(oval({ x: 3, y: -4 }, l, w))
    expect(vertices).toHaveLength(4)
    const arcs = vertices.map((vertex, i) =>
      arcBetween(vertex, vertices[(i + 1) % 4] as (typeof vertices)[0]),
    )
    // All four sweeps turn the pencil once round: tangents that did not agree would leave a rest.
    expect(arcs.reduce((sum, { sweep }) => sum + sweep, 0)).toBeCloseTo(2 * Math.PI, 12)
    arcs.forEach((arc, i) => {
      const next = arcs[(i + 1) % 4] as (typeof arcs)[0]
      const joint = vertices[(i + 1) % 4] as (typeof vertices)[0]
      // Tangent arcs have their centres and their joint on one line.
      const ax = joint.x - arc.centre.x
      const ay = joint.y - arc.centre.y
      const bx = joint.x - next.centre.x
      const by = joint.y - next.centre.y
      expect((ax * by - ay * bx) / (arc.radius * next.radius)).toBeCloseTo(0, 9)
      expect(ax * bx + ay * by).toBeGreaterThan(0)
      const onLongAxis = Math.abs(arc.centre.y + 4) < 1e-9 * arc.radius
      const onShortAxis = Math.abs(arc.centre.x - 3) < 1e-9 * arc.radius
      expect(onLongAxis || onShortAxis).toBe(true)
    })
    expect(arcs[0]?.radius).toBeCloseTo(arcs[2]?.radius ?? 0, 9)
    expect(arcs[1]?.radius).toBeCloseTo(arcs[3]?.radius ?? 0, 9)
  })

  it('takes its radii from the chord construction: half axes 4 and 3 give 2.5 and 5', () => {
    // d = 5, s = (5 - 1) / 2 = 2, s d / a = 2.5, (d - s) d / b = 5: worked by hand.
    const { vertices } = asChain(oval(origin, 8, 6))
    const [end, side] = vertices.map((vertex, i) =>
      arcBetween(vertex, vertices[(i + 1) % 4] as (typeof vertices)[0]),
    )
    expect(end?.radius).toBeCloseTo(2.5, 12)
    expect(side?.radius).toBeCloseTo(5, 12)
    expect(end?.centre.x).toBeCloseTo(1.5, 12)
    expect(side?.centre.y).toBeCloseTo(-2, 12)
    // Both meet in direction (3, 4) / 5: the end sweeps twice 53.13 degrees.
    expect(vertices[0]?.bulge).toBeCloseTo(bulgeOf(2 * Math.atan2(4, 3)), 12)
  })

  it('with equal axes is a circle', () => {
    expect(oval({ x: 1, y: 1 }, 12, 12)).toEqual(circle({ x: 1, y: 1 }, 6))
  })
})
