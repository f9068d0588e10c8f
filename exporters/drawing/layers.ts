/**
 * The layers of a template: what they are called, in which order they come, how they look, what they mean.
 *
 * The table is the whole convention. Colours are chosen so that each can be told from black and from
 * white paper; they follow no machine's habits. Because a colour alone tells nothing to a reader who
 * sees few of them, each kind of work also has a line type of ISO 128-2 (its number is in the table).
 */
import type { Operation } from '../../geometry/index.ts'
import { bothUnits, isWritable, lengthLabel, refuse } from '../numbers.ts'

export type LayerKind =
  | 'notes'
  | 'datum'
  | 'mark'
  | 'slot'
  | 'recess'
  | 'drill'
  | 'cut-inside'
  | 'tab'
  | 'cut-outside'

export type LineTypeName = 'CONTINUOUS' | 'DASHED' | 'DOTTED' | 'LONG-DASH-DOT' | 'LONG-SHORT'

/** A line type: dashes and gaps by turns, mm. ISO 128-2 counts them in line widths; here for 0.25 mm. */
export interface LineType {
  readonly name: LineTypeName
  /** Number of the basic line type in ISO 128-2. */
  readonly isoNumber: '01' | '02' | '04' | '07' | '08'
  /** Lengths by turns: dash, gap, dash, gap …; empty for a continuous line. */
  readonly pattern: readonly number[]
}

export const LINE_TYPES: Readonly<Record<LineTypeName, LineType>> = {
  CONTINUOUS: { name: 'CONTINUOUS', isoNumber: '01', pattern: [] },
  DASHED: { name: 'DASHED', isoNumber: '02', pattern: [3, 0.75] },
  DOTTED: { name: 'DOTTED', isoNumber: '07', pattern: [0.5, 0.75] },
  'LONG-DASH-DOT': { name: 'LONG-DASH-DOT', isoNumber: '04', pattern: [6, 0.75, 0.25, 0.75] },
  'LONG-SHORT': { name: 'LONG-SHORT', isoNumber: '08', pattern: [6, 0.75, 1.5, 0.75] },
}

/** One row of the table of layers. */
export interface LayerStyle {
  readonly kind: LayerKind
  /** First word of the layer's name; depths follow where the kind has them. */
  readonly name: string
  /** AutoCAD Colour Index written to a DXF: 1 to 255, 7 being black on white and white on black. */
  readonly colourIndex: number
  /** The same thought for white paper, in an SVG. */
  readonly ink: string
  readonly lineType: LineTypeName
  /** Width of the line on paper, mm. */
  readonly width: number
  /** Whether a saw, drill or cutter follows these lines. */
  readonly worked: boolean
  readonly meaning: string
}

/**
 * Every layer there is, in the order in which a file holds them: what is never cut, then what does not
 * part the wood, then the openings, and the outline last, when nothing holds the part any more.
 */
export const LAYER_TABLE: readonly LayerStyle[] = [
  {
    kind: 'notes',
    name: 'NOTES',
    colourIndex: 134,
    ink: '#3c3c3c',
    lineType: 'CONTINUOUS',
    width: 0.1,
    worked: false,
    meaning: 'words, never cut',
  },
  {
    kind: 'datum',
    name: 'DATUM',
    colourIndex: 252,
    ink: '#555555',
    lineType: 'LONG-DASH-DOT',
    width: 0.1,
    worked: false,
    meaning: 'line to measure from, never cut',
  },
  {
    kind: 'mark',
    name: 'MARK',
    colourIndex: 32,
    ink: '#9a4a00',
    lineType: 'DOTTED',
    width: 0.15,
    worked: false,
    meaning: 'scribe on the wood, do not cut',
  },
  {
    kind: 'slot',
    name: 'SLOT',
    colourIndex: 94,
    ink: '#007a33',
    lineType: 'LONG-SHORT',
    width: 0.1,
    worked: true,
    meaning: 'saw slot: the line is the middle of the cut',
  },
  {
    kind: 'recess',
    name: 'RECESS',
    colourIndex: 150,
    ink: '#0050b4',
    lineType: 'DASHED',
    width: 0.1,
    worked: true,
    meaning: 'take the wood away inside the line',
  },
  {
    kind: 'drill',
    name: 'DRILL',
    colourIndex: 6,
    ink: '#8a1a9e',
    lineType: 'CONTINUOUS',
    width: 0.1,
    worked: true,
    meaning: 'drill',
  },
  {
    kind: 'cut-inside',
    name: 'CUT-INSIDE',
    colourIndex: 1,
    ink: '#c00020',
    lineType: 'CONTINUOUS',
    width: 0.1,
    worked: true,
    meaning: 'opening: cut right through, what is inside falls out',
  },
  {
    kind: 'tab',
    name: 'TAB',
    colourIndex: 42,
    ink: '#7a5c00',
    lineType: 'CONTINUOUS',
    width: 0.3,
    worked: false,
    meaning: 'leave a bridge here',
  },
  {
    kind: 'cut-outside',
    name: 'CUT-OUTSIDE',
    colourIndex: 7,
    ink: '#000000',
    lineType: 'CONTINUOUS',
    width: 0.1,
    worked: true,
    meaning: 'outline: cut right through, last of all',
  },
]

