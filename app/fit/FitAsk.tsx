/** What is asked of the box, what is cared for, and what is shown of it. */
import { type ReactNode, useState } from 'react'
import {
  CARE_WORDS,
  CARES,
  type Care,
  formatLength,
  readLength,
  readPitch,
  USUAL_SCALES,
} from '../../geometry/index.ts'
import { useDesign } from '../parts/calm.ts'
import { type Asked, setWeight, useAsked } from './asked.ts'

const COUNTS = [1, 2, 3, 4, 5, 6] as const
/** A slider goes so far; 0 is not at all. */
const MOST_WEIGHT = 5

export function FitAsk() {
  return (
    <form className="form-scroll" aria-label="What is asked" onSubmit={(event) => event.preventDefault()}>
      <Cares />
      <Filters />
      <Scales />
      <Strings />
      <Places />
    </form>
  )
}

function Group({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section className="form-group" aria-label={title}>
      <h2>{title}</h2>
      {children}
    </section>
  )
}

function Cares() {
  const weights = useAsked((asked) => asked.weights)
  const note = useAsked((asked) => asked.note)
  return (
    <Group title="What you care for">
      <ul className="plain-list fit-cares">
        {CARES.map((care) => (
          <li key={care}>
            <Weight care={care} weight={weights[care]} idle={care === 'note' && note === null} />
          </li>
        ))}
      </ul>
      <Note />
    </Group>
  )
}

function Weight({
  care,
  weight,
  idle,
}: {
  readonly care: Care
  readonly weight: number
  readonly idle: boolean
}) {
  const { label, help } = CARE_WORDS[care]
  return (
    <label className="fit-care" title={help}>
      <span>{label}</span>
      <input
        type="range"
        min={0}
        max={MOST_WEIGHT}
        step={1}
        value={weight}
        disabled={idle}
        aria-valuetext={weight === 0 ? 'not at all' : `${weight} of ${MOST_WEIGHT}`}
        onChange={(event) => setWeight(care, Number(event.target.value))}
      />
      <output className="figure">{weight}</output>
    </label>
  )
}

