/** Room between solids, held against nothing but counting points: brute force over a fine grid of places. */
import { describe, expect, test } from 'vitest'
import {
  type Axis,
  block,
  type Contour,
  circle,
  inSolid,
  move,
  type Point3,
  prism,
  roomBetween,
  roundedRectangle,
  type Solid,
  turn,
} from '../../../geometry/index.ts'

const WOOD = { of: 'a', sort: 'wood' } as const

/** Numbers by chance, alike in every run (Park and Miller's generator, as in many textbooks). */
function chance(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 48271) % 2147483647
    return state / 2147483647
  }
}

function anySolid(next: () => number, spread: number): Solid {
  const axis = (['x', 'y', 'z'] as const)[Math.floor(next() * 3)] as Axis
  const size = () => 4 + 10 * next()
  const shape: Contour =
    next() < 0.4
      ? circle({ x: 0, y: 0 }, size() / 2)
      : turn(roundedRectangle({ x: 0, y: 0 }, size(), size(), next() < 0.5 ? 0 : 2), next() * Math.PI)
  const from = (next() - 0.5) * spread
  const put = move(shape, (next() - 0.5) * spread, (next() - 0.5) * spread)
  return prism(WOOD, axis, put, from, from + size())
}

const PITCH = 0.5

/** Every place of a grid inside a solid's box. */
function* grid({ box }: Solid, pitch: number): Generator<Point3> {
  for (let x = box.minX + pitch / 2; x < box.maxX; x += pitch)
    for (let y = box.minY + pitch / 2; y < box.maxY; y += pitch)
      for (let z = box.minZ + pitch / 2; z < box.maxZ; z += pitch) yield { x, y, z }
}

const inside = (solid: Solid, pitch: number) => [...grid(solid, pitch)].filter((at) => inSolid(solid, at))

const shareRoom = (points: readonly Point3[], other: Solid, by: Point3 = { x: 0, y: 0, z: 0 }) =>
  points.some((at) => inSolid(other, { x: at.x + by.x, y: at.y + by.y, z: at.z + by.z }))

/** The least distance between two clouds of points. */
function cloudsApart(a: readonly Point3[], b: readonly Point3[]): number {
  let least = Number.POSITIVE_INFINITY
  for (const p of a)
    for (const q of b) {
      const d = (p.x - q.x) ** 2 + (p.y - q.y) ** 2 + (p.z - q.z) ** 2
      if (d < least) least = d
    }
  return Math.sqrt(least)
}

const WAYS: readonly Point3[] = [1, -1].flatMap((sign) => [
  { x: sign, y: 0, z: 0 },
  { x: 0, y: sign, z: 0 },
  { x: 0, y: 0, z: sign },
])
const along = (way: Point3, by: number): Point3 => ({ x: way.x * by, y: way.y * by, z: way.z * by })

