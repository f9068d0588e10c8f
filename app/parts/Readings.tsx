/**
 * Readings of sides, diagonals and wall heights, entered without leaving the keyboard: a length and Enter, and the next row waits.
 * Shift and Enter stays for another reading of the same; so do several at once, parted by semicolons.
 */
import { type KeyboardEvent, useId, useRef, useState } from 'react'
import {
  DISTANCES,
  type Distance,
  type Field,
  fieldsOf,
  formatLength,
  graduationOf,
  HEIGHTS,
  type Height,
  heightsOf,
  type ReadingResult,
  readLength,
  surveyOf,
} from '../../geometry/index.ts'
import { setField, useBench } from '../state/index.ts'
import { useDesign } from './calm.ts'
import { useHelp } from './Help.tsx'

type Name = Distance | Height
const ROWS: readonly Name[] = [...DISTANCES, ...HEIGHTS]

/** Every reading of a survey that has none yet. */
export const NO_READINGS: Readonly<Record<Name, readonly number[]>> = {
  bass: [],
  treble: [],
  neckEnd: [],
  tailEnd: [],
  diagonalFromBass: [],
  diagonalFromTreble: [],
  heightNeckBass: [],
  heightTailBass: [],
  heightTailTreble: [],
  heightNeckTreble: [],
}

const readingsNow = (name: Name): readonly number[] => useBench.getState().design.box.survey?.[name] ?? []

const keep = (name: Name, readings: readonly number[], label: string) =>
  setField(
    ['box', 'survey'],
    { ...NO_READINGS, ...useBench.getState().design.box.survey, [name]: readings },
    label,
  )

/** Puts another length in the place of one reading: the answer to a question about a slip. */
export const amendReading = (name: Name, index: number, value: number) =>
  keep(
    name,
    readingsNow(name).map((one, which) => (which === index ? value : one)),
    'Reading put right',
  )

export function Readings({ onFocus }: { readonly onFocus: (name: string) => void }) {
  const inputs = useRef(new Map<Name, HTMLInputElement>())
  const fields = new Map(
    fieldsOf('box')
      .filter((field) => field.name.startsWith('survey.'))
      .map((field) => [field.name.slice('survey.'.length), field]),
  )
  const go = (from: Name, steps: number) => {
    const index = (ROWS.indexOf(from) + steps + ROWS.length) % ROWS.length
    inputs.current.get(ROWS[index] ?? from)?.focus()
  }
  const row = (name: Name) => (
    <Row
      key={name}
      name={name}
      field={fields.get(name)}
      go={(steps) => go(name, steps)}
      onFocus={() => onFocus(name)}
      hold={(input) => {
        if (input) inputs.current.set(name, input)
        else inputs.current.delete(name)
      }}
    />
  )
  return (
    <>
      <ul className="readings" aria-label="Sides and diagonals">
        {DISTANCES.map(row)}
      </ul>
      <p className="soft small">
        Height of the walls alone, at the corners: they show whether the lid will rock.
      </p>
      <ul className="readings" aria-label="Wall heights">
        {HEIGHTS.map(row)}
      </ul>
    </>
  )
}

function Row({
  name,
  field,
  go,
  hold,
  onFocus,
}: {
  readonly name: Name
  readonly field: Field | undefined
  readonly go: (steps: number) => void
  readonly hold: (input: HTMLInputElement | null) => void
  readonly onFocus: () => void
}) {
  const own = useId()
  const design = useDesign()
  const [text, showText] = useState('')
  // What stands in the field now: going on to the next row leaves this one before it is drawn again.
  const typed = useRef('')
  const setText = (next: string) => {
    typed.current = next
    showText(next)
  }
  const [fault, setFault] = useState<string | null>(null)
  const readings = design.box.survey?.[name] ?? []
  const result = surveyOf(design.box, graduationOf(design))
  const survey = result?.ok ? result.survey : null
  const suspects = survey?.disagreement?.suspects ?? []
  const wrong = (index: number) =>
    suspects.some((one: ReadingResult) => one.of === name && one.index === index)
  const label = field?.label ?? name
  const asked = useHelp({ id: own, label, help: field?.help, address: field?.address })

  /** `true` when what stands in the field has been taken, or nothing stands there. */
  const take = (): boolean => {
    if (typed.current.trim() === '') return true
    const lengths: number[] = []
    for (const part of typed.current.split(';').filter((one) => one.trim() !== '')) {
      const reading = readLength(part, design.units.display)
      if (!reading.ok) {
        setFault(reading.sentence)
        return false
      }
      lengths.push(reading.mm)
    }
    const answer = keep(name, [...readingsNow(name), ...lengths], `Reading of ${label.toLowerCase()}`)
    setFault(answer.ok ? null : answer.sentence)
    if (answer.ok) setText('')
    return answer.ok
  }
  const remove = (index: number) =>
    keep(
      name,
      readingsNow(name).filter((_, which) => which !== index),
      'Reading taken away',
    )
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') {
      event.preventDefault()
      if (take() && !event.shiftKey) go(1)
    } else if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      event.preventDefault()
      if (take()) go(event.key === 'ArrowDown' ? 1 : -1)
    } else if (event.key === 'Backspace' && text === '' && readings.length > 0) {
      event.preventDefault()
      remove(readings.length - 1)
    } else if (event.key === 'Escape') {
      if (text !== '') event.stopPropagation()
      setText('')
      setFault(null)
    }
  }
  return (
    <li className={readings.some((_, index) => wrong(index)) ? 'reading-row doubted' : 'reading-row'}>
      <span className="field-label">
        <label htmlFor={own}>{label}</label>
        {asked.mark}
      </span>
      <input
        ref={hold}
        id={own}
        className="length-input"
        type="text"
        autoComplete="off"
        spellCheck={false}
        value={text}
        aria-invalid={fault !== null}
        aria-describedby={fault ? `${own}-fault` : `${own}-comes`}
        onFocus={onFocus}
        onChange={(event) => {
          setText(event.target.value)
          setFault(null)
        }}
        onKeyDown={onKeyDown}
        onBlur={() => void take()}
      />
      <span className="readings-taken">
        {readings.map((reading, index) => (
          <button
            key={index}
            type="button"
            className={wrong(index) ? 'reading doubted' : 'reading'}
            title="Take this reading away"
            aria-label={`Take away ${formatLength(reading, design.units, { unit: true })} of ${label.toLowerCase()}${wrong(index) ? ', which disagrees' : ''}`}
            onClick={() => remove(index)}
          >
            {formatLength(reading, design.units)}
          </button>
        ))}
      </span>
      <span className="reading-comes" id={`${own}-comes`}>
        {comesTo(name, design)}
      </span>
      {asked.words}
      {fault && (
        <p className="field-fault" id={`${own}-fault`} role="alert">
          {fault}
        </p>
      )}
    </li>
  )
}

/** What all readings together make of it. */
function comesTo(name: Name, design: ReturnType<typeof useDesign>): string {
  const { units, box } = design
  const graduation = graduationOf(design)
  const say = (mm: number) => formatLength(mm, units)
  const fine = (mm: number) =>
    formatLength(mm, { ...units, fraction: 0 }, { decimals: units.display === 'mm' ? 1 : 3 })
  const height = HEIGHTS.indexOf(name as Height)
  if (height >= 0) {
    const at = heightsOf(box, graduation / 2)?.at[height]
    return at == null ? '' : say(at)
  }
  const result = surveyOf(box, graduation)
  if (!result?.ok) return ''
  const { adjusted, standardError } = result.survey.distances[name as Distance]
  return `${say(adjusted)} ± ${fine(standardError)}`
}
