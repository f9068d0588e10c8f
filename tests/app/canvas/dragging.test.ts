/** What a drag shows and what takes hold of it, against places worked out by hand. */
import { describe, expect, test } from 'vitest'
import { distancesOf, tellDistances } from '../../../app/canvas/distances.ts'
import { facing, fromScreen, toScreen } from '../../../app/canvas/frame.ts'
import { gripOn } from '../../../app/canvas/hold/hold.ts'
import {
  apply,
  change,
  checkDesign,
  FACES,
  type Layout,
  moveFields,
  onRule,
  type Placed,
  placeFields,
  solve,
} from '../../../geometry/index.ts'

/** A lid of 200 by 120 mm on the walls, with what is put on it. */
function lid(things: readonly object[]): Layout {
  const reading = checkDesign({
    format: 'lidwright',
    version: 1,
    hand: 'right',
    box: { length: 200, width: 120, lid: { fit: 'on the walls' } },
    things,
  })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  return solve(reading.design)
}

const one = (layout: Layout, id: string): Placed => {
  const found = layout.placed.find((placed) => placed.thing.id === id)
  if (!found) throw new Error(`there is no ${id}`)
  return found
}

const round = (id: string, along: unknown, across: unknown) => ({
  kind: 'sound-hole',
  id,
  along,
  across,
  diameter: 30,
})

describe('distances of a hole 30 across, 50 from the neck end and 40 from the centreline', () => {
  const layout = lid([round('a', 50, 40), round('b', 90, 40)])
  const shown = new Map(distancesOf(layout, one(layout, 'a')).map(({ of, mm }) => [of, mm]))

  test.each([
    ['edge along', 50 - 15],
    ['edge across', 60 - 40 - 15],
    ['centreline', 40],
    ['neighbour', 90 - 50 - 30],
  ] as const)('%s: %d', (of, mm) => {
    expect(shown.get(of)).toBeCloseTo(mm, 9)
  })

  test('the same in words', () => {
    expect(tellDistances(layout, one(layout, 'a'))).toBe(
      '35.0 mm from the neck-end edge, 5.0 mm from the treble edge, 40.0 mm from the centreline, 10.0 mm from Sound hole b',
    )
  })
})

describe('lines that take hold', () => {
  const layout = lid([round('a', 50, 40), round('b', 150, -30)])
  const near = (x: number, y: number) => gripOn(layout, one(layout, 'a'), new Set()).hold({ x, y }, 2)

  test('the middle of the lid and the centreline, within reach', () => {
    const { at, lines } = near(101.5, -1)
    expect(at).toEqual({ x: 100, y: 0 })
    expect(lines.map(({ name }) => name)).toEqual(['middle of the face', 'centreline'])
  })

  test('the mirror place of another hole', () => {
    const { at, lines } = near(149, 31)
    expect(at).toEqual({ x: 150, y: 30 })
    expect(lines.map(({ name }) => name)).toContain('mirror place of Sound hole b')
  })

  test('nothing out of reach', () => {
    const { minX, maxX } = layout.panels.lid.bounds
    expect([minX, maxX]).toEqual([0, 200])
    expect(near(103.5, 3.5).lines.map(({ name }) => name)).not.toContain('middle of the face')
    expect(gripOn(layout, one(layout, 'a'), new Set()).hold({ x: 101.5, y: -1 }, 0).at).toEqual({
      x: 101.5,
      y: -1,
    })
  })
})

describe('what the design says after a move', () => {
  const moved = (things: readonly object[], id: string, x: number, y: number) => {
    const layout = lid(things)
    return change(layout.design, ...placeFields(layout, one(layout, id), { x, y })).edits.map(
      ({ path, after }) => [path.join('.'), after],
    )
  }

  test('a share stays a share: along of the length, across of the half width', () => {
    expect(moved([round('a', { share: 0.25 }, { share: 0.5 })], 'a', 80, 45)).toEqual([
      ['things.0.along', { share: 0.4 }],
      ['things.0.across', { share: 0.75 }],
    ])
  })

  test('what mirrors a partner moves the partner, to the other side', () => {
    const pair = [round('a', 50, 40), round('b', { mirror: 'a' }, { mirror: 'a' })]
    expect(moved(pair, 'b', 60, -35)).toEqual([
      ['things.0.along', 60],
      ['things.0.across', 35],
    ])
  })

  test('midway becomes a measure only on the axis that was moved', () => {
    const held = [round('a', 50, { midway: ['neck treble side', 'treble edge'] })]
    const { y } = one(lid(held), 'a').at
    expect(moved(held, 'a', 60, y)).toEqual([['things.0.along', 60]])
    expect(moved(held, 'a', 50, 30)).toEqual([['things.0.across', 30]])
  })

  test('a free place is one that the rule can show', () => {
    expect(onRule(12.34, { display: 'mm', fraction: 32 })).toBeCloseTo(12.3, 9)
    expect(onRule(12.34, { display: 'inches', fraction: 16 })).toBeCloseTo((8 / 16) * 25.4, 9)
  })
})

