/** A design as the text of a file: the same design gives the same text, whatever way it was made. */
import { notes } from '../quantity/notes.ts'
import { checkDesign, isAsRead } from './read.ts'
import type { Design } from './schema.ts'

/**
 * JSON with two spaces and a newline at the end. Fields stand in the order of the schema and overruled findings by
 * name. Throws for a design that is not valid: nothing that cannot be read again is written.
 * Example: `readDesign(designText(design))` gives an equal design.
 */
export const designText = (design: Design): string => `${JSON.stringify(inOrder(design), null, 2)}\n`

const known = notes<Design, Design>()

/** The design with its fields in the order of the schema; remembered. Throws for one that is not valid. */
export function inOrder(design: Design): Design {
  const before = known.get(design)
  if (before) return before
  const checked = valid(design)
  const overruled = Object.fromEntries(
    Object.entries(checked.overruled).sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)),
  )
  const ordered = { ...checked, overruled }
  known.set(design, ordered)
  known.set(ordered, ordered)
  return ordered
}

function valid(design: Design): Design {
  if (isAsRead(design)) return design
  const reading = checkDesign(design)
  if (!reading.ok) throw new Error(`the design is not valid: ${reading.faults[0]?.sentence}`)
  return reading.design
}
