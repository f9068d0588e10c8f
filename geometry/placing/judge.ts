/** How good an arrangement is: no stop, few cares, the tightest margin wide, wishes met. */
import { type Finding, limitOf, type Measurement, type Rule } from '../checks/finding.ts'
import { RULES } from '../checks/rules.ts'
import type { Layout } from '../solve/layout.ts'

/** The rules that a place decides on are what is aimed at; the rest judges what comes out. Two cost too much to aim at. */
const DEAR = new Set(['saddle-free-band', 'lid-clears'])
export const JUDGES: readonly Rule[] = RULES.filter(
  ({ name, mendedBy }) => mendedBy?.includes('place') && !DEAR.has(name) && name !== 'place-followed',
)

/** Those of them that measure on the face alone: enough to see which spots are worth a closer look. */
export const ON_FACE: readonly Rule[] = JUDGES.filter(
  ({ name }) =>
    !['parts-clear', 'screw-holds', 'screw-beside', 'opening-to-inside', 'web-left'].includes(name),
)

const JUDGING = new Set(JUDGES.map(({ name }) => name))

/** A pickup let into the neck keeps just the room that is cut for it, wherever it stands: no margin to widen. */
const isLetIn = (rule: string, margin: number): boolean => rule === 'parts-clear' && Math.abs(margin) <= 1e-9

/** Where a rule wants nothing but that two do not touch, so much room counts as all that is wanted; millimetres. */
const ROOM_ENOUGH = 6
/** Room beyond what is wanted counts up to this many times of it, so that a wide box does not pull everything apart. */
const MOST_SPARE = 1.5

export interface Judged {
  readonly stops: number
  readonly cares: number
  /** How far over its limit the tightest margin is, as a share of the limit; −1 and less is over the edge. */
  readonly tightest: number
  /** Mean of the same over all margins, so that what is not the tightest matters too. */
  readonly mean: number
}

/** What the rules of places say of those things. */
export function judged(layout: Layout, about: ReadonlySet<string>, rules: readonly Rule[] = JUDGES): Judged {
  const limit = limitOf(layout.design)
  let [stops, cares, tightest, sum, many] = [0, 0, MOST_SPARE, 0, 0]
  for (const rule of rules)
    for (const one of rule.measure(layout, limit)) {
      if (!one.about.some((id) => about.has(id))) continue
      if (one.grade === 'stop') stops += 1
      if (one.grade === 'care') cares += 1
      const spare = spareOf(rule, one)
      if (isLetIn(rule.name, spare)) continue
      tightest = Math.min(tightest, spare)
      sum += spare
      many += 1
    }
  return { stops, cares, tightest, mean: many === 0 ? MOST_SPARE : sum / many }
}

/** Room over the limit as a share of what is wanted. Example: 9 mm where 6 are wanted is 0.5. */
function spareOf({ wants }: Rule, { measured, limit }: Measurement): number {
  if (measured === null || limit === null) return MOST_SPARE
  const margin = wants === 'least' ? measured - limit : limit - measured
  return Math.min(MOST_SPARE, margin / (limit > 1 ? limit : ROOM_ENOUGH))
}

/** One number: more is better. Stops weigh more than all else together, then cares, then the tightest margin. */
export const worth = ({ stops, cares, tightest, mean }: Judged, wishes: number): number =>
  -1000 * stops - 30 * cares + 10 * tightest + 0.3 * mean + wishes

/** The margins that are tightest, of findings about those things. */
export const tightestOf = (
  findings: readonly Finding[],
  about: ReadonlySet<string>,
  many: number,
): readonly Finding[] =>
  findings
    .filter(
      ({ rule, about: ids, margin, unit }) =>
        JUDGING.has(rule) &&
        margin !== null &&
        !isLetIn(rule, margin) &&
        unit === 'mm' &&
        ids.some((id) => about.has(id)),
    )
    .sort((a, b) => (a.margin ?? 0) - (b.margin ?? 0))
    .slice(0, many)
