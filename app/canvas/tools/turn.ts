/** Turns a thing about its centre. Whole steps of fifteen degrees take hold; otherwise it goes by half degrees. */
import {
  change,
  indexOfThing,
  type Layout,
  type Placed,
  placedCalled,
  setWithCompanions,
  solve,
} from '../../../geometry/index.ts'
import { nameOf } from '../../parts/say.ts'
import { aroundOnce } from '../../state/around-once.ts'
import { beginGesture } from '../../state/index.ts'
import { dragging } from '../dragging.ts'
import { type Frame, fromScreen, toScreen } from '../frame.ts'
import { chip, paintGhost } from '../guides.ts'
import { paintMargin } from '../margin.ts'
import { stroke } from '../paint.ts'
import { REACH } from './drag-thing.ts'
import type { PointerAt, Tool } from './tool.ts'

const STEP = 15
const FINE = 0.5

export function turnThing(layout: Layout, frame: Frame, placed: Placed, from: PointerAt): Tool {
  const { id } = placed.thing
  const gesture = beginGesture(`Turn ${nameOf(id, layout)}`)
  const start = solve(gesture.start)
  const own = placedCalled(start, id) ?? placed
  const index = indexOfThing(gesture.start, id)
  const moving = new Set([id])
  const angleOf = (at: PointerAt) => {
    const here = fromScreen(frame, at)
    return (Math.atan2(here.y - own.at.y, here.x - own.at.x) * 180) / Math.PI
  }
  const began = angleOf(from)
  let turned = own.thing.turnDegrees
  let held = false
  let pointer = from
  dragging.moves(moving, start)
  return {
    cursor: 'grabbing',
    moving,
    move(at) {
      pointer = at
      const wanted = own.thing.turnDegrees + angleOf(at) - began
      const centre = toScreen(frame, own.at)
      const arm = Math.max(20, Math.hypot(at.x - centre.x, at.y - centre.y))
      const reach = ((at.touch ? REACH.touch : REACH.mouse) / arm) * (180 / Math.PI)
      const whole = Math.round(wanted / STEP) * STEP
      held = !at.free && Math.abs(whole - wanted) <= Math.min(reach, STEP / 3)
      turned = aroundOnce(
        held ? whole : at.free ? Math.round(wanted * 100) / 100 : Math.round(wanted / FINE) * FINE,
      )
      gesture.preview(
        change(gesture.start, ...setWithCompanions(gesture.start, index, 'turnDegrees', turned)),
      )
    },
    finish: () => gesture.finish(),
    cancel: () => gesture.cancel(),
    paint(pen, looks, current) {
      const now = placedCalled(current, id)
      if (!now) return
      paintGhost(pen, looks, frame, { ...own, at: { x: Number.NaN, y: Number.NaN } }, now)
      stroke(pen, toScreen(frame, own.at), pointer, { stroke: looks.accent, width: 1 })
      const words = `turned ${String(turned).replace('-', '−')}°${held ? ', whole step' : ''}`
      chip(pen, looks, words, { x: pointer.x, y: Math.max(16, pointer.y - (pointer.touch ? 104 : 24)) })
      paintMargin(pen, looks, current, moving, pointer)
    },
  }
}
