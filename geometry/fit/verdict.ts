/** What the measures of one rule say for or against a row; verdicts of many rules are added up to that of the row. */
import type { Finding, Grade, Measurement, Rule } from '../checks/finding.ts'
import { isMargin, spareOf } from '../checks/tightness.ts'
import type { Design } from '../design/schema.ts'
import { bearingOf } from './judged.ts'

/** A measure as a rule found it, without its place on the drawing. */
export type Told = Pick<Finding, 'rule' | 'about' | 'measured' | 'limit' | 'margin' | 'grade' | 'unit'>

export interface Verdict {
  /** The rule says that it cannot be built. */
  readonly stop: boolean
  readonly cares: number
  readonly tightest: Told | null
  /** What could be moved and is in the way, more than in the design as it is. */
  readonly inTheWay: readonly Told[]
}

/** What the verdicts on a design hang on besides the measures. */
export interface Judge {
  /** Ids of the things that could be moved. */
  readonly things: ReadonlySet<string>
  /** What the design has against it already. */
  readonly wrong: ReadonlyMap<string, 'stop' | 'care'>
  readonly overruled: Design['overruled']
}

export const NOTHING: Verdict = { stop: false, cares: 0, tightest: null, inTheWay: [] }

/** The verdict of one rule. */
export function verdictOf(rule: Rule, measured: Iterable<Measurement>, judge: Judge): Verdict {
  let cares = 0
  let tightest: Told | null = null
  let inTheWay: Told[] | null = null
  for (const one of measured) {
    const thing = bearingOf(rule.name, one, judge.things) === 'thing'
    const wrong = one.grade === 'stop' || one.grade === 'care'
    if (thing && !wrong) continue
    if (wrong) {
      const key = `${rule.name} ${one.about.join(' ')}`
      if (judge.overruled[key] !== undefined) continue
      if (thing) {
        if (isWorse(one.grade, judge.wrong.get(key))) inTheWay = [...(inTheWay ?? []), toldOf(rule, one)]
        continue
      }
      if (one.grade === 'stop') return { stop: true, cares, tightest, inTheWay: inTheWay ?? [] }
      cares += 1
    }
    const told = toldOf(rule, one)
    if (isMargin(told) && isTighter(told, tightest)) tightest = told
  }
  if (cares === 0 && !tightest && !inTheWay) return NOTHING
  return { stop: false, cares, tightest, inTheWay: inTheWay ?? [] }
}

export const isTighter = (one: Told, other: Told | null): boolean =>
  other === null || spareOf(one) < spareOf(other)

const isWorse = (grade: Grade, before: 'stop' | 'care' | undefined): boolean =>
  grade === 'stop' ? before !== 'stop' : before === undefined

function toldOf(rule: Rule, { about, measured, limit, grade }: Measurement): Told {
  const margin =
    measured === null || limit === null ? null : rule.wants === 'least' ? measured - limit : limit - measured
  return { rule: rule.name, about, measured, limit, margin, grade, unit: rule.unit }
}
