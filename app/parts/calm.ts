/**
 * The design for lists and fields. While something is dragged they follow a few times a second only, so that
 * no frame waits for them; the drawing itself follows every frame.
 */
import { useSyncExternalStore } from 'react'
import { type Design, type Layout, solve } from '../../geometry/index.ts'
import { dragging } from '../canvas/dragging.ts'
import { useBench } from '../state/index.ts'

const CALM_MS = 150

let shown = useBench.getState().design
let timer = 0
const listeners = new Set<() => void>()

function follow(): void {
  window.clearTimeout(timer)
  timer = 0
  const { design } = useBench.getState()
  if (design === shown) return
  shown = design
  for (const listener of listeners) listener()
}

useBench.subscribe(() => {
  if (!dragging.isOn()) follow()
  else if (timer === 0) timer = window.setTimeout(follow, CALM_MS)
})

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

export const useDesign = (): Design => useSyncExternalStore(subscribe, () => shown)

export const useLayout = (): Layout => solve(useDesign())
