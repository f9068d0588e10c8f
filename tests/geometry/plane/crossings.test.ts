/**
 * Where lines and arcs cross: places known from whole-numbered triangles, and a library of lines and arcs that shares
 * nothing with the engine (maker.js).
 */
import makerjs from 'makerjs'
import { describe, expect, it, test } from 'vitest'
import { crossings } from '../../../geometry/plane/crossings.ts'
import { type Piece, piecesOf } from '../../../geometry/plane/pieces.ts'
import { law, seed } from './law.ts'
import { arc, pieceOf, placeOn, type Segment, searchedFrom, segments, straight } from './segments.ts'
import { apart } from './shapes.ts'

/** All shared places, in order of x and then y. */
function shared(a: Segment, b: Segment): readonly (readonly number[])[] {
  const into: number[] = []
  const count = crossings(pieceOf(a), pieceOf(b), into)
  return Array.from({ length: count }, (_, i) => [into[2 * i]!, into[2 * i + 1]!]).sort(
    (p, q) => p[0]! - q[0]! || p[1]! - q[1]!,
  )
}

const close = (places: readonly (readonly number[])[]) =>
  places.map((place) => place.map((value) => expect.closeTo(value, 9)))

describe('places of crossing by whole-numbered triangles', () => {
  // 3-4-5 and 5-12-13: every place stands on its circles by Pythagoras.
  const circle5 = arc(1, 2, 5, 0, 359.9)
  const table: readonly (readonly [string, Segment, Segment, readonly (readonly number[])[]])[] = [
    ['two lines', straight(0, 0, 10, 5), straight(4, 5, 4, -3), [[4, 2]]],
    [
      'a line across a circle',
      straight(-9, 5, 9, 5),
      circle5,
      [
        [-3, 5],
        [5, 5],
      ],
    ],
    ['a line that begins on another', straight(5, 0, 5, 7), straight(0, 0, 10, 0), [[5, 0]]],
    ['a line that ends on another from below', straight(5, -7, 5, 0), straight(0, 0, 10, 0), [[5, 0]]],
    ['a corner of two lines', straight(0, 0, 10, 0), straight(10, 0, 10, 5), [[10, 0]]],
    ['a line low over another', straight(2, 0.5, 8, 0.3), straight(0, 0, 10, 0), []],
    ['a line low under another', straight(2, -0.3, 8, -0.5), straight(0, 0, 10, 0), []],
    [
      'a line that passes another by half a millionth',
      straight(10 + 5e-7, 3, 10 + 5e-7, -3),
      straight(0, 0, 10, 0),
      [],
    ],
    ['a line that stops inside', straight(-9, 5, 0, 5), circle5, [[-3, 5]]],
    ['a line that begins inside', straight(0, 5, 9, 5), circle5, [[5, 5]]],
    ['a line within a circle', straight(-1, 5, 3, 5), circle5, []],
    [
      'an upright line',
      straight(4, 90, 4, -90),
      circle5,
      [
        [4, -2],
        [4, 6],
      ],
    ],
    [
      'a slanting line through the centre',
      straight(-5, -6, 7, 10),
      circle5,
      [
        [-2, -2],
        [4, 6],
      ],
    ],
    ['a line above', straight(-9, 7.001, 9, 7.001), circle5, []],
    ['a line and the half that faces away', straight(-9, 5, 9, 5), arc(1, 2, 5, 180, 360), []],
    ['a line and a quarter', straight(-9, 5, 9, 5), arc(1, 2, 5, 0, 90), [[5, 5]]],
    [
      'two circles',
      arc(0, 0, 13, -170, 170),
      arc(14, 0, 15, 10, 350),
      [
        [5, -12],
        [5, 12],
      ],
    ],
    [
      'two circles, upright',
      arc(0, 0, 13, -80, 260),
      arc(0, 14, 15, -100, 240),
      [
        [-12, 5],
        [12, 5],
      ],
    ],
    [
      'two equal circles',
      arc(0, 0, 5, -170, 170),
      arc(6, 0, 5, 10, 350),
      [
        [3, -4],
        [3, 4],
      ],
    ],
    ['an arc and one half', arc(0, 0, 13, -170, 170), arc(14, 0, 15, 180, 350), [[5, -12]]],
    ['one half and an arc', arc(0, 0, 13, 0, 180), arc(14, 0, 15, 10, 350), [[5, 12]]],
    [
      'a small circle over the rim of a large',
      arc(0, 0, 13, -170, 170),
      arc(10, 12, 5, 10, 350),
      [
        [5, 12],
        [10.90163934, 7.08196721],
      ],
    ],
    ['circles apart', arc(0, 0, 5, -90, 90), arc(8.001, 0, 3, 90, 270), []],
    ['a circle within another', arc(0, 0, 5, -170, 170), arc(1, 0, 3.9, -170, 170), []],
    ['circles about one centre', arc(0, 0, 5, -170, 170), arc(0, 0, 4, -170, 170), []],
    ['lines side by side', straight(0, 0, 9, 3), straight(0, 1, 9, 4), []],
    ['lines along one line', straight(0, 0, 9, 3), straight(3, 1, 12, 4), []],
    ['a line short of another', straight(0, 0, 10, 0), straight(5, 3, 5, 0.001), []],
    ['a line beside the end of another', straight(0, 0, 10, 0), straight(10.001, 3, 10.001, -3), []],
  ]
  test.each(table)('%s', (name, a, b, places) => {
    const digits = name.startsWith('a small circle') ? 6 : 9
    const wanted =
      digits === 9 ? close(places) : places.map((one) => one.map((value) => expect.closeTo(value, digits)))
    expect(shared(a, b)).toEqual(wanted)
    expect(shared(b, a)).toEqual(wanted)
  })
})

