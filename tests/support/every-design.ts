/** Runs laws over random designs, always the same ones, so that what is solved once serves every law of a file. */
import fc from 'fast-check'
import type { Design } from '../../geometry/index.ts'
import { arbitraryDesign } from './arbitraries.ts'

/** Any number does; this one is a scale length. */
const SEED = 635
const HOW_MANY = 600

/** Room for a machine that does other things as well, in milliseconds. */
export const PATIENCE = 60_000

let drawn: readonly Design[] | undefined

/** The designs that every law is tried on. */
export function manyDesigns(): readonly Design[] {
  drawn ??= fc.sample(arbitraryDesign, { seed: SEED, numRuns: HOW_MANY })
  return drawn
}

/**
 * Asks `wrong` of every design what is wrong with it, or of every so-manyth. Any answer, and anything thrown, breaks
 * the law: then the smallest design that breaks it is shown.
 */
export function forEveryDesign(wrong: (design: Design) => readonly string[], every = 1): void {
  forDesigns(
    manyDesigns().filter((_, index) => index % every === 0),
    wrong,
  )
}

/** The same of designs that were chosen among them. */
export function forDesigns(designs: readonly Design[], wrong: (design: Design) => readonly string[]): void {
  const broken: { readonly text: string; readonly why: string }[] = []
  for (const design of designs) {
    const why = attempted(wrong, design)
    if (why !== '') broken.push({ text: JSON.stringify(design), why })
  }
  const [least] = broken.sort((a, b) => a.text.length - b.text.length)
  if (least) throw new Error(`${broken.length} designs break this law:\n${least.why}\n${least.text}`)
}

function attempted(wrong: (design: Design) => readonly string[], design: Design): string {
  try {
    return wrong(design).slice(0, 5).join('\n')
  } catch (error) {
    return error instanceof Error ? (error.stack ?? error.message) : String(error)
  }
}
