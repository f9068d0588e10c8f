/** The things of a layout, face by face. */
import type { Face } from '../kinds/kind.ts'
import { notes } from '../quantity/notes.ts'
import type { Layout, Placed } from './layout.ts'

type ByFace = Readonly<Record<Face, readonly Placed[]>>

const known = notes<readonly Placed[], ByFace>()

/**
 * Things on one face, in the order of the design; parted once for all faces and whoever asks.
 * Example: `placedOn(layout, 'lid').length`.
 */
export function placedOn({ placed }: Pick<Layout, 'placed'>, face: Face): readonly Placed[] {
  const before = known.get(placed)
  if (before) return before[face]
  const parted: Record<Face, Placed[]> = {
    lid: [],
    base: [],
    'neck-end-wall': [],
    'tail-end-wall': [],
    'bass-wall': [],
    'treble-wall': [],
  }
  for (const one of placed) parted[one.face].push(one)
  known.set(placed, parted)
  return parted[face]
}
