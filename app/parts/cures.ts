/**
 * Cures for the list of findings: looked for when the hand has come to rest, a lever at a time, so that neither a drag
 * nor a key ever waits for them. The finding that is lit comes first, then the gravest.
 */
import { useSyncExternalStore } from 'react'
import {
  type Cure,
  check,
  curing,
  type Finding,
  knownCures,
  type Layout,
  solve,
} from '../../geometry/index.ts'
import { useBench } from '../state/index.ts'
import { PAUSE, STRETCH, whenAtRest } from './at-rest.ts'

/** The hand rests when nothing has changed for so long, in milliseconds. */
const AT_REST = 250
/** Of so many things a trial costs too much to try what nobody has asked about: only the lit finding is looked into. */
const MANY_THINGS = 300

let told = 0
let search: {
  readonly layout: Layout
  readonly key: string
  readonly run: ReturnType<typeof curing>
} | null = null
const listeners = new Set<() => void>()

const looking = whenAtRest(work, AT_REST)

/** The next finding to look into; `null` where all are known. */
function nextOf(layout: Layout): Finding | null {
  const lit = useBench.getState().litFinding
  const open = check(layout).filter((one) => one.grade !== 'clear' && !knownCures(layout, one))
  const asked = open.find((one) => one.key === lit)
  return asked ?? (layout.placed.length > MANY_THINGS ? null : (open[0] ?? null))
}

function work(): void {
  if (listeners.size === 0) return
  const layout = solve(useBench.getState().design)
  const until = performance.now() + STRETCH
  while (performance.now() < until) {
    const next = nextOf(layout)
    if (!next) break
    if (search?.layout !== layout || search.key !== next.key)
      search = { layout, key: next.key, run: curing(layout, next) }
    if (search.run.next().done) search = null
  }
  told += 1
  for (const listener of listeners) listener()
  if (nextOf(layout)) looking.ask(PAUSE)
}

useBench.subscribe((now, before) => {
  if (listeners.size > 0 && (now.design !== before.design || now.litFinding !== before.litFinding))
    looking.ask(now.design === before.design ? 0 : AT_REST)
})

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  if (!looking.isAsked) looking.ask()
  return () => void listeners.delete(listener)
}

/** Makes the list follow what is found; the cures themselves are `knownCures`. */
export const useCures = (): ((layout: Layout, finding: Finding) => readonly Cure[] | undefined) => {
  useSyncExternalStore(subscribe, () => told)
  return knownCures
}
