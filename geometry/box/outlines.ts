/** Lines of the box as the rules, the drawing and the parts ask for them, whether it was surveyed or stated as a rectangle. */

import type { Face } from '../kinds/kind.ts'
import { type Bounds, type Contour, move, type Point, rectangle } from '../plane/index.ts'
import { notes } from '../quantity/notes.ts'
import type { Layout } from '../solve/layout.ts'
import { contourOf, type Edge } from './real-box.ts'

/** Outer and inner faces of the walls in the instrument frame, corners square; `inside` is `null` where walls leave nothing. */
export interface WallLines {
  readonly outside: Contour
  readonly inside: Contour | null
}

const known = notes<Layout, WallLines>()

/** Reckoned when first asked for and remembered with the layout. */
export function wallLinesOf(layout: Layout): WallLines {
  const before = known.get(layout)
  if (before) return before
  const lines = wallLines(layout)
  known.set(layout, lines)
  return lines
}

function wallLines({ box, real }: Layout): WallLines {
  const { x0, x1, insideX0, insideX1, insideBass, insideTreble, halfWidth } = box
  const empty = insideX1 <= insideX0 || insideTreble <= insideBass
  if (real)
    return {
      outside: move(contourOf(real.outside, 0, 0), x0, 0),
      inside: empty ? null : move(contourOf(real.inside, 0, 0), x0, 0),
    }
  return {
    outside: rectangle(x0, -halfWidth, x1, halfWidth),
    inside: empty ? null : rectangle(insideX0, insideBass, insideX1, insideTreble),
  }
}

/** Where the centreline enters and leaves lid or base, in that panel's frame; both ends of a wall. */
export function endsOf({ panels, real }: Layout, face: Face): readonly [number, number] {
  const { minX, maxX } = panels[face].bounds
  if (!real || (face !== 'lid' && face !== 'base')) return [minX, maxX]
  const { neckEnd, tailEnd } = real[face].edges
  return [0, tailEnd.at - neckEnd.at]
}

/** Bass and treble edge of a face at a place along it, in that panel's frame. */
export function sidesAt({ panels, real }: Layout, face: Face, along: number): readonly [number, number] {
  const { minY, maxY } = panels[face].bounds
  if (!real || (face !== 'lid' && face !== 'base')) return [minY, maxY]
  const { bass, treble, neckEnd } = real[face].edges
  const x = along + neckEnd.at
  return [bass.at + bass.slope * x, treble.at + treble.slope * x]
}

/** x of the tail-end wall's inner face so far from the centreline. */
export function tailWallAt({ box, real }: Layout, across: number): number {
  if (!real) return box.insideX1
  const { at, slope } = real.inside.edges.tailEnd
  return box.x0 + at + slope * across
}

/**
 * How far a face reaches from a place on it, square along and across: its own bounds, or on a surveyed lid or base where its
 * edges run beside that place. Example: of a rectangle it is `panel.bounds` whatever the place.
 */
export function edgesAt(layout: Layout, face: Face, at: Point): Bounds {
  const { panels, real } = layout
  if (!real || (face !== 'lid' && face !== 'base')) return panels[face].bounds
  const { neckEnd, tailEnd } = real[face].edges
  const [minY, maxY] = sidesAt(layout, face, at.x)
  const from = neckEnd.at
  return {
    minX: neckEnd.at + neckEnd.slope * at.y - from,
    maxX: tailEnd.at + tailEnd.slope * at.y - from,
    minY,
    maxY,
  }
}

/**
 * From a rectangle inside the box, in the instrument frame, to the inner faces of the four walls: the least at each, negative
 * where it stands in the wall. Example: a block in the corner of a square box has 0 twice.
 */
export function roomAround(
  { box, real }: Layout,
  { minX, maxX, minY, maxY }: Bounds,
): { readonly neckEnd: number; readonly tailEnd: number; readonly bass: number; readonly treble: number } {
  if (!real)
    return {
      neckEnd: minX - box.insideX0,
      tailEnd: box.insideX1 - maxX,
      bass: minY - box.insideBass,
      treble: box.insideTreble - maxY,
    }
  const { neckEnd, tailEnd, bass, treble } = real.inside.edges
  // Along a straight wall the nearest place is one of two corners; measured square to the wall.
  const end = ({ at, slope }: Edge, x: number, sense: 1 | -1) =>
    Math.min(...[minY, maxY].map((y) => sense * (x - box.x0 - at - slope * y))) / Math.hypot(1, slope)
  const side = ({ at, slope }: Edge, y: number, sense: 1 | -1) =>
    Math.min(...[minX, maxX].map((x) => sense * (y - at - slope * (x - box.x0)))) / Math.hypot(1, slope)
  return {
    neckEnd: end(neckEnd, minX, 1),
    tailEnd: end(tailEnd, maxX, -1),
    bass: side(bass, minY, 1),
    treble: side(treble, maxY, -1),
  }
}

/** y of the outer face of a side wall so far along the instrument. */
export function sideWallAt(
  { box, real }: Pick<Layout, 'box' | 'real'>,
  wall: 'bass-wall' | 'treble-wall',
  x: number,
): number {
  if (!real) return wall === 'bass-wall' ? -box.halfWidth : box.halfWidth
  const { at, slope } = real.outside.edges[wall === 'bass-wall' ? 'bass' : 'treble']
  return at + slope * (x - box.x0)
}
