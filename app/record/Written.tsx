/** Words written on the sheet: a line to write on, without a box. Enter or leaving takes them over, Escape takes them back. */
import { type KeyboardEvent, useEffect, useId, useState } from 'react'
import type { Answer } from '../parts/field.ts'

export interface WrittenProps {
  /** For whoever hears the page; shown as a hint where nothing is written. */
  readonly label: string
  readonly value: string
  readonly take: (text: string) => Answer
  readonly long?: boolean
  readonly figure?: boolean
  readonly placeholder?: string
}

export function Written({ label, value, take, long = false, figure = false, placeholder }: WrittenProps) {
  const own = useId()
  const [text, setText] = useState(value)
  const [fault, setFault] = useState<string | null>(null)
  useEffect(() => {
    setText(value)
    setFault(null)
  }, [value])
  const commit = () => {
    if (text === value) return setFault(null)
    const answer = take(text)
    setFault(answer.ok ? null : answer.sentence)
    // The same value may be shown in other words than it was typed.
    if (answer.ok && !long) setText(value)
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && !long) commit()
    if (event.key !== 'Escape' || text === value) return
    event.stopPropagation()
    setText(value)
    setFault(null)
  }
  const shared = {
    className: figure ? 'written figure' : 'written',
    'aria-label': label,
    'aria-invalid': fault !== null,
    'aria-describedby': fault ? `${own}-fault` : undefined,
    'data-typing': text !== value,
    placeholder,
    value: text,
    autoComplete: 'off',
    onBlur: commit,
    onKeyDown,
  }
  return (
    <span className="written-line">
      {long ? (
        <textarea {...shared} rows={3} onChange={(event) => setText(event.target.value)} />
      ) : (
        <input type="text" {...shared} onChange={(event) => setText(event.target.value)} />
      )}
      {fault && (
        <span className="field-fault" id={`${own}-fault`} role="alert">
          {fault}
        </span>
      )}
    </span>
  )
}
