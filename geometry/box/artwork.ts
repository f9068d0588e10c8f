/** Pictures on the faces that are to stay whole, as contours in their face's frame. */
import type { Design } from '../design/schema.ts'
import type { Face } from '../kinds/kind.ts'
import { remembered } from '../loads/remembered.ts'
import {
  type Bounds,
  bounds,
  type Contour,
  move,
  oval,
  type Point,
  polygon,
  rectangle,
} from '../plane/index.ts'
import type { Layout } from '../solve/layout.ts'

export type Artwork = Design['artwork'][number]

export interface ArtworkPiece {
  readonly art: Artwork
  readonly face: Face
  readonly at: Point
  readonly contour: Contour
  readonly bounds: Bounds
}

const NONE: readonly ArtworkPiece[] = []

/** Its outline about its own middle. An outline of one's own runs either way round. */
export function outlineOf({ shape, long, wide, outline, face }: Artwork): Contour {
  if (shape === 'rectangle') return rectangle(-long / 2, -wide / 2, long / 2, wide / 2)
  if (shape === 'oval') return oval({ x: 0, y: 0 }, long, wide)
  const down = face === 'lid' || face === 'base' ? 1 : -1
  return polygon(outline.map(([x, y]) => ({ x, y: down * y })))
}

/** Every picture stated, in the order of the design; none costs nothing. */
export const artworkOf = (layout: Layout): readonly ArtworkPiece[] =>
  layout.design.artwork.length === 0 ? NONE : placed(layout)

const placed = remembered((layout: Layout): readonly ArtworkPiece[] =>
  layout.design.artwork.map((art) => {
    const plan = art.face === 'lid' || art.face === 'base'
    const at = { x: art.along, y: plan ? art.across : -art.across }
    const contour = move(outlineOf(art), at.x, at.y)
    return { art, face: art.face, at, contour, bounds: bounds(contour) }
  }),
)
