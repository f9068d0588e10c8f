/** Lines that show on a face's part what lies behind it, and what on it is to stay whole. Never cut. */
import { artworkOf } from '../box/artwork.ts'
import { insidePiecesOf, seenFrom } from '../box/inside-pieces.ts'
import { type Chain, type Contour, chain } from '../plane/index.ts'
import type { Layout, Panel } from '../solve/layout.ts'
import { datumBox } from './operations.ts'
import type { Datum } from './part.ts'

/** A circle as two half turns: datum lines are chains. */
function chainOf(contour: Contour): Chain {
  if (contour.shape === 'chain') return contour
  const { centre, radius } = contour
  return chain(
    [
      { x: centre.x - radius, y: centre.y, bulge: 1 },
      { x: centre.x + radius, y: centre.y, bulge: 1 },
    ],
    true,
  )
}

/** Behind a wall only what stands at it is shown; behind lid and base everything. */
const AT_WALL = 1

/** Pieces inside as this face sees them, as far as they lie behind it; then the pictures on it. None costs nothing. */
export function keptLines(layout: Layout, { face, bounds, thickness }: Panel): Datum[] {
  const plan = face === 'lid' || face === 'base'
  const lines: Datum[] = []
  for (const one of insidePiecesOf(layout)) {
    const { outline, from, to } = seenFrom(layout, face, one)
    if (!plan && (from > thickness + AT_WALL || to <= 0)) continue
    const { piece } = one
    lines.push(
      ...datumBox(
        Math.max(outline.minX, bounds.minX),
        Math.max(outline.minY, bounds.minY),
        Math.min(outline.maxX, bounds.maxX),
        Math.min(outline.maxY, bounds.maxY),
        `Inside: ${piece.name || piece.sort}`,
      ),
    )
  }
  for (const { art, face: on, contour } of artworkOf(layout))
    if (on === face)
      lines.push({ kind: 'datum', line: chainOf(contour), of: `Keep whole: ${art.name || 'artwork'}` })
  return lines
}
