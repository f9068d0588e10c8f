/**
 * Worst cases for lists and strips: reckoned when the hand has come to rest, a few dimensions at a time, so that neither a drag
 * nor a key ever waits for them. Until they are there nothing is shown in their place.
 */
import { useSyncExternalStore } from 'react'
import { type Layout, reckoningOf, solve, type WorstCase } from '../../geometry/index.ts'
import { dragging } from '../canvas/dragging.ts'
import { useBench } from '../state/index.ts'

export type WorstCases = ReadonlyMap<string, WorstCase>

/** The hand rests when nothing has changed for so long, in milliseconds. */
const AT_REST = 350
/** How long one stretch of reckoning may take, and how long the page then has for itself. */
const STRETCH = 8
const PAUSE = 4

const NONE: WorstCases = new Map()

let shown: { readonly layout: Layout | null; readonly cases: WorstCases } = { layout: null, cases: NONE }
let timer: ReturnType<typeof setTimeout> | undefined
const listeners = new Set<() => void>()

function later(wait: number): void {
  clearTimeout(timer)
  timer = setTimeout(work, wait)
}

function work(): void {
  timer = undefined
  if (listeners.size === 0) return
  if (dragging.isOn()) {
    later(AT_REST)
    return
  }
  const layout = solve(useBench.getState().design)
  if (shown.layout === layout) return
  const reckoning = reckoningOf(layout)
  const until = performance.now() + STRETCH
  while (reckoning.step())
    if (performance.now() > until) {
      later(PAUSE)
      return
    }
  shown = { layout, cases: reckoning.answer() }
  for (const listener of listeners) listener()
}

useBench.subscribe((now, before) => {
  if (now.design !== before.design && listeners.size > 0) later(AT_REST)
})

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  if (listeners.size === 1 || timer === undefined) later(AT_REST)
  return () => void listeners.delete(listener)
}

/** Worst cases of this very layout by the keys of its findings; empty while they are being reckoned. */
export function useWorstCases(layout: Layout): WorstCases {
  const now = useSyncExternalStore(subscribe, () => shown)
  return now.layout === layout ? now.cases : NONE
}
