/**
 * A narrow way into the DXF library.
 *
 * The library writes what it is given: `NaN` as a number, a line break in the middle of a string, a layer
 * named twice with the first one's entities lost. So nothing reaches it except through the few calls
 * here, which check, convert and name; and its text leaves only through the cures in `cures.ts`.
 */
import Drawing from 'dxf-writer'
import {
  type Bounds,
  bounds,
  type Chain,
  type Circle,
  type Contour,
  type Point,
} from '../../geometry/index.ts'
import { boxOfNothing, stretch, type Words, wordsBox } from '../drawing/drawing.ts'
import { type LengthUnit, LINE_TYPES, type LineTypeName } from '../drawing/layers.ts'
import { BULGE_DIGITS, DEGREE_DIGITS, isWritable, lengthLabel, refuse } from '../numbers.ts'
import { curedText } from './cures.ts'
import { dxfText, layerName } from './dxfWords.ts'
import { circleEntity, lineEntity, polylineEntity, textEntity, vertexLines } from './entities.ts'
import { realText } from './fileFacts.ts'
import { type Entity, insidesOf, type Layer } from './library.ts'

const MILLIMETRES_PER_INCH = 25.4

/** What a coordinate is, for errors. */
const X = 'x of a point'
const Y = 'y of a point'

const NOT_SHIFTED: Point = { x: 0, y: 0 }

/** What a layer looks like: an ACI colour from 1 to 255 and one of our line types. */
export interface LayerLook {
  readonly colourIndex: number
  readonly lineType: LineTypeName
}

/** A DXF being written, in whichever release. Lengths go in as millimetres. */
export interface DxfFile {
  declareLayer(name: string, look: LayerLook): void
  addContour(layer: string, contour: Contour, shift?: Point): void
  addWords(layer: string, words: Words, shift?: Point): void
  /** The whole file. @param comment its first line */
  finish(comment: string): string
}

/** A DXF being written. Lengths go in as millimetres and come out in the unit of the file. */
export class GuardedDxf implements DxfFile {
  readonly #unit: LengthUnit
  readonly #drawing = new Drawing()
  readonly #layers = new Map<string, Layer>()
  readonly #names = new Set<string>(['0'])
  /** The box of all that has been added, mm. */
  readonly #extent = boxOfNothing()
  #finished = false

