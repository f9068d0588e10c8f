/** An answer that hangs on a layout alone, worked out when first asked for. */
import { notes } from '../quantity/notes.ts'
import type { Layout } from '../solve/layout.ts'

/** Wraps a function of a layout so that it works only once for each. Example: `remembered((layout) => sum(layout))`. */
export function remembered<T>(work: (layout: Layout) => T): (layout: Layout) => T {
  const place = places++
  return (layout) => {
    const known = answersOf(layout)
    const before = known[place]
    if (before !== undefined) return before.answer as T
    const answer = work(layout)
    known[place] = { answer }
    return answer
  }
}

/** How many functions remember. */
let places = 0

type Answers = ({ readonly answer: unknown } | undefined)[]

/** One list for a layout, with a place for each function: a map for every function costs the collector more. */
const answers = notes<Layout, Answers>()

function answersOf(layout: Layout): Answers {
  const known = answers.get(layout)
  if (known) return known
  const made: Answers = new Array(places).fill(undefined)
  answers.set(layout, made)
  return made
}
