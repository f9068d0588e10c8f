/** The note of the air in the box, and what the instrument weighs and how it hangs, each with where it comes from. */
import { Fragment } from 'react'
import {
  type Balance,
  balanceOf,
  change,
  type Layout,
  type Note,
  type Sound,
  soundOf,
} from '../../geometry/index.ts'
import { commit, setField } from '../state/index.ts'
import { useLayout } from './calm.ts'
import { nameOf, sayLength } from './say.ts'
import { onTheRule, sayPull } from './say-loads.ts'

export function AirAndWeight() {
  const layout = useLayout()
  return (
    <div className="air-and-weight">
      <Air layout={layout} sound={soundOf(layout)} />
      <Weight layout={layout} balance={balanceOf(layout)} />
    </div>
  )
}

const LITRE = 1e6

/** `1.85 l`, or cubic inches on an inch rule. */
function sayVolume(volume: number, { display }: Layout['design']['units']): string {
  return display === 'mm' ? `${(volume / LITRE).toFixed(2)} l` : `${(volume / 25.4 ** 3).toFixed(1)} in³`
}

/** The first letter of a row. */
const headed = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)

/** `C4 −49 cents`. */
function sayNote({ name, cents }: Note): string {
  const whole = Math.round(cents)
  return whole === 0 ? name : `${name} ${whole > 0 ? '+' : '−'}${Math.abs(whole)} cents`
}

function Air({ layout, sound }: { readonly layout: Layout; readonly sound: Sound }) {
  const { inside, mouths, blind, note, steps } = sound
  const { units } = layout.design
  const names = [...new Set(mouths.map((one) => one.of))]
  const volume = (what: string, amount: number, from: string) => (
    <tr key={what}>
      <th scope="row">{what}</th>
      <td>{amount < 0 ? `−${sayVolume(-amount, units)}` : sayVolume(amount, units)}</td>
      <td className="left soft">{from}</td>
    </tr>
  )
  return (
    <section className="fret-table neck-and-lid" aria-label="Air in the box">
      <h3>Air in the box</h3>
      {note ? (
        <p>
          <b className="figure">{sayNote(note)}</b>, {note.hertz.toFixed(0)} Hz, is what the air speaks best.
        </p>
      ) : (
        <p>
          {inside.air > 0
            ? 'No sound hole leads into the box, so its air has no note.'
            : 'Nothing is left inside for the air.'}
        </p>
      )}
      <table>
        <caption className="unseen">Room in the box and what takes it</caption>
        <thead>
          <tr>
            <th scope="col">Room</th>
            <th scope="col">comes to</th>
            <th scope="col" className="left">
              from
            </th>
          </tr>
        </thead>
        <tbody>
          {volume('Empty inside', inside.empty, 'between walls, lid and base')}
          {inside.taken.map(({ what, volume: its }) =>
            volume(headed(nameOf(what, layout)), -its, 'its size inside the box'),
          )}
          {volume(
            'Left for the air',
            inside.air,
            names.length > 0 ? `out by ${names.map((id) => nameOf(id, layout)).join(', ')}` : 'no way out',
          )}
        </tbody>
      </table>
      {steps.length > 0 && (
        <dl className="steps">
          {steps.map((step) => (
            <Fragment key={step.way}>
              <dt>
                Next {step.way} bit: {sizesIn(step.sizes, units)}
              </dt>
              <dd>
                {sayNote(step.note)}, {step.cents > 0 ? 'up' : 'down'} {Math.abs(step.cents).toFixed(0)} cents
              </dd>
            </Fragment>
          ))}
        </dl>
      )}
      {blind.length > 0 && (
        <p className="small">
          Not counted, for {blind.length > 1 ? 'they do' : 'it does'} not lead into the box:{' '}
          {blind.map((id) => nameOf(id, layout)).join(', ')}.
        </p>
      )}
      <p className="soft small">
        An estimate after Helmholtz and Rayleigh, in air of 20 °C: ten degrees less lower it by 30 cents. How
        far lid and walls give is not reckoned; a thin lid sounds lower. Holes close together, and the neck
        under one, let less air through than this.
      </p>
    </section>
  )
}

