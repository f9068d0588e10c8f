/** Rows in words: why one cannot be built, and what was taken for granted about its strings. */
import { findingsBy, ruleOf, sentenceOf } from '../checks/check.ts'
import { chooseGauges } from '../loads/choose.ts'
import { pitchesOf } from '../loads/strung.ts'
import { formatLength } from '../quantity/index.ts'
import { solve } from '../solve/solve.ts'
import { gaugesFor } from '../strings/spacing.ts'
import type { Row } from './fit.ts'

/** Why a row cannot be built, one line; empty where it can. Example: `The blank is 3/4 in too short: …`. */
export function reasonOf({ impossible, design }: Row): string {
  if (impossible === null) return ''
  const layout = solve(design)
  const finding = findingsBy(impossible, layout).find((one) => one.grade === 'stop')
  return finding ? sentenceOf(finding, layout) : ruleOf(impossible).title
}

/** What forbids most, with a row of each: the rule's title and how many rows it forbids. */
export function reasonsOf(
  rows: readonly Row[],
): { readonly rule: string; readonly title: string; readonly count: number; readonly example: Row }[] {
  const found = new Map<string, { count: number; example: Row }>()
  for (const row of rows) {
    if (row.impossible === null) continue
    const before = found.get(row.impossible)
    if (before) before.count += 1
    else found.set(row.impossible, { count: 1, example: row })
  }
  return [...found]
    .map(([rule, { count, example }]) => ({ rule, title: ruleOf(rule).title, count, example }))
    .sort((a, b) => b.count - a.count || (a.rule < b.rule ? -1 : 1))
}

/** The strings of a row: pitches and gauges, bass first, and where they come from. */
export interface StringSet {
  /** `G2 D3 G3`; empty where no tuning is known. */
  readonly pitches: string
  /** As the trade writes them: `.026w .017 .012`. */
  readonly gauges: string
  readonly from: string
}

const FROM: Readonly<Record<Row['strung'], string>> = {
  'as stated': 'your own set',
  'gauges chosen': 'your tuning, gauges chosen for it',
  'tuning chosen': 'a usual tuning, gauges chosen for it',
  'not known': 'no usual tuning for so many strings',
}

/** What was taken for granted about the strings of a row. Example: `setOf(row).pitches` is `G2 D3 G3`. */
export function setOf({ design, strung }: Row): StringSet {
  const pitches = pitchesOf(design)?.map((one) => one.name) ?? []
  const chosen = strung === 'as stated' ? null : chooseGauges(design)
  const gauges = gaugesFor(design.strings.gauges, design.strings.count).map((gauge, index) => {
    const one = chosen?.strings[index]
    if (one && Math.abs(one.gauge - gauge) < 1e-3) return one.name
    return formatLength(
      gauge,
      { ...design.units, fraction: 0 },
      { decimals: design.units.display === 'mm' ? 2 : 3 },
    )
  })
  return {
    pitches: pitches.join(' '),
    gauges: strung === 'not known' ? '' : gauges.join(' '),
    from: FROM[strung],
  }
}
