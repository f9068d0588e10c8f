/** Where a thing may be tried: a grid over its face, or the middle of the walls for what is screwed into them. */

import type { Thing } from '../design/schema.ts'
import type { Face } from '../kinds/kind.ts'
import { kindOf } from '../kinds/kinds.ts'
import { bounds, turn } from '../plane/index.ts'
import type { Layout } from '../solve/layout.ts'

export interface Spot {
  readonly face: Face
  readonly x: number
  readonly y: number
}

/** A spot for every so many millimetres, but no more and no fewer than this either way. */
const EVERY = 24
const [FEWEST, MANY] = [3, 9]

const spread = (from: number, to: number, apart: number, every: number): number[] => {
  if (to <= from) return [(from + to) / 2]
  const most = Math.ceil(MANY / every)
  const count = Math.max(FEWEST, Math.min(most, Math.round((to - from) / (apart * every)) + 1))
  return Array.from({ length: count }, (_, index) => from + ((to - from) * index) / (count - 1))
}

const isPlan = (face: Face): boolean => face === 'lid' || face === 'base'

/** Spots of one face, in a fixed order; with `every` 2 about half as many each way. */
export function spotsOn(layout: Layout, thing: Thing, face: Face, every = 1): Spot[] {
  const kind = kindOf(thing.kind)
  const { minX, maxX, minY, maxY } = layout.panels[face].bounds
  if (isPlan(face) && kind.overWall === 'meant') return wallSpots(layout, face, every)
  const size = bounds(turn(kind.footprint(thing), (thing.turnDegrees * Math.PI) / 180))
  const [halfX, halfY] = [(size.maxX - size.minX) / 2, (size.maxY - size.minY) / 2]
  const across =
    isPlan(face) && kind.overNeck === 'meant' ? [0] : spread(minY + halfY, maxY - halfY, EVERY, every)
  return spread(minX + halfX, maxX - halfX, EVERY, every).flatMap((x) => across.map((y) => ({ face, x, y })))
}

/** Round the box in the middle of its walls. */
function wallSpots({ panels, box }: Layout, face: Face, every: number): Spot[] {
  const { originX } = panels[face]
  const alongEnds = [(box.x0 + box.insideX0) / 2 - originX, (box.x1 + box.insideX1) / 2 - originX]
  const acrossSides = [(-box.halfWidth + box.insideBass) / 2, (box.halfWidth + box.insideTreble) / 2]
  const [x0 = 0, x1 = 0] = alongEnds
  const [y0 = 0, y1 = 0] = acrossSides
  return [
    ...spread(x0, x1, 60, every).flatMap((x) => acrossSides.map((y) => ({ face, x, y }))),
    ...spread(y0, y1, 60, every).flatMap((y) => alongEnds.map((x) => ({ face, x, y }))),
  ]
}
