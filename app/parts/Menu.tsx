/** A button that opens a list of things to do. Arrow keys walk it, Escape and a press elsewhere close it. */
import { type CSSProperties, type KeyboardEvent, useEffect, useId, useRef, useState } from 'react'

export interface MenuItem {
  readonly title: string
  /** Key combination or a few words, shown at the end of the line. */
  readonly beside?: string | undefined
  readonly disabled?: boolean
  /** A heading over this item and those after it. */
  readonly under?: string
  readonly run: () => void
}

export interface MenuProps {
  readonly label: string
  readonly items: readonly MenuItem[]
  readonly className?: string
  /** Words for those who cannot see where the button stands. */
  readonly name?: string
}

/** Beside its button, wherever there is room: a column that scrolls must not cut it off. */
function besideButton(button: HTMLElement): CSSProperties {
  const box = button.getBoundingClientRect()
  const { clientWidth, clientHeight } = document.documentElement
  return {
    ...(box.left < clientWidth / 2
      ? { left: Math.max(4, box.left) }
      : { right: Math.max(4, clientWidth - box.right) }),
    ...(box.bottom < clientHeight * 0.6
      ? { top: box.bottom + 2, maxHeight: clientHeight - box.bottom - 8 }
      : { bottom: clientHeight - box.top + 2, maxHeight: box.top - 8 }),
  }
}

export function Menu({ label, items, className = '', name }: MenuProps) {
  const [open, setOpen] = useState(false)
  const root = useRef<HTMLDivElement>(null)
  const button = useRef<HTMLButtonElement>(null)
  const own = useId()
  useEffect(() => {
    if (!open) return
    root.current?.querySelector<HTMLElement>('[role="menuitem"]:not(:disabled)')?.focus()
    const away = (event: PointerEvent) => {
      if (!root.current?.contains(event.target as Node)) setOpen(false)
    }
    window.addEventListener('pointerdown', away)
    return () => window.removeEventListener('pointerdown', away)
  }, [open])
  const close = () => {
    setOpen(false)
    button.current?.focus()
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (!open) return
    const all = [...(root.current?.querySelectorAll<HTMLElement>('[role="menuitem"]:not(:disabled)') ?? [])]
    const here = all.indexOf(document.activeElement as HTMLElement)
    const to = { ArrowDown: here + 1, ArrowUp: here - 1, Home: 0, End: all.length - 1 }[event.key]
    event.stopPropagation()
    if (event.key === 'Escape') close()
    else if (event.key === 'Tab') setOpen(false)
    else if (to !== undefined) {
      event.preventDefault()
      all[(to + all.length) % all.length]?.focus()
    }
  }
  let heading = ''
  return (
    <div className="menu" ref={root}>
      <button
        type="button"
        ref={button}
        className={className}
        aria-haspopup="menu"
        aria-expanded={open}
        aria-controls={own}
        aria-label={name}
        onClick={() => setOpen(!open)}
      >
        {label}
      </button>
      {open && (
        <div
          className="menu-list"
          style={button.current ? besideButton(button.current) : undefined}
          role="menu"
          onKeyDown={onKeyDown}
          id={own}
          aria-label={name ?? label}
        >
          {items.map((item) => {
            const under = item.under && item.under !== heading ? item.under : null
            if (item.under) heading = item.under
            return (
              <div key={`${item.under ?? ''} ${item.title}`} role="none">
                {under && <p className="menu-heading">{under}</p>}
                <button
                  type="button"
                  role="menuitem"
                  tabIndex={-1}
                  disabled={item.disabled}
                  onClick={() => {
                    close()
                    item.run()
                  }}
                >
                  <span>{item.title}</span>
                  {item.beside && <span className="menu-beside">{item.beside}</span>}
                </button>
              </div>
            )
          })}
        </div>
      )}
    </div>
  )
}
