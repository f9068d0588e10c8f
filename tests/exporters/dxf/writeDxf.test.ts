/** Files of whole parts, read again by two libraries that this project did not write. */
import { describe, expect, test } from 'vitest'
import { drawPart } from '../../../exporters/drawing/drawing.ts'
import { LAYER_TABLE } from '../../../exporters/drawing/layers.ts'
import { writeDxf, writeDxfSheet } from '../../../exporters/dxf/writeDxf.ts'
import { bounds, move, type Part } from '../../../geometry/index.ts'
import { type ReadDxf, rawRecords, readWithDxf, readWithDxfParser } from '../../support/readDxf.ts'
import { allParts, HOSTILE, hardArcs, hostile, lid, neck } from '../../support/sampleParts.ts'
import { type Drawn, drawnError, drawnOf, isCircle, worstError } from '../../support/segments.ts'

const MICROMETRE = 0.001
const options = { title: 'Tea box', line: 'Revision B' }
const readers: readonly [name: string, read: (text: string) => ReadDxf][] = [
  ['dxf-parser', readWithDxfParser],
  ['dxf', readWithDxf],
]

const wantedOf = (part: Part, layer: string): Drawn[] =>
  (drawPart(part, 'mm').layers.find((each) => each.name === layer)?.contours ?? []).map(drawnOf)

function inMillimetres(drawn: Drawn): Drawn {
  const scaled = ({ x, y }: { x: number; y: number }) => ({ x: x * 25.4, y: y * 25.4 })
  if (isCircle(drawn)) return { centre: scaled(drawn.centre), radius: drawn.radius * 25.4 }
  return drawn.map(({ from, middle, to }) => ({ from: scaled(from), middle: scaled(middle), to: scaled(to) }))
}

describe.each(readers)('read again by %s', (_, read) => {
  test.each(allParts)('$id has every contour on its layer within a micrometre', (part) => {
    const file = read(writeDxf(part, options))
    const layers = drawPart(part, 'mm').layers.filter((layer) => layer.contours.length > 0)
    expect([...file.contours.keys()].sort()).toEqual(layers.map(({ name }) => name).sort())
    for (const { name } of layers) {
      expect(worstError(wantedOf(part, name), [...(file.contours.get(name) ?? [])])).toBeLessThan(MICROMETRE)
    }
    expect(file.insUnits).toBe(4)
  })

  test('in inches the header says so and the numbers are divided by 25.4', () => {
    const file = read(writeDxf(lid, { ...options, units: 'inches' }))
    expect(file.insUnits).toBe(1)
    for (const name of ['CUT-INSIDE', 'CUT-OUTSIDE', 'DRILL-THROUGH', 'MARK', 'DATUM']) {
      const drawn = (file.contours.get(name) ?? []).map(inMillimetres)
      expect(worstError(wantedOf(lid, name), drawn)).toBeLessThan(MICROMETRE)
    }
    expect(file.contours.has('RECESS-0.1181IN')).toBe(true)
  })

  test('circles are circles, arcs stay in polylines, saw lines are lines', () => {
    expect(read(writeDxf(lid, options)).types.get('DRILL-THROUGH')).toEqual(['CIRCLE', 'CIRCLE'])
    expect(read(writeDxf(lid, options)).types.get('CUT-INSIDE')).toEqual([
      'CIRCLE',
      'LWPOLYLINE',
      'LWPOLYLINE',
    ])
    expect(new Set(read(writeDxf(neck, options)).types.get('SLOT-0.58x2.0'))).toEqual(new Set(['LINE']))
    expect(read(writeDxf(hardArcs, options)).types.get('CUT-OUTSIDE')).toEqual(['LWPOLYLINE'])
  })

  test('inside comes before outside, and on a sheet no outline comes before the last hole', () => {
    const turns = read(writeDxfSheet(allParts, options)).turns
    expect(turns.at(-1)).toBe('CUT-OUTSIDE')
    expect(turns.at(-2)).toBe('CUT-INSIDE')
    expect(new Set(turns).size).toBe(turns.length)
  })

  test('layers have the colours of the table', () => {
    const { layers } = read(writeDxf(lid, options))
    for (const style of LAYER_TABLE) {
      for (const [name, { colour }] of layers) {
        if (name === style.name || name.startsWith(`${style.name}-`)) {
          const exact = LAYER_TABLE.find((each) => each.name === name) ?? style
          expect(colour).toBe(exact.colourIndex)
        }
      }
    }
  })

  test('the words say title, face, head end, hand, thickness, size, unit, and the notes stand where they were put', () => {
    const { words } = read(writeDxf(lid, options))
    const text = words.map((each) => each.text)
    expect(text).toEqual([
      'Grain this way',
      'Edge to hook on',
      'Lid',
      'seen from outside, head end left',
      'right-handed, 4.0 mm (0.157 in) thick, 300.0 x 200.0 mm',
      'Tea box',
      'Revision B',
      'Drawn 1:1, coordinates in millimetres.',
    ])
    expect(words[1]).toMatchObject({ x: 8, y: -80, height: 2.5, degrees: 90, layer: 'NOTES' })
    for (const each of words.slice(2)) expect(each.y).toBeLessThan(bounds(lid.outline).minY)
  })

  test('a hostile title is one harmless line', () => {
    const { words } = read(writeDxf(hostile, { title: HOSTILE, line: HOSTILE }))
    expect(
      words.filter((each) => each.text.startsWith('<script>alert("1")</script> & gnp.lid')),
    ).toHaveLength(4)
    expect(words.map((each) => each.text).join('')).not.toContain('?')
  })

  test('on a sheet every part is there, whole and apart from the others', () => {
    const file = read(writeDxfSheet(allParts, options))
    const outlines = [...(file.contours.get('CUT-OUTSIDE') ?? [])]
    expect(outlines).toHaveLength(allParts.length)
    const boxes = allParts.map((part) => {
      const box = bounds(part.outline)
      const shifts = outlines.flatMap((outline) => {
        if (isCircle(outline)) return []
        const shift = {
          x: Math.min(...outline.flatMap(({ from }) => [from.x])),
          y: Math.min(...outline.flatMap(({ from }) => [from.y])),
        }
        const first = drawnOf(part.outline)
        if (isCircle(first)) return []
        const dx = shift.x - Math.min(...first.map(({ from }) => from.x))
        const dy = shift.y - Math.min(...first.map(({ from }) => from.y))
        return drawnError(drawnOf(move(part.outline, dx, dy)), outline) < MICROMETRE ? [{ dx, dy }] : []
      })
      expect(shifts).toHaveLength(1)
      const { dx = 0, dy = 0 } = shifts[0] ?? {}
      return { minX: box.minX + dx, maxX: box.maxX + dx, minY: box.minY + dy, maxY: box.maxY + dy }
    })
    for (const [i, a] of boxes.entries()) {
      for (const b of boxes.slice(i + 1)) {
        const apart = Math.max(a.minX - b.maxX, b.minX - a.maxX, a.minY - b.maxY, b.minY - a.maxY)
        expect(apart).toBeGreaterThan(10)
      }
    }
    for (const part of allParts.filter((each) => each !== hostile)) {
      expect(file.words.map((each) => each.text)).toContain(part.title)
    }
  })
})

