/**
 * What pressing a string does: it has farther to go, so it pulls harder and sounds sharp. Millimetres, newtons, cents.
 *
 * The string runs straight from nut to fret and from fret to saddle; the finger behind the fret, friction, and a neck
 * that is not straight are left out. Source: G. U. Varieschi and C. M. Gower, "Intonation and Compensation of Fretted
 * String Instruments", Am. J. Phys. 78, 47 (2010).
 */
import { finite, notNegative, positive } from '../quantity/demand.ts'

/**
 * Length gained when a string over `length` is pressed down on the plane of the fret crowns, `at` millimetres from
 * the nut. Heights are over that plane.
 * `√(x² + hn²) + √((L − x)² + hs²) − √(L² + (hs − hn)²)`.
 * Example: pressed 2 mm down in the middle of 635 mm, `stretchOf(635, 317.5, 2, 2)` is 0.0126 mm.
 */
export function stretchOf(length: number, at: number, nutHeight: number, saddleHeight: number): number {
  positive(length, 'the length of a string')
  if (!(at >= 0 && at <= length))
    throw new RangeError(`a fret must lie between 0 and ${length}, not at ${at}`)
  const open = Math.hypot(length, finite(saddleHeight, 'a height') - finite(nutHeight, 'a height'))
  return Math.hypot(at, nutHeight) + Math.hypot(length - at, saddleHeight) - open
}

/**
 * Pull gained by a stretch: `E A ΔL / L`. `stretch` is EA in newtons; `length` all of the string that slides freely,
 * so with what lies behind nut and saddle if it does.
 * Example: copper of 1 mm, EA = 86 394 N, stretched 3 mm on 1 m gains 259 N (University Physics 1, sec. 12.3).
 */
export function pullFromStretch(stretch: number, gained: number, length: number): number {
  return (
    (positive(stretch, 'a stiffness') * finite(gained, 'a stretch')) /
    positive(length, 'the length of a string')
  )
}

/** Cents by which a pull of `tension` sounds sharper when it grows by `gained`: `600 log2(1 + ΔT / T)`. */
export function sharpening(tension: number, gained: number): number {
  return 600 * Math.log2(1 + notNegative(gained, 'the pull gained') / positive(tension, 'a tension'))
}

/**
 * Height of the strings over the plane of the crowns at the saddle, from their height at the nut and the action wanted
 * at the octave, which lies half way: `nut + 2 (action − nut)`. Common geometry of a straight neck.
 * Example: 0.4 mm at the nut and 2.2 mm at the octave need 4 mm at the saddle.
 */
export function heightAtSaddle(nutHeight: number, octaveAction: number): number {
  return nutHeight + 2 * (octaveAction - nutHeight)
}
