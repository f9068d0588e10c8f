/**
 * A strip to drill the string holes by: long side across the strings, the edge to hold it against at the top.
 * Each hole says which counts of strings it serves.
 */
import { type Point, rectangle } from '../plane/index.ts'
import type { Layout } from '../solve/layout.ts'
import { holesServing } from '../strings/spacing.ts'
import { datum, drill, note } from './operations.ts'
import type { Part } from './part.ts'
import { flipContour, flipOperation } from './sheet-frame.ts'

/** Wood around the outer holes of a strip that has no edges of its own. */
const AROUND = 12

/** Height of the figures that name the counts a hole serves. */
const FIGURE = 2.5

export function tailStrip(layout: Layout): Part {
  const { design } = layout
  const { tailpiece } = design
  const flip = layout.up === 1 ? 'none' : 'x'
  const onTail = tailpiece.at === 'the tail of the neck'
  const half = onTail ? design.neck.width / 2 : tailpiece.span / 2 + AROUND
  const deep = Math.max(onTail ? design.neck.tail : 0, tailpiece.fromEdge + AROUND)
  // On the lid the strip hooks on the tail-end edge, so the holes lie above it; elsewhere they hang below.
  const sign = tailpiece.at === 'the lid' ? 1 : -1
  const centres: Point[] = layout.tailHoles.map(({ y }) => ({ x: y, y: sign * tailpiece.fromEdge }))
  const operations = [
    ...centres.map((centre) => drill(centre, tailpiece.diameter, 'String hole')),
    ...centres.map((centre, index) =>
      note(
        { x: centre.x - FIGURE / 2, y: centre.y + sign * (tailpiece.diameter / 2 + (sign > 0 ? 1 : 1 + FIGURE)) },
        countsServed(centres.length, index).join(' '),
        'Counts of strings served',
        FIGURE,
      ),
    ),
    datum({ x: 0, y: 0 }, { x: 0, y: sign * deep }, 'Centreline'),
    datum({ x: -half, y: sign * tailpiece.fromEdge }, { x: half, y: sign * tailpiece.fromEdge }, 'Line of the holes'),
  ]
  return {
    id: 'tail-strip',
    title: 'Drilling strip for the strings',
    seen: tailpiece.at === 'the tail-end wall' ? 'from outside' : 'from the playing side',
    mirrored: false,
    headEnd: tailpiece.at === 'the tail-end wall' ? 'away from the viewer' : 'top',
    hand: design.hand,
    thickness: 3,
    outline: flipContour(rectangle(-half, Math.min(0, sign * deep), half, Math.max(0, sign * deep)), flip),
    operations: operations.map((one) => flipOperation(one, flip)),
  }
}

/** Counts of strings, two and more, that a hole of the row serves; all counts use the outer holes. */
export function countsServed(holes: number, hole: number): number[] {
  const counts = Array.from({ length: holes }, (_, index) => index + 1)
  return counts.filter((count) => count > 1 && holesServing(holes, count).includes(hole))
}
