/** Texts of design files, right and wrong, and what must hold of every fault told. */
import { expect } from 'vitest'
import { type Fault, readDesign } from '../../../geometry/index.ts'
import type { Stated } from '../../support/designs.ts'

/** The text of a file with these fields. */
export const file = (stated: Stated) => JSON.stringify({ format: 'lidwright', version: 1, ...stated })
export const withHole = (fields: Stated) => file({ things: [{ kind: 'sound-hole', id: 'hole', ...fields }] })
export const withFrets = (frets: unknown) => file({ scale: { frets } })

/** What is wrong with a file; nothing where it can be read. */
export function faultsOf(text: string): readonly Fault[] {
  const reading = readDesign(text)
  return reading.ok ? [] : reading.faults
}

/** What every fault must be: a sentence that can be shown to anybody, and a path that leads there. */
export function proveFaults(faults: readonly Fault[]) {
  expect(faults.length).toBeGreaterThan(0)
  for (const { path, sentence } of faults) {
    expect(sentence).toMatch(/^\p{Lu}.*[.?]$/u)
    expect(sentence).not.toMatch(/undefined|NaN|\[object|\p{Cc}|\p{Cf}/u)
    expect(sentence.length).toBeLessThan(400)
    expect(path).not.toMatch(/\p{Cc}|\p{Cf}|\.\.|^\.|\.$/u)
  }
}
