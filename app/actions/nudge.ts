/** Arrow keys move what is selected by one step of the user's rule; a held key is one entry of history. */
import { change, type Layout, solve, stepOf } from '../../geometry/index.ts'
import { tellDistances } from '../canvas/distances.ts'
import { facing } from '../canvas/frame.ts'
import { clean, type Field, placeFields, saddleFields } from '../canvas/moving.ts'
import { announce } from '../parts/Announcer.tsx'
import { nameOf, sayLength } from '../parts/say.ts'
import { beginGesture, type Gesture, useBench } from '../state/index.ts'

export type Arrow = 'ArrowLeft' | 'ArrowRight' | 'ArrowUp' | 'ArrowDown'

const WAYS: Readonly<Record<Arrow, readonly [right: number, up: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
}

interface Nudging {
  readonly gesture: Gesture
  readonly of: string
  right: number
  up: number
}

let nudging: Nudging | null = null
let telling = 0

/** Moves the selection; `times` steps at once. False where nothing that moves is selected. */
export function nudge(arrow: Arrow, times: number): boolean {
  const { selection, design } = useBench.getState()
  if (selection === null) return false
  if (nudging?.of !== selection) {
    finishNudge()
    if (fieldsFor(solve(design), selection, 0, 0) === null) return false
    nudging = {
      gesture: beginGesture(`Move ${nameOf(selection, solve(design))}`),
      of: selection,
      right: 0,
      up: 0,
    }
  }
  const [right, up] = WAYS[arrow]
  nudging.right += right * times
  nudging.up += up * times
  const { gesture } = nudging
  const fields = fieldsFor(solve(gesture.start), selection, nudging.right, nudging.up)
  if (fields) gesture.preview(change(gesture.start, ...fields))
  tell(selection)
  return true
}

/** The key is up again: what was moved becomes one entry of history. */
export function finishNudge(): void {
  nudging?.gesture.finish()
  nudging = null
}

/** Fields for a way on the screen, or `null` for what cannot be moved. */
function fieldsFor(layout: Layout, id: string, right: number, up: number): Field[] | null {
  const step = stepOf(layout.design.units)
  if (id === 'saddle') return saddleFields(layout, layout.saddle.along + right * step)
  if (id === 'box') return saddleFields(layout, layout.saddle.along - right * step)
  if (id === 'tailpiece') {
    const { at, fromEdge } = layout.design.tailpiece
    const way = at === 'the lid' ? -right : at === 'the tail-end wall' ? -up : right
    return [[['tailpiece', 'fromEdge'], clean(Math.max(1, fromEdge + way * step))]]
  }
  const placed = layout.placed.find((one) => one.thing.id === id)
  if (!placed) return null
  const turned = facing(placed.face, layout.up)
  return placeFields(layout, placed, {
    x: placed.at.x + turned.right * right * step,
    y: placed.at.y + turned.up * up * step,
  })
}

/** Says where it came to lie, once the key rests. */
function tell(id: string): void {
  window.clearTimeout(telling)
  telling = window.setTimeout(() => {
    const layout = solve(useBench.getState().design)
    const placed = layout.placed.find((one) => one.thing.id === id)
    if (placed) announce(`${nameOf(id, layout)}: ${tellDistances(layout, placed)}`)
    else if (id === 'saddle' || id === 'box')
      announce(
        `Saddle ${sayLength(layout.saddle.along, layout.design.units)} from the neck-end edge of the lid`,
      )
    else if (id === 'tailpiece')
      announce(
        `String holes ${sayLength(layout.design.tailpiece.fromEdge, layout.design.units)} from the edge`,
      )
  }, 300)
}
