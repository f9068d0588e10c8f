/**
 * What would mend a finding: concrete changes, each solved and checked again before it is offered. Directions and
 * amounts are found by trying (least number of steps of the builder's rule), so every rule that says what mends it
 * gets its cures and none needs its own. Several solves each: asked for when somebody looks, never on a frame.
 */

import { check, ruleOf } from '../checks/check.ts'
import { type Finding, limitOf } from '../checks/finding.ts'
import { apply, type Change, change } from '../design/changes.ts'
import { checkDesign } from '../design/read.ts'
import { notes } from '../quantity/notes.ts'
import type { Layout } from '../solve/layout.ts'
import type { FieldSet } from '../solve/moves.ts'
import { solve } from '../solve/solve.ts'
import { byKey, GRAVITY, type Worsened, worsenedBy } from './compare.ts'
import { leastSteps } from './least.ts'
import type { Lever, Turn } from './lever.ts'
import { leversFor } from './levers.ts'
import { loosened } from './move-levers.ts'

export interface Cure {
  /** Key of the finding it mends. */
  readonly key: string
  readonly change: Change
  /** What is done, as a command: `Move “Hole” 4.2 mm towards the centreline`. */
  readonly words: string
  /** What is given up of how a place was meant; `null` where every relation is kept. */
  readonly loosens: string | null
  /** `gone`: nothing of it is left. `better`: a stop became a care. */
  readonly outcome: 'gone' | 'better'
  /** What it makes worse, the gravest first. */
  readonly worse: readonly Worsened[]
  /** How far the number goes that is changed, in its own unit. */
  readonly amount: number
  /** Only the builder can say whether this is so, as which hand plucks. */
  readonly yours: boolean
}

/** So many cures of a finding are told. */
const MOST_CURES = 3
/** And so many are gone into where one leads to another. */
const MOST_TRADED = 6
/** Another choice counts as much as being moved so far, millimetres. */
const CHOICE = 25

/** What is asked of a design while it is mended. */
export interface Demands {
  /** Does this finding count? What does not may turn to a stop unregarded. */
  counts(finding: Finding): boolean
  /** May one stop be cured at the price of another, to be cured after it? */
  readonly trading: boolean
}

const ALL: Demands = { counts: () => true, trading: false }

const known = notes<Layout, Map<string, readonly Cure[]>>()

/** Cures of a finding, the best first; empty where none was found. Remembered per layout. */
export function curesOf(layout: Layout, finding: Finding): readonly Cure[] {
  const search = curing(layout, finding)
  for (;;) {
    const { done, value } = search.next()
    if (done) return value
  }
}

/** The cures of a finding where they have been looked for already. */
export const knownCures = (layout: Layout, { key }: Finding): readonly Cure[] | undefined =>
  known.get(layout)?.get(key)

/** The same search in small stretches, a lever at a time: a page does some of them between two frames. */
export function* curing(layout: Layout, finding: Finding): Generator<undefined, readonly Cure[], void> {
  const before = knownCures(layout, finding)
  if (before) return before
  const best = yield* searching(layout, finding, ALL)
  const ofLayout = known.get(layout) ?? new Map<string, readonly Cure[]>()
  known.set(layout, ofLayout.set(finding.key, best))
  return best
}

/** Cures of a finding as far as some demands go; nothing is remembered. */
export function* searching(
  layout: Layout,
  finding: Finding,
  demands: Demands,
): Generator<undefined, readonly Cure[], void> {
  if (finding.grade === 'clear' || finding.overruled !== undefined) return []
  const found: Cure[] = []
  const hasty = trialOf(layout, finding, demands, false)
  // Where no clean way was found in haste, places are gone through that lie behind something or are narrow.
  for (const trial of [hasty, { ...hasty, patient: true }]) {
    for (const group of leversFor(layout, finding, trial.slope)) {
      const alike: Cure[] = []
      for (const lever of group()) {
        if (trial.patient && (lever.sort !== 'slide' || lever.stride === undefined)) continue
        alike.push(...curesBy(lever, layout, finding, trial))
        yield
      }
      // Of levers of one sort the shortest way comes first.
      found.push(...alike.sort((a, b) => a.amount - b.amount))
      // Enough clean ways of a likelier sort, and the unlikelier need not be tried.
      if (found.filter(isClean).length >= MOST_CURES) break
    }
    if (demands.trading ? found.length > 0 : found.some(isClean)) break
  }
  return bestOf(found, demands.trading ? MOST_TRADED : MOST_CURES)
}

