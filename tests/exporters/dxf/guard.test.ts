import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dxfText, layerName } from '../../../exporters/dxf/dxfWords.ts'
import { GuardedDxf } from '../../../exporters/dxf/guard.ts'
import type { Contour } from '../../../geometry/index.ts'
import { rawRecords, readWithDxf, readWithDxfParser } from '../../support/readDxf.ts'
import { HOSTILE } from '../../support/sampleParts.ts'

const look = { colourIndex: 1, lineType: 'CONTINUOUS' } as const
const circle = (x: number, radius = 5): Contour => ({ shape: 'circle', centre: { x, y: 0 }, radius })

function written(fill: (dxf: GuardedDxf) => void): string {
  const dxf = new GuardedDxf('mm')
  fill(dxf)
  return dxf.finish('A test')
}

describe('layers behind the guard', () => {
  test('declared twice keep what was drawn on them the first time', () => {
    const text = written((dxf) => {
      dxf.declareLayer('HOLES', look)
      dxf.addContour('HOLES', circle(0))
      dxf.declareLayer('HOLES', look)
      dxf.addContour('HOLES', circle(20))
    })
    expect(readWithDxfParser(text).contours.get('HOLES')).toHaveLength(2)
    expect(rawRecords(text).filter(({ type }) => type === 'LAYER')).toHaveLength(2)
  })

  test('that differ only in case get names that differ in more', () => {
    const text = written((dxf) => {
      for (const name of ['CUT', 'Cut', 'cut']) {
        dxf.declareLayer(name, look)
        dxf.addContour(name, circle(0))
      }
    })
    expect([...readWithDxf(text).types.keys()]).toEqual(['CUT', 'Cut-2', 'cut-3'])
  })

  test.each([
    ['Cut: <inside>?', 'Cut-inside'],
    ['a/b\\c|d*e,f=g`h"i;j', 'a-b-c-d-e-f-g-h-i-j'],
    ['RECESS-3.0', 'RECESS-3.0'],
    ['SLOT-0.58x2.0', 'SLOT-0.58x2.0'],
    ['CUT--INSIDE-', 'CUT-INSIDE'],
    ['Größe\n', 'Grosse'],
    ['12', 'L12'],
    ['x'.repeat(300), 'x'.repeat(100)],
  ])('are named with what every reader takes: %j becomes %j', (name, plain) => {
    expect(layerName(name)).toBe(plain)
  })

  test('whose name leaves nothing are refused', () => {
    expect(() => layerName('***')).toThrow('"***" leaves nothing')
  })

  test('keep their order even with a name of digits, which the library would move to the front', () => {
    const text = written((dxf) => {
      for (const name of ['B', '7', 'A']) {
        dxf.declareLayer(name, look)
        dxf.addContour(name, circle(0))
      }
    })
    expect(readWithDxf(text).turns).toEqual(['B', 'L7', 'A'])
  })

  test('never declared, or with a look that is none, are refused at once', () => {
    expect(() => written((dxf) => dxf.addContour('HOLES', circle(0)))).toThrow(
      '"HOLES" has not been declared',
    )
    const declared = (colourIndex: number, lineType: string) => () =>
      new GuardedDxf('mm').declareLayer('HOLES', { colourIndex, lineType: lineType as 'DASHED' })
    expect(declared(0, 'DASHED')).toThrow('Colour 0')
    expect(declared(256, 'DASHED')).toThrow('Colour 256')
    expect(declared(1, 'ZIGZAG')).toThrow('"ZIGZAG"')
  })
})

