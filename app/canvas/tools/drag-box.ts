/**
 * Slides saddle and strings over the box, or the box under the strings: the same change, seen from either side.
 * Nut and saddle stay a scale length apart, so what changes is where the saddle stands on the lid.
 */
import {
  change,
  endsOf,
  formatLength,
  type Layout,
  onRule,
  saddleFields,
  solve,
} from '../../../geometry/index.ts'
import { beginGesture } from '../../state/index.ts'
import type { View } from '../camera.ts'
import { toScreen } from '../frame.ts'
import { chip } from '../guides.ts'
import { paintDistances } from '../paint-distances.ts'
import { lidFrame } from '../plan.ts'
import type { PointerAt, Tool } from './tool.ts'

const REACH = { mouse: 7, touch: 12 }

export interface BoxDrag {
  /** What the pointer holds: the saddle goes with it, or the box does. */
  readonly holds: 'saddle' | 'box'
  view(): View
  /** Moves the sheet so many pixels sideways from where it was when the drag began. */
  slide(pixels: number): void
}

export function dragBox({ holds, view, slide }: BoxDrag, from: PointerAt): Tool {
  const gesture = beginGesture(holds === 'saddle' ? 'Move the saddle' : 'Move the box')
  const start = solve(gesture.start)
  const { scale } = view().camera
  let heldBy: string | null = null
  return {
    cursor: 'ew-resize',
    move(at) {
      const way = ((at.x - from.x) / scale) * (holds === 'saddle' ? 1 : -1)
      const wanted = start.saddle.along + way
      const reach = at.free ? 0 : (at.touch ? REACH.touch : REACH.mouse) / scale
      const line = at.free ? null : nearestLine(start, wanted, reach)
      heldBy = line?.name ?? null
      const along = line ? line.at : at.free ? wanted : onRule(wanted, gesture.start.units)
      gesture.preview(change(gesture.start, ...saddleFields(start, along)))
      // With the saddle in hand the box stays where it is on the screen, and neck and strings slide over it.
      if (holds === 'saddle') slide((along - start.saddle.along) * scale)
    },
    finish: () => gesture.finish(),
    cancel() {
      gesture.cancel()
      if (holds === 'saddle') slide(0)
    },
    paint(pen, looks, layout) {
      const now = view()
      const { saddle } = layout
      const y = saddle.foot.maxY + 4
      const [minX, maxX] = endsOf(layout, 'lid')
      paintDistances(pen, looks, lidFrame(now, layout), layout, [
        {
          of: 'edge along',
          from: { x: minX, y },
          to: { x: saddle.along, y },
          mm: saddle.along - minX,
        },
        {
          of: 'edge along',
          from: { x: saddle.along, y: -y },
          to: { x: maxX, y: -y },
          mm: maxX - saddle.along,
        },
      ])
      const at = toScreen(now.plan, { x: saddle.x, y: now.plan.up * layout.box.halfWidth })
      const overBox = layout.frets.filter((fret) => fret.overBox && fret.onWood).length
      const words =
        heldBy ??
        `${formatLength(layout.box.x0, layout.design.units, { unit: true })} from nut to box, ${overBox} frets over it`
      chip(pen, looks, words, { x: at.x, y: Math.max(16, at.y - 18) })
    },
  }
}

/** Places of the saddle on the lid that mean something. */
function nearestLine(start: Layout, wanted: number, reach: number): { at: number; name: string } | null {
  const { originX } = start.panels.lid
  const [, end] = endsOf(start, 'lid')
  const inset = originX - start.box.x0
  const lines = [
    { at: end / 2, name: 'middle of the lid' },
    { at: (end * 2) / 3, name: 'two thirds of the lid' },
    { at: (end * 3) / 4, name: 'three quarters of the lid' },
    ...start.frets.map((fret) => ({
      at: start.saddle.x - fret.fromNut - inset,
      name: `fret ${fret.number} at the edge of the box`,
    })),
  ]
  return lines.reduce<{ at: number; name: string } | null>((best, line) => {
    const off = Math.abs(line.at - wanted)
    return off <= reach && (!best || off < Math.abs(best.at - wanted)) ? line : best
  }, null)
}
