/** What a neck finds where it passes an end wall of a surveyed box. */
import { type RealBox, type RealOutlines, sideOf } from './real-box.ts'

export interface SlotRoom {
  /** A neck that passes at an angle cuts a line on the outer face that is longer than it is wide. */
  readonly widened: number
  /** Of the wall, along its outer face: a neck that grazes it cuts no more than all of it. */
  readonly length: number
  /** From the middle of the wall to the inner faces of the side walls, along its outer face. */
  readonly bass: number
  readonly treble: number
  /** Height of the wall in its middle; `null`: as the depth says. */
  readonly height: number | null
}

/** The room beside and under a slot in the middle of an end wall. Example: of a square box `widened` is 1. */
export function slotRoom(real: RealBox & RealOutlines, face: 'neck-end-wall' | 'tail-end-wall'): SlotRoom {
  const side = face === 'neck-end-wall' ? 'neckEnd' : 'tailEnd'
  const end = real.outside.edges[side]
  const reach = (of: 'bass' | 'treble') => {
    const { at, slope } = real.inside.edges[of]
    const y = (at + slope * end.at) / (1 - slope * end.slope)
    return Math.abs(y) * Math.hypot(1, end.slope)
  }
  const [a, b] = side === 'neckEnd' ? [real.heights[0], real.heights[3]] : [real.heights[1], real.heights[2]]
  const { length, turn } = sideOf(real.outside, side)
  return {
    widened: 1 / Math.cos(turn),
    length,
    bass: reach('bass'),
    treble: reach('treble'),
    height: a == null || b == null ? (a ?? b ?? null) : (a + b) / 2,
  }
}
