/** Pilot holes that screws want in the neck and in the block under it: where, how wide and how deep. */

import type { Face } from '../kinds/kind.ts'
import { pilotFor } from '../kinds/wood-screws.ts'
import { remembered } from '../loads/remembered.ts'
import { woodNamed } from '../neck/named-woods.ts'
import type { Layout, Placed } from '../solve/layout.ts'
import type { Point3 } from './between.ts'
import { type Fastened, fasteningsOf } from './fastening.ts'

export interface Pilot {
  readonly placed: Placed
  readonly into: 'neck' | 'neck-block'
  /** The face its screw comes through: the side from which it is drilled. */
  readonly face: Face
  /** Where it begins, on the wood. */
  readonly at: Point3
  readonly diameter: number
  readonly depth: number
}

/** Does it have a screw that goes into wood? */
export const hasScrews = ({ kind }: Placed): boolean => kind.bodies !== undefined && kind.overWall === 'meant'

/** Specific gravity at 12 % of the wood a screw goes into: the neck’s own, else a hardwood’s. */
export function gravityOf(layout: Layout, of: string): number {
  const wood = of === 'neck' ? woodNamed(layout.design.neck.wood, layout.design.woods) : null
  return wood?.density ? wood.density / 1120e-9 : 0.6
}

/** Shorter ones are none: the point of the screw finds its own way. Millimetres. */
const SHORTEST = 1

/**
 * Every pilot hole in neck and block. Only looked for where there are screws; what stands inside besides is drilled in
 * place, through the hole of the face.
 * Example: a screw of 16 through a lid of 4 that lies on the neck wants one 12 deep.
 */
export const pilotsOf = remembered((layout: Layout): readonly Pilot[] =>
  layout.placed.some(hasScrews) ? fasteningsOf(layout).flatMap((one) => pilots(layout, one)) : [],
)

function pilots(layout: Layout, { placed, shank, line, radius, held }: Fastened): Pilot[] {
  const { axis } = shank
  const { face } = placed
  const fromHigh = face === 'lid' || face === 'treble-wall' || face === 'tail-end-wall'
  const into = (['neck', 'neck-block'] as const).map((name) => ({
    name,
    // The neck lies in stretches; a screw at the end of two goes into one hole.
    woods: held.filter(
      ({ wood }) => wood.of === 'neck' && (wood.part === 'block') === (name === 'neck-block'),
    ),
  }))
  return into.flatMap(({ name, woods }): Pilot[] => {
    const ends = woods.map(({ wood, length }) => {
      const { box } = wood
      const [low, high] =
        axis === 'z' ? [box.minZ, box.maxZ] : axis === 'y' ? [box.minY, box.maxY] : [box.minX, box.maxX]
      const begins = fromHigh ? Math.min(high, shank.to) : Math.max(low, shank.from)
      return { begins, ends: begins + (fromHigh ? -length : length) }
    })
    const [first] = ends
    if (!first) return []
    const begins = ends.reduce(
      (most, one) => (fromHigh ? Math.max : Math.min)(most, one.begins),
      first.begins,
    )
    const end = ends.reduce((most, one) => (fromHigh ? Math.min : Math.max)(most, one.ends), first.ends)
    const depth = Math.abs(end - begins)
    if (depth < SHORTEST) return []
    const at =
      axis === 'z'
        ? { x: line.x, y: line.y, z: begins }
        : axis === 'y'
          ? { x: line.x, y: begins, z: line.y }
          : { x: begins, y: line.x, z: line.y }
    const diameter = pilotFor(2 * radius, gravityOf(layout, name === 'neck' ? 'neck' : ''))
    return [{ placed, into: name, face, at, diameter, depth }]
  })
}
