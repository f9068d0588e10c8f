/** What the selected pickup hears: its share of the string, harmonic by harmonic, and what it takes from the neck. */
import { useState } from 'react'
import {
  formatShare,
  HARMONICS,
  type PickupHearing as Hearing,
  harmonicHeard,
  type Layout,
  pickupsOf,
  stoppedLength,
} from '../../geometry/index.ts'
import { sayLength } from './say.ts'
import { sayFine } from './say-loads.ts'

type Units = Layout['design']['units']

const WIDTH = 288
const HEIGHT = 96
const LEFT = 4
const BELOW = 16
const STEP = (WIDTH - LEFT) / HARMONICS

/** The open string, and frets at which the picture changes most. */
const STOPPED = [0, 3, 5, 7, 12] as const

/** Nothing at all for a thing that hears no strings. */
export function PickupHearing({ layout, id }: { readonly layout: Layout; readonly id: string }) {
  const hearing = pickupsOf(layout).find((one) => one.id === id)
  return hearing ? <Heard layout={layout} hearing={hearing} /> : null
}

function Heard({ layout, hearing }: { readonly layout: Layout; readonly hearing: Hearing }) {
  const [stopped, setStopped] = useState<number>(0)
  const { units } = layout.design
  const say = (mm: number) => sayLength(mm, units)
  const left = stoppedLength(stopped)
  const sounding = layout.saddle.x * left
  const levels = Array.from({ length: HARMONICS }, (_, index) =>
    harmonicHeard(index + 1, hearing.fromSaddle / sounding, hearing.heard / sounding),
  )
  const under = hearing.fromSaddle < sounding
  return (
    <section className="hearing" aria-label="What it hears">
      <h3>What it hears</h3>
      <p>
        {say(hearing.fromSaddle)} before the saddle: {formatShare(hearing.share, { decimals: 1 })} of the
        string.
      </p>
      <label className="small hearing-stop">
        Harmonics of the string
        <select value={stopped} onChange={(event) => setStopped(Number(event.target.value))}>
          {STOPPED.map((semitones) => (
            <option key={semitones} value={semitones}>
              {semitones === 0 ? 'open' : `stopped ${semitones} semitones up`}
            </option>
          ))}
        </select>
      </label>
      {under ? (
        <Bars levels={levels} />
      ) : (
        <p className="small">So stopped, the string does not sound over it.</p>
      )}
      <p className="small">{sayDeaf(hearing, stopped)}</p>
      <details className="fret-table">
        <summary className="small">As a table</summary>
        <table>
          <thead>
            <tr>
              <th scope="col">Harmonic</th>
              <th scope="col">heard</th>
            </tr>
          </thead>
          <tbody>
            {levels.map((level, index) => (
              <tr key={index}>
                <th scope="row">{index + 1}</th>
                <td>{formatShare(level)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
      <p className="small soft">
        From the shape of the swing alone: how the string is struck, its stiffness and the coil are left out.
      </p>
      <h3>Strings over it</h3>
      <p>
        {layout.strings.length === 1
          ? 'One string'
          : `${layout.strings.length} strings span ${say(hearing.stringSpan)}`}
        ; it hears {say(hearing.activeWidth)}.{' '}
        {hearing.room < 0
          ? `The outermost runs ${say(-hearing.room)} outside.`
          : `${say(hearing.room)} are left on the tighter side.`}
      </p>
      <Relief hearing={hearing} units={units} />
    </section>
  )
}

function sayDeaf(hearing: Hearing, stopped: number): string {
  if (stopped > 0) return 'The pickup stays, the string grows shorter: its blind spots move up.'
  const { deafTo } = hearing
  if (deafTo.length === 0) return `Of the first ${HARMONICS} it is deaf to none.`
  const list = deafTo.length === 1 ? `harmonic ${deafTo[0]}` : `harmonics ${deafTo.join(', ')}`
  return `Nearly deaf to ${list} of the open string: under a tenth is heard.`
}

function Bars({ levels }: { readonly levels: readonly number[] }) {
  const high = HEIGHT - BELOW
  return (
    <svg
      className="harmonics"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label="How much of each harmonic is heard; the figures are in the table below"
    >
      <path className="harmonics-base" d={`M${LEFT} ${high}H${WIDTH}`} />
      <path className="harmonics-half" d={`M${LEFT} ${high / 2}H${WIDTH}`} />
      {levels.map((level, index) => {
        const x = LEFT + index * STEP
        const tall = Math.max(level * (high - 4), 1)
        return (
          <g key={index}>
            <rect
              className={level < 0.1 ? 'harmonics-deaf' : 'harmonics-bar'}
              x={x + 3}
              y={high - tall}
              width={STEP - 6}
              height={tall}
            />
            <text x={x + STEP / 2} y={HEIGHT - 4} textAnchor="middle">
              {index + 1}
            </text>
          </g>
        )
      })}
    </svg>
  )
}

function Relief({ hearing, units }: { readonly hearing: Hearing; readonly units: Units }) {
  const say = (mm: number) => sayLength(mm, units)
  const { relief } = hearing
  if (!relief)
    return (
      <>
        <h3>The neck under it</h3>
        <p>It takes nothing from the neck.</p>
      </>
    )
  return (
    <>
      <h3>The neck under it</h3>
      <p>
        {relief.left < relief.without
          ? `Its relief leaves ${say(relief.left)} of the neck, ${say(relief.without)} without it.`
          : `${say(relief.left)} of the neck are left under it anyway.`}{' '}
        {relief.stiffness !== null &&
          `The neck is ${formatShare(relief.stiffness)} as stiff there as it would be.`}
      </p>
      {relief.bow && relief.nutRise ? (
        <p className="small">
          Bow {sayFine(relief.bow.as, units)} with it, {sayFine(relief.bow.without, units)} without; the nut
          rises at most {sayFine(relief.nutRise.as, units)} instead of{' '}
          {sayFine(relief.nutRise.without, units)}. An estimate.
        </p>
      ) : (
        <p className="small soft">
          What that does to the bow is known once a tuning is stated and the neck holds.
        </p>
      )}
    </>
  )
}
