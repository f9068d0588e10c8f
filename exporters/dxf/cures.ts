/**
 * What the DXF library writes, put right.
 *
 * Its text is taken apart into records, each known flaw is cured by one function with its name, and the
 * records are written again. The structure aimed at is that of DXF version AC1015 (release 2000), the
 * oldest that has polylines with arcs in one entity: it asks least of a reader. Sources: Autodesk DXF
 * Reference (group codes of each record); ezdxf manual, "DXF file structure" and "Block management".
 */
import { BULGE_DIGITS, INCH_DIGITS, MILLIMETRE_DIGITS, numberText } from '../numbers.ts'
import type { FileFacts } from './fileFacts.ts'
import { headerSection } from './header.ts'
import { dimensionStyle, plotStyleClasses, plotStyleObjects, viewport } from './tableRecords.ts'
import {
  type DxfRecord,
  firstValue,
  readRecords,
  sectionsOf,
  type Tag,
  without,
  withValue,
  writeRecords,
} from './tags.ts'

type Cure = (records: readonly DxfRecord[], facts: FileFacts) => DxfRecord[]

/** Flaw: entities belong to the BLOCK and blocks to nothing; both belong to the block's BLOCK_RECORD. */
export const cureOwners: Cure = (records) => {
  const recordHandles = new Map<string, string>()
  for (const record of records) {
    if (record.type === 'BLOCK_RECORD') {
      recordHandles.set(firstValue(record, 2) ?? '', firstValue(record, 5) ?? '')
    }
  }
  const ownerOf = (name: string): string => {
    const handle = recordHandles.get(name)
    if (handle === undefined) throw new Error(`The block ${name} has no record.`)
    return handle
  }
  const sections = sectionsOf(records)
  let block = ''
  return records.map((record, index) => {
    const section = sections[index]
    if (section === 'BLOCKS' && (record.type === 'BLOCK' || record.type === 'ENDBLK')) {
      if (record.type === 'BLOCK') block = firstValue(record, 2) ?? ''
      return withValue(record, 330, ownerOf(block))
    }
    const isEntity = section === 'ENTITIES' && record.type !== 'SECTION' && record.type !== 'ENDSEC'
    return isEntity ? withValue(record, 330, ownerOf('*Model_Space')) : record
  })
}

/** Codes common to all entities: space, layer, line type, colour, line type scale, visibility, weight. */
const COMMON_CODES = new Set([67, 8, 6, 62, 48, 60, 370])

/**
 * Flaw: layer, line type, colour and weight stand behind the second subclass marker, so that 90 is not the
 * first tag of a polyline (and one widespread program then leaves it open); blocks name no layer at all.
 */
export const cureTagOrder: Cure = (records) =>
  records.map((record) => {
    const entity = record.tags.findIndex(([code, value]) => code === 100 && value === 'AcDbEntity')
    if (entity === -1) return record
    const ahead = record.tags.slice(0, entity + 1)
    const behind = record.tags.slice(entity + 1)
    const common = behind.filter(([code]) => COMMON_CODES.has(code))
    const own = behind.filter(([code]) => !COMMON_CODES.has(code))
    const layer: Tag[] = common.some(([code]) => code === 8) ? [] : [[8, '0']]
    return { ...record, tags: [...ahead, ...layer, ...common, ...own] }
  })

/** Flaw: no dimension style, though every drawing has one called Standard. */
export const cureDimensionStyle: Cure = (records) =>
  records.flatMap((record) => {
    if (record.type !== 'TABLE' || firstValue(record, 2) !== 'DIMSTYLE') return [record]
    const tags = record.tags.filter(([code]) => code !== 70 && code !== 71)
    const marker = tags.findIndex(([code, value]) => code === 100 && value === 'AcDbSymbolTable')
    const table = {
      ...record,
      tags: [...tags.slice(0, marker + 1), [70, '1'] as Tag, ...tags.slice(marker + 1)],
    }
    return [table, dimensionStyle('DIMENSION-STYLE', firstValue(record, 5) ?? '0')]
  })

/** Flaw: the viewport says neither where it looks nor how it is shaped, so a reader opens somewhere else. */
export const cureViewport: Cure = (records, { extent }) =>
  records.map((record) =>
    record.type === 'VPORT'
      ? viewport(firstValue(record, 5) ?? '0', firstValue(record, 330) ?? '0', extent)
      : record,
  )

