/** What a thing takes out of its face besides its openings, moved to where it stands. */
import { type Contour, move, type Placed, turn } from '../../geometry/index.ts'

const known = new WeakMap<Placed, { recesses: Contour[] }>()

export function drawnOperations(placed: Placed): { recesses: Contour[] } {
  const before = known.get(placed)
  if (before) return before
  const turned = (placed.thing.turnDegrees * Math.PI) / 180
  const recesses = placed.kind
    .operations(placed.thing)
    .flatMap((one) =>
      one.kind === 'recess' ? [move(turn(one.contour, turned), placed.at.x, placed.at.y)] : [],
    )
  const drawn = { recesses }
  known.set(placed, drawn)
  return drawn
}
