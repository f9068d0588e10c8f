/**
 * A DXF of release 12 (AC1009), for machines too old for anything younger: written by hand, since it is short.
 *
 * No handles, no subclasses, no LWPOLYLINE: chains are POLYLINE, VERTEX and SEQEND. Names of layers have at most 31
 * characters of A to Z, digits, `$`, `-` and `_`. HEADER and TABLES are written though the format could do without:
 * some readers cannot. Source of the codes: Autodesk DXF Reference, release 12, and the ezdxf manual, "DXF file
 * structure".
 */
import { type Bounds, bounds, type Chain, type Contour, type Point } from '../../geometry/index.ts'
import { boxOfNothing, stretch, type Words, wordsBox } from '../drawing/drawing.ts'
import { type LengthUnit, LINE_TYPES } from '../drawing/layers.ts'
import { BULGE_DIGITS, DEGREE_DIGITS, isWritable, lengthLabel, refuse } from '../numbers.ts'
import { dxfText } from './dxfWords.ts'
import { realText } from './fileFacts.ts'
import type { DxfFile, LayerLook } from './guard.ts'

const MILLIMETRES_PER_INCH = 25.4
const LONGEST_NAME = 31
const NOT_SHIFTED: Point = { x: 0, y: 0 }

/** Group 70 of `$INSUNITS`: younger than the release, and read by all the same. */
const UNIT_CODE = { mm: '4', inches: '1' } as const

type Pair = readonly [code: number, value: string]

const written = (pairs: readonly Pair[]): string =>
  pairs.map(([code, value]) => `${code}\n${value}`).join('\n')

/** A DXF of release 12 being written. Lengths go in as millimetres and come out in the unit of the file. */
export class R12Dxf implements DxfFile {
  readonly #unit: LengthUnit
  /** By the names asked for, those written. */
  readonly #names = new Map<string, string>()
  readonly #layers: Pair[][] = []
  readonly #entities: string[] = []
  readonly #extent = boxOfNothing()

  constructor(unit: LengthUnit) {
    this.#unit = unit
  }

