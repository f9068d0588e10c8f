/**
 * Each flaw of dxf-writer 1.18.4 by name. The library's own text is looked at as well, so that a flaw mended
 * there shows up here and its cure can go.
 */
import Drawing from 'dxf-writer'
import { describe, expect, test } from 'vitest'
import { curedText } from '../../../exporters/dxf/cures.ts'
import { circleEntity, polylineEntity, vertexLines } from '../../../exporters/dxf/entities.ts'
import { insidesOf } from '../../../exporters/dxf/library.ts'
import { writeDxf } from '../../../exporters/dxf/writeDxf.ts'
import { type RawRecord, rawRecords, rawValue } from '../../support/readDxf.ts'
import { lid } from '../../support/sampleParts.ts'

function drawn(x = 3): Drawing {
  const drawing = new Drawing()
  drawing.drawCircle(x, 4, 5)
  drawing.drawPolyline(
    [
      [0, 0],
      [9, 0],
      [9, 9],
    ],
    true,
  )
  return drawing
}

const fromLibrary = (x?: number) => drawn(x).toDxfString()

/** The same circle and polyline as entities of ours. */
function ours(): Drawing {
  const drawing = new Drawing()
  const layer = insidesOf(drawing).layers['0']
  const corners = [
    ['0.0', '0.0'],
    ['9.0', '0.0'],
    ['9.0', '9.0'],
  ] as const
  layer?.addShape(circleEntity('3.0', '4.0', '5.0'))
  layer?.addShape(polylineEntity(3, true, corners.map(([x, y]) => vertexLines(x, y, '')).join('')))
  return drawing
}

const facts = { unit: 'mm', comment: 'A test', extent: { minX: 0, minY: 0, maxX: 40, maxY: 30 } } as const
const bare = fromLibrary()
const cured = curedText(ours(), facts)
const records = (text: string, type: string) => rawRecords(text).filter((record) => record.type === type)
const one = (text: string, type: string) => records(text, type)[0]
const codes = (record: RawRecord | undefined) => record?.pairs.map(([code]) => code) ?? []
const handleOf = (record: RawRecord | undefined) => rawValue(record, 5) ?? rawValue(record, 105)

describe('flaw: the handle counter runs on from drawing to drawing', () => {
  test('the library writes two texts for one drawing', () => {
    expect(fromLibrary()).not.toBe(fromLibrary())
  })

  test('the same part gives the same bytes, twice in one process and after other drawings', () => {
    const first = writeDxf(lid, { title: 'Tea box' })
    fromLibrary()
    expect(writeDxf(lid, { title: 'Tea box' })).toBe(first)
    expect(curedText(ours(), facts)).toBe(cured)
  })

  test('handles are unique, the seed is above them all, and every reference leads somewhere', () => {
    for (const text of [cured, writeDxf(lid, { title: 'Tea box' })]) {
      const all = rawRecords(text).filter(({ section }) => section !== 'HEADER')
      const handles = all.map(handleOf).filter((handle) => handle !== undefined)
      expect(new Set(handles).size).toBe(handles.length)
      const seed = one(text, 'SECTION')?.pairs.find(([code]) => code === 5)?.[1] ?? ''
      const highest = Math.max(...handles.map((handle) => Number.parseInt(handle, 16)))
      expect(Number.parseInt(seed, 16)).toBeGreaterThan(highest)
      const references = all.flatMap(({ pairs }) =>
        pairs.filter(([code]) => (code >= 330 && code < 370) || code === 390).map(([, value]) => value),
      )
      for (const reference of references) if (reference !== '0') expect(handles).toContain(reference)
    }
  })

  test('every record but sections, ends and classes has a handle, as releases since R13 require', () => {
    const free = new Set(['SECTION', 'ENDSEC', 'ENDTAB', 'EOF', 'CLASS'])
    for (const record of rawRecords(cured)) {
      if (record.section !== 'HEADER') expect(handleOf(record) !== undefined).toBe(!free.has(record.type))
    }
  })
})

