/**
 * The air of a box that speaks through its openings: a Helmholtz resonator. Millimetres, seconds, hertz.
 *
 * Lord Rayleigh, "The Theory of Sound", vol. II, arts. 304–306: openings side by side add their conductances, and
 * `f = (c / 2 pi) sqrt(sum of conductances / V)`. Walls are taken as stiff: a lid that gives lowers the note.
 */
import { notNegative, positive } from '../quantity/demand.ts'

/** In air of 20 °C, mm/s: 343 m/s. Source: University Physics 1 (OpenStax), sec. 17.2. */
export const SPEED_OF_SOUND = 343_000

/**
 * Both ends of a hole in a wall, as a share of its radius: twice `8 / 3 pi`, the flanged end moved like a piston.
 * Source: Rayleigh, art. 307; L. Jaouen and F. Chevillotte, Acta Acustica 104 (2018), 243, print 0.85 for one end.
 */
export const BOTH_ENDS = 16 / (3 * Math.PI)

/** One hole through a face: area in mm², its two sizes across each other, and how far the air goes through wood. */
export interface Opening {
  readonly area: number
  readonly long: number
  readonly short: number
  readonly thickness: number
  /** A wider step on the way out: how deep, and how large there. */
  readonly rim?: { readonly depth: number; readonly area: number }
}

/** Arithmetic-geometric mean (C. F. Gauss): what an elliptic integral comes to without a table. */
function meanOf(a: number, b: number): number {
  let [high, low] = [a, b]
  for (let turn = 0; turn < 30 && high - low > 1e-14 * high; turn++)
    [high, low] = [(high + low) / 2, Math.sqrt(high * low)]
  return (high + low) / 2
}

/**
 * How much longer than the wood the air that moves through an opening is, both ends together, in mm.
 *
 * Round: `16 r / 3 pi`. A long hole is taken as the ellipse of its area and slenderness, whose ends are shorter as the
 * conductance of an ellipse in a thin wall, `2 agm(a, b)` with half axes a and b, is larger than a circle's `2 r`
 * (Rayleigh, art. 306, there as an elliptic integral).
 * Example: a round hole of 30 mm is 25.5 mm longer than its wall is thick.
 */
export function endsOf({ area, long, short }: Pick<Opening, 'area' | 'long' | 'short'>): number {
  const radius = Math.sqrt(positive(area, 'an area') / Math.PI)
  const slender = Math.sqrt(Math.max(positive(long, 'a length') / positive(short, 'a width'), 1))
  return (BOTH_ENDS * radius * radius) / meanOf(radius * slender, radius / slender)
}

/**
 * Conductance of an opening in mm: area over the length of the air that moves in it. The air in a wider rim moves less
 * by the ratio of the areas. Example: 30 mm round through 3 mm is 24.8 mm.
 */
export function conductanceOf(opening: Opening): number {
  const { area, thickness, rim } = opening
  const deep = rim ? Math.min(rim.depth, thickness) : 0
  const wood = notNegative(thickness, 'a thickness') - deep + (rim && deep > 0 ? (deep * area) / rim.area : 0)
  return area / (wood + endsOf(opening))
}

/**
 * Frequency in hertz of a volume in mm³ that speaks through openings whose conductances, in mm, add up to this.
 * Example: 1.98 litres through one hole of 30 mm in 3 mm speak at 193.3 Hz.
 */
export function airResonance(conductance: number, volume: number): number {
  return (
    (SPEED_OF_SOUND / (2 * Math.PI)) *
    Math.sqrt(positive(conductance, 'a conductance') / positive(volume, 'a volume'))
  )
}
