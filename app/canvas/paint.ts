/** Strokes, tints and words on a 2D context. Everything here is in pixels, or takes a frame that leads to them. */
import { type Contour, flatten, type Point } from '../../geometry/index.ts'
import { type Frame, toScreen } from './frame.ts'
import type { Looks } from './looks.ts'

export type Pen = CanvasRenderingContext2D

/** No curve strays from its steps by more than this on the screen, pixels. */
const CURVE_ERROR = 0.15

export interface Line {
  readonly stroke?: string
  readonly fill?: string
  readonly width?: number
  readonly dash?: number[]
}

/** Lays a contour down as the current path. */
export function trace(pen: Pen, frame: Frame, contour: Contour): void {
  pen.beginPath()
  addTo(pen, frame, contour)
}

/** The same, added to the path there is. */
export function addTo(pen: Pen, frame: Frame, contour: Contour): void {
  if (contour.shape === 'circle') {
    const at = toScreen(frame, contour.centre)
    const radius = contour.radius * frame.scale
    pen.moveTo(at.x + radius, at.y)
    pen.arc(at.x, at.y, radius, 0, 2 * Math.PI)
    return
  }
  flatten(contour, CURVE_ERROR / frame.scale).forEach((point, index) => {
    const at = toScreen(frame, point)
    if (index === 0) pen.moveTo(at.x, at.y)
    else pen.lineTo(at.x, at.y)
  })
  if (contour.closed) pen.closePath()
}

export function shape(pen: Pen, frame: Frame, contour: Contour, line: Line): void {
  trace(pen, frame, contour)
  finish(pen, line)
}

/** A rectangle between two corners of a frame. */
export function slab(
  pen: Pen,
  frame: Frame,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  line: Line,
): void {
  const a = toScreen(frame, { x: x0, y: y0 })
  const b = toScreen(frame, { x: x1, y: y1 })
  pen.beginPath()
  pen.rect(Math.min(a.x, b.x), Math.min(a.y, b.y), Math.abs(b.x - a.x), Math.abs(b.y - a.y))
  finish(pen, line)
}

export function path(pen: Pen, frame: Frame, points: readonly Point[], line: Line): void {
  pen.beginPath()
  points.forEach((point, index) => {
    const at = toScreen(frame, point)
    if (index === 0) pen.moveTo(at.x, at.y)
    else pen.lineTo(at.x, at.y)
  })
  finish(pen, line)
}

export function disc(pen: Pen, frame: Frame, centre: Point, radius: number, line: Line): void {
  shape(pen, frame, { shape: 'circle', centre, radius }, line)
}

/** A line between two pixels. */
export function stroke(pen: Pen, a: Point, b: Point, line: Line): void {
  pen.beginPath()
  pen.moveTo(a.x, a.y)
  pen.lineTo(b.x, b.y)
  finish(pen, line)
}

export function finish(pen: Pen, { stroke: colour, fill, width = 1, dash }: Line): void {
  if (fill) {
    pen.fillStyle = fill
    pen.fill()
  }
  if (colour) {
    pen.strokeStyle = colour
    pen.lineWidth = width
    pen.setLineDash(dash ?? [])
    pen.stroke()
    if (dash) pen.setLineDash([])
  }
}

export interface Words {
  readonly colour: string
  readonly size?: number
  readonly bold?: boolean
  readonly align?: CanvasTextAlign
  readonly base?: CanvasTextBaseline
  /** Paint behind the words, so that they can be read over lines. */
  readonly behind?: string
  /** Radians, clockwise on the screen. */
  readonly turn?: number
}

