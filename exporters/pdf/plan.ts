/**
 * Which sheet holds what: every part divided into tiles, before a single line is printed.
 *
 * The page draws its map from this plan, and the sheets are printed from the same.
 */
import type { Bounds, Chain, Part } from '../../geometry/index.ts'
import { type Drawing, drawPart } from '../drawing/drawing.ts'
import { factsOf } from '../sheet-layout/facts.ts'
import { type Avoided, type Span, spansAlong } from './seams.ts'
import { type Frame, framesOf, type PrintSetup, type Way } from './setup.ts'

/** One sheet of a part. */
export interface Tile {
  /** Row letter from the top, column number from the left: `B2`. */
  readonly name: string
  readonly row: number
  readonly column: number
  /** What of the part's own sheet is shown, flaps included, mm, y up. */
  readonly shown: Bounds
}

/** All sheets of one part. */
export interface PartSheets {
  readonly part: Part
  readonly title: string
  readonly drawing: Drawing
  readonly frame: Frame
  /** Columns from the left, rows from the top. */
  readonly columns: readonly Span[]
  readonly rows: readonly Span[]
  readonly tiles: readonly Tile[]
  /** Seams that run through a centre or along a fret line because there was no other place. */
  readonly hits: number
}

export interface PrintPlan {
  readonly setup: PrintSetup
  readonly parts: readonly PartSheets[]
  /** Sheets of paper in all. */
  readonly count: number
}

export type PlanReading =
  | { readonly ok: true; readonly plan: PrintPlan }
  | { readonly ok: false; readonly sentence: string }

/** Free edge round a part that fits one sheet, and, where joining marks stand beside it, the most of it, mm. */
const EDGE = 1
const EDGE_WITH_MARKS = 16

/** A to Z, then AA, AB and so on. */
export function letterOf(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26))
  return index < 26 ? letter : letterOf(Math.floor(index / 26) - 1) + letter
}

/** A straight line along one axis: where it stands on the other. */
function straightAt({ vertices, closed }: Chain, axis: 'x' | 'y'): number | undefined {
  const [a, b] = vertices
  if (a === undefined || b === undefined || closed || vertices.length !== 2 || a.bulge !== 0) return undefined
  const other = axis === 'x' ? 'y' : 'x'
  return Math.abs(a[axis] - b[axis]) < 0.2 && Math.abs(a[other] - b[other]) > 1
    ? (a[axis] + b[axis]) / 2
    : undefined
}

/** What seams across an axis keep away from: centres of holes, fret lines, straight marks along the seam. */
function avoidedOf(drawing: Drawing, axis: 'x' | 'y'): Avoided[] {
  return drawing.layers.flatMap((layer) => {
    if (layer.kind === 'notes' || layer.kind === 'datum' || layer.kind === 'cut-outside') return []
    return layer.contours.flatMap((contour): Avoided[] => {
      if (contour.shape === 'circle') return [{ at: contour.centre[axis], reach: contour.radius }]
      const at = straightAt(contour, axis)
      if (at !== undefined) return [{ at, reach: 0 }]
      if (!contour.closed) return []
      const values = contour.vertices.map((vertex) => vertex[axis])
      const [least, most] = [Math.min(...values), Math.max(...values)]
      return [{ at: (least + most) / 2, reach: (most - least) / 2 }]
    })
  })
}

/** A length with room beside it for marks, as far as the last sheet has some to spare. */
function padded(from: number, to: number, window: number, wanted: number): Span {
  const spare = window - (to - from)
  const pad = spare >= 2 * EDGE ? Math.min(wanted, spare / 2) : EDGE
  return { from: from - pad, to: to + pad }
}

function divided(part: Part, drawing: Drawing, frame: Frame, setup: PrintSetup): PartSheets {
  const { extent } = drawing
  const [width, height] = [frame.window.maxX - frame.window.minX, frame.window.maxY - frame.window.minY]
  const tooWide = extent.maxX - extent.minX + 2 * EDGE > width
  const tooHigh = extent.maxY - extent.minY + 2 * EDGE > height
  const x = padded(extent.minX, extent.maxX, width, tooHigh ? EDGE_WITH_MARKS : EDGE)
  const y = padded(extent.minY, extent.maxY, height, tooWide ? EDGE_WITH_MARKS : EDGE)
  const across = spansAlong(x.from, x.to, width, setup.overlap, avoidedOf(drawing, 'x'))
  const up = spansAlong(y.from, y.to, height, setup.overlap, avoidedOf(drawing, 'y'))
  const rows = [...up.spans].reverse()
  return {
    part,
    title: factsOf(part, drawing.outline).title,
    drawing,
    frame,
    columns: across.spans,
    rows,
    tiles: rows.flatMap((row, rowIndex) =>
      across.spans.map((column, columnIndex) => ({
        name: `${letterOf(rowIndex)}${columnIndex + 1}`,
        row: rowIndex,
        column: columnIndex,
        shown: { minX: column.from, maxX: column.to, minY: row.from, maxY: row.to },
      })),
    ),
    hits: across.hits + up.hits,
  }
}

/** The way round that a part itself lies. */
const wayOf = ({ outline }: Drawing): Way =>
  outline.maxX - outline.minX >= outline.maxY - outline.minY ? 'lying' : 'upright'

/** The division with fewer sheets; of two alike the one whose seams hit less, then the one that lies as the part does. */
function fewest(ways: readonly PartSheets[]): PartSheets {
  const sorted = [...ways].sort(
    (a, b) =>
      a.tiles.length - b.tiles.length ||
      a.hits - b.hits ||
      Number(b.frame.way === wayOf(b.drawing)) - Number(a.frame.way === wayOf(a.drawing)),
  )
  return sorted[0] as PartSheets
}

/**
 * Divides parts among sheets of paper.
 *
 * @param parts in the order in which they are printed
 * @param setup paper, way round, margin, overlap, correction; mm
 * @returns the plan, or a sentence where the paper has no room
 * @throws when a part cannot be drawn, or the paper is none
 * @example planPrint([lid], STANDARD_SETUP)
 */
export function planPrint(parts: readonly Part[], setup: PrintSetup): PlanReading {
  if (parts.length === 0) return { ok: false, sentence: 'There is no part to print.' }
  const reading = framesOf(setup)
  if (!reading.ok) return reading
  const divisions = parts.map((part) => {
    const drawing = drawPart(part, 'mm')
    return fewest(reading.frames.map((frame) => divided(part, drawing, frame, setup)))
  })
  const count = divisions.reduce((sum, { tiles }) => sum + tiles.length, 0)
  return { ok: true, plan: { setup, parts: divisions, count } }
}
