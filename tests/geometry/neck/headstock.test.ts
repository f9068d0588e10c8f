import { describe, expect, test } from 'vitest'
import { solve } from '../../../geometry/index.ts'
import { type Post, postsFor, postsOf } from '../../../geometry/neck/headstock.ts'
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
