/** What stands behind the faces, with its real depth, in plan and section: hidden lines, for it lies under wood. */
import { type Layout, thingSolids } from '../../geometry/index.ts'
import type { View } from './camera.ts'
import { HIDDEN, type Looks, THIN } from './looks.ts'
import { type Pen, shape, slab } from './paint.ts'

/** From above: pots and jacks under the lid, screws and jacks through the walls. */
export function paintBodiesOnPlan(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  for (const { axis, contour, box, to, face } of thingSolids(layout)) {
    // A knob is drawn with its thing, and what stands on the base lies too deep to matter here.
    if (face === 'base' || (face === 'lid' && to > 0)) continue
    const line = { stroke: looks.soft, width: THIN, dash: HIDDEN }
    if (axis === 'z') shape(pen, view.plan, contour, line)
    else slab(pen, view.plan, box.minX, box.minY, box.maxX, box.maxY, line)
  }
}

/** From the side, all of it, on whichever face it stands; what the centreline meets is drawn in full. */
export function paintBodiesInSection(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  for (const { axis, contour, box } of thingSolids(layout)) {
    const met = box.minY <= 0 && box.maxY >= 0
    const line = met
      ? { stroke: looks.accent, width: THIN }
      : { stroke: looks.soft, width: THIN, dash: HIDDEN }
    if (axis === 'y') shape(pen, view.section, contour, line)
    else slab(pen, view.section, box.minX, box.minZ, box.maxX, box.maxZ, line)
  }
}