describe('flaw: owners are the BLOCK, or nobody', () => {
  const spaceOf = (text: string) =>
    handleOf(records(text, 'BLOCK_RECORD').find((r) => rawValue(r, 2) === '*Model_Space'))

  test('the library gives entities to the BLOCK and the BLOCK to "0"', () => {
    expect(rawValue(one(bare, 'CIRCLE'), 330)).toBe(handleOf(one(bare, 'BLOCK')))
    expect(rawValue(one(bare, 'BLOCK'), 330)).toBe('0')
  })

  test('every entity belongs to the BLOCK_RECORD of model space, each BLOCK and ENDBLK to its own record', () => {
    for (const { section, type, pairs } of rawRecords(cured)) {
      if (section !== 'ENTITIES' || type === 'SECTION' || type === 'ENDSEC') continue
      expect(pairs.find(([code]) => code === 330)?.[1]).toBe(spaceOf(cured))
    }
    const owners = records(cured, 'BLOCK_RECORD').map(handleOf)
    expect(owners).toHaveLength(2)
    expect(records(cured, 'BLOCK').map((r) => rawValue(r, 330))).toEqual(owners)
    expect(records(cured, 'ENDBLK').map((r) => rawValue(r, 330))).toEqual(owners)
  })
})

describe('flaw: layer and colour stand between AcDbPolyline and the count of points', () => {
  const afterMarker = (text: string) => {
    const pairs = one(text, 'LWPOLYLINE')?.pairs ?? []
    return pairs.slice(pairs.findIndex(([, value]) => value === 'AcDbPolyline') + 1).map(([code]) => code)
  }

  test('the library writes 8, 6, 62 and 370 there', () => {
    expect(afterMarker(bare).slice(0, 5)).toEqual([8, 6, 62, 370, 90])
  })

  test('90 is the first tag after AcDbPolyline, and the layer follows AcDbEntity, in every entity and block', () => {
    expect(afterMarker(cured)[0]).toBe(90)
    const withEntity = rawRecords(cured).filter(({ pairs }) =>
      pairs.some(([, value]) => value === 'AcDbEntity'),
    )
    expect(withEntity.map(({ type }) => type)).toEqual([
      'BLOCK',
      'ENDBLK',
      'BLOCK',
      'ENDBLK',
      'CIRCLE',
      'LWPOLYLINE',
    ])
    for (const { pairs } of withEntity) {
      expect(pairs[pairs.findIndex(([, value]) => value === 'AcDbEntity') + 1]?.[0]).toBe(8)
    }
  })

  test('points, bulges and the closed flag keep their order', () => {
    expect(codes(one(cured, 'LWPOLYLINE')).slice(-8)).toEqual([90, 70, 10, 20, 10, 20, 10, 20])
    expect(rawValue(one(cured, 'LWPOLYLINE'), 70)).toBe('1')
  })
})

describe('flaw: no dimension style', () => {
  test('the library writes an empty table', () => {
    expect(records(bare, 'DIMSTYLE')).toHaveLength(0)
  })

  test('Standard is there, with its handle under 105 and the table as its owner', () => {
    const style = one(cured, 'DIMSTYLE')
    expect(rawValue(style, 2)).toBe('Standard')
    expect(codes(style)).not.toContain(5)
    const table = records(cured, 'TABLE').find((record) => rawValue(record, 2) === 'DIMSTYLE')
    expect(rawValue(style, 330)).toBe(handleOf(table))
    expect(rawValue(table, 70)).toBe('1')
  })
})

describe('flaw: a bare viewport', () => {
  test('the library says a height and nothing more', () => {
    expect(codes(one(bare, 'VPORT'))).not.toContain(12)
  })

  test('the viewport looks down on the middle of the drawing and takes it all in', () => {
    const view = one(cured, 'VPORT')
    const number = (code: number) => Number(rawValue(view, code))
    expect([number(12), number(22)]).toEqual([20, 15])
    expect([number(16), number(26), number(36)]).toEqual([0, 0, 1])
    expect(number(40)).toBeGreaterThanOrEqual(30)
    expect(number(40) * number(41)).toBeGreaterThanOrEqual(40)
  })
})

describe('flaw: the plot style of a layer is the root dictionary', () => {
  test('the library points to handle 1 whatever that is', () => {
    expect(rawValue(one(bare, 'LAYER'), 390)).toBe('1')
  })

  test('it is the placeholder Normal in the dictionary of plot styles, which the root knows', () => {
    const placeholder = one(cured, 'ACDBPLACEHOLDER')
    const styles = one(cured, 'ACDBDICTIONARYWDFLT')
    expect(rawValue(one(cured, 'LAYER'), 390)).toBe(handleOf(placeholder))
    expect(rawValue(styles, 350)).toBe(handleOf(placeholder))
    expect(rawValue(placeholder, 330)).toBe(handleOf(styles))
    const root = one(cured, 'DICTIONARY')?.pairs ?? []
    const entry = root.findIndex(([, value]) => value === 'ACAD_PLOTSTYLENAME')
    expect(root[entry + 1]).toEqual([350, handleOf(styles)])
    expect(records(cured, 'CLASS').map((record) => rawValue(record, 1))).toEqual([
      'ACDBDICTIONARYWDFLT',
      'ACDBPLACEHOLDER',
    ])
  })
})

