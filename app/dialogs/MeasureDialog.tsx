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

export function MeasureDialog({ onClose }: { readonly onClose: () => void }) {
  const layout = useLayout()
  const chosen = layout.placed.find((one) => one.thing.id === useBench.getState().selection)
  const [face, setFace] = useState<Face>(chosen?.face ?? 'lid')
  const ends = endsOn(layout, face)
  const own = ends.findIndex((end) => end.of === chosen?.thing.id)
  const [first, setFirst] = useState(Math.max(0, own))
  const [second, setSecond] = useState(
    Math.max(
      0,
      ends.findIndex((end) => end.of === 'centreline'),
    ),
  )
  const [way, setWay] = useState<Measure['way']>('straight')
  const [from, to] = [ends[first], ends[second]]
  const measure: Measure | null = from && to ? { face, from, to, way, onSheets: false } : null
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
    <Dialog title="Measure" onClose={onClose}>
      <form
        className="plain-form"
        onSubmit={(event) => {
          event.preventDefault()
          if (measure && taken && keepMeasure(measure)) onClose()
        }}
      >
        <label className="field">
          <span>Face</span>
          <select
            className="field-wide"
            value={face}
            onChange={(event) => {
              setFace(event.target.value as Face)
              setFirst(0)
              setSecond(1)
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
        <p role="status">
          {taken
            ? `It is ${formatLength(taken.mm, layout.design.units, { unit: true })}.`
            : 'These two overlap that way, so there is nothing to measure between them. Choose another way.'}
        </p>
        <button type="submit" className="main" disabled={!taken}>
          Keep it on the drawing
        </button>
      </form>
    </Dialog>
  )
}
