/** Arrow keys move what is selected by one step of the user's rule; a held key is one entry of history. */
import {
  change,
  clean,
  type FieldSet,
  indexOfThing,
  type Layout,
  moveFields,
  placedCalled,
  saddleFields,
  solve,
  stepOf,
  type Thing,
} from '../../geometry/index.ts'
import { facing } from '../canvas/frame.ts'
import { announce } from '../parts/Announcer.tsx'
import { nameOf, sayLength } from '../parts/say.ts'
import { sizeFieldsOf, within } from '../parts/sizes.ts'
import { aroundOnce } from '../state/around-once.ts'
import { beginGesture, type Gesture, selectedThings, setField, useBench, withGroups } from '../state/index.ts'

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
  const ids = selectedThings()
  const of = ids.length > 1 ? ids.join(' ') : selection
  if (nudging?.of !== of) {
    finishNudge()
    if (fieldsFor(solve(design), selection, 0, 0) === null) return false
    const name = ids.length > 1 ? `${ids.length} things` : nameOf(selection, solve(design))
    nudging = { gesture: beginGesture(`Move ${name}`), of, right: 0, up: 0 }
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
function fieldsFor(layout: Layout, id: string, right: number, up: number): FieldSet[] | null {
  const step = stepOf(layout.design.units)
  if (id === 'saddle') return saddleFields(layout, layout.saddle.along + right * step)
  if (id === 'box') return saddleFields(layout, layout.saddle.along - right * step)
  if (id === 'tailpiece') {
    const { at, fromEdge } = layout.design.tailpiece
    const way = at === 'the lid' ? -right : at === 'the tail-end wall' ? -up : right
    return [[['tailpiece', 'fromEdge'], clean(Math.max(1, fromEdge + way * step))]]
  }
  const placed = placedCalled(layout, id)
  if (!placed) return null
  if (placed.thing.locked) {
    announce(`${nameOf(id, layout)} is locked. L lets it go.`)
    return null
  }
  const turned = facing(placed.face, layout.up)
  const wanted = new Set(withGroups(layout.design, selectedThings()))
  const all = layout.placed.filter(
    (one) => wanted.has(one.thing.id) && one.face === placed.face && !one.thing.locked,
  )
  return moveFields(layout, all, { x: turned.right * right * step, y: turned.up * up * step })
}

/** The selected thing and its place in the list, unless it is locked, which is said. */
function freeThing(): { thing: Thing; index: number } | null {
  const { selection, design } = useBench.getState()
  const index = indexOfThing(design, selection)
  const thing = design.things[index]
  if (thing?.locked) announce('It is locked. L lets it go.')
  return thing && !thing.locked ? { thing, index } : null
}

/** Makes the selected thing longer or wider by steps of the user's rule. */
export function growBy(extent: 'along' | 'across', steps: number): void {
  const found = freeThing()
  const field = found && sizeFieldsOf(found.thing)[extent]
  if (found && !field) announce('It has no such size to change.')
  if (!found || !field) return
  const { units } = useBench.getState().design
  const now = Number((found.thing as Readonly<Record<string, unknown>>)[field.name])
  const to = clean(within(field, now + steps * stepOf(units)))
  const answer = setField(['things', found.index, field.name], to, field.label)
  announce(answer.ok ? `${field.label}: ${sayLength(to, units)}` : answer.sentence)
}

/** Turns the selected thing by so many degrees. */
export function turnBy(degrees: number): void {
  const found = freeThing()
  if (!found) return
  const to = aroundOnce(found.thing.turnDegrees + degrees)
  const answer = setField(['things', found.index, 'turnDegrees'], to, 'Turned')
  announce(answer.ok ? `Turned ${to} degrees` : answer.sentence)
}

/** Says where it came to lie, once the key rests. */
function tell(id: string): void {
  window.clearTimeout(telling)
  telling = window.setTimeout(async () => {
    // Distances come with the drawing; the first screen does without.
    const { tellDistances } = await import('../canvas/distances.ts')
    const layout = solve(useBench.getState().design)
    const placed = placedCalled(layout, id)
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
