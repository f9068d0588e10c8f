/** Measuring by keyboard: two ends chosen from what there is, and the way between them. */
import { useState } from 'react'
import {
  FACES,
  type Face,
  formatLength,
  type Layout,
  MEASURED_LINES,
  type Measure,
  type MeasureEnd,
  placedCalled,
  shapeOf,
  takeMeasure,
} from '../../geometry/index.ts'
import { keepMeasure } from '../canvas/measuring.ts'
import { useLayout } from '../parts/calm.ts'
import { Dialog } from '../parts/Dialog.tsx'
import { FACE_TITLES } from '../parts/say.ts'
import { sayEnd } from '../parts/say-measures.ts'
import { useBench } from '../state/index.ts'

/** Everything on a face that a measure can begin or end at. */
function endsOn(layout: Layout, face: Face): MeasureEnd[] {
  const things = layout.placed
    .filter((one) => one.face === face)
    .flatMap(({ thing }): MeasureEnd[] => [
      { of: thing.id, at: 'edge' },
      { of: thing.id, at: 'centre' },
    ])
  const lines = [
    ...MEASURED_LINES,
    ...layout.strings.map((one) => `string ${one.number}`),
    ...layout.frets.filter((one) => one.number > 0).map((one) => `fret ${one.number}`),
  ].map((of): MeasureEnd => ({ of, at: 'edge' }))
  return [...things, ...lines.filter((end) => shapeOf(layout, face, end) !== null)]
}

/** Where the second end begins: the centreline, or the first that is some way off. */
function awayFrom(
  layout: Layout,
  face: Face,
  ends: readonly MeasureEnd[],
  from: MeasureEnd | undefined,
): number {
  const isOff = (to: MeasureEnd) =>
    from !== undefined &&
    (takeMeasure(layout, { face, from, to, way: 'straight', name: '', onSheets: false })?.mm ?? 0) > 0
  const middle = ends.findIndex((end) => end.of === 'centreline' && isOff(end))
  return middle >= 0 ? middle : Math.max(0, ends.findIndex(isOff))
}

const placeOf = (ends: readonly MeasureEnd[], wanted: MeasureEnd): number =>
  Math.max(
    0,
    ends.findIndex((end) => end.of === wanted.of && end.at === wanted.at),
  )

interface MeasureDialogProps {
  /** Place in the design's list of the measure to change; a new one without it. */
  readonly changes?: number
  readonly onClose: () => void
}

export function MeasureDialog({ changes, onClose }: MeasureDialogProps) {
  const layout = useLayout()
  const before = changes === undefined ? undefined : layout.design.measures[changes]
  const chosen = placedCalled(layout, useBench.getState().selection)
  const [face, setFace] = useState<Face>(before?.face ?? chosen?.face ?? 'lid')
  const ends = endsOn(layout, face)
  const [first, setFirst] = useState(() =>
    before
      ? placeOf(ends, before.from)
      : Math.max(
          0,
          ends.findIndex((end) => end.of === chosen?.thing.id),
        ),
  )
  const [second, setSecond] = useState(() =>
    before ? placeOf(ends, before.to) : awayFrom(layout, face, ends, ends[first]),
  )
  const [way, setWay] = useState<Measure['way']>(before?.way ?? 'straight')
  const [name, setName] = useState(before?.name ?? '')
  const [onSheets, setOnSheets] = useState(before?.onSheets ?? false)
  const [from, to] = [ends[first], ends[second]]
  const measure: Measure | null = from && to ? { face, from, to, way, name: name.trim(), onSheets } : null
  const taken = measure && takeMeasure(layout, measure)
  const choose = (label: string, value: number, set: (index: number) => void) => (
    <label className="field">
      <span>{label}</span>
      <select className="field-wide" value={value} onChange={(event) => set(Number(event.target.value))}>
        {ends.map((end, index) => (
          <option key={`${end.of} ${end.at}`} value={index}>
            {sayEnd(end, layout)}
          </option>
        ))}
      </select>
    </label>
  )
  return (
    <Dialog title={before ? 'Change the measure' : 'Measure'} onClose={onClose}>
      <form
        className="plain-form"
        onSubmit={(event) => {
          event.preventDefault()
          if (measure && taken && keepMeasure(measure, changes)) onClose()
        }}
      >
        <label className="field">
          <span>Face</span>
          <select
            className="field-wide"
            value={face}
            onChange={(event) => {
              const next = event.target.value as Face
              const there = endsOn(layout, next)
              setFace(next)
              setFirst(0)
              setSecond(awayFrom(layout, next, there, there[0]))
            }}
          >
            {FACES.map((one) => (
              <option key={one} value={one}>
                {FACE_TITLES[one]}
              </option>
            ))}
          </select>
        </label>
        {choose('From', first, setFirst)}
        {choose('To', second, setSecond)}
        <label className="field">
          <span>Which way</span>
          <select
            className="field-wide"
            value={way}
            onChange={(event) => setWay(event.target.value as Measure['way'])}
          >
            <option value="straight">the shortest way</option>
            <option value="along">along the face only</option>
            <option value="across">across the face only</option>
          </select>
        </label>
        <label className="field">
          <span>What it is called, if the figure does not say enough</span>
          <input
            type="text"
            className="field-wide"
            maxLength={60}
            value={name}
            onChange={(event) => setName(event.target.value)}
          />
        </label>
        <label className="check">
          <input type="checkbox" checked={onSheets} onChange={(event) => setOnSheets(event.target.checked)} />
          Draw it on the sheets too
        </label>
        <p role="status">
          {taken
            ? `It is ${formatLength(taken.mm, layout.design.units, { unit: true })}.`
            : 'These two overlap that way, so there is nothing to measure between them. Choose another way.'}
        </p>
        <button type="submit" className="main" disabled={!taken}>
          {before ? 'Keep the changes' : 'Keep it on the drawing'}
        </button>
      </form>
    </Dialog>
  )
}
