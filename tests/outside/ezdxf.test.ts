/** Our DXF read by ezdxf, a Python library with an audit of its own. */
import { beforeAll, describe, expect, test } from 'vitest'
import { drawPart } from '../../exporters/drawing/drawing.ts'
import { LAYER_TABLE } from '../../exporters/drawing/layers.ts'
import { r12Name } from '../../exporters/dxf/r12.ts'
import { cutPart, sheetTemplates, writeDxf, writeDxfSheet } from '../../exporters/index.ts'
import { bounds, partsOf, solve } from '../../geometry/index.ts'
import { designOf } from '../support/designs.ts'
import { needEzdxf } from '../support/outsideTools.ts'
import { drawnOn, readByEzdxf } from '../support/readEzdxf.ts'
import { allParts, HOSTILE, hostile, lid } from '../support/sampleParts.ts'
import { drawnOf, worstError } from '../support/segments.ts'

const MICROMETRE = 0.001
const options = { title: 'Tea box', line: 'Revision B' }

beforeAll(needEzdxf, 300_000)

describe('read by ezdxf', () => {
  test.each(allParts)(
    '$id passes the audit, and every contour is in its place within a micrometre',
    (part) => {
      const found = readByEzdxf(writeDxf(part, options))
      expect({ errors: found.errors, fixes: found.fixes }).toEqual({ errors: [], fixes: [] })
      expect(found).toMatchObject({ version: 'AC1015', units: 4, encoding: 'cp1252' })
      const layers = drawPart(part, 'mm').layers
      for (const { name, contours } of layers) {
        expect(worstError(contours.map(drawnOf), drawnOn(found, name))).toBeLessThan(MICROMETRE)
      }
      for (const { layer, closed, type } of found.entities) {
        if (type === 'LWPOLYLINE' && layer !== 'MARK') expect(closed).toBe(true)
      }
    },
  )

  test.each(allParts)('$id in release 12 passes the audit, every contour in its place', (part) => {
    const found = readByEzdxf(writeDxf(part, { ...options, release: '12' }))
    expect({ errors: found.errors, fixes: found.fixes }).toEqual({ errors: [], fixes: [] })
    expect(found).toMatchObject({ version: 'AC1009', units: 4 })
    for (const { name, contours } of drawPart(part, 'mm').layers) {
      expect(worstError(contours.map(drawnOf), drawnOn(found, r12Name(name)))).toBeLessThan(MICROMETRE)
    }
    const box = bounds(part.outline)
    expect(found.extents[1][0]).toBeGreaterThanOrEqual(box.maxX - MICROMETRE)
  })

  test.each([
    ['laser', '12'],
    ['router', '2000'],
  ] as const)(
    'paths and tabs of a %s on sheets of stock, release %s, pass the audit',
    async (process, release) => {
      const design = designOf({
        cutting: { process, tabs: 3, slots: 'cut by the machine', cutter: 0.5, relief: 'T' },
      })
      const paths = partsOf(solve(design)).map((part) => {
        const way = cutPart(part, design)
        if (!way.ok) throw new Error(way.sentence)
        return way.part
      })
      const made = await sheetTemplates(paths, design, { title: 'T', formats: ['dxf'], dxfRelease: release })
      if (!made.ok) throw new Error(made.sentences.join(' '))
      for (const { text } of made.files) {
        const found = readByEzdxf(text)
        expect({ errors: found.errors, fixes: found.fixes }).toEqual({ errors: [], fixes: [] })
        for (const { layer, closed } of found.entities)
          if (/^(CUT|RECESS)/.test(layer) && closed !== undefined) expect(closed).toBe(true)
      }
    },
    60_000,
  )

  test.each(['mm', 'inches'] as const)('the sheet of all parts in %s passes the audit', (units) => {
    const found = readByEzdxf(writeDxfSheet(allParts, { ...options, units }))
    expect({ errors: found.errors, fixes: found.fixes }).toEqual({ errors: [], fixes: [] })
    expect(found.units).toBe(units === 'mm' ? 4 : 1)
    expect(new Set(found.entities.map(({ owner }) => owner))).toEqual(new Set([found.space]))
  })

  test('the extents stated are those of the lines, and text lies within them', () => {
    const found = readByEzdxf(writeDxf(lid, options))
    const box = bounds(lid.outline)
    expect(found.extents[1]).toEqual([box.maxX, box.maxY])
    expect(found.extents[0][0]).toBe(box.minX)
    for (const { at } of found.entities)
      if (at !== undefined) expect(at[1]).toBeGreaterThan(found.extents[0][1])
  })

  test('layers have the colours and line types of the table', () => {
    const found = readByEzdxf(writeDxf(lid, options))
    for (const style of LAYER_TABLE) {
      for (const [name, look] of Object.entries(found.layers)) {
        if (name !== style.name && !name.startsWith(`${style.name}-`)) continue
        const exact = LAYER_TABLE.find((each) => each.name === name) ?? style
        expect(look).toEqual([exact.colourIndex, exact.lineType])
      }
    }
  })

  test('text of a hostile title is one string without codes taken for signs', () => {
    const found = readByEzdxf(writeDxf(hostile, { title: HOSTILE }))
    const texts = found.entities.flatMap(({ text }) => (text === undefined ? [] : [text]))
    expect(texts.filter((text) => text.includes('100% %d \\ U+0041 [U+1F3B8] naive'))).toHaveLength(3)
    for (const text of texts) expect(text).toMatch(/^[\x20-\x7e]*$/)
  })

  test('a sign without a plain spelling comes back, and a caret stays a caret', () => {
    const found = readByEzdxf(writeDxf({ ...lid, title: '茶 ^J' }, options))
    const texts = found.entities.map(({ text }) => text)
    expect(texts).toContain('茶 ^J')
  })
})
