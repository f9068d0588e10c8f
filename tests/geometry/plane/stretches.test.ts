/** Stretches cut where they meet and joined into loops: by hand, and against walking along what was drawn. */
import { describe, expect, it, test } from 'vitest'
import { area, circle, type Point, rectangle } from '../../../geometry/plane/index.ts'
import {
  backwards,
  cutWhereMet,
  headingOf,
  joined,
  middleOf,
  type Stretch,
  stretchesOf,
} from '../../../geometry/plane/stretches.ts'
import { law, seed } from './law.ts'
import { arc, chainOf, placeOn, type Segment, searchedFrom, segments, straight } from './segments.ts'
import { apart, sampled, stars } from './shapes.ts'

const stretchOf = (segment: Segment): Stretch => {
  const [only] = stretchesOf(chainOf(segment))
  if (!only) throw new Error('a segment is one stretch')
  return only
}

const line = (x1: number, y1: number, x2: number, y2: number, bulge = 0): Stretch => ({
  x1,
  y1,
  x2,
  y2,
  bulge,
})
const startOf = ({ x1, y1 }: Stretch): Point => ({ x: x1, y: y1 })
const endOf = ({ x2, y2 }: Stretch): Point => ({ x: x2, y: y2 })
const places = (cut: readonly Stretch[]) => [...cut.map(startOf), endOf(cut.at(-1)!)]
const close = (list: readonly (readonly [number, number])[]) =>
  list.map(([x, y]) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) }))

describe(`a stretch (seed ${seed})`, () => {
  it('has its middle half way along, heads as its chord does, and runs back the same way', () => {
    law(
      [segments],
      (drawn) => {
        const one = stretchOf(drawn)
        expect(apart(middleOf(one), placeOn(drawn, 0.5))).toBeLessThan(1e-7)
        expect(apart(middleOf(backwards(one)), placeOn(drawn, 0.5))).toBeLessThan(1e-7)
        expect([startOf(backwards(one)), endOf(backwards(one))]).toEqual([endOf(one), startOf(one)])
        const [before, after] = [placeOn(drawn, 0.5 - 1e-4), placeOn(drawn, 0.5 + 1e-4)]
        const step = apart(before, after)
        const { x, y } = headingOf(one)
        expect(x).toBeCloseTo((after.x - before.x) / step, 6)
        expect(y).toBeCloseTo((after.y - before.y) / step, 6)
      },
      100,
    )
  })

  test('of a circle is half of it', () => {
    const two = stretchesOf(circle({ x: 3, y: 4 }, 5))
    expect(two.map(startOf)).toEqual([
      { x: -2, y: 4 },
      { x: 8, y: 4 },
    ])
    // The lower half first: counter-clockwise from the left.
    expect(two.map(middleOf)).toEqual(
      close([
        [3, -1],
        [3, 9],
      ]),
    )
  })
})

