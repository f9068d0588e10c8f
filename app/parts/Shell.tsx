/** The shell of a field: its label, its help on demand, and what is wrong under it. */
import type { ReactNode } from 'react'
import { HelpWords, useHelp } from './Help.tsx'

export interface ShellProps {
  readonly id: string
  readonly label: string
  readonly help?: string | undefined
  /** Where the schema has the field, for the small drawing beside its help. */
  readonly address?: string | undefined
  readonly fault?: string | null
  /** Shows the help always, where the reader is new to the field. */
  readonly explain?: boolean
  readonly children: ReactNode
}

export function Shell({ id, label, help, address, fault = null, explain = false, children }: ShellProps) {
  const asked = useHelp({ id, label, help, address })
  return (
    <div className="field">
      <div className="field-label">
        <label htmlFor={id}>{label}</label>
        {!explain && asked.mark}
      </div>
      {children}
      {explain ? help && <HelpWords id={`${id}-help`} help={help} address={address} always /> : asked.words}
      {fault && (
        <p className="field-fault" id={`${id}-fault`} role="alert">
          {fault}
        </p>
      )}
    </div>
  )
}