const sizesIn = (sizes: readonly number[], units: Layout['design']['units']) =>
  [...new Set(sizes.map((mm) => sayLength(mm, units)))].join(', ')

function Weight({ layout, balance }: { readonly layout: Layout; readonly balance: Balance }) {
  const { units } = layout.design
  const { pieces, mass, fromWall } = balance
  const say = (mm: number) => sayLength(Math.abs(mm), units)
  const side = (mm: number) => (mm < 0 ? 'before' : 'behind')
  return (
    <section className="fret-table neck-and-lid" aria-label="What it weighs and where it balances">
      <h3>Weight and balance</h3>
      <p>
        About <b className="figure">{sayMass(mass, units)}</b>; it balances {say(fromWall)} {side(fromWall)}{' '}
        the neck-end face of the box.
      </p>
      <Hanging layout={layout} balance={balance} />
      <table>
        <caption className="unseen">What each piece weighs</caption>
        <thead>
          <tr>
            <th scope="col">Piece</th>
            <th scope="col">weighs</th>
            <th scope="col">from the nut</th>
            <th scope="col" className="left">
              from
            </th>
          </tr>
        </thead>
        <tbody>
          {pieces.map((piece) => (
            <tr key={piece.what}>
              <th scope="row">{headed(nameOf(piece.what, layout))}</th>
              <td>{sayMass(piece.mass, units)}</td>
              <td>{sayLength(piece.x, units).replace('-', '−')}</td>
              <td className="left soft">
                {piece.wood ?? (piece.from === 'stated' ? 'as you state it' : 'gauge and length')}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="soft small">
        An estimate from sizes and handbook densities; boards of one wood differ by a tenth. Glue, finish,
        frets and screws are left out.
      </p>
    </section>
  )
}

const GRAMS_IN_OUNCE = 28.349523125

const sayMass = (grams: number, { display }: Layout['design']['units']): string =>
  display === 'mm'
    ? `${grams.toFixed(0)} g`
    : `${grams.toFixed(0)} g, ${(grams / GRAMS_IN_OUNCE).toFixed(1)} oz`

/** Which end drops, and what would do, each taken over by one press. */
function Hanging({ layout, balance }: { readonly layout: Layout; readonly balance: Balance }) {
  const { held } = balance
  const { design } = layout
  const { units } = design
  if (!held)
    return (
      <p className="soft small">
        Say under Weight and balance how it is held, and which end drops is reckoned.
      </p>
    )
  const where = held.by === 'the strap' ? 'front strap button' : 'leg'
  if (held.drops === 'neither')
    return (
      <p>
        {Math.abs(held.arm) < 1
          ? `It balances over the ${where}.`
          : `It balances ${sayLength(-held.arm, units)} behind the ${where}: the head stays up.`}
      </p>
    )
  const level = onTheRule(held.levelAt, units)
  const grams = held.ballast === null ? null : Math.ceil(held.ballast)
  return (
    <div className="cures">
      <p>
        The <b>{held.drops}</b> drops: it balances {sayLength(Math.abs(held.arm), units)}{' '}
        {held.drops === 'head' ? 'before' : 'behind'} the {where}, and a hand at the nut
        {held.drops === 'head' ? ' bears ' : ' holds down '}
        {sayPull(Math.abs(held.atNut), units)}.
      </p>
      <p className="proposal">
        <span className="small">
          Level with the {where} {sayLength(Math.abs(level), units)} {level < 0 ? 'before' : 'behind'} the
          neck-end face.
        </span>
        <button
          type="button"
          onClick={() =>
            setField(
              ['balance', held.by === 'the strap' ? 'strapAt' : 'lapAt'],
              level,
              held.by === 'the strap' ? 'Front strap button' : 'Rests on the leg at',
            )
          }
        >
          Put it there
        </button>
      </p>
      {grams !== null && grams <= 2000 && (
        <p className="proposal">
          <span className="small">
            Or level with {grams} g more, {sayLength(design.balance.ballastFromTail, units)} before the
            tail-end wall.
          </span>
          <button
            type="button"
            onClick={() =>
              commit('Ballast', change(design, [['balance', 'ballast'], design.balance.ballast + grams]))
            }
          >
            Add this ballast
          </button>
        </p>
      )}
    </div>
  )
}
