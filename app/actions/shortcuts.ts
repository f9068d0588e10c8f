/** Keys to actions. What is typed into a field stays with the field; what a dialog shows stays with the dialog. */
import { isField } from '../canvas/is-field.ts'
import { ACTIONS } from './actions.ts'
import { useDialogs } from './dialogs.ts'
import { type Arrow, finishNudge, nudge } from './nudge.ts'

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
  window.addEventListener('keyup', (event) => ARROWS.has(event.key) && finishNudge(), { signal })
  window.addEventListener('blur', finishNudge, { signal })
  return () => stop.abort()
}

const isBeingTyped = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.dataset['typing'] !== 'false'

function onKeyDown(event: KeyboardEvent): void {
  if (event.defaultPrevented || useDialogs.getState().open !== null) return
  const text = keyText(event)
  const typing = isField(event.target)
  const command = text.startsWith('Ctrl+')
  // A field has an undo of its own, which is the one meant while something in it is not yet taken over.
  const ofField = /^Ctrl\+(Shift\+)?[ZY]$/.test(text) && isBeingTyped(event.target)
  if (typing && (!command || ofField)) return
  if (ARROWS.has(event.key) && !command && !event.altKey) {
    if (nudge(event.key as Arrow, event.shiftKey ? 10 : 1)) event.preventDefault()
    return
  }
  const action = ACTIONS.find((one) => one.keys?.includes(text))
  if (!action) return
  event.preventDefault()
  if (action.enabled?.() !== false) action.run()
}
