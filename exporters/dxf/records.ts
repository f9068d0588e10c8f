/**
 * Records that the DXF library leaves out or leaves bare, written after the Autodesk DXF Reference (VPORT,
 * DIMSTYLE, BLOCK_RECORD, DICTIONARY, ACDBDICTIONARYWDFLT, ACDBPLACEHOLDER, CLASSES).
 */
import type { Bounds } from '../../geometry/index.ts'
import type { Entry, Table, Tags } from './library.ts'

export type Tag = readonly [code: number, value: string | number]

export function pushAll(tags: Tags, pairs: readonly Tag[]): void {
  for (const [code, value] of pairs) tags.push(code, value)
}

/** A record of our own among those of the library: type, handle, owner, then `pairs`, asked for when it is written. */
class OwnRecord implements Entry {
  handle = '0'
  ownerObjectHandle = '0'
  readonly #type: string
  readonly #pairs: () => readonly Tag[]
  readonly #handleCode: number

  constructor(type: string, pairs: () => readonly Tag[], handleCode = 5) {
    this.#type = type
    this.#pairs = pairs
    this.#handleCode = handleCode
  }

  tags(tags: Tags): void {
    tags.push(0, this.#type)
    tags.push(this.#handleCode, this.handle)
    tags.push(330, this.ownerObjectHandle)
    pushAll(tags, this.#pairs())
  }
}

/** Shape of the window assumed: four to three, as drawings have been looked at when nothing is known. */
const WINDOW_RATIO = 4 / 3

/** Free space around what is looked at. */
const SURROUND = 1.1

/**
 * The active viewport, looking straight down on everything drawn.
 *
 * @param extent box of all entities, in the unit of the file
 */
export function viewport(extent: Bounds): Entry {
  const width = extent.maxX - extent.minX
  const height = extent.maxY - extent.minY
  return new OwnRecord('VPORT', () => [
    [100, 'AcDbSymbolTableRecord'],
    [100, 'AcDbViewportTableRecord'],
    [2, '*Active'],
    [70, 0],
    [10, 0],
    [20, 0],
    [11, 1],
    [21, 1],
    [12, (extent.minX + extent.maxX) / 2],
    [22, (extent.minY + extent.maxY) / 2],
    [13, 0],
    [23, 0],
    [14, 10],
    [24, 10],
    [15, 10],
    [25, 10],
    [16, 0],
    [26, 0],
    [36, 1],
    [17, 0],
    [27, 0],
    [37, 0],
    [40, SURROUND * Math.max(height, width / WINDOW_RATIO)],
    [41, WINDOW_RATIO],
    [42, 50],
    [43, 0],
    [44, 0],
    [50, 0],
    [51, 0],
    [71, 0],
    [72, 1000],
    [73, 1],
    [74, 3],
    [75, 0],
    [76, 0],
    [77, 0],
    [78, 0],
  ])
}

/** The dimension style Standard; its handle has a code of its own, 105. All its values are the defaults. */
function dimensionStyle(): Entry {
  return new OwnRecord(
    'DIMSTYLE',
    () => [
      [100, 'AcDbSymbolTableRecord'],
      [100, 'AcDbDimStyleTableRecord'],
      [2, 'Standard'],
      [70, 0],
    ],
    105,
  )
}

/** The table of dimension styles with its one entry. */
export class DimensionStyles implements Table {
  readonly name = 'DIMSTYLE'
  handle = '0'
  ownerObjectHandle = '0'
  elements = [dimensionStyle()]

  tags(tags: Tags): void {
    pushAll(tags, [
      [0, 'TABLE'],
      [2, this.name],
      [5, this.handle],
      [330, this.ownerObjectHandle],
      [100, 'AcDbSymbolTable'],
      [70, this.elements.length],
      [100, 'AcDbDimStyleTable'],
    ])
    for (const style of this.elements) style.tags(tags)
    tags.push(0, 'ENDTAB')
  }
}

/** The record of a block, without the tags that came with release 2007. */
export function blockRecord(name: string): Entry {
  return new OwnRecord('BLOCK_RECORD', () => [
    [100, 'AcDbSymbolTableRecord'],
    [100, 'AcDbBlockTableRecord'],
    [2, name],
  ])
}

/** The plot style Normal: an empty placeholder. */
export function placeholder(): Entry {
  return new OwnRecord('ACDBPLACEHOLDER', () => [])
}

/** The dictionary of plot styles with its one entry. */
export function plotStyleDictionary(normal: Entry): Entry {
  return new OwnRecord('ACDBDICTIONARYWDFLT', () => [
    [100, 'AcDbDictionary'],
    [281, 1],
    [3, 'Normal'],
    [350, normal.handle],
    [100, 'AcDbDictionaryWithDefault'],
    [340, normal.handle],
  ])
}

/** The classes of the two objects above, which a file of this version has to declare. */
export function pushPlotStyleClasses(tags: Tags): void {
  const classes = [
    ['ACDBDICTIONARYWDFLT', 'AcDbDictionaryWithDefault'],
    ['ACDBPLACEHOLDER', 'AcDbPlaceHolder'],
  ] as const
  for (const [name, className] of classes) {
    pushAll(tags, [
      [0, 'CLASS'],
      [1, name],
      [2, className],
      [3, 'ObjectDBX Classes'],
      [90, 0],
      [280, 0],
      [281, 0],
    ])
  }
}
