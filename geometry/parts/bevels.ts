/** Bevels that let a hinged lid swing, drawn on the lid. */
import type { Point } from '../plane/index.ts'
import type { Layout, Panel } from '../solve/layout.ts'
import { datum, mark } from './operations.ts'
import type { Operation } from './part.ts'

const OPPOSITE = {
  'bass wall': 'treble wall',
  'treble wall': 'bass wall',
  'neck end': 'tail end',
  'tail end': 'neck end',
} as const

/** How far the lid's edges are bevelled so that it swings: scribed where the outer face is planed, a datum below. */
export function bevelLines(lid: Layout['design']['box']['lid'], { bounds: box }: Panel): Operation[] {
  if (lid.kind !== 'hinged') return []
  const along = (edge: keyof typeof OPPOSITE, deep: number): [Point, Point] => {
    const x = edge === 'neck end' ? box.minX + deep : box.maxX - deep
    const y = edge === 'bass wall' ? box.minY + deep : box.maxY - deep
    return edge === 'neck end' || edge === 'tail end'
      ? [
          { x, y: box.minY },
          { x, y: box.maxY },
        ]
      : [
          { x: box.minX, y },
          { x: box.maxX, y },
        ]
  }
  return [
    ...(lid.bevelAtHinge > 0
      ? [mark(...along(lid.hingeEdge, lid.bevelAtHinge), 'Bevel from here to the hinge edge')]
      : []),
    ...(lid.bevelOpposite > 0
      ? [datum(...along(OPPOSITE[lid.hingeEdge], lid.bevelOpposite), 'Bevel underneath, from here out')]
      : []),
  ]
}
