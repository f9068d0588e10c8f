/**
 * What a pickup hears of a string: each harmonic by how far the string swings where the pickup is.
 *
 * Harmonic n of a string of length L swings as `sin(n π x / L)` at x from a fixed end, so at a share `x / L = p / q` every
 * multiple of q is still (standing waves on a string: any text of acoustics; N. H. Fletcher and T. D. Rossing, "The
 * Physics of Musical Instruments", section 2). A pickup that hears a length w instead of a point takes the mean over
 * it: the same times `sin(a) / a` with `a = n π w / 2 L` (integral of a sine). How the string is struck, how the
 * magnet bends its field and what the wire does to high notes are left out.
 */

/**
 * How strongly harmonic `n` is heard, 0 to 1.
 *
 * @param n 1 for the fundamental
 * @param share distance from the saddle as a share of the sounding length
 * @param heard length heard along the string as a share of the sounding length; 0 for a point
 * @example harmonicHeard(4, 0.25) // 0: a quarter of the string from the saddle the fourth harmonic is still
 */
export function harmonicHeard(n: number, share: number, heard = 0): number {
  if (!(Number.isInteger(n) && n > 0))
    throw new RangeError(`A harmonic is a whole number from 1 on, not ${n}.`)
  if (!Number.isFinite(share)) throw new RangeError(`A share of the string is a number, not ${share}.`)
  if (!(heard >= 0)) throw new RangeError(`A length heard is not below 0, not ${heard}.`)
  const spread = (n * Math.PI * heard) / 2
  return Math.abs(Math.sin(n * Math.PI * share) * (spread === 0 ? 1 : Math.sin(spread) / spread))
}

/** So many harmonics are shown: beyond them little is left of a plucked string. Common practice, no source. */
export const HARMONICS = 16

/** Under a tenth (20 dB down) a harmonic is as good as not heard. A choice of ours. */
export const DEAF = 0.1

/** The sounding length that is left when a string is stopped so many semitones up: `2^(-n/12)` of the open one. */
export const stoppedLength = (semitones: number): number => 2 ** (-semitones / 12)
