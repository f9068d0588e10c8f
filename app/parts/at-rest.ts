/**
 * Work that waits until the hand has come to rest, and then goes on in short stretches with room for the page between them.
 */
import { dragging } from '../canvas/dragging.ts'

/** How long one stretch of work may take, and how long the page then has for itself, in milliseconds. */
export const STRETCH = 8
export const PAUSE = 4

export interface AtRest {
  /** Does the work so many milliseconds from now, or when nothing has changed for the usual time; asked again, it waits anew. */
  ask(wait?: number): void
  /** Whether the work is still to come. */
  readonly isAsked: boolean
}

/**
 * `rest` is how long nothing may have changed, in milliseconds. While something is dragged the work waits on.
 * Example: `const looking = whenAtRest(look, 250)`, then `looking.ask()` at every change.
 */
export function whenAtRest(work: () => void, rest: number): AtRest {
  let timer: ReturnType<typeof setTimeout> | undefined
  let due = 0
  function ring(): void {
    timer = undefined
    const left = due - performance.now()
    // Asked again since it was set: a timer for each frame of a drag would cost more than this look.
    if (left > 1) timer = setTimeout(ring, left)
    else if (dragging.isOn()) ask()
    else work()
  }
  function ask(wait = rest): void {
    const before = due
    due = performance.now() + wait
    if (timer !== undefined && due < before) {
      clearTimeout(timer)
      timer = undefined
    }
    timer ??= setTimeout(ring, wait)
  }
  return {
    ask,
    get isAsked() {
      return timer !== undefined
    },
  }
}
