import { colors } from 'dxf'
import { describe, expect, test } from 'vitest'
import { drawPart } from '../../../exporters/drawing/drawing.ts'
import { LAYER_TABLE, LINE_TYPES, layerOf } from '../../../exporters/drawing/layers.ts'
import {
  type Contour,
  circle,
  type Operation,
  type Part,
  roundedRectangle,
  type Vertex,
} from '../../../geometry/index.ts'
import { hostile, lid, neck } from '../../support/sampleParts.ts'

const names = (part: Part) => drawPart(part, 'mm').layers.map((layer) => layer.name)
const withOperations = (...operations: Operation[]): Part => ({ ...lid, operations })
const chain = (closed: boolean, ...vertices: Vertex[]): Contour => ({ shape: 'chain', closed, vertices })
const at = (x: number, y: number, bulge = 0): Vertex => ({ x, y, bulge })

describe('layers', () => {
  test('are named by operation and depth', () => {
    expect(names(lid)).toEqual([
      'NOTES',
      'DATUM',
      'MARK',
      'RECESS-1.5',
      'RECESS-3.0',
      'DRILL-12.0',
      'DRILL-THROUGH',
      'CUT-INSIDE',
      'CUT-OUTSIDE',
    ])
    expect(names(neck)).toContain('SLOT-0.58x2.0')
  })

  test('in inches a depth is in inches and says so', () => {
    const recess: Operation = { kind: 'recess', contour: circle({ x: 0, y: 0 }, 5), depth: 3.175, of: 'Rim' }
    expect(layerOf(recess, 'inches').name).toBe('RECESS-0.125IN')
  })

  test('two depths that differ by a hundredth of a millimetre are two layers', () => {
    const recess = (depth: number): Operation => ({
      kind: 'recess',
      contour: circle({ x: 50, y: 0 }, 5),
      depth,
      of: 'Rim',
    })
    expect(names(withOperations(recess(3), recess(3.01)))).toEqual([
      'RECESS-3.0',
      'RECESS-3.01',
      'CUT-OUTSIDE',
    ])
  })

  test('the outline comes after everything that is done while the part still lies still', () => {
    for (const part of [lid, neck, hostile]) expect(names(part).at(-1)).toBe('CUT-OUTSIDE')
  })

  test('a depth of nothing is refused with its value', () => {
    const flat: Operation = { kind: 'drill', centre: { x: 9, y: 9 }, diameter: 3, depth: 0, of: 'Screw' }
    expect(() => drawPart(withOperations(flat), 'mm')).toThrow('Depth of the hole of Screw is 0')
  })
})

describe('the table of layers', () => {
  /** Relative luminance and contrast after WCAG 2.2, "contrast ratio". */
  const luminance = (rgb: readonly number[]): number => {
    const [r = 0, g = 0, b = 0] = rgb.map((channel) => {
      const share = channel / 255
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
    })
    return 0.2126 * r + 0.7152 * g + 0.0722 * b
  }
  const contrast = (a: number, b: number) => (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05)

  test.each(LAYER_TABLE)(
    '$name can be told from white and from black in a DXF, and from paper in an SVG',
    (style) => {
      // 7 is black on white and white on black.
      if (style.colourIndex !== 7) {
        const shown = luminance(colors[style.colourIndex] ?? [])
        expect(contrast(shown, 1)).toBeGreaterThan(3)
        expect(contrast(shown, 0)).toBeGreaterThan(3)
      }
      const ink = [1, 3, 5].map((start) => Number.parseInt(style.ink.slice(start, start + 2), 16))
      expect(contrast(luminance(ink), 1)).toBeGreaterThan(4.5)
    },
  )

  test('gives every kind a name and a colour of its own', () => {
    for (const key of ['kind', 'name', 'colourIndex', 'ink'] as const) {
      expect(new Set(LAYER_TABLE.map((style) => style[key])).size).toBe(LAYER_TABLE.length)
    }
  })

  test('tells open lines by their line type, closed ones that are cut by being continuous', () => {
    // A tab lies along a line that is cut and is told from it by its width.
    const drawn = LAYER_TABLE.filter(({ kind }) => kind !== 'notes' && kind !== 'tab')
    const types = drawn.map((style) => style.lineType)
    const tab = LAYER_TABLE.find(({ kind }) => kind === 'tab')
    expect(tab?.width).toBeGreaterThanOrEqual(2 * Math.max(...drawn.map(({ width }) => width)))
    expect(types.filter((type) => type === 'CONTINUOUS')).toHaveLength(3)
    const broken = types.filter((type) => type !== 'CONTINUOUS')
    expect(new Set(broken).size).toBe(broken.length)
    for (const { pattern } of Object.values(LINE_TYPES)) expect(pattern.length % 2).toBe(0)
  })
})