/** The note wished for, as a pitch or in hertz; empty for no wish. */
function Note() {
  const { a4 } = useDesign().stringing
  const written = useAsked((asked) => asked.noteText)
  const [text, setText] = useState(written)
  const [fault, setFault] = useState<string | null>(null)
  const take = () => {
    if (text.trim() === '') {
      setFault(null)
      return useAsked.setState({ note: null, noteText: '' })
    }
    const read = readPitch(text, a4)
    setFault(read.ok ? null : read.sentence)
    if (!read.ok) return
    useAsked.setState({ note: read.hertz, noteText: text })
    if (useAsked.getState().weights.note === 0) setWeight('note', 2)
  }
  return (
    <label className="field">
      <span>Note wished for, as in G3</span>
      <input
        type="text"
        value={text}
        aria-invalid={fault !== null}
        onChange={(event) => setText(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => event.key === 'Enter' && take()}
      />
      {fault && (
        <span className="field-fault" role="alert">
          {fault}
        </span>
      )}
    </label>
  )
}

function Check({
  label,
  checked,
  set,
}: {
  readonly label: string
  readonly checked: boolean
  readonly set: (checked: boolean) => void
}) {
  return (
    <label className="fit-check">
      <input type="checkbox" checked={checked} onChange={(event) => set(event.target.checked)} />
      <span>{label}</span>
    </label>
  )
}

function Filters() {
  const asked = useAsked()
  const { units } = useDesign()
  const set = (part: Partial<Asked>) => useAsked.setState(part)
  return (
    <Group title="Show">
      <Check
        label="Only the best place of the saddle"
        checked={asked.onlyBest}
        set={(onlyBest) => set({ onlyBest })}
      />
      <Check label="Nothing asks for care" checked={asked.noCares} set={(noCares) => set({ noCares })} />
      <Check
        label="Nothing placed is in the way"
        checked={asked.nothingInTheWay}
        set={(nothingInTheWay) => set({ nothingInTheWay })}
      />
      <label className="field">
        <span>Strings</span>
        <select
          value={asked.strung ?? ''}
          onChange={(event) => set({ strung: event.target.value === '' ? null : Number(event.target.value) })}
        >
          <option value="">any count</option>
          {asked.counts.map((count) => (
            <option key={count} value={count}>
              {count}
            </option>
          ))}
        </select>
      </label>
      <LengthBox
        label="Overall no longer than"
        mm={asked.longest}
        units={units}
        take={(longest) => set({ longest })}
      />
    </Group>
  )
}

/** A length that may be left empty. */
function LengthBox({
  label,
  mm,
  units,
  take,
}: {
  readonly label: string
  readonly mm: number | null
  readonly units: ReturnType<typeof useDesign>['units']
  readonly take: (mm: number | null) => void
}) {
  const [text, setText] = useState(mm === null ? '' : formatLength(mm, units, { unit: true }))
  const [fault, setFault] = useState<string | null>(null)
  const done = () => {
    if (text.trim() === '') {
      setFault(null)
      return take(null)
    }
    const read = readLength(text, units.display)
    setFault(read.ok ? null : read.sentence)
    if (read.ok) take(read.mm)
  }
  return (
    <label className="field">
      <span>{label}</span>
      <input
        type="text"
        value={text}
        aria-invalid={fault !== null}
        onChange={(event) => setText(event.target.value)}
        onBlur={done}
        onKeyDown={(event) => event.key === 'Enter' && done()}
      />
      {fault && (
        <span className="field-fault" role="alert">
          {fault}
        </span>
      )}
    </label>
  )
}

/** Nearer than this two scales are one, millimetres. */
const SAME = 0.5

function Scales() {
  const scales = useAsked((asked) => asked.scales)
  const { units, scale } = useDesign()
  const has = (mm: number) => scales.some((one) => Math.abs(one - mm) <= SAME)
  const set = (mm: number, wanted: boolean) =>
    useAsked.setState({
      scales: wanted ? [...scales, mm] : scales.filter((one) => Math.abs(one - mm) > SAME),
    })
  const others = scales.filter((mm) => !USUAL_SCALES.some(({ length }) => Math.abs(length - mm) <= SAME))
  return (
    <Group title="Scale lengths">
      <p className="soft small">
        In use; common practice, no source. The design’s own,{' '}
        {formatLength(scale.length, units, { unit: true })}, is always asked.
      </p>
      <div className="fit-checks">
        {USUAL_SCALES.map(({ length, title }) => (
          <Check
            key={length}
            label={`${formatLength(length, units, { unit: true })}, ${title}`}
            checked={has(length)}
            set={(wanted) => set(length, wanted)}
          />
        ))}
        {others.map((mm) => (
          <Check
            key={mm}
            label={`${formatLength(mm, units, { unit: true })}, asked for`}
            checked
            set={() => set(mm, false)}
          />
        ))}
      </div>
      <LengthBox
        key={scales.length}
        label="Another"
        mm={null}
        units={units}
        take={(mm) => mm !== null && !has(mm) && set(mm, true)}
      />
    </Group>
  )
}

function Strings() {
  const counts = useAsked((asked) => asked.counts)
  const strings = useAsked((asked) => asked.strings)
  const toggle = (count: number, wanted: boolean) =>
    useAsked.setState({
      counts: wanted ? [...counts, count].sort((a, b) => a - b) : counts.filter((one) => one !== count),
    })
  return (
    <Group title="Counts of strings">
      <div className="fit-counts">
        {COUNTS.map((count) => (
          <Check
            key={count}
            label={String(count)}
            checked={counts.includes(count)}
            set={(wanted) => toggle(count, wanted)}
          />
        ))}
      </div>
      <Check
        label="My own set, where its count is asked"
        checked={strings === 'as stated'}
        set={(own) => useAsked.setState({ strings: own ? 'as stated' : 'chosen for each' })}
      />
      <p className="soft small">
        Else gauges are chosen for each scale by the pull wanted, and a usual tuning for another count.
      </p>
    </Group>
  )
}

function Places() {
  const { from, to, places } = useAsked()
  const number = (
    label: string,
    value: number,
    [min, max]: readonly [number, number],
    set: (value: number) => void,
  ) => (
    <label className="field">
      <span>{label}</span>
      <input
        type="number"
        min={min}
        max={max}
        value={value}
        onChange={(event) => {
          const read = event.target.valueAsNumber
          if (read >= min && read <= max) set(read)
        }}
      />
    </label>
  )
  return (
    <Group title="Saddle along the lid">
      <div className="field-grid fit-places">
        {number('From, %', Math.round(from * 100), [2, 98], (value) =>
          useAsked.setState({ from: value / 100 }),
        )}
        {number('To, %', Math.round(to * 100), [2, 98], (value) => useAsked.setState({ to: value / 100 }))}
        {number('Places', places, [1, 30], (value) => useAsked.setState({ places: Math.round(value) }))}
      </div>
    </Group>
  )
}
