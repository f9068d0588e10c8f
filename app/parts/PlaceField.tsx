/** Where a thing stands on one axis of its face: a measure, or an intent that follows when the box changes. */
import { useId, useMemo, useState } from 'react'
import {
  type Across,
  type Along,
  edgesAt,
  formatShare,
  type Layout,
  type Path,
  type Thing,
} from '../../geometry/index.ts'
import { dragging } from '../canvas/dragging.ts'
import { setField } from '../state/index.ts'
import { useHelp } from './Help.tsx'
import { intentAt } from './intents.ts'
import { LengthField } from './LengthField.tsx'
import {
  type Axis,
  asKind,
  KIND_WORDS,
  kindOfPlace,
  kindsFor,
  linesOf,
  type PlaceKind,
  partnersFor,
} from './place-kinds.ts'
import { exactly, nameOf, sayLength } from './say.ts'

export interface PlaceFieldProps {
  readonly layout: Layout
  readonly label: string
  readonly help: string
  readonly address?: string | undefined
  readonly path: Path
  readonly axis: Axis
  readonly place: Along | Across
  /** Where it stands now, in its face's frame. */
  readonly at: number
  /** The thing, or `null` for the saddle. */
  readonly thing: Thing | null
}

export function PlaceField({ layout, label, help, address, path, axis, place, at, thing }: PlaceFieldProps) {
  const own = useId()
  const [fault, setFault] = useState<string | null>(null)
  const asked = useHelp({ id: own, label, help, address })
  const kind = kindOfPlace(place)
  const take = (next: Along | Across) => {
    const answer = setField(path, next, label)
    setFault(answer.ok ? null : answer.sentence)
    return answer
  }
  const plan = !thing || thing.face === 'lid' || thing.face === 'base'
  // Looked for at rest only: it takes a dozen solves. The path says no more than thing and axis do.
  const intent = useMemo(
    () => (thing && kind === 'measure' && !dragging.isOn() ? intentAt(layout, thing, axis, path) : null),
    [layout, thing, axis, kind],
  )
  return (
    <fieldset className="field place-field" data-field={axis}>
      <legend className="unseen">{label}</legend>
      <div className="field-label">
        <label htmlFor={`${own}-kind`}>{label}</label>
        {asked.mark}
      </div>
      <select
        id={`${own}-kind`}
        className="field-wide"
        aria-label={`${label} is meant as`}
        value={kind}
        onChange={(event) => take(asKind(layout, event.target.value as PlaceKind, axis, at, thing))}
      >
        {kindsFor(layout, axis, thing).map((option) => (
          <option key={option} value={option}>
            {KIND_WORDS[option]}
          </option>
        ))}
      </select>
      {kind === 'measure' && (
        <LengthField
          label={originOf(axis, thing)}
          value={axis === 'across' && !plan ? -at : at}
          onCommit={(mm) => take(mm)}
        />
      )}
      {typeof place === 'object' && 'share' in place && (
        <Percent
          label={`${label}, share`}
          of="of the face"
          value={place.share}
          onCommit={(share) => take({ share })}
        />
      )}
      {typeof place === 'object' && 'ofScale' in place && (
        <Percent
          label={`${label}, share of the scale`}
          of="of the scale, from the saddle"
          value={place.ofScale}
          onCommit={(ofScale) => take({ ofScale })}
        />
      )}
      {typeof place === 'object' && 'midway' in place && (
        <div className="field-row">
          {([0, 1] as const).map((end) => (
            <select
              key={end}
              aria-label={`${label}, ${end === 0 ? 'first' : 'second'} line`}
              value={place.midway[end]}
              onChange={(event) => {
                const lines: [string, string] = [...place.midway]
                lines[end] = event.target.value
                take({ midway: lines })
              }}
            >
              {linesOf(layout, axis, thing).map((line) => (
                <option key={line} value={line}>
                  {nameOf(line, layout)}
                </option>
              ))}
            </select>
          ))}
        </div>
      )}
      {typeof place === 'object' && 'mirror' in place && thing && (
        <select
          aria-label={`${label}, partner`}
          className="field-wide"
          value={place.mirror}
          onChange={(event) => take({ mirror: event.target.value })}
        >
          {partnersFor(layout, thing).map((one) => (
            <option key={one.thing.id} value={one.thing.id}>
              {nameOf(one.thing.id, layout)}
            </option>
          ))}
        </select>
      )}
      {typeof place === 'object' && 'from' in place && thing && (
        <>
          <select
            aria-label={`${label}, counted from`}
            className="field-wide"
            value={place.from}
            onChange={(event) => take({ ...place, from: event.target.value })}
          >
            {partnersFor(layout, thing).map((one) => (
              <option key={one.thing.id} value={one.thing.id}>
                {nameOf(one.thing.id, layout)}
              </option>
            ))}
          </select>
          <LengthField
            label={`from ${nameOf(place.from, layout)}, centre to centre`}
            value={place.by}
            onCommit={(by) => take({ ...place, by })}
          />
        </>
      )}
      {intent && (
        <button type="button" className="link small" onClick={() => take(intent.place)}>
          Keep it {intent.words}
        </button>
      )}
      {asked.words}
      <ComesTo layout={layout} axis={axis} at={at} thing={thing} followed={kind !== 'measure'} />
      {fault && (
        <p className="field-fault" role="alert">
          {fault}
        </p>
      )}
    </fieldset>
  )
}

