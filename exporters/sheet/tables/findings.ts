/** What was decided against a finding, and what is still open. */
import { ruleOf } from '../../../geometry/index.ts'
import type { Table } from '../model.ts'
import { capital, type Source } from '../source.ts'

const columns: Table['columns'] = [
  { key: 'grade', title: 'Grade', as: 'words' },
  { key: 'rule', title: 'What', as: 'words' },
  { key: 'sentence', title: 'Found', as: 'words' },
]

/** Findings overruled, each with the builder's reason; `null` where there are none. */
export function overruledTable({ report }: Source): Table | null {
  const overruled = report.findings.filter((one) => one.overruled !== null && one.grade !== 'clear')
  if (overruled.length === 0) return null
  return {
    id: 'overruled',
    title: 'Findings overruled, and why',
    columns: [...columns, { key: 'reason', title: 'Why', as: 'words' }],
    rows: overruled.map((one) => [capital(one.grade), ruleOf(one.rule).title, one.sentence, one.overruled]),
  }
}

/** Stops and cares that nobody overruled; `null` where there are none. */
export function openTable({ report }: Source): Table | null {
  const open = report.findings.filter(
    (one) => one.overruled === null && (one.grade === 'stop' || one.grade === 'care'),
  )
  if (open.length === 0) return null
  return {
    id: 'open',
    title: 'Findings still open',
    columns,
    rows: open.map((one) => [capital(one.grade), ruleOf(one.rule).title, one.sentence]),
  }
}
