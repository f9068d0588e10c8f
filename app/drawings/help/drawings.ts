/**
 * The small drawing of every field that a sentence alone leaves in doubt, by the field's address. A new field gets one
 * line in the file of its section; a new kind of thing has those of its usual field names at once.
 */
import { box } from './box.ts'
import { kinds } from './kinds.ts'
import { limits } from './limits.ts'
import { neck } from './neck.ts'
import type { Drawing } from './pen.ts'
import { HAND, playing } from './playing.ts'
import { shop } from './shop.ts'
import { FACE } from './thing-views.ts'
import { things } from './things.ts'

export { GRID, isCases, LAYERS } from './pen.ts'

export const DRAWINGS: Readonly<Record<string, Drawing>> = {
  ...box,
  ...playing,
  ...neck,
  ...things,
  ...kinds,
  ...shop,
  ...limits,
  'artwork.face': FACE,
  'photos.face': FACE,
  hand: HAND,
}

/** A field of a kind: `things.pot.knob`. */
const OF_A_KIND = /^things\.[^.]+\.(.+)$/

/**
 * The drawing at an address, or none. For a field of a kind its own goes before the general one.
 * Example: `drawingOf('things.slot.depth')` is that of `things.*.depth`.
 */
export function drawingOf(address: string): Drawing | undefined {
  const own = DRAWINGS[address]
  if (own) return own
  const name = OF_A_KIND.exec(address)?.[1]
  return name === undefined ? undefined : DRAWINGS[`things.*.${name}`]
}