/** From where a measure counts, in words. */
function originOf(axis: Axis, thing: Thing | null): string {
  const plan = !thing || thing.face === 'lid' || thing.face === 'base'
  if (axis === 'along') {
    if (plan) return 'from the neck-end edge'
    const side = thing?.face === 'bass-wall' || thing?.face === 'treble-wall'
    return side ? 'from the middle, tail positive' : 'from the middle, treble positive'
  }
  return plan ? 'from the centreline, treble positive' : 'down from the lid-side edge'
}

/** What the place comes to here: from the panel's own lines, and from the nut. */
function ComesTo({
  layout,
  axis,
  at,
  thing,
  followed,
}: {
  layout: Layout
  axis: Axis
  at: number
  thing: Thing | null
  followed: boolean
}) {
  const { units } = layout.design
  const face = thing?.face ?? 'lid'
  const panel = layout.panels[face]
  const plan = face === 'lid' || face === 'base'
  const side = face === 'bass-wall' || face === 'treble-wall'
  const shown = axis === 'across' && !plan ? -at : at
  const nut = axis === 'along' && (plan || side) ? at + panel.originX : null
  // A surveyed lid has other edges beside every place; the middle line is near enough for words.
  const edge = edgesAt(layout, face, axis === 'along' ? { x: at, y: 0 } : { x: panel.bounds.maxX / 2, y: at })
  const others =
    axis === 'along'
      ? plan
        ? [`${sayLength(edge.maxX - at, units)} from the tail-end edge`]
        : [`${sayLength(Math.min(at - edge.minX, edge.maxX - at), units)} from the nearer end`]
      : plan
        ? [`${sayLength(Math.min(edge.maxY - at, at - edge.minY), units)} from the nearer side edge`]
        : [`${sayLength(at - edge.minY, units)} from the base side`]
  return (
    <p className="comes-to">
      {followed && (
        <>
          here <b>{sayLength(shown, units)}</b> {originOf(axis, thing).replace(/, .*/, '')} ({exactly(shown)}
          ),{' '}
        </>
      )}
      {[...others, ...(nut === null ? [] : [`${sayLength(nut, units)} from the nut`])].join(', ')}
    </p>
  )
}

function Percent({
  label,
  of,
  value,
  onCommit,
}: {
  label: string
  of: string
  value: number
  onCommit: (share: number) => { ok: boolean }
}) {
  const own = useId()
  const shown = formatShare(value, { decimals: 2 })
    .replace('%', '')
    .replace(/\.?0+$/, '')
  const [typed, setTyped] = useState<string | null>(null)
  const commit = () => {
    if (typed === null) return
    const share = Number(typed.replace(',', '.').replace('%', '').replace('−', '-')) / 100
    if (typed.trim() !== '' && Number.isFinite(share) && onCommit(share).ok) setTyped(null)
  }
  const wrong =
    typed !== null && !Number.isFinite(Number(typed.replace(',', '.').replace('%', '').replace('−', '-')))
  return (
    <div className="field-row">
      <input
        id={own}
        className="number-input"
        type="text"
        inputMode="decimal"
        aria-label={`${label}, per cent`}
        aria-invalid={wrong}
        value={typed ?? shown}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={commit}
        onKeyDown={(event) => {
          if (event.key === 'Enter') commit()
          if (event.key === 'Escape' && typed !== null) {
            event.stopPropagation()
            setTyped(null)
          }
        }}
      />
      <span className="field-beside">% {of}</span>
    </div>
  )
}
