/** The rows that fit, best first; one click tries a row on the drawing, another keeps it. What cannot be built says why. */
import { type KeyboardEvent, type ReactNode, useDeferredValue, useMemo, useState } from 'react'
import {
  formatLength,
  proposals,
  type Row,
  ranked,
  reasonOf,
  reasonsOf,
  setOf,
} from '../../geometry/index.ts'
import { announce } from '../parts/Announcer.tsx'
import { committed, useBench } from '../state/index.ts'
import { holdVariant, letGo, MOST_VARIANTS, useVariants } from '../state/variants.ts'
import { type Asked, useAsked } from './asked.ts'
import { useReckoned } from './reckoned.ts'
import { SaveRows } from './SaveRows.tsx'
import { SideBySide } from './SideBySide.tsx'
import { SHOWN, sayCount, sayPlace, sayRow } from './say-row.ts'
import { dropRow, keepRow, tryRow, useTrying } from './trying.ts'

/** So many rows at first; more only slow the list down. */
const AT_FIRST = 40

export function FitTable() {
  const { rows, done, total } = useReckoned()
  const asked = useDeferredValue(useAsked())
  // A design that is only tried has the same drawer and unit as the one it is tried for.
  useBench((bench) => bench.design)
  const { stringing, units } = committed()
  const [most, setMost] = useState(AT_FIRST)
  const held = useVariants((state) => state.held)
  const [beside, setBeside] = useState(false)
  const inOrder = useMemo(
    () => ranked(rows, asked.weights, { pull: stringing.wantedPull, note: asked.note }),
    [rows, asked.weights, asked.note, stringing.wantedPull],
  )
  const shown = useMemo(() => filtered(inOrder, asked), [inOrder, asked])
  const fitting = inOrder.filter((row) => row.numbers).length
  return (
    <section className="fit" aria-label="What fits">
      <header className="fit-head">
        <h2>What fits this box</h2>
        <p className="figure" role="status">
          {total === 0
            ? 'Rows are reckoned when the hand rests.'
            : done < total
              ? `${done} of ${total} rows reckoned`
              : `${fitting} of ${total} rows can be built`}
        </p>
        {done < total && <progress max={total} value={done} aria-label="Rows reckoned" />}
        {done === total && total > 0 && <SaveRows inOrder={inOrder} />}
        {held.length > 0 && (
          <button
            type="button"
            className="quiet"
            aria-pressed={beside}
            title="The variants that are held, beside the design on the bench"
            onClick={() => setBeside(!beside)}
          >
            Side by side ({held.length})
          </button>
        )}
        <Tried />
      </header>
      <section
        key={beside ? 'beside' : 'rows'}
        className="tables fit-rows"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so keys must be able to reach it
        tabIndex={0}
        aria-label="Rows, best first"
      >
        {beside && held.length > 0 ? (
          <SideBySide />
        ) : shown.length > 0 ? (
          <table className="fit-table">
            <caption className="unseen">
              Rows that can be built, best first; lengths in{' '}
              {units.display === 'mm' ? 'millimetres' : 'inches'}
            </caption>
            <thead>
              <tr>
                <th scope="col">Scale</th>
                <th scope="col">Strings</th>
                <th scope="col" title="Along the lid from its neck-end edge, as a share">
                  Saddle
                </th>
                {SHOWN.map(({ name, head, help, left }) => (
                  <th key={name} scope="col" title={help} className={left ? 'left' : undefined}>
                    {head}
                  </th>
                ))}
                <th scope="col" title="Up to four are drawn faintly over the plan, and stand side by side">
                  <span className="unseen">Hold</span>
                </th>
              </tr>
            </thead>
            <tbody onKeyDown={stepRows}>
              {shown.slice(0, most).map((row, index) => (
                <FitRow key={row.index} row={row} first={index === 0} />
              ))}
            </tbody>
          </table>
        ) : (
          done === total && total > 0 && <p className="fit-none">{nothingWords(fitting)}</p>
        )}
        {!beside && shown.length > most && (
          <p>
            <button type="button" className="quiet" onClick={() => setMost(most + AT_FIRST)}>
              {Math.min(AT_FIRST, shown.length - most)} more
            </button>
          </p>
        )}
        {!beside && done === total && <Impossible rows={inOrder} />}
      </section>
    </section>
  )
}

const nothingWords = (fitting: number): ReactNode =>
  fitting > 0
    ? 'Rows can be built, but none as the filters want them.'
    : 'Nothing that was asked fits this box and this neck. The reasons stand below: ask for other scales, counts or places, or change the neck blank.'

