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
  length,
  offset,
  place,
  polygon,
  rectangle,
  roundedRectangle,
  stadium,
} from '../../../geometry/plane/index.ts'
import { offsetOfChain } from '../../../geometry/plane/offset.ts'
import { evenly, notchedPlate, placements, sampled, stars } from './shapes.ts'

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
  '60 x 40 with a half-round notch r 10': notchedPlate,
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

describe('boxes grown and shrunk are boxes', () => {
  const origin = { x: 0, y: 0 }
  const cornersOf = (contour?: Contour) => (contour?.shape === 'chain' ? contour.vertices.length : 0)
  // What a box becomes is told by its sizes: a rectangle's corners round out, and come back square.
  const table: readonly (readonly [string, Contour, number, Contour | null])[] = [
    ['a rectangle grown', rectangle(0, 0, 10, 6), 2, roundedRectangle({ x: 5, y: 3 }, 14, 10, 2)],
    ['a rectangle shrunk', rectangle(0, 0, 10, 6), -2, rectangle(2, 2, 8, 4)],
    ['a standing one shrunk', rectangle(-3, 1, 3, 11), -2, rectangle(-1, 3, 1, 9)],
    ['a rectangle shrunk to a line', rectangle(0, 0, 10, 6), -3, null],
    ['round corners grown', roundedRectangle(origin, 30, 20, 4), 3, roundedRectangle(origin, 36, 26, 7)],
    ['round corners shrunk', roundedRectangle(origin, 30, 20, 4), -3, roundedRectangle(origin, 24, 14, 1)],
    [
      'round corners shrunk past their radius',
      roundedRectangle(origin, 30, 20, 4),
      -5,
      rectangle(-10, -5, 10, 5),
    ],
    ['a slot grown', stadium(origin, 30, 8), 3, stadium(origin, 36, 14)],
    ['a slot shrunk', stadium(origin, 30, 8), -3, stadium(origin, 24, 2)],
    ['a standing slot shrunk', stadium(origin, 8, 30), -3, stadium(origin, 2, 24)],
    ['a slot shrunk away', stadium(origin, 30, 8), -4, null],
  ]
  test.each(table)('%s', (_, shape, by, wanted) => {
    for (const at of [
      { x: 0, y: 0, turn: 0, mirrored: false },
      { x: 7, y: -3, turn: Math.PI / 2, mirrored: false },
      { x: -20, y: 40, turn: 0.3, mirrored: true },
      { x: 3, y: 4, turn: -2.5, mirrored: false },
    ]) {
      const { outers, holes, torn } = offset(place(shape, at), by)
      expect([holes, torn]).toEqual([[], false])
      expect(outers).toHaveLength(wanted ? 1 : 0)
      if (wanted) {
        const there = place(wanted, at)
        expect(outers[0]).toMatchObject({ shape: 'chain', closed: true })
        expect(cornersOf(outers[0])).toBe(cornersOf(there))
        for (const point of sampled(there, 4)) expect(distanceToPoint(outers[0]!, point)).toBeLessThan(1e-8)
        expect(sum(outers)).toBeCloseTo(area(there), 7)
      }
    }
  })

  test('what is hardly a box is none: it is grown as it lies', () => {
    const at = (...list: readonly (readonly [number, number, number?])[]) =>
      chain(
        list.map(([x, y, bulge = 0]) => ({ x, y, bulge })),
        true,
      )
    const round = roundedRectangle(origin, 30, 20, 4) as Chain
    const other = (index: number, more: Partial<Chain['vertices'][number]>): Chain => ({
      ...round,
      vertices: round.vertices.map((one, at) => (at === index ? { ...one, ...more } : one)),
    })
    const nearly = [
      at([0, 0], [10, 0], [10.01, 6], [0, 6]),
      at([0, 0], [10, 0], [12, 6], [2, 6]),
      at([0, 0], [10, 0, 0.01], [10, 6], [0, 6]),
      at([0, 0], [10, 0], [10, 6], [5, 6], [0, 6]),
      at([0, 0], [10, 0, 1], [10, 6], [0, 6, 0.9]),
      at([0, 0, 0.1], [10, 0, 0.1], [10, 6, 0.1], [0, 6, 0.1]),
      other(1, { bulge: 0.3 }),
      other(2, { y: (round.vertices[2]?.y ?? 0) + 1 }),
      at([0, 0], [8, 0], [10, 2], [10, 8], [8, 10], [2, 10], [0, 8], [0, 2]),
    ]
    for (const shape of nearly)
      for (const by of [1.5, -1.5]) {
        expect(grown(shape, by)).toBeCloseTo(byClipper(shape, by), 1)
        expect(offset(shape, by)).toEqual(offsetOfChain(shape, by))
      }
  })
})

describe('convex shapes grow as Steiner has it: A + P d + π d²', () => {
  // J. Steiner 1840, for any convex figure (from memory). Corners of few degrees leave arcs of little sweep.
  const wheel = (corners: number, radius: number) =>
    polygon(
      Array.from({ length: corners }, (_, i) => ({
        x: radius * Math.cos((2 * Math.PI * i) / corners),
        y: radius * Math.sin((2 * Math.PI * i) / corners),
      })),
    )
  test.each([3, 5, 9, 16])('a wheel of %i corners, grown twice and shrunk again', (corners) => {
    const shape = wheel(corners, 20)
    const steiner = (one: Contour, d: number) => area(one) + length(one) * d + Math.PI * d * d
    const [once] = offset(shape, 2).outers as [Contour]
    expect(area(once)).toBeCloseTo(steiner(shape, 2), 6)
    const [twice] = offset(once, 3).outers as [Contour]
    expect(area(twice)).toBeCloseTo(steiner(shape, 5), 6)
    expect(length(twice)).toBeCloseTo(length(shape) + 10 * Math.PI, 6)
    expect(grown(twice, -3)).toBeCloseTo(area(once), 5)
    // Past the radius of its corners it is the wheel of straight sides again, and then a smaller one.
    expect(grown(twice, -5.5)).toBeCloseTo(area(offset(shape, -0.5).outers[0]!), 4)
    const inner = 20 * Math.cos(Math.PI / corners)
    expect(grown(shape, -4)).toBeCloseTo(area(shape) * ((inner - 4) / inner) ** 2, 6)
    expect(grown(shape, -inner - 0.01)).toBe(0)
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