  /** @param unit the unit of the file's numbers, stated in its header */
  constructor(unit: LengthUnit) {
    if (unit !== 'mm' && unit !== 'inches') {
      throw new Error(`"${String(unit)}" is not a unit for a DXF: 'mm' or 'inches'.`)
    }
    this.#unit = unit
    for (const { name, pattern } of Object.values(LINE_TYPES)) {
      const elements = pattern.map((length, index) => (index % 2 === 0 ? 1 : -1) * this.#scaled(length, name))
      this.#drawing.addLineType(name, name, elements)
    }
  }

  /** The library declares anew a layer it already has, and its entities are gone: each is declared once. */
  declareLayer(name: string, look: LayerLook): void {
    if (this.#layers.has(name)) return
    if (!Number.isInteger(look.colourIndex) || look.colourIndex < 1 || look.colourIndex > 255) {
      throw new RangeError(`Colour ${look.colourIndex} of the layer "${name}" is not an index from 1 to 255.`)
    }
    if (LINE_TYPES[look.lineType] === undefined) {
      throw new Error(
        `The layer "${name}" asks for the line type "${String(look.lineType)}", which is not declared.`,
      )
    }
    const written = this.#unusedName(layerName(name))
    this.#drawing.addLayer(written, look.colourIndex, look.lineType)
    const layer = insidesOf(this.#drawing).layers[written]
    if (layer !== undefined) this.#layers.set(name, layer)
  }

  /**
   * A circle as CIRCLE, a single straight line as LINE, every other chain as LWPOLYLINE with its bulges.
   *
   * @param contour sound, as `soundContour` leaves it, mm
   * @param shift mm, added to every point
   */
  addContour(layer: string, contour: Contour, shift: Point = NOT_SHIFTED): void {
    const entity = contour.shape === 'circle' ? this.#circle(contour, shift) : this.#chain(contour, shift)
    this.#add(layer, entity, bounds(contour), shift)
  }

  /** A line of words as TEXT, left on its baseline. Nothing is written where no letter is left. */
  addWords(layer: string, words: Words, shift: Point = NOT_SHIFTED): void {
    const text = dxfText(words.text)
    if (text === '') return
    const { at, height, turn } = words
    if (!(height > 0)) throw new RangeError(`The height of "${text}" is ${height}: letters need some.`)
    const degrees = (turn * 180) / Math.PI
    const entity = textEntity(
      this.#text(at.x + shift.x, 'x of words'),
      this.#text(at.y + shift.y, 'y of words'),
      this.#text(height, 'Height of words'),
      lengthLabel(((degrees % 360) + 360) % 360, 'Turn of words', DEGREE_DIGITS),
      text,
    )
    this.#add(layer, entity, wordsBox(words), shift)
  }

  /**
   * The whole file. Only once: the library hands out new handles each time it is asked.
   *
   * @param comment the first line of the file
   */
  finish(comment: string): string {
    if (this.#finished) throw new Error('This DXF has been written already: begin another.')
    const { minX, minY, maxX, maxY } = this.#extent
    if (minX > maxX) throw new Error('There is nothing to write into this DXF.')
    this.#finished = true
    const scale = this.#unit === 'mm' ? 1 : 1 / MILLIMETRES_PER_INCH
    return curedText(this.#drawing, {
      unit: this.#unit,
      comment: dxfText(comment),
      extent: { minX: minX * scale, minY: minY * scale, maxX: maxX * scale, maxY: maxY * scale },
    })
  }

  #circle({ centre, radius }: Circle, shift: Point): Entity {
    return circleEntity(
      this.#text(centre.x + shift.x, 'x of a centre'),
      this.#text(centre.y + shift.y, 'y of a centre'),
      this.#text(radius, 'A radius'),
    )
  }

  #chain({ vertices, closed }: Chain, shift: Point): Entity {
    const [from, to] = vertices
    if (from === undefined || to === undefined) {
      throw new Error(`A chain of ${vertices.length} points cannot be drawn: two are needed.`)
    }
    if (!closed && vertices.length === 2 && from.bulge === 0) {
      const { x, y } = shift
      return lineEntity(
        this.#text(from.x + x, X),
        this.#text(from.y + y, Y),
        this.#text(to.x + x, X),
        this.#text(to.y + y, Y),
      )
    }
    let points = ''
    for (const { x, y, bulge } of vertices) {
      const bend = bulge === 0 ? '' : lengthLabel(bulge, 'A bulge', BULGE_DIGITS)
      points += vertexLines(this.#text(x + shift.x, X), this.#text(y + shift.y, Y), bend)
    }
    return polylineEntity(vertices.length, closed, points)
  }

  /** An unknown layer is refused at once. */
  #add(name: string, entity: Entity, box: Bounds, shift: Point): void {
    const layer = this.#layers.get(name)
    if (layer === undefined) throw new Error(`The layer "${name}" has not been declared.`)
    layer.addShape(entity)
    stretch(this.#extent, box, shift.x, shift.y)
  }

  /** Readers take `Cut` and `CUT` for one layer, so names must differ in more than case. */
  #unusedName(name: string): string {
    let candidate = name
    for (let number = 2; this.#names.has(candidate.toUpperCase()); number++) candidate = `${name}-${number}`
    this.#names.add(candidate.toUpperCase())
    return candidate
  }

  #scaled(millimetres: number, what: string): number {
    if (!isWritable(millimetres)) refuse(millimetres, what)
    return this.#unit === 'mm' ? millimetres : millimetres / MILLIMETRES_PER_INCH
  }

  #text(millimetres: number, what: string): string {
    return realText(this.#scaled(millimetres, what), what, this.#unit)
  }
}
