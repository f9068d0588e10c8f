/**
 * The one list of what an instrument holds as solids. A new source (blocks, liners, a sound post) is one function
 * `(layout) => Solid[]` and one line in `SOURCES`; conflicts, fastening and the section follow from it.
 */
import { remembered } from '../loads/remembered.ts'
import { neighbours } from '../plane/index.ts'
import type { Layout } from '../solve/layout.ts'
import { boxesNear, planOf } from './between.ts'
import { thingSolids } from './bodies.ts'
import type { Box3, Solid } from './solid.ts'
import { braceSolids, neckSolids, panelSolids, stringSolids } from './structure.ts'

const SOURCES: readonly ((layout: Layout) => readonly Solid[])[] = [
  panelSolids,
  neckSolids,
  braceSolids,
  stringSolids,
  thingSolids,
]

/**
 * Every solid of a layout in the instrument frame, structure first. Worked out when first asked for, and remembered
 * with the layout; a design is solved and checked without it unless a thing on it has a body.
 *
 * @example solidsOf(solve(design)).filter((one) => one.of === 'neck')
 */
export const solidsOf = remembered((layout: Layout): readonly Solid[] =>
  SOURCES.flatMap((source) => [...source(layout)]),
)

const indexOf = remembered((layout: Layout) => neighbours(solidsOf(layout).map(planOf)))

/** The solids whose boxes come within `grow` of a box, in the order of `solidsOf`. */
export function solidsNear(layout: Layout, box: Box3, grow: number): Solid[] {
  const solids = solidsOf(layout)
  const found: Solid[] = []
  for (const index of indexOf(layout).near(box, grow)) {
    const one = solids[index]
    if (one && boxesNear(one.box, box, grow)) found.push(one)
  }
  return found
}
