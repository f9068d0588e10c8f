/**
 * The worst case of every margin: `sum |d margin / d dimension| · tolerance`, first order, by differences through `solve` and
 * `check` (the law of propagation with limits in place of deviations; JCGM 100:2008, 5.1 and F.2.4, from memory). It is exact for
 * margins that hang on their dimensions in straight lines; where two dimensions bend each other's effect it leaves that out.
 *
 * Reckoned only when asked for, remembered per layout, and in small steps: a screen does a few at a time.
 */

import { check } from '../checks/check.ts'
import type { Finding } from '../checks/finding.ts'
import type { Design, Thing } from '../design/schema.ts'
import { notes } from '../quantity/notes.ts'
import type { Layout } from '../solve/layout.ts'
import { solve } from '../solve/solve.ts'
import { type Dimension, dimensionsOf } from './dimensions.ts'

/** What one dimension does to a margin when it is off by its tolerance. */
export interface Part {
  readonly path: string
  readonly label: string
  /** Millimetres. */
  readonly tolerance: number
  /** In the unit of the finding, never negative. */
  readonly effect: number
}

export interface WorstCase {
  /** By how much the margin may be off, in the unit of the finding. */
  readonly tolerance: number
  /** Margin less tolerance. */
  readonly worst: number
  /** May the margin change its sign: does the measure hold, or does it only seem to? */
  readonly doubtful: boolean
  /** The dimensions it hangs on, the weightiest first; three at most. */
  readonly parts: readonly Part[]
}

export interface Reckoning {
  readonly layout: Layout
  /** How many dimensions there are, and how many are done. */
  readonly total: number
  readonly done: number
  /** Layouts solved so far, the layout itself not counted. */
  readonly solved: number
  /** One more dimension; `false` when there is none left. */
  step(): boolean
  /** By the keys of findings; of what is done so far. Findings without a margin and counts have none. */
  answer(): ReadonlyMap<string, WorstCase>
}

/** No more dimensions than these are gone through, nor so many that dimensions times things pass the second number. */
const MOST_DIMENSIONS = 400
const FEWEST_DIMENSIONS = 120
const MOST_WORK = 20_000

/** What exact arithmetic would call nothing. */
const NOTHING = 1e-9

const MOST_PARTS = 3

const known = notes<Layout, Reckoning>()

/** The reckoning of a layout, begun or done; the same object whenever it is asked for. */
export function reckoningOf(layout: Layout): Reckoning {
  const before = known.get(layout)
  if (before) return before
  const begun = begin(layout)
  known.set(layout, begun)
  return begun
}

/**
 * Every margin's worst case, by the key of its finding. Example: `worstCasesOf(layout).get('room-under-neck neck')?.worst`.
 */
export function worstCasesOf(layout: Layout): ReadonlyMap<string, WorstCase> {
  const reckoning = reckoningOf(layout)
  while (reckoning.step()) {
    // Each step is one dimension.
  }
  return reckoning.answer()
}

/** Margins by key; several findings of one key (a hole with several openings) count by the tightest. */
function marginsOf(layout: Layout): Map<string, number> {
  const margins = new Map<string, number>()
  for (const { key, margin, unit } of check(layout)) {
    if (margin === null || unit === 'count') continue
    const before = margins.get(key)
    if (before === undefined || margin < before) margins.set(key, margin)
  }
  return margins
}

function begin(layout: Layout): Reckoning {
  const { design } = layout
  const base = marginsOf(layout)
  const most = Math.max(
    FEWEST_DIMENSIONS,
    Math.min(MOST_DIMENSIONS, Math.floor(MOST_WORK / (design.things.length + 1))),
  )
  const dimensions = dimensionsOf(design, tightestThings(layout, most)).slice(0, most)
  const parts = new Map<string, Part[]>()
  let done = 0
  let solved = 0
  let answer: ReadonlyMap<string, WorstCase> | null = null
  const marginsWith = (changed: Design) => {
    solved += 1
    return marginsOf(solve(changed))
  }
  const take = (dimension: Dimension) => {
    const { path, label, tolerance } = dimension
    const longer = marginsWith(dimension.changed(tolerance))
    const shorter = marginsWith(dimension.changed(-tolerance))
    for (const [key, margin] of base) {
      // What is no longer found has no margin to compare; the grade of what is left tells its own story.
      const effect = Math.max(
        Math.abs((longer.get(key) ?? margin) - margin),
        Math.abs((shorter.get(key) ?? margin) - margin),
      )
      if (effect <= NOTHING) continue
      const list = parts.get(key)
      const part: Part = { path, label, tolerance, effect }
      if (list) list.push(part)
      else parts.set(key, [part])
    }
  }
  return {
    layout,
    total: dimensions.length,
    get done() {
      return done
    },
    get solved() {
      return solved
    },
    step() {
      const dimension = dimensions[done]
      if (!dimension) return false
      take(dimension)
      done += 1
      answer = null
      return done < dimensions.length
    },
    answer() {
      answer ??= new Map([...base].map(([key, margin]) => [key, told(margin, parts.get(key) ?? [])]))
      return answer
    },
  }
}

function told(margin: number, parts: readonly Part[]): WorstCase {
  const tolerance = parts.reduce((sum, one) => sum + one.effect, 0)
  const flush = Math.abs(margin) <= NOTHING
  return {
    tolerance,
    worst: margin - tolerance,
    // What lies flush on its limit was meant so.
    doubtful: !flush && (margin > 0 ? margin - tolerance < -NOTHING : margin + tolerance > NOTHING),
    parts: [...parts].sort((a, b) => b.effect - a.effect || (a.path < b.path ? -1 : 1)).slice(0, MOST_PARTS),
  }
}

/** Things by the margin that is nearest to turning, no more than could be gone through. */
function tightestThings(layout: Layout, most: number): Thing[] {
  const { things } = layout.design
  if (things.length * 4 <= most) return [...things]
  const tightness = new Map<string, number>()
  for (const { about, margin } of check(layout)) {
    // What lies flush on its limit was meant so and turns nothing.
    if (margin === null || Math.abs(margin) <= NOTHING) continue
    for (const id of about)
      tightness.set(id, Math.min(tightness.get(id) ?? Number.MAX_VALUE, Math.abs(margin)))
  }
  const of = (thing: Thing) => tightness.get(thing.id) ?? Number.MAX_VALUE
  return [...things].sort((a, b) => of(a) - of(b)).slice(0, most)
}

/** Findings in the order that matters with the tolerance counted in: gravest first, then what is doubtful, then by worst case. */
export function byWorstCase(
  findings: readonly Finding[],
  worst: ReadonlyMap<string, WorstCase>,
): readonly Finding[] {
  const rank = (one: Finding): number => {
    if (one.grade === 'stop') return 0
    if (one.grade === 'care') return 1
    if (worst.get(one.key)?.doubtful && one.grade === 'clear') return 2
    return one.grade === 'note' ? 3 : 4
  }
  const left = (one: Finding): number => worst.get(one.key)?.worst ?? one.margin ?? Number.MAX_VALUE
  return findings
    .map((finding, index) => ({ finding, index }))
    .sort(
      (a, b) => rank(a.finding) - rank(b.finding) || left(a.finding) - left(b.finding) || a.index - b.index,
    )
    .map(({ finding }) => finding)
}
