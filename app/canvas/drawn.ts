/** What a thing does to its face besides its openings, moved to where it stands. */
import { type Contour, move, notes, type Placed, turn } from '../../geometry/index.ts'

interface Drawn {
  readonly recesses: readonly Contour[]
  /** Taken out of the inner side, or glued to it: it does not show from outside. */
  readonly under: readonly Contour[]
  /** What lies on the face: a knob, a plate. */
  readonly cover: Contour | null
}

const known = notes<Placed, Drawn>()
const NOTHING: Drawn = { recesses: [], under: [], cover: null }

export function drawnOperations(placed: Placed): Drawn {
  const { kind, thing, at } = placed
  // Many holes and nothing else: they are not asked for one by one.
  if (kind.strewn) return NOTHING
  const before = known.get(placed)
  if (before) return before
  const angle = (thing.turnDegrees * Math.PI) / 180
  const put = (contour: Contour) => move(turn(contour, angle), at.x, at.y)
  const recesses: Contour[] = []
  const under: Contour[] = []
  for (const one of kind.operations(thing))
    if (one.kind === 'recess') (one.from === 'inside' ? under : recesses).push(put(one.contour))
  const cover = kind.cover?.(thing) ?? null
  // What takes nothing from the outer side and has a body hangs behind it.
  const hangs = kind.bodies !== undefined && placed.taken === null
  if (cover && hangs) under.push(put(cover))
  const drawn = { recesses, under, cover: cover && !hangs ? put(cover) : null }
  known.set(placed, drawn)
  return drawn
}
