/**
 * Where the saddle must stand for the octaves to be true, and what is left in cents at every fret.
 *
 * Millimetres, newtons, cents. Three things act on a fretted note: the stretch of pressing (`stretch.ts`), the string's
 * own stiffness (`stiffness.ts`), and the setback, which flattens a note the more the shorter it is, once the open string
 * has been tuned again (G. Byers, "Intonation", American Lutherie 47, 1996). The finger behind the fret, friction at
 * nut and saddle, a bowed neck and the weight lost to stretch are left out.
 */
import { notNegative, positive } from '../quantity/demand.ts'
import type { Fret } from '../scale/frets.ts'

/** A string at pitch: pull over the bare scale, and `E A`, `E I` of its core (see `body.ts`). */
export interface TunedString {
  readonly tension: number
  readonly stretch: number
  readonly bend: number
}

/** The way the string goes. Heights of its underside are over the plane of the fret crowns; below 0 counts as 0. */
export interface StringPath {
  /** Bare scale, from the nut's place to the saddle's place without setback. */
  readonly length: number
  readonly nutHeight: number
  readonly saddleHeight: number
  /** String behind nut and saddle that slides freely, all together; 0 where it does not slide. */
  readonly sliding?: number
  /** How far the ends are held fast: 0 free to turn (usual), 1 clamped. */
  readonly held?: number
}

/** A fret as it is cut: where it lies, and the interval it should give. */
export type FretPlace = Pick<Fret, 'fromNut' | 'cents'>

export interface Compensation {
  /** Behind the bare scale; `null` where no setback within a tenth of the scale makes the octave true. */
  readonly setback: number | null
  /** How far the nut is moved towards the frets; 0 unless asked for. */
  readonly nutSetback: number
  /** Cents above the intended interval at every fret, saddle at the bare scale and nut in its place. */
  readonly before: readonly number[]
  /** The same with both set back; as `before` where there is no setback. */
  readonly after: readonly number[]
}

/** Cents that a millimetre makes on a millimetre: 1200 / ln 2. */
const CENTS = 1200 / Math.LN2
/** A setback beyond this share of the scale is no setback but a string far too slack or an action far too high. */
const MOST_SETBACK = 0.1
/** Cents. */
const NEAR_ENOUGH = 1e-6
const MOST_ROUNDS = 40

/**
 * First estimate in closed form: the setback that takes `cents` of sharpness off the octave. From
 * `g (L + s) = 2 (L / 2 + s)` with `g = 2^(cents / 1200)`: `s = L (g − 1) / (2 − g)`; `null` from an octave on.
 * Example: 2.4752 cents on 635 mm need `octaveSetback(635, 2.4752)`, 0.91 mm.
 */
export function octaveSetback(length: number, cents: number): number | null {
  const ratio = 2 ** (cents / 1200)
  return ratio < 2 ? (positive(length, 'the length of a string') * (ratio - 1)) / (2 - ratio) : null
}

/**
 * Cents by which a setback alone moves a fretted note once the open string is back in tune; negative is flat.
 * `1200 log2((L + s) / (L_n + s) · L_n / L)`. Example: 2 mm on 635 mm, at the octave: −5.43 cents.
 */
export function setbackCents(length: number, fromNut: number, setback: number): number {
  const left = positive(
    positive(length, 'the length of a string') - fromNut,
    'what a fret leaves of the string',
  )
  return CENTS * Math.log(((length + setback) / (left + setback)) * (left / length))
}

/** An open string between nut and saddle as they stand, in tune, and what its fretted notes are reckoned from. */
interface OpenString {
  readonly open: number
  /** Where the nut and the saddle are, along the neck. */
  readonly nutAt: number
  readonly saddleAt: number
  readonly nutSquare: number
  readonly saddleSquare: number
  /** Share of the pull gained per millimetre of stretch. */
  readonly hardness: number
  /** `B L²`, mm². */
  readonly stiff: number
  readonly held: number
  /** Square of what an open string of this length sounds too sharp by its stiffness, over the length squared. */
  readonly whole: number
}

function openString(string: TunedString, path: StringPath, setback: number, nutSetback: number): OpenString {
  const { length, sliding = 0, held = 0 } = path
  const nut = Math.max(0, path.nutHeight)
  const saddle = Math.max(0, path.saddleHeight)
  const span = length + setback - nutSetback
  const square = span * span + (saddle - nut) * (saddle - nut)
  const open = Math.sqrt(square)
  const tension = (string.tension * square) / (length * length)
  const stiff = (Math.PI ** 2 * string.bend) / tension
  return {
    open,
    nutAt: nutSetback,
    saddleAt: length + setback,
    nutSquare: nut * nut,
    saddleSquare: saddle * saddle,
    hardness: string.stretch / ((open + sliding) * tension),
    stiff,
    held,
    whole: square / ((1 + stiff / square) * heldSquare(stiff / square, held)),
  }
}

