/** Which rows come first: each care gives marks between 0 and 1, and how much each care counts is the builder's. */

import { spareOf } from '../checks/tightness.ts'
import type { Row } from './fit.ts'

export const CARES = ['margins', 'pull', 'stiffness', 'frets', 'short', 'balance', 'note'] as const
export type Care = (typeof CARES)[number]

/** How much each counts, from 0 for not at all. */
export type Weights = Readonly<Record<Care, number>>

export const USUAL_WEIGHTS: Weights = {
  margins: 3,
  pull: 1,
  stiffness: 1,
  frets: 1,
  short: 0,
  balance: 1,
  note: 0,
}

/** What a builder reads beside each weight. */
export const CARE_WORDS: Readonly<Record<Care, { readonly label: string; readonly help: string }>> = {
  margins: { label: 'Room to spare', help: 'The tightest margin is wide, and little asks for care.' },
  pull: { label: 'Pull as wanted', help: 'Each string pulls what the drawer is chosen for.' },
  stiffness: { label: 'A stiff neck', help: 'The strings bow it little.' },
  frets: { label: 'Frets off the body', help: 'Many frets lie before the box, where a hand reaches them.' },
  short: { label: 'Short overall', help: 'From head to tail.' },
  balance: { label: 'Balance at the body', help: 'It balances near the neck-end face.' },
  note: { label: 'The note of the air', help: 'Near the note that is wished for.' },
}

/** What the marks hang on besides the rows. */
export interface Wishes {
  /** Newtons for each string. */
  readonly pull: number
  /** Hertz; `null` for no wish. */
  readonly note: number | null
}

/** Marks of one care, 0 to 1; `null` where the row has no such number: then it counts as the worst. */
type Mark = (row: Row, wishes: Wishes) => number | null

/** A margin as a share of its limit, as far as that says anything: beyond it there is room enough either way. */
const clipped = (share: number) => Math.min(1, Math.max(-1, share))

/** Octaves: farther from the note wished for than this is no nearer than nothing. */
const FAR = 1

const MARKS: Readonly<Record<Care, Mark>> = {
  margins: ({ numbers }) =>
    numbers?.tightest ? (clipped(spareOf(numbers.tightest)) + 1) / 2 / (1 + numbers.cares) : null,
  // Twice too strong and half too weak are equally far off.
  pull: ({ numbers, count }, { pull }) =>
    numbers?.pull ? 1 - Math.min(1, Math.abs(Math.log2(numbers.pull / count / pull))) : null,
  stiffness: ({ numbers }) => (numbers?.bow == null ? null : 1 / (1 + Math.abs(numbers.bow) / USUAL_BOW)),
  frets: ({ numbers }) => (numbers ? Math.min(1, (numbers.fretAtBody.fret ?? 0) / FRETS_ENOUGH) : null),
  short: ({ numbers }) => (numbers ? 1 / (1 + numbers.overall / USUAL_OVERALL) : null),
  balance: ({ numbers }) => (numbers ? 1 / (1 + Math.abs(numbers.balance) / USUAL_BALANCE) : null),
  note: ({ numbers }, { note }) =>
    note !== null && numbers?.air
      ? 1 - Math.min(1, Math.abs(Math.log2(numbers.air.hertz / note)) / FAR)
      : null,
}

/** Half the marks at these, in millimetres; common practice, no source. */
const USUAL_BOW = 0.5
const USUAL_OVERALL = 900
const USUAL_BALANCE = 60
/** More frets than this before the body are no better. */
const FRETS_ENOUGH = 14

/** Marks of a row from 0 to 1, all cares together; a row that cannot be built has none. */
export function marksOf(row: Row, weights: Weights, wishes: Wishes): number | null {
  if (!row.numbers) return null
  let sum = 0
  let all = 0
  for (const care of CARES) {
    const weight = Math.max(0, weights[care])
    if (weight === 0 || (care === 'note' && wishes.note === null)) continue
    all += weight
    sum += weight * (MARKS[care](row, wishes) ?? 0)
  }
  return all === 0 ? 0 : sum / all
}

/**
 * Rows in the order of what is cared for: what can be built first, the best marks before the others; of equal ones the
 * order of the questions. Example: `ranked(fitting.rows, USUAL_WEIGHTS, { pull: 70, note: null })[0]`.
 */
export function ranked(rows: readonly Row[], weights: Weights, wishes: Wishes): Row[] {
  return rows
    .map((row) => ({ row, marks: marksOf(row, weights, wishes) ?? -1 }))
    .sort((a, b) => b.marks - a.marks || a.row.index - b.row.index)
    .map(({ row }) => row)
}

/**
 * The first row of each scale and count, in the same order: proposals that differ in more than a finger's breadth of the
 * saddle. Rows that cannot be built are left out.
 */
export function proposals(inOrder: readonly Row[]): Row[] {
  const seen = new Set<string>()
  return inOrder.filter(({ numbers, scale, count }) => {
    const key = `${scale} ${count}`
    if (!numbers || seen.has(key)) return false
    seen.add(key)
    return true
  })
}
