/** Which solids come too near each other, and which are meant to. */
import { remembered } from '../loads/remembered.ts'
import type { Layout } from '../solve/layout.ts'
import { type Between, roomBetween } from './between.ts'
import { bodiesOf } from './bodies.ts'
import type { Solid } from './solid.ts'
import { solidsNear } from './solids.ts'

export interface Conflict extends Between {
  /** A part of a thing. */
  readonly a: Solid
  /** What it meets: a part of another thing, wood, or a string. */
  readonly b: Solid
}

/** Pairs with more room than this between them are nobody's worry, mm. */
const LOOK_AROUND = 3

/**
 * The tightest pair of parts for every two things, and for every thing and each piece of structure, that come within
 * 3 mm of each other. None for a design without bodies, and nothing is worked out for it.
 */
export const conflictsOf = remembered((layout: Layout): readonly Conflict[] => {
  const tightest = new Map<string, Conflict>()
  for (const placed of layout.placed) {
    for (const a of bodiesOf(layout, placed)) {
      for (const b of solidsNear(layout, a.box, LOOK_AROUND)) {
        if (meantTo(a, b) || (b.placed && b.of < a.of)) continue
        const measured = roomBetween(a, b)
        if (measured.room > LOOK_AROUND) continue
        const key = `${a.of} ${b.of}`
        const held = tightest.get(key)
        if (!held || measured.room < held.room) tightest.set(key, { a, b, ...measured })
      }
    }
  }
  return [...tightest.values()]
})

/** Do the two belong together, or is another rule theirs? */
function meantTo(a: Solid, b: Solid): boolean {
  if (a.of === b.of) return true
  // A screw is to go into wood.
  if (a.sort === 'fastener' && b.sort === 'wood') return true
  if (b.placed) return a.sort === 'wood' && b.sort === 'fastener'
  // What stands in a face goes through it. Room over the base is measured by a rule of its own.
  return b.of === a.face || (a.face === 'lid' && b.of === 'base')
}
