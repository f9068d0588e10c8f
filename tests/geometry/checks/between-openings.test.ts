import { describe, expect, test } from 'vitest'
import { check, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { to4, told } from './told.ts'

/** Pairs of openings that are told, in no order. */
const pairsOf = (things: readonly Stated[], stated: Stated = {}) =>
  check(solve(designOf({ ...stated, things })))
    .filter((one) => one.rule === 'between-openings')
    .map((one) => one.about.join(' and '))
    .sort()

const hole = (id: string, along: number, fields: Stated = {}): Stated => ({
  kind: 'sound-hole',
  id,
  along,
  across: 60,
  diameter: 10,
  ...fields,
})

function orders<T>(list: readonly T[]): T[][] {
  if (list.length < 2) return [[...list]]
  return list.flatMap((first, index) =>
    orders([...list.slice(0, index), ...list.slice(index + 1)]).map((rest) => [first, ...rest]),
  )
}

describe('wood between openings', () => {
  test('in a row of equal holes is told for the same pairs, whatever order the file has them in', () => {
    const row = [hole('a', 60), hole('b', 80), hole('c', 100), hole('d', 120)]
    const pairs = orders(row).map((one) => pairsOf(one))
    expect(pairs).toHaveLength(24)
    for (const found of pairs) expect(found).toEqual(pairs[0])
    // Each hole's neighbour towards the head, and the first hole's only one.
    expect(pairs[0]).toEqual(['a and b', 'b and c', 'c and d'])
  })

  test('is told once for a pair, from whichever side it is met', () => {
    // A hole of 60 wants 30 and looks 60 mm round; a small one looks 16.
    const pair = [hole('big', 60, { diameter: 60 }), hole('small', 120)]
    expect(pairsOf(pair)).toEqual(['big and small'])
    expect(pairsOf([...pair].reverse())).toEqual(['big and small'])
  })

  test('is not told for holes that are far from each other, or on different faces', () => {
    expect(pairsOf([hole('a', 40), hole('b', 140)])).toEqual([])
    expect(pairsOf([hole('a', 60), hole('b', 60, { face: 'base' })])).toEqual([])
  })

  test('in the row of string holes is left to the rule of the row', () => {
    expect(pairsOf([], { tailpiece: { at: 'the lid', holes: 5 } })).toEqual([])
  })
})

describe('how much wood is wanted', () => {
  const saysOf = (things: readonly Stated[], more: Stated = {}) =>
    told('between-openings', { ...more, things })

  test.each([
    // Holes of 40 and 10, their rims 20 apart: half of 40 is wanted.
    [[hole('a', 60, { diameter: 40 }), hole('b', 105)], 'clear a + b: 20 of 20, lid (80, 60) to (100, 60)'],
    [
      [hole('a', 60), hole('b', 104.9, { diameter: 40 })],
      'care a + b: 19.9 of 20, lid (65, 60) to (84.9, 60)',
    ],
    // Of small ones eight.
    [[hole('a', 60), hole('b', 78)], 'clear a + b: 8 of 8, lid (65, 60) to (73, 60)'],
    [[hole('a', 60), hole('b', 77.9)], 'care a + b: 7.9 of 8, lid (65, 60) to (72.9, 60)'],
    [[hole('a', 60), hole('b', 70)], 'care a + b: 0 of 8, lid (65, 60) to (65, 60)'],
    // A screw wants six whatever the size of the hole.
    [
      [hole('a', 60, { diameter: 40 }), { kind: 'screw', id: 'b', along: 89, across: 60, head: 6 }],
      'clear a + b: 6 of 6, lid (80, 60) to (86, 60)',
    ],
    [
      [{ kind: 'screw', id: 'a', along: 31.5, across: 60, head: 6 }, hole('b', 60, { diameter: 40 })],
      'care a + b: 5.5 of 6, lid (34.5, 60) to (40, 60)',
    ],
  ] as const)('%#: %j', (things, line) => expect(saysOf(things)).toEqual([line]))

  test('of a long opening half its lesser size, whichever way it lies', () => {
    const long = (sizeAlong: number, sizeAcross: number) =>
      hole('a', 60, { shape: 'oval', sizeAlong, sizeAcross })
    // The oval ends at 85, or at 70; the small hole begins 15 on.
    expect(saysOf([long(50, 24), hole('b', 105)])).toEqual([
      'clear a + b: 15 of 12, lid (85, 60) to (100, 60)',
    ])
    expect(saysOf([long(20, 50), hole('b', 90)])).toEqual(['clear a + b: 15 of 10, lid (70, 60) to (85, 60)'])
  })

  test('round a rosette what one of its holes wants, and not its whole field', () => {
    const rosette = hole('a', 60, { kind: 'rosette', diameter: 40, hole: 3, pitch: 6 })
    const [line] = saysOf([rosette, hole('b', 90)])
    expect(line).toMatch(/^(care|clear) a \+ b: [\d.]+ of 8, lid/)
  })

  test('of a neck slot half its lesser size', () => {
    const port = hole('a', 40, { face: 'neck-end-wall', across: 10 })
    // 38.4 wide and 19 - 4 deep: half of 15 is less than eight. Of a neck of 28 it is 24 deep: 12.
    expect(saysOf([port])).toEqual(['clear a + neck slot: 15.8 of 8, neck-end-wall (35, -10) to (19.2, -10)'])
    expect(saysOf([port], { neck: { thickness: 28 } })).toEqual([
      'clear a + neck slot: 15.8 of 12, neck-end-wall (35, -10) to (19.2, -10)',
    ])
    // Of one 48 deep, in a box that lets it in, half its width counts.
    expect(saysOf([port], { neck: { thickness: 52 }, box: { depth: 80 } })).toEqual([
      'care a + neck slot: 15.8 of 19.2, neck-end-wall (35, -10) to (19.2, -10)',
    ])
  })

  test('below a neck slot as beside it, on either side of the middle', () => {
    const port = (along: number) => hole('a', along, { face: 'tail-end-wall', across: 30 })
    // Its top at -25, ten below the slot's floor.
    expect(saysOf([port(10)])[0]).toMatch(/^clear a \+ neck slot: 10 of 8,/)
    // 11 beside and 15 below a corner at (±19.2, -15), less its radius.
    const far = Math.hypot(11, 15) - 5
    for (const side of [1, -1])
      expect(saysOf([port(side * 30.2)])[0]).toMatch(`clear a + neck slot: ${to4(far)} of 8, tail-end-wall `)
  })

  test('where a neck ends inside there is no slot in the tail-end wall', () => {
    const port = hole('a', 10, { face: 'tail-end-wall', across: 30 })
    expect(saysOf([port], { neck: { ends: 'at a block' } })).toEqual([])
    expect(saysOf([hole('a', 40, { face: 'neck-end-wall', across: 10 })], { neck: { rise: 20 } })).toEqual([])
  })

  test('from string holes six, and they are met on the face where they are drilled', () => {
    const neck = { ends: 'at a block' }
    const wall = { neck, tailpiece: { at: 'the tail-end wall', fromEdge: 12 } }
    const lid = { neck, tailpiece: { at: 'the lid', fromEdge: 14 } }
    // Beside the outer hole of 2.4 at 13: 25 - 13 - 1.2 - 5.
    const port = (along: number) => hole('a', along, { face: 'tail-end-wall', across: 12 })
    expect(saysOf([port(25)], wall)).toEqual([
      'care a + string hole 3: 5.8 of 6, tail-end-wall (20, -12) to (14.2, -12)',
    ])
    expect(saysOf([port(-25)], wall)).toEqual([
      'care a + string hole 1: 5.8 of 6, tail-end-wall (-20, -12) to (-14.2, -12)',
    ])
    expect(saysOf([port(25)], lid)).toEqual([])
    // In the lid at 240 - 14, from a hole as far along.
    const mouth = (across: number) => hole('a', 226, { across })
    expect(saysOf([mouth(25.2)], lid)).toEqual([
      'clear a + string hole 3: 6 of 6, lid (226, 20.2) to (226, 14.2)',
    ])
    expect(saysOf([mouth(-25)], lid)).toEqual([
      'care a + string hole 1: 5.8 of 6, lid (226, -20) to (226, -14.2)',
    ])
    expect(saysOf([mouth(25)], wall)).toEqual([])
  })
})

describe('how far round is looked', () => {
  // A hole of 60 wants 30 and looks 60 round; a small one 16. They are met at 40 on every side, in either order.
  test.each([
    [75, 0],
    [-75, 0],
    [0, 75],
    [0, -75],
  ])('a small hole %d along and %d across a large one', (along, across) => {
    const large = hole('large', 120, { diameter: 60, across: 0, face: 'base' })
    const small = hole('small', 120 + along, { across, face: 'base' })
    const line = told('between-openings', { things: [large, small] })
    expect(line).toHaveLength(1)
    expect(line[0]).toMatch(/^clear large \+ small: 40 of 30, base/)
    const turned = told('between-openings', { things: [small, large] })
    expect(turned[0]).toMatch(/^clear large \+ small: 40 of 30, base/)
  })

  test('a hole is told by the neighbour that crowds it most, not by the nearest', () => {
    // 7 to the screw that wants 6, 12 to the hole of 30 that wants 15.
    const things = [
      hole('mid', 100, { across: 0, face: 'base' }),
      { kind: 'screw', id: 'peg', along: 85, across: 0, head: 6, face: 'base' },
      hole('wide', 132, { diameter: 30, across: 0, face: 'base' }),
    ]
    expect(told('between-openings', { things })).toEqual([
      'care mid + wide: 12 of 15, base (105, 0) to (117, 0)',
      'clear mid + peg: 7 of 6, base (95, 0) to (88, 0)',
    ])
  })

  test('of equally tight neighbours the one nearest the head is told, and of these the bass side', () => {
    const column = ['a', 'b', 'c', 'd'].map((id, index) =>
      hole(id, 120, { across: 20 * index - 30, face: 'base' }),
    )
    for (const one of orders(column)) expect(pairsOf(one)).toEqual(['a and b', 'b and c', 'c and d'])
    // A middle hole 10 from its neighbours, each of which has another only 8 away: it alone chooses among them.
    const middle = hole('mid', 120, { across: 0, face: 'base' })
    const arm = (id: string, x: number, y: number) => [
      hole(id, 120 + 20 * x, { across: 20 * y, face: 'base' }),
      hole(`${id}-behind`, 120 + 38 * x, { across: 38 * y, face: 'base' }),
    ]
    const chosen = (...arms: Stated[][]) => {
      const list = [middle, ...arms.flat()]
      const turned = list.map((_, index) => [...list.slice(index), ...list.slice(0, index)])
      return [...turned, ...turned.map((one) => [...one].reverse())].map((one) =>
        pairsOf(one).filter((pair) => pair.includes('mid')),
      )
    }
    const [head, tail] = [arm('head', -1, 0), arm('tail', 1, 0)]
    const [bass, treble] = [arm('bass', 0, -1), arm('treble', 0, 1)]
    for (const one of chosen(bass, treble)) expect(one).toEqual(['bass and mid'])
    for (const one of chosen(head, tail)) expect(one).toEqual(['head and mid'])
    for (const one of chosen(bass, tail)) expect(one).toEqual(['bass and mid'])
    for (const one of chosen(head, treble)) expect(one).toEqual(['head and mid'])
    // Half a millimetre nearer counts for more than the side it is on.
    const nearer = [hole('treble', 120, { across: 19.5, face: 'base' }), ...treble.slice(1)]
    for (const one of chosen(bass, nearer)) expect(one).toEqual(['mid and treble'])
  })
})