const STYLES = new Map(LAYER_TABLE.map((style) => [style.kind, style]))

/** The row of the table for a kind of layer. */
export function styleOf(kind: LayerKind): LayerStyle {
  const style = STYLES.get(kind)
  if (style === undefined) throw new Error(`There is no layer for ${String(kind)}.`)
  return style
}

/** The unit of a file's numbers. Layer names say it only where it is not the millimetre. */
export type LengthUnit = 'mm' | 'inches'

/** A layer as one file has it. */
export interface LayerLabel {
  readonly name: string
  readonly kind: LayerKind
  readonly meaning: string
}

const MILLIMETRES_PER_INCH = 25.4

/** A depth or width as a word of a layer's name. */
function measure(length: number, what: string, { of }: Operation, unit: LengthUnit): string {
  if (!(length > 0)) throw new RangeError(`${what} of ${of} is ${length}: it must be more than nothing.`)
  if (!isWritable(length)) refuse(length, `${what} of ${of}`)
  return unit === 'mm' ? lengthLabel(length, what) : lengthLabel(length / MILLIMETRES_PER_INCH, what, 4)
}

/**
 * The layer on which an operation is drawn: its kind, and its depth where it has one.
 *
 * @param operation the operation, lengths in mm
 * @param unit the unit of the file; in inches a depth ends in `IN`
 * @throws RangeError if a depth or width is not a number above zero
 * @example layerOf({ kind: 'recess', depth: 3, … }, 'mm').name // 'RECESS-3.0'
 */
export function layerOf(operation: Operation, unit: LengthUnit): LayerLabel {
  const suffix = unit === 'mm' ? '' : 'IN'
  switch (operation.kind) {
    case 'cut': {
      const style = styleOf(operation.side === 'inside' ? 'cut-inside' : 'cut-outside')
      return { name: style.name, kind: style.kind, meaning: style.meaning }
    }
    case 'recess': {
      const depth = measure(operation.depth, 'Depth of the recess', operation, unit)
      const style = styleOf('recess')
      return {
        name: `${style.name}-${depth}${suffix}`,
        kind: 'recess',
        meaning: `${style.meaning}, ${bothUnits(operation.depth, 'Depth')} deep`,
      }
    }
    case 'drill': {
      const style = styleOf('drill')
      if (operation.depth === 'through') {
        return { name: `${style.name}-THROUGH`, kind: 'drill', meaning: `${style.meaning} right through` }
      }
      const depth = measure(operation.depth, 'Depth of the hole', operation, unit)
      return {
        name: `${style.name}-${depth}${suffix}`,
        kind: 'drill',
        meaning: `${style.meaning} ${bothUnits(operation.depth, 'Depth')} deep`,
      }
    }
    case 'slot': {
      const width = measure(operation.width, 'Width of the slot', operation, unit)
      const depth = measure(operation.depth, 'Depth of the slot', operation, unit)
      const style = styleOf('slot')
      return {
        name: `${style.name}-${width}x${depth}${suffix}`,
        kind: 'slot',
        meaning: `${style.meaning}, ${bothUnits(operation.width, 'Width')} wide, ${bothUnits(operation.depth, 'Depth')} deep`,
      }
    }
    case 'mark':
    case 'datum': {
      const style = styleOf(operation.kind)
      return { name: style.name, kind: style.kind, meaning: style.meaning }
    }
    case 'note': {
      const style = styleOf('notes')
      return { name: style.name, kind: style.kind, meaning: style.meaning }
    }
  }
}

/** The layer of the tabs that a router leaves: where its path lifts by `height` mm. */
export function tabLayer(height: number, unit: LengthUnit): LayerLabel {
  const operation = { kind: 'note', at: { x: 0, y: 0 }, height, text: '', turn: 0, of: 'a tab' } as const
  const tall = measure(height, 'Height', operation, unit)
  const { name } = styleOf('tab')
  return {
    name: `${name}-${tall}${unit === 'mm' ? '' : 'IN'}`,
    kind: 'tab',
    meaning: `tab: leave ${bothUnits(height, 'Height')} of wood standing along the line`,
  }
}

/** The layer of the edge of a sheet of stock. */
export const STOCK_EDGE: LayerLabel = {
  name: 'STOCK',
  kind: 'datum',
  meaning: 'edge of the sheet, never cut',
}

/** The layer of an outline that is left whole at its tabs, in open pieces. */
export const TABBED_OUTSIDE: LayerLabel = {
  name: 'TABBED-OUTSIDE',
  kind: 'cut-outside',
  meaning: 'outline in pieces: cut right through, whole between them, last of all',
}
