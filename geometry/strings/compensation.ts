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
const NEAR_ENOUGH = 1e-7
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
  const left = positive(positive(length, 'the length of a string') - fromNut, 'what a fret leaves of the string')
  return CENTS * Math.log(((length + setback) / (left + setback)) * (left / length))
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
  const { length, sliding = 0, held = 0 } = path
  const nut = Math.max(0, path.nutHeight)
  const saddle = Math.max(0, path.saddleHeight)
  const span = length + setback - nutSetback
  const open = Math.sqrt(span * span + (saddle - nut) * (saddle - nut))
  const tension = string.tension * (open / length) ** 2
  const hardness = string.stretch / (open + sliding) / tension
  const stiff = (Math.PI ** 2 * string.bend) / tension
  const openStiff = stiffSquare(stiff / (open * open), held)
  const errors = new Array<number>(frets.length)
  for (let index = 0; index < frets.length; index++) {
    const fret = frets[index]!
    const front = fret.fromNut - nutSetback
    const back = length + setback - fret.fromNut
    const sounding = Math.sqrt(back * back + saddle * saddle)
    const gained = 1 + hardness * (Math.sqrt(front * front + nut * nut) + sounding - open)
    const shorter = open / sounding
    const stiffened = stiffSquare(stiff / (gained * sounding * sounding), held) / openStiff
    errors[index] = (CENTS / 2) * Math.log(shorter * shorter * gained * stiffened) - fret.cents
  }
  return errors
}

/** Square of `stiffRatio`, without its guards: this runs for every fret of every string. */
function stiffSquare(inharmonic: number, held: number): number {
  if (held === 0) return 1 + inharmonic
  const raised = 1 + held * ((2 / Math.PI) * Math.sqrt(inharmonic) + (4 / Math.PI ** 2) * inharmonic)
  return (1 + inharmonic) * raised * raised
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
  const octave: FretPlace = { fromNut: length / 2, cents: 1200 }
  const wanted = low ? [octave, low] : [octave]
  let setback = 0
  let nutSetback = 0
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const [high = 0, near = 0] = fretErrors(string, path, wanted, setback, nutSetback)
    if (Math.abs(high) < NEAR_ENOUGH && Math.abs(near) < NEAR_ENOUGH) return { setback, nutSetback }
    const open = length + setback - nutSetback
    const bySaddle = CENTS * (1 / (length / 2 + setback) - 1 / open)
    if (low) {
      // Moving the nut flattens every fretted note alike, by `CENTS / open` a millimetre.
      const nearBySaddle = CENTS * (1 / (length - low.fromNut + setback) - 1 / open)
      const apart = bySaddle - nearBySaddle
      const step = (high - near) / apart
      setback += step
      nutSetback += ((near - nearBySaddle * step) * open) / CENTS
    } else setback += high / bySaddle
    if (!(Math.abs(setback) < most && Math.abs(nutSetback) < most)) return null
  }
  return null
}
