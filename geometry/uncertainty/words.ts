/** What is said of a margin that hangs on how exactly something was measured. */
import type { Finding } from '../checks/finding.ts'
import { sayFor } from '../checks/say.ts'
import type { Layout } from '../solve/layout.ts'
import type { Part, WorstCase } from './reckoning.ts'

/** The dimension to take again, where the margin may change its sign; `null` where it stands either way. */
export const measureAgain = ({ doubtful, parts }: WorstCase): Part | null =>
  doubtful ? (parts[0] ?? null) : null

/**
 * `Measure this again: box, depth. It is good to 0.50 mm, and all that was measured together moves this by up to 1.00 mm.`
 * `null` where the margin keeps its sign.
 */
export function measureAgainWords(finding: Finding, worst: WorstCase, layout: Layout): string | null {
  const again = measureAgain(worst)
  if (!again) return null
  const say = sayFor(layout.design)
  const amount = (value: number): string => {
    switch (finding.unit) {
      case 'degrees':
        return say.angle(value)
      case 'share':
        return say.share(value)
      case 'newtons':
        return say.pull(value)
      default:
        return say.fine(value)
    }
  }
  const fails = (finding.margin ?? 0) >= 0 ? 'may not hold' : 'may hold after all'
  return `Measure this again: ${again.label}, good to ${say.fine(again.tolerance)}. With every tolerance against it this moves by ${amount(worst.tolerance)} and ${fails}.`
}
