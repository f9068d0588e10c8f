/** How much wood a neck holds between two places, and where its middle lies. */
import { halfWidthAt } from '../neck/neck.ts'
import type { Layout } from '../solve/layout.ts'

export interface Lump {
  /** mm³. */
  readonly volume: number
  /** Along the instrument, from the nut. */
  readonly x: number
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
    const x0 = Math.max(stretch.x0, from)
    const x1 = Math.min(stretch.x1, to)
    if (x1 <= x0) continue
    const rise = stretch.of === 'slope' ? (neck.top - stretch.top) / (stretch.x1 - stretch.x0) : 0
    const low = Math.max(stretch.bottom, floor)
    let a = x0
    let startHigh = Math.max(0, Math.min(stretch.top + rise * (a - stretch.x0), ceiling) - low)
    while (a < x1) {
      const b = nextTurn(neck, a, x1)
      const endHigh = Math.max(0, Math.min(stretch.top + rise * (b - stretch.x0), ceiling) - low)
      // Just inside the ends: where the head stops short of its shoulder the width jumps.
      const hair = (b - a) * 1e-9
      const startWide = 2 * halfWidthAt(neck, a + hair)
      const endWide = 2 * halfWidthAt(neck, b - hair)
      // Width and height run straight, so this is a cubic at most, which Simpson's rule takes without error.
      const start = startWide * startHigh
      const end = endWide * endHigh
      const middle = ((startWide + endWide) / 2) * ((startHigh + endHigh) / 2)
      volume += ((b - a) / 6) * (start + 4 * middle + end)
      moment += ((b - a) / 6) * (start * a + 4 * middle * ((a + b) / 2) + end * b)
      a = b
      startHigh = endHigh
    }
  }
  return { volume, x: volume > 0 ? moment / volume : from }
}

/** Where the plan of the neck turns next behind `x`, at `end` at the latest. */
function nextTurn({ halfWidths }: Layout['neck'], x: number, end: number): number {
  for (const point of halfWidths) if (point.x > x) return Math.min(point.x, end)
  return end
}