export const isClean = ({ outcome, worse }: Cure): boolean => outcome === 'gone' && worse.length === 0

/** Clean ones first, then those that mend it whole; else as the rule orders them. */
function bestOf(found: readonly Cure[], most: number): readonly Cure[] {
  const rank = (one: Cure) => (isClean(one) ? 0 : one.outcome === 'gone' ? 1 : 2)
  const distinct = found.filter(
    (one, index) => found.findIndex((other) => other.words === one.words) === index,
  )
  return distinct
    .map((one, index) => ({ one, index }))
    .sort((a, b) => rank(a.one) - rank(b.one) || a.index - b.index)
    .map(({ one }) => one)
    .slice(0, most)
}

interface Trial {
  readonly demands: Demands
  readonly patient: boolean
  /** How grave the finding is with these fields set, by its own rule alone. */
  gravity(fields: readonly FieldSet[]): number
  slope: (fields: readonly FieldSet[]) => number
}

/** Tries a change with the finding's own rule only: the cheap half of a proof. */
function trialOf(layout: Layout, finding: Finding, demands: Demands, patient: boolean): Trial {
  const rule = ruleOf(finding.rule)
  const limit = limitOf(layout.design)
  const wrongBefore = new Set(
    check(layout).flatMap((one) => (one.rule === rule.name && one.grade !== 'clear' ? [one.key] : [])),
  )
  const measured = (fields: readonly FieldSet[]) => [
    ...rule.measure(solve(apply(layout.design, change(layout.design, ...fields))), limit),
  ]
  const keyOf = (about: readonly string[]) => `${rule.name} ${about.join(' ')}`
  return {
    demands,
    patient,
    gravity: (fields) =>
      measured(fields).reduce((gravest, { about, grade }) => {
        const key = keyOf(about)
        // What else this rule found before is another finding; what it finds anew in this one's place is not.
        return key === finding.key || !wrongBefore.has(key) ? Math.max(gravest, GRAVITY[grade]) : gravest
      }, 0),
    slope: (fields) => {
      const one = measured(fields).find(({ about }) => keyOf(about) === finding.key)
      if (!one || one.measured === null) return 0
      const margin = one.measured - (one.limit ?? 0) - (finding.measured ?? 0) + (finding.limit ?? 0)
      return rule.wants === 'least' ? margin : -margin
    },
  }
}

function curesBy(lever: Lever, layout: Layout, finding: Finding, trial: Trial): Cure[] {
  if (lever.sort === 'choice')
    return lever.turns.flatMap((turn) =>
      trial.gravity(turn.fields) === 0
        ? proved(turn, layout, finding, trial.demands, CHOICE, lever.yours ?? false)
        : [],
    )
  const missing = finding.unit === 'mm' && finding.margin !== null ? Math.abs(finding.margin) / lever.step : 1
  const ways = lever.ways.flatMap((way) => found(lever, way, missing, finding, trial))
  // Of two ways the shorter one, unless it harms and the other does not.
  ways.sort((a, b) => a.gravity - b.gravity || a.steps - b.steps)
  const cures = ways.flatMap(({ turn, steps }) =>
    proved(turn, layout, finding, trial.demands, steps * lever.step, false),
  )
  const clean = cures.find(isClean)
  if (trial.demands.trading) return cures
  return clean ? [clean] : cures.slice(0, 1)
}

interface Found {
  readonly turn: Turn
  readonly steps: number
  readonly gravity: number
}

