/** What stands in the box, dashed; and pictures that are to stay whole, lightly hatched with their sign. */
import { artworkOf, type Face, insidePiecesOf, type Layout } from '../../geometry/index.ts'
import type { View } from './camera.ts'
import { type Frame, toScreen } from './frame.ts'
import { HIDDEN, type Looks, THIN } from './looks.ts'
import { hatch, type Pen, shape, slab, trace, write } from './paint.ts'

/** Seen through the lid. */
export function paintInside(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  for (const { box } of insidePiecesOf(layout))
    slab(pen, view.plan, box.minX, box.minY, box.maxX, box.maxY, {
      stroke: looks.soft,
      width: THIN,
      dash: HIDDEN,
    })
}

/** Beside the centreline of the section, or on it: dashed either way, for most stand beside it. */
export function paintInsideSection(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  for (const { box } of insidePiecesOf(layout)) {
    const met = box.minY < 0 && box.maxY > 0
    slab(pen, view.section, box.minX, box.minZ, box.maxX, box.maxZ, {
      stroke: met ? looks.ink : looks.soft,
      width: THIN,
      dash: HIDDEN,
      ...(met ? { fill: looks.wall } : {}),
    })
  }
}

/** Wider than this on the screen, a picture has room for its sign, pixels. */
const ROOM = 34

/** The pictures on one face. */
export function paintArtwork(pen: Pen, looks: Looks, frame: Frame, layout: Layout, face: Face): void {
  for (const one of artworkOf(layout)) {
    if (one.face !== face) continue
    const { minX, maxX, minY, maxY } = one.bounds
    const [a, b] = [toScreen(frame, { x: minX, y: minY }), toScreen(frame, { x: maxX, y: maxY })]
    const area = {
      minX: Math.min(a.x, b.x),
      maxX: Math.max(a.x, b.x),
      minY: Math.min(a.y, b.y),
      maxY: Math.max(a.y, b.y),
    }
    trace(pen, frame, one.contour)
    hatch(pen, area, looks.faint, false)
    shape(pen, frame, one.contour, { stroke: looks.soft, width: THIN, dash: [2, 3] })
    if (area.maxX - area.minX < ROOM || area.maxY - area.minY < 14) continue
    write(pen, looks, 'keep', toScreen(frame, one.at), {
      colour: looks.soft,
      size: 10,
      align: 'center',
      base: 'middle',
      behind: face === 'lid' || face === 'base' ? looks.lid : looks.wall,
    })
  }
}