/** Cents above the intended interval of one fret. */
function errorAt(one: OpenString, fromNut: number, cents: number): number {
  const front = fromNut - one.nutAt
  const back = one.saddleAt - fromNut
  const square = back * back + one.saddleSquare
  const gained = 1 + one.hardness * (Math.sqrt(front * front + one.nutSquare) + Math.sqrt(square) - one.open)
  // (open / sounding)² · gained · (1 + B), with B = stiff / (gained · sounding²), over the same of the open string.
  const ratio = (one.whole * (gained * square + one.stiff)) / (square * square)
  const held = one.held === 0 ? 1 : heldSquare(one.stiff / (gained * square), one.held)
  return (CENTS / 2) * Math.log(ratio * held) - cents
}

/** Square of what ends held fast add to `stiffRatio`, without its guards: this runs for every fret of every string. */
function heldSquare(inharmonic: number, held: number): number {
  const raised = 1 + held * ((2 / Math.PI) * Math.sqrt(inharmonic) + (4 / Math.PI ** 2) * inharmonic)
  return raised * raised
}

/**
 * Cents above the intended interval at every fret, for a saddle and a nut set back by so much and the open string in
 * tune. The pull follows the length, as tuning makes it.
 * Example: steel .010 in under 72.6 N on 635 mm, 0.4 mm high at the nut and 4 mm at the saddle, is 2.99 cents sharp at
 * the octave by stretch alone.
 */
export function fretErrors(
  string: TunedString,
  path: StringPath,
  frets: readonly FretPlace[],
  setback = 0,
  nutSetback = 0,
): number[] {
  const one = openString(string, path, setback, nutSetback)
  const errors = new Array<number>(frets.length)
  for (let index = 0; index < frets.length; index++) {
    const fret = frets[index]!
    errors[index] = errorAt(one, fret.fromNut, fret.cents)
  }
  return errors
}

/**
 * The setback of one string that makes its octave true, and the cents at every fret before and after. Give `low`, a
 * fret near the nut, to set the nut back as well so that this fret is true too.
 * Source of the two conditions: Varieschi and Gower, as in `stretch.ts`; solved by Newton's steps with the slope that
 * the setbacks alone have, since stretch and stiffness hardly change with them.
 * Throws for a pull, stiffness or length that is none.
 */
export function compensate(
  string: TunedString,
  path: StringPath,
  frets: readonly FretPlace[],
  low?: FretPlace,
): Compensation {
  positive(string.tension, 'a tension')
  positive(string.stretch, 'a stiffness')
  notNegative(string.bend, 'a stiffness')
  positive(path.length, 'the length of a string')
  const before = fretErrors(string, path, frets)
  const solved = solve(string, path, low)
  if (!solved) return { setback: null, nutSetback: 0, before, after: before }
  const { setback, nutSetback } = solved
  return { setback, nutSetback, before, after: fretErrors(string, path, frets, setback, nutSetback) }
}

function solve(string: TunedString, path: StringPath, low: FretPlace | undefined) {
  const { length } = path
  const most = MOST_SETBACK * length
  let setback = 0
  let nutSetback = 0
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const one = openString(string, path, setback, nutSetback)
    const high = errorAt(one, length / 2, 1200)
    const near = low ? errorAt(one, low.fromNut, low.cents) : 0
    if (Math.abs(high) < NEAR_ENOUGH && Math.abs(near) < NEAR_ENOUGH) return { setback, nutSetback }
    const bySaddle = CENTS * (1 / (length / 2 + setback) - 1 / one.open)
    if (low) {
      // Moving the nut flattens every fretted note alike, by `CENTS / open` a millimetre.
      const nearBySaddle = CENTS * (1 / (length - low.fromNut + setback) - 1 / one.open)
      const step = (high - near) / (bySaddle - nearBySaddle)
      setback += step
      nutSetback += ((near - nearBySaddle * step) * one.open) / CENTS
    } else setback += high / bySaddle
    if (!(Math.abs(setback) < most && Math.abs(nutSetback) < most)) return null
  }
  return null
}
