/** Everything mended at once: what it would do stands here before it is done, as one step of undo. */
import { useEffect, useRef, useState } from 'react'
import { type CureAll as Answer, curingAll, type Demand, type Layout, ruleOf } from '../../geometry/index.ts'
import { commit, useBench } from '../state/index.ts'
import { Price, WorseList } from './CureButtons.tsx'
import { nameOf } from './say.ts'

/** How long one stretch of searching may take, and how long the page then has for itself; milliseconds. */
const STRETCH = 10
const PAUSE = 4

type Looking = { readonly layout: Layout; readonly answer: Answer | null }

export function CureAll({ layout }: { readonly layout: Layout }) {
  const [cares, setCares] = useState(false)
  const [looking, setLooking] = useState<Looking | null>(null)
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined)
  const stop = () => {
    clearTimeout(timer.current)
    setLooking(null)
  }
  const start = (withCares: boolean) => {
    clearTimeout(timer.current)
    setLooking({ layout, answer: null })
    const search = curingAll(layout, { cares: withCares })
    const go = () => {
      const until = performance.now() + STRETCH
      while (performance.now() < until) {
        const { done, value } = search.next()
        if (done) return setLooking({ layout, answer: value })
      }
      timer.current = setTimeout(go, PAUSE)
    }
    timer.current = setTimeout(go)
  }
  useEffect(() => () => clearTimeout(timer.current), [])
  // Another design lies there: what was found is of no use for it.
  if (looking && looking.layout !== layout) stop()
  const now = looking?.layout === layout ? looking : null
  return (
    <section className="cure-all" aria-label="Cure all">
      <div className="field-row">
        <button type="button" aria-expanded={now !== null} onClick={() => (now ? stop() : start(cares))}>
          {now ? 'Leave it' : 'Cure all…'}
        </button>
        <label className="cure-cares small">
          <input
            type="checkbox"
            checked={cares}
            onChange={(event) => {
              setCares(event.target.checked)
              if (now) start(event.target.checked)
            }}
          />{' '}
          also what is only risky
        </label>
      </div>
      <div role="status" className="small">
        {now && !now.answer && 'Looking for a design without a stop …'}
        {now?.answer && <Found answer={now.answer} layout={layout} />}
      </div>
    </section>
  )
}

function Found({ answer, layout }: { readonly answer: Answer; readonly layout: Layout }) {
  const { outcome, steps, worse, left } = answer
  const yours = left.filter((one) => !answer.beyond.includes(one) && one.rule === 'hand-stated')
  return (
    <>
      <p>{HEADS[outcome](answer)}</p>
      {outcome === 'none found' && <Contradiction answer={answer} layout={layout} />}
      {steps.length > 0 && (
        <>
          {outcome === 'none found' && <p>As far as it got:</p>}
          <ol className="cure-steps" aria-label="What it would do">
            {steps.map((step) => (
              <li key={step.words}>
                {step.words}
                {step.loosens && <Price cure={{ ...step, worse: [], outcome: 'gone' }} layout={layout} />}
              </li>
            ))}
          </ol>
          <p>
            <WorseList worse={worse} layout={layout} />
          </p>
          <button type="button" className="main" onClick={() => take(answer, layout)}>
            {outcome === 'none found'
              ? 'Do this much'
              : `Do ${steps.length === 1 ? 'it' : `all ${steps.length}`}`}
          </button>
        </>
      )}
      {yours.length > 0 && <p>Which hand plucks is yours to state; nothing else can tell.</p>}
    </>
  )
}

const HEADS: Readonly<Record<Answer['outcome'], (answer: Answer) => string>> = {
  cured: ({ steps }) =>
    `No stop is left after ${steps.length === 1 ? 'this' : `these ${steps.length}`}; undo takes it back in one step.`,
  'nothing to do': () => 'There is nothing here that it could mend.',
  'none found': ({ tried }) =>
    `No design without a stop was found; ${tried} ${tried === 1 ? 'was' : 'were'} looked at. That is no proof that there is none.`,
}

function Contradiction({ answer, layout }: { readonly answer: Answer; readonly layout: Layout }) {
  const { contradiction, beyond } = answer
  return (
    <>
      {beyond.length > 0 && (
        <>
          <p>Beyond any place or size, to be mended by hand:</p>
          <ul className="cure-demands">
            {beyond.map((one) => (
              <li key={one.key}>{demandWords({ sort: 'finding', finding: one, layout }, layout)}</li>
            ))}
          </ul>
        </>
      )}
      {contradiction.length > 0 && (
        <>
          <p>
            {contradiction.length === 1
              ? 'None of the places and sizes tried meets this. What its own line says may still help:'
              : 'These could not be met together; without any one of them the others can be:'}
          </p>
          <ul className="cure-demands">
            {contradiction.map((one) => (
              <li key={demandWords(one, layout)}>{demandWords(one, layout)}</li>
            ))}
          </ul>
        </>
      )}
    </>
  )
}

function demandWords(demand: Demand, layout: Layout): string {
  if (demand.sort === 'locked') return `${nameOf(demand.id, layout)} stays where it is locked.`
  const { rule, about } = demand.finding
  return `${ruleOf(rule).title}: ${about.map((id) => nameOf(id, layout)).join(', ')}.`
}

function take({ change, steps }: Answer, layout: Layout): void {
  if (useBench.getState().design !== layout.design) return
  commit(steps.length === 1 ? (steps[0]?.words ?? 'Cure all') : `Cure all, ${steps.length} changes`, change)
}
