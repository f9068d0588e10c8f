import { describe, expect, test } from 'vitest'
import { check, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'

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