  declareLayer(name: string, { colourIndex, lineType }: LayerLook): void {
    if (this.#names.has(name)) return
    const plain = this.#unusedName(r12Name(name))
    this.#names.set(name, plain)
    this.#layers.push([
      [0, 'LAYER'],
      [2, plain],
      [70, '0'],
      [62, String(colourIndex)],
      [6, lineType],
    ])
  }

  addContour(layer: string, contour: Contour, shift: Point = NOT_SHIFTED): void {
    const on = this.#layer(layer)
    if (contour.shape === 'circle') {
      const { centre, radius } = contour
      this.#add([[0, 'CIRCLE'], [8, on], ...this.#point(centre, shift), [40, this.#real(radius, 'A radius')]])
    } else this.#addChain(on, contour, shift)
    stretch(this.#extent, bounds(contour), shift.x, shift.y)
  }

  addWords(layer: string, words: Words, shift: Point = NOT_SHIFTED): void {
    const text = dxfText(words.text)
    if (text === '') return
    const degrees = ((((words.turn * 180) / Math.PI) % 360) + 360) % 360
    this.#add([
      [0, 'TEXT'],
      [8, this.#layer(layer)],
      ...this.#point(words.at, shift),
      [40, this.#real(words.height, 'Height of words')],
      [1, text],
      [50, lengthLabel(degrees, 'Turn of words', DEGREE_DIGITS)],
      [7, 'STANDARD'],
    ])
    stretch(this.#extent, wordsBox(words), shift.x, shift.y)
  }

  finish(comment: string): string {
    const { minX, maxX } = this.#extent
    if (minX > maxX) throw new Error('There is nothing to write into this DXF.')
    const parts = [
      written([
        [999, dxfText(comment)],
        ...this.#header(),
        ...this.#tables(),
        [0, 'SECTION'],
        [2, 'ENTITIES'],
      ]),
      ...this.#entities,
      written([
        [0, 'ENDSEC'],
        [0, 'EOF'],
      ]),
    ]
    return `${parts.join('\n')}\n`
  }

  #header(): Pair[] {
    const corner = (name: string, x: number, y: number, levels: boolean): Pair[] => [
      [9, name],
      [10, this.#real(x, `x of ${name}`)],
      [20, this.#real(y, `y of ${name}`)],
      ...(levels ? ([[30, '0.0']] as const) : []),
    ]
    const { minX, minY, maxX, maxY }: Bounds = this.#extent
    return [
      [0, 'SECTION'],
      [2, 'HEADER'],
      [9, '$ACADVER'],
      [1, 'AC1009'],
      ...corner('$INSBASE', 0, 0, true),
      ...corner('$EXTMIN', minX, minY, true),
      ...corner('$EXTMAX', maxX, maxY, true),
      ...corner('$LIMMIN', minX, minY, false),
      ...corner('$LIMMAX', maxX, maxY, false),
      [9, '$LUNITS'],
      [70, '2'],
      [9, '$INSUNITS'],
      [70, UNIT_CODE[this.#unit]],
      [9, '$MEASUREMENT'],
      [70, this.#unit === 'mm' ? '1' : '0'],
      [0, 'ENDSEC'],
    ]
  }

  #tables(): Pair[] {
    const lineTypes = Object.values(LINE_TYPES).map(({ name, pattern }): Pair[] => {
      const lengths = pattern.map((length) => length / (this.#unit === 'mm' ? 1 : MILLIMETRES_PER_INCH))
      const total = lengths.reduce((sum, length) => sum + length, 0)
      const real = (value: number) => realText(value, `A dash of ${name}`, this.#unit)
      return [
        [0, 'LTYPE'],
        [2, name],
        [70, '0'],
        [3, name],
        [72, '65'],
        [73, String(pattern.length)],
        [40, real(total)],
        ...lengths.map((length, index): Pair => [49, real(index % 2 === 0 ? length : -length)]),
      ]
    })
    const zero: Pair[] = [
      [0, 'LAYER'],
      [2, '0'],
      [70, '0'],
      [62, '7'],
      [6, 'CONTINUOUS'],
    ]
    const standard: Pair[] = [
      [0, 'STYLE'],
      [2, 'STANDARD'],
      [70, '0'],
      [40, '0.0'],
      [41, '1.0'],
      [50, '0.0'],
      [71, '0'],
      [42, '1.0'],
      [3, 'txt'],
      [4, ''],
    ]
    return [
      [0, 'SECTION'],
      [2, 'TABLES'],
      ...table('LTYPE', lineTypes),
      ...table('LAYER', [zero, ...this.#layers]),
      ...table('STYLE', [standard]),
      [0, 'ENDSEC'],
    ]
  }

  #addChain(on: string, { vertices, closed }: Chain, shift: Point): void {
    const [from, to] = vertices
    if (from === undefined || to === undefined) {
      throw new Error(`A chain of ${vertices.length} points cannot be drawn: two are needed.`)
    }
    if (!closed && vertices.length === 2 && from.bulge === 0) {
      const [x, y, z] = this.#point(to, shift)
      const end: Pair[] = [
        [11, x[1]],
        [21, y[1]],
        [31, z[1]],
      ]
      this.#add([[0, 'LINE'], [8, on], ...this.#point(from, shift), ...end])
      return
    }
    this.#add([
      [0, 'POLYLINE'],
      [8, on],
      [66, '1'],
      [10, '0.0'],
      [20, '0.0'],
      [30, '0.0'],
      [70, closed ? '1' : '0'],
      ...vertices.flatMap((vertex): Pair[] => [
        [0, 'VERTEX'],
        [8, on],
        ...this.#point(vertex, shift),
        ...(vertex.bulge === 0 ? [] : [[42, lengthLabel(vertex.bulge, 'A bulge', BULGE_DIGITS)] as const]),
      ]),
      [0, 'SEQEND'],
      [8, on],
    ])
  }

  #point({ x, y }: Point, shift: Point): [Pair, Pair, Pair] {
    return [
      [10, this.#real(x + shift.x, 'x of a point')],
      [20, this.#real(y + shift.y, 'y of a point')],
      [30, '0.0'],
    ]
  }

  #real(millimetres: number, what: string): string {
    if (!isWritable(millimetres)) refuse(millimetres, what)
    return realText(this.#unit === 'mm' ? millimetres : millimetres / MILLIMETRES_PER_INCH, what, this.#unit)
  }

  #add(pairs: readonly Pair[]): void {
    this.#entities.push(written(pairs))
  }

  #layer(name: string): string {
    const plain = this.#names.get(name)
    if (plain === undefined) throw new Error(`The layer "${name}" has not been declared.`)
    return plain
  }

  #unusedName(name: string): string {
    const taken = new Set([...this.#names.values(), '0'])
    let candidate = name
    for (let number = 2; taken.has(candidate); number++) {
      const end = `-${number}`
      candidate = `${name.slice(0, LONGEST_NAME - end.length)}${end}`
    }
    return candidate
  }
}

function table(name: string, records: readonly (readonly Pair[])[]): Pair[] {
  return [[0, 'TABLE'], [2, name], [70, String(records.length)], ...records.flat(), [0, 'ENDTAB']]
}

/**
 * The name of a layer as release 12 can hold it.
 *
 * @throws when nothing is left of the name
 * @example r12Name('RECESS-3.0') // 'RECESS-3_0'
 */
export function r12Name(name: string): string {
  const plain = dxfText(name)
    .toUpperCase()
    .replace(/[^A-Z0-9$_-]+/g, '_')
    .slice(0, LONGEST_NAME)
  if (plain.replace(/_/g, '') === '')
    throw new Error(`"${name}" leaves nothing for the name of a layer: letters or digits are needed.`)
  return plain
}
