/** Frequency ratios as people write them, and cents. */

/** Cents of a frequency ratio, `1200 log2 r` (A. J. Ellis, in Helmholtz, "On the Sensations of Tone", App. XX). */
export const centsOf = (ratio: number): number => 1200 * Math.log2(ratio)

/** `"3/2"` as a number. Example: `ratioOf('3/2')` is 1.5; 0 below the stroke gives `NaN`. */
export function ratioOf(text: string): number {
  const [above, below = '1'] = text.split('/')
  return Number(below) === 0 ? Number.NaN : Number(above) / Number(below)
}