/** Writes words at a pixel. */
export function write(pen: Pen, looks: Looks, text: string, at: Point, words: Words): void {
  const {
    colour,
    size: given = 12,
    bold = false,
    align = 'left',
    base = 'alphabetic',
    behind,
    turn = 0,
  } = words
  const size = given * looks.words
  // A pen that is put back forgets its font, and reading it anew costs as much as the writing.
  if (turn !== 0) {
    pen.save()
    pen.translate(at.x, at.y)
    pen.rotate(turn)
  }
  const { x, y } = turn === 0 ? at : ORIGIN
  const { globalAlpha } = pen
  if (behind) {
    const width = wide(pen, looks, text, given, bold)
    const left = align === 'center' ? -width / 2 : align === 'right' || align === 'end' ? -width : 0
    const top = base === 'middle' ? -size / 2 : base === 'top' ? 0 : -size * 0.85
    pen.fillStyle = behind
    pen.globalAlpha = 0.88
    pen.fillRect(x + left - 3, y + top - 2, width + 6, size + 4)
    pen.globalAlpha = 1
  }
  pen.font = fontOf(looks, given, bold)
  pen.textAlign = align
  pen.textBaseline = base
  pen.fillStyle = colour
  pen.fillText(text, x, y)
  if (behind) pen.globalAlpha = globalAlpha
  if (turn !== 0) pen.restore()
}

const ORIGIN: Point = { x: 0, y: 0 }

const fontOf = (looks: Looks, size: number, bold: boolean): string =>
  `${bold ? '600 ' : ''}${size * looks.words}px ${looks.font}`

/** How wide words are, pixels. */
export function wide(pen: Pen, looks: Looks, text: string, size = 12, bold = false): number {
  const font = fontOf(looks, size, bold)
  // A length that runs under the hand has other digits in every frame, and mostly the same width.
  return widthOf(pen, font, digitsAlike(pen, font) ? text.replace(DIGITS, '0') : text)
}

const DIGITS = /[1-9]/g

/** Are all digits of a font as wide as each other, as in nearly all of them? */
function digitsAlike(pen: Pen, font: string): boolean {
  const zero = widthOf(pen, font, '0000000000')
  return Math.abs(zero - widthOf(pen, font, '1234567890')) < 0.01 * zero
}

function widthOf(pen: Pen, font: string, text: string): number {
  const key = `${font} ${text}`
  const known = widths.get(key)
  if (known !== undefined) return known
  if (widths.size > MOST_WIDTHS) widths.clear()
  pen.font = font
  const { width } = pen.measureText(text)
  // Until its letters are there a font measures as another one.
  if (document.fonts?.status === 'loaded') widths.set(key, width)
  return width
}

/** The same few words are asked for in every frame, and each asking costs the page a look at its styles. */
const widths = new Map<string, number>()
const MOST_WIDTHS = 2000

/** Fills the current path with slanting lines: one way, or both ways crossed. Pixels apart. */
export function hatch(
  pen: Pen,
  box: { minX: number; minY: number; maxX: number; maxY: number },
  colour: string,
  crossed: boolean,
): void {
  const gap = 6
  const tall = box.maxY - box.minY
  pen.save()
  pen.clip()
  pen.beginPath()
  for (let x = box.minX - tall; x <= box.maxX + gap; x += gap) {
    pen.moveTo(x, box.maxY)
    pen.lineTo(x + tall, box.minY)
    if (crossed) {
      pen.moveTo(x, box.minY)
      pen.lineTo(x + tall, box.maxY)
    }
  }
  finish(pen, { stroke: colour, width: 1.1 })
  pen.restore()
}

/** Two short strokes across a centre, as a drill wants them. */
export function cross(pen: Pen, at: Point, half: number, line: Line): void {
  stroke(pen, { x: at.x - half, y: at.y }, { x: at.x + half, y: at.y }, line)
  stroke(pen, { x: at.x, y: at.y - half }, { x: at.x, y: at.y + half }, line)
}

/** A short measured line with a dot at each end. */
export function dimension(pen: Pen, a: Point, b: Point, colour: string): void {
  stroke(pen, a, b, { stroke: colour, width: 1 })
  for (const end of [a, b]) {
    pen.beginPath()
    pen.arc(end.x, end.y, 2.2, 0, 2 * Math.PI)
    pen.fillStyle = colour
    pen.fill()
  }
}
