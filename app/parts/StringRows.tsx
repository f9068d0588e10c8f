/** Each string by itself: pitch, gauge and what it is made of, typed where it stands. The treble string comes first. */
import { type KeyboardEvent, useEffect, useState } from 'react'
import {
  fieldsOfEntry,
  formatFine,
  gaugesFor,
  type Layout,
  loadsOf,
  type Make,
  readLength,
  type StringLoad,
} from '../../geometry/index.ts'
import { setField } from '../state/index.ts'
import { useLayout } from './calm.ts'
import { FieldInput, isWantedBeside } from './Fields.tsx'
import type { Answer } from './field.ts'
import { TextField } from './TextField.tsx'

export function StringRows() {
  const layout = useLayout()
  const { design } = layout
  const { strings } = loadsOf(layout)
  return (
    <div className="field-span">
      <table className="string-rows">
        <caption className="unseen">String by string, treble string first</caption>
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">String</span>
            </th>
            <th scope="col">pitch</th>
            <th scope="col">gauge, {design.units.display === 'mm' ? 'mm' : 'in'}</th>
            <th scope="col">made</th>
            <th scope="col">
              <span className="unseen">more</span>
            </th>
          </tr>
        </thead>
        {[...strings].reverse().map((string) => (
          <Row key={string.index} string={string} layout={layout} makes={strings.map((one) => one.make)} />
        ))}
      </table>
      {design.stringing.makes.length > 0 && (
        <button type="button" className="link" onClick={() => setField(['stringing', 'makes'], [], 'Makes')}>
          Back to the usual: plain where thin, wound where thick
        </button>
      )}
    </div>
  )
}

interface RowProps {
  readonly string: StringLoad
  readonly layout: Layout
  /** Of all strings as they are in force, bass string first. */
  readonly makes: readonly Make[]
}

function Row({ string, layout, makes }: RowProps) {
  const { strings, stringing, units } = layout.design
  const { index, number, make } = string
  const [fault, setFault] = useState<string | null>(null)
  const [open, setOpen] = useState(false)
  const pitch = stringing.tuning[index] ?? ''
  const gauge = formatFine(string.gauge, units)
  useEffect(() => setFault(null), [pitch, gauge])
  const told = (answer: Answer): Answer => {
    setFault(answer.ok ? null : answer.sentence)
    return answer
  }
  const takePitch = (text: string): Answer => {
    if (index > stringing.tuning.length)
      return {
        ok: false,
        sentence: `Pitches are stated from the bass string on: that of string ${strings.count - stringing.tuning.length} comes first. Or choose one of the usual tunings.`,
      }
    const next = Array.from(stringing.tuning)
    next[index] = text.trim()
    return setField(['stringing', 'tuning'], next, `Pitch of string ${number}`)
  }
  const takeGauge = (text: string): Answer => {
    const reading = readLength(text, units.display)
    if (!reading.ok) return reading
    const next = Array.from(gaugesFor(strings.gauges, strings.count))
    next[index] = Math.round(reading.mm * 1e4) / 1e4
    return setField(['strings', 'gauges'], next, `Gauge of string ${number}`)
  }
  const takeMake = (part: Partial<Make>): Answer =>
    setField(
      ['stringing', 'makes'],
      makes.map((one, at) => (at === index ? { ...one, ...part } : one)),
      `Make of string ${number}`,
    )
  // No rule is fine enough for the core of a string.
  const takeCore = (text: string): Answer => {
    const reading = readLength(text, units.display)
    return reading.ok ? takeMake({ core: Math.round(reading.mm * 1e4) / 1e4 }) : reading
  }
  const fields = fieldsOfEntry('stringing.makes')
  const constructions = fields.find((one) => one.name === 'construction')?.options ?? []
  const construct = (construction: string) =>
    takeMake({
      construction: construction as Make['construction'],
      // What it weighs and bears as it was made until now: something to begin with.
      ...(construction === 'stated' && make.unitMass === 0 && string.body
        ? {
            unitMass: thousandths(string.body.unitMass * GRAMS_PER_METRE),
            core: thousandths(string.body.core),
          }
        : {}),
    })
  return (
    <tbody>
      <tr>
        <th scope="row">{number}</th>
        <td>
          <Cell label={`Pitch of string ${number}`} value={pitch} take={(text) => told(takePitch(text))} />
        </td>
        <td>
          <Cell label={`Gauge of string ${number}`} value={gauge} take={(text) => told(takeGauge(text))} />
        </td>
        <td>
          <select
            aria-label={`String ${number} is made`}
            value={make.construction}
            onChange={(event) => told(construct(event.target.value))}
          >
            {constructions.map((one) => (
              <option key={one} value={one}>
                {one === 'stated' ? 'by its mass' : one}
              </option>
            ))}
          </select>
        </td>
        <td>
          <button
            type="button"
            className="quiet"
            aria-expanded={open}
            aria-label={`String ${number}: what it is made of`}
            title={madeOf(make)}
            onClick={() => setOpen(!open)}
          >
            {open ? '–' : '…'}
          </button>
        </td>
      </tr>
      {fault && (
        <tr>
          <td colSpan={5} className="field-fault" role="alert">
            {fault}
          </td>
        </tr>
      )}
      {open && (
        <tr>
          <td colSpan={5}>
            <div className="field-grid string-make">
              {fields
                .filter((field) => field.name !== 'construction' && isWantedBeside(make, field))
                .map((field) =>
                  field.name === 'core' ? (
                    <TextField
                      key={field.name}
                      label={`${field.label}, ${units.display === 'mm' ? 'mm' : 'in'}`}
                      help={field.help}
                      address={field.address}
                      value={formatFine(make.core, units)}
                      onCommit={takeCore}
                    />
                  ) : (
                    <FieldInput
                      key={field.name}
                      field={field}
                      value={make[field.name as keyof Make]}
                      take={(value) => takeMake({ [field.name]: value })}
                    />
                  ),
                )}
            </div>
          </td>
        </tr>
      )}
    </tbody>
  )
}

const GRAMS_PER_METRE = 1e6

const thousandths = (value: number): number => Math.round(value * 1000) / 1000

/** `music wire, wound with nickel`. */
export const madeOf = (make: Make): string =>
  make.construction === 'wound' ? `${make.material}, wound with ${make.wrap}` : make.material

interface CellProps {
  readonly label: string
  readonly value: string
  readonly take: (text: string) => Answer
}

/** A field without a visible label; what is wrong is said in the row below, and Escape brings the last value back. */
function Cell({ label, value, take }: CellProps) {
  const [text, setText] = useState(value)
  const [wrong, setWrong] = useState(false)
  useEffect(() => {
    setText(value)
    setWrong(false)
  }, [value])
  const commit = () => {
    if (text === value) return
    const answer = take(text)
    setWrong(!answer.ok)
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') commit()
    if (event.key !== 'Escape' || text === value) return
    event.stopPropagation()
    setText(value)
    setWrong(false)
  }
  return (
    <input
      type="text"
      autoComplete="off"
      spellCheck={false}
      aria-label={label}
      aria-invalid={wrong}
      data-typing={text !== value}
      value={text}
      onFocus={(event) => event.target.select()}
      onChange={(event) => setText(event.target.value)}
      onBlur={commit}
      onKeyDown={onKeyDown}
    />
  )
}
