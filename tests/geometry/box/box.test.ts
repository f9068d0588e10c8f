import { describe, expect, test } from 'vitest'
import { area, bounds, check, type Face, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'

const layoutOf = (stated: Stated = {}) => solve(designOf(stated))
const WALLS = { neckEnd: 5, tailEnd: 7, bass: 8, treble: 10 }
const BOX = {
  length: 300,
  width: 200,
  depth: 80,
  walls: WALLS,
  lid: { thickness: 4 },
  base: { thickness: 3 },
}

describe('the box under the strings', () => {
  test('lies so that the saddle falls where it is stated on the lid', () => {
    const { box, saddle } = layoutOf({ box: BOX, scale: { length: 600 }, saddle: { place: 220, setback: 2 } })
    expect(saddle).toMatchObject({ x: 602, along: 220 })
    expect(box).toMatchObject({ x0: 382, x1: 682, insideX0: 387, insideX1: 675 })
  })

  test('lies farther up where the lid itself begins behind the neck-end wall', () => {
    const lid = { thickness: 4, fit: 'between the walls', play: 0.5 }
    const { box, panels } = layoutOf({ box: { ...BOX, lid }, scale: { length: 600 }, saddle: { place: 220 } })
    expect(box.x0).toBe(600 - 220 - 5.5)
    expect(panels.lid.originX).toBe(600 - 220)
  })

  test('has its heights from the outer face of the lid', () => {
    expect(layoutOf({ box: BOX }).box).toMatchObject({
      lidBottom: -4,
      wallTop: -4,
      wallBottom: -77,
      baseTop: -77,
      baseBottom: -80,
      insideBass: -92,
      insideTreble: 90,
    })
    const letIn = {
      ...BOX,
      lid: { thickness: 4, fit: 'between the walls' },
      base: { thickness: 3, fit: 'between the walls' },
    }
    expect(layoutOf({ box: letIn }).box).toMatchObject({
      lidBottom: -4,
      wallTop: 0,
      wallBottom: -80,
      baseTop: -77,
    })
  })

  test('has a saddle a little under half an inch tall, if nothing else is stated', () => {
    // Common practice, no source.
    const { top } = layoutOf().saddle
    expect(top).toBeLessThan(12.7)
    expect(top).toBeGreaterThan(0.9 * 12.7)
  })

  // Common practice, no source: on a 24 in scale the saddle starts at 24 in.
  test('has its saddle line a scale length from the nut, and farther by the setback', () => {
    expect(layoutOf({ scale: { length: 24 * 25.4 } }).saddle.x).toBeCloseTo(24 * 25.4, 12)
    expect(layoutOf({ scale: { length: 24 * 25.4 }, saddle: { setback: 2.5 } }).saddle.x).toBeCloseTo(
      24 * 25.4 + 2.5,
      12,
    )
  })
})

describe('its faces', () => {
  const sizes = (stated: Stated) =>
    Object.fromEntries(
      Object.entries(layoutOf({ box: { ...BOX, ...stated } }).panels).map(([face, panel]) => {
        const { minX, maxX, minY, maxY } = panel.bounds
        return [face, [maxX - minX, maxY - minY, panel.thickness]]
      }),
    )

  test('with the lid on the walls and the base under them', () => {
    expect(sizes({})).toEqual({
      lid: [300, 200, 4],
      base: [300, 200, 3],
      'neck-end-wall': [200, 73, 5],
      'tail-end-wall': [200, 73, 7],
      'bass-wall': [300, 73, 8],
      'treble-wall': [300, 73, 10],
    })
  })

  test('with both let in between the walls', () => {
    const fit = 'between the walls'
    expect(sizes({ lid: { thickness: 4, fit, play: 1 }, base: { thickness: 3, fit } })).toMatchObject({
      lid: [300 - 12 - 2, 200 - 18 - 2, 4],
      base: [300 - 12, 200 - 18, 3],
      'neck-end-wall': [200, 80, 5],
    })
  })

  test('lid and base are measured from their own neck-end edge and the centreline of the neck', () => {
    const { panels } = layoutOf({ box: { ...BOX, lid: { fit: 'between the walls', play: 1 } } })
    expect(panels.lid.bounds).toEqual({ minX: 0, maxX: 286, minY: -91, maxY: 89 })
    expect(panels.base.bounds).toEqual({ minX: 0, maxX: 300, minY: -100, maxY: 100 })
  })

  test('walls are measured from the middle of their lid-side edge, downwards', () => {
    const { panels } = layoutOf({ box: BOX })
    expect(panels['bass-wall'].bounds).toEqual({ minX: -150, maxX: 150, minY: -73, maxY: 0 })
    expect(panels['tail-end-wall'].bounds).toEqual({ minX: -100, maxX: 100, minY: -73, maxY: 0 })
  })

  test('round corners take from lid and base what a quarter circle leaves of a square', () => {
    const { panels } = layoutOf({ box: { ...BOX, cornerRadius: 20 } })
    for (const face of ['lid', 'base'] as const)
      expect(area(panels[face].outline)).toBeCloseTo(300 * 200 - (4 - Math.PI) * 400, 6)
  })

  test('round corners shrink with the wall where the lid is let in, down to square', () => {
    const lid = (cornerRadius: number) =>
      layoutOf({ box: { ...BOX, cornerRadius, lid: { fit: 'between the walls', play: 1 } } }).panels.lid
        .outline
    expect(lid(10)).toMatchObject({ vertices: { length: 4 } })
    expect(lid(20)).toMatchObject({ vertices: { length: 8 } })
  })
})

describe('a box that cannot be', () => {
  test.each<[string, Stated, Face]>([
    ['walls thicker than it is long', { length: 40, walls: { neckEnd: 30, tailEnd: 30 } }, 'base'],
    ['walls thicker than it is wide', { width: 20, walls: { bass: 15, treble: 15 } }, 'lid'],
    [
      'lid and base thicker than it is deep',
      { depth: 5, lid: { thickness: 4 }, base: { thickness: 4 } },
      'bass-wall',
    ],
  ])('%s is still a drawing, and a stop', (_what, box, face) => {
    const fit = 'between the walls'
    const layout = layoutOf({
      box: {
        ...box,
        lid: { ...(box.lid as object), fit: face === 'bass-wall' ? 'on the walls' : fit },
        base: { ...(box.base as object), fit: face === 'base' ? fit : 'under the walls' },
      },
    })
    const { minX, maxX, minY, maxY } = bounds(layout.panels[face].outline)
    expect(Math.min(maxX - minX, maxY - minY)).toBeGreaterThan(0)
    expect(check(layout).find((one) => one.rule === 'box-has-inside')?.grade).toBe('stop')
  })
})
