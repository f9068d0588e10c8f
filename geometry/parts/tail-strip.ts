/**
 * A strip to drill the string holes by: long side across the strings, the edge to hold it against at the top.
 * Under each hole stand the counts of strings that it serves, one row to a count.
 */
import { type Point, rectangle } from '../plane/index.ts'
import { listOf } from '../quantity/list-of.ts'
import type { Layout } from '../solve/layout.ts'
import { countsOf, holesFor } from '../strings/tail-row.ts'
import { datum, drill, note } from './operations.ts'
import type { Note, Part } from './part.ts'
import { flipContour, flipOperations } from './sheet-frame.ts'

/** Wood around the outer holes of a strip that has no edges of its own. */
const AROUND = 12

/** Height of the figures that name the counts a hole serves, and from one row of them to the next. */
const FIGURE = 2.5
const ROW = 3.6

/** More rows than these would fill the strip with figures. */
const MOST_COUNTS = 3

export function tailStrip(layout: Layout): Part {
  const { design } = layout
  const { tailpiece } = design
  const flip = layout.up === 1 ? 'none' : 'x'
  const onTail = tailpiece.at === 'the tail of the neck'
  const half = onTail ? design.neck.width / 2 : tailpiece.span / 2 + AROUND
  const counts = countsShown(layout)
  const below = tailpiece.fromEdge + tailpiece.diameter / 2
  const deep = Math.max(
    onTail ? design.neck.tail : 0,
    tailpiece.fromEdge + AROUND,
    below + ROW * counts.length + 1,
  )
  // On the lid the strip hooks on the tail-end edge, so the holes lie above it; elsewhere they hang below.
  const sign = tailpiece.at === 'the lid' ? 1 : -1
  const centres: Point[] = layout.tailHoles.map(({ y }) => ({ x: y, y: sign * tailpiece.fromEdge }))
  const operations = [
    ...centres.map((centre) => drill(centre, tailpiece.diameter, 'String hole')),
    ...counts.flatMap((count, row) => served(layout, centres, count, sign * (below + ROW * (row + 1)), sign)),
    datum({ x: 0, y: 0 }, { x: 0, y: sign * tailpiece.fromEdge }, 'Centreline'),
    datum(
      { x: -half, y: sign * tailpiece.fromEdge },
      { x: half, y: sign * tailpiece.fromEdge },
      'Line of the holes',
    ),
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
    operations: flipOperations(operations, flip),
  }
}

/** The counts of strings worth naming: the design's own, then those below it that the row serves as well. */
function countsShown({ strings, tailHoles, design }: Layout): number[] {
  const stated = countsOf(design)
  if (stated.length > 1) return stated
  const most = Math.min(Math.max(strings.length, 1), tailHoles.length)
  return listOf(Math.min(MOST_COUNTS, most), (index) => most - index).filter(
    (count) => count > 1 || most === 1,
  )
}

/** The figure of a count under each hole that serves it, all of one count in one row. */
function served(layout: Layout, centres: readonly Point[], count: number, y: number, sign: 1 | -1): Note[] {
  return holesFor(layout.design, count).flatMap((hole) => {
    const centre = hole === undefined ? undefined : centres[hole]
    if (!centre) return []
    const text = String(count)
    const at = { x: centre.x - FIGURE * 0.32 * text.length, y: sign > 0 ? y - FIGURE : y }
    return [note(at, text, 'Counts of strings served', FIGURE)]
  })
}
