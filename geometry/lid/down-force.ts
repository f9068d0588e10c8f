/** What the strings press down with where they bend over nut or saddle. Radians, newtons, mm; z up, x to the tail. */
import { notNegative } from '../quantity/demand.ts'

export interface BreakAngle {
  /** How far the string falls away on the nut's side and on the tail's side; negative where it climbs. */
  readonly before: number
  readonly behind: number
  /** Both together: how far the string is bent. */
  readonly total: number
}

interface Place {
  readonly x: number
  readonly z: number
}

/**
 * Angles at a place that a string passes over (plane geometry, `atan2`). Throws where the three places are not in order
 * along x. Example: saddle 12 mm up, nut 10 mm up and 635 before, hole at the lid 60 behind: 0.0031 and 0.1974.
 */
export function breakAngle(before: Place, over: Place, behind: Place): BreakAngle {
  if (!(before.x < over.x && over.x < behind.x)) {
    throw new RangeError(`a string passes its places in order, not ${before.x}, ${over.x}, ${behind.x}`)
  }
  const front = Math.atan2(over.z - before.z, over.x - before.x)
  const back = Math.atan2(over.z - behind.z, behind.x - over.x)
  return { before: front, behind: back, total: front + back }
}

/**
 * Force with which a string under `tension` presses square on what it passes over: `T (sin a + sin b)`, equilibrium of
 * the string without friction. Negative where the string would lift off.
 * Example: 100 N bent by 10° behind the saddle alone press 17.4 N.
 */
export function downForce(tension: number, angle: Pick<BreakAngle, 'before' | 'behind'>): number {
  return notNegative(tension, 'a tension') * (Math.sin(angle.before) + Math.sin(angle.behind))
}

/** Force along x that is left over and pushes a loose saddle towards the nut: `T (cos a − cos b)`. */
export function pushForward(tension: number, angle: Pick<BreakAngle, 'before' | 'behind'>): number {
  return notNegative(tension, 'a tension') * (Math.cos(angle.before) - Math.cos(angle.behind))
}
