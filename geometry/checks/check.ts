/** Runs every rule over a layout. */

import { notes } from '../quantity/notes.ts'
import { sorted } from '../quantity/sorted.ts'
import type { Layout } from '../solve/layout.ts'
import type { Finding, Grade, Measurement, Rule } from './finding.ts'
import { limitOf } from './finding.ts'
import { NEVER_OF_THINGS, RULES } from './rules.ts'
import { sayFor } from './say.ts'

const known = notes<Layout, readonly Finding[]>()

/**
 * Every finding of a layout, gravest first and tightest first within a grade. Remembered per layout.
 * `clear` findings are measures that hold; they carry their margin too.
 * Example: `check(solve(design)).filter((one) => one.grade === 'stop')`.
 */
export function check(layout: Layout): readonly Finding[] {
  const before = known.get(layout)
  if (before) return before
  const limit = limitOf(layout.design)
  // Hardly anybody overrules anything: then no name is looked up.
  const overruled = Object.keys(layout.design.overruled).length > 0 ? layout.design.overruled : null
  // Parted by grade before they are sorted: most are clear, and the few others need not be held against them.
  const parted: Record<Grade, Finding[]> = { stop: [], care: [], note: [], clear: [] }
  for (const rule of RULES)
    for (const one of rule.measure(layout, limit)) parted[one.grade].push(findingOf(rule, one, overruled))
  const found: Finding[] = []
  for (const grade of GRADES) for (const one of sorted(parted[grade], byTightness)) found.push(one)
  known.set(layout, found)
  return found
}

/**
 * What is found about some things, by their ids; rules that never speak of a thing are not asked. In no order, and not
 * remembered: for a frame in which a thing moves.
 * Example: `findingsAbout(layout, (id) => id === 'hole')`.
 */
export function findingsAbout(layout: Layout, isAbout: (id: string) => boolean): Finding[] {
  const limit = limitOf(layout.design)
  const found: Finding[] = []
  for (const rule of RULES) {
    if (NEVER_OF_THINGS.has(rule)) continue
    for (const one of rule.measure(layout, limit))
      if (one.about.some(isAbout)) found.push(findingOf(rule, one, layout.design.overruled))
  }
  return found.sort(byGravity)
}

/** What one rule finds, in the order in which it measures: where the others do not matter. Throws for a name in no list. */
export function findingsBy(name: string, layout: Layout): readonly Finding[] {
  const rule = ruleOf(name)
  return rule
    .measure(layout, limitOf(layout.design))
    .map((one) => findingOf(rule, one, layout.design.overruled))
}

function findingOf(rule: Rule, one: Measurement, overruled: Layout['design']['overruled'] | null): Finding {
  const { about, grade, measured, limit, where, data } = one
  const { name, unit } = rule
  const key = `${name} ${about.length === 1 ? about[0] : about.join(' ')}`
  const margin = marginOf(rule, measured, limit)
  // Written out twice: a second object for what some have would cost as much as the first.
  const finding: Finding =
    data === undefined
      ? { rule: name, key, about, grade, measured, limit, margin, unit, where }
      : { rule: name, key, about, grade, measured, limit, margin, unit, where, data }
  const reason = overruled?.[key]
  return reason === undefined ? finding : { ...finding, overruled: reason }
}

function marginOf(rule: Rule, measured: number | null, limit: number | null): number | null {
  if (measured === null || limit === null) return null
  return rule.wants === 'least' ? measured - limit : limit - measured
}

/** Gravest first. */
const GRADES: readonly Grade[] = ['stop', 'care', 'note', 'clear']

/** Gravest first; of one grade the tightest. */
const byGravity = (a: Finding, b: Finding): number =>
  GRADES.indexOf(a.grade) - GRADES.indexOf(b.grade) || byTightness(a, b)

/** The tightest first, and what has no margin last. */
function byTightness(a: Finding, b: Finding): number {
  if (a.margin === null) return b.margin === null ? byKey(a, b) : 1
  if (b.margin === null || a.margin < b.margin) return -1
  return a.margin > b.margin ? 1 : byKey(a, b)
}

/** A key begins with its rule, and rules are told apart without putting their keys together. */
const byKey = (a: Finding, b: Finding): number =>
  a.rule === b.rule ? (a.key < b.key ? -1 : a.key > b.key ? 1 : 0) : a.rule < b.rule ? -1 : 1

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
