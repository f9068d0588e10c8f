/** The ends of measures that stay on the drawing: each is taken hold of by its ring and dragged to something else. */
import { measuredOn, type Point, takeMeasure } from '../../geometry/index.ts'
import { announce } from '../parts/Announcer.tsx'
import { sayEnd } from '../parts/say-measures.ts'
import { useBench } from '../state/index.ts'
import { toScreen } from './frame.ts'
import { chip } from './guides.ts'
import { ring } from './measures-paint.ts'
import { foundAt, keepMeasure, paintTaken, same } from './measuring.ts'
import { stroke } from './paint.ts'
import type { Scene } from './scene.ts'
import type { PointerAt, Tool } from './tools/tool.ts'

/** How near a pointer must come to a ring, pixels. A finger on a thing means the thing: beside one it reaches farther. */
const NEAR = { mouse: 7, touch: 12, touchBeside: 22 }

export interface EndTaken {
  /** The measure's place in the design's list. */
  readonly index: number
  readonly which: 'from' | 'to'
  /** Where the end that stays is, pixels. */
  readonly stays: Point
}

/** The ring under the pointer, the nearest first. */
export function endTakenAt(scene: Scene, here: PointerAt, beside: boolean): EndTaken | null {
  const { subject } = scene
  let best: EndTaken | null = null
  let least = here.touch ? (beside ? NEAR.touchBeside : NEAR.touch) : NEAR.mouse
  for (const { index, measure, from, to } of measuredOn(scene.layout())) {
    const frame = subject.faces.includes(measure.face) ? subject.frameOf(measure.face) : null
    if (!frame) continue
    const spots = { from: toScreen(frame, from), to: toScreen(frame, to) }
    for (const which of ['to', 'from'] as const) {
      const off = Math.hypot(spots[which].x - here.x, spots[which].y - here.y)
      if (off >= least) continue
      least = off
      best = { index, which, stays: spots[which === 'to' ? 'from' : 'to'] }
    }
  }
  return best
}

/** Drags one end to another edge, centre or line of the same face; let go anywhere else it stays where it was. */
export function moveEnd(scene: Scene, { index, which, stays }: EndTaken, from: PointerAt): Tool {
  let hand = from
  const now = () => {
    const measure = useBench.getState().design.measures[index]
    const found = measure && foundAt(scene, hand)
    const other = measure?.[which === 'from' ? 'to' : 'from']
    if (!measure || !other || !found || found.face !== measure.face || same(found.end, other)) return null
    const moved = { ...measure, [which]: found.end }
    const taken = takeMeasure(scene.layout(), moved)
    return taken && { moved, taken, found }
  }
  return {
    cursor: 'move',
    measured: index,
    move(at) {
      hand = at
    },
    finish() {
      const end = now()
      if (!end) announce('There is nothing there to measure to on this face: the end is where it was.')
      else if (keepMeasure(end.moved, index))
        announce(`The measure now ends at the ${sayEnd(end.found.end, scene.layout())}.`)
    },
    cancel() {},
    paint(pen, looks, layout) {
      const end = now()
      if (end) {
        paintTaken(pen, looks, layout, end.found.frame, end.taken, hand)
        return
      }
      stroke(pen, stays, hand, { stroke: looks.soft, width: 1, dash: [3, 4] })
      for (const spot of [stays, hand]) ring(pen, looks, spot, looks.accent)
      chip(pen, looks, 'to an edge, a centre or a line', {
        x: hand.x,
        y: Math.max(16, hand.y - (hand.touch ? 74 : 26)),
      })
    },
  }
}
