/** An answer that hangs on a layout alone, worked out when first asked for. */
import type { Layout } from '../solve/layout.ts'

/** Wraps a function of a layout so that it works only once for each. Example: `remembered((layout) => sum(layout))`. */
export function remembered<T>(work: (layout: Layout) => T): (layout: Layout) => T {
  const known = new WeakMap<Layout, { readonly answer: T }>()
  return (layout) => {
    const before = known.get(layout)
    if (before) return before.answer
    const answer = work(layout)
    known.set(layout, { answer })
    return answer
  }
}