describe('pairs drawn by chance', () => {
  const next = chance(20)
  const pairs = Array.from({ length: 90 }, (_, index) => {
    const a = anySolid(next, index % 2 ? 14 : 34)
    const b = anySolid(next, index % 2 ? 14 : 34)
    return { a, b, ...roomBetween(a, b) }
  })

  test('some run into each other and some do not, along one axis and along two', () => {
    for (const meet of [true, false])
      for (const one of [true, false])
        expect(
          pairs.filter(({ a, b, room }) => room < 0 === meet && (a.axis === b.axis) === one).length,
        ).toBeGreaterThan(3)
  })

  test('those that share room are found, and no others', () => {
    for (const { a, b, room } of pairs) {
      const met = shareRoom(inside(a, PITCH), b)
      if (met) expect(room).toBeLessThan(0)
      // A sliver thinner than the grid may hold no point of it.
      if (room < -1) expect(met).toBe(true)
    }
  })

  test('those apart are as far apart as the nearest points of their grids, to the pitch', () => {
    const far = pairs.filter(({ room }) => room > 0.2)
    for (const { a, b, room } of far) {
      const skin = cloudsApart(inside(a, 0.8), inside(b, 0.8))
      expect(skin).toBeGreaterThan(room - 1e-3)
      // Each grid may miss its skin by half the diagonal of a cell, and corners by a little more.
      expect(skin - room).toBeLessThan(0.8 * Math.sqrt(3) * 1.6)
    }
  })

  test('the nearest places lie on both solids and as far apart as stated', () => {
    for (const { a, b, room, from, to } of pairs) {
      if (room <= 0) continue
      expect(Math.hypot(from.x - to.x, from.y - to.y, from.z - to.z)).toBeCloseTo(room, 3)
      for (const [solid, at] of [
        [a, from],
        [b, to],
      ] as const) {
        const hair = 1e-4
        expect(
          WAYS.some((way) =>
            inSolid(solid, { x: at.x + way.x * hair, y: at.y + way.y * hair, z: at.z + way.z * hair }),
          ),
        ).toBe(true)
      }
    }
  })

  test('moved along an axis by less than the depth, prisms along two axes still meet; by a little more, one way frees them', () => {
    const crossed = pairs.filter(({ a, b, room }) => room < -1.5 && a.axis !== b.axis)
    expect(crossed.length).toBeGreaterThan(5)
    for (const { a, b, room } of crossed) {
      const fine = inside(a, 0.25)
      for (const way of WAYS) expect(shareRoom(fine, b, along(way, -room - 1))).toBe(true)
      expect(WAYS.some((way) => !shareRoom(fine, b, along(way, -room + 0.02)))).toBe(true)
    }
  })

  test('asking the other way round gives the same room', () => {
    for (const { a, b, room } of pairs) expect(roomBetween(b, a).room).toBeCloseTo(room, 3)
  })
})

describe('cases worked out by hand', () => {
  const box = (minX: number, minZ: number) =>
    block(WOOD, { minX, maxX: minX + 10, minY: 0, maxY: 10, minZ, maxZ: minZ + 10 }) as Solid
  const rod = (x: number, z: number) => prism(WOOD, 'y', circle({ x, y: z }, 3), -50, 50)

  test.each([
    // 12 - 10
    { what: 'boxes beside each other', a: box(0, 0), b: box(12, 0), room: 2 },
    // Sides that touch leave none and take none, however far the two stand beside each other.
    { what: 'boxes that touch side by side', a: box(0, 0), b: box(10, 0), room: 0 },
    { what: 'boxes that touch, one higher', a: box(0, 0), b: box(10, 4), room: 0 },
    { what: 'boxes that lie on each other', a: box(0, 0), b: box(3, 10), room: 0 },
    { what: 'boxes that touch in an edge', a: box(0, 0), b: box(10, 10), room: 0 },
    { what: 'boxes apart above a touching side', a: box(0, 0), b: box(10, 12), room: 2 },
    // 3-4-5
    { what: 'boxes over a corner', a: box(0, 0), b: box(13, 14), room: 5 },
    { what: 'a box let in 2', a: box(0, 0), b: box(0, 8), room: -2 },
    // 14 - 10 - 3
    { what: 'a rod beside a box', a: box(0, 0), b: rod(14, 5), room: 1 },
    // The corner (10, 10) from (13, 14) is 5 away
    { what: 'a rod over an edge', a: box(0, 0), b: rod(13, 14), room: 2 },
    // its skin at 9
    { what: 'a rod in the side of a box', a: box(0, 0), b: rod(12, 5), room: -1 },
    // two rods crossing with axes 5 apart, radii 3 and 3
    {
      what: 'rods that cross',
      a: rod(0, 0),
      b: prism(WOOD, 'x', circle({ x: 0, y: 5 }, 3), -50, 50),
      room: -1,
    },
    // 8 - 6
    {
      what: 'rods that pass',
      a: rod(0, 0),
      b: prism(WOOD, 'x', circle({ x: 0, y: 8 }, 3), -50, 50),
      room: 2,
    },
  ])('$what', ({ a, b, room }) => {
    expect(roomBetween(a, b).room).toBeCloseTo(room, 2)
  })

  test('a solid with no end is refused, by the number read', () => {
    expect(() => prism(WOOD, 'z', circle({ x: 0, y: 0 }, 1), 0, Number.NaN)).toThrow('NaN')
    expect(block(WOOD, { minX: 0, maxX: 0, minY: 0, maxY: 1, minZ: 0, maxZ: 1 })).toBeNull()
  })
})
