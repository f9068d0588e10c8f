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
    if (element && !element.open) element.showModal()
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
        <button type="button" className="quiet" aria-label="Close" onClick={onClose}>
          Close
        </button>
      </header>
      {children}
    </dialog>
  )
}
