/** A plain number: a count that goes up and down by one, or an angle in degrees. */
import { type KeyboardEvent, useEffect, useId, useState } from 'react'
import type { FieldProps } from './field.ts'
import { Shell } from './Shell.tsx'

export interface NumberFieldProps extends FieldProps<number> {
  /** Whole numbers only, with buttons for one more and one less. */
  readonly whole?: boolean
  readonly min?: number | undefined
  readonly max?: number | undefined
  readonly beside?: string | undefined
}

const WRITTEN = /^[+\-−]?\d*[.,]?\d+°?$/

export function NumberField({
  label,
  help,
  address,
  value,
  onCommit,
  whole = false,
  min,
  max,
  beside,
  id,
}: NumberFieldProps) {
  const made = useId()
  const own = id ?? made
  const shown = String(value).replace('-', '−')
  const [text, setText] = useState(shown)
  const [fault, setFault] = useState<string | null>(null)
  useEffect(() => {
    setText(shown)
    setFault(null)
  }, [shown])

  const take = (next: number) => {
    const answer = onCommit(next)
    setFault(answer.ok ? null : answer.sentence)
    if (answer.ok) setText(String(next).replace('-', '−'))
  }
  const commit = () => {
    const plain = text.trim()
    if (plain === shown) return setFault(null)
    if (!WRITTEN.test(plain)) {
      const read = plain === '' ? 'Nothing is written here.' : `“${plain}” is no number.`
      return setFault(`${read} Write one, such as ${whole ? '3' : '12.5'}.`)
    }
    const next = Number(plain.replace('−', '-').replace(',', '.').replace('°', ''))
    if (whole && !Number.isInteger(next))
      return setFault(`${plain} is no whole number. Write one, such as 3.`)
    take(next)
  }
  const by = (step: number) =>
    take(Math.min(max ?? Number.POSITIVE_INFINITY, Math.max(min ?? Number.NEGATIVE_INFINITY, value + step)))
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') commit()
    else if (event.key === 'Escape') {
      if (text !== shown) event.stopPropagation()
      setText(shown)
      setFault(null)
    } else if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      event.preventDefault()
      by(event.key === 'ArrowUp' ? 1 : -1)
    }
  }
  return (
    <Shell id={own} label={label} help={help} address={address} fault={fault}>
      <div className="field-row">
        <div className={whole ? 'stepper' : ''}>
          <input
            id={own}
            className="number-input"
            type="text"
            inputMode="decimal"
            autoComplete="off"
            value={text}
            data-typing={text !== shown}
            aria-invalid={fault !== null}
            aria-describedby={fault ? `${own}-fault` : undefined}
            onChange={(event) => setText(event.target.value)}
            onBlur={commit}
            onKeyDown={onKeyDown}
          />
          {whole && (
            <>
              <button
                type="button"
                aria-label={`${label}: one less`}
                disabled={min !== undefined && value <= min}
                onClick={() => by(-1)}
              >
                −
              </button>
              <button
                type="button"
                aria-label={`${label}: one more`}
                disabled={max !== undefined && value >= max}
                onClick={() => by(1)}
              >
                +
              </button>
            </>
          )}
        </div>
        {beside && <span className="field-beside">{beside}</span>}
      </div>
    </Shell>
  )
}
