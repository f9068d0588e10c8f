/** What stands in the box already, as solids: wood that takes screws, and hinges and clasps that do not. */
import { insidePiecesOf, isWood } from '../box/inside-pieces.ts'
import type { Layout } from '../solve/layout.ts'
import { block, type Solid } from './solid.ts'

export const insideSolids = (layout: Layout): Solid[] =>
  insidePiecesOf(layout).flatMap(({ piece, box }) => {
    const solid = block({ of: piece.id, sort: isWood(piece) ? 'wood' : 'hardware' }, box)
    return solid ? [solid] : []
  })
