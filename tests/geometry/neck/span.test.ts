/** The neck cut into intervals: sections half way along a taper by hand, stations where they are asked for. */
import { describe, expect, it, test } from 'vitest'
import { bar, plank, sectionOf } from '../../../geometry/neck/sections.ts'
import {
  type NeckPiece,
  pieceAt,
  pieceOf,
  riseAt,
  type Span,
  sectionAt,
  spanOf,
} from '../../../geometry/neck/span.ts'

const wood = { stiffness: 10_000, strength: 50 }
const steel = { stiffness: 200_000, strength: 250 }
const stick = (height: number) => [plank(30, -height, 0, wood)]

const spanned = (...asked: Parameters<typeof spanOf>): Span => {
  const span = spanOf(...asked)
  if (!('lengths' in span)) throw new Error(`no wood from ${span.x0} to ${span.x1}`)
  return span
}

describe('the section of a piece', () => {
  const piece = pieceOf(
    100,
    300,
    [plank(40, -20, 0, wood), bar(4, -16, -4, steel, wood)],
    [plank(20, -10, 0, wood), bar(2, -8, -2, steel, wood)],
  )

  test('has every part a share of the way from one end to the other', () => {
    // A quarter on: each number a quarter of the way; the area of 800 to 200 is 650, I of 26 667 to 1 667 is 20 417 (b h³ / 12).
    const { parts } = sectionAt(piece, 150)!
    expect(parts[0]).toMatchObject({ area: 650, centre: -8.75, bottom: -17.5, top: 0 })
    expect(parts[0]!.inertia).toBeCloseTo(80_000 / 3 - 25_000 / 4, 6)
    expect(parts[1]).toMatchObject({ area: 48 - 36 / 4, centre: -10 + 5 / 4, bottom: -14, top: -3.5 })
    // Its axis by hand: the bar counts 190 000 more than the wood.
    const [e, b] = [10_000 * 650, 190_000 * 39]
    expect(sectionAt(piece, 150)!.axis).toBeCloseTo(-8.75, 9)
    expect(sectionAt(piece, 150)!.stretch).toBeCloseTo(e + b, 3)
  })

  test('is that of its end at the ends and beyond them', () => {
    for (const [x, end] of [
      [100, piece.start],
      [50, piece.start],
      [300, piece.end],
      [350, piece.end],
    ] as const)
      expect(sectionAt(piece, x)).toBe(end)
    const even = pieceOf(0, 10, stick(20))
    expect(sectionAt(even, 5)).toBe(even.start)
  })

  test('is none where either end has no wood', () => {
    const thin = (start: number, end: number) => pieceOf(0, 10, stick(start), stick(end))
    for (const x of [-1, 0, 5, 10, 11]) {
      expect(sectionAt(thin(0, 20), x)).toBeNull()
      expect(sectionAt(thin(20, 0), x)).toBeNull()
      expect(sectionAt(thin(0, 0), x)).toBeNull()
    }
  })
})

describe('a span', () => {
  const pieces: readonly NeckPiece[] = [
    pieceOf(-50, 120, stick(20)),
    pieceOf(120, 200, stick(20), stick(10)),
    pieceOf(200, 400, stick(10)),
  ]

  test('runs from its root either way, three stations to an interval, with stops and ends of pieces among them', () => {
    for (const [root, far] of [
      [0, 300],
      [300, 0],
    ] as const) {
      const { lengths, x, bend, axis } = spanned(pieces, root, far, [77, 333, -20])
      expect(x).toHaveLength(3 * lengths.length)
      expect([x[0], x.at(-1)]).toEqual([root, far])
      expect(lengths.reduce((sum, one) => sum + one, 0)).toBeCloseTo(300, 9)
      const way = Math.sign(far - root)
      lengths.forEach((length, index) => {
        const [from, middle, to] = x.slice(3 * index, 3 * index + 3) as [number, number, number]
        expect((to - from) * way).toBeCloseTo(length, 9)
        expect(length).toBeGreaterThan(1e-6)
        expect(length).toBeLessThan(30.001)
        expect(middle).toBeCloseTo((from + to) / 2, 9)
        if (index > 0) expect(from).toBe(x[3 * index - 1])
        for (const place of [0, 1, 2]) {
          // 30 × h of 10 000: h is 20 to 120, 10 from 200 on. In a taper it is the second moment that runs straight.
          const at = x[3 * index + place]!
          const share = Math.min(1, Math.max(0, (at - 120) / 80))
          expect(axis[3 * index + place]).toBeCloseTo(-10 + 5 * share, 9)
          const inertia = 20_000 + (2500 - 20_000) * share
          expect(bend[3 * index + place]).toBeCloseTo(10_000 * inertia, 3)
        }
      })
      for (const stop of [77, 120, 200]) expect(x).toContain(stop)
      for (const stop of [333, -20]) expect(x).not.toContain(stop)
    }
  })

  test('takes cuts within a millionth of each other as one, and no farther ones', () => {
    const count = (stop: number) => spanned(pieces, 0, 100, [stop]).lengths.length
    // Ten of 10; a stop at one of them makes none more.
    expect(count(50)).toBe(10)
    expect(count(50 + 1e-8)).toBe(10)
    expect(count(50.0005)).toBe(11)
  })

  test('says where there is no wood: a piece cut through, or one that runs out', () => {
    const gone = [pieceOf(0, 100, stick(20)), pieceOf(100, 150, stick(0)), pieceOf(150, 300, stick(20))]
    expect(spanOf(gone, 0, 300, [])).toEqual({ x0: 100, x1: 150 })
    expect(spanOf(gone, 300, 0, [])).toEqual({ x0: 100, x1: 150 })
    // Up to it, from it and beside it there is.
    expect('lengths' in spanOf(gone, 0, 100, [])).toBe(true)
    expect('lengths' in spanOf(gone, 300, 150, [])).toBe(true)
    const runsOut = [pieceOf(0, 100, stick(20)), pieceOf(100, 150, stick(20), stick(0))]
    expect(spanOf(runsOut, 0, 140, [])).toEqual({ x0: 100, x1: 150 })
    expect(spanOf([pieceOf(0, 50, stick(0), stick(20))], 0, 50, [])).toEqual({ x0: 0, x1: 50 })
  })

  it('has its height where a station is, and that of the nearest elsewhere', () => {
    const span = { lengths: [10, 10], x: [0, 5, 10, 10, 15, 20], bend: [], axis: [] }
    const rise = [0, 1, 4, 4, 9, 16]
    for (const [x, wanted] of [
      [0, 0],
      [5, 1],
      [10, 4],
      [15, 9],
      [20, 16],
      [6, 1],
      [19, 16],
      [40, 16],
      [-7, 0],
    ] as const)
      expect(riseAt(span, rise, x)).toBe(wanted)
  })

  it('knows which piece holds a place, the likely one first', () => {
    const [a, b] = pieces as readonly [NeckPiece, NeckPiece]
    expect(pieceAt(pieces, 120)).toBe(a)
    expect(pieceAt(pieces, 120, b)).toBe(b)
    expect(pieceAt(pieces, 119, b)).toBe(a)
    expect(pieceAt(pieces, -50)).toBe(a)
    expect(pieceAt(pieces, 400)).toBe(pieces[2])
    expect(() => pieceAt(pieces, 401)).toThrow('no piece at 401')
  })
})

test('parts at both ends are as many as each other', () => {
  expect(() => pieceOf(0, 10, stick(20), [])).toThrow('1 parts at one end and 0 at the other')
  expect(sectionOf(stick(20))!.bend).toBeCloseTo((10_000 * 30 * 20 ** 3) / 12, 3)
})
