/** What gets cut: every part of an instrument, with all that is done to it. */

import { FACES } from '../kinds/kind.ts'
import { notes } from '../quantity/notes.ts'
import type { Layout } from '../solve/layout.ts'
import { boardPart } from './board.ts'
import { headParts } from './headstock.ts'
import { blockPart, neckSide, neckTop } from './neck.ts'
import { insidePart, panelPart } from './panels.ts'
import type { Part } from './part.ts'
import { farSide } from './pilots.ts'
import { tailStrip } from './tail-strip.ts'

const known = notes<Layout, readonly Part[]>()

/**
 * The parts of a layout, in the order of the work. Remembered per layout.
 * Example: `partsOf(solve(design)).map((part) => part.id)` begins `['lid', 'base', 'neck-end-wall', …]`.
 */
export function partsOf(layout: Layout): readonly Part[] {
  const before = known.get(layout)
  if (before) return before
  const top = neckTop(layout)
  const side = neckSide(layout)
  const parts = [
    panelPart(layout, 'lid'),
    panelPart(layout, 'base'),
    panelPart(layout, 'neck-end-wall'),
    panelPart(layout, 'tail-end-wall'),
    panelPart(layout, 'bass-wall'),
    panelPart(layout, 'treble-wall'),
    ...FACES.flatMap((face) => insidePart(layout, face)),
    top,
    side,
    ...farSide(layout, side),
    ...headParts(layout, top),
    ...blockPart(layout),
    ...boardPart(layout),
    tailStrip(layout),
  ]
  known.set(layout, parts)
  return parts
}
