/**
 * The one list of what an instrument holds as solids. A new source (blocks, liners, a sound post) is one function
 * `(layout) => Solid[]` and one line in `SOURCES`; conflicts, fastening and the section follow from it.
 */
import { remembered } from '../loads/remembered.ts'
import { neighbours } from '../plane/index.ts'
import type { Layout } from '../solve/layout.ts'
import { boxesNear, planOf } from './between.ts'
import { thingSolids } from './bodies.ts'
import { insideSolids } from './inside.ts'
import type { Box3, Solid } from './solid.ts'
import { braceSolids, neckSolids, panelSolids, stringSolids, tailHoleSolids } from './structure.ts'

const SOURCES: readonly ((layout: Layout) => readonly Solid[])[] = [
  panelSolids,
  neckSolids,
  braceSolids,
  insideSolids,
  tailHoleSolids,
  thingSolids,
]

const gathered = remembered((layout: Layout): readonly Solid[] => {
  const all: Solid[] = []
  for (const source of SOURCES) for (const one of source(layout)) all.push(one)
  return all
})

/**
 * Every solid of a layout in the instrument frame, structure first. Worked out when first asked for, and remembered
 * with the layout; a design is solved and checked without it unless a thing on it has a body.
 *
 * @example solidsOf(solve(design)).filter((one) => one.of === 'neck')
 */
export const solidsOf = remembered((layout: Layout): readonly Solid[] => [
  ...gathered(layout),
  ...stringSolids(layout),
])

const indexOfAll = remembered((layout: Layout) => neighbours(solidsOf(layout).map(planOf)))
const indexInside = remembered((layout: Layout) => neighbours(gathered(layout).map(planOf)))

/** So few are looked at one after another: an index of them costs more than it saves. */
const FEW = 80

/** The solids whose boxes come within `grow` of a box, in the order of `solidsOf`. */
export function solidsNear(layout: Layout, box: Box3, grow: number): Solid[] {
  // Strings run in front of the lid: what stays behind it never meets them.
  const all = box.maxZ > 0 ? solidsOf : gathered
  const solids = all(layout)
  const found: Solid[] = []
  if (solids.length <= FEW) {
    for (const one of solids) if (boxesNear(one.box, box, grow)) found.push(one)
    return found
  }
  for (const index of (all === solidsOf ? indexOfAll : indexInside)(layout).near(box, grow)) {
    const one = solids[index]
    if (one && boxesNear(one.box, box, grow)) found.push(one)
  }
  return found
}
