/** Keys to actions. What is typed into a field stays with the field; what a dialog shows stays with the dialog. */
import { isField } from '../canvas/is-field.ts'
import { type PlaceName, useBench } from '../state/index.ts'
import type { Action } from './action.ts'
import { ACTIONS } from './actions.ts'
import { useDialogs } from './dialogs.ts'
import { nudging } from './fetched.ts'
import type { Arrow } from './nudge.ts'

/** `Ctrl+Shift+Z`, `F`, `?`: as the list of actions writes it. The command key of a Mac counts as Ctrl. */
export function keyText(
  event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey'>,
): string {
  const letter = event.key.length === 1
  const key = letter ? event.key.toUpperCase() : event.key
  const command = event.ctrlKey || event.metaKey
  // Shift is part of a sign such as `?`; it is named only where it changes a command.
  return `${command ? 'Ctrl+' : ''}${event.altKey ? 'Alt+' : ''}${event.shiftKey && (command || !letter) ? 'Shift+' : ''}${key}`
}

const ARROWS = new Set(['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'])

/** Listens on the window; the answer stops listening. */
export function listenForKeys(): () => void {
  const stop = new AbortController()
  const { signal } = stop
  window.addEventListener('keydown', onKeyDown, { signal })
  window.addEventListener('keyup', (event) => ARROWS.has(event.key) && endNudge(), { signal })
  window.addEventListener('blur', endNudge, { signal })
  return () => stop.abort()
}

const endNudge = () => nudging.with(({ finishNudge }) => finishNudge())

/** Where no drawing shows things, a key would change what nobody sees. */
const HIDDEN: ReadonlySet<PlaceName> = new Set(['survey', 'transfer', 'record'])

/** Is anything selected that arrow keys move here? */
function moves(): boolean {
  const { selection, design, place } = useBench.getState()
  if (selection === null) return false
  return (
    ['saddle', 'box', 'tailpiece'].includes(selection) ||
    (!HIDDEN.has(place) && design.things.some(({ id }) => id === selection))
  )
}

/** Things are arranged and removed by keys where they are laid out; anywhere else one says so by name. */
const isElsewhere = ({ group }: Action): boolean =>
  (group === 'Things' || group === 'Together') && useBench.getState().place !== 'lay-out'

const isBeingTyped = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.dataset['typing'] !== 'false'

/** Also while a dialog is still being fetched, and for one that belongs to a place and is in no list. */
const dialogOpen = (): boolean =>
  useDialogs.getState().open !== null || document.querySelector('dialog[open]') !== null

function onKeyDown(event: KeyboardEvent): void {
  if (event.defaultPrevented || dialogOpen()) return
  const text = keyText(event)
  const typing = isField(event.target)
  const command = text.startsWith('Ctrl+')
  // Choosing, copying and pasting text is the field's own; so is its undo while something in it is not yet taken over.
  const ofField =
    /^Ctrl\+[ACVX]$/.test(text) || (/^Ctrl\+(Shift\+)?[ZY]$/.test(text) && isBeingTyped(event.target))
  if (typing && (!command || ofField)) return
  if (ARROWS.has(event.key) && !command && !event.altKey) {
    if (!moves()) return
    event.preventDefault()
    const times = event.shiftKey ? 10 : 1
    nudging.with(({ nudge }) => nudge(event.key as Arrow, times))
    return
  }
  const action = ACTIONS.find((one) => one.keys?.includes(text))
  if (!action || isElsewhere(action)) return
  event.preventDefault()
  if (action.enabled?.() !== false) action.run()
}
