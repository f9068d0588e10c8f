/**
 * The design for lists and fields. While something is dragged they follow a few times a second only, so that
 * no frame waits for them, or not at all where that took long the last time; the drawing itself follows every frame.
 */
import { useSyncExternalStore } from 'react'
import { type Design, type Layout, solve } from '../../geometry/index.ts'
import { dragging } from '../canvas/dragging.ts'
import { useBench } from '../state/index.ts'

const CALM_MS = 150
/** Lists that took longer than this to follow, in milliseconds, wait until the hand is still: a frame is 16. */
const QUICK_MS = 5
/** The hand is still when it has moved nothing for so long, in milliseconds. */
const STILL_MS = 250

let shown = useBench.getState().design
let timer = 0
/** How long the lists took the last time. */
let took = 0
/** When the design became another the last time. */
let changed = 0
const listeners = new Set<() => void>()

function follow(): void {
  window.clearTimeout(timer)
  timer = 0
  const { design } = useBench.getState()
  if (design === shown) return
  shown = design
  const start = performance.now()
  for (const listener of listeners) listener()
  // React makes the lists anew in a task of its own that stands before this one.
  queueMicrotask(() => {
    took = performance.now() - start
  })
}

useBench.subscribe(() => {
  changed = performance.now()
  if (!dragging.isOn()) follow()
  else if (timer === 0) timer = window.setTimeout(whenIdle, CALM_MS)
})

/** Follows where the frame has the time for it, or no frame is waited for; else it is tried again. */
function whenIdle(): void {
  const still = () => performance.now() - changed >= STILL_MS
  const again = () => {
    timer = window.setTimeout(whenIdle, CALM_MS)
  }
  if (still()) follow()
  else if (took > QUICK_MS) again()
  else if ('requestIdleCallback' in window)
    window.requestIdleCallback((deadline) => {
      if (deadline.timeRemaining() > took) follow()
      else again()
    })
  else follow()
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

export const useDesign = (): Design => useSyncExternalStore(subscribe, () => shown)

export const useLayout = (): Layout => solve(useDesign())
