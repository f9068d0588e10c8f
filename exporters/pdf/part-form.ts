/** A part as it is drawn on its sheets: once in the file, shown through a window on each of them. */
import { type Circle, type Contour, line, type Point } from '../../geometry/index.ts'
import type { Drawing, Layer } from '../drawing/drawing.ts'
import { type LayerStyle, LINE_TYPES, styleOf } from '../drawing/layers.ts'
import { CAPITAL_HEIGHT } from '../words/width.ts'
import type { Ink, Stroke } from './ink.ts'
import type { Wording } from './words.ts'

/** How far the arms of a cross reach beyond the hole, mm. */
const BEYOND_HOLE = 1

/** Narrowest line on paper, mm: a printer of 300 dots to the inch still draws it. */
const LEAST_LINE = 0.12

export function strokeOf({ ink, width, lineType }: LayerStyle): Stroke {
  return { colour: ink, width: Math.max(width, LEAST_LINE), dashes: LINE_TYPES[lineType].pattern }
}

/** The crosses on holes to drill. */
export const CENTRE_STROKE: Stroke = { colour: styleOf('datum').ink, width: LEAST_LINE }

/** A cross whose arms have a length. */
export function crossAt({ x, y }: Point, arm: number): readonly (readonly [Point, Point])[] {
  return [
    [
      { x: x - arm, y },
      { x: x + arm, y },
    ],
    [
      { x, y: y - arm },
      { x, y: y + arm },
    ],
  ]
}

/** One circle for each place that is drilled, the widest there. */
export function drilled(layers: readonly Layer[]): Circle[] {
  const widest: Circle[] = []
  for (const hole of layers.filter((layer) => layer.kind === 'drill').flatMap((layer) => layer.contours)) {
    if (hole.shape !== 'circle') continue
    const same = widest.findIndex(
      ({ centre }) => Math.hypot(centre.x - hole.centre.x, centre.y - hole.centre.y) < 1e-3,
    )
    const there = widest[same]
    if (there === undefined) widest.push(hole)
    else if (there.radius < hole.radius) widest[same] = hole
  }
  return widest
}

/** Whether the drawing holds a line to measure from along the whole part, at its middle. */
function hasCentreline({ layers, outline }: Drawing): boolean {
  const middle = (outline.minY + outline.maxY) / 2
  const long = (contour: Contour) =>
    contour.shape === 'chain' &&
    contour.vertices.every((vertex) => Math.abs(vertex.y - middle) < 0.5) &&
    Math.max(...contour.vertices.map((vertex) => vertex.x)) -
      Math.min(...contour.vertices.map((vertex) => vertex.x)) >
      0.9 * (outline.maxX - outline.minX)
  return layers.some((layer) => layer.kind === 'datum' && layer.contours.some(long))
}

export interface FormOptions {
  /** From where to where a line to join sheets on runs, along x at the part's middle; none for a part on one sheet. */
  readonly joinLine?: readonly [from: number, to: number] | undefined
}

/** Draws every layer of a part where the part has it. */
export function drawForm(ink: Ink, wording: Wording, drawing: Drawing, options: FormOptions = {}): void {
  const { layers, outline } = drawing
  const datum = strokeOf(styleOf('datum'))
  if (options.joinLine) {
    const [from, to] = options.joinLine
    const y = (outline.minY + outline.maxY) / 2
    const ends: [Point, Point][] = hasCentreline(drawing)
      ? [
          [
            { x: from, y },
            { x: outline.minX, y },
          ],
          [
            { x: outline.maxX, y },
            { x: to, y },
          ],
        ]
      : [
          [
            { x: from, y },
            { x: to, y },
          ],
        ]
    ink.lines(
      ends.filter(([a, b]) => b.x - a.x > 0.1),
      datum,
    )
  }
  ink.lines(
    drilled(layers).flatMap(({ centre, radius }) => crossAt(centre, radius + BEYOND_HOLE)),
    CENTRE_STROKE,
  )
  for (const layer of layers) {
    const style = styleOf(layer.kind)
    ink.contours(layer.contours, strokeOf(style))
    for (const { at, height, turn, text } of layer.words) {
      const size = height / CAPITAL_HEIGHT
      wording.write(ink, at, size, text, Number.POSITIVE_INFINITY, { turn, colour: style.ink })
    }
  }
}

/** A short piece of a layer's line, for a key. */
export function swatch(ink: Ink, style: LayerStyle, at: Point, length: number): void {
  ink.contours([line(at, { x: at.x + length, y: at.y })], strokeOf(style))
}
