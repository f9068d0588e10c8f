/** What each string does at pitch: its pull, how near that is to breaking, and the setback it asks for. */
import {
  formatLength,
  type Layout,
  limitOf,
  loadsOf,
  type StatedPitch,
  type StringLoad,
} from '../../geometry/index.ts'
import { useLayout } from './calm.ts'
import { sayGauge } from './Gauges.tsx'

const POUNDS_FORCE = 4.4482216152605

/** A pull in newtons, and in pounds where the rule is in inches (1 lbf = 4.4482216152605 N, NIST SP 811). */
export const sayPull = (newtons: number, { display }: Layout['design']['units']): string =>
  display === 'mm'
    ? `${newtons.toFixed(0)} N`
    : `${newtons.toFixed(0)} N, ${(newtons / POUNDS_FORCE).toFixed(1)} lb`

export function PullTable() {
  const layout = useLayout()
  const loads = loadsOf(layout)
  if (loads.missing)
    return (
      <p className="soft small pull-table">
        No pull is reckoned until a tuning names a pitch for each string. Choose one under Tuning.
      </p>
    )
  return (
    <section className="pull-table fret-table" aria-label="Strings at pitch">
      <table>
        <caption className="unseen">Strings at pitch, treble string first</caption>
        <thead>
          <tr>
            <th scope="col">String</th>
            <th scope="col">pitch</th>
            <th scope="col">gauge</th>
            <th scope="col">pull</th>
            <th scope="col" title="Share of the load at which it breaks">
              of breaking
            </th>
            <th
              scope="col"
              title="How far behind the bare scale the saddle makes its octave true; an estimate"
            >
              setback
            </th>
            <th scope="col">feels</th>
          </tr>
        </thead>
        <tbody>
          {[...loads.strings].reverse().map((string) => (
            <Row key={string.index} string={string} layout={layout} />
          ))}
        </tbody>
      </table>
    </section>
  )
}

/** `G2`, and how far off its key a pitch lies where that can be heard. */
const sayPitch = ({ name, cents }: StatedPitch): string =>
  Math.abs(cents) < 0.5 ? name : `${name} ${cents > 0 ? '+' : '−'}${Math.abs(cents).toFixed(0)} cents`

function Row({ string, layout }: { readonly string: StringLoad; readonly layout: Layout }) {
  const { units } = layout.design
  const { atPitch } = string
  if (!atPitch) return null
  return (
    <tr>
      <th scope="row">{string.number}</th>
      <td>{sayPitch(atPitch.pitch)}</td>
      <td>{sayGauge(string.gauge, units)}</td>
      <td>{sayPull(atPitch.tension, units)}</td>
      <td>
        <Share share={atPitch.shareOfBreaking} layout={layout} />
      </td>
      <td>
        {atPitch.setback === null
          ? 'none will do'
          : formatLength(atPitch.setback, { display: 'mm', fraction: 0 }, { unit: true })}
      </td>
      <td>{atPitch.feel}</td>
    </tr>
  )
}

const WIDTH = 64

/** The pull against the breaking load, with the places where care and stop begin. Figures say it; the bar shows it. */
function Share({ share, layout }: { readonly share: number; readonly layout: Layout }) {
  const limit = limitOf(layout.design)
  const [care, stop] = [limit('stringStrained'), limit('stringBreaking')]
  const at = (part: number) => Math.min(Math.max(part, 0), 1) * WIDTH
  return (
    <span className="share">
      <svg width={WIDTH} height="12" viewBox={`0 0 ${WIDTH} 12`} aria-hidden>
        <rect className="share-whole" x="0" y="3" width={WIDTH} height="6" />
        <rect
          className={share > care ? 'share-much' : 'share-part'}
          x="0"
          y="3"
          width={at(share)}
          height="6"
        />
        <path className="share-mark" d={`M${at(care)} 0V12M${at(stop)} 0V12`} />
      </svg>
      {(share * 100).toFixed(0)} %
    </span>
  )
}
