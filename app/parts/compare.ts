/** What differs between two designs, in numbers: what the builder stated, where things stand, and what the rules measure. */
import {
  check,
  type Design,
  fieldsOf,
  fieldsOfKind,
  formatLength,
  formatMeasure,
  formatShare,
  placedCalled,
  ruleOf,
  sections,
  solve,
  type Units,
  valueAt,
} from '../../geometry/index.ts'
import { nameOf } from './say.ts'

export interface Row {
  /** Under which heading it is listed. */
  readonly under: string
  readonly what: string
  readonly before: string
  readonly after: string
  /** How much more, where both are lengths. */
  readonly more: string
}

/** A measure that differs by less than this is the same; millimetres. */
const SAME = 0.005

/** Every difference, in the order of the design and then of the rules. Lengths are in the unit of `after`. */
export function compare(before: Design, after: Design): Row[] {
  const units = after.units
  return [...statedRows(before, after, units), ...thingRows(before, after, units), ...ruleRows(before, after)]
}

/** One line of a table with a column for each of several designs. */
export interface Beside {
  readonly under: string
  readonly what: string
  readonly now: string
  /** As in the row of two designs; `null` where it is as it is now. */
  readonly others: readonly (string | null)[]
}

/** What differs between a design and each of several others, in its own unit: one line for everything that differs in any. */
export function compareMany(now: Design, others: readonly Design[]): Beside[] {
  const lines = new Map<string, { under: string; what: string; now: string; others: (string | null)[] }>()
  others.forEach((other, index) => {
    for (const { under, what, before, after } of compare(now, { ...other, units: now.units })) {
      const key = `${under} ${what}`
      const line = lines.get(key) ?? { under, what, now: before, others: others.map(() => null) }
      line.others[index] = after
      lines.set(key, line)
    }
  })
  const headings = [...new Set([...lines.values()].map((one) => one.under))]
  return headings.flatMap((under) => [...lines.values()].filter((one) => one.under === under))
}

const titled = (word: string) => word.charAt(0).toUpperCase() + word.slice(1)

function statedRows(before: Design, after: Design, units: Units): Row[] {
  return sections().flatMap((section) =>
    fieldsOf(section).flatMap((field) => {
      const path = [section, ...field.name.split('.')]
      const [a, b] = [valueAt(before, path), valueAt(after, path)]
      if (JSON.stringify(a) === JSON.stringify(b)) return []
      return [row(titled(section), field.label, a, b, field.unit, units)]
    }),
  )
}

function thingRows(before: Design, after: Design, units: Units): Row[] {
  const [old, now] = [solve(before), solve(after)]
  const gone = old.placed.filter((one) => !after.things.some((thing) => thing.id === one.thing.id))
  const rows = gone.map(({ thing }) => plain(nameOf(thing.id, old), 'the thing itself', 'there', 'gone'))
  for (const placed of now.placed) {
    const name = nameOf(placed.thing.id, now)
    const was = placedCalled(old, placed.thing.id)
    if (!was) {
      rows.push(plain(name, 'the thing itself', 'not there', 'there'))
      continue
    }
    for (const [what, a, b] of [
      ['stands along the face at', was.at.x, placed.at.x],
      ['stands across the face at', was.at.y, placed.at.y],
    ] as const)
      if (Math.abs(a - b) > SAME) rows.push(row(name, what, a, b, 'mm', units))
    for (const field of fieldsOfKind(placed.thing.kind)) {
      if (['along', 'across', 'id'].includes(field.name)) continue
      const [a, b] = [valueAt(was.thing, [field.name]), valueAt(placed.thing, [field.name])]
      if (JSON.stringify(a) !== JSON.stringify(b)) rows.push(row(name, field.label, a, b, field.unit, units))
    }
  }
  return rows
}

/** Margins that the rules measure in both. */
function ruleRows(before: Design, after: Design): Row[] {
  const [old, now] = [check(solve(before)), check(solve(after))]
  const layout = solve(after)
  return now.flatMap((finding) => {
    const was = old.find((one) => one.key === finding.key)
    if (!was || was.measured === null || finding.measured === null) return []
    const [a, b] = [was, finding].map((one) =>
      one.measured === null ? '' : formatMeasure(one.measured, one, after.units, { unit: true }),
    )
    if (a === undefined || b === undefined || a === b) return []
    const what = `${ruleOf(finding.rule).title}${finding.about.length > 0 ? `: ${finding.about.map((id) => nameOf(id, layout)).join(', ')}` : ''}`
    const grade = was.grade === finding.grade ? '' : ` (${was.grade} → ${finding.grade})`
    const by = finding.measured - was.measured
    const more = `${by > 0 ? '+' : ''}${formatMeasure(by, finding, after.units, { unit: true }).replace('-', '−')}`
    return [{ under: 'Measured by the rules', what, before: a, after: `${b}${grade}`, more }]
  })
}

/** Lists as their entries, or how many they hold; places as what they say. */
function sayMany(value: unknown): string {
  if (Array.isArray(value)) {
    if (value.every((one) => typeof one !== 'object')) return value.length === 0 ? 'none' : value.join(', ')
    return value.length === 1 ? '1 entry' : `${value.length} entries`
  }
  const { share, ...others } = value as Record<string, unknown>
  if (typeof share === 'number' && Object.keys(others).length === 0) return formatShare(share)
  return JSON.stringify(value)
}

const plain = (under: string, what: string, before: string, after: string): Row => ({
  under,
  what,
  before,
  after,
  more: '',
})

function row(under: string, what: string, a: unknown, b: unknown, unit: string, units: Units): Row {
  const both = typeof a === 'number' && typeof b === 'number'
  const say = (value: unknown): string => {
    if (value === undefined || value === null || value === '') return '–'
    if (typeof value === 'number')
      return unit === 'mm' ? formatLength(value, units, { unit: true }) : String(value)
    if (typeof value === 'boolean') return value ? 'yes' : 'no'
    return typeof value === 'string' ? value : sayMany(value)
  }
  const way = both && unit === 'mm' ? formatLength(b - a, units, { unit: true }).replace('-', '−') : ''
  return { under, what, before: say(a), after: say(b), more: both && way && b > a ? `+${way}` : way }
}
