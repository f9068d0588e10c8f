/** What a drag shows and what takes hold of it, against places worked out by hand. */
import { describe, expect, test } from 'vitest'
import { distancesOf, tellDistances } from '../../../app/canvas/distances.ts'
import { facing, fromScreen, toScreen } from '../../../app/canvas/frame.ts'
import { gripOn } from '../../../app/canvas/hold/hold.ts'
import { onRule, placeFields } from '../../../app/canvas/moving.ts'
import { change, checkDesign, FACES, type Layout, type Placed, solve } from '../../../geometry/index.ts'

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
