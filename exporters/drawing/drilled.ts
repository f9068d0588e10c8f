/** Where a drawing is drilled, and the crosses to punch there. */
import type { Circle, Point } from '../../geometry/index.ts'
import type { Layer } from './drawing.ts'

/** A straight stroke, from end to end. */
type Arm = readonly [Point, Point]

/** Places are told apart to this many in a millimetre: nobody drills two holes nearer than that. */
const PER_MM = 1000

/** How far the arms of a cross reach beyond the hole, mm. */
const BEYOND_HOLE = 1

/** One circle for each place that is drilled, the widest there: a pilot in the middle of a wider hole is no place of its own. */
function drilledPlaces(layers: readonly Layer[]): Circle[] {
  const widest = new Map<string, Circle>()
  for (const { kind, contours } of layers) {
    if (kind !== 'drill') continue
    for (const hole of contours) {
      if (hole.shape !== 'circle') continue
      const place = `${Math.round(hole.centre.x * PER_MM)} ${Math.round(hole.centre.y * PER_MM)}`
      const before = widest.get(place)
      if (before === undefined || before.radius < hole.radius) widest.set(place, hole)
    }
  }
  return [...widest.values()]
}

/** A cross whose arms have a length. Example: `crossAt({ x: 5, y: 2 }, 3)` goes from 2 to 8 and from −1 to 5. */
export function crossAt({ x, y }: Point, arm: number): readonly Arm[] {
  return [
    [
      { x: x - arm, y },
      { x: x + arm, y },
    ],
    [
      { x, y: y - arm },
      { x, y: y + arm },
    ],
  ]
}

/** The arms of all crosses of a drawing, each reaching a millimetre beyond the widest hole of its place; none without holes. */
export function drillCrosses(layers: readonly Layer[]): Arm[] {
  return drilledPlaces(layers).flatMap(({ centre, radius }) => crossAt(centre, radius + BEYOND_HOLE))
}
