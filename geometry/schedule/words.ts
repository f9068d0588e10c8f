/** The schedule in words: one set for screen, sheet, command line and CSV, in the builder's own unit. */
import { formatFine, formatLength, type Units } from '../quantity/index.ts'
import type { ScheduleRow } from './schedule.ts'

/** Columns of a schedule as they are headed; lengths below are in the builder's unit. */
export interface ScheduleWords {
  readonly order: string
  readonly part: string
  readonly what: string
  readonly work: string
  /** `⌀ 2.4`, `38.0 × 22.0`. */
  readonly size: string
  /** The drill to take, and by how much it differs: `3/32 in`, `7/64 in, .015 over`. */
  readonly drill: string
  /** From the edge: `2 1/2`, `begins 17 11/16`, `45.0 head`. Which edge, `measuredFrom` says for a whole part. */
  readonly edge: string
  /** From the line: `3 bass`, `on it`. */
  readonly line: string
  readonly depth: string
}

/** Oversize that nobody could see: as good as the size wanted. Millimetres. */
const UNSEEN = 0.005

/**
 * A row in words. Lengths are rounded to the builder's rule, differences of drills are not: they go by hundredths of
 * a millimetre or thousandths of an inch.
 * Example: `scheduleWords(row, units).edge` is `172.8`, where `measuredFrom(row)` names the neck-end edge.
 */
export function scheduleWords(row: ScheduleRow, units: Units): ScheduleWords {
  const say = (mm: number) => formatLength(mm, units)
  return {
    order: String(row.order),
    part: row.partTitle,
    what: row.count > 1 ? `${row.of} (${row.count})` : row.of,
    work: row.work,
    size: sizeWords(row, units),
    drill: drillWords(row, units),
    edge: edgeWords(row, say),
    line: lineWords(row, say),
    depth: row.through ? `through ${say(row.depth)}` : say(row.depth),
  }
}

/**
 * Where the tape is hooked on the part of this row: alike for all rows of a part.
 * Example: `from the neck-end edge, and across from the centreline`.
 */
export const measuredFrom = ({ edge, line }: ScheduleRow): string =>
  `from the ${edge.from}, and across from the ${line.from}`

function edgeWords({ edge, at, work }: ScheduleRow, say: (mm: number) => string): string {
  if (work === 'saw slots') return 'fret table'
  if (at === 'near side' && edge.distance < UNSEEN) return 'at the edge'
  return `${at === 'near side' ? 'begins ' : ''}${say(edge.distance)}${edge.towards === 'head' ? ' head' : ''}`
}

function lineWords({ work, line }: ScheduleRow, say: (mm: number) => string): string {
  if (work === 'saw slots') return 'square to it'
  if (line.from !== 'centreline') return say(line.distance)
  return line.towards === '' ? 'on it' : `${say(line.distance)} ${line.towards}`
}

function sizeWords({ diameter, size, work }: ScheduleRow, units: Units): string {
  // Drills go by sixty-fourths, whatever the rule shows.
  const fine = { ...units, fraction: units.fraction === 0 ? 0 : 64 } as const
  if (diameter !== null) return `⌀ ${formatLength(diameter, fine)}`
  if (!size) return ''
  // A slot is finer than any rule.
  if (work === 'saw slots') return `${formatFine(size.along, units)} wide`
  return `${formatLength(size.along, units)} × ${formatLength(size.across, units)}`
}

function drillWords({ choice, diameter, work }: ScheduleRow, units: Units): string {
  if (work === 'countersink') return 'countersink'
  if (!choice) return diameter === null ? '' : 'none so large: saw to the line'
  const { drill, over } = choice
  const size = `${drill.size}${drill.series === 'metric' ? ' mm' : drill.series === 'fractional' ? ' in' : ''}`
  const tool = drill.tool === 'twist drill' ? size : `${size} ${drill.tool}`
  if (Math.abs(over) < UNSEEN) return tool
  return `${tool}, ${formatFine(Math.abs(over), units)} ${over > 0 ? 'over' : 'UNDER'}`
}
