import { describe, expect, it } from 'vitest'
import type { Chain } from '../../../geometry/plane/index.ts'
import {
  area,
  bounds,
  chain,
  circle,
  combinedPlacement,
  faults,
  inversePlacement,
  line,
  mirrorX,
  mirrorY,
  move,
  place,
  placePoint,
  rectangle,
  reversed,
  turn,
} from '../../../geometry/plane/index.ts'

/** A square whose right side bows out: no symmetry to hide a wrong bulge behind. */
const bowed = chain(
  [
    { x: 0, y: 0, bulge: 0 },
    { x: 10, y: 0, bulge: 0.5 },
    { x: 10, y: 10, bulge: 0 },
    { x: 0, y: 10, bulge: -0.1 },
  ],
  true,
)

describe('mirrored chains', () => {
  it('stay counter-clockwise, start from the same vertex, and keep each arc on its own segment', () => {
    expect(mirrorX(bowed)).toEqual({
      shape: 'chain',
      closed: true,
      vertices: [
        { x: 0, y: 0, bulge: -0.1 },
        { x: 0, y: -10, bulge: 0 },
        { x: 10, y: -10, bulge: 0.5 },
        { x: 10, y: 0, bulge: 0 },
      ],
    })
    expect(area(mirrorX(bowed))).toBeCloseTo(area(bowed), 12)
    expect(bounds(mirrorX(bowed)).maxX).toBe(bounds(bowed).maxX)
    expect(faults(mirrorX(bowed))).toEqual([])
  })

  it('mirrored twice are the same numbers', () => {
    expect(mirrorX(mirrorX(bowed))).toEqual(bowed)
    expect(mirrorY(mirrorY(bowed))).toEqual(bowed)
  })

  it('open, keep their direction', () => {
    const open = chain(
      [
        { x: 1, y: 2, bulge: 0.4 },
        { x: 5, y: 6, bulge: 0 },
      ],
      false,
    )
    expect(mirrorX(open).vertices).toEqual([
      { x: 1, y: -2, bulge: -0.4 },
      { x: 5, y: -6, bulge: 0 },
    ])
  })

  it('never hold a minus zero', () => {
    const { centre } = move(circle({ x: 0, y: 0 }, 1), -0, -0)
    expect(Object.is(mirrorX(circle(centre, 1)).centre.y, -0)).toBe(false)
    expect(
      Object.is(place(circle({ x: -0, y: -0 }, 1), { x: -0, y: -0, turn: 0, mirrored: false }).centre.x, -0),
    ).toBe(false)
    for (const { x, y, bulge } of [...mirrorX(bowed).vertices, ...mirrorY(bowed).vertices]) {
      expect([x, y, bulge].some((number) => Object.is(number, -0))).toBe(false)
    }
  })
})

describe('mirrorX and mirrorY', () => {
  it('turn over about the line that was named', () => {
    expect(mirrorX(circle({ x: 3, y: 4 }, 1), 10).centre).toEqual({ x: 3, y: 16 })
    expect(mirrorY(circle({ x: 3, y: 4 }, 1), 10).centre).toEqual({ x: 17, y: 4 })
    expect(mirrorX(circle({ x: 3, y: 4 }, 1)).centre).toEqual({ x: 3, y: -4 })
    expect(mirrorY(circle({ x: 3, y: 4 }, 1)).centre).toEqual({ x: -3, y: 4 })
    expect(bounds(mirrorY(bowed, 5)).minX).toBeCloseTo(10 - bounds(bowed).maxX, 12)
  })
})

describe('move and turn', () => {
  it('move shifts, and what is moved back is where it was', () => {
    expect(move(rectangle(0, 0, 4, 2), 5, -3)).toEqual(rectangle(5, -3, 9, -1))
    expect(move(move(bowed, 8, 16), -8, -16)).toEqual(bowed)
  })

  it('quarter turns keep whole numbers whole', () => {
    const corners = turn(rectangle(0, 0, 4, 2), Math.PI / 2).vertices.map(({ x, y }) => [x, y])
    expect(corners).toEqual([
      [0, 0],
      [0, 4],
      [-2, 4],
      [-2, 0],
    ])
    expect(turn(circle({ x: 3, y: 4 }, 1), Math.PI).centre).toEqual({ x: -3, y: -4 })
  })

  it('turn about a point leaves that point where it is', () => {
    const turned = turn(circle({ x: 7, y: -2 }, 1), 1.234, { x: 7, y: -2 })
    expect(turned.centre.x).toBeCloseTo(7, 12)
    expect(turned.centre.y).toBeCloseTo(-2, 12)
  })

  it('turn by the angle of a 3-4-5 triangle', () => {
    const { centre } = turn(circle({ x: 5, y: 0 }, 1), Math.atan2(4, 3))
    expect(centre.x).toBeCloseTo(3, 12)
    expect(centre.y).toBeCloseTo(4, 12)
  })
})

describe('place', () => {
  it('mirrors first, then turns, then moves', () => {
    const placement = { x: 100, y: 10, turn: Math.PI / 2, mirrored: true }
    // (3, 1) is mirrored to (3, -1), turned to (1, 3), moved to (101, 13).
    expect(placePoint({ x: 3, y: 1 }, placement)).toEqual({ x: 101, y: 13 })
    expect(place(circle({ x: 3, y: 1 }, 2), placement)).toEqual(circle({ x: 101, y: 13 }, 2))
  })

  it('is undone by the inverse placement, mirrored or not', () => {
    for (const mirrored of [false, true]) {
      const placement = { x: 12, y: -7, turn: 0.7, mirrored }
      const back = placePoint(placePoint({ x: 3, y: 1 }, placement), inversePlacement(placement))
      expect(back.x).toBeCloseTo(3, 12)
      expect(back.y).toBeCloseTo(1, 12)
    }
  })

  it('after another is the combined placement, mirrored or not', () => {
    for (const outerMirrored of [false, true]) {
      for (const innerMirrored of [false, true]) {
        const outer = { x: 12, y: -7, turn: 0.7, mirrored: outerMirrored }
        const inner = { x: 3, y: 5, turn: -1.9, mirrored: innerMirrored }
        const twice = placePoint(placePoint({ x: 4, y: 9 }, inner), outer)
        const once = placePoint({ x: 4, y: 9 }, combinedPlacement(outer, inner))
        expect(once.x).toBeCloseTo(twice.x, 12)
        expect(once.y).toBeCloseTo(twice.y, 12)
      }
    }
  })
})

describe('reversed', () => {
  it('an open chain runs from its last vertex, arcs the other way', () => {
    const open: Chain = {
      shape: 'chain',
      closed: false,
      vertices: [
        { x: 0, y: 0, bulge: 0.4 },
        { x: 5, y: 0, bulge: 0 },
        { x: 5, y: 5, bulge: 0 },
      ],
    }
    expect(reversed(open).vertices).toEqual([
      { x: 5, y: 5, bulge: 0 },
      { x: 5, y: 0, bulge: -0.4 },
      { x: 0, y: 0, bulge: 0 },
    ])
    expect(reversed(reversed(open))).toEqual(open)
    expect(reversed(line({ x: 0, y: 0 }, { x: 1, y: 0 })).vertices[0]).toEqual({ x: 1, y: 0, bulge: 0 })
  })

  it('a closed chain encloses minus its area', () => {
    expect(area(reversed(bowed))).toBeCloseTo(-area(bowed), 12)
    expect(reversed(reversed(bowed))).toEqual(bowed)
  })
})
