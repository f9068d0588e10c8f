/** Gives the keyboard to the field that says what a handle says: whatever can be dragged can be typed. */
import { thingCalled } from '../../geometry/index.ts'
import { useBench } from '../state/index.ts'
import { sizeFieldsOf } from './sizes.ts'

export type Typed = 'along' | 'across' | 'turn' | 'place'

/** The field of the selected thing for its size one way, its turn or its place; false where there is none to type. */
export function focusThingField(id: string, what: Typed): boolean {
  const thing = thingCalled(useBench.getState().design, id)
  if (!thing) return false
  const name =
    what === 'turn' ? 'turnDegrees' : what === 'place' ? 'along' : (sizeFieldsOf(thing)[what]?.name ?? null)
  if (name === null) return false
  const inspector = document.querySelector('.inspector')
  const field =
    inspector?.querySelector<HTMLElement>(`[data-field="${name}"] input`) ??
    inspector?.querySelector<HTMLElement>(`[data-field="${name}"] select`) ??
    null
  field?.focus()
  field?.scrollIntoView({ block: 'nearest' })
  return field !== null
}
