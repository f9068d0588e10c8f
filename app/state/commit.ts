/** The only way the design changes: a change is settled, shown, and entered in history. */
import { apply, type Change, type Design } from '../../geometry/index.ts'
import { type Bench, stillThere, useBench } from './bench.ts'
import { freeze } from './freeze.ts'
import { back, forward, type History, NOTHING_DONE, record, type Step } from './history.ts'
import { settle } from './settle.ts'

export type Outcome = { readonly ok: true } | { readonly ok: false; readonly sentence: string }

/** A drag or a held key: many previews, one entry of history. After its end all three do nothing. */
export interface Gesture {
  /** The design when the gesture began; every preview is a change of this one. */
  readonly start: Design
  /** Shows the start with this change. A change to something invalid is passed over: the last good one stays. */
  preview(change: Change): void
  /** Enters what is shown in history, if it differs from the start. */
  finish(): void
  /** Back to the start, without a trace. */
  cancel(): void
}

interface Running extends Gesture {
  readonly label: string
  /** How it ends when anything else is done. */
  readonly otherwise: 'finish' | 'cancel'
  readonly selection: string | null
  shown: Change
}

/** Told of every committed design. `another`: a new document began, which must not take the old one's place. */
export type Listener = (design: Design, document: 'the same' | 'another') => void

const NO_CHANGE: Change = { edits: [] }
let history: History = NOTHING_DONE
let running: Running | null = null
const listeners = new Set<Listener>()

/**
 * Applies a change as one entry of history. Refused, with a sentence and without a trace, if the result is not a valid
 * design; a change that changes nothing makes no entry.
 * Example: `commit('Longer box', change(design, [['box', 'length'], 250]))`.
 */
export const commit = (label: string, change: Change): Outcome => enter(label, change)

interface Manner {
  /** What is selected afterwards; the selection stays where this is left out. */
  readonly selecting?: string | null
  readonly document?: 'the same' | 'another'
}

/** `commit`, for actions that select something too or begin another document. */
export function enter(
  label: string,
  change: Change,
  { selecting, document = 'the same' }: Manner = {},
): Outcome {
  running?.[running.otherwise]()
  const before = useBench.getState()
  const settled = settle(before.design, change)
  if (!settled.ok) return settled
  const { design } = settled
  const changed = design !== before.design
  const selection = selecting === undefined ? stillThere(before.selection, before.design, design) : selecting
  if (changed) {
    history = record(history, {
      label,
      change: settled.change,
      selectionBefore: before.selection,
      selectionAfter: selection,
    })
  }
  // A first design may well be the default one; it is kept like any other.
  const begun = before.fresh && document === 'another'
  show({ design, selection, ...(changed || begun ? { fresh: false } : {}) })
  if (changed || begun) tell(design, document)
  return { ok: true }
}

/**
 * Begins a gesture. One that is still running is finished first; `undo` while it runs cancels it. One that is
 * `otherwise` to `cancel` is only looked at: whatever else is done drops it, and only its own `finish` keeps it.
 * Example: `const drag = beginGesture('Move'); drag.preview(change(drag.start, [path, 40])); drag.finish()`.
 */
export function beginGesture(label: string, otherwise: Running['otherwise'] = 'finish'): Gesture {
  running?.[running.otherwise]()
  const { design: start, selection } = useBench.getState()
  const gesture: Running = {
    label,
    otherwise,
    start,
    selection,
    shown: NO_CHANGE,
    preview(change) {
      if (running !== gesture) return
      const settled = settle(start, change, { checking: 'what changed' })
      if (!settled.ok) return
      gesture.shown = settled.change
      show({ design: settled.design })
    },
    finish() {
      if (running !== gesture) return
      const { design, selection: now } = useBench.getState()
      // Frames were checked in part; what is entered is checked whole.
      if (design !== start && !settle(start, gesture.shown).ok) return gesture.cancel()
      running = null
      if (design === start) return show({})
      const after = stillThere(now, start, design)
      history = record(history, {
        label,
        change: gesture.shown,
        selectionBefore: selection,
        selectionAfter: after,
      })
      show({ selection: after, fresh: false })
      tell(design, 'the same')
    },
    cancel() {
      if (running !== gesture) return
      running = null
      show({ design: start, selection })
    },
  }
  running = gesture
  show({})
  return gesture
}

/** Ends the gesture that is running, if one is, and says what then lies on the bench. */
export function settledBench(): Design {
  running?.[running.otherwise]()
  return useBench.getState().design
}

/** Takes the last entry back, with the selection it had; a running gesture is cancelled instead. `false`: nothing to undo. */
export function undo(): boolean {
  if (running) {
    running.cancel()
    return true
  }
  return take(back(history))
}

/** Does again what was last undone. `false`: nothing to redo, or a gesture is running. */
export const redo = (): boolean => !running && take(forward(history))

function take(step: Step | null): boolean {
  if (!step) return false
  const design = freeze(apply(useBench.getState().design, step.change))
  history = step.history
  show({ design, selection: step.selection })
  tell(design, 'the same')
  return true
}

/** What was done and what was taken back, by their labels: the newest first, and the next to be done again last. */
export function historyNow(): { readonly done: readonly string[]; readonly undone: readonly string[] } {
  const labels = (stack: History['past']): string[] => {
    const all: string[] = []
    for (let here = stack; here; here = here.below) all.push(here.entry.label)
    return all
  }
  return { done: labels(history.past), undone: labels(history.future).reverse() }
}

/**
 * Goes so many steps through history at once: back for less than nothing, forward again for more, as far as there
 * are any. The page sees only where it ends. `false` where there was no step to take.
 */
export function travel(steps: number): boolean {
  if (running) running.cancel()
  let { design, selection } = useBench.getState()
  let taken = 0
  for (; taken < Math.abs(steps); taken++) {
    const step = steps < 0 ? back(history) : forward(history)
    if (!step) break
    design = apply(design, step.change)
    selection = step.selection
    history = step.history
  }
  if (taken === 0) return false
  design = freeze(design)
  show({ design, selection })
  tell(design, 'the same')
  return true
}

/** The design without what a running gesture only previews: this is what is kept. */
export const committed = (): Design => running?.start ?? useBench.getState().design

/** Hears of every committed design from now on; the answer ends it. */
export function onCommit(listener: Listener): () => void {
  listeners.add(listener)
  return () => void listeners.delete(listener)
}

/** Lays a design that was kept before on the bench: nothing selected, nothing to undo, nobody told. */
export function adopt(design: Design, { fresh = false }: { readonly fresh?: boolean } = {}): void {
  running = null
  history = NOTHING_DONE
  show({ design: freeze(design), selection: null, litFinding: null, fresh })
}

function tell(design: Design, document: 'the same' | 'another'): void {
  for (const listener of listeners) listener(design, document)
}

function show(part: Partial<Bench>): void {
  const done = running ? running.label : (history.past?.entry.label ?? null)
  const undone = running ? null : (history.future?.entry.label ?? null)
  const { selection, also } = useBench.getState()
  // Several are selected together only as long as the leading one is.
  const alone = part.selection !== undefined && part.selection !== selection && also.length > 0
  useBench.setState({
    ...part,
    ...(alone ? { also: [] } : {}),
    canUndo: done !== null,
    canRedo: undone !== null,
    undoLabel: done,
    redoLabel: undone,
  })
}
