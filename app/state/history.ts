/** What was done and can be taken back: two stacks of changes, as values. Bounded only by memory. */
import { type Change, invert } from '../../geometry/index.ts'

export interface Entry {
  /** What the builder did, as the undo button says it: `Move the sound hole`. */
  readonly label: string
  /** Leads from the design before to the design after; only what differs is held. */
  readonly change: Change
  readonly selectionBefore: string | null
  readonly selectionAfter: string | null
}

interface Stack {
  readonly entry: Entry
  readonly below: Stack | null
}

export interface History {
  readonly past: Stack | null
  readonly future: Stack | null
}

/** One step through history: the change to apply, what to select, and the history afterwards. */
export interface Step {
  readonly change: Change
  readonly selection: string | null
  readonly history: History
}

export const NOTHING_DONE: History = { past: null, future: null }

/** History with one more entry; what could be done again is forgotten. */
export const record = (history: History, entry: Entry): History => ({
  past: { entry, below: history.past },
  future: null,
})

/** The step back, or `null` where nothing was done. */
export function back({ past, future }: History): Step | null {
  if (!past) return null
  const { entry, below } = past
  return {
    change: invert(entry.change),
    selection: entry.selectionBefore,
    history: { past: below, future: { entry, below: future } },
  }
}

/** The step forward again, or `null` where nothing was taken back. */
export function forward({ past, future }: History): Step | null {
  if (!future) return null
  const { entry, below } = future
  return {
    change: entry.change,
    selection: entry.selectionAfter,
    history: { past: { entry, below: past }, future: below },
  }
}