describe('the header', () => {
  const header = (text: string) => {
    const pairs = rawRecords(text)[0]?.pairs ?? []
    return (name: string) => {
      const at = pairs.findIndex(([code, value]) => code === 9 && value === name)
      return pairs.slice(at + 1, at + 3).map(([, value]) => Number(value))
    }
  }

  test('states the box of all that is drawn, in the unit of the file', () => {
    const read = header(writeDxf(lid, options))
    expect(read('$EXTMAX')).toEqual([300, 100])
    expect(read('$EXTMIN')[0]).toBe(0)
    expect(read('$EXTMIN')[1]).toBeLessThan(-100)
    const inches = header(writeDxf(lid, { ...options, units: 'inches' }))
    expect(inches('$EXTMAX')[0]).toBeCloseTo(300 / 25.4, 7)
    expect(inches('$MEASUREMENT')[0]).toBe(0)
    expect(read('$MEASUREMENT')[0]).toBe(1)
  })
})

test('everything is ASCII without exponents, and the first line names the unit', () => {
  for (const units of ['mm', 'inches'] as const) {
    const text = writeDxfSheet(allParts, { ...options, units })
    expect(text).toMatch(/^[\n\x20-\x7e]*$/)
    expect(text).not.toMatch(/NaN|Infinity|undefined|\d[eE][-+]?\d/)
    expect(text.split('\n')[1]).toContain(units === 'mm' ? 'millimetres' : 'inches')
  }
})

test('line types are scaled to the unit, so that dashes are not 5 inches long', () => {
  const dashes = (units: 'mm' | 'inches') =>
    rawRecords(writeDxf(lid, { ...options, units }))
      .filter((record) => record.type === 'LTYPE')
      .flatMap(({ pairs }) =>
        pairs.filter(([code]) => code === 49).map(([, value]) => Math.abs(Number(value))),
      )
  expect(Math.max(...dashes('mm'))).toBe(6)
  expect(Math.max(...dashes('inches'))).toBeCloseTo(6 / 25.4, 6)
})

test('a sheet of no parts is refused', () => {
  expect(() => writeDxfSheet([], options)).toThrow('no part')
})
