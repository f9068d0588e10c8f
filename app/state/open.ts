/** Another design comes on the bench. It can be undone, but it is kept apart from the design that was there. */
import { type Design, type Fault, readDesign } from '../../geometry/index.ts'
import { useBench } from './bench.ts'
import { enter, type Outcome } from './commit.ts'

/**
 * Puts a design in place of the one on the bench, as one entry of history, with nothing selected.
 * Refused like any other change if it is not valid.
 */
export function openDesign(design: Design, label: string): Outcome {
  const replaced = { edits: [{ path: [], before: useBench.getState().design, after: design }] }
  const outcome = enter(label, replaced, { selecting: null, document: 'another' })
  if (outcome.ok) useBench.setState(({ opened }) => ({ litFinding: null, opened: opened + 1 }))
  return outcome
}

/** Opens the text of a file; `null` when it is open, or what is wrong with the file, and nothing changes. */
export function openText(text: string): readonly Fault[] | null {
  const reading = readDesign(text)
  if (!reading.ok) return reading.faults
  openDesign(reading.design, 'Open a file')
  return null
}

/** Begins with a new box; the page is fresh no longer. */
export const startFresh = (design: Design): Outcome => openDesign(design, 'New box')

/** Lays a version of the same design on the bench, as one entry of history. */
export function layVersion(design: Design, name: string): Outcome {
  const replaced = { edits: [{ path: [], before: useBench.getState().design, after: design }] }
  return enter(`Go back to “${name}”`, replaced, { selecting: null })
}
