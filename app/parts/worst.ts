/**
 * Worst cases for lists and strips: reckoned when the hand has come to rest, a few dimensions at a time, so that neither a drag
 * nor a key ever waits for them. Until they are there nothing is shown in their place.
 */
import { useSyncExternalStore } from 'react'
import { type Layout, reckoningOf, solve, type WorstCase } from '../../geometry/index.ts'
import { useBench } from '../state/index.ts'
import { PAUSE, STRETCH, whenAtRest } from './at-rest.ts'

export type WorstCases = ReadonlyMap<string, WorstCase>

/** The hand rests when nothing has changed for so long, in milliseconds. */
const AT_REST = 350

const NONE: WorstCases = new Map()

let shown: { readonly layout: Layout | null; readonly cases: WorstCases } = { layout: null, cases: NONE }
const listeners = new Set<() => void>()

const reckoning = whenAtRest(work, AT_REST)

function work(): void {
  if (listeners.size === 0) return
  const layout = solve(useBench.getState().design)
  if (shown.layout === layout) return
  const steps = reckoningOf(layout)
  const until = performance.now() + STRETCH
  while (steps.step())
    if (performance.now() > until) {
      reckoning.ask(PAUSE)
      return
    }
  shown = { layout, cases: steps.answer() }
  for (const listener of listeners) listener()
}

useBench.subscribe((now, before) => {
  if (now.design !== before.design && listeners.size > 0) reckoning.ask()
})

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  if (listeners.size === 1 || !reckoning.isAsked) reckoning.ask()
  return () => void listeners.delete(listener)
}

/** Worst cases of this very layout by the keys of its findings; empty while they are being reckoned. */
export function useWorstCases(layout: Layout): WorstCases {
  const now = useSyncExternalStore(subscribe, () => shown)
  return now.layout === layout ? now.cases : NONE
}