/** Flaw: the plot style of a layer is the root dictionary; it must be a placeholder in a dictionary of its own. */
export const curePlotStyles: Cure = (records) => {
  const root = records.find((record) => record.type === 'DICTIONARY' && firstValue(record, 330) === '0')
  if (root === undefined) throw new Error('The DXF has no root dictionary.')
  const rootHandle = firstValue(root, 5) ?? '0'
  const sections = sectionsOf(records)
  return records.flatMap((record, index) => {
    if (record.type === 'LAYER') return [withValue(record, 390, 'PLOT-STYLE')]
    if (record === root) {
      return [
        { ...record, tags: [...record.tags, [3, 'ACAD_PLOTSTYLENAME'] as Tag, [350, 'PLOT-STYLES'] as Tag] },
      ]
    }
    if (record.type !== 'ENDSEC') return [record]
    if (sections[index] === 'CLASSES') return [...plotStyleClasses(), record]
    if (sections[index] === 'OBJECTS')
      return [...plotStyleObjects('PLOT-STYLES', 'PLOT-STYLE', rootHandle), record]
    return [record]
  })
}

/** Flaw: block records carry tags that came with release 2007, four versions after the one stated. */
export const cureVersion: Cure = (records) =>
  records.map((record) => (record.type === 'BLOCK_RECORD' ? without(record, 70, 280, 281) : record))

/** Real numbers by group code (Autodesk DXF Reference, "Group Code Value Types"). */
function isReal(code: number): boolean {
  return (code >= 10 && code <= 59) || (code >= 110 && code <= 149) || (code >= 210 && code <= 239)
}

/** Flaw: numbers come as the language prints them: 1e-7, NaN, 0.30000000000000004, -0. */
export const cureNumbers: Cure = (records, { unit }) => {
  const lengthDigits = unit === 'mm' ? MILLIMETRE_DIGITS : INCH_DIGITS
  return records.map((record) => ({
    ...record,
    tags: record.tags.map(([code, value]): Tag => {
      if (!isReal(code)) return [code, value]
      const digits = record.type === 'LWPOLYLINE' && code === 42 ? BULGE_DIGITS : lengthDigits
      const text = numberText(
        value === '' ? Number.NaN : Number(value),
        `Group ${code} of a ${record.type}`,
        digits,
      )
      return [code, text.includes('.') ? text : `${text}.0`]
    }),
  }))
}

const HANDLE_CODES = new Set([5, 105])
const isReference = (code: number) => (code >= 320 && code <= 369) || (code >= 390 && code <= 399)

/**
 * Flaw: handles are counted on from drawing to drawing, so the same drawing written twice gives two files.
 * Here they are handed out anew, in the order of the file.
 */
export const cureHandles: Cure = (records) => {
  const sections = sectionsOf(records)
  const handles = new Map<string, string>([['0', '0']])
  for (const [index, record] of records.entries()) {
    if (sections[index] === 'HEADER') continue
    for (const [code, value] of record.tags) {
      if (!HANDLE_CODES.has(code)) continue
      if (handles.has(value)) throw new Error(`Two things in the DXF have the handle ${value}.`)
      handles.set(value, handles.size.toString(16).toUpperCase())
    }
  }
  return records.map((record, index) => {
    if (sections[index] === 'HEADER') return record
    const tags = record.tags.map(([code, value]): Tag => {
      if (!HANDLE_CODES.has(code) && !isReference(code)) return [code, value]
      const handle = handles.get(value)
      if (handle === undefined)
        throw new Error(`A ${record.type} in the DXF points to ${value}, which is not there.`)
      return [code, handle]
    })
    return { ...record, tags }
  })
}

/** Flaw: the header begins with the handle seed, ends with the version, and lacks extents, code page and measure. */
export const cureHeader: Cure = (records, facts) => {
  const sections = sectionsOf(records)
  const body = records.filter((_, index) => sections[index] !== 'HEADER')
  const highest = body
    .flatMap((record) => record.tags.filter(([code]) => HANDLE_CODES.has(code)))
    .reduce((most, [, value]) => Math.max(most, Number.parseInt(value, 16)), 0)
  const seed = (highest + 1).toString(16).toUpperCase()
  return [...headerSection(facts, seed), ...body]
}

/** In this order: handles are numbered when every record is there, and the header knows the last of them. */
const CURES: readonly Cure[] = [
  cureOwners,
  cureTagOrder,
  cureDimensionStyle,
  cureViewport,
  curePlotStyles,
  cureVersion,
  cureHandles,
  cureHeader,
  cureNumbers,
]

/**
 * The library's text with every known flaw cured, a comment as its first line and a line break as its last.
 *
 * @throws when a number is not finite, a handle is used twice or a reference leads nowhere
 */
export function curedText(libraryText: string, facts: FileFacts): string {
  let records = readRecords(libraryText)
  for (const cure of CURES) records = cure(records, facts)
  return writeRecords([facts.comment], records)
}
