/** How far each fretted note is off, string by string: with the saddle as stated, and as it would be at the bare scale. */
import { intonationOf, loadsOf } from '../../geometry/index.ts'
import { useLayout } from './calm.ts'

const WIDTH = 560
const HEIGHT = 150
const LEFT = 34
const BELOW = 20
/** Cents either way that the plot shows at least: what most ears let pass. */
const LEAST = 5

type Cents = readonly (number | null)[]

export function CentsPlot() {
  const layout = useLayout()
  const { frets, design } = layout
  const numbers = frets.filter((fret) => fret.number > 0).map((fret) => fret.number)
  const strings = intonationOf(layout)
  if (loadsOf(layout).missing || design.scale.fretless || numbers.length === 0) return null
  const values = strings.flatMap((one) => [...(one?.asStated ?? []), ...(one?.before ?? [])])
  const known = values.filter((value) => value !== null)
  const high = Math.ceil(Math.max(LEAST, ...known) / 5) * 5
  const low = Math.floor(Math.min(-LEAST, ...known) / 5) * 5
  const x = (index: number) => LEFT + ((index + 0.5) * (WIDTH - LEFT)) / numbers.length
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
            <path className={cents === 0 ? 'cents-zero' : 'cents-line'} d={`M${LEFT} ${y(cents)}H${WIDTH}`} />
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
        {numbers.map((number, index) =>
          number === 1 || number % 3 === 0 ? (
            <text key={number} x={x(index)} y={HEIGHT - 5} textAnchor="middle">
              {number}
            </text>
          ) : null,
        )}
      </svg>
      <p className="soft small">
        Drawn out: saddle as stated; the bass string is the thickest line. Broken: saddle at the bare scale.
        An estimate for a finger that presses straight down.
      </p>
      <details className="fret-table">
        <summary className="small">As a table</summary>
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
                  <td key={index}>{sayCents(one?.asStated[fret] ?? null)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </section>
  )
}

function sayCents(cents: number | null): string {
  if (cents === null) return '–'
  const text = Math.abs(cents).toFixed(1)
  return text === '0.0' ? '0.0' : `${cents > 0 ? '+' : '−'}${text}`
}
