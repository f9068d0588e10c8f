import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { solve } from '../../../geometry/index.ts'
import { headCorners, headEdgesAt, type Post, postsFor, postsOf } from '../../../geometry/neck/headstock.ts'
import { designOf, type Stated } from '../../support/designs.ts'

const head = (fields: Stated) => postsOf(designOf({ headstock: fields }).headstock)
const places = (posts: readonly (Post | null)[]) => posts.map((post) => post && [post.x, post.y])

describe('posts', () => {
  test('stand in two rows from the edge of the head, counted from the nut', () => {
    const posts = head({
      width: 50,
      postEdge: 10,
      firstPost: 40,
      postSpacing: 25,
      bassTuners: 2,
      trebleTuners: 2,
      stagger: 12,
    })
    expect(posts).toEqual([
      { x: -40, y: -15, side: 'bass' },
      { x: -65, y: -15, side: 'bass' },
      { x: -52, y: 15, side: 'treble' },
      { x: -77, y: 15, side: 'treble' },
    ])
  })

  test('are none where none are stated', () => {
    expect(head({ bassTuners: 0, trebleTuners: 0 })).toEqual([])
  })
})

describe('strings to posts', () => {
  const rows = (bassTuners: number, trebleTuners: number) =>
    head({ width: 50, postEdge: 10, firstPost: 40, postSpacing: 30, bassTuners, trebleTuners })

  test('three strings on two and one: the outer ones take the nearest', () => {
    expect(places(postsFor(rows(2, 1), 3))).toEqual([
      [-40, -15],
      [-70, -15],
      [-40, 15],
    ])
  })

  test('six strings on three and three', () => {
    expect(places(postsFor(rows(3, 3), 6))).toEqual([
      [-40, -15],
      [-70, -15],
      [-100, -15],
      [-100, 15],
      [-70, 15],
      [-40, 15],
    ])
  })

  test('all on one side', () => {
    expect(places(postsFor(rows(3, 0), 3)).map((one) => one?.[0])).toEqual([-40, -70, -100])
    expect(places(postsFor(rows(0, 3), 3)).map((one) => one?.[0])).toEqual([-100, -70, -40])
  })

  test('what one side has too few of goes over to the other', () => {
    expect(postsFor(rows(1, 3), 4).map((post) => post?.side)).toEqual(['bass', 'treble', 'treble', 'treble'])
    expect(postsFor(rows(3, 1), 4).map((post) => post?.side)).toEqual(['bass', 'bass', 'bass', 'treble'])
  })

  test('too few posts leave middle strings without', () => {
    expect(postsFor(rows(1, 1), 4).map((post) => post?.side ?? null)).toEqual(['bass', null, null, 'treble'])
  })

  test('no post winds two strings, and no string on its way to its post crosses another', () => {
    for (let bass = 0; bass <= 4; bass++)
      for (let treble = 0; treble <= 4; treble++)
        for (let count = 1; count <= 8; count++) {
          const posts = rows(bass, treble)
          const wound = postsFor(posts, count)
          const used = wound.filter((post) => post !== null)
          expect(new Set(used).size).toBe(used.length)
          expect(used.length).toBe(Math.min(count, posts.length))
          // Bass strings left of treble ones; of one side, the outer string winds nearer the nut.
          const sides = used.map((post) => post.side)
          expect([...sides].sort()).toEqual(sides)
          const along = (side: Post['side']) =>
            used.filter((post) => post.side === side).map((post) => post.x)
          expect([...along('bass')].sort((a, b) => b - a)).toEqual(along('bass'))
          expect([...along('treble')].sort((a, b) => a - b)).toEqual(along('treble'))
        }
  })
})

test('the angle at the nut is that between the string and the way to its post', () => {
  // One string down the middle to a post 14 mm aside, 40 mm behind the nut.
  const layout = solve(
    designOf({
      strings: { count: 1 },
      headstock: { width: 48, postEdge: 10, firstPost: 40, bassTuners: 1, trebleTuners: 0 },
    }),
  )
  expect(layout.strings[0]?.sideAngleAtNut).toBeCloseTo(Math.atan(14 / 40), 12)
})

