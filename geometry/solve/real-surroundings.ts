/** What places refer to on a surveyed box: lid and base along the centreline, their sides as they really run. */
import { outlinesFor } from '../box/box.ts'
import type { Edge, RealBox } from '../box/real-box.ts'
import type { Design } from '../design/schema.ts'
import type { Face } from '../kinds/kind.ts'
import type { Bounds } from '../plane/index.ts'
import type { Surroundings } from './places.ts'

const on = ({ at, slope }: Edge, x: number) => at + slope * x

/** Along lid and base a face begins and ends where the centreline crosses its end edges, not at its farthest corners. */
export function planExtents(
  { box }: Design,
  real: RealBox,
  panels: Surroundings['panels'],
): Surroundings['panels'] {
  const outlines = outlinesFor(box, real)
  const extent = (face: 'lid' | 'base'): { bounds: Bounds } => {
    const { bass, treble, neckEnd, tailEnd } = outlines[face].edges
    const middle = (neckEnd.at + tailEnd.at) / 2
    return {
      bounds: { minX: 0, maxX: tailEnd.at - neckEnd.at, minY: on(bass, middle), maxY: on(treble, middle) },
    }
  }
  return { ...panels, lid: extent('lid'), base: extent('base') }
}

/** Inner faces from the lid's neck-end edge, and the sides at any place along lid or base. */
export function realSurroundings(
  { box }: Design,
  real: RealBox,
): Pick<Surroundings, 'insideAlong' | 'insideAcross'> & Required<Pick<Surroundings, 'sidesAt'>> {
  const outlines = outlinesFor(box, real)
  const { inside } = outlines
  const inset = outlines.lid.edges.neckEnd.at
  const middle = real.length / 2
  return {
    insideAlong: [inside.edges.neckEnd.at - inset, inside.edges.tailEnd.at - inset],
    insideAcross: [on(inside.edges.bass, middle), on(inside.edges.treble, middle)],
    sidesAt: (of, face: Face, along) => {
      const own = outlines[face === 'base' ? 'base' : 'lid']
      const { bass, treble } = (of === 'wall' ? inside : own).edges
      const x = along + own.edges.neckEnd.at
      return [on(bass, x), on(treble, x)]
    },
  }
}
