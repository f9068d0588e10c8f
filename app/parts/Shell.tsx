/** The shell of a field: its label, its help on demand, and what is wrong under it. */
import { type ReactNode, useState } from 'react'

export interface ShellProps {
  readonly id: string
  readonly label: string
  readonly help?: string | undefined
  readonly fault?: string | null
  /** Shows the help always, where the reader is new to the field. */
  readonly explain?: boolean
  readonly children: ReactNode
}

export function Shell({ id, label, help, fault = null, explain = false, children }: ShellProps) {
  const [open, setOpen] = useState(false)
  const shown = help !== undefined && help !== '' && (explain || open)
  return (
    <div className="field">
      <div className="field-label">
        <label htmlFor={id}>{label}</label>
        {help && !explain && (
          <button
            type="button"
            className="help-mark"
            aria-expanded={open}
            aria-label={`What is “${label}”?`}
            title={help}
            onClick={() => setOpen(!open)}
          >
            ?
          </button>
        )}
      </div>
      {children}
      {shown && (
        <p className="field-help" id={`${id}-help`}>
          {help}
        </p>
      )}
      {fault && (
        <p className="field-fault" id={`${id}-fault`} role="alert">
          {fault}
        </p>
      )}
    </div>
  )
}
