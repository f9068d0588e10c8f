/** Files of release 12, read again by two libraries that this project did not write. */
import { describe, expect, test } from 'vitest'
import { drawPart } from '../../../exporters/drawing/drawing.ts'
import { R12Dxf, r12Name } from '../../../exporters/dxf/r12.ts'
import { writeDxf, writeDxfSheet } from '../../../exporters/dxf/writeDxf.ts'
import { bounds } from '../../../geometry/index.ts'
import { type ReadDxf, rawRecords, readWithDxf, readWithDxfParser } from '../../support/readDxf.ts'
import { allParts, HOSTILE, hostile, lid } from '../../support/sampleParts.ts'
import { drawnOf, worstError } from '../../support/segments.ts'

const options = { title: 'Tea box', line: 'Revision B', release: '12' } as const
const readers: readonly [name: string, read: (text: string) => ReadDxf][] = [
  ['dxf-parser', readWithDxfParser],
  ['dxf', readWithDxf],
]

describe.each(readers)('release 12 read again by %s', (_, read) => {
  test.each(allParts)('$id has every contour on its layer within a micrometre', (part) => {
    const file = read(writeDxf(part, options))
    const layers = drawPart(part, 'mm').layers.filter((layer) => layer.contours.length > 0)
    expect([...file.contours.keys()].sort()).toEqual(layers.map(({ name }) => r12Name(name)).sort())
    for (const { name, contours } of layers) {
      const found = [...(file.contours.get(r12Name(name)) ?? [])]
      expect(worstError(contours.map(drawnOf), found)).toBeLessThan(0.001)
    }
    expect(file.insUnits).toBe(4)
  })

  test('the outline comes last of all contours', () => {
    const { turns } = read(writeDxf(lid, options))
    const cuts = turns.filter((layer) => layer !== 'NOTES')
    expect(cuts.at(-1)).toBe('CUT-OUTSIDE')
  })

  test('in inches every number is divided by 25.4', () => {
    const file = read(writeDxf(lid, { ...options, units: 'inches' }))
    expect(file.insUnits).toBe(1)
    const [outline] = file.contours.get('CUT-OUTSIDE') ?? []
    const xs = (outline as readonly { from: { x: number } }[]).map(({ from }) => from.x)
    const box = bounds(lid.outline)
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo((box.maxX - box.minX) / 25.4, 6)
  })
})

describe('what release 12 has no room for', () => {
  const text = writeDxfSheet([...allParts, hostile], { ...options, title: HOSTILE })

  test('is not in the file: subclasses, handles, light polylines, true colours', () => {
    const records = rawRecords(text)
    expect(records.some(({ type }) => type === 'LWPOLYLINE')).toBe(false)
    for (const { pairs } of records)
      for (const [code] of pairs) expect([100, 102, 330, 5, 370, 420]).not.toContain(code)
  })

  test('names of layers keep to 31 plain characters, and stay apart', () => {
    const names = rawRecords(text).flatMap(({ type, pairs }) =>
      type === 'LAYER' ? pairs.filter(([code]) => code === 2).map(([, name]) => name) : [],
    )
    for (const name of names) expect(name).toMatch(/^[A-Z0-9$_-]{1,31}$/)
    expect(new Set(names).size).toBe(names.length)
    const dxf = new R12Dxf('mm')
    const look = { colourIndex: 1, lineType: 'CONTINUOUS' } as const
    dxf.declareLayer('RECESS-3.0', look)
    dxf.declareLayer('RECESS-3:0', look)
    dxf.addContour('RECESS-3:0', { shape: 'circle', centre: { x: 0, y: 0 }, radius: 1 })
    expect(dxf.finish('two')).toContain('RECESS-3_0-2')
    expect(r12Name('Säge: 3')).toBe('SAGE_3')
    expect(() => r12Name('   ')).toThrow('leaves nothing')
  })

  test('is ASCII, and the same for the same input', () => {
    expect(text.split('\n').every((line) => /^[ -~]*$/.test(line))).toBe(true)
    expect(writeDxfSheet([...allParts, hostile], { ...options, title: HOSTILE })).toBe(text)
  })

  test('numbers that are none are refused, nothing at all too', () => {
    const dxf = new R12Dxf('mm')
    dxf.declareLayer('CUT', { colourIndex: 1, lineType: 'CONTINUOUS' })
    expect(() =>
      dxf.addContour('CUT', { shape: 'circle', centre: { x: Number.NaN, y: 0 }, radius: 1 }),
    ).toThrow('NaN')
    expect(() => new R12Dxf('mm').finish('empty')).toThrow('nothing to write')
    expect(() => dxf.addContour('LOST', { shape: 'circle', centre: { x: 0, y: 0 }, radius: 1 })).toThrow(
      'LOST',
    )
  })
})