describe('places where circles only touch', () => {
  /** A half circle from one end of a diameter to the other, whose centre and radius come out whole. */
  const half = (x1: number, x2: number, y: number, bulge: 1 | -1) =>
    piecesOf({
      shape: 'chain',
      closed: false,
      vertices: [
        { x: x1, y, bulge },
        { x: x2, y, bulge: 0 },
      ],
    }).list[0]!
  const told = (a: Piece, b: Piece) => {
    const into: number[] = []
    const count = crossings(a, b, into)
    return into.slice(0, 2 * count)
  }

  test('are told once', () => {
    // The upper half of a circle of 5 about (1, 2); a line over its top, one more half on top of it, one within it.
    const upper = half(6, -4, 2, 1)
    const over = pieceOf(straight(-9, 7, 9, 7))
    const onTop = half(-2, 4, 10, 1)
    const within = half(4, -2, 4, 1)
    for (const other of [over, onTop, within]) {
      expect(told(upper, other)).toEqual([1, 7])
      expect(told(other, upper)).toEqual([1, 7])
    }
    // A line that begins or ends right on the arc.
    for (const end of [straight(1, 7, 1, 12), straight(1, 12, 1, 7)])
      expect(told(upper, pieceOf(end))).toEqual([1, 7])
    // The halves that face away do not.
    expect(told(half(-4, 6, 2, 1), over)).toEqual([])
    expect(told(upper, half(4, -2, 10, 1))).toEqual([])
  })
})

const asPath = (segment: Segment): MakerJs.IPath => {
  if (segment.kind === 'line')
    return new makerjs.paths.Line([segment.from.x, segment.from.y], [segment.to.x, segment.to.y])
  const [from, to] = [segment.start, segment.start + segment.sweep].map((angle) => (angle * 180) / Math.PI)
  // Theirs run counter-clockwise, from the first angle to the second.
  const [first, last] = segment.sweep > 0 ? [from!, to!] : [to!, from!]
  return new makerjs.paths.Arc([segment.centre.x, segment.centre.y], segment.radius, first, last)
}

describe(`crossings (seed ${seed})`, () => {
  it('are the places that another library of lines and arcs finds', () => {
    const met = [0, 0, 0]
    law(
      [segments, segments],
      (a, b) => {
        const theirs = (makerjs.path.intersection(asPath(a), asPath(b))?.intersectionPoints ?? []).map(
          (place) => ({ x: place[0]!, y: place[1]! }),
        )
        const ours = shared(a, b).map(([x, y]) => ({ x: x!, y: y! }))
        for (const place of ours) {
          expect(searchedFrom(a, place).distance).toBeLessThan(1e-5)
          expect(searchedFrom(b, place).distance).toBeLessThan(1e-5)
        }
        // It rounds: what lies at an end by less than a thousandth may be counted either way.
        const clear = (place: { x: number; y: number }) =>
          [a, b].every((one) => [0, 1].every((t) => apart(placeOn(one, t), place) > 1e-3))
        if (![...ours, ...theirs].every(clear)) return
        if (ours.length === 2 && apart(ours[0]!, ours[1]!) < 1e-2) return
        expect(ours).toHaveLength(theirs.length)
        for (const place of theirs)
          expect(Math.min(...ours.map((one) => apart(one, place)))).toBeLessThan(1e-4)
        met[ours.length]!++
      },
      600,
    )
    expect(Math.min(...met)).toBeGreaterThan(10)
  })
})
