/** The box as stated, set under the strings: heights, inner faces, and its six faces as flat panels. */

import type { Design } from '../design/schema.ts'
import type { Face } from '../kinds/kind.ts'
import { bounds, type Contour, polygon, rectangle, roundedRectangle } from '../plane/index.ts'
import { notes } from '../quantity/notes.ts'
import type { BoxLayout, Panel } from '../solve/layout.ts'
import { contourOf, type RealBox, type RealOutlines, type Side, shrunk, sideOf } from './real-box.ts'

/** How far the lid's neck-end edge lies behind the outer face of the neck-end wall, on the centreline. */
export function lidInset(box: Design['box'], real: RealBox | null = null): number {
  if (real) return outlinesFor(box, real).lid.edges.neckEnd.at
  return box.lid.fit === 'on the walls' ? 0 : box.walls.neckEnd + box.lid.play
}

/** Length of the lid itself, along the neck: shorter than the box where it is let in between the walls. */
export function lidLength(box: Design['box'], real: RealBox | null = null): number {
  if (real) {
    const { tailEnd, neckEnd } = outlinesFor(box, real).lid.edges
    return tailEnd.at - neckEnd.at
  }
  return box.lid.fit === 'on the walls'
    ? box.length
    : box.length - box.walls.neckEnd - box.walls.tailEnd - 2 * box.lid.play
}

const ofReal = notes<RealBox, { readonly box: Design['box']; readonly outlines: RealOutlines }>()

/** Inner faces, lid and base of a surveyed box, each edge as far inside the outer one as the walls are thick. */
export function outlinesFor(box: Design['box'], real: RealBox): RealOutlines {
  const before = ofReal.get(real)
  if (before && before.box === box) return before.outlines
  const inside = (play: number) =>
    shrunk(real.outside, {
      bass: box.walls.bass + play,
      treble: box.walls.treble + play,
      neckEnd: box.walls.neckEnd + play,
      tailEnd: box.walls.tailEnd + play,
    })
  const outlines: RealOutlines = {
    outside: real.outside,
    inside: inside(0),
    lid: box.lid.fit === 'on the walls' ? real.outside : inside(box.lid.play),
    base: box.base.fit === 'under the walls' ? real.outside : inside(0),
  }
  ofReal.set(real, { box, outlines })
  return outlines
}

/** Places the box with its neck-end face at `x0`; of a surveyed box, where the centreline crosses that face. */
export function boxAt(box: Design['box'], x0: number, real: RealBox | null = null): BoxLayout {
  const wallTop = box.lid.fit === 'on the walls' ? -box.lid.thickness : 0
  const baseBottom = -box.depth
  const baseTop = baseBottom + box.base.thickness
  const heights = {
    lidBottom: -box.lid.thickness,
    wallTop,
    wallBottom: box.base.fit === 'under the walls' ? baseTop : baseBottom,
    baseTop,
    baseBottom,
  }
  if (real) return { ...realPlan(outlinesFor(box, real), real, x0), ...heights }
  return {
    x0,
    x1: x0 + box.length,
    insideX0: x0 + box.walls.neckEnd,
    insideX1: x0 + box.length - box.walls.tailEnd,
    insideBass: -box.width / 2 + box.walls.bass,
    insideTreble: box.width / 2 - box.walls.treble,
    halfWidth: box.width / 2,
    ...heights,
  }
}

/** The same figures of a box that is no rectangle: ends on the centreline, sides half way between the ends. */
function realPlan({ inside, outside }: RealOutlines, { length }: RealBox, x0: number) {
  const { bass, treble, neckEnd, tailEnd } = inside.edges
  return {
    x0,
    x1: x0 + length,
    insideX0: x0 + neckEnd.at,
    insideX1: x0 + tailEnd.at,
    insideBass: bass.at + (bass.slope * length) / 2,
    insideTreble: treble.at + (treble.slope * length) / 2,
    halfWidth: Math.max(...outside.corners.map(({ y }) => Math.abs(y))),
  }
}

/** A rectangle between two sides that may have come out the wrong way round: never less than a hair wide. */
function slab(minX: number, minY: number, maxX: number, maxY: number, radius: number): Contour {
  const length = Math.max(maxX - minX, HAIR)
  const width = Math.max(maxY - minY, HAIR)
  if (radius <= 0) return rectangle(minX, minY, minX + length, minY + width)
  return roundedRectangle({ x: minX + length / 2, y: minY + width / 2 }, length, width, radius)
}

/** Walls thicker than the box would turn its inside out; the checks say so, the drawing stays a drawing. */
const HAIR = 0.01

interface Outlined extends Omit<Panel, 'originX'> {
  /** Where its frame begins, from the neck-end face of the box. */
  readonly fromX0: number
}

const outlined = notes<
  Design['box'],
  { readonly real: RealBox | null; readonly faces: Record<Face, Outlined> }
>()

