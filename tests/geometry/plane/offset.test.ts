import Offset from '@crhio/offset'
import { areaD, EndType, inflatePathsD, JoinType, type PathsD } from 'clipper2-ts'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  area,
  type Chain,
  type Contour,
  chain,
  circle,
  distanceToPoint,
  flatten,
  offset,
  place,
  polygon,
  rectangle,
  roundedRectangle,
  stadium,
} from '../../../geometry/plane/index.ts'
import { offsetOfChain } from '../../../geometry/plane/offset.ts'
import { evenly, placements, sampled, stars } from './shapes.ts'

const sum = (contours: readonly Contour[]): number => contours.reduce((all, one) => all + area(one), 0)
const grown = (contour: Contour, by: number) => {
  const { outers, holes, torn } = offset(contour, by)
  expect(torn).toBe(false)
  return sum(outers) - sum(holes)
}

/** Sound, level and closed: the names of the shapes are those of the table below. */
const SHAPES: Readonly<Record<string, Contour>> = {
  'rounded rectangle 100 x 50, r 5': roundedRectangle({ x: 0, y: 0 }, 100, 50, 5),
  'slot, centres 40 apart, r 5': stadium({ x: 0, y: 0 }, 50, 10),
  'L of 60 x 50': polygon([
    { x: 0, y: 0 },
    { x: 60, y: 0 },
    { x: 60, y: 20 },
    { x: 20, y: 20 },
    { x: 20, y: 50 },
    { x: 0, y: 50 },
  ]),
  '60 x 40 with a half-round notch r 10': chain(
    [
      { x: 0, y: 0, bulge: 0 },
      { x: 60, y: 0, bulge: 0 },
      { x: 60, y: 40, bulge: 0 },
      { x: 40, y: 40, bulge: -1 },
      { x: 20, y: 40, bulge: 0 },
      { x: 0, y: 40, bulge: 0 },
    ],
    true,
  ),
  'two squares of 30 joined by a neck 6 wide': polygon(
    [
      [0, 0],
      [30, 0],
      [30, 12],
      [60, 12],
      [60, 0],
      [90, 0],
      [90, 30],
      [60, 30],
      [60, 18],
      [30, 18],
      [30, 30],
      [0, 30],
    ].map(([x, y]) => ({ x: Number(x), y: Number(y) })),
  ),
}

/**
 * Areas worked out by hand from rectangles, quarter circles and segments and confirmed by counting cells of
 * 0.02 mm (within 0.03 mm²); inside offsets, round joins at reflex corners.
 */
const AREAS: readonly (readonly [shape: string, inwards: number, area: number, pieces: number])[] = [
  ['rounded rectangle 100 x 50, r 5', 0.1, 4949.42964, 1],
  ['rounded rectangle 100 x 50, r 5', 3, 4132.566371, 1],
  ['rounded rectangle 100 x 50, r 5', 8, 2856, 1],
  ['slot, centres 40 apart, r 5', 1, 370.265482, 1],
  ['slot, centres 40 apart, r 5', 4.9, 8.031416, 1],
  ['slot, centres 40 apart, r 5', 5, 0, 0],
  ['slot, centres 40 apart, r 5', 6, 0, 0],
  ['L of 60 x 50', 3, 1177.931417, 1],
  ['60 x 40 with a half-round notch r 10', 2, 1837.582171, 1],
  ['two squares of 30 joined by a neck 6 wide', 4, 972.987506, 2],
]

/** A second opinion that knows no arcs: integers, arcs in steps. Its chord error is below `tolerance` times the length. */
function byClipper(contour: Contour, by: number): number {
  const path = flatten(contour, 0.0005).map(({ x, y }) => ({ x, y }))
  const paths: PathsD = inflatePathsD([path], by, JoinType.Round, EndType.Polygon, 2, 6, 0.0005)
  return paths.reduce((all, one) => all + areaD(one), 0)
}

/** A third that keeps arcs. It takes the left of travel for the inside, and leaves lines without area behind. */
function byArcs({ vertices }: Chain, by: number): number {
  return Offset({ vertexes: vertices, isClosed: true }, -by, false)
    .filter(({ vertexes }) => vertexes.length > 1)
    .reduce((all, { vertexes }) => all + area({ shape: 'chain', closed: true, vertices: vertexes }), 0)
}

/** For a busy machine, ms. */
const PATIENCE = 30_000

