/** Blocks, liners, battens, hinges and clasps where they stand, in the instrument's frame. */

import type { Design } from '../design/schema.ts'
import type { Face } from '../kinds/kind.ts'
import { remembered } from '../loads/remembered.ts'
import type { Bounds } from '../plane/index.ts'
import type { Layout } from '../solve/layout.ts'
import { sideWallAt } from './outlines.ts'

export type Inside = Design['box']['inside'][number]

export interface InsidePiece {
  readonly piece: Inside
  readonly box: {
    readonly minX: number
    readonly maxX: number
    readonly minY: number
    readonly maxY: number
    readonly minZ: number
    readonly maxZ: number
  }
}

const NONE: readonly InsidePiece[] = []

/** Every piece stated to be inside, in the order of the design; none costs nothing. */
export const insidePiecesOf = (layout: Layout): readonly InsidePiece[] =>
  layout.design.box.inside.length === 0 ? NONE : placed(layout)

const placed = remembered((layout: Layout): readonly InsidePiece[] =>
  layout.design.box.inside.map((piece) => {
    const { box } = layout
    const x = box.x0 + piece.along
    const top =
      piece.fixed === 'on the base'
        ? box.baseTop + piece.tall
        : box.lidBottom - (piece.fixed === 'on the walls' ? piece.below : 0)
    return {
      piece,
      box: {
        minX: x - piece.long / 2,
        maxX: x + piece.long / 2,
        minY: piece.across - piece.wide / 2,
        maxY: piece.across + piece.wide / 2,
        minZ: top - piece.tall,
        maxZ: top,
      },
    }
  }),
)

/** Is it of wood, that screws may go into? */
export const isWood = ({ sort }: Inside): boolean => sort !== 'hinge' && sort !== 'clasp'

/** A piece as a face sees it: its outline in the panel's frame, and how far behind the face's outer side it lies. */
export function seenFrom(
  layout: Layout,
  face: Face,
  { box: piece }: InsidePiece,
): { readonly outline: Bounds; readonly from: number; readonly to: number } {
  const { panels, box } = layout
  const { originX } = panels[face]
  const { minX, maxX, minY, maxY, minZ, maxZ } = piece
  if (face === 'lid' || face === 'base') {
    const outline = { minX: minX - originX, maxX: maxX - originX, minY, maxY }
    return face === 'lid'
      ? { outline, from: -maxZ, to: -minZ }
      : { outline, from: minZ - box.baseBottom, to: maxZ - box.baseBottom }
  }
  const upright = { minY: minZ - box.wallTop, maxY: maxZ - box.wallTop }
  if (face === 'bass-wall' || face === 'treble-wall') {
    const outline = { minX: minX - originX, maxX: maxX - originX, ...upright }
    const wall = sideWallAt(layout, face, (minX + maxX) / 2)
    return face === 'bass-wall'
      ? { outline, from: minY - wall, to: maxY - wall }
      : { outline, from: wall - maxY, to: wall - minY }
  }
  const outline = { minX: minY, maxX: maxY, ...upright }
  return face === 'neck-end-wall'
    ? { outline, from: minX - box.x0, to: maxX - box.x0 }
    : { outline, from: box.x1 - maxX, to: box.x1 - minX }
}