/** The least this lever must be moved one way; for a stop also the least that makes it none. */
function found(
  lever: Extract<Lever, { sort: 'slide' }>,
  way: 1 | -1,
  missing: number,
  finding: Finding,
  trial: Trial,
): Found[] {
  const { gravity } = trial
  // Away from what is wanted leads there only behind something else.
  if (!trial.patient && trial.slope(lever.at(way)?.fields ?? []) < 0) return []
  const tried = new Map<number, number>()
  const at = (steps: number): number => {
    const before = tried.get(steps)
    if (before !== undefined) return before
    const turn = lever.at(way * steps)
    const answer = turn ? gravity(turn.fields) : Number.POSITIVE_INFINITY
    tried.set(steps, answer)
    return answer
  }
  const most = reach(lever, way)
  const ends: Found[] = []
  for (const wanted of finding.grade === 'stop' ? [0, GRAVITY.care] : [0]) {
    // Half of what is missing is where to begin: a pair of mirrored partners parts twice as fast.
    const least = leastSteps(
      (one) => at(one) <= wanted,
      missing / 2,
      most,
      trial.patient ? lever.stride : undefined,
    )
    const steps =
      least !== null && ruleOf(finding.rule).aims ? onwards(lever, way, least, most, trial) : least
    const turn = steps === null ? null : lever.at(way * steps)
    if (steps !== null && turn && steps !== ends[0]?.steps) ends.push({ turn, steps, gravity: wanted })
  }
  return ends
}

/** From where it is within its limit on to where it is best: as long as every step gains. */
function onwards(
  lever: Extract<Lever, { sort: 'slide' }>,
  way: 1 | -1,
  from: number,
  most: number,
  { slope }: Trial,
): number {
  const gain = (steps: number): number => slope(lever.at(way * steps)?.fields ?? [])
  let [best, here] = [from, gain(from)]
  while (best < most) {
    const next = gain(best + 1)
    if (next <= here) break
    ;[best, here] = [best + 1, next]
  }
  return best
}

/** How many steps the field's own limits leave. */
function reach(lever: Extract<Lever, { sort: 'slide' }>, way: 1 | -1): number {
  if (lever.at(way * lever.most)) return lever.most
  let [can, cannot] = [0, lever.most]
  while (cannot - can > 1) {
    const middle = Math.floor((can + cannot) / 2)
    if (lever.at(way * middle)) can = middle
    else cannot = middle
  }
  return can
}

/** The cure, if solving and checking everything again bears it out; none that puts another stop in a finding's place. */
function proved(
  turn: Turn,
  layout: Layout,
  finding: Finding,
  { counts, trading }: Demands,
  amount: number,
  yours: boolean,
): Cure[] {
  const { design } = layout
  const made = change(design, ...turn.fields)
  const after = solve(apply(design, made))
  if (movesLocked(layout, after) || !checkDesign(after.design).ok) return []
  const [old, now] = [byKey(check(layout)), byKey(check(after))]
  const then = now.get(finding.key)
  const gravity = then ? GRAVITY[then.grade] : 0
  if (gravity >= GRAVITY[finding.grade]) return []
  const worse = worsenedBy(old, now).filter((one) => one.finding.key !== finding.key && counts(one.finding))
  // Another finding as grave may come in its place, which is said; a stop never.
  const tolerated = finding.grade === 'stop' ? GRAVITY.care : GRAVITY[finding.grade]
  if (!trading && worse.some((one) => GRAVITY[one.finding.grade] > tolerated && isGraver(one))) return []
  return [
    {
      key: finding.key,
      change: made,
      words: turn.words(layout, after),
      loosens: loosened(layout, after),
      outcome: gravity === 0 ? 'gone' : 'better',
      worse,
      amount,
      yours,
    },
  ]
}

const isGraver = ({ finding, before }: Worsened): boolean =>
  GRAVITY[finding.grade] > GRAVITY[before?.grade ?? 'clear']

/** Does it move what is locked, if only because it follows something else? */
function movesLocked(before: Layout, after: Layout): boolean {
  return before.placed.some((one, index) => {
    const now = after.placed[index]
    return one.thing.locked && now && Math.hypot(now.at.x - one.at.x, now.at.y - one.at.y) > 1e-6
  })
}
