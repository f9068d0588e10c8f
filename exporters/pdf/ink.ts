/**
 * What is drawn on a sheet, as the content of a PDF (ISO 32000-1, 8 and 9): millimetres, y up, so that the part's
 * own sheet needs no turning over.
 *
 * The one guard between numbers and the file: each is finite and written without an exponent, or it throws.
 */
import {
  arcBetween,
  type Bounds,
  type Contour,
  isStraight,
  type Point,
  type Vertex,
} from '../../geometry/index.ts'
import { numberText } from '../numbers.ts'
import type { SetLine, Typeface } from './font/typeface.ts'

export interface Stroke {
  /** `#rrggbb` */
  readonly colour: string
  /** mm; never 0, which means "as thin as the machine can". */
  readonly width: number
  /** Dashes and gaps by turns, mm; none for a continuous line. */
  readonly dashes?: readonly number[]
}

export interface Lettering {
  readonly colour?: string
  /** Radians counter-clockwise about the start of the line. */
  readonly turn?: number
  readonly anchor?: 'start' | 'middle' | 'end'
}

/** A tenth of a micrometre. */
const DIGITS = 4

/** Widest piece of an arc drawn as one curve. */
const WIDEST_PIECE = Math.PI / 4

/** How far a curve may stray from its arc, mm: half of the micrometre that a template promises. */
const STRAYS = 0.0005

/**
 * The widest piece for a radius. A curve with the usual handles strays by 2/27 sin^6(a/4) / cos^2(a/4) of the radius,
 * which is the familiar 2.7e-4 for a quarter turn; so pieces of large arcs are narrower.
 */
const widestPiece = (radius: number): number =>
  Math.min(WIDEST_PIECE, 4 * ((27 / 2) * (STRAYS / radius)) ** (1 / 6))

export const INK = '#1a1a1a'
export const FAINT = '#5a5a5a'

const n = (value: number, what = 'A place on a sheet') => numberText(value, what, DIGITS)

/** Colours as a PDF writes them: a dozen, each asked for hundreds of times. */
const colours = new Map<string, string>()

function rgb(colour: string): string {
  let text = colours.get(colour)
  if (text === undefined) {
    const parts = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
    text = parts.map((part) => numberText(part, `The colour ${colour}`, 3)).join(' ')
    colours.set(colour, text)
  }
  return text
}

/** Writes the content of one sheet, or of one drawing used on several. */
export class Ink {
  readonly #lines: string[] = []
  readonly #typeface: Typeface
  readonly #used: Set<SetLine>

  /** @param used filled with every line written */
  constructor(typeface: Typeface, used: Set<SetLine>) {
    this.#typeface = typeface
    this.#used = used
  }

  /** What was drawn, as the text of a content stream. */
  get content(): string {
    return `${this.#lines.join('\n')}\n`
  }

