/** Runs every rule over a layout. */

import type { Layout } from '../solve/layout.ts'
import type { Finding, Grade, Measurement, Rule } from './finding.ts'
import { limitOf } from './finding.ts'
import { RULES } from './rules.ts'
import { sayFor } from './say.ts'

const known = new WeakMap<Layout, readonly Finding[]>()

/**
 * Every finding of a layout, gravest first and tightest first within a grade. Remembered per layout.
 * `clear` findings are measures that hold; they carry their margin too.
 * Example: `check(solve(design)).filter((one) => one.grade === 'stop')`.
 */
export function check(layout: Layout): readonly Finding[] {
  const before = known.get(layout)
  if (before) return before
  const limit = limitOf(layout.design)
  const graded: Record<Grade, Finding[]> = { stop: [], care: [], note: [], clear: [] }
  for (const rule of RULES)
    for (const one of rule.measure(layout, limit)) graded[one.grade].push(findingOf(rule, one, layout))
  const sorted: Finding[] = []
  for (const grade of GRADES) for (const one of graded[grade].sort(byMargin)) sorted.push(one)
  known.set(layout, sorted)
  return sorted
}

/** What one rule finds, in the order in which it measures: where the others do not matter. Throws for a name in no list. */
export function findingsBy(name: string, layout: Layout): readonly Finding[] {
  const rule = ruleOf(name)
  return [...rule.measure(layout, limitOf(layout.design))].map((one) => findingOf(rule, one, layout))
}

type Writable<T> = { -readonly [key in keyof T]: T[key] }

function findingOf(rule: Rule, one: Measurement, layout: Layout): Finding {
  const key = `${rule.name} ${one.about.length === 1 ? one.about[0] : one.about.join(' ')}`
  const overruled = layout.design.overruled[key]
  const finding: Writable<Finding> = {
    rule: rule.name,
    key,
    about: one.about,
    grade: one.grade,
    measured: one.measured,
    limit: one.limit,
    margin: marginOf(rule, one.measured, one.limit),
    unit: rule.unit,
    where: one.where,
  }
  if (one.data !== undefined) finding.data = one.data
  if (overruled !== undefined) finding.overruled = overruled
  return finding
}

function marginOf(rule: Rule, measured: number | null, limit: number | null): number | null {
  if (measured === null || limit === null) return null
  return rule.wants === 'least' ? measured - limit : limit - measured
}

/** Gravest first. */
const GRADES: readonly Grade[] = ['stop', 'care', 'note', 'clear']

/** Tightest first; what has no margin last. */
function byMargin(a: Finding, b: Finding): number {
  const ours = a.margin ?? Number.MAX_VALUE
  const theirs = b.margin ?? Number.MAX_VALUE
  if (ours !== theirs) return ours - theirs
  return a.key < b.key ? -1 : a.key > b.key ? 1 : 0
}

const byName = new Map(RULES.map((rule) => [rule.name, rule]))

/** The rule a finding came from. Throws for a name that is in no list. */
export function ruleOf(name: string): Rule {
  const rule = byName.get(name)
  if (!rule) throw new Error(`there is no rule called "${name}"`)
  return rule
}

/** A finding as a sentence in the builder's unit. */
export const sentenceOf = (finding: Finding, layout: Layout): string =>
  ruleOf(finding.rule).words(finding, sayFor(layout.design), layout)

/** Does it block cutting: a `stop` that nobody overruled? */
export const blocks = (finding: Finding): boolean =>
  finding.grade === 'stop' && finding.overruled === undefined
