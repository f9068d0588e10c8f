/** Which findings bear on what, and which of them are tightest. */
import { type Finding, isMargin, LIMITS, type LimitName, notes, spareOf } from '../../geometry/index.ts'

const indexed = notes<readonly Finding[], ReadonlyMap<string, readonly Finding[]>>()
const NONE: readonly Finding[] = []

/** Findings about a name, in their order. A list is gone through once, however many names are asked for. */
function findingsAbout(findings: readonly Finding[], name: string): readonly Finding[] {
  let index = indexed.get(findings)
  if (!index) {
    const made = new Map<string, Finding[]>()
    for (const finding of findings)
      for (const one of finding.about) {
        const before = made.get(one)
        if (before) before.push(finding)
        else made.set(one, [finding])
      }
    index = made
    indexed.set(findings, made)
  }
  return index.get(name) ?? NONE
}

/** The tightest finding about a thing or a piece of the instrument: the gravest, then the least margin. */
export function tightestAbout(findings: readonly Finding[], id: string): Finding | null {
  const about = findingsAbout(findings, id).filter((one) => one.overruled === undefined && isMargin(one))
  // `check` gives them gravest first, and what fails before what holds.
  const first = about[0]
  return first && first.grade === 'clear'
    ? ([...about].sort((a, b) => spareOf(a) - spareOf(b))[0] ?? null)
    : (first ?? null)
}

/** Findings about it that ask for something, those overruled left out. */
export const wrongAbout = (findings: readonly Finding[], id: string): readonly Finding[] =>
  findingsAbout(findings, id).filter((one) => one.grade !== 'clear' && one.overruled === undefined)

/**
 * The tightest margins of the whole instrument. Those that fail come first; among those that hold, margins are
 * compared as a share of their limit, or a degree would be weighed against a millimetre.
 */
export function tightest(findings: readonly Finding[], howMany: number): readonly Finding[] {
  const measured = findings.filter((one) => isMargin(one) && one.overruled === undefined)
  const wrong = measured.filter((one) => one.grade !== 'clear')
  const clear = measured.filter((one) => one.grade === 'clear').sort((a, b) => spareOf(a) - spareOf(b))
  // One rule does not fill the strip with one finding per string.
  const seen = new Set<string>()
  const varied = [...wrong, ...clear].filter((one) => {
    const key = `${one.rule} ${one.grade}`
    if (seen.has(key) && one.grade === 'clear') return false
    seen.add(key)
    return true
  })
  return varied.slice(0, howMany)
}

export const limitNames = Object.keys(LIMITS) as LimitName[]

/** How many findings block the work. */
export const stops = (findings: readonly Finding[]): number =>
  findings.filter((one) => one.grade === 'stop' && one.overruled === undefined).length
