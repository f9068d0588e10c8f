/**
 * Records that the DXF library leaves out or leaves bare, written after the Autodesk DXF Reference (VPORT,
 * DIMSTYLE, BLOCK_RECORD, DICTIONARY, ACDBDICTIONARYWDFLT, ACDBPLACEHOLDER, CLASSES).
 */
import { type FileFacts, realText } from './fileFacts.ts'
import type { Entry, Table, Tags } from './library.ts'

/** Pairs as lines of text. Example: `linesOf([[100, 'AcDbDictionary'], [281, '1']])`. */
export function linesOf(pairs: readonly (readonly [code: number, value: string])[]): string {
  return pairs.flat().join('\n')
}

/** A record of our own among those of the library: type, handle, owner, then `own`, asked for when it is written. */
class OwnRecord implements Entry {
  handle = '0'
  ownerObjectHandle = '0'
  readonly #type: string
  readonly #own: () => string
  readonly #handleCode: number

  constructor(type: string, own: () => string, handleCode = 5) {
    this.#type = type
    this.#own = own
    this.#handleCode = handleCode
  }

  tags(tags: Tags): void {
    const head = `0\n${this.#type}\n${this.#handleCode}\n${this.handle}\n330\n${this.ownerObjectHandle}`
    const own = this.#own()
    tags.pushLines(own === '' ? head : `${head}\n${own}`)
  }
}

/** Shape of the window assumed: four to three, as drawings have been looked at when nothing is known. */
const WINDOW_RATIO = 4 / 3

/** Free space around what is looked at. */
const SURROUND = 1.1

const VIEWPORT_START = linesOf([
  [100, 'AcDbSymbolTableRecord'],
  [100, 'AcDbViewportTableRecord'],
  [2, '*Active'],
  [70, '0'],
  [10, '0.0'],
  [20, '0.0'],
  [11, '1.0'],
  [21, '1.0'],
])

/** Snap and grid; straight down is the direction (0, 0, 1), and the target is the origin. */
const VIEWPORT_DIRECTION = linesOf([
  [13, '0.0'],
  [23, '0.0'],
  [14, '10.0'],
  [24, '10.0'],
  [15, '10.0'],
  [25, '10.0'],
  [16, '0.0'],
  [26, '0.0'],
  [36, '1.0'],
  [17, '0.0'],
  [27, '0.0'],
  [37, '0.0'],
])

const VIEWPORT_END = linesOf([
  [42, '50.0'],
  [43, '0.0'],
  [44, '0.0'],
  [50, '0.0'],
  [51, '0.0'],
  [71, '0'],
  [72, '1000'],
  [73, '1'],
  [74, '3'],
  [75, '0'],
  [76, '0'],
  [77, '0'],
  [78, '0'],
])

/** The active viewport, looking straight down on everything drawn. */
export function viewport({ extent, unit }: FileFacts): Entry {
  const x = realText((extent.minX + extent.maxX) / 2, 'x of the view', unit)
  const y = realText((extent.minY + extent.maxY) / 2, 'y of the view', unit)
  const width = extent.maxX - extent.minX
  const height = Math.max(extent.maxY - extent.minY, width / WINDOW_RATIO)
  const size = `40\n${realText(SURROUND * height, 'Height of the view', unit)}\n41\n${realText(WINDOW_RATIO, 'Shape of the view', unit)}`
  return new OwnRecord('VPORT', () =>
    [VIEWPORT_START, `12\n${x}\n22\n${y}`, VIEWPORT_DIRECTION, size, VIEWPORT_END].join('\n'),
  )
}

/** All values of the dimension style Standard are the defaults. */
const STANDARD = linesOf([
  [100, 'AcDbSymbolTableRecord'],
  [100, 'AcDbDimStyleTableRecord'],
  [2, 'Standard'],
  [70, '0'],
])

/** The table of dimension styles with its one entry, whose handle has a code of its own, 105. */
export class DimensionStyles implements Table {
  readonly name = 'DIMSTYLE'
  handle = '0'
  ownerObjectHandle = '0'
  elements: Entry[] = [new OwnRecord('DIMSTYLE', () => STANDARD, 105)]

  tags(tags: Tags): void {
    const head = `0\nTABLE\n2\n${this.name}\n5\n${this.handle}\n330\n${this.ownerObjectHandle}`
    tags.pushLines(`${head}\n100\nAcDbSymbolTable\n70\n${this.elements.length}\n100\nAcDbDimStyleTable`)
    for (const style of this.elements) style.tags(tags)
    tags.push(0, 'ENDTAB')
  }
}

/** The record of a block, without the tags that came with release 2007. */
export function blockRecord(name: string): Entry {
  return new OwnRecord(
    'BLOCK_RECORD',
    () => `100\nAcDbSymbolTableRecord\n100\nAcDbBlockTableRecord\n2\n${name}`,
  )
}

/** The plot style Normal: an empty placeholder. */
export function placeholder(): Entry {
  return new OwnRecord('ACDBPLACEHOLDER', () => '')
}

/** The dictionary of plot styles with its one entry. */
export function plotStyleDictionary(normal: Entry): Entry {
  return new OwnRecord('ACDBDICTIONARYWDFLT', () => {
    const own = `100\nAcDbDictionary\n281\n1\n3\nNormal\n350\n${normal.handle}`
    return `${own}\n100\nAcDbDictionaryWithDefault\n340\n${normal.handle}`
  })
}

function classLines(name: string, className: string): string {
  return linesOf([
    [0, 'CLASS'],
    [1, name],
    [2, className],
    [3, 'ObjectDBX Classes'],
    [90, '0'],
    [280, '0'],
    [281, '0'],
  ])
}

/** The classes of the two objects above, which a file of this version has to declare. */
export const PLOT_STYLE_CLASSES = [
  classLines('ACDBDICTIONARYWDFLT', 'AcDbDictionaryWithDefault'),
  classLines('ACDBPLACEHOLDER', 'AcDbPlaceHolder'),
].join('\n')