/** The faces in their own frames; they hang on the box alone and are remembered with it. */
function outlinesOf(box: Design['box'], real: RealBox | null): Record<Face, Outlined> {
  const known = outlined.get(box)
  if (known && known.real === real) return known.faces
  const faces = real ? realFaces(box, real) : rectangular(box)
  outlined.set(box, { real, faces })
  return faces
}

const face = (name: Face, outline: Contour, thickness: number, fromX0: number): Outlined => ({
  face: name,
  outline,
  bounds: bounds(outline),
  thickness,
  fromX0,
})

/** What is left of the outside radius of the corners behind walls and play. */
const innerRadius = ({ walls, cornerRadius }: Design['box'], play: number): number =>
  Math.max(0, cornerRadius - Math.max(walls.neckEnd, walls.tailEnd, walls.bass, walls.treble) - play)

function rectangular(box: Design['box']): Record<Face, Outlined> {
  const at = boxAt(box, 0)
  const { walls, lid, base, width, length, cornerRadius } = box
  const between = (play: number): [Contour, number] => [
    slab(
      0,
      -width / 2 + walls.bass + play,
      length - walls.neckEnd - walls.tailEnd - 2 * play,
      width / 2 - walls.treble - play,
      innerRadius(box, play),
    ),
    walls.neckEnd + play,
  ]
  const full: [Contour, number] = [slab(0, -width / 2, length, width / 2, cornerRadius), 0]
  const wallHeight = Math.max(at.wallTop - at.wallBottom, HAIR)
  const wall = (long: number) => slab(-long / 2, -wallHeight, long / 2, 0, 0)
  const [lidOutline, lidX] = lid.fit === 'on the walls' ? full : between(lid.play)
  const [baseOutline, baseX] = base.fit === 'under the walls' ? full : between(0)
  const [end, side] = [wall(width), wall(length)]
  return {
    lid: face('lid', lidOutline, lid.thickness, lidX),
    base: face('base', baseOutline, base.thickness, baseX),
    'neck-end-wall': face('neck-end-wall', end, walls.neckEnd, 0),
    'tail-end-wall': face('tail-end-wall', end, walls.tailEnd, length),
    'bass-wall': face('bass-wall', side, walls.bass, length / 2),
    'treble-wall': face('treble-wall', side, walls.treble, length / 2),
  }
}

/** Which corners, by their number, a wall runs between: from left to right in its own frame. */
const WALLS: readonly (readonly [Exclude<Face, 'lid' | 'base'>, Side, number, number])[] = [
  ['neck-end-wall', 'neckEnd', 0, 3],
  ['tail-end-wall', 'tailEnd', 1, 2],
  ['bass-wall', 'bass', 0, 1],
  ['treble-wall', 'treble', 3, 2],
]

function realFaces(box: Design['box'], real: RealBox): Record<Face, Outlined> {
  const { lid, base, walls } = box
  const outlines = outlinesFor(box, real)
  const plan = (which: 'lid' | 'base', between: boolean, play: number) => {
    const outline = outlines[which]
    const fromX0 = outline.edges.neckEnd.at
    const radius = between ? innerRadius(box, play) : box.cornerRadius
    return face(which, contourOf(outline, fromX0, radius), box[which].thickness, fromX0)
  }
  const { wallTop, wallBottom } = boxAt(box, 0, real)
  const faces: Partial<Record<Face, Outlined>> = {
    lid: plan('lid', lid.fit !== 'on the walls', lid.play),
    base: plan('base', base.fit !== 'under the walls', 0),
  }
  for (const [name, side, from, to] of WALLS) {
    const half = sideOf(real.outside, side).length / 2
    const height = (corner: number) => Math.max(real.heights[corner] ?? wallTop - wallBottom, HAIR)
    const outline = polygon([
      { x: -half, y: -height(from) },
      { x: half, y: -height(to) },
      { x: half, y: 0 },
      { x: -half, y: 0 },
    ])
    const [a, b] = [real.outside.corners[from], real.outside.corners[to]]
    faces[name] = face(name, outline, walls[side], ((a?.x ?? 0) + (b?.x ?? 0)) / 2)
  }
  return faces as Record<Face, Outlined>
}

/** The faces of a box whose neck-end face lies at `x0`, in the frames stated at the head of `solve/layout.ts`. */
export function panelsOf(box: Design['box'], x0: number, real: RealBox | null = null): Record<Face, Panel> {
  const faces = outlinesOf(box, real)
  const panel = ({ face, outline, bounds: extent, thickness, fromX0 }: Outlined): Panel => ({
    face,
    outline,
    bounds: extent,
    thickness,
    originX: x0 + fromX0,
  })
  return {
    lid: panel(faces.lid),
    base: panel(faces.base),
    'neck-end-wall': panel(faces['neck-end-wall']),
    'tail-end-wall': panel(faces['tail-end-wall']),
    'bass-wall': panel(faces['bass-wall']),
    'treble-wall': panel(faces['treble-wall']),
  }
}
