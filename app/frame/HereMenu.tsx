/** What can be done with what is selected, as a menu where the pointer or the finger is. */
import { type KeyboardEvent, useEffect, useRef } from 'react'
import { type Design, kindOf } from '../../geometry/index.ts'
import { ACTIONS } from '../actions/actions.ts'
import { closeHere, useHere } from '../canvas/here.ts'
import { selectedThings, useBench } from '../state/index.ts'

const WIDE = 300

export function HereMenu() {
  const here = useHere((state) => state.here)
  const list = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (!here) return
    list.current?.querySelector<HTMLElement>('[role="menuitem"]')?.focus()
    const away = (event: PointerEvent) => {
      if (!list.current?.contains(event.target as Node)) closeHere()
    }
    window.addEventListener('pointerdown', away)
    return () => window.removeEventListener('pointerdown', away)
  }, [here])
  if (!here) return null
  const ids = selectedThings()
  const wanted = ids.length > 0 ? ['Things', 'Together'] : ['Drawing']
  const items = ACTIONS.filter(
    (action) => wanted.includes(action.group) && action.enabled?.() !== false && !action.hidden,
  )
  const close = () => {
    closeHere()
    here.from?.focus()
  }
  const onKeyDown = (event: KeyboardEvent) => {
    const all = [...(list.current?.querySelectorAll<HTMLElement>('[role="menuitem"]') ?? [])]
    const at = all.indexOf(document.activeElement as HTMLElement)
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: all.length - 1 }[event.key]
    event.stopPropagation()
    if (event.key === 'Escape' || event.key === 'Tab') {
      event.preventDefault()
      close()
    } else if (to !== undefined) {
      event.preventDefault()
      all[(to + all.length) % all.length]?.focus()
    }
  }
  const { clientWidth, clientHeight } = document.documentElement
  const style = {
    left: Math.max(4, Math.min(here.x, clientWidth - WIDE - 4)),
    ...(here.y < clientHeight / 2
      ? { top: here.y, maxHeight: clientHeight - here.y - 8 }
      : { bottom: clientHeight - here.y, maxHeight: here.y - 8 }),
  }
  const title = ids.length > 0 ? tellThings(useBench.getState().design, ids) : 'The drawing'
  return (
    <div
      className="menu-list here-menu"
      style={style}
      role="menu"
      aria-label={title}
      ref={list}
      onKeyDown={onKeyDown}
    >
      <p className="menu-heading">{title}</p>
      {items.map((action) => (
        <div key={action.id} role="none">
          <button
            type="button"
            role="menuitem"
            tabIndex={-1}
            onClick={() => {
              close()
              action.run()
            }}
          >
            <span>{action.title}</span>
            {action.keys?.[0] && <span className="menu-beside">{action.keys[0]}</span>}
          </button>
        </div>
      ))}
    </div>
  )
}

/** What the menu is about, in a word or two. */
const tellThings = (design: Design, ids: readonly string[]): string => {
  const only = design.things.find((thing) => thing.id === ids[0])
  return ids.length === 1 && only ? only.name || kindOf(only.kind).title : `${ids.length} things`
}
