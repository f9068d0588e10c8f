/** A lid that slides out over an edge: what stands in its way, and how far it comes. Millimetres. */
import { meet } from './clip.ts'
import type { LidSection } from './section.ts'

export interface Stopped {
  readonly moving: string
  readonly standing: string
  /** How far the lid comes before they touch. */
  readonly after: number
  /** How much of their heights they share: what would have to come off. */
  readonly bite: number
  /** Where, in the section with the lid closed, and along the edge. */
  readonly at: { readonly x: number; readonly y: number }
  readonly s: number
}

export interface Slide {
  readonly reached: number
  readonly wanted: number
  /** What stops it first comes first. */
  readonly stopped: readonly Stopped[]
}

const TOUCH = 1e-6

/** Slides the lid towards its edge, against u, by `wanted`. What stands in each other before is left to other rules. */
export function slide(section: LidSection, wanted: number): Slide {
  const stopped: Stopped[] = []
  for (const moving of section.moving)
    for (const standing of section.standing) {
      const [s0, s1] = [Math.max(moving.s0, standing.s0), Math.min(moving.s1, standing.s1)]
      if (s1 - s0 <= TOUCH) continue
      const zs = moving.section.map(({ y }) => y)
      const bite = Math.min(Math.max(...zs), standing.z1) - Math.max(Math.min(...zs), standing.z0)
      const front = Math.min(...moving.section.map(({ x }) => x))
      const after = front - standing.u1
      if (bite <= TOUCH || after < -TOUCH || after >= wanted - TOUCH) continue
      stopped.push({
        moving: moving.what,
        standing: standing.what,
        after: Math.max(after, 0),
        bite,
        at: { x: standing.u1, y: meet(moving.section, { ...standing, u0: -1e5, u1: 1e5 }).at.y },
        s: (s0 + s1) / 2,
      })
    }
  stopped.sort((a, b) => a.after - b.after || b.bite - a.bite)
  return { reached: stopped[0]?.after ?? wanted, wanted, stopped }
}