describe('what is drawn twice', () => {
  const square = [at(10, 10), at(30, 10), at(30, 30), at(10, 30, 0.5)]
  const turned = [...square.slice(2), ...square.slice(0, 2)]
  // The same way round backwards: each bulge moves to the vertex that now starts its segment, negated.
  const backwards = [at(10, 10, -0.5), at(10, 30), at(30, 30), at(30, 10)]

  test.each([
    ['again', square],
    ['from another corner', turned],
    ['the other way round', backwards],
  ])('is drawn once: the same contour %s', (_, vertices) => {
    const cut = (list: Vertex[]): Operation => ({
      kind: 'cut',
      side: 'inside',
      contour: chain(true, ...list),
      of: 'Hole',
    })
    const drawing = drawPart(withOperations(cut(square), cut(vertices)), 'mm')
    expect(drawing.layers.find((layer) => layer.name === 'CUT-INSIDE')?.contours).toHaveLength(1)
  })

  test('the outline as an operation of its own is still one outline', () => {
    const again: Operation = { kind: 'cut', side: 'outside', contour: lid.outline, of: 'Outline' }
    const drawing = drawPart(withOperations(again), 'mm')
    expect(drawing.layers.at(-1)?.contours).toHaveLength(1)
  })

  test('a contour of another size, or on another layer, is another contour', () => {
    const drill = (diameter: number, depth: number): Operation => ({
      kind: 'drill',
      centre: { x: 9, y: 9 },
      diameter,
      depth,
      of: 'Screw',
    })
    const drawing = drawPart(withOperations(drill(3, 5), drill(3.001, 5), drill(3, 6)), 'mm')
    expect(drawing.layers.map((layer) => layer.contours.length)).toEqual([2, 1, 1])
  })
})

describe('contours that no machine may follow', () => {
  const cut = (contour: Contour): Part => withOperations({ kind: 'cut', side: 'inside', contour, of: 'Hole' })

  test.each([
    ['an open contour', chain(false, at(0, 0), at(9, 0), at(9, 9)), 'CUT-INSIDE of Hole is open'],
    ['one point', chain(true, at(0, 0)), 'has 1 point'],
    ['points all in one place', chain(true, at(1, 1), at(1, 1), at(1, 1)), 'has 0 points'],
    ['there and back', chain(true, at(0, 0), at(9, 0)), 'is a line there and back'],
    ['a number that is none', chain(true, at(0, 0), at(Number.NaN, 0), at(9, 9)), 'x of point 2'],
    ['an endless bulge', chain(true, at(0, 0, Number.POSITIVE_INFINITY), at(9, 0)), 'Bulge after point 1'],
    ['a place a kilometre off', chain(true, at(0, 0), at(1e6, 0), at(9, 9)), '1000000'],
    ['a circle of no size', { shape: 'circle', centre: { x: 0, y: 0 }, radius: 0 } as const, 'radius'],
    ['a circle turned inside out', { shape: 'circle', centre: { x: 0, y: 0 }, radius: -3 } as const, '-3'],
  ])('%s is refused in words', (_, contour, words) => {
    expect(() => drawPart(cut(contour), 'mm')).toThrow(words)
  })

  test('a repeated neighbour, also at the close, is left out and the bulges stay where they were', () => {
    const contour = chain(true, at(0, 0), at(9, 0, 0.7), at(9, 0, 0.3), at(9, 9), at(0, 9), at(0, 0))
    const drawing = drawPart(cut(contour), 'mm')
    const [kept] = drawing.layers.find((layer) => layer.name === 'CUT-INSIDE')?.contours ?? []
    expect(kept).toEqual(chain(true, at(0, 0), at(9, 0, 0.3), at(9, 9), at(0, 9)))
  })
})

describe('notes', () => {
  const note = (text: string, turn = 0): Part =>
    withOperations({ kind: 'note', at: { x: 200, y: 0 }, height: 3, text, turn, of: 'Note' })

  test('that would run out of the part are set smaller, but never too small to read', () => {
    const wordsOf = (part: Part) =>
      drawPart(part, 'mm').layers.find((layer) => layer.name === 'NOTES')?.words[0]
    expect(wordsOf(note('short'))?.height).toBe(3)
    expect(wordsOf(note('x'.repeat(50)))?.height).toBeLessThan(3)
    expect(drawPart(note('x'.repeat(50)), 'mm').extent.maxX).toBeLessThanOrEqual(300)
    expect(wordsOf(note('x'.repeat(240)))?.height).toBe(1.5)
  })

  test('too long for their part widen what the sheet must hold', () => {
    expect(drawPart(note('x'.repeat(240)), 'mm').extent.maxX).toBeGreaterThan(300)
    expect(drawPart(note('x'.repeat(240), Math.PI / 2), 'mm').extent.maxY).toBeGreaterThan(100)
  })

  test('without a letter left are not drawn at all', () => {
    expect(names(note('\u0000\n\u202e'))).toEqual(['CUT-OUTSIDE'])
  })
})

test('a rounded rectangle is measured to the outside of its corners', () => {
  const drawing = drawPart(
    { ...lid, outline: roundedRectangle({ x: 0, y: 0 }, 100, 50, 10), operations: [] },
    'mm',
  )
  expect(drawing.extent).toEqual({ minX: -50, minY: -25, maxX: 50, maxY: 25 })
})
