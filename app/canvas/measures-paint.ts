/** Measures that stay on the drawing, with their names and figures, and a ring at each end to drag it by. */
import { type Face, formatLength, type Layout, measuredOn, type Point } from '../../geometry/index.ts'
import { type Frame, toScreen } from './frame.ts'
import type { Looks } from './looks.ts'
import { dimension, disc, type Pen, write } from './paint.ts'

const PIXELS = { ox: 0, oy: 0, scale: 1, right: 1, up: -1 } as const

/** The end of a measure, as something to take hold of. */
export const ring = (pen: Pen, looks: Looks, at: Point, colour: string): void =>
  disc(pen, PIXELS, at, 3.5, { fill: looks.sheet, stroke: colour, width: 1.4 })

export function paintMeasures(
  pen: Pen,
  looks: Looks,
  layout: Layout,
  faces: readonly Face[],
  frameOf: (face: Face) => Frame | null,
  /** The one whose end is in hand: its tool draws it. */
  inHand: number | undefined,
): void {
  for (const { index, measure, from, to, mm } of measuredOn(layout)) {
    const frame = faces.includes(measure.face) ? frameOf(measure.face) : null
    if (!frame || index === inHand) continue
    const [a, b] = [toScreen(frame, from), toScreen(frame, to)]
    dimension(pen, a, b, looks.soft)
    for (const end of [a, b]) ring(pen, looks, end, looks.soft)
    const upright = Math.abs(b.x - a.x) < Math.abs(b.y - a.y)
    write(
      pen,
      looks,
      [measure.name, formatLength(mm, layout.design.units, { unit: true })].filter(Boolean).join(' '),
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
