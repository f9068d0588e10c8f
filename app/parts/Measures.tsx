/** Measures that stay on the drawing: each can be changed, go on the sheets too, or be taken away. */
import { lazy, Suspense, useState } from 'react'
import { change, formatLength, measuredOn } from '../../geometry/index.ts'
import { openDialog } from '../actions/dialogs.ts'
import { commit, setField } from '../state/index.ts'
import { announce } from './Announcer.tsx'
import { useLayout } from './calm.ts'
import { sayEnd, sayWay } from './say-measures.ts'

/** Seldom wanted, and as long as all the rest here. */
const MeasureDialog = lazy(() =>
  import('../dialogs/MeasureDialog.tsx').then((page) => ({ default: page.MeasureDialog })),
)

export function Measures() {
  const [changing, setChanging] = useState<number | null>(null)
  const layout = useLayout()
  const { design } = layout
  const taken = measuredOn(layout)
  return (
    <section className="thing-group measures" aria-label="Measures">
      <header>
        <h2>Measures</h2>
        <button type="button" className="link" onClick={() => openDialog('measure')}>
          Measure…
        </button>
      </header>
      <ul>
        {design.measures.map((measure, index) => {
          const words = `${sayEnd(measure.from, layout)} to ${sayEnd(measure.to, layout)}${sayWay(measure)}`
          const mm = taken.find((one) => one.index === index)?.mm
          return (
            <li key={`${words} ${index}`} className="measure">
              <p>
                <b>{mm === undefined ? 'cannot be taken' : formatLength(mm, design.units, { unit: true })}</b>{' '}
                {measure.name !== '' && <span dir="auto">{measure.name} </span>}
                <span className="soft">{words}</span>
              </p>
              <label>
                <input
                  type="checkbox"
                  checked={measure.onSheets}
                  onChange={(event) =>
                    setField(['measures', index, 'onSheets'], event.target.checked, 'Measure on the sheets')
                  }
                />
                on the sheets
              </label>
              <button
                type="button"
                className="link"
                aria-label={`Change the measure: ${words}`}
                onClick={() => setChanging(index)}
              >
                Change…
              </button>
              <button
                type="button"
                className="link"
                aria-label={`Take the measure away: ${words}`}
                onClick={() => {
                  commit('Take a measure away', change(design, [['measures', index], undefined]))
                  announce('Measure taken away. Undo brings it back.')
                }}
              >
                Take away
              </button>
            </li>
          )
        })}
      </ul>
      {changing !== null && (
        <Suspense fallback={null}>
          <MeasureDialog changes={changing} onClose={() => setChanging(null)} />
        </Suspense>
      )}
    </section>
  )
}
