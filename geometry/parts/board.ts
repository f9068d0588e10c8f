/** The fretboard as a part. */
import { halfWidthAt } from '../neck/neck.ts'
import { polygon } from '../plane/index.ts'
import type { Layout } from '../solve/layout.ts'
import { fretOperations } from './neck.ts'
import { datum, SHORTEST_LINE } from './operations.ts'
import type { Operation, Part } from './part.ts'
import { flipContour, flipOperations } from './sheet-frame.ts'

export function boardPart(layout: Layout): Part[] {
  const { board, neck, box, design } = layout
  if (!board || board.x1 - board.x0 <= SHORTEST_LINE) return []
  const flip = layout.up === 1 ? 'none' : 'y'
  const xs = [
    board.x0,
    ...neck.halfWidths.map((one) => one.x).filter((x) => x > board.x0 && x < board.x1 && isCorner(layout, x)),
    board.x1,
  ]
  const side = (sign: 1 | -1) => xs.map((x) => ({ x, y: sign * halfWidthAt(neck, x) }))
  const operations: Operation[] = [
    ...fretOperations(layout, layout.frets),
    datum({ x: board.x0, y: 0 }, { x: board.x1, y: 0 }, 'Centreline'),
    ...(box.x0 > board.x0 && box.x0 < board.x1 ? [lineAcross(layout, box.x0)] : []),
  ]
  return [
    {
      id: 'board',
      title: 'Fretboard',
      seen: 'from the playing side',
      mirrored: false,
      headEnd: 'left',
      hand: design.hand,
      thickness: design.board.thickness,
      outline: flipContour(polygon([...side(-1), ...side(1).reverse()]), flip),
      operations: flipOperations(operations, flip),
    },
  ]
}

/** Does the neck's side change direction at x? A straight run needs no point. */
function isCorner({ neck }: Layout, x: number): boolean {
  const index = neck.halfWidths.findIndex((one) => one.x === x)
  const [before, here, after] = [
    neck.halfWidths[index - 1],
    neck.halfWidths[index],
    neck.halfWidths[index + 1],
  ]
  if (!before || !here || !after) return false
  const turned =
    (here.half - before.half) * (after.x - here.x) - (after.half - here.half) * (here.x - before.x)
  return Math.abs(turned) > 1e-9
}

function lineAcross(layout: Layout, x: number): Operation {
  const half = halfWidthAt(layout.neck, x)
  return datum({ x, y: -half }, { x, y: half }, 'Box, neck-end face')
}
