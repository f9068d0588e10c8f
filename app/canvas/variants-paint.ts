/** Variants held beside the design, over the plan: box, neck and saddle from the same nut, each in a line of its own sort. */
import { type Layout, solve, wallLinesOf } from '../../geometry/index.ts'
import type { Variant } from '../state/variants.ts'
import type { View } from './camera.ts'
import { toScreen } from './frame.ts'
import type { Looks } from './looks.ts'
import { type Pen, path, shape, slab, write } from './paint.ts'

/** Dashes in pixels, told apart without colour: short, dotted, dash and dot, dash and two dots. */
export const VARIANT_DASHES: Readonly<Record<number, number[]>> = {
  1: [9, 4],
  2: [2, 3],
  3: [12, 3, 2, 3],
  4: [16, 3, 2, 3, 2, 3],
}

const FAINT = 0.75

/** All of them, faint, each with its number by the tail end. */
export function paintVariants(pen: Pen, looks: Looks, view: View, held: readonly Variant[]): void {
  pen.save()
  pen.globalAlpha = FAINT
  for (const { number, design } of held) paintOne(pen, looks, view, solve(design), number)
  pen.restore()
}

function paintOne(pen: Pen, looks: Looks, view: View, layout: Layout, number: number): void {
  const line = { stroke: looks.ink, width: 1.2, dash: VARIANT_DASHES[number] ?? [] }
  const { neck, saddle, box } = layout
  shape(pen, view.plan, wallLinesOf(layout).outside, line)
  for (const side of [-1, 1])
    path(
      pen,
      view.plan,
      neck.halfWidths.map(({ x, half }) => ({ x, y: side * half })),
      line,
    )
  slab(pen, view.plan, saddle.foot.minX, saddle.foot.minY, saddle.foot.maxX, saddle.foot.maxY, line)
  // Each number has a height of its own, so that none covers another where boxes end together.
  const corner = toScreen(view.plan, { x: box.x1, y: box.halfWidth })
  const down = view.plan.up > 0 ? 1 : -1
  const at = { x: corner.x - 8, y: corner.y + down * 13 * number }
  write(pen, looks, String(number), at, { colour: looks.ink, size: 12, align: 'center' })
}
