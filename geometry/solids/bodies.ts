/** What stands behind and before a face, from each thing's own `bodies`. */

import { move, turn } from '../plane/index.ts'
import { notes } from '../quantity/notes.ts'
import type { Layout, Placed } from '../solve/layout.ts'
import { behindFace, type Solid } from './solid.ts'

interface Known {
  readonly panel: Layout['panels']['lid']
  readonly box: Layout['box']
  readonly real: Layout['real']
  readonly solids: readonly Solid[]
}

const standing = notes<Placed, Known>()

const sameFrame = (known: Known, { box, panels, real }: Layout, { face }: Placed): boolean =>
  known.panel.originX === panels[face].originX &&
  known.real === real &&
  known.panel.thickness === panels[face].thickness &&
  known.box.x0 === box.x0 &&
  known.box.x1 === box.x1 &&
  known.box.halfWidth === box.halfWidth &&
  known.box.wallTop === box.wallTop &&
  known.box.baseBottom === box.baseBottom

/** The solids of one thing where it stands; remembered while it stays there. */
export function bodiesOf(layout: Layout, placed: Placed): readonly Solid[] {
  const { thing, kind, at, face } = placed
  if (!kind.bodies) return []
  const known = standing.get(placed)
  if (known && sameFrame(known, layout, placed)) return known.solids
  const angle = (thing.turnDegrees * Math.PI) / 180
  const solids = kind
    .bodies(thing, layout.panels[face].thickness)
    .filter((body) => body.to > body.from)
    .map((body) =>
      behindFace(
        layout,
        { of: thing.id, part: body.part, sort: body.sort, face, placed: true },
        move(angle === 0 ? body.contour : turn(body.contour, angle), at.x, at.y),
        body.from,
        body.to,
      ),
    )
  standing.set(placed, { panel: layout.panels[face], box: layout.box, real: layout.real, solids })
  return solids
}

/** Every thing's solids, in the order of the design. */
export function thingSolids(layout: Layout): Solid[] {
  const all: Solid[] = []
  for (const placed of layout.placed) for (const one of bodiesOf(layout, placed)) all.push(one)
  return all
}
