/** The joint of a scarfed head. */
import type { Design } from '../design/schema.ts'
import type { Point } from '../plane/index.ts'
import { tiltOf } from './head-form.ts'

/** The joint of a scarf, seen from the side: the bevel of the shaft, to which the back of the head is glued. */
export interface Scarf {
  /** Where the bevel leaves the top of the neck: in front of the nut, so that a board covers it. */
  readonly top: Point
  /** Where it comes out at the bottom of the neck. */
  readonly bottom: Point
  /** Length of the glued face. */
  readonly glued: number
}

/**
 * The stick is sawn through at the angle of the head; the piece that comes off is turned over and glued under the bevel with
 * its face up, so that its own bevelled end lies flush with the top of the neck. `null` for a head that is not scarfed.
 * Plane geometry; the way of doing it is common practice.
 */
export function scarfOf({ neck, headstock }: Design, nutBack: number): Scarf | null {
  if (headstock.form !== 'scarfed') return null
  const tilt = tiltOf(headstock)
  const x = nutBack + headstock.thickness / Math.sin(tilt)
  return {
    top: { x, y: neck.rise },
    bottom: { x: x - neck.thickness / Math.tan(tilt), y: neck.rise - neck.thickness },
    glued: neck.thickness / Math.sin(tilt),
  }
}