describe('text behind the guard', () => {
  test.each([
    ['two\nlines\r\nand a\ttab', 'two lines and a tab'],
    ['⌀6 × 2 ±½″ 90°', 'dia. 6 x 2 +/-1/2" 90 deg'],
    ['Größe naïve Łódź', 'Grosse naive Lodz'],
    ['100%%d %c 5%', '100% %d %c 5%'],
    ['%%%', '% % %'],
    ['％％c', '\\U+FF05\\U+FF05c'],
    ['\\U+0041 \\M+1ABCD \\P', '\\ U+0041 \\ M+1ABCD \\P'],
    ['^J', '^ J'],
    ['茶', '\\U+8336'],
    ['🎸', '[U+1F3B8]'],
    ['\u0000\u202e', ''],
  ])('%j becomes %j', (text, ascii) => {
    expect(dxfText(text)).toBe(ascii)
  })

  test('of whatever signs is one line of ASCII that ends no string early', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 400 }), (text) => {
        const ascii = dxfText(text)
        expect(ascii).toMatch(/^[ -~]{0,250}$/)
        expect(ascii).not.toMatch(/%%/)
      }),
    )
  })

  test('is at most 250 characters, and no code is cut in two', () => {
    for (const sign of ['a', '茶', '^', '🎸']) {
      const text = dxfText(sign.repeat(400))
      expect(text.length).toBeLessThanOrEqual(250)
      expect(text.replace(/(a|\\U\+8336|\^ ?|\[U\+1F3B8\])/g, '')).toBe('...')
    }
  })

  test('of a hostile title comes out as one string, and the file goes on behind it', () => {
    const text = written((dxf) => {
      dxf.declareLayer('NOTES', look)
      dxf.addWords('NOTES', { at: { x: 1, y: 2 }, height: 3, turn: Math.PI / 2, text: HOSTILE })
      dxf.addContour('NOTES', circle(0))
    })
    for (const read of [readWithDxf(text), readWithDxfParser(text)]) {
      expect(read.types.get('NOTES')).toEqual(['TEXT', 'CIRCLE'])
      expect(read.words[0]).toMatchObject({ x: 1, y: 2, height: 3, degrees: 90 })
      expect(read.words[0]?.text).toContain('<script>alert("1")</script> & gnp.lid 0 SECTION dia. 6')
    }
    expect(text).toMatch(/^[\n\x20-\x7e]*$/)
  })

  test('of which nothing is left is not written', () => {
    const text = written((dxf) => {
      dxf.declareLayer('NOTES', look)
      dxf.addWords('NOTES', { at: { x: 0, y: 0 }, height: 3, turn: 0, text: '\n' })
      dxf.addContour('NOTES', circle(0))
    })
    expect(readWithDxf(text).types.get('NOTES')).toEqual(['CIRCLE'])
  })

  test('without height is refused', () => {
    const words = { at: { x: 0, y: 0 }, height: 0, turn: 0, text: 'Lid' }
    expect(() =>
      written((dxf) => {
        dxf.declareLayer('NOTES', look)
        dxf.addWords('NOTES', words)
      }),
    ).toThrow('height of "Lid" is 0')
  })
})

describe('numbers behind the guard', () => {
  test.each([Number.NaN, Number.POSITIVE_INFINITY, 1e6])('%s is refused', (value) => {
    expect(() =>
      written((dxf) => {
        dxf.declareLayer('HOLES', look)
        dxf.addContour('HOLES', circle(value))
      }),
    ).toThrow(String(value))
  })

  test('an unknown unit is refused, and never reaches the header', () => {
    expect(() => new GuardedDxf('cm' as 'mm')).toThrow('"cm"')
  })

  test('an empty file is refused, and a second writing of the same one', () => {
    expect(() => new GuardedDxf('mm').finish('x')).toThrow('nothing to write')
    const dxf = new GuardedDxf('mm')
    dxf.declareLayer('HOLES', look)
    dxf.addContour('HOLES', circle(0))
    dxf.finish('x')
    expect(() => dxf.finish('x')).toThrow('written already')
  })
})

test('a straight line is a LINE, a bent one and one with corners a polyline', () => {
  const text = written((dxf) => {
    dxf.declareLayer('MARK', look)
    const open = (...vertices: { x: number; y: number; bulge: number }[]): Contour => ({
      shape: 'chain',
      closed: false,
      vertices,
    })
    const at = (x: number, bulge = 0) => ({ x, y: 0, bulge })
    dxf.addContour('MARK', open(at(0), at(9)))
    dxf.addContour('MARK', open(at(0, 1), at(9)))
    dxf.addContour('MARK', open(at(0), at(4), at(9)))
  })
  expect(readWithDxfParser(text).types.get('MARK')).toEqual(['LINE', 'LWPOLYLINE', 'LWPOLYLINE'])
})
