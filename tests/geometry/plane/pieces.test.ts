/** Lines and arcs taken apart, against walking along them. */
import { describe, expect, it, test } from 'vitest'
import { circle, type Point } from '../../../geometry/plane/index.ts'
import { piecesOf } from '../../../geometry/plane/pieces.ts'
import { arcCovers } from '../../../geometry/plane/spot.ts'
import { law, seed } from './law.ts'
import { chainOf, pieceOf, placeOn, segments, straight } from './segments.ts'
import { apart } from './shapes.ts'

describe(`pieces (seed ${seed})`, () => {
  it('hold what was drawn: ends, centre, radius, sweep, length, middle and box', () => {
    law(
      [segments],
      (drawn) => {
        const piece = pieceOf(drawn)
        const near = (value: number, wanted: number) => expect(Math.abs(value - wanted)).toBeLessThan(1e-7)
        const [first, middle, last] = [0, 0.5, 1].map((t) => placeOn(drawn, t)) as [Point, Point, Point]
        expect(piece.isArc).toBe(drawn.kind === 'arc')
        near(piece.x1, first.x)
        near(piece.y1, first.y)
        near(piece.x2, last.x)
        near(piece.y2, last.y)
        near(Math.hypot(piece.ux, piece.uy), 1)
        if (drawn.kind === 'arc') {
          near(piece.cx, drawn.centre.x)
          near(piece.cy, drawn.centre.y)
          near(piece.radius, drawn.radius)
          near(piece.sweep, drawn.sweep)
          near(piece.length, drawn.radius * Math.abs(drawn.sweep))
          near(piece.cx + piece.ux * piece.radius, middle.x)
          near(piece.cy + piece.uy * piece.radius, middle.y)
          near(piece.cosHalf, Math.cos(drawn.sweep / 2))
        } else {
          expect(piece).toMatchObject({ cx: 0, cy: 0, radius: 0, sweep: 0, cosHalf: 0 })
          near(piece.length, apart(first, last))
          near(piece.x1 + (piece.ux * piece.length) / 2, middle.x)
          near(piece.y1 + (piece.uy * piece.length) / 2, middle.y)
        }
        const walked = Array.from({ length: 721 }, (_, i) => placeOn(drawn, i / 720))
        // A step of at most half a degree falls short of the outermost place by 18 (1 - cos 0.25°) at most.
        const within = (edge: number, seen: number) => {
          expect(edge - seen).toBeGreaterThan(-1e-9)
          expect(edge - seen).toBeLessThan(2e-4)
        }
        within(-piece.minX, Math.max(...walked.map(({ x }) => -x)))
        within(-piece.minY, Math.max(...walked.map(({ y }) => -y)))
        within(piece.maxX, Math.max(...walked.map(({ x }) => x)))
        within(piece.maxY, Math.max(...walked.map(({ y }) => y)))
      },
      200,
    )
  })

  it('of a chain make up its box, and a segment without length is left out', () => {
    const { list, minX, minY, maxX, maxY, closed } = piecesOf({
      shape: 'chain',
      closed: false,
      vertices: [
        { x: 2, y: 3, bulge: 0 },
        { x: 2, y: 3, bulge: 0 },
        // A half circle that reaches 5 below its ends, and a line back up to the left.
        { x: 10, y: 3, bulge: 1 },
        { x: 20, y: 3, bulge: 0 },
        { x: -4, y: 30, bulge: 0 },
      ],
    })
    expect(list).toHaveLength(3)
    expect([minX, minY, maxX, maxY]).toEqual([-4, -2, 20, 30].map((value) => expect.closeTo(value, 9)))
    expect(closed).toBe(false)
  })

  it('of a circle are one full turn from its rightmost place', () => {
    const { list, closed, ...box } = piecesOf(circle({ x: 3, y: -2 }, 5))
    expect(closed).toBe(true)
    expect(box).toEqual({ minX: -2, minY: -7, maxX: 8, maxY: 3 })
    expect(list).toHaveLength(1)
    const [whole] = list
    expect(whole).toMatchObject({
      ...{ isArc: true, x1: 8, y1: -2, x2: 8, y2: -2, cx: 3, cy: -2, radius: 5, ux: -1, uy: 0 },
      ...{ length: expect.closeTo(10 * Math.PI, 9), sweep: 2 * Math.PI, ...box },
    })
    for (let i = 0; i < 64; i++)
      expect(arcCovers(whole!, 5 * Math.cos(i / 10), 5 * Math.sin(i / 10), 5)).toBe(true)
  })
})

test('a chain in one place cannot be measured, and says how many vertices it had', () => {
  const here = { x: 1, y: 1, bulge: 0 }
  expect(() => piecesOf({ shape: 'chain', closed: true, vertices: [here, here] })).toThrow(
    'has 2 in one place',
  )
  // Open, two vertices are one segment; closed, two.
  const there = { x: 4, y: 5, bulge: 0 }
  expect(piecesOf({ shape: 'chain', closed: false, vertices: [here, there] }).list).toHaveLength(1)
  expect(piecesOf({ shape: 'chain', closed: true, vertices: [here, there] }).list).toHaveLength(2)
  expect(chainOf(straight(1, 1, 4, 5)).vertices).toEqual([here, there])
})
