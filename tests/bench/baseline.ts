/** Figures kept by hand, to see later what became better and what worse. */
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Row } from './row.ts'

const FILE = join(import.meta.dirname, 'baseline.json')

interface Baseline {
  /** Where the figures were taken: those of another machine tell little. */
  readonly machine: string
  readonly rows: Readonly<Record<string, Pick<Row, 'median' | 'low' | 'high'>>>
}

export function keepBaseline(machine: string, rows: readonly Row[]): void {
  const kept: Baseline = {
    machine,
    rows: Object.fromEntries(rows.map(({ name, median, low, high }) => [name, { median, low, high }])),
  }
  const short = (_: string, value: unknown) =>
    typeof value === 'number' ? Number(value.toPrecision(4)) : value
  writeFileSync(FILE, `${JSON.stringify(kept, short, 2)}\n`)
}

/**
 * Each row against the baseline. It counts as another only where the middle halves do not touch and the medians are more
 * than a tenth apart: less is the machine's mood.
 */
export function compared(machine: string, rows: readonly Row[]): string[] {
  const kept = JSON.parse(readFileSync(FILE, 'utf8')) as Baseline
  const lines = kept.machine === machine ? [] : [`The baseline is from another machine: ${kept.machine}`]
  for (const { name, median, low, high } of rows) {
    const before = kept.rows[name]
    if (!before) {
      lines.push(`new        ${name}`)
      continue
    }
    const apart = low > before.high || high < before.low
    const share = median / before.median
    const other = apart && Math.abs(share - 1) > 0.1
    const word = other ? (share > 1 ? 'WORSE' : 'better') : 'as before'
    lines.push(`${word.padEnd(10)} ${name}: ${before.median} → ${Number(median.toPrecision(4))}`)
  }
  const names = new Set(rows.map(({ name }) => name))
  for (const name of Object.keys(kept.rows)) if (!names.has(name)) lines.push(`gone       ${name}`)
  return lines
}
