/** Artwork takes hold of what is dragged near it, at the distance it asks for; worked out by hand. */
import { describe, expect, test } from 'vitest'
import { gripOn } from '../../../app/canvas/hold/hold.ts'
import { checkDesign, gap, type Layout, solve } from '../../../geometry/index.ts'

/** A lid of 300 by 200; a picture from 100 to 160 along and from 30 to 70 across; a hole of 20. */
function lid(shape: object = {}): Layout {
  const reading = checkDesign({
    format: 'lidwright',
    version: 1,
    hand: 'right',
    box: { length: 300, width: 200 },
    artwork: [
      { id: 'swallow', name: 'Swallow', along: 130, across: 50, long: 60, wide: 40, keep: 5, ...shape },
    ],
    things: [{ kind: 'sound-hole', id: 'hole', along: 60, across: 60, diameter: 20 }],
  })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  return solve(reading.design)
}

function heldAt(layout: Layout, x: number, y: number) {
  const placed = layout.placed[0]
  if (!placed) throw new Error('no hole')
  return gripOn(layout, placed, new Set()).hold({ x, y }, 2)
}

const clearOf = (held: ReturnType<typeof heldAt>, axis: 'x' | 'y') =>
  held.lines.find((one) => one.axis === axis && one.name === 'clear of Swallow')?.at

describe('a hole dragged beside a picture', () => {
  test.each([
    // Half the hole is 10, and 5 are to be kept: 100 - 15 and 160 + 15, 30 - 15 and 70 + 15.
    ['before it', 86, 47, 'x', 85],
    ['behind it', 174, 47, 'x', 175],
    ['on its bass side', 133, 16, 'y', 15],
    ['on its treble side', 133, 84, 'y', 85],
  ] as const)('%s is held where it just keeps the distance', (_, x, y, axis, at) => {
    const held = heldAt(lid(), x, y)
    expect(clearOf(held, axis)).toBe(at)
    expect(held.at[axis]).toBe(at)
  })

  test('far from its height is not held by it', () => {
    expect(clearOf(heldAt(lid(), 86, -60), 'x')).toBeUndefined()
  })

  test('on another face is not held by it', () => {
    expect(clearOf(heldAt(lid({ face: 'base' }), 86, 47), 'x')).toBeUndefined()
  })

  test('is then as far from it as it asks', () => {
    const layout = lid()
    const held = heldAt(layout, 86, 47)
    const hole = { shape: 'circle' as const, centre: held.at, radius: 10 }
    const picture = { minX: 100, maxX: 160, minY: 30, maxY: 70 }
    const side = [
      { x: picture.minX, y: picture.minY, bulge: 0 },
      { x: picture.maxX, y: picture.minY, bulge: 0 },
      { x: picture.maxX, y: picture.maxY, bulge: 0 },
      { x: picture.minX, y: picture.maxY, bulge: 0 },
    ]
    expect(gap(hole, { shape: 'chain', closed: true, vertices: side })).toBeCloseTo(5, 9)
  })
})
