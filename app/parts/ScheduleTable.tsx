/** The drill and cut schedule: part by part in the order of the work, and the same as a file. */
import { Fragment, useState } from 'react'
import {
  type Field,
  fieldsOf,
  type Layout,
  measuredFrom,
  ORDER_OF_WORK,
  type ScheduleRow,
  scheduleOf,
  scheduleWords,
  unbroken,
  WORKS,
} from '../../geometry/index.ts'
import { downloadAll } from '../actions/files.ts'
import { useLayout } from './calm.ts'
import { Fields } from './Fields.tsx'
import { useNarrow } from './narrow.ts'

/** More rows than these nobody reads on a screen; the file has all of them. */
const MOST_ROWS = 400

export function ScheduleTable() {
  const layout = useLayout()
  const narrow = useNarrow()
  const rows = scheduleOf(layout)
  const shown = rows.slice(0, MOST_ROWS)
  const parts = [...new Set(shown.map((row) => row.part))]
  return (
    <section
      className="fret-table schedule"
      aria-label="Drill and cut schedule"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so keys must be able to reach it
      tabIndex={0}
    >
      <table>
        <caption className="unseen">
          Every hole and cut in the order of the work, lengths in {layout.design.units.display}
        </caption>
        <thead>
          <tr>
            <th scope="col">No.</th>
            <th scope="col" className="left">
              {narrow ? 'What, work' : 'What'}
            </th>
            {!narrow && (
              <th scope="col" className="left">
                Work
              </th>
            )}
            <th scope="col">{narrow ? 'Size, drill' : 'Size'}</th>
            <th scope="col">From the edge</th>
            <th scope="col">Across</th>
            <th scope="col">Depth</th>
            {!narrow && (
              <th scope="col" className="left">
                Drill
              </th>
            )}
          </tr>
        </thead>
        <tbody>
          {parts.map((part) => (
            <Fragment key={part}>
              <Part rows={shown.filter((row) => row.part === part)} layout={layout} narrow={narrow} />
            </Fragment>
          ))}
        </tbody>
      </table>
      {rows.length > MOST_ROWS && (
        <p className="small">
          {rows.length - MOST_ROWS} more rows are left out here; the CSV file has all {rows.length}.
        </p>
      )}
      {rows.length === 0 && <p className="soft small">Nothing is drilled or cut yet.</p>}
    </section>
  )
}

interface OfPart {
  readonly rows: readonly ScheduleRow[]
  readonly layout: Layout
  /** Two lines to a row, where the page has no room for all columns. */
  readonly narrow: boolean
}

function Part({ rows, layout, narrow }: OfPart) {
  const [first] = rows
  if (!first) return null
  return (
    <>
      <tr className="schedule-part">
        <th scope="rowgroup" colSpan={narrow ? 6 : 8}>
          {first.partTitle}
          <span className="soft">
            {first.partTitle.includes('from') ? '' : `, ${first.seen}`}: {measuredFrom(first)}
          </span>
        </th>
      </tr>
      {rows.map((row) => {
        const words = scheduleWords(row, layout.design.units)
        return (
          <tr key={row.order}>
            <td className="soft">{words.order}</td>
            <th scope="row">
              {words.what}
              {narrow && <span className="soft small">{words.work}</span>}
            </th>
            {!narrow && <td className="left">{words.work}</td>}
            <td>
              {unbroken(words.size)}
              {narrow && words.drill !== '' && <span className="soft small">{unbroken(words.drill)}</span>}
            </td>
            <td>{unbroken(words.edge)}</td>
            <td>{unbroken(words.line)}</td>
            <td>{unbroken(words.depth)}</td>
            {!narrow && <td className="left">{words.drill}</td>}
          </tr>
        )
      })}
    </>
  )
}

const DRILLS: readonly Field[] = fieldsOf('').filter((field) => field.name === 'drills')

/** Beside the schedule: which drills there are, why in this order, and the file. */
export function ScheduleAside() {
  const layout = useLayout()
  const rows = scheduleOf(layout)
  const [made, setMade] = useState('Millimetres and your own unit stand side by side in it.')
  const used = WORKS.filter((work) => rows.some((row) => row.work === work))
  const write = async () => {
    try {
      const { scheduleCsv, slug } = await import('../../exporters/index.ts')
      const name = `${slug(layout.design.title, 'box')}-schedule.csv`
      await downloadAll([{ name, text: scheduleCsv(layout.design), type: 'text/csv' }])
      setMade(`Saved ${name}.`)
    } catch (error) {
      setMade(`Nothing was written: ${error instanceof Error ? error.message : String(error)}`)
    }
  }
  return (
    <section className="schedule-aside" aria-label="Schedule">
      <h2>Drill and cut schedule</h2>
      <Fields fields={DRILLS} base={[]} />
      <p className="small soft">
        Taken is the smallest drill that is not under the hole wanted. One under by up to 0.02 mm counts as
        the size meant, and says so.
      </p>
      <button type="button" onClick={write} disabled={rows.length === 0}>
        Save as CSV
      </button>
      <p className="small soft" role="status" aria-live="polite">
        {made}
      </p>
      <h2>Why in this order</h2>
      <ul className="small soft schedule-why">
        {used.map((work) => (
          <li key={work}>{ORDER_OF_WORK[work]}</li>
        ))}
      </ul>
    </section>
  )
}

/** The schedule as the first entry of the list of parts. */
export function ScheduleEntry({
  listed,
  onChoose,
}: {
  readonly listed: boolean
  readonly onChoose: () => void
}) {
  const layout = useLayout()
  return (
    <ul className="part-list" aria-label="The work">
      <li className={listed ? 'part-row chosen' : 'part-row'}>
        <button
          type="button"
          className="part-pick"
          aria-current={listed ? 'true' : undefined}
          onClick={onChoose}
        >
          <span>
            Drill and cut schedule
            <span className="small soft">{scheduleOf(layout).length} rows, in the order of the work</span>
          </span>
        </button>
      </li>
    </ul>
  )
}
