/**
 * Is the blank long and wide enough, and do the posts stand where they can be strung?
 *
 * 150 of head, 635 to the saddle, 67.2 behind it and 38 of tail; posts 45 and 77 behind the nut on the bass side, 45 on
 * the treble side, 7 from the middle, holes of 8.
 */
import { describe, expect, test } from 'vitest'
import type { Stated } from '../../support/designs.ts'
import { told } from './told.ts'

describe('what is left of the blank', () => {
  test.each([
    // 890.2 are needed; what is left lies behind the tail, what is missing is missing from it.
    [893.2, 'clear neck: 3 of 3, plan (740.2, 0) to (743.2, 0)'],
    [893.1, 'care neck: 2.9 of 3, plan (740.2, 0) to (743.1, 0)'],
    [890.2, 'care neck: 0 of 3, plan (740.2, 0) to (740.2, 0)'],
    [890.1, 'stop neck: -0.1 of 3, plan (740.1, 0) to (740.2, 0)'],
  ])('of %d', (length, line) => expect(told('blank-length', { neck: { length } })).toEqual([line]))

  test('is more where the neck ends inside the box', () => {
    // 462.2 to the box, 6 of wall and 80 of tongue: 698.2 with the head.
    expect(told('blank-length', { neck: { length: 703.2, ends: 'at a block' } })).toEqual([
      'clear neck: 5 of 3, plan (548.2, 0) to (553.2, 0)',
    ])
  })
})

describe('a head wider than the blank', () => {
  const saysOf = (width: number, widthAtNut: number, head: number) =>
    told('head-on-blank', { neck: { width, widthAtNut }, headstock: { width: head } })

  test('is told by whatever is widest', () => {
    expect(saysOf(38, 38, 38)).toEqual([])
    expect(saysOf(38, 30, 38.5)).toEqual(['note neck: -0.5 of 0, plan (-150, -19.25) to (-150, 19.25)'])
    expect(saysOf(38, 38.5, 30)).toEqual(['note neck: -0.5 of 0, plan (-150, -19.25) to (-150, 19.25)'])
    expect(saysOf(45, 44, 50)).toEqual(['note neck: -5 of 0, plan (-150, -25) to (-150, 25)'])
    expect(saysOf(50, 44, 50)).toEqual([])
  })
})

describe('the first post behind the nut', () => {
  const saysOf = (headstock: Stated, limits: Stated = {}) => told('first-post', { headstock, limits })

  test.each([
    [38, 'clear headstock: 38 of 38, plan (0, -7) to (-38, -7)'],
    [37.99, 'care headstock: 37.99 of 38, plan (0, -7) to (-37.99, -7)'],
    [30, 'care headstock: 30 of 38, plan (0, -7) to (-30, -7)'],
    [29.99, 'stop headstock: 29.99 of 38, plan (0, -7) to (-29.99, -7)'],
  ])('at %d', (firstPost, line) => expect(saysOf({ firstPost })).toEqual([line]))

  test('is the nearest of both sides', () => {
    // A treble row 8 nearer, and one 8 farther back.
    expect(saysOf({ stagger: -8 })).toEqual(['care headstock: 37 of 38, plan (0, 7) to (-37, 7)'])
    expect(saysOf({ stagger: 8 })).toEqual(['clear headstock: 45 of 38, plan (0, -7) to (-45, -7)'])
    expect(saysOf({ bassTuners: 0, trebleTuners: 3 })).toEqual([
      'clear headstock: 45 of 38, plan (0, 7) to (-45, 7)',
    ])
  })

  test('a least stated above what is wanted is wanted too', () => {
    expect(saysOf({}, { firstPostLeast: 46 })).toEqual([
      'stop headstock: 45 of 46, plan (0, -7) to (-45, -7)',
    ])
    expect(saysOf({}, { firstPost: 40, firstPostLeast: 45 })[0]).toMatch(/^clear headstock: 45 of 45,/)
  })

  test('a head without posts has none', () => {
    for (const rule of ['first-post', 'posts-on-head'])
      expect(told(rule, { headstock: { bassTuners: 0, trebleTuners: 0 } })).toEqual([])
  })
})

describe('posts on the head', () => {
  const saysOf = (headstock: Stated, limits: Stated = {}) => told('posts-on-head', { headstock, limits })

  test('the last one ends before the head does', () => {
    // 77 + 4 of hole
    expect(saysOf({ length: 81 })[0]).toBe('clear headstock: 0 of 0, plan (-77, 0) to (-81, 0)')
    expect(saysOf({ length: 80.9 })[0]).toBe('stop headstock: -0.1 of 0, plan (-77, 0) to (-80.9, 0)')
    expect(saysOf({ length: 100, postHole: 10 })[0]).toBe(
      'clear headstock: 18 of 0, plan (-77, 0) to (-100, 0)',
    )
    // Of a treble row longer than the bass one.
    expect(saysOf({ bassTuners: 1, trebleTuners: 2, stagger: 3 })[0]).toBe(
      'clear headstock: 66 of 0, plan (-80, 0) to (-150, 0)',
    )
  })

  test('stand so far apart', () => {
    const apart = (headstock: Stated, limits: Stated = {}) => saysOf(headstock, limits)[1]
    expect(apart({ postSpacing: 23 })).toBe('clear headstock + posts: 23 of 23, plan (-68, 0) to (-45, 0)')
    expect(apart({ postSpacing: 22.9 })).toBe(
      'care headstock + posts: 22.9 of 23, plan (-67.9, 0) to (-45, 0)',
    )
    expect(apart({ postSpacing: 8 })).toBe('care headstock + posts: 8 of 23, plan (-53, 0) to (-45, 0)')
    expect(apart({ postSpacing: 7.9 })).toBe('stop headstock + posts: 7.9 of 23, plan (-52.9, 0) to (-45, 0)')
    // Never less than their holes are wide, whatever is wanted.
    expect(apart({ postSpacing: 20, postHole: 11 }, { postsApart: 5 })).toMatch(
      /^clear headstock \+ posts: 20 of 11,/,
    )
    expect(apart({ postSpacing: 10.5, postHole: 11 }, { postsApart: 5 })).toMatch(
      /^stop headstock \+ posts: 10.5 of 11,/,
    )
  })

  test('one on each side have no neighbour', () => {
    expect(saysOf({ bassTuners: 1, trebleTuners: 1 })).toHaveLength(1)
    expect(saysOf({ bassTuners: 1, trebleTuners: 2 })).toHaveLength(2)
    expect(saysOf({ bassTuners: 2, trebleTuners: 0 })).toHaveLength(2)
  })
})

describe('a tuner for every string', () => {
  test.each([
    [2, 0, 'stop headstock: 2 of 3'],
    [2, 1, 'clear headstock: 3 of 3'],
    [2, 2, 'clear headstock: 4 of 3'],
    [0, 0, 'stop headstock: 0 of 3'],
  ])('of %d and %d', (bassTuners, trebleTuners, said) => {
    expect(told('posts-for-strings', { headstock: { bassTuners, trebleTuners } })).toEqual([
      `${said}, plan (-150, 0) to (0, 0)`,
    ])
  })
})
