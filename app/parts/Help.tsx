/** The help of a field: a mark to press, and then its sentence with a small drawing of what is measured. */
import { type ReactNode, useState } from 'react'
import { fetchDrawings, HelpDrawing } from '../drawings/HelpDrawing.tsx'

interface Asked {
  readonly id: string
  readonly label: string
  readonly help?: string | undefined
  readonly address?: string | undefined
}

/** The mark that stands beside a label, and the words that stand under the field once it was pressed. */
export function useHelp({ id, label, help, address }: Asked): { mark: ReactNode; words: ReactNode } {
  const [open, setOpen] = useState(false)
  if (!help) return { mark: null, words: null }
  return {
    mark: (
      <button
        type="button"
        className="help-mark"
        aria-expanded={open}
        aria-label={`What is “${label}”?`}
        title={help}
        // Most of the way is gone by the time it is pressed.
        onPointerEnter={fetchDrawings}
        onFocus={fetchDrawings}
        onClick={() => setOpen(!open)}
      >
        ?
      </button>
    ),
    words: open && <HelpWords id={`${id}-help`} help={help} address={address} />,
  }
}

/** The sentence and the drawing. */
export function HelpWords({
  id,
  help,
  address,
  always = false,
}: {
  readonly id?: string | undefined
  readonly help: string
  readonly address?: string | undefined
  /** Among many others that are shown all the time: the drawing is smaller. */
  readonly always?: boolean
}) {
  return (
    <div className={always ? 'field-help always' : 'field-help'} id={id}>
      {address && <HelpDrawing of={address} />}
      <p>{help}</p>
    </div>
  )
}
