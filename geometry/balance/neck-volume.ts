/** How much wood a neck holds between two places, and where its middle lies. */
import { halfWidthAt } from '../neck/neck.ts'
import type { Layout } from '../solve/layout.ts'

export interface Lump {
  /** mm³. */
  readonly volume: number
  /** Along the instrument, from the nut. */
  readonly x: number
}

/** A piece whose width and height run straight from one end to the other. */
interface Wedge {
  readonly x0: number
  readonly x1: number
  readonly widths: readonly [number, number]
  readonly heights: readonly [number, number]
}

/** Volume and moment: a cubic at most, which Simpson's rule takes without error. */
function measured({ x0, x1, widths, heights }: Wedge): { volume: number; moment: number } {
  const long = x1 - x0
  const middle = ((widths[0] + widths[1]) / 2) * ((heights[0] + heights[1]) / 2)
  const [start, end] = [widths[0] * heights[0], widths[1] * heights[1]]
  return {
    volume: (long / 6) * (start + 4 * middle + end),
    moment: (long / 6) * (start * x0 + 4 * middle * ((x0 + x1) / 2) + end * x1),
  }
}

/**
 * The neck between `from` and `to`, as far as it lies between the heights `floor` and `ceiling`: blank and head with
 * their taper, slope and cuts, without board, bar or what is glued on. Of nothing the middle is `from`.
 * Example: a stick of 38 × 19 holds 722 mm³ a millimetre.
 */
export function neckVolume(
  { neck }: Pick<Layout, 'neck'>,
  from: number,
  to: number,
  floor = Number.NEGATIVE_INFINITY,
  ceiling = Number.POSITIVE_INFINITY,
): Lump {
  let volume = 0
  let moment = 0
  for (const stretch of neck.stretches) {
    const [x0, x1] = [Math.max(stretch.x0, from), Math.min(stretch.x1, to)]
    if (x1 <= x0) continue
    const rise = stretch.of === 'slope' ? (neck.top - stretch.top) / (stretch.x1 - stretch.x0) : 0
    const heightAt = (x: number) =>
      Math.max(0, Math.min(stretch.top + rise * (x - stretch.x0), ceiling) - Math.max(stretch.bottom, floor))
    const xs = [x0, ...neck.halfWidths.map((one) => one.x).filter((x) => x > x0 && x < x1), x1]
    for (let index = 1; index < xs.length; index++) {
      const [a, b] = [xs[index - 1] ?? x0, xs[index] ?? x1]
      // Just inside the ends: where the head stops short of its shoulder the width jumps.
      const hair = (b - a) * 1e-9
      const piece = measured({
        x0: a,
        x1: b,
        widths: [2 * halfWidthAt(neck, a + hair), 2 * halfWidthAt(neck, b - hair)],
        heights: [heightAt(a), heightAt(b)],
      })
      volume += piece.volume
      moment += piece.moment
    }
  }
  return { volume, x: volume > 0 ? moment / volume : from }
}
