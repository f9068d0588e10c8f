/** One of a few words, or yes and no. Few short words lie side by side, more of them in a list. */
import { useId, useState } from 'react'
import type { FieldProps } from './field.ts'
import { useHelp } from './Help.tsx'
import { Shell } from './Shell.tsx'

export interface ChoiceFieldProps extends FieldProps<string> {
  readonly options: readonly string[]
  /** The word on screen where it is another than the one in the file. */
  readonly name?: (option: string) => string
}

const SIDE_BY_SIDE = 26
/** More letters than half a form holds side by side: these take a row of their own. */
const HALF_A_FORM = 13

export function ChoiceField({
  label,
  help,
  address,
  value,
  onCommit,
  options,
  name = (option) => option,
  id,
}: ChoiceFieldProps) {
  const made = useId()
  const own = id ?? made
  const [fault, setFault] = useState<string | null>(null)
  const take = (option: string) => {
    const answer = onCommit(option)
    setFault(answer.ok ? null : answer.sentence)
  }
  const letters = options.map(name).join('').length
  const short = options.length < 4 && letters <= SIDE_BY_SIDE
  if (!short)
    return (
      <Shell id={own} label={label} help={help} address={address} fault={fault}>
        <select id={own} className="field-wide" value={value} onChange={(event) => take(event.target.value)}>
          {options.map((option) => (
            <option key={option} value={option}>
              {name(option)}
            </option>
          ))}
        </select>
      </Shell>
    )
  return (
    <Shell id={`${own}-0`} label={label} help={help} address={address} fault={fault}>
      <div
        className={letters > HALF_A_FORM ? 'choice choice-long' : 'choice'}
        role="radiogroup"
        aria-label={label}
      >
        {options.map((option, index) => (
          <label key={option} data-words={name(option)}>
            <input
              type="radio"
              id={`${own}-${index}`}
              name={own}
              value={option}
              checked={option === value}
              aria-label={name(option)}
              onChange={() => take(option)}
            />
            {name(option)}
          </label>
        ))}
      </div>
    </Shell>
  )
}

export function YesField({ label, help, address, value, onCommit }: FieldProps<boolean>) {
  const own = useId()
  const asked = useHelp({ id: own, label, help, address })
  return (
    <div className="field">
      <div className="field-label">
        <label className="check" htmlFor={own}>
          <input
            id={own}
            type="checkbox"
            checked={value}
            onChange={(event) => onCommit(event.target.checked)}
          />
          {label}
        </label>
        {asked.mark}
      </div>
      {asked.words}
    </div>
  )
}
