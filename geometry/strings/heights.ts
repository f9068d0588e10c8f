/**
 * From the action wanted to the height of the saddle, and what to do with a neck that gives a height nobody can build.
 * Millimetres and radians, instrument frame: x from the nut, z from the lid's outer face. The neck is straight and the
 * strings come down on a saddle that stands on the lid (plane geometry).
 */
import { finite, positive } from '../quantity/demand.ts'
import { heightAtSaddle } from './stretch.ts'

export interface Heights {
  /** Height over the lid of the plane through the fret crowns, at the nut. */
  readonly crowns: number
  /** By how much that plane rises per millimetre towards the tail; 0 for a neck level with the lid. */
  readonly slope: number
  /** Strings over that plane at the nut; 0 with a zero fret. */
  readonly overNut: number
  /** Action wanted at the octave. */
  readonly octaveAction: number
  readonly scale: number
}

/**
 * Height of the strings over the lid at the saddle, so of the saddle's top where it stands on the lid.
 * Example: crowns 6 mm over a level lid, 0.5 mm at the nut and 2 mm at the octave: 6 + 3.5 = 9.5 mm.
 */
export function saddleHeight({ crowns, slope, overNut, octaveAction, scale }: Heights): number {
  return crowns + slope * scale + heightAtSaddle(overNut, octaveAction)
}

export interface NeckCure {
  /** Raise the whole neck by this, negative to let it in deeper. */
  readonly raise: number
  /** Or turn it about the neck-end wall by this, radians; positive leans the head back and lifts the strings. */
  readonly tilt: number
}

/**
 * What would bring the saddle to `wanted` millimetres over the lid: raising the neck, or tilting it about `wall`, the x
 * of the neck-end wall. Tilting turns the crowns' plane, `Δz = tan(tilt) (scale − wall)` at the saddle.
 * Example: a saddle that comes to 9.5 mm and should be 12, wall at 330 on a 635 mm scale: raise 2.5, or tilt 0.0082.
 */
export function neckCure(height: number, wanted: number, scale: number, wall: number): NeckCure {
  const raise = finite(wanted, 'a height') - finite(height, 'a height')
  const behind = positive(positive(scale, 'a scale') - wall, 'what lies between neck-end wall and saddle')
  return { raise, tilt: Math.atan(raise / behind) }
}
