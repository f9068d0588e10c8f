/**
 * A narrow way into the DXF library.
 *
 * The library writes what it is given: `NaN` as a number, a line break in the middle of a string, a layer
 * named twice with the first one's entities lost. So nothing reaches it except through the few calls
 * here, which check, convert and name; and its text leaves only through the cures in `cures.ts`.
 */
import Drawing from 'dxf-writer'
import { type Bounds, bounds, type Chain, type Contour } from '../../geometry/index.ts'
import { around, type Words, wordsBox } from '../drawing/drawing.ts'
import { type LengthUnit, LINE_TYPES, type LineTypeName } from '../drawing/layers.ts'
import { soundContour } from '../drawing/soundContour.ts'
import { isWritable, numberText, refuse } from '../numbers.ts'
import { curedText } from './cures.ts'
import { dxfText, layerName } from './dxfWords.ts'

const MILLIMETRES_PER_INCH = 25.4

/** What a layer looks like: an ACI colour from 1 to 255 and one of our line types. */
export interface LayerLook {
  readonly colourIndex: number
  readonly lineType: LineTypeName
}

type LibraryPoint = [x: number, y: number, bulge?: number]

/** A DXF being written. Lengths go in as millimetres and come out in the unit of the file. */
export class GuardedDxf {
  readonly #unit: LengthUnit
  readonly #drawing = new Drawing()
  readonly #layers = new Map<string, string>()
  readonly #names = new Set<string>(['0'])
  readonly #boxes: Bounds[] = []
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
    this.#layers.set(name, written)
    this.#drawing.addLayer(written, look.colourIndex, look.lineType)
  }

  /** A circle as CIRCLE, a single straight line as LINE, every other chain as LWPOLYLINE with its bulges. */
  addContour(layer: string, contour: Contour): void {
    const sound = soundContour(contour, `A contour on ${layer}`, false)
    this.#open(layer)
    this.#boxes.push(bounds(sound))
    if (sound.shape === 'circle') {
      const { centre, radius } = sound
      this.#drawing.drawCircle(
        this.#scaled(centre.x, 'x of a centre'),
        this.#scaled(centre.y, 'y of a centre'),
        this.#scaled(radius, 'A radius'),
      )
      return
    }
    this.#addChain(sound)
  }

  /** A line of words as TEXT, left on its baseline. Nothing is written where no letter is left. */
  addWords(layer: string, words: Words): void {
    const text = dxfText(words.text)
    if (text === '') return
    if (!(words.height > 0))
      throw new RangeError(`The height of "${text}" is ${words.height}: letters need some.`)
    this.#open(layer)
    this.#boxes.push(wordsBox(words))
    const degrees = (words.turn * 180) / Math.PI
    this.#drawing.drawText(
      this.#scaled(words.at.x, `x of "${text}"`),
      this.#scaled(words.at.y, `y of "${text}"`),
      this.#scaled(words.height, `Height of "${text}"`),
      Number(numberText(((degrees % 360) + 360) % 360, `Turn of "${text}"`)),
      text,
    )
  }

  /**
   * The whole file. Only once: the library hands out new handles each time it is asked.
   *
   * @param comment the first line of the file
   */
  finish(comment: string): string {
    if (this.#finished) throw new Error('This DXF has been written already: begin another.')
    if (this.#boxes.length === 0) throw new Error('There is nothing to write into this DXF.')
    this.#finished = true
    const box = around(this.#boxes)
    const scale = this.#unit === 'mm' ? 1 : 1 / MILLIMETRES_PER_INCH
    return curedText(this.#drawing, {
      unit: this.#unit,
      comment: dxfText(comment),
      extent: {
        minX: box.minX * scale,
        minY: box.minY * scale,
        maxX: box.maxX * scale,
        maxY: box.maxY * scale,
      },
    })
  }

  #addChain(chain: Chain): void {
    const points = chain.vertices.map((vertex): LibraryPoint => {
      const x = this.#scaled(vertex.x, 'x of a point')
      const y = this.#scaled(vertex.y, 'y of a point')
      return vertex.bulge === 0 ? [x, y] : [x, y, vertex.bulge]
    })
    const [from, to] = points
    if (points.length === 2 && !chain.closed && from !== undefined && to !== undefined && from.length === 2) {
      this.#drawing.drawLine(from[0], from[1], to[0], to[1])
      return
    }
    // The library takes a bulge as a third number; its types do not say so.
    this.#drawing.drawPolyline(points as unknown as [number, number][], chain.closed)
  }

  /** An unknown layer would only fail later, at the first thing drawn on it. */
  #open(layer: string): void {
    const written = this.#layers.get(layer)
    if (written === undefined) throw new Error(`The layer "${layer}" has not been declared.`)
    this.#drawing.setActiveLayer(written)
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
}
