/**
 * A picture as data: lines and words on a piece of paper of known size. Millimetres on paper, x to the right, y up from
 * the lower left corner. The SVG of the page, the PDF and the screen draw the same picture.
 */
import {
  type Bounds,
  type Chain,
  type Contour,
  line,
  type Point,
  polygon,
  rectangle,
} from '../../../geometry/index.ts'
import type { Table } from '../../tables/table.ts'

/** Line types after ISO 128-2: what a line means decides how it looks. */
export type Stroke =
  /** Thick continuous: visible edges. */
  | 'outline'
  /** Thin continuous: dimension and extension lines, graticules. */
  | 'thin'
  /** Thin dashed: what lies under. */
  | 'hidden'
  /** Thin long-dash-dot: centrelines. */
  | 'centre'
  /** Thick, of the second kind: what a cut, a string or a curve is. */
  | 'strong'
  /** Broken in another way, to tell a second curve from the first. */
  | 'dotted'

export type Fill = 'none' | 'wood' | 'dark' | 'paper' | 'ink'

/** Black squares side by side, as a code has them: rows from above, `true` is black. */
export interface Squares {
  readonly kind: 'squares'
  /** Upper left corner. */
  readonly at: Point
  /** Side of one square. */
  readonly side: number
  readonly rows: readonly (readonly boolean[])[]
}

export type Shape =
  | Squares
  | { readonly kind: 'line'; readonly contour: Contour; readonly stroke: Stroke; readonly fill?: Fill }
  /** A filled shape without an edge: arrowheads, bars. */
  | { readonly kind: 'area'; readonly contour: Contour; readonly fill: Fill }
  | {
      readonly kind: 'text'
      /** Where the baseline is anchored. */
      readonly at: Point
      readonly text: string
      /** The em, mm. */
      readonly size: number
      readonly anchor: 'start' | 'middle' | 'end'
      /** A quarter turn counter-clockwise: read from the right. */
      readonly upright: boolean
      readonly bold: boolean
    }

export interface Picture {
  /** Stable, file-name safe: `lid`. */
  readonly id: string
  readonly title: string
  /** What it shows, for whoever hears it. */
  readonly description: string
  readonly width: number
  readonly height: number
  readonly shapes: readonly Shape[]
  /** Below the picture: its scale, what letters mean, what it leaves out. */
  readonly caption: string
  /** The same in figures. */
  readonly table?: Table
}

/** Widest picture: an A4 or Letter page less the margins of any printer. */
export const PICTURE_WIDTH = 176

/** Tallest picture: what is left of a Letter page below a heading. */
export const PICTURE_HEIGHT = 205

/** Size of the words of a picture, mm: capitals of 2.3 mm. */
export const WORDS = 3.2

/** Scales drawn at, the largest that fits; those of ISO 5455 and steps between for long necks. */
const SCALES = [1, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50]

/** One to how much fits a length into some room, mm. */
export function scaleFor(length: number, room: number): number {
  return SCALES.find((scale) => length / scale <= room) ?? Math.ceil(length / room)
}

export const stroke = (contour: Contour, kind: Stroke, fill: Fill = 'none'): Shape => ({
  kind: 'line',
  contour,
  stroke: kind,
  fill,
})
export const segment = (from: Point, to: Point, kind: Stroke): Shape => stroke(line(from, to), kind)
export const area = (contour: Contour, fill: Fill): Shape => ({ kind: 'area', contour, fill })

export interface TextLook {
  readonly size?: number
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly upright?: boolean
  readonly bold?: boolean
}

export const words = (at: Point, text: string, look: TextLook = {}): Shape => ({
  kind: 'text',
  at,
  text,
  size: look.size ?? WORDS,
  anchor: look.anchor ?? 'start',
  upright: look.upright ?? false,
  bold: look.bold ?? false,
})

/** A contour made smaller or larger about the origin, then moved. Bulges stay: an arc is an arc at every scale. */
export function scaled(contour: Contour, factor: number, dx: number, dy: number): Contour {
  const at = ({ x, y }: Point): Point => ({ x: x * factor + dx, y: y * factor + dy })
  if (contour.shape === 'circle')
    return { shape: 'circle', centre: at(contour.centre), radius: contour.radius * factor }
  return { ...contour, vertices: contour.vertices.map((one) => ({ ...at(one), bulge: one.bulge })) }
}

/** A chain of straight lines through points; `null` where there is nothing to draw. */
export function through(points: readonly Point[]): Chain | null {
  const apart = points.filter((point, index) => {
    const before = points[index - 1]
    return !before || Math.hypot(point.x - before.x, point.y - before.y) > 1e-6
  })
  if (apart.length < 2) return null
  return { shape: 'chain', closed: false, vertices: apart.map((point) => ({ ...point, bulge: 0 })) }
}

/** A rectangle, or `null` where it is too thin to draw. */
export function box(minX: number, minY: number, maxX: number, maxY: number): Chain | null {
  return maxX - minX > 1e-3 && maxY - minY > 1e-3 ? rectangle(minX, minY, maxX, maxY) : null
}

/** Length and width of an arrowhead: closed and filled, about 20° (ISO 129-1 allows 15° to 90°). */
const HEAD = 2.3
const HEAD_WIDTH = 0.8

/** An arrowhead with its tip at a point, pointing along a unit vector. */
export function arrowhead(tip: Point, along: Point): Shape {
  const back = { x: tip.x - along.x * HEAD, y: tip.y - along.y * HEAD }
  const side = { x: (-along.y * HEAD_WIDTH) / 2, y: (along.x * HEAD_WIDTH) / 2 }
  return area(
    polygon([tip, { x: back.x + side.x, y: back.y + side.y }, { x: back.x - side.x, y: back.y - side.y }]),
    'ink',
  )
}

/** Shapes that may be missing, put together. */
export const some = (...shapes: readonly (Shape | null | undefined)[]): Shape[] =>
  shapes.filter((one): one is Shape => one != null)

/** Shapes moved on their paper. */
export function shifted(shapes: readonly Shape[], dx: number, dy: number): Shape[] {
  return shapes.map((one) =>
    one.kind === 'text' || one.kind === 'squares'
      ? { ...one, at: { x: one.at.x + dx, y: one.at.y + dy } }
      : { ...one, contour: scaled(one.contour, 1, dx, dy) },
  )
}

export const widthOf = ({ minX, maxX }: Bounds): number => maxX - minX
export const heightOf = ({ minY, maxY }: Bounds): number => maxY - minY

/** A run of black squares: its first column, its row from above, and how many squares it has. */
export interface Run {
  readonly column: number
  readonly row: number
  readonly length: number
}

/** The runs of black squares, row by row: what is drawn of a code, in squares and not in millimetres. */
export function runsOf({ rows }: Squares): Run[] {
  return rows.flatMap((squares, row) => {
    const runs: Run[] = []
    let from = squares.indexOf(true)
    while (from >= 0) {
      const white = squares.indexOf(false, from)
      const to = white < 0 ? squares.length : white
      runs.push({ column: from, row, length: to - from })
      from = squares.indexOf(true, to)
    }
    return runs
  })
}

/** The same as the data of an SVG path with squares of 1, y down from the upper left corner. */
export const runsPath = (squares: Squares): string =>
  runsOf(squares)
    .map(({ column, row, length }) => `M${column} ${row}h${length}v1h-${length}z`)
    .join('')
