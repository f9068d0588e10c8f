/** Short ways to say common operations. */
import { type Contour, line, type Point, rectangle } from '../plane/index.ts'
import type { Cut, Datum, Drill, Mark, Note, Recess } from './part.ts'

export const cut = (contour: Contour, of: string): Cut => ({ kind: 'cut', side: 'inside', contour, of })
export const recess = (contour: Contour, depth: number, of: string): Recess => ({
  kind: 'recess',
  contour,
  depth,
  of,
})
export const drill = (
  centre: Point,
  diameter: number,
  of: string,
  depth: Drill['depth'] = 'through',
): Drill => ({
  kind: 'drill',
  centre,
  diameter,
  depth,
  of,
})
export const mark = (from: Point, to: Point, of: string): Mark => ({
  kind: 'mark',
  contour: line(from, to),
  of,
})
export const datum = (from: Point, to: Point, of: string): Datum => ({
  kind: 'datum',
  line: line(from, to),
  of,
})
export const note = (at: Point, text: string, of: string, height = 2.5): Note => ({
  kind: 'note',
  at,
  height,
  text,
  turn: 0,
  of,
})

/** Lines to measure from: the four sides of a rectangle, or fewer where it is empty. */
export function datumBox(minX: number, minY: number, maxX: number, maxY: number, of: string): Datum[] {
  if (!(maxX - minX > SHORTEST_LINE && maxY - minY > SHORTEST_LINE)) return []
  const contour = rectangle(minX, minY, maxX, maxY)
  return contour.shape === 'chain' ? [{ kind: 'datum', line: contour, of }] : []
}

/** A line shorter than this is not drawn: nobody could see it. */
export const SHORTEST_LINE = 1e-3

/**
 * How far a cut that opens at an edge runs on beyond it: the saw goes right through, and no line of the cut lies on
 * the outline, where a laser would burn it twice.
 */
export const RUN_OUT = 1
