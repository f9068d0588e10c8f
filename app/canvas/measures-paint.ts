/** Measures that stay on the drawing, with their figures. */
import { type Face, formatLength, type Layout, measuredOn } from '../../geometry/index.ts'
import { type Frame, toScreen } from './frame.ts'
import type { Looks } from './looks.ts'
import { dimension, type Pen, write } from './paint.ts'

export function paintMeasures(
  pen: Pen,
  looks: Looks,
  layout: Layout,
  faces: readonly Face[],
  frameOf: (face: Face) => Frame | null,
): void {
  for (const { measure, from, to, mm } of measuredOn(layout)) {
    const frame = faces.includes(measure.face) ? frameOf(measure.face) : null
    if (!frame) continue
    const [a, b] = [toScreen(frame, from), toScreen(frame, to)]
    dimension(pen, a, b, looks.soft)
    const upright = Math.abs(b.x - a.x) < Math.abs(b.y - a.y)
    write(
      pen,
      looks,
      formatLength(mm, layout.design.units, { unit: true }),
      { x: (a.x + b.x) / 2 + (upright ? 8 : 0), y: (a.y + b.y) / 2 - (upright ? 0 : 9) },
      {
        colour: looks.ink,
        size: 12,
        align: upright ? 'left' : 'center',
        base: 'middle',
        behind: looks.sheet,
      },
    )
  }
}
