/**
 * The rows of the design on the bench, reckoned a few at a time when the hand rests, so that the page never waits for
 * them. What is only tried on the drawing is not asked about; a change to the design begins them anew.
 */
import { useSyncExternalStore } from 'react'
import { type Fitting, fittingOf, type Row } from '../../geometry/index.ts'
import { PAUSE, STRETCH, whenAtRest } from '../parts/at-rest.ts'
import { committed, useBench } from '../state/index.ts'
import { questionsOf, useAsked } from './asked.ts'

/** The hand rests when nothing has changed for so long, in milliseconds. */
const AT_REST = 250
/** How far it is is told so often, in milliseconds. */
const TOLD_EVERY = 300

export interface Reckoned {
  readonly rows: readonly Row[]
  readonly done: number
  readonly total: number
}

const NO_ROWS: readonly Row[] = []
const NOTHING: Reckoned = { rows: NO_ROWS, done: 0, total: 0 }

let fitting: Fitting | null = null
let shown: Reckoned = NOTHING
let told = 0
const listeners = new Set<() => void>()

const reckoning = whenAtRest(work, AT_REST)

function tell(): void {
  told = performance.now()
  if (!fitting) shown = NOTHING
  else {
    const { done, total, rows } = fitting
    // Rows are shown when all are there: a list that sorts itself anew under the hand is no help.
    shown = { rows: done < total ? NO_ROWS : rows, done, total }
  }
  for (const listener of listeners) listener()
}

function work(): void {
  if (listeners.size === 0) return
  const design = committed()
  fitting ??= fittingOf(design, questionsOf(design, useAsked.getState()))
  const until = performance.now() + STRETCH
  while (fitting.step())
    if (performance.now() > until) {
      if (performance.now() - told > TOLD_EVERY) tell()
      reckoning.ask(PAUSE)
      return
    }
  tell()
}

/** What was reckoned is of another design or other questions: begin anew when the hand rests. */
function stale(): void {
  fitting = null
  // A row of another design, tried on this one, would bring back what has just been changed.
  tell()
  if (listeners.size > 0) reckoning.ask()
}

useBench.subscribe(() => {
  if (fitting && fitting.design !== committed()) stale()
})

useAsked.subscribe((now, before) => {
  if (
    now.scales !== before.scales ||
    now.counts !== before.counts ||
    now.from !== before.from ||
    now.to !== before.to ||
    now.places !== before.places ||
    now.strings !== before.strings
  )
    stale()
})

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  if (!reckoning.isAsked && (!fitting || fitting.done < fitting.total)) reckoning.ask(0)
  return () => void listeners.delete(listener)
}

export const useReckoned = (): Reckoned => useSyncExternalStore(subscribe, () => shown)
