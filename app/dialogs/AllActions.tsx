/** Everything that can be done, to be found by typing a word of it. */
import { type KeyboardEvent, useState } from 'react'
import type { Action } from '../actions/action.ts'
import { ACTIONS } from '../actions/actions.ts'
import { Dialog } from '../parts/Dialog.tsx'

/** Does every word typed occur in the action's title or group? */
export function finds(action: Pick<Action, 'title' | 'group'>, typed: string): boolean {
  const text = `${action.title} ${action.group}`.toLowerCase()
  return typed
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word))
}

export function AllActions({ onClose }: { readonly onClose: () => void }) {
  const [typed, setTyped] = useState('')
  const [here, setHere] = useState(0)
  const found = ACTIONS.filter((action) => action.id !== 'all-actions' && finds(action, typed))
  const run = (action: Action | undefined) => {
    if (!action || action.enabled?.() === false) return
    onClose()
    action.run()
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') run(found[here])
    const to = { ArrowDown: here + 1, ArrowUp: here - 1 }[event.key]
    if (to === undefined || found.length === 0) return
    event.preventDefault()
    setHere((to + found.length) % found.length)
  }
  return (
    <Dialog title="All actions" onClose={onClose}>
      <input
        type="search"
        className="field-wide"
        aria-label="Find an action"
        placeholder="Find an action"
        autoComplete="off"
        value={typed}
        onChange={(event) => {
          setTyped(event.target.value)
          setHere(0)
        }}
        onKeyDown={onKeyDown}
      />
      <ul className="plain-list actions-list">
        {found.map((action, index) => (
          <li key={action.id}>
            <button
              type="button"
              className={index === here ? 'chosen' : ''}
              disabled={action.enabled?.() === false}
              onClick={() => run(action)}
            >
              <span>{action.title}</span>
              <span className="soft small">{action.group}</span>
              <kbd>{action.keys?.join(' or ')}</kbd>
            </button>
          </li>
        ))}
        {found.length === 0 && <li className="soft">Nothing is called that. Try another word.</li>}
      </ul>
    </Dialog>
  )
}