test('every face of either hand is found again from the screen', () => {
  for (const face of FACES)
    for (const up of [1, -1] as const) {
      const frame = { ox: 40, oy: 70, scale: 2, ...facing(face, up) }
      const back = fromScreen(frame, toScreen(frame, { x: 12.5, y: -7 }))
      expect(back.x).toBeCloseTo(12.5, 9)
      expect(back.y).toBeCloseTo(-7, 9)
    }
})

describe('more lines that take hold', () => {
  const among = (things: readonly object[], x: number, y: number, reach = 2) => {
    const layout = lid([round('a', 20, -40), ...things])
    return gripOn(layout, one(layout, 'a'), new Set()).hold({ x, y }, reach)
  }

  test('an edge against an edge: two holes of 30 are flush, or touch', () => {
    const other = { ...round('b', 150, 30), diameter: 50 }
    // Left edges in line: 150 - 25 + 15.
    const held = among([other], 141.2, -33)
    expect(held.at.x).toBe(140)
    expect(held.lines[0]).toMatchObject({ axis: 'x', name: 'edge with Sound hole b', shows: 125 })
  })

  test('equal gaps between two, and the same gap once more behind them', () => {
    const two = [round('b', 60, 35), round('c', 160, 35)]
    const between = among(two, 111.3, 31)
    expect(between.at.x).toBe(110)
    expect(between.lines.find((line) => line.axis === 'x')?.name).toBe(
      'equal gaps to Sound hole b and Sound hole c',
    )
    expect(between.lines.find((line) => line.axis === 'x')?.gaps).toHaveLength(2)
    const series = [round('b', 30, 35), round('c', 71, 35)]
    // 30 to 71 leave a gap of 11: the next stands at 71 + 41.
    expect(among(series, 111.2, 31).at.x).toBeCloseTo(112, 9)
  })

  test('margins are equal where the edges, not the centres, are as far from both edges of the lid', () => {
    const held = among([], 27.2, -31)
    const margin = (value: number) => value - 15
    const line = held.lines.find((one) => one.name.startsWith('equal margins'))
    expect(line).toBeDefined()
    expect(margin(held.at.x)).toBeCloseTo(60 - 15 + held.at.y, 9)
  })

  test('frets over the lid, by their number', () => {
    // Two octaves of frets and a saddle far down the lid bring the last frets over the box.
    const plain = lid([round('a', 20, -40)]).design
    const layout = solve({
      ...plain,
      scale: { ...plain.scale, frets: { by: 'equal', count: 24 } },
      saddle: { ...plain.saddle, place: 185 },
    })
    const fret = layout.frets.find((one) => one.fromNut > layout.box.x0 + 5)
    if (!fret) throw new Error('no fret is over the lid')
    const at = fret.fromNut - layout.panels.lid.originX
    const held = gripOn(layout, one(layout, 'a'), new Set()).hold({ x: at + 0.3, y: -40 }, 0.5)
    expect(held.lines.map(({ name }) => name)).toContain(`on the line of fret ${fret.number}`)
  })

  test('nothing sticks: the same place is held alike from wherever it was come to', () => {
    const layout = lid([round('a', 50, 40), round('b', 150, -30)])
    const grip = gripOn(layout, one(layout, 'a'), new Set())
    const first = grip.hold({ x: 101.5, y: -1 }, 2)
    for (const x of [60, 149, 100, 103]) grip.hold({ x, y: 20 }, 2)
    expect(grip.hold({ x: 101.5, y: -1 }, 2)).toEqual(first)
    expect(grip.hold({ x: 103.4, y: 3.4 }, 2).lines.some(({ name }) => name === 'middle of the face')).toBe(
      false,
    )
  })
})

describe('several moved by the same way', () => {
  test('what is carried by another is moved once', () => {
    const layout = lid([
      round('a', 50, 40),
      round('b', { mirror: 'a' }, { mirror: 'a' }),
      round('c', { from: 'a', by: 60 }, { from: 'a', by: 0 }),
    ])
    const fields = moveFields(layout, layout.placed, { x: 5, y: -2 })
    const after = solve(apply(layout.design, change(layout.design, ...fields)))
    expect(fields).toHaveLength(2)
    expect(after.placed.map(({ at }) => [at.x, at.y])).toEqual([
      [55, 38],
      [55, -38],
      [115, 38],
    ])
  })
})