describe('flaw: a header that begins with the seed and ends with the version', () => {
  const variables = (text: string) =>
    (one(text, 'SECTION')?.pairs ?? []).filter(([code]) => code === 9).map(([, value]) => value)

  test('the library knows no extents, no code page and no measurement', () => {
    expect(variables(bare)[0]).toBe('$HANDSEED')
    expect(variables(bare)).not.toContain('$EXTMIN')
    expect(variables(bare)).not.toContain('$DWGCODEPAGE')
    expect(variables(bare)).not.toContain('$MEASUREMENT')
  })

  test('version first, then code page, extents, units and measurement, each once', () => {
    const names = variables(cured)
    expect(names[0]).toBe('$ACADVER')
    expect(new Set(names).size).toBe(names.length)
    for (const name of ['$DWGCODEPAGE', '$EXTMIN', '$EXTMAX', '$INSUNITS', '$MEASUREMENT', '$HANDSEED']) {
      expect(names).toContain(name)
    }
    expect(records(cured, 'SECTION').map((record) => rawValue(record, 2))[0]).toBe('HEADER')
  })
})

describe('flaw: the version is a label only', () => {
  test('the library writes tags of release 2007 in block records', () => {
    expect(codes(one(bare, 'BLOCK_RECORD'))).toEqual(expect.arrayContaining([280, 281]))
  })

  test('a file of AC1015 holds none of them, nor a true colour', () => {
    expect(cured).toContain('\n$ACADVER\n1\nAC1015\n')
    for (const record of records(cured, 'BLOCK_RECORD')) expect(codes(record)).toEqual([5, 330, 100, 100, 2])
    expect(rawRecords(cured).flatMap(codes)).not.toContain(420)
  })
})

describe('flaw: numbers as the language prints them', () => {
  test.each([1e-7, 1e21, 0.1 + 0.2])('the library writes %s just so', (value) => {
    expect(fromLibrary(value)).toContain(`\n10\n${value}\n`)
  })

  /** A drawing of ours with a line type, whose lengths go through the library. */
  const dashed = (length: number) => ours().addLineType('DASH', 'a dash', [length])
  const lengthIn = (text: string) =>
    records(text, 'LTYPE')
      .find((record) => rawValue(record, 2) === 'DASH')
      ?.pairs.find(([code]) => code === 49)?.[1]

  test('what is not finite or far too large stops the writing and is named', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, 1e21]) {
      expect(() => curedText(dashed(value), facts)).toThrow(`Group 40 of a LTYPE is ${value}`)
    }
    expect(() => curedText(dashed('' as unknown as number), facts)).toThrow('Group 49 of a LTYPE is NaN')
  })

  test('real numbers are plain, have a point, and no minus without a value behind it', () => {
    const text = curedText(dashed(-1e-9), facts)
    expect(lengthIn(text)).toBe('0.0')
    expect(lengthIn(curedText(dashed(0.1 + 0.2), facts))).toBe('0.3')
    for (const { pairs } of rawRecords(text)) {
      for (const [code, value] of pairs) if (code >= 10 && code < 60) expect(value).toMatch(/^-?\d+\.\d+$/)
    }
  })
})

describe('flaw: no line break at the end', () => {
  test('the library stops after EOF', () => {
    expect(bare.endsWith('EOF')).toBe(true)
  })

  test('the file ends in one, begins with its comment, and has none but line feeds', () => {
    expect(cured.endsWith('\n0\nEOF\n')).toBe(true)
    expect(cured.startsWith('999\nA test\n0\nSECTION\n')).toBe(true)
    expect(cured).not.toContain('\r')
  })
})

describe('flaw: a line break in a string shifts every pair behind it', () => {
  test('text that got past the guard stops the writing instead of spoiling the file', () => {
    const drawing = ours().addLineType('DASH', 'two\nlines', [1])
    expect(() => curedText(drawing, facts)).toThrow('not a group code')
  })
})

test('flaw: setUnits with a name it does not know writes no number; ours is always a number', () => {
  expect(new Drawing().setUnits('mm' as 'Millimeters').toDxfString()).toContain('\n$INSUNITS\n70\n\n')
  expect(cured).toContain('\n$INSUNITS\n70\n4\n')
  expect(curedText(ours(), { ...facts, unit: 'inches' })).toContain('\n$INSUNITS\n70\n1\n')
})
