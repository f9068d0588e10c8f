/** What each string does at pitch: its pull, how near that is to breaking, and how it feels. */
import {
  formatFine,
  formatShare,
  type Layout,
  type Loads,
  loadsOf,
  type StatedPitch,
  type StringLoad,
} from '../../geometry/index.ts'
import { useLayout } from './calm.ts'
import { ShareBar } from './ShareBar.tsx'
import { madeOf } from './StringRows.tsx'
import { sayPull } from './say-loads.ts'
import { WhereFrom } from './WhereFrom.tsx'

export function PullTable() {
  const layout = useLayout()
  const loads = loadsOf(layout)
  const { totalPull, spread } = loads
  const { units } = layout.design
  return (
    <section className="pull-table fret-table" aria-label="Strings at pitch">
      {loads.missing && <p className="soft small">{sayMissing(loads.missing, layout)}</p>}
      {totalPull !== null && (
        <table>
          <caption className="unseen">Strings at pitch, treble string first</caption>
          <thead>
            <tr>
              <th scope="col">String</th>
              <th scope="col">pitch</th>
              <th scope="col">gauge</th>
              <th scope="col">pull</th>
              <th scope="col" className="left" title="The pull as a share of the load at which it breaks">
                of its breaking load
              </th>
              <th scope="col" className="left">
                feels
              </th>
            </tr>
          </thead>
          <tbody>
            {[...loads.strings].reverse().map((string) => (
              <Row key={string.index} string={string} layout={layout} />
            ))}
          </tbody>
          {spread && loads.strings.length > 1 && (
            <tfoot>
              <tr>
                <th scope="row">All</th>
                <td colSpan={2} />
                <td>{sayPull(totalPull, units)}</td>
                <td colSpan={2} className="left soft">
                  {`mean ${sayPull(spread.mean, units)}; the slackest ${formatShare(spread.least)}, the tightest ${formatShare(spread.most)} of it`}
                </td>
              </tr>
            </tfoot>
          )}
        </table>
      )}
      {totalPull !== null && (
        <p className="soft small">
          An estimate from scale, pitch and what a metre weighs. The two ticks are where care and where stop
          begin. <b>Protect your eyes when you bring a string to pitch for the first time.</b>
        </p>
      )}
      {totalPull !== null && (
        <WhereFrom layout={layout} formulas={['pull', 'strength']} stuff={['strings']} />
      )}
    </section>
  )
}

/** Why the pull is not known, and what would do. */
export function sayMissing(missing: NonNullable<Loads['missing']>, { design }: Layout): string {
  const strings = design.strings.count
  switch (missing.why) {
    case 'no tuning':
      return 'No pull is reckoned until a tuning names a pitch for each string. Choose one under Stringing.'
    case 'tuning too short':
      return `The tuning names ${missing.stated} of ${strings} pitches. Name the rest under Stringing, and the pull is reckoned.`
    case 'a string cannot be made':
      return 'A string cannot be made as stated: its core leaves no room, or its mass is missing. See Stringing, and Prove.'
  }
}

/** `G2`, and how far off its key a pitch lies where that can be heard. */
const sayPitch = ({ name, cents }: StatedPitch): string =>
  Math.abs(cents) < 0.5 ? name : `${name} ${cents > 0 ? '+' : '−'}${Math.abs(cents).toFixed(0)} cents`

function Row({ string, layout }: { readonly string: StringLoad; readonly layout: Layout }) {
  const { units } = layout.design
  const { atPitch, make } = string
  if (!atPitch) return null
  return (
    <tr>
      <th scope="row">{string.number}</th>
      <td title={`${atPitch.pitch.hertz.toFixed(2)} Hz`}>{sayPitch(atPitch.pitch)}</td>
      <td title={madeOf(make)}>
        {formatFine(string.gauge, units)} {make.construction === 'stated' ? '' : make.construction}
      </td>
      <td title={sayPull(atPitch.tension, { display: 'inches', fraction: 0 })}>
        {sayPull(atPitch.tension, units)}
      </td>
      <td className="left">
        <ShareBar share={atPitch.shareOfBreaking} design={layout.design} />
      </td>
      <td className="left">{atPitch.feel}</td>
    </tr>
  )
}
