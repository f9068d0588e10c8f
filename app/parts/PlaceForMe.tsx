/**
 * Place for me: what to place and what is wished, three answers drawn as outlines with their numbers. One press tries
 * an answer in the drawing, one keeps it as a single step of undo, Escape drops it. The search runs beside the page in
 * short stretches and its answers get better while they are looked at.
 */
import { useEffect, useRef, useState } from 'react'
import {
  formatMeasure,
  type Placing,
  type Proposal,
  placeableIn,
  placing,
  ruleOf,
  solve,
} from '../../geometry/index.ts'
import { ghosts } from '../canvas/ghosts.ts'
import { beginGesture, committed, type Gesture, useBench } from '../state/index.ts'
import { isEmpty, NO_WISHES, PlaceWishes, type Wished, wishesOf } from './PlaceWishes.tsx'
import { Sign } from './Sign.tsx'
import { nameOf } from './say.ts'

/** How long one stretch of searching may take, and how long the page then has for itself; milliseconds. */
const STRETCH = 12
const PAUSE = 4

type Answer = Placing & { readonly over: boolean }

export function PlaceForMe({ onClose }: { readonly onClose: () => void }) {
  const [start] = useState(committed)
  const layout = solve(start)
  const [wished, setWished] = useState<Wished>(() => ({
    ...NO_WISHES,
    chosen: new Set(placeableIn(start).map((one) => one.id)),
  }))
  const [fault, setFault] = useState<string | null>(null)
  const [answer, setAnswer] = useState<Answer | null>(null)
  const [tried, setTried] = useState<number | null>(null)
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined)
  const gesture = useRef<Gesture | null>(null)
  const panel = useRef<HTMLElement>(null)

  const drop = () => {
    gesture.current?.cancel()
    gesture.current = null
    setTried(null)
  }
  const end = () => {
    clearTimeout(timer.current)
    drop()
    ghosts.show([])
    onClose()
  }
  const leave = useRef(end)
  leave.current = tried === null ? end : drop

  useEffect(() => {
    panel.current?.focus()
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== 'Escape') return
      event.preventDefault()
      event.stopPropagation()
      leave.current()
    }
    window.addEventListener('keydown', onKey, { capture: true })
    return () => {
      window.removeEventListener('keydown', onKey, { capture: true })
      clearTimeout(timer.current)
      gesture.current?.cancel()
      ghosts.show([])
    }
  }, [])

  const answered = answer !== null
  useEffect(() => {
    if (answered) panel.current?.querySelector('.place-answers')?.scrollIntoView({ block: 'nearest' })
  }, [answered])

  // Somebody changed the design meanwhile: what was found is of no use for it.
  const now = useBench(() => committed())
  useEffect(() => {
    if (now !== start) leave.current()
  }, [now, start])

  const show = (placed: Placing, over: boolean) => {
    setAnswer({ ...placed, over })
    ghosts.show(
      placed.proposals.map((one, index) => ({ layout: one.layout, number: index + 1 })),
      placed.placed,
    )
  }

  const search = () => {
    clearTimeout(timer.current)
    drop()
    const asked = wishesOf(wished, start.stringing.a4)
    setFault(typeof asked === 'string' ? asked : null)
    if (typeof asked === 'string') return
    const run = placing(start, asked)
    const go = () => {
      const until = performance.now() + STRETCH
      let news: Placing | null = null
      while (performance.now() < until) {
        const { done, value } = run.next()
        if (value) news = value
        if (done) return show(value, true)
      }
      // What is being tried stays what it is until it is dropped.
      if (news && gesture.current === null) show(news, false)
      timer.current = setTimeout(go, PAUSE)
    }
    setAnswer(null)
    timer.current = setTimeout(go)
  }

  const tryOut = (index: number, { change }: Proposal) => {
    clearTimeout(timer.current)
    drop()
    const begun = beginGesture(`Place for me, answer ${index + 1}`)
    begun.preview(change)
    gesture.current = begun
    setTried(index)
    const { proposals = [], placed = [] } = answer ?? {}
    ghosts.show(
      proposals.flatMap((one, at) => (at === index ? [] : [{ layout: one.layout, number: at + 1 }])),
      placed,
    )
  }

  const keep = () => {
    const held = gesture.current
    gesture.current = null
    held?.finish()
    ghosts.show([])
    onClose()
  }

  return (
    <section className="place-for-me" aria-label="Place for me" ref={panel} tabIndex={-1}>
      <header className="field-row">
        <h2>Place for me</h2>
        <button type="button" className="quiet" onClick={end}>
          Close
        </button>
      </header>
      <PlaceWishes layout={layout} wished={wished} onChange={setWished} />
      {fault && (
        <p className="field-fault" role="alert">
          {fault}
        </p>
      )}
      <button type="button" className="main" disabled={isEmpty(wished)} onClick={search}>
        {answer ? 'Search again' : 'Find places'}
      </button>
      <div role="status" className="small soft">
        {answer &&
          (answer.over
            ? `${answer.proposals.length} ${answer.proposals.length === 1 ? 'answer that is' : 'answers that are'} worth telling.`
            : 'Still getting better …')}
      </div>
      {answer && answer.said.length > 0 && (
        <ul className="small place-said" aria-label="Done beforehand">
          {answer.said.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
      <ol className="place-answers" aria-label="Answers">
        {answer?.proposals.map((one, index) => (
          <li key={`${index + 1}`} className={tried === index ? 'trying' : ''}>
            <button
              type="button"
              aria-pressed={tried === index}
              onClick={() => (tried === index ? drop() : tryOut(index, one))}
            >
              {tried === index ? `Drop answer ${index + 1}` : `Try answer ${index + 1}`}
            </button>
            {tried === index && (
              <button type="button" className="main" onClick={keep}>
                Keep it
              </button>
            )}
            <Told proposal={one} />
          </li>
        ))}
      </ol>
    </section>
  )
}

/** How much more there is than the limit asks for, or less; one that is just met has no figure to read. */
function sayOver(finding: Proposal['tightest'][number], units: Units): string {
  const margin = finding.margin ?? 0
  const amount = formatMeasure(Math.abs(margin), finding, units, { unit: true })
  if (amount === formatMeasure(0, finding, units, { unit: true })) return 'just at the limit'
  return `${amount} ${margin > 0 ? 'to spare' : 'short of the limit'}`
}

type Units = Proposal['layout']['design']['units']

function Told({ proposal }: { readonly proposal: Proposal }) {
  const { stops, cares, tightest, wishes, layout } = proposal
  const { units } = layout.design
  // A pair of holes has the same margin twice: it is told once, with both names.
  const said = new Map<string, { amount: string; title: string; about: string[] }>()
  for (const finding of tightest) {
    const amount = sayOver(finding, units)
    const title = ruleOf(finding.rule).title.toLowerCase()
    const names = finding.about.map((id) => nameOf(id, layout)).join(', ')
    const before = said.get(`${amount} ${title}`)
    if (before) before.about.push(names)
    else said.set(`${amount} ${title}`, { amount, title, about: [names] })
  }
  return (
    <ul className="small place-told">
      <li>
        <Sign grade={stops.length > 0 ? 'stop' : cares.length > 0 ? 'care' : 'clear'} /> {stops.length}{' '}
        {stops.length === 1 ? 'stop' : 'stops'}, {cares.length} {cares.length === 1 ? 'care' : 'cares'} on the
        whole instrument
      </li>
      {wishes.map(({ words, met }) => (
        <li key={words}>
          {met ? 'Met: ' : 'Missed: '}
          {words}
        </li>
      ))}
      {[...said].map(([key, { amount, title, about }]) => (
        <li key={key}>
          <b>{amount}</b>, {title}: {about.join('; ')}
        </li>
      ))}
    </ul>
  )
}
