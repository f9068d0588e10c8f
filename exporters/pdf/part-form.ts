/** A part as it is drawn on its sheets: once in the file, shown through a window on each of them. */
import { type Contour, line, type Point } from '../../geometry/index.ts'
import type { Drawing } from '../drawing/drawing.ts'
import { drillCrosses } from '../drawing/drilled.ts'
import { type LayerStyle, LINE_TYPES, styleOf } from '../drawing/layers.ts'
import { CAPITAL_HEIGHT } from '../words/width.ts'
import type { Ink, Stroke } from './ink.ts'
import type { Span } from './seams.ts'
import type { Wording } from './words.ts'

/** Narrowest line on paper, mm: a printer of 300 dots to the inch still draws it. */
const LEAST_LINE = 0.12

export function strokeOf({ ink, width, lineType }: LayerStyle): Stroke {
  return { colour: ink, width: Math.max(width, LEAST_LINE), dashes: LINE_TYPES[lineType].pattern }
}

/** The crosses on holes to drill. */
export const CENTRE_STROKE: Stroke = { colour: styleOf('datum').ink, width: LEAST_LINE }

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

/** Size of the words on a line that is only there to join sheets, and how far behind a seam they stand, mm. */
const JOIN_WORDS = 2
const BEHIND_SEAM = 14

/**
 * A line along the middle of a part that lies on several sheets, to fold or join them on: the part's own centreline
 * where it has one, made longer to both ends, else a line that says what it is behind every seam.
 */
function drawJoinLine(ink: Ink, wording: Wording, drawing: Drawing, columns: readonly Span[]): void {
  const { outline } = drawing
  const [from, to] = [columns[0]?.from ?? outline.minX, columns.at(-1)?.to ?? outline.maxX]
  const y = (outline.minY + outline.maxY) / 2
  const pieces = hasCentreline(drawing)
    ? [
        [from, outline.minX],
        [outline.maxX, to],
      ]
    : [[from, to]]
  ink.lines(
    pieces.flatMap(([start = 0, end = 0]) =>
      end - start > 0.1
        ? [
            [
              { x: start, y },
              { x: end, y },
            ] as const,
          ]
        : [],
    ),
    strokeOf(styleOf('datum')),
  )
  if (pieces.length > 1) return
  for (const column of columns) {
    const at = { x: column.from + BEHIND_SEAM, y: y + 0.7 }
    wording.write(ink, at, JOIN_WORDS, 'to join sheets on, never cut', column.to - at.x, {
      colour: styleOf('datum').ink,
    })
  }
}

/**
 * Draws every layer of a part where the part has it.
 *
 * @param columns of the part's sheets; more than one and a line to join them on is drawn
 */
export function drawForm(ink: Ink, wording: Wording, drawing: Drawing, columns: readonly Span[]): void {
  const { layers } = drawing
  if (columns.length > 1) drawJoinLine(ink, wording, drawing, columns)
  ink.lines(drillCrosses(layers), CENTRE_STROKE)
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
