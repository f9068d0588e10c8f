/**
 * Records that the DXF library leaves out or leaves bare, written after the Autodesk DXF Reference (VPORT,
 * DIMSTYLE, DICTIONARY, ACDBDICTIONARYWDFLT, ACDBPLACEHOLDER, CLASSES).
 */
import type { Bounds } from '../../geometry/index.ts'
import type { DxfRecord, Tag } from './tags.ts'

/** Shape of the window assumed: four to three, as drawings have been looked at when nothing is known. */
const WINDOW_RATIO = 4 / 3

/** Free space around what is looked at. */
const SURROUND = 1.1

/**
 * The active viewport, looking straight down on everything drawn.
 *
 * @param extent box of all entities, in the unit of the file
 */
export function viewport(handle: string, table: string, extent: Bounds): DxfRecord {
  const width = extent.maxX - extent.minX
  const height = extent.maxY - extent.minY
  const viewHeight = SURROUND * Math.max(height, width / WINDOW_RATIO)
  const pairs: [number, number][] = [
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
    [40, viewHeight],
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
  ]
  return {
    type: 'VPORT',
    tags: [
      [5, handle],
      [330, table],
      [100, 'AcDbSymbolTableRecord'],
      [100, 'AcDbViewportTableRecord'],
      [2, '*Active'],
      [70, '0'],
      ...pairs.map(([code, value]): Tag => [code, String(value)]),
    ],
  }
}

/** The dimension style Standard; its handle has a code of its own, 105. All its values are the defaults. */
export function dimensionStyle(handle: string, table: string): DxfRecord {
  return {
    type: 'DIMSTYLE',
    tags: [
      [105, handle],
      [330, table],
      [100, 'AcDbSymbolTableRecord'],
      [100, 'AcDbDimStyleTableRecord'],
      [2, 'Standard'],
      [70, '0'],
    ],
  }
}

function classRecord(name: string, className: string): DxfRecord {
  return {
    type: 'CLASS',
    tags: [
      [1, name],
      [2, className],
      [3, 'ObjectDBX Classes'],
      [90, '0'],
      [280, '0'],
      [281, '0'],
    ],
  }
}

/** The classes of the two objects below, which a file of this version has to declare. */
export function plotStyleClasses(): DxfRecord[] {
  return [
    classRecord('ACDBDICTIONARYWDFLT', 'AcDbDictionaryWithDefault'),
    classRecord('ACDBPLACEHOLDER', 'AcDbPlaceHolder'),
  ]
}

/** The dictionary of plot styles with its one entry, Normal, which is an empty placeholder. */
export function plotStyleObjects(dictionary: string, placeholder: string, root: string): DxfRecord[] {
  return [
    {
      type: 'ACDBDICTIONARYWDFLT',
      tags: [
        [5, dictionary],
        [330, root],
        [100, 'AcDbDictionary'],
        [281, '1'],
        [3, 'Normal'],
        [350, placeholder],
        [100, 'AcDbDictionaryWithDefault'],
        [340, placeholder],
      ],
    },
    {
      type: 'ACDBPLACEHOLDER',
      tags: [
        [5, placeholder],
        [330, dictionary],
      ],
    },
  ]
}
