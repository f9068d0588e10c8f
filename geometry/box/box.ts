/** The box as stated, set under the strings: heights, inner faces, and its six faces as flat panels. */
import type { Design } from '../design/schema.ts'
import type { Face } from '../kinds/kind.ts'
import { bounds, type Contour, rectangle, roundedRectangle } from '../plane/index.ts'
import type { BoxLayout, Panel } from '../solve/layout.ts'

/** How far the lid's neck-end edge lies behind the outer face of the neck-end wall. */
export function lidInset(box: Design['box']): number {
  return box.lid.fit === 'on the walls' ? 0 : box.walls.neckEnd + box.lid.play
}

/** Length of the lid itself, along the neck: shorter than the box where it is let in between the walls. */
export function lidLength(box: Design['box']): number {
  return box.lid.fit === 'on the walls'
    ? box.length
    : box.length - box.walls.neckEnd - box.walls.tailEnd - 2 * box.lid.play
}

/** Places the box with its neck-end face at `x0`. */
export function boxAt(box: Design['box'], x0: number): BoxLayout {
  const wallTop = box.lid.fit === 'on the walls' ? -box.lid.thickness : 0
  const baseBottom = -box.depth
  const baseTop = baseBottom + box.base.thickness
  return {
    x0,
    x1: x0 + box.length,
    insideX0: x0 + box.walls.neckEnd,
    insideX1: x0 + box.length - box.walls.tailEnd,
    insideBass: -box.width / 2 + box.walls.bass,
    insideTreble: box.width / 2 - box.walls.treble,
    halfWidth: box.width / 2,
    lidBottom: -box.lid.thickness,
    wallTop,
    wallBottom: box.base.fit === 'under the walls' ? baseTop : baseBottom,
    baseTop,
    baseBottom,
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

const outlined = new WeakMap<Design['box'], Record<Face, Outlined>>()

/** The faces in their own frames; they hang on the box alone and are remembered with it. */
function outlinesOf(box: Design['box']): Record<Face, Outlined> {
  const known = outlined.get(box)
  if (known) return known
  const at = boxAt(box, 0)
  const { walls, lid, base, width, length, cornerRadius } = box
  const face = (name: Face, outline: Contour, thickness: number, fromX0: number): Outlined => ({
    face: name,
    outline,
    bounds: bounds(outline),
    thickness,
    fromX0,
  })
  const between = (play: number): [Contour, number] => [
    slab(
      0,
      -width / 2 + walls.bass + play,
      length - walls.neckEnd - walls.tailEnd - 2 * play,
      width / 2 - walls.treble - play,
      Math.max(0, cornerRadius - Math.max(walls.neckEnd, walls.tailEnd, walls.bass, walls.treble) - play),
    ),
    walls.neckEnd + play,
  ]
  const full: [Contour, number] = [slab(0, -width / 2, length, width / 2, cornerRadius), 0]
  const wallHeight = Math.max(at.wallTop - at.wallBottom, HAIR)
  const wall = (long: number) => slab(-long / 2, -wallHeight, long / 2, 0, 0)
  const [lidOutline, lidX] = lid.fit === 'on the walls' ? full : between(lid.play)
  const [baseOutline, baseX] = base.fit === 'under the walls' ? full : between(0)
  const [end, side] = [wall(width), wall(length)]
  const faces: Record<Face, Outlined> = {
    lid: face('lid', lidOutline, lid.thickness, lidX),
    base: face('base', baseOutline, base.thickness, baseX),
    'neck-end-wall': face('neck-end-wall', end, walls.neckEnd, 0),
    'tail-end-wall': face('tail-end-wall', end, walls.tailEnd, length),
    'bass-wall': face('bass-wall', side, walls.bass, length / 2),
    'treble-wall': face('treble-wall', side, walls.treble, length / 2),
  }
  outlined.set(box, faces)
  return faces
}

/** The faces of a box whose neck-end face lies at `x0`, in the frames stated at the head of `solve/layout.ts`. */
export function panelsOf(box: Design['box'], x0: number): Record<Face, Panel> {
  const faces = outlinesOf(box)
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
