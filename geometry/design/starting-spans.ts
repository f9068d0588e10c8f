/** How far apart the strings of a starting design run, on a neck of a width. Common practice, no source. Millimetres. */
import { LIMITS } from './limits.ts'
import type { Rounding } from './rounding.ts'

/** From an outer string’s edge to the edge of the board: over the limit by a hair that rounding leaves. */
export const BESIDE_STRINGS = LIMITS.stringToBoardEdge.value + 0.3
/** A saddle is longer than its strings lie apart by this. */
const SADDLE_OVER = 20
const SHORTEST_SADDLE = 30

/**
 * Outer strings at nut and saddle for a count, as fingers want them and as far as the neck is wide.
 * Example: three strings on a neck of 38 mm run 23 mm apart at the nut.
 */
export function spansWithin(count: number, neckWidth: number, rounded: Rounding, halfString: number) {
  const most = Math.max(0, neckWidth - 2 * (BESIDE_STRINGS + halfString))
  const gaps = count - 1
  const atNut = count <= 3 ? 11.5 : count === 4 ? 9 : 8
  const atSaddle = Math.max(LIMITS.stringsApartAtSaddle.value + 0.5, atNut + 1)
  const saddle = Math.min(rounded.near(gaps * atSaddle), rounded.down(most))
  return { saddle, nut: Math.min(rounded.near(gaps * atNut), saddle) }
}

/** Outer holes of the tailpiece: as the strings run at the saddle, as far as the neck has wood beside the holes. */
export const tailSpan = (atSaddle: number, neckWidth: number, hole: number, rounded: Rounding): number =>
  Math.max(0, Math.min(atSaddle, rounded.down(neckWidth - 2 * (hole / 2 + BESIDE_STRINGS))))

/** How long a saddle is made for strings that run so far apart. */
export const saddleFor = (atSaddle: number, rounded: Rounding): number =>
  Math.max(SHORTEST_SADDLE, rounded.up(atSaddle + SADDLE_OVER))
