/** The bar over every place: what is on the bench, the places in the order of the work, and what is always to hand. */
import { type KeyboardEvent, lazy, Suspense, useEffect, useState } from 'react'
import { change, type Layout } from '../../geometry/index.ts'
import { ACTIONS, act, PLACES } from '../actions/actions.ts'
import { Menu } from '../parts/Menu.tsx'
import { commit, goTo, setField, useBench } from '../state/index.ts'

/** It judges, and comes a moment after the bar. */
const StopCount = lazy(() => import('./StopCount.tsx').then((page) => ({ default: page.StopCount })))

export function TopBar() {
  return (
    <header className="top-bar">
      <div className="top-left">
        <h1 className="wordmark">Lidwright</h1>
        <div className="top-title">
          <Title />
          <Kept />
        </div>
      </div>
      <Places />
      <div className="top-right">
        <UnitChooser />
        <UndoRedo />
        <FileMenu />
      </div>
    </header>
  )
}

function Title() {
  const title = useBench((bench) => bench.design.title)
  const [text, setText] = useState(title)
  const [fault, setFault] = useState<string | null>(null)
  useEffect(() => {
    setText(title)
    setFault(null)
  }, [title])
  const commitTitle = () => {
    const answer = text === title ? { ok: true as const } : setField(['title'], text, 'Title')
    setFault(answer.ok ? null : answer.sentence)
  }
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') event.currentTarget.blur()
    if (event.key !== 'Escape') return
    setText(title)
    setFault(null)
  }
  return (
    <input
      className="title-input"
      type="text"
      aria-label="Title of the instrument"
      aria-invalid={fault !== null}
      title={fault ?? title}
      value={text}
      onChange={(event) => setText(event.target.value)}
      onBlur={commitTitle}
      onKeyDown={onKeyDown}
    />
  )
}

function Kept() {
  const { state, at, words } = useBench((bench) => bench.keeping)
  const plain = {
    kept: at ? `kept ${at}` : 'kept',
    keeping: 'keeping…',
    failed: 'not kept',
    'not-ours': 'open elsewhere',
  }[state]
  return (
    <p
      className={`kept kept-${state}`}
      role={state === 'failed' ? 'alert' : 'status'}
      title={words ?? undefined}
    >
      {plain}
    </p>
  )
}

function Places() {
  const place = useBench((bench) => bench.place)
  return (
    <nav className="places-nav" aria-label="Places, in the order of the work">
      {PLACES.map(({ name, title }) => (
        <button
          key={name}
          type="button"
          className={name === place ? 'place-tab here' : 'place-tab'}
          data-words={title}
          aria-current={name === place ? 'page' : undefined}
          onClick={() => goTo(name)}
        >
          {title}
          {name === 'prove' && (
            <Suspense fallback={null}>
              <StopCount />
            </Suspense>
          )}
        </button>
      ))}
    </nav>
  )
}

type Units = Layout['design']['units']

const UNITS: readonly (readonly [string, Units])[] = [
  ['mm', { display: 'mm', fraction: 32 }],
  ['inches 1/8', { display: 'inches', fraction: 8 }],
  ['inches 1/16', { display: 'inches', fraction: 16 }],
  ['inches 1/32', { display: 'inches', fraction: 32 }],
  ['inches 1/64', { display: 'inches', fraction: 64 }],
  ['inches, decimal', { display: 'inches', fraction: 0 }],
]

function UnitChooser() {
  const units = useBench((bench) => bench.design.units)
  const here = UNITS.findIndex(
    ([, one]) => one.display === units.display && (units.display === 'mm' || one.fraction === units.fraction),
  )
  return (
    <select
      className="unit-chooser"
      aria-label="Unit of your rule"
      value={String(here)}
      onChange={(event) => {
        const chosen = UNITS[Number(event.target.value)]?.[1]
        if (!chosen) return
        const { design } = useBench.getState()
        const fraction = chosen.display === 'mm' ? design.units.fraction : chosen.fraction
        commit('Another unit', change(design, [['units'], { display: chosen.display, fraction }]))
      }}
    >
      {UNITS.map(([title], index) => (
        <option key={title} value={String(index)}>
          {title}
        </option>
      ))}
    </select>
  )
}

function UndoRedo() {
  const undoLabel = useBench((bench) => bench.undoLabel)
  const redoLabel = useBench((bench) => bench.redoLabel)
  const canUndo = useBench((bench) => bench.canUndo)
  const canRedo = useBench((bench) => bench.canRedo)
  return (
    <>
      <button
        type="button"
        className="quiet"
        disabled={!canUndo}
        title={undoLabel ? `Undo: ${undoLabel}` : undefined}
        onClick={() => act('undo')}
      >
        Undo
      </button>
      <button
        type="button"
        className="quiet"
        disabled={!canRedo}
        title={redoLabel ? `Redo: ${redoLabel}` : undefined}
        onClick={() => act('redo')}
      >
        Redo
      </button>
    </>
  )
}

function FileMenu() {
  const items = ACTIONS.filter((action) => action.group === 'File' || action.id === 'all-actions').map(
    (action) => ({
      title: action.title,
      beside: action.keys?.[0],
      run: () => act(action.id),
    }),
  )
  return <Menu label="File" className="quiet" items={items} />
}