  #op(text: string): void {
    this.#lines.push(text)
  }

  /** Draws within a moved, stretched and clipped world of its own. */
  within(change: { scale?: Point; move?: Point; clip?: Bounds }, draw: () => void): void {
    this.#op('q')
    if (change.scale) {
      const { x, y } = change.scale
      this.#op(`${numberText(x, 'A scale', 9)} 0 0 ${numberText(y, 'A scale', 9)} 0 0 cm`)
    }
    if (change.clip) {
      this.#rectangle(change.clip)
      this.#op('W n')
    }
    if (change.move) this.#op(`1 0 0 1 ${n(change.move.x)} ${n(change.move.y)} cm`)
    draw()
    this.#op('Q')
  }

  /** Content that another ink has drawn. */
  raw(content: string): void {
    this.#op(content.trimEnd())
  }

  /** Draws another content stream by the name under which the sheet knows it. */
  form(name: string): void {
    this.#op(`/${name} Do`)
  }

  #pen({ colour, width, dashes = [] }: Stroke): void {
    if (!(width > 0)) throw new RangeError(`A line ${width} mm wide cannot be drawn: it needs some width.`)
    this.#op(`${rgb(colour)} RG ${n(width)} w [${dashes.map((each) => n(each)).join(' ')}] 0 d`)
  }

  #rectangle({ minX, minY, maxX, maxY }: Bounds): void {
    this.#op(`${n(minX)} ${n(minY)} ${n(maxX - minX)} ${n(maxY - minY)} re`)
  }

  rectangle(box: Bounds, stroke: Stroke): void {
    this.#pen(stroke)
    this.#rectangle(box)
    this.#op('S')
  }

  fill(box: Bounds, colour: string): void {
    this.#op(`${rgb(colour)} rg`)
    this.#rectangle(box)
    this.#op('f')
  }

  /** Straight lines, each from a point to a point, with one stroke. */
  lines(pairs: readonly (readonly [Point, Point])[], stroke: Stroke): void {
    if (pairs.length === 0) return
    this.#pen(stroke)
    for (const [from, to] of pairs) this.#op(`${n(from.x)} ${n(from.y)} m ${n(to.x)} ${n(to.y)} l`)
    this.#op('S')
  }

  contours(contours: readonly Contour[], stroke: Stroke): void {
    if (contours.length === 0) return
    this.#pen(stroke)
    for (const contour of contours) {
      this.#path(contour)
      this.#op('S')
    }
  }

  /** Filled shapes without an edge. */
  areas(contours: readonly Contour[], colour: string): void {
    if (contours.length === 0) return
    this.#op(`${rgb(colour)} rg`)
    for (const contour of contours) {
      this.#path(contour)
      this.#op('f')
    }
  }

  /** Many filled rectangles at once, as a code has them. */
  boxes(boxes: readonly Bounds[], colour: string): void {
    if (boxes.length === 0) return
    this.#op(`${rgb(colour)} rg`)
    for (const box of boxes) this.#rectangle(box)
    this.#op('f')
  }

  #path(contour: Contour): void {
    if (contour.shape === 'circle') {
      const { centre, radius } = contour
      this.#op(`${n(centre.x + radius)} ${n(centre.y)} m`)
      this.#arc(centre, radius, 0, 2 * Math.PI)
      this.#op('h')
      return
    }
    const { vertices, closed } = contour
    const first = vertices[0]
    if (first === undefined) throw new Error('A line without points cannot be drawn.')
    this.#op(`${n(first.x)} ${n(first.y)} m`)
    for (const [index, from] of vertices.entries()) {
      const to = vertices[index + 1] ?? (closed ? first : undefined)
      if (to !== undefined) this.#segment(from, to)
    }
    if (closed) this.#op('h')
  }

  #segment(from: Vertex, to: Point): void {
    if (isStraight(from.bulge)) {
      this.#op(`${n(to.x)} ${n(to.y)} l`)
      return
    }
    const { centre, radius, startAngle, sweep } = arcBetween(from, to)
    // So flat that its centre is out of reach of numbers: a parabola, which one curve draws exactly.
    if (radius > 1e5) {
      const [dx, dy] = [to.x - from.x, to.y - from.y]
      const at = (share: number) => {
        const off = (from.bulge * 2) / 3
        return `${n(from.x + dx * share + dy * off)} ${n(from.y + dy * share - dx * off)}`
      }
      this.#op(`${at(1 / 3)} ${at(2 / 3)} ${n(to.x)} ${n(to.y)} c`)
      return
    }
    this.#arc(centre, radius, startAngle, sweep)
  }

  /** Curves along an arc: handles of 4/3 tan(sweep/4) of the radius (the usual fit, exact in ends and middle). */
  #arc({ x, y }: Point, radius: number, start: number, sweep: number): void {
    const count = Math.max(1, Math.ceil(Math.abs(sweep) / widestPiece(radius) - 1e-9))
    const piece = sweep / count
    const handle = (4 / 3) * Math.tan(piece / 4) * radius
    for (let index = 0; index < count; index++) {
      const [a, b] = [start + piece * index, start + piece * (index + 1)]
      const [ca, sa, cb, sb] = [Math.cos(a), Math.sin(a), Math.cos(b), Math.sin(b)]
      this.#op(
        [
          n(x + radius * ca - handle * sa),
          n(y + radius * sa + handle * ca),
          n(x + radius * cb + handle * sb),
          n(y + radius * sb - handle * cb),
          n(x + radius * cb),
          n(y + radius * sb),
          'c',
        ].join(' '),
      )
    }
  }

  /**
   * A line of words; signs that are lacking have been taken out before.
   *
   * @param size the em, mm
   */
  words(at: Point, size: number, text: string, look: Lettering = {}): void {
    if (text === '') return
    const line = this.#typeface.set(text)
    this.#used.add(line)
    const { codes, width } = line
    const { turn = 0, anchor = 'start', colour = INK } = look
    const back = anchor === 'start' ? 0 : (width * size) / (anchor === 'end' ? 1000 : 2000)
    const pen = `BT ${rgb(colour)} rg /F0 ${n(size, 'Size of words')} Tf`
    if (turn === 0) {
      this.#op(`${pen} ${n(at.x - back)} ${n(at.y)} Td <${codes}> Tj ET`)
      return
    }
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)]
    const turned = [cos, sin, -sin, cos].map((each) => numberText(each, 'Turn of words', 9)).join(' ')
    this.#op(`${pen} ${turned} ${n(at.x - back * cos)} ${n(at.y - back * sin)} Tm <${codes}> Tj ET`)
  }
}
