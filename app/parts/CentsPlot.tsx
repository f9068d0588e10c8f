/** How far each fretted note is off, string by string: with the saddle as stated, and as it would be at the bare scale. */
import { useState } from 'react'
import { intonationOf, loadsOf } from '../../geometry/index.ts'
import { useLayout } from './calm.ts'
import { sayCents } from './say-loads.ts'

const WIDTH = 560
const HEIGHT = 150
const LEFT = 34
const BELOW = 20
/** Room for the names of the strings behind their lines, and the least between two of them. */
const BESIDE = 66
const APART = 12
/** Cents either way that the plot shows at least: what most ears let pass. */
const LEAST = 5

type Cents = readonly (number | null)[]

/** Before and after: where the saddle stands for the figures of the table. */
const SADDLES = {
  before: 'at the bare scale, not set back',
  asStated: 'as stated',
  after: 'set back for each string by itself',
} as const
type Shown = keyof typeof SADDLES

export function CentsPlot() {
  const layout = useLayout()
  const [shown, setShown] = useState<Shown>('asStated')
  const { frets, design } = layout
  const numbers = frets.filter((fret) => fret.number > 0).map((fret) => fret.number)
  const strings = intonationOf(layout)
  if (loadsOf(layout).missing || design.scale.fretless || numbers.length === 0) return null
  const values = strings.flatMap((one) => [...(one?.asStated ?? []), ...(one?.before ?? [])])
  const known = values.filter((value) => value !== null)
  const high = Math.ceil(Math.max(LEAST, ...known) / 5) * 5
  const low = Math.floor(Math.min(-LEAST, ...known) / 5) * 5
  const x = (index: number) => LEFT + ((index + 0.5) * (WIDTH - LEFT - BESIDE)) / numbers.length
  const y = (cents: number) => ((high - cents) * (HEIGHT - BELOW)) / (high - low)
  const path = (cents: Cents) =>
    cents
      .map((one, index) =>
        one === null ? '' : `${index === 0 ? 'M' : 'L'}${x(index).toFixed(1)} ${y(one).toFixed(1)}`,
      )
      .join('')
  const name = (index: number) => `string ${design.strings.count - index}`
  return (
    <section className="cents-plot" aria-label="Cents off at every fret">
      <h2>Cents off at every fret</h2>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label="The figures are in the table below">
        {[high, 0, low].map((cents) => (
          <g key={cents}>
            <path
              className={cents === 0 ? 'cents-zero' : 'cents-line'}
              d={`M${LEFT} ${y(cents)}H${WIDTH - BESIDE}`}
            />
            <text x={LEFT - 5} y={Math.min(Math.max(y(cents) + 4, 10), HEIGHT - BELOW)} textAnchor="end">
              {cents > 0 ? `+${cents}` : cents < 0 ? `−${-cents}` : '0'}
            </text>
          </g>
        ))}
        {strings.map((one, index) => (
          <g key={index}>
            <path className="cents-before" d={path(one?.before ?? [])} />
            <path
              className="cents-now"
              strokeWidth={1 + 0.5 * (strings.length - 1 - index)}
              d={path(one?.asStated ?? [])}
            />
          </g>
        ))}
        {namePlaces(strings.map((one) => lastOf(one?.asStated ?? [], x, y))).map((place, index) =>
          place ? (
            <g key={index}>
              <path
                className="cents-lead"
                d={`M${place.x + 3} ${place.y}L${WIDTH - BESIDE + 6} ${place.at}`}
              />
              <text x={WIDTH - BESIDE + 9} y={place.at + 4}>
                {name(index)}
              </text>
            </g>
          ) : null,
        )}
        {numbers.map((number, index) =>
          number === 1 || number % 3 === 0 ? (
            <text key={number} x={x(index)} y={HEIGHT - 5} textAnchor="middle">
              {number}
            </text>
          ) : null,
        )}
      </svg>
      <p className="soft small">
        Full lines: saddle and nut as stated; the bass string is the thickest. Broken lines: saddle at the
        bare scale. An estimate, for a finger that presses straight down.
      </p>
      <details className="fret-table">
        <summary className="small">As a table</summary>
        <label className="small">
          Saddle{' '}
          <select value={shown} onChange={(event) => setShown(event.target.value as Shown)}>
            {Object.entries(SADDLES).map(([name, words]) => (
              <option key={name} value={name}>
                {words}
              </option>
            ))}
          </select>
        </label>
        <table>
          <thead>
            <tr>
              <th scope="col">Fret</th>
              {strings.map((_, index) => (
                <th key={index} scope="col">
                  {name(index)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {numbers.map((number, fret) => (
              <tr key={number}>
                <th scope="row">{number}</th>
                {strings.map((one, index) => (
                  <td key={index}>{sayCents(one?.[shown][fret] ?? null)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </section>
  )
}

interface End {
  readonly x: number
  readonly y: number
}

/** Where a line ends on the plot; `null` for one that was not drawn. */
function lastOf(cents: Cents, x: (index: number) => number, y: (cents: number) => number): End | null {
  const index = cents.reduce<number>((last, one, at) => (one === null ? last : at), -1)
  const value = cents[index]
  return value == null ? null : { x: x(index), y: y(value) }
}

/** Each name as near to the end of its line as the others let it: `at` is its height. */
function namePlaces(ends: readonly (End | null)[]): ((End & { readonly at: number }) | null)[] {
  const order = [...ends.entries()].filter(([, end]) => end !== null).sort(([, a], [, b]) => a!.y - b!.y)
  const heights = new Map<number, number>()
  let last = Number.NEGATIVE_INFINITY
  for (const [index, end] of order) {
    last = Math.max(end!.y, last + APART)
    heights.set(index, last)
  }
  const over = Math.max(0, last - (HEIGHT - BELOW))
  return ends.map((end, index) => end && { ...end, at: (heights.get(index) ?? end.y) - over })
}
