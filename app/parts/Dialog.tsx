/** A dialog of the browser's own: Escape closes it, focus stays inside and goes back where it was. */
import { type ReactNode, useEffect, useId, useRef } from 'react'

export interface DialogProps {
  readonly title: string
  readonly onClose: () => void
  readonly wide?: boolean
  readonly children: ReactNode
}

export function Dialog({ title, onClose, wide = false, children }: DialogProps) {
  const box = useRef<HTMLDialogElement>(null)
  const heading = useId()
  useEffect(() => {
    const element = box.current
    if (element && !element.open) {
      element.showModal()
      // Not the first thing that scrolls: the first that can be filled in or pressed.
      element
        .querySelector<HTMLElement>('input:not(:disabled), select, textarea, button:not(:disabled)')
        ?.focus()
    }
    return () => element?.close()
  }, [])
  return (
    <dialog
      ref={box}
      className={wide ? 'dialog dialog-wide' : 'dialog'}
      aria-labelledby={heading}
      onCancel={(event) => {
        event.preventDefault()
        onClose()
      }}
    >
      <header className="dialog-head">
        <h1 id={heading}>{title}</h1>
      </header>
      {children}
      {/* Last, so that the first field has the focus when the dialog opens. */}
      <button type="button" className="quiet dialog-close" onClick={onClose}>
        Close
      </button>
    </dialog>
  )
}
