/**
 * The one field for lengths. Any unit may be typed at any time; the last good value stays in force while what is
 * typed cannot be read. Escape brings it back, Enter or leaving the field takes it over, arrow keys step by the rule.
 * A field shows a length no finer than the rule does. Whoever only passes through it keeps the finer length that stands
 * behind the figures, and so does whoever takes back what was typed; the same figures typed anew are meant as they are.
 */
import { type KeyboardEvent, useEffect, useId, useState } from 'react'
import { formatLength, type Layout, readLength, roundedLength, stepOf } from '../../geometry/index.ts'
import { useDesign } from './calm.ts'
import type { FieldProps } from './field.ts'
import { Shell } from './Shell.tsx'
import { exactly } from './say.ts'

type Units = Layout['design']['units']

export interface LengthFieldProps extends FieldProps<number> {
  readonly explain?: boolean
  /** Least and most that the design takes, mm. */
  readonly min?: number | undefined
  readonly max?: number | undefined
  /** Shown beside the field instead of the exact millimetres. */
  readonly beside?: string | undefined
  /** Told of every length that can be read while it is typed. */
  readonly onType?: ((mm: number) => void) | undefined
  readonly units?: Units | undefined
}

/** Noughts at the end say nothing, and there is little room. */
const shortly = (mm: number): string => exactly(mm).replace(/\.?0+(?= mm$)/, '')

/** A limit in millimetres, and in inches where those are on the rule: no fraction of one need be exact. */
const limitIn = (mm: number, { display }: Units): string =>
  display === 'inches' ? `${shortly(mm)} (${(mm / 25.4).toFixed(3)} in)` : shortly(mm)

/** What the shown figures leave out: nothing, or the exact millimetres. */
export function besideOf(mm: number, units: Units): string {
  const short = shortly(mm)
  if (units.display === 'inches') return short
  return Math.abs(roundedLength(mm, units).errorMm) > 0.005 ? short : 'mm'
}

export function LengthField({
  label,
  help,
  address,
  value,
  onCommit,
  id,
  explain,
  min = Number.NEGATIVE_INFINITY,
  max = Number.POSITIVE_INFINITY,
  beside,
  onType,
  units: given,
}: LengthFieldProps) {
  const made = useId()
  const own = id ?? made
  const design = useDesign()
  const units = given ?? design.units
  const shown = formatLength(value, units)
  const [text, setText] = useState(shown)
  const [fault, setFault] = useState<string | null>(null)
  const [typed, setTyped] = useState<'nothing' | 'behind' | 'anew'>('nothing')
  const typing = typed !== 'nothing'

  // Another value came from elsewhere: a drag, an undo, another unit.
  useEffect(() => {
    if (!typing) {
      setText(shown)
      setFault(null)
    }
  }, [shown, typing])

  const take = (mm: number) => {
    if (mm < min || mm > max) {
      const side = mm < min ? `at least ${limitIn(min, units)}` : `at most ${limitIn(max, units)}`
      return setFault(`Read ${shortly(mm)}; ${side} is wanted.`)
    }
    const answer = onCommit(mm)
    if (answer.ok) {
      setFault(null)
      setTyped('nothing')
      setText(formatLength(mm, units))
    } else setFault(answer.sentence)
  }
  const commit = () => {
    if (!typing) {
      setFault(null)
      setText(shown)
      return
    }
    const reading = readLength(text, units.display)
    if (reading.ok) take(reading.mm)
    else setFault(reading.sentence)
  }
  const step = (steps: number) => {
    const reading = typing ? readLength(text, units.display) : null
    const from = reading?.ok ? reading.mm : value
    const size = stepOf(units)
    // On to the next line of the rule, as a finger would go along it.
    const next = steps > 0 ? Math.floor(from / size + 1e-6) + steps : Math.ceil(from / size - 1e-6) + steps
    take(next * size)
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') commit()
    else if (event.key === 'Escape') {
      if (typing || fault) event.stopPropagation()
      setTyped('nothing')
      setText(shown)
      setFault(null)
    } else if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      event.preventDefault()
      step((event.key === 'ArrowUp' ? 1 : -1) * (event.shiftKey ? 10 : 1))
    }
  }
  return (
    <Shell id={own} label={label} help={help} address={address} fault={fault} explain={explain ?? false}>
      <div className="field-row">
        <input
          id={own}
          className="length-input"
          type="text"
          autoComplete="off"
          spellCheck={false}
          value={text}
          data-typing={typing}
          aria-invalid={fault !== null}
          aria-describedby={fault ? `${own}-fault` : undefined}
          onFocus={(event) => event.target.select()}
          onChange={(event) => {
            const next = event.target.value
            // Once a figure of what was shown is touched, all that stands there is meant, even if it reads the same again.
            if (typed === 'anew' || !next.startsWith(shown)) setTyped('anew')
            else setTyped(next === shown ? 'nothing' : 'behind')
            setText(next)
            const reading = readLength(next, units.display)
            if (reading.ok) onType?.(reading.mm)
          }}
          onBlur={commit}
          onKeyDown={onKeyDown}
        />
        <span className="field-beside">{beside ?? besideOf(value, units)}</span>
      </div>
    </Shell>
  )
}