test('posts of a tilted head stand nearer the nut on the plan by the cosine of its tilt', () => {
  const tilted = { form: 'scarfed', tiltDegrees: 30, firstPost: 40, bassTuners: 1, trebleTuners: 0 }
  expect(head(tilted)[0]?.x).toBeCloseTo(-40 * (Math.sqrt(3) / 2), 9)
})

describe('the two edges of a head whose rows slant', () => {
  const fields = (more: Stated) =>
    designOf({
      headstock: {
        ...{ width: 50, length: 150, postEdge: 10, firstPost: 40, postSpacing: 25, postStep: 20 },
        ...{ bassTuners: 3, trebleTuners: 3, stagger: 0 },
        ...more,
      },
    }).headstock

  test('run together until 4 mm are left, half to each side, and stay so', () => {
    // Each comes in by 0.8 a millimetre from 40 on: 50 - 1.6 × 28.75 = 4.
    const both = fields({})
    expect(headEdgesAt(both, 60)).toEqual({ bass: expect.closeTo(-9, 9), treble: expect.closeTo(9, 9) })
    for (const along of [68.75, 69, 90, 150])
      expect(headEdgesAt(both, along)).toEqual({ bass: expect.closeTo(-2, 9), treble: expect.closeTo(2, 9) })
    expect(headCorners(both).map((along) => expect.closeTo(along, 9))).toEqual([40, 68.75, 90])
  })

  test('of staggered rows meet where the farther row is half way on', () => {
    // Bass at 90: -25 + 0.8 × 50 = 15; treble, whose row begins 10 later: 25 - 0.8 × 40 = -7. Their middle is 4.
    const both = fields({ stagger: 10 })
    expect(headEdgesAt(both, 90)).toEqual({ bass: expect.closeTo(2, 9), treble: expect.closeTo(6, 9) })
    // Before that: -25 + 0.8 × 20 and 25 - 0.8 × 10 at 60.
    expect(headEdgesAt(both, 60)).toEqual({ bass: expect.closeTo(-9, 9), treble: expect.closeTo(17, 9) })
    // 50 - 0.8 (a - 40) - 0.8 (a - 50) = 4 at 73.75; the rows end at 90 and 100.
    expect(headCorners(both).map((along) => expect.closeTo(along, 9))).toEqual([40, 50, 73.75, 90, 100])
  })

  test('of one row end where it ends, and a single post turns no edge', () => {
    expect(headCorners(fields({ postStep: 3, trebleTuners: 1 }))).toEqual([40, 90])
    expect(headCorners(fields({ postStep: 3, bassTuners: 1, trebleTuners: 0 }))).toEqual([])
    // The last post right at the end of the head: nothing turns there any more.
    expect(headCorners(fields({ postStep: 3, trebleTuners: 0, length: 90 }))).toEqual([40])
  })

  test('run straight from corner to corner, whatever the head', () => {
    const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    const heads = fc.record({
      ...{ width: mm(20, 80), length: mm(80, 240), postSpacing: mm(8, 45), postStep: mm(-6, 12) },
      ...{ stagger: mm(-20, 20), firstPost: mm(20, 60) },
      ...{ bassTuners: fc.nat(6), trebleTuners: fc.nat(6) },
    })
    let narrowed = 0
    fc.assert(
      fc.property(heads, (drawn) => {
        const one = fields(drawn)
        fc.pre(one.postStep !== 0)
        const corners = headCorners(one)
        expect([...corners].sort((a, b) => a - b)).toEqual(corners)
        const stops = [0, ...corners, one.length]
        for (const [index, to] of stops.slice(1).entries()) {
          const from = stops[index]!
          const [start, end] = [headEdgesAt(one, from), headEdgesAt(one, to)]
          for (const share of [0.1, 0.35, 0.5, 0.8]) {
            const { bass, treble } = headEdgesAt(one, from + share * (to - from))
            expect(bass).toBeCloseTo(start.bass + share * (end.bass - start.bass), 6)
            expect(treble).toBeCloseTo(start.treble + share * (end.treble - start.treble), 6)
            expect(treble - bass).toBeGreaterThan(3.999)
          }
          if (end.treble - end.bass < 4.001) narrowed++
        }
      }),
      { seed: 3, numRuns: 200 },
    )
    expect(narrowed).toBeGreaterThan(20)
  })
})