describe(`cutting (seed ${seed})`, () => {
  it('leaves parts that follow one another along the whole, and meet the other only at their ends', () => {
    const met = [0, 0, 0]
    law(
      [segments, segments],
      (a, b) => {
        const [one, other] = [stretchOf(a), stretchOf(b)]
        const cut = cutWhereMet([one], [one, other])
        expect(startOf(cut[0]!)).toEqual(startOf(one))
        expect(endOf(cut.at(-1)!)).toEqual(endOf(one))
        for (const [index, part] of cut.slice(1).entries()) {
          expect(startOf(part)).toEqual(endOf(cut[index]!))
          expect(searchedFrom(b, startOf(part)).distance).toBeLessThan(1e-5)
        }
        let turned = 0
        for (const part of cut) {
          // Sampled as its own chain, every part lies on the whole; none of its inside lies on the other.
          const { x1, y1, x2, y2, bulge } = part
          const vertices = [
            { x: x1, y: y1, bulge },
            { x: x2, y: y2, bulge: 0 },
          ]
          for (const place of sampled({ shape: 'chain', closed: false, vertices }, 6))
            expect(searchedFrom(a, place).distance).toBeLessThan(1e-5)
          turned += 4 * Math.atan(bulge)
        }
        expect(turned).toBeCloseTo(a.kind === 'arc' ? a.sweep : 0, 6)
        if (cut.length <= 3) met[cut.length - 1]!++
      },
      150,
    )
    expect(Math.min(...met)).toBeGreaterThan(0)
  })

  test('is at every place of crossing, in order along the stretch', () => {
    const cut = cutWhereMet(
      [line(0, 0, 20, 0)],
      [line(15, -3, 15, 3), line(4, -3, 4, 3), stretchOf(arc(9, 0, 2, 10, 350)), line(30, -1, 30, 1)],
    )
    expect(places(cut)).toEqual(
      close([
        [0, 0],
        [4, 0],
        [7, 0],
        [15, 0],
        [20, 0],
      ]),
    )
    // An arc cut by a level line on both sides: 3-4-5.
    const bow = cutWhereMet([stretchOf(arc(0, 0, 5, 350, 10))], [line(-9, 3, 9, 3)])
    expect(places(bow).slice(1, -1)).toEqual(
      close([
        [-4, 3],
        [4, 3],
      ]),
    )
    const other = cutWhereMet([stretchOf(arc(0, 0, 5, 10, 350))], [line(-9, 3, 9, 3)])
    expect(places(other).slice(1, -1)).toEqual(
      close([
        [4, 3],
        [-4, 3],
      ]),
    )
  })

  test('is where the end of another lies on it, though they do not cross', () => {
    expect(places(cutWhereMet([line(0, 0, 20, 0)], [line(8, 0, 8, 5), line(12, 7, 12, 0)]))).toEqual(
      close([
        [0, 0],
        [8, 0],
        [12, 0],
        [20, 0],
      ]),
    )
    // Ends that only come near leave it whole.
    expect(cutWhereMet([line(0, 0, 20, 0)], [line(8, 1e-4, 8, 5), line(12, 7, 12, 1e-4)])).toHaveLength(1)
  })

  test('of stretches that lie on one another is at each other’s ends', () => {
    const [one, other] = [line(0, 0, 10, 0), line(14, 0, 4, 0)]
    expect(places(cutWhereMet([one], [other]))).toEqual(
      close([
        [0, 0],
        [4, 0],
        [10, 0],
      ]),
    )
    expect(places(cutWhereMet([other], [one]))).toEqual(
      close([
        [14, 0],
        [10, 0],
        [4, 0],
      ]),
    )
    const arcs = cutWhereMet([stretchOf(arc(0, 0, 5, 0, 180))], [stretchOf(arc(0, 0, 5, 60, 270))])
    expect(places(arcs)).toEqual(
      close([
        [5, 0],
        [2.5, 2.5 * Math.sqrt(3)],
        [-5, 0],
      ]),
    )
  })

  test('leaves out what has no length', () => {
    expect(cutWhereMet([line(3, 3, 3, 3), line(0, 0, 1, 0)], [line(9, 9, 9, 9)])).toEqual([line(0, 0, 1, 0)])
  })
})

