/** Several things at once: each is one entry of history, and what follows goes on following. */
import { beforeEach, describe, expect, test } from 'vitest'
import {
  alignThings,
  duplicateAll,
  groupThings,
  makeRow,
  partThings,
  type RowWanted,
  reorder,
  spaceEvenly,
  toggleLocked,
  ungroupThings,
} from '../../../app/state/arrange.ts'
import {
  adopt,
  historyNow,
  removeThings,
  selectAll,
  selectedThings,
  setField,
  travel,
  undo,
  useBench,
  withGroups,
} from '../../../app/state/index.ts'
import { checkDesign, companionsOf, type Design, solve } from '../../../geometry/index.ts'

const hole = (id: string, along: unknown, across: unknown, more: object = {}) => ({
  kind: 'sound-hole',
  id,
  along,
  across,
  diameter: 20,
  ...more,
})

let start: Design

function lay(things: readonly object[], more: object = {}): void {
  const reading = checkDesign({
    format: 'lidwright',
    version: 1,
    box: { length: 300, width: 200 },
    things,
    ...more,
  })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  adopt(reading.design)
  start = useBench.getState().design
}

const now = () => useBench.getState().design
const at = (id: string) => {
  const found = solve(now()).placed.find((one) => one.thing.id === id)
  if (!found) throw new Error(`there is no ${id}`)
  return found.at
}

/** One entry, which undo takes back whole. */
function isOneEntry(): void {
  expect(historyNow().done).toHaveLength(1)
  expect(undo()).toBe(true)
  expect(now()).toEqual(start)
}

beforeEach(() => lay([hole('a', 40, 30), hole('b', 90, 35), hole('c', 200, 60)]))

test('centres and edges are lined up with the last one chosen', () => {
  selectAll(['a', 'b', 'c'])
  alignThings('centres along')
  expect(['a', 'b', 'c'].map((id) => at(id).y)).toEqual([60, 60, 60])
  isOneEntry()
  lay([hole('a', 40, 30), hole('b', 90, 35, { diameter: 40 })])
  selectAll(['a', 'b'])
  alignThings('minY')
  // The lead's bass edge is 35 - 20; a hole of 20 touches it with its centre 10 higher.
  expect(at('a').y).toBe(25)
})

test('gaps are made equal between the outermost two, whatever the sizes', () => {
  lay([hole('a', 40, 30), hole('b', 90, 35, { diameter: 40 }), hole('c', 200, 60)])
  selectAll(['a', 'b', 'c'])
  spaceEvenly('x')
  // From 50 to 190 there are 140, less the 40 of the middle one: two gaps of 50.
  expect([at('a').x, at('b').x, at('c').x]).toEqual([40, 120, 200])
  isOneEntry()
})

test('too few things are refused in a sentence, without an entry', () => {
  selectAll(['a'])
  for (const outcome of [alignThings('minX'), spaceEvenly('x'), groupThings()])
    expect(outcome).toEqual({ ok: false, sentence: expect.stringMatching(/choose|Choose/) })
  expect(historyNow().done).toEqual([])
})

describe('a row or ring', () => {
  const wanted: RowWanted = {
    shape: 'ring',
    count: 4,
    distance: 25,
    first: 'on the ring',
    turning: false,
  }

  test('of four on a ring: a square about a middle one radius towards the tail', () => {
    makeRow('a', wanted)
    const spots = now().things.map((one) => at(one.id))
    const [, , , ...made] = spots
    const expected = [
      { x: 65, y: 5 },
      { x: 90, y: 30 },
      { x: 65, y: 55 },
    ]
    expected.forEach((spot, index) => {
      expect(made[index]?.x).toBeCloseTo(spot.x, 5)
      expect(made[index]?.y).toBeCloseTo(spot.y, 5)
    })
    isOneEntry()
  })

  test('follows its first one, and keeps its size', () => {
    makeRow('a', { ...wanted, shape: 'row across', count: 3, distance: 12 })
    expect(companionsOf(now(), 'a')).toHaveLength(2)
    const last = now().things.at(-1)?.id ?? ''
    expect(at(last)).toEqual({ x: 40, y: 54 })
    setField(['things', 0, 'along'], 45, 'Along')
    setField(['things', 0, 'diameter'], 8, 'Diameter')
    expect(at(last)).toEqual({ x: 45, y: 54 })
    expect(now().things.at(-1)).toMatchObject({ diameter: 8 })
  })

  test.each([
    [{ count: 1 }, 'no count'],
    [{ count: 2.5 }, 'no count'],
    [{ distance: 0 }, 'larger than 0'],
  ])('%o is refused', (part, words) => {
    const outcome = makeRow('a', { ...wanted, ...part })
    expect(outcome).toEqual({ ok: false, sentence: expect.stringContaining(words) })
    expect(now()).toEqual(start)
  })
})

