/** Words: taken over when the field is left or Enter is pressed, brought back by Escape. */
import { type KeyboardEvent, useEffect, useId, useState } from 'react'
import type { FieldProps } from './field.ts'
import { Shell } from './Shell.tsx'

export interface TextFieldProps extends FieldProps<string> {
  readonly long?: boolean
  readonly placeholder?: string
}

export function TextField({
  label,
  help,
  address,
  value,
  onCommit,
  long = false,
  placeholder,
  id,
}: TextFieldProps) {
  const made = useId()
  const own = id ?? made
  const [text, setText] = useState(value)
  const [fault, setFault] = useState<string | null>(null)
  useEffect(() => {
    setText(value)
    setFault(null)
  }, [value])
  const commit = () => {
    if (text === value) return setFault(null)
    const answer = onCommit(text)
    setFault(answer.ok ? null : answer.sentence)
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && !long) commit()
    if (event.key !== 'Escape') return
    if (text !== value) event.stopPropagation()
    setText(value)
    setFault(null)
  }
  const shared = {
    id: own,
    value: text,
    'data-typing': text !== value,
    placeholder,
    'aria-invalid': fault !== null,
    onBlur: commit,
    onKeyDown,
  }
  return (
    <Shell id={own} label={label} help={help} address={address} fault={fault}>
      {long ? (
        <textarea
          {...shared}
          className="field-wide"
          rows={3}
          onChange={(event) => setText(event.target.value)}
        />
      ) : (
        <input
          {...shared}
          className="field-wide"
          type="text"
          autoComplete="off"
          onChange={(event) => setText(event.target.value)}
        />
      )}
    </Shell>
  )
}
