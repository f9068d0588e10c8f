/** Valid designs for tests, made from the few fields that a test is about. */
import { apply, change, checkDesign, type Design, type Path } from '../../geometry/index.ts'

/** A part of a design as a file may hold it: whatever is left out takes its default. */
export type Stated = { readonly [field: string]: unknown }

/**
 * A complete design with these fields set, right-handed unless said otherwise. Throws with every fault if it is
 * not a legal one, so that a test can never run on something else than it thinks.
 * Example: `designOf({ neck: { thickness: 25 } })`.
 */
export function designOf(stated: Stated = {}): Design {
  const reading = checkDesign({ format: 'lidwright', version: 1, hand: 'right', ...stated })
  if (reading.ok) return reading.design
  throw new Error(reading.faults.map(({ path, sentence }) => `${path}: ${sentence}`).join('\n'))
}

/** The design with one more field set, still legal. Example: `withField(design, ['box', 'length'], 250)`. */
export function withField(design: Design, path: Path, value: unknown): Design {
  return designOf(apply(design, change(design, [path, value])))
}

/** A design as it comes back from a file. */
export const fromFile = (design: Design): Design => designOf(JSON.parse(JSON.stringify(design)))
