/** A row or a ring made from one thing. */
import { useState } from 'react'
import { placedCalled } from '../../geometry/index.ts'
import { announce } from '../parts/Announcer.tsx'
import { useLayout } from '../parts/calm.ts'
import { Dialog } from '../parts/Dialog.tsx'
import { ACCEPTED } from '../parts/field.ts'
import { LengthField } from '../parts/LengthField.tsx'
import { NumberField } from '../parts/NumberField.tsx'
import { nameOf } from '../parts/say.ts'
import { makeRow, type RowWanted } from '../state/arrange.ts'
import { selectedThings } from '../state/index.ts'

const SHAPES: readonly (readonly [RowWanted['shape'], string])[] = [
  ['row along', 'a row along the face, towards the tail'],
  ['row across', 'a row across the face, towards the treble'],
  ['ring', 'a ring'],
]

export function RowDialog({ onClose }: { readonly onClose: () => void }) {
  const layout = useLayout()
  const id = selectedThings().at(-1) ?? ''
  const placed = placedCalled(layout, id)
  const wide = placed ? placed.bounds.maxX - placed.bounds.minX : 10
  const [shape, setShape] = useState<RowWanted['shape']>('row along')
  const [count, setCount] = useState(3)
  const [distance, setDistance] = useState(Math.ceil(wide * 1.5))
  const [first, setFirst] = useState<RowWanted['first']>('on the ring')
  const [turning, setTurning] = useState(false)
  const [fault, setFault] = useState<string | null>(null)
  if (!placed) return null
  const name = nameOf(id, layout)
  return (
    <Dialog title={`Row or ring of ${name}`} onClose={onClose}>
      <form
        className="plain-form"
        onSubmit={(event) => {
          event.preventDefault()
          // What stands in a field and could not be read is not what would be made.
          const wrong = event.currentTarget.querySelector<HTMLElement>('[aria-invalid="true"]')
          if (wrong) return wrong.focus()
          const outcome = makeRow(id, { shape, count, distance, first, turning })
          if (!outcome.ok) return setFault(outcome.sentence)
          announce(`${count} in all. They follow ${name} where it goes.`)
          onClose()
        }}
      >
        <label className="field">
          <span>Make</span>
          <select
            className="field-wide"
            value={shape}
            onChange={(event) => setShape(event.target.value as RowWanted['shape'])}
          >
            {SHAPES.map(([value, words]) => (
              <option key={value} value={value}>
                {words}
              </option>
            ))}
          </select>
        </label>
        <NumberField
          label="How many in all"
          whole
          min={2}
          max={200}
          value={count}
          onCommit={(next) => {
            setCount(next)
            return ACCEPTED
          }}
        />
        <LengthField
          label={shape === 'ring' ? 'Radius, to the centres' : 'Centre to centre'}
          value={distance}
          onCommit={(mm) => {
            setDistance(mm)
            return ACCEPTED
          }}
        />
        {shape === 'ring' && (
          <>
            <label className="field">
              <span>{name} stands</span>
              <select
                className="field-wide"
                value={first}
                onChange={(event) => setFirst(event.target.value as RowWanted['first'])}
              >
                <option value="on the ring">on the ring, at its neck end</option>
                <option value="in the middle">in the middle</option>
              </select>
            </label>
            <label className="check">
              <input
                type="checkbox"
                checked={turning}
                onChange={(event) => setTurning(event.target.checked)}
              />
              turn each with its place on the ring
            </label>
          </>
        )}
        {fault && (
          <p className="field-fault" role="alert">
            {fault}
          </p>
        )}
        <button type="submit" className="main">
          Make it
        </button>
      </form>
    </Dialog>
  )
}