describe('areas of inside offsets', () => {
  test.each(AREAS)('%s by %d mm', (name, inwards, wanted, pieces) => {
    const shape = SHAPES[name] as Chain
    for (const { outers, holes } of [offset(shape, -inwards), offsetOfChain(shape, -inwards)]) {
      expect(outers).toHaveLength(pieces)
      expect(holes).toEqual([])
      expect(sum(outers)).toBeCloseTo(wanted, 5)
    }
  })

  test('a circle shrinks by its radius and is gone', () => {
    expect(offset(circle({ x: 1, y: 2 }, 5), -0.1).outers).toEqual([circle({ x: 1, y: 2 }, 4.9)])
    expect(offset(circle({ x: 1, y: 2 }, 0.1), -0.1).outers).toEqual([])
    expect(offset(circle({ x: 1, y: 2 }, 5), 1).outers).toEqual([circle({ x: 1, y: 2 }, 6)])
  })

  test('a bay with a narrow mouth is closed to a hole when its shape grows', () => {
    // A square of 40 with a round bay of radius 10 whose mouth is 4 wide: grown by 3 the mouth closes.
    const half = Math.asin(2 / 10)
    const bay = chain(
      [
        { x: 0, y: 0, bulge: 0 },
        { x: 40, y: 0, bulge: 0 },
        { x: 40, y: 40, bulge: 0 },
        { x: 22, y: 40, bulge: -Math.tan((2 * Math.PI - 2 * half) / 4) },
        { x: 18, y: 40, bulge: 0 },
        { x: 0, y: 40, bulge: 0 },
      ],
      true,
    )
    const { outers, holes } = offset(bay, 3)
    expect(outers).toHaveLength(1)
    expect(holes).toHaveLength(1)
    expect(sum(holes)).toBeGreaterThan(Math.PI * 7 * 7)
    expect(sum(outers) - sum(holes)).toBeCloseTo(byClipper(bay, 3), 0)
  })

  /** A corner of wood between two edges and an arc that comes out tangent to both: it runs out to nothing at two tips. */
  const feathered = chain(
    [
      { x: 0, y: 0, bulge: 0 },
      { x: 10, y: 0, bulge: -Math.tan(Math.PI / 8) },
      { x: 0, y: 10, bulge: 0 },
    ],
    true,
  )

  test.each(
    [0, 90, 137.3, 180, 270].flatMap(
      (degrees) =>
        [
          [degrees, false],
          [degrees, true],
        ] as const,
    ),
  )('wood that runs out to nothing is gone about, turned by %d°, mirrored: %s', (degrees, mirrored) => {
    const by = 2
    // Steiner’s sum: two straight sides, a quarter disc about the corner, half a disc about each tip, a quarter of a ring along
    // the arc, which bends the other way.
    const added =
      20 * by + (Math.PI / 4) * by ** 2 + Math.PI * by ** 2 + (Math.PI / 4) * (10 ** 2 - (10 - by) ** 2)
    const turned = place(feathered, { x: 3, y: 4, turn: (degrees * Math.PI) / 180, mirrored })
    expect(area(turned)).toBeCloseTo(100 - 25 * Math.PI, 9)
    expect(grown(turned, by)).toBeCloseTo(100 - 25 * Math.PI + added, 6)
  })

  test('a gap that runs out to nothing is gone about from the wood’s side', () => {
    // The same corner as a bite out of a plate, its tips within the wood: what the bite grows by, the plate shrinks by there.
    const bitten = chain(
      [
        { x: -20, y: 0, bulge: 0 },
        { x: 0, y: 0, bulge: 0 },
        { x: 0, y: 10, bulge: Math.tan(Math.PI / 8) },
        { x: 10, y: 0, bulge: 0 },
        { x: 30, y: 0, bulge: 0 },
        { x: 30, y: 30, bulge: 0 },
        { x: -20, y: 30, bulge: 0 },
      ],
      true,
    )
    const { outers, torn } = offset(bitten, -1)
    expect([torn, outers.length]).toEqual([false, 1])
    const line = outers[0]!
    expect(distanceToPoint(line, { x: 0, y: 10 })).toBeCloseTo(1, 6)
    for (const point of flatten(line, 0.001)) expect(distanceToPoint(bitten, point)).toBeGreaterThan(0.99)
    expect(Math.abs(area(line) - byClipper(bitten, -1))).toBeLessThan(0.05)
  })

  test('open chains and lengths that are none are refused, with the value', () => {
    expect(() => offset({ shape: 'chain', closed: false, vertices: [] }, 1)).toThrow('open')
    expect(() => offset(circle({ x: 0, y: 0 }, 5), Number.NaN)).toThrow('NaN')
  })
})

/** Stars turned, moved and mirrored, grown and shrunk. */
const cases = fc.record({ star: stars, placement: placements, by: evenly(-9, 9) })

describe('any contour of lines and arcs', () => {
  test(
    'has the area that a library of integers finds',
    () => {
      fc.assert(
        fc.property(cases, ({ star, placement, by }) => {
          const shape = place(star, placement)
          expect(Math.abs(grown(shape, by) - byClipper(shape, by))).toBeLessThan(0.4)
        }),
        { numRuns: 250 },
      )
    },
    PATIENCE,
  )

  test(
    'has the area that a library of arcs finds',
    () => {
      fc.assert(
        fc.property(cases, ({ star, placement, by }) => {
          fc.pre(Math.abs(by) > 1e-3)
          const shape = place(star, placement)
          expect(Math.abs(grown(shape, by) - byArcs(shape, by))).toBeLessThan(2e-3)
        }),
        { numRuns: 250 },
      )
    },
    PATIENCE,
  )

  test(
    'lies at the full distance from it, all of it',
    () => {
      fc.assert(
        fc.property(cases, ({ star, placement, by }) => {
          fc.pre(Math.abs(by) > 1e-3)
          const shape = place(star, placement)
          const { outers, holes } = offset(shape, by)
          for (const point of [...outers, ...holes].flatMap((one) => sampled(one, 5)))
            expect(Math.abs(distanceToPoint(shape, point) - Math.abs(by))).toBeLessThan(2e-5)
        }),
        { numRuns: 250 },
      )
    },
    PATIENCE,
  )

  test(
    'closed forms and the general way agree on boxes, however they lie',
    () => {
      fc.assert(
        fc.property(
          evenly(4, 60),
          evenly(4, 60),
          evenly(0, 30),
          placements,
          evenly(-5, 5),
          (l, w, r, at, by) => {
            const level = r < 0.01 ? rectangle(0, 0, l, w) : roundedRectangle({ x: 0, y: 0 }, l, w, r)
            const shape = place(level, at)
            fc.pre(shape.shape === 'chain' && Math.abs(by) > 1e-3)
            const general = offsetOfChain(shape as Chain, by)
            expect(sum(general.outers) - sum(general.holes)).toBeCloseTo(grown(shape, by), 3)
          },
        ),
        { numRuns: 250 },
      )
    },
    PATIENCE,
  )
})
