/** Survey: the box as measured, with every dimension a builder takes. */
import { lazy, Suspense, useState } from 'react'
import {
  type Field,
  fieldsOf,
  formatLength,
  graduationOf,
  type Layout,
  solve,
  surveyOf,
} from '../../geometry/index.ts'
import { BoxDrawing } from '../drawings/BoxDrawing.tsx'
import { PlanPieces } from '../drawings/PlanPieces.tsx'
import { ChoiceField } from '../parts/ChoiceField.tsx'
import { useDesign } from '../parts/calm.ts'
import { Fields } from '../parts/Fields.tsx'
import { type Drawing, PieceList } from '../parts/PieceList.tsx'
import { NO_READINGS, Readings } from '../parts/Readings.tsx'
import { Rule } from '../parts/Rule.tsx'
import { TextField } from '../parts/TextField.tsx'
import { setField } from '../state/index.ts'

/** What a survey says takes the rules, which the first screen does without. */
const SurveySays = lazy(() =>
  import('../parts/SurveySays.tsx').then((page) => ({ default: page.SurveySays })),
)

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
  const layout = solve(design)
  const spokenFor = measuredInstead(design)
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
            address={hand?.address}
            value={design.hand}
            options={['not stated', 'right', 'left']}
            onCommit={(value) => setField(['hand'], value, 'Hand')}
          />
        </section>
        {GROUPS.map(([title, belongs]) => (
          <section key={title} className="form-group" aria-label={title}>
            <h2>{title}</h2>
            <div className="field-grid">
              <Watched
                fields={fields.filter((one) => belongs(one.name) && !spokenFor.has(one.name))}
                onFocus={setLit}
              />
            </div>
            {title === 'Outside' && <Measured layout={layout} onFocus={setLit} />}
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
        <section className="sheet survey-sheet" aria-label="The box as measured">
          <BoxDrawing
            layout={layout}
            lit={lit}
            marks={(frame) => <PlanPieces layout={layout} frame={frame} {...marking} />}
          />
          <Suspense fallback={null}>
            <SurveySays layout={layout} />
          </Suspense>
        </section>
        {opens(design.box.lid.kind) && (
          <Suspense fallback={null}>
            <LidSwing layout={layout} />
          </Suspense>
        )}
      </div>
    </>
  )
}

/** Length and width are not asked for where the readings give them. */
function measuredInstead(design: Layout['design']): ReadonlySet<string> {
  const result = surveyOf(design.box, graduationOf(design))
  if (!result?.ok) return new Set()
  const stated = new Set(result.survey.assumptions.flatMap(({ of, as }) => (as === 'stated' ? [of] : [])))
  return new Set([
    ...(stated.has('bass') || stated.has('treble') ? [] : ['length']),
    ...(stated.has('neckEnd') || stated.has('tailEnd') ? [] : ['width']),
  ])
}

/** Sides and diagonals, for a box that is no rectangle; one press away for the box that is. */
function Measured({ layout, onFocus }: { layout: Layout; onFocus: (name: string) => void }) {
  const { box, units } = layout.design
  if (!box.survey)
    return (
      <div>
        <button
          type="button"
          onClick={() => setField(['box', 'survey'], NO_READINGS, 'Measure sides and diagonals')}
        >
          Measure sides and diagonals
        </button>
        <p className="field-help">For a box that is not square, or to see whether it is.</p>
      </div>
    )
  const say = (mm: number) => formatLength(mm, units, { unit: true })
  return (
    <div className="survey-form">
      <h3>Sides and diagonals</h3>
      <p className="soft small">
        A length and Enter, and the next row waits; measure round again as often as you like. Shift and Enter
        stays in its row.
      </p>
      <Readings onFocus={onFocus} />
      {layout.real && (
        <p className="small">
          Along the centreline the box is <b>{say(layout.real.length)}</b> long, and{' '}
          <b>{say(layout.real.width)}</b> wide.
        </p>
      )}
      <Rule />
      <button
        type="button"
        className="link"
        onClick={() => setField(['box', 'survey'], undefined, 'Take all readings away')}
      >
        Take all readings away
      </button>
    </div>
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