describe('a mirrored pair', () => {
  beforeEach(() =>
    lay([
      hole('a', 40, 30, { shape: 'slot', turnDegrees: 20 }),
      hole('b', { mirror: 'a' }, { mirror: 'a' }, { shape: 'slot', turnDegrees: -20 }),
    ]),
  )

  test('turns each to its own side, from either of them', () => {
    setField(['things', 1, 'turnDegrees'], -35, 'Turned')
    expect(now().things.map((one) => one.turnDegrees)).toEqual([35, -35])
  })

  test('what differs already goes its own way, and parting leaves everything where it is', () => {
    setField(['things', 1, 'name'], 'Bass', 'Name')
    expect(now().things.map((one) => one.name)).toEqual(['', 'Bass'])
    const before = at('b')
    partThings(['b'])
    expect(at('b')).toEqual(before)
    setField(['things', 0, 'sizeAlong'], 33, 'Size')
    expect(now().things[1]).not.toMatchObject({ sizeAlong: 33 })
  })
})

test('copies of a pair are a pair of their own', () => {
  lay([hole('a', 40, 30), hole('b', { mirror: 'a' }, { mirror: 'a' })])
  selectAll(['a', 'b'])
  duplicateAll(selectedThings())
  const [, , first, second] = now().things
  expect(second?.along).toEqual({ mirror: first?.id })
  expect(selectedThings()).toEqual([first?.id, second?.id])
  isOneEntry()
})

test('lock, group and order are one entry each; a group is chosen as one', () => {
  toggleLocked(['a', 'b'])
  expect(now().things.map((one) => one.locked)).toEqual([true, true, false])
  isOneEntry()
  groupThings(['a', 'c'])
  expect(new Set(withGroups(now(), ['c']))).toEqual(new Set(['a', 'c']))
  ungroupThings(['c'])
  expect(now()).toEqual(start)
  undo()
  undo()
  reorder('a', 1)
  expect(now().things.map((one) => one.id)).toEqual(['b', 'a', 'c'])
  expect(reorder('c', 1)).toMatchObject({ ok: false })
})

test('several are removed as one entry; measures taken from them go too, places that followed stay put', () => {
  lay([hole('a', 40, 30), hole('b', 90, 35), hole('c', { from: 'a', by: 50 }, { from: 'b', by: 5 })], {
    measures: [
      { face: 'lid', from: { of: 'a' }, to: { of: 'saddle' } },
      { face: 'lid', from: { of: 'c' }, to: { of: 'saddle' } },
    ],
  })
  const before = at('c')
  removeThings(['a', 'b'])
  expect(now().things.map((one) => one.id)).toEqual(['c'])
  expect(at('c')).toEqual(before)
  expect(now().measures.map((one) => one.from.of)).toEqual(['c'])
  isOneEntry()
})

test('travel goes to any point of history at once, and tells of it once', () => {
  for (const along of [41, 42, 43]) setField(['things', 0, 'along'], along, `To ${along}`)
  expect(historyNow()).toEqual({ done: ['To 43', 'To 42', 'To 41'], undone: [] })
  expect(travel(-3)).toBe(true)
  expect(now()).toEqual(start)
  expect(historyNow()).toEqual({ done: [], undone: ['To 43', 'To 42', 'To 41'] })
  travel(2)
  expect(at('a').x).toBe(42)
  expect(travel(9)).toBe(true)
  expect(at('a').x).toBe(43)
  expect(travel(1)).toBe(false)
})
