/** The way through the tail-end wall of the wire that grounds the strings. */
import { type Circle, circle } from '../plane/index.ts'
import type { Layout } from '../solve/layout.ts'

/** Wood beside the neck slot before the hole, and how far down it lies. Common practice, no source. */
const BESIDE_SLOT = 8
const BELOW_EDGE = 12
/** Nobody bores a finer hole: under this none is meant. */
const LEAST_HOLE = 0.2

/**
 * The hole in the wall's own frame, on the treble side of the neck; `null` where none is wanted.
 * Example: of 3 mm beside a neck 38 wide with no play it stands at 28.5, 12 down.
 */
export function groundHoleOf({ design }: Pick<Layout, 'design'>): Circle | null {
  const { groundHole: diameter } = design.tailpiece
  if (diameter < LEAST_HOLE) return null
  const x = (design.neck.width + design.neck.slotPlay + diameter) / 2 + BESIDE_SLOT
  return circle({ x, y: -BELOW_EDGE }, diameter / 2)
}
