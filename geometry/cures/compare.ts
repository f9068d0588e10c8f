/** What a change does to the findings: which are gone or better, and which are worse. */
import type { Finding, Grade } from '../checks/finding.ts'

export const GRAVITY: Readonly<Record<Grade, number>> = { clear: 0, note: 1, care: 2, stop: 3 }

/** A finding that is graver or tighter than before; `before` is `null` where it was not there at all. */
export interface Worsened {
  readonly finding: Finding
  readonly before: Finding | null
}

/** The gravest and tightest finding of every key: `check` tells them in this order. */
export function byKey(findings: readonly Finding[]): ReadonlyMap<string, Finding> {
  const found = new Map<string, Finding>()
  for (const finding of findings) if (!found.has(finding.key)) found.set(finding.key, finding)
  return found
}

/** Less than this is the computer's rounding and nobody's worry, in the unit of the finding. */
const UNNOTICED = 1e-6

/** Everything that is worse after a change than before it, the gravest first. What still holds with room to spare is not. */
export function worsenedBy(
  before: ReadonlyMap<string, Finding>,
  after: ReadonlyMap<string, Finding>,
): Worsened[] {
  const worse: Worsened[] = []
  for (const [key, finding] of after) {
    if (finding.grade === 'clear') continue
    const was = before.get(key) ?? null
    const graver = GRAVITY[finding.grade] - GRAVITY[was?.grade ?? 'clear']
    const tighter = (was?.margin ?? 0) - (finding.margin ?? 0) > UNNOTICED
    if (graver > 0 || (graver === 0 && tighter)) worse.push({ finding, before: was })
  }
  return worse
}
