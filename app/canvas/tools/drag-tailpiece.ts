/** Moves the row of string holes along the neck's tail or the lid. */
import { change, clean, onRule, solve } from '../../../geometry/index.ts'
import { beginGesture } from '../../state/index.ts'
import type { View } from '../camera.ts'
import { paintDistances } from '../paint-distances.ts'
import type { PointerAt, Tool } from './tool.ts'

export function dragTailpiece(view: () => View, from: PointerAt): Tool {
  const gesture = beginGesture('Move the string holes')
  const start = solve(gesture.start)
  const { tailpiece, units } = gesture.start
  const { scale } = view().camera
  const towardsTail = tailpiece.at === 'the lid' ? -1 : 1
  return {
    cursor: 'ew-resize',
    move(at) {
      const wanted = tailpiece.fromEdge + (towardsTail * (at.x - from.x)) / scale
      const fromEdge = clean(Math.min(300, Math.max(1, at.free ? wanted : onRule(wanted, units))))
      gesture.preview(change(gesture.start, [['tailpiece', 'fromEdge'], fromEdge]))
    },
    finish: () => gesture.finish(),
    cancel: () => gesture.cancel(),
    paint(pen, looks, layout) {
      const hole = layout.tailHoles.at(-1)
      if (!hole) return
      const y = hole.y + start.design.tailpiece.diameter + 3
      const { fromEdge } = layout.design.tailpiece
      const edge = hole.x - towardsTail * fromEdge
      paintDistances(pen, looks, view().plan, layout, [
        { of: 'edge along', from: { x: edge, y }, to: { x: hole.x, y }, mm: fromEdge },
        {
          of: 'edge along',
          from: { x: hole.x, y: -y },
          to: { x: layout.saddle.x, y: -y },
          mm: Math.abs(hole.x - layout.saddle.x),
        },
      ])
    },
  }
}
