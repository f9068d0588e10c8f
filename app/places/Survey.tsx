/** Survey: the box as measured, with every dimension a builder takes. */
import { lazy, Suspense, useState } from 'react'
import { type Field, fieldsOf, solve } from '../../geometry/index.ts'
import { BoxDrawing } from '../drawings/BoxDrawing.tsx'
import { PlanPieces } from '../drawings/PlanPieces.tsx'
import { ChoiceField } from '../parts/ChoiceField.tsx'
import { useDesign } from '../parts/calm.ts'
import { Fields } from '../parts/Fields.tsx'
import { type Drawing, PieceList } from '../parts/PieceList.tsx'
import { TextField } from '../parts/TextField.tsx'
import { setField } from '../state/index.ts'

/** Photographs are not of the first screen. */
const Photographs = lazy(() =>
  import('../photo/Photographs.tsx').then((page) => ({ default: page.Photographs })),
)

const GROUPS: readonly (readonly [string, (name: string) => boolean])[] = [
  ['Outside', (name) => !name.includes('.') && name !== 'inside'],
  ['Walls', (name) => name.startsWith('walls.')],
  ['Lid', (name) => name.startsWith('lid.')],
  ['Base', (name) => name.startsWith('base.')],
]

/** Fetched for a lid that opens, and only then: the first screen does without. */
const LidSwing = lazy(() => import('../drawings/LidSwing.tsx').then((page) => ({ default: page.LidSwing })))

const opens = (kind: string) => kind === 'hinged' || kind === 'sliding'

export function Survey() {
  const design = useDesign()
  const [lit, setLit] = useState<string | null>(null)
  const [chosen, choose] = useState<string | null>(null)
  const [drawing, draw] = useState<Drawing | null>(null)
  const marking = { chosen, choose, drawing, draw }
  const fields = fieldsOf('box')
  const hand = fieldsOf('').find((one) => one.name === 'hand')
  return (
    <>
      <form
        className="column form-column"
        aria-label="The box as measured"
        onSubmit={(event) => event.preventDefault()}
        onBlur={() => setLit(null)}
      >
        <section className="form-group" aria-label="Hand">
          <ChoiceField
            label={hand?.label ?? 'Hand'}
            help={hand?.help}
            value={design.hand}
            options={['not stated', 'right', 'left']}
            onCommit={(value) => setField(['hand'], value, 'Hand')}
          />
        </section>
        {GROUPS.map(([title, belongs]) => (
          <section key={title} className="form-group" aria-label={title}>
            <h2>{title}</h2>
            <div className="field-grid">
              <Watched fields={fields.filter((one) => belongs(one.name))} onFocus={setLit} />
            </div>
          </section>
        ))}
        <section className="form-group" aria-label="Inside">
          <h2>Inside</h2>
          <PieceList list="inside" {...marking} />
        </section>
        <section className="form-group" aria-label="Artwork">
          <h2>Artwork to keep</h2>
          <PieceList list="artwork" {...marking} />
        </section>
        <Suspense fallback={null}>
          <Photographs />
        </Suspense>
        <section className="form-group" aria-label="Notes">
          <TextField
            label="Notes"
            long
            value={design.notes}
            onCommit={(notes) => setField(['notes'], notes, 'Notes')}
          />
        </section>
      </form>
      <div className="survey-drawings">
        <section className="sheet" aria-label="The box as measured">
          <BoxDrawing
            layout={solve(design)}
            lit={lit}
            marks={(frame) => <PlanPieces layout={solve(design)} frame={frame} {...marking} />}
          />
        </section>
        {opens(design.box.lid.kind) && (
          <Suspense fallback={null}>
            <LidSwing layout={solve(design)} />
          </Suspense>
        )}
      </div>
    </>
  )
}

/** Fields whose dimension stands out on the drawing while they have the focus. */
function Watched({ fields, onFocus }: { fields: readonly Field[]; onFocus: (name: string) => void }) {
  return fields.map((field) => (
    <fieldset key={field.name} className="watched" onFocus={() => onFocus(field.name)}>
      <Fields fields={[field]} base={['box']} explain />
    </fieldset>
  ))
}