describe('joining', () => {
  const square = (x: number, y: number, size: number) => stretchesOf(rectangle(x, y, x + size, y + size))

  test('takes stretches in any order: counter-clockwise is an outline, clockwise a hole', () => {
    const [a, b, c, d] = square(0, 0, 10)
    const hole = square(3, 3, 2).map(backwards)
    const { outers, holes, torn } = joined([c!, hole[1]!, a!, hole[0]!, d!, hole[3]!, b!, hole[2]!])
    expect(outers.map(area)).toEqual([expect.closeTo(100, 9)])
    // Holes are turned counter-clockwise too.
    expect(holes.map(area)).toEqual([expect.closeTo(4, 9)])
    expect(outers.map(({ vertices }) => vertices.length)).toEqual([4])
    expect(torn).toBe(false)
  })

  test('turns the arcs of a hole over with it', () => {
    // A slot: two arcs and two lines, no two of them alike.
    const slot = [...[line(0, 0, 10, 0), line(10, 0, 10, 6, 1), line(10, 6, 2, 6), line(2, 6, 0, 0, 0.2)]]
    const outline = joined(slot).outers[0]!
    const { holes, outers } = joined(slot.map(backwards))
    expect(outers).toEqual([])
    expect(area(holes[0]!)).toBeCloseTo(area(outline), 9)
    // All of its line is that of the slot.
    const there = holes[0]!.vertices
      .map(({ x, y, bulge }) => [x, y, bulge])
      .sort((p, q) => p[0]! - q[0]! || p[1]! - q[1]!)
    expect(there).toEqual(
      outline.vertices.map(({ x, y, bulge }) => [x, y, bulge]).sort((p, q) => p[0]! - q[0]! || p[1]! - q[1]!),
    )
  })

  test('takes loops that touch at a corner apart, whichever comes first', () => {
    const all = [...square(0, 0, 10), ...square(10, 10, 5)]
    for (let first = 0; first < all.length; first++) {
      const { outers, holes } = joined([...all.slice(first), ...all.slice(0, first)])
      expect(outers.map(area).sort((p, q) => p - q)).toEqual([25, 100].map((one) => expect.closeTo(one, 9)))
      expect(holes).toEqual([])
    }
    // Circles that touch: which way to go on is told by their curves alone.
    const round = [...stretchesOf(circle({ x: 0, y: 0 }, 5)), ...stretchesOf(circle({ x: 8, y: 0 }, 3))]
    expect(
      joined(round)
        .outers.map(area)
        .sort((p, q) => p - q),
    ).toEqual([9, 25].map((square) => expect.closeTo(square * Math.PI, 9)))
  })

  test('counts what comes twice once', () => {
    expect(joined([...square(0, 0, 10), ...square(0, 0, 10)]).outers).toHaveLength(1)
    // The same ends the other way, or with another curve between them, are others.
    const lens = [line(0, 0, 10, 0, 0.3), line(10, 0, 0, 0, 0.3), line(10, 0, 0, 0, 0.3)]
    expect(joined(lens).outers).toHaveLength(1)
    expect(joined([line(0, 0, 10, 0, 0.3), line(10, 0, 0, 0, 0)]).outers).toHaveLength(1)
  })

  test('leaves out a line there and back, and dead ends, and says where much was lost', () => {
    expect(joined([line(0, 0, 10, 0), line(10, 0, 0, 0)])).toEqual({ outers: [], holes: [], torn: false })
    const whisker = (long: number) => joined([...square(0, 0, 10), line(10, 10, 10 + long, 10)])
    expect(whisker(0.005).torn).toBe(false)
    expect(whisker(0.02).torn).toBe(true)
    expect(whisker(0.02).outers.map(area)).toEqual([expect.closeTo(100, 9)])
    // Two in a row, the second of which is loose only when the first is gone.
    const long = [...square(0, 0, 10), line(10, 10, 10.004, 10), line(10.004, 10, 10.008, 10)]
    expect(joined(long).torn).toBe(false)
    expect(joined(long).outers).toHaveLength(1)
    // A square with a side missing is nothing.
    expect(joined(square(0, 0, 10).slice(1))).toEqual({ outers: [], holes: [], torn: true })
  })

  test('bridges ends that rounding set apart, and no more', () => {
    const [a, b, c, d] = square(0, 0, 10)
    const moved = (by: number): Stretch => ({ ...b!, x1: b!.x1 + by, y1: b!.y1 - by })
    expect(joined([a!, moved(9e-6), c!, d!])).toMatchObject({ torn: false, outers: [{ closed: true }] })
    expect(joined([a!, moved(2e-5), c!, d!])).toEqual({ outers: [], holes: [], torn: true })
  })

  it('gives any star back that was cut anywhere', () => {
    law(
      [stars, segments],
      (star, knife) => {
        const cut = cutWhereMet(stretchesOf(star), [stretchOf(knife)])
        const { outers, holes, torn } = joined([...cut].reverse())
        expect([outers.length, holes.length, torn]).toEqual([1, 0, false])
        expect(area(outers[0]!)).toBeCloseTo(area(star), 5)
      },
      100,
    )
  })
})

test('a straight knife through a square leaves two parts of every side it meets', () => {
  const cut = cutWhereMet(stretchesOf(rectangle(0, 0, 10, 10)), [stretchOf(straight(3, -5, 7, 15))])
  // It rises 20 over 4: at the foot x = 4, at the head x = 6.
  expect(places(cut)).toEqual(
    close([
      [0, 0],
      [4, 0],
      [10, 0],
      [10, 10],
      [6, 10],
      [0, 10],
      [0, 0],
    ]),
  )
})