function filtered(inOrder: readonly Row[], asked: Asked): readonly Row[] {
  const wanted = inOrder.filter(
    ({ numbers, count }) =>
      numbers !== null &&
      (asked.strung === null || count === asked.strung) &&
      (asked.longest === null || numbers.overall <= asked.longest + 1e-6) &&
      (!asked.noCares || numbers.cares === 0) &&
      (!asked.nothingInTheWay || numbers.inTheWay.length === 0),
  )
  return asked.onlyBest ? proposals(wanted) : wanted
}

/** Up and down go from row to row. */
function stepRows(event: KeyboardEvent<HTMLTableSectionElement>): void {
  const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0
  if (step === 0) return
  const buttons = [...event.currentTarget.querySelectorAll<HTMLButtonElement>('button.fit-try')]
  const here = buttons.indexOf(document.activeElement as HTMLButtonElement)
  if (here < 0) return
  event.preventDefault()
  event.stopPropagation()
  buttons[Math.min(Math.max(here + step, 0), buttons.length - 1)]?.focus()
}

function FitRow({ row, first }: { readonly row: Row; readonly first: boolean }) {
  const tried = useTrying((state) => state.row === row)
  const { numbers, design } = row
  if (!numbers) return null
  return (
    <tr className={tried ? 'tried' : undefined} onClick={() => tryRow(row)}>
      <th scope="row">
        <button
          type="button"
          className="quiet fit-try"
          aria-pressed={tried}
          aria-label={`Try ${sayRow(row)}`}
          tabIndex={tried || first ? 0 : -1}
          onClick={(event) => {
            event.stopPropagation()
            tryRow(row)
          }}
        >
          {formatLength(row.scale, design.units)}
        </button>
      </th>
      <td>{row.count}</td>
      <td>{sayPlace(row.place)}</td>
      {SHOWN.map(({ name, say, left }) => (
        <td key={name} className={left ? 'left' : undefined}>
          {say(numbers, design.units)}
        </td>
      ))}
      <td>
        <Hold row={row} />
      </td>
    </tr>
  )
}

/** Holds a row beside the design: its number where it is held. */
function Hold({ row }: { readonly row: Row }) {
  const number = useVariants((state) => state.held.find((one) => one.design === row.design)?.number ?? null)
  const full = useVariants((state) => state.held.length >= MOST_VARIANTS)
  return (
    <button
      type="button"
      className="quiet fit-hold"
      aria-pressed={number !== null}
      aria-label={`Hold ${sayRow(row)} beside`}
      disabled={full && number === null}
      title={full && number === null ? 'Four are held; let one go first' : undefined}
      onClick={(event) => {
        event.stopPropagation()
        if (number !== null) return letGo(number)
        const given = holdVariant(sayRow(row), row.design)
        if (given !== null) announce(`Held as ${given}: ${sayRow(row)}.`)
      }}
    >
      {number ?? '+'}
    </button>
  )
}

/** What is on the drawing just now, and what becomes of it. */
function Tried() {
  const row = useTrying((state) => state.row)
  if (!row) return <p className="soft small">Press a row to try it on the drawing.</p>
  const { pitches, gauges, from } = setOf(row)
  return (
    <div className="fit-tried">
      <p className="small">
        On trial: <b>{sayRow(row)}</b>
        {pitches && `, ${pitches}, ${gauges}`} ({from})
      </p>
      <button type="button" onClick={keepRow}>
        Keep this
      </button>
      <button type="button" className="quiet" onClick={dropRow}>
        Drop it (Esc)
      </button>
    </div>
  )
}

function Impossible({ rows }: { readonly rows: readonly Row[] }) {
  const [open, setOpen] = useState(false)
  const impossible = rows.filter((row) => row.numbers === null)
  if (impossible.length === 0) return null
  return (
    <details className="fit-impossible" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        {impossible.length === 1 ? '1 row' : `${impossible.length} rows`} cannot be built, and why
      </summary>
      {open && (
        <ul>
          {reasonsOf(impossible).map(({ rule, title, count, example }) => (
            <li key={rule}>
              <b>{title}</b>, {count === 1 ? '1 row' : `${count} rows`}; as on{' '}
              {formatLength(example.scale, example.design.units, { unit: true })} with{' '}
              {sayCount(example.count)}, saddle at {sayPlace(example.place)}: {reasonOf(example)}
            </li>
          ))}
        </ul>
      )}
    </details>
  )
}
