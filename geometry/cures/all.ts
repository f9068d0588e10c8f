/**
 * Everything mended at once: cures upon cures until no `stop` is left. Where the search finds no such design it says so,
 * and names a smallest set of demands that cannot be met together. Best first over whole designs, with bounded effort:
 * "none found" is a statement about this search, not a proof.
 */
import { blocks, check, ruleOf } from '../checks/check.ts'
import type { Finding } from '../checks/finding.ts'
import { apply, type Change, change, compose } from '../design/changes.ts'
import type { Design } from '../design/schema.ts'
import type { Layout } from '../solve/layout.ts'
import { solve } from '../solve/solve.ts'
import { byKey, type Worsened, worsenedBy } from './compare.ts'
import { type Cure, isClean, searching } from './cure.ts'
import { smallerFields } from './field-levers.ts'

/** One thing asked of a design: that a finding be no stop, or that a locked thing stay where it is. */
export type Demand =
  | { readonly sort: 'finding'; readonly finding: Finding; readonly layout: Layout }
  | { readonly sort: 'locked'; readonly id: string }

export interface CureAll {
  /** `cured`: no stop is left but those that only the builder can answer. */
  readonly outcome: 'nothing to do' | 'cured' | 'none found'
  /** Stops that no change of a place or a size mends: of what was measured, bought or wired. */
  readonly beyond: readonly Finding[]
  /** The cures in the order they were found, each of the design after the one before. */
  readonly steps: readonly Cure[]
  /** All of them as one change of the design; as far as it got where none was found. */
  readonly change: Change
  /** Stops in the design reached. */
  readonly left: readonly Finding[]
  readonly after: Layout
  /** What is worse than before all of it. */
  readonly worse: readonly Worsened[]
  /** A least set of demands that contradict each other; empty where the outcome is another. */
  readonly contradiction: readonly Demand[]
  /** Designs looked at. */
  readonly tried: number
}

/** So many designs are opened up before the search gives up, and so many for each question about a contradiction. */
const MOST_OPENED = 24
const MOST_ASKED = 10
/** More demands than these are not sorted out. */
const MOST_DEMANDS = 12
/** No longer chain of cures. */
const MOST_STEPS = 16

interface Node {
  readonly layout: Layout
  readonly steps: readonly Cure[]
  readonly change: Change
  readonly stops: readonly Finding[]
}

interface Sought {
  readonly best: Node
  readonly solved: boolean
  /** Every stop met on the way, by its key, with how often. */
  readonly met: ReadonlyMap<
    string,
    { readonly finding: Finding; readonly layout: Layout; readonly times: number }
  >
  readonly tried: number
}

type Counting = (finding: Finding) => boolean

/** Only the builder can answer this. */
const isYours = ({ rule }: Finding): boolean => rule === 'hand-stated'
const isBeyond = ({ rule }: Finding): boolean => ruleOf(rule).mendedBy === undefined

/** To this share openings are made smaller where nothing else was found. */
const SMALLER = [0.7, 0.4]

/**
 * Mends every stop, and with `cares` also what is risky as far as nothing else gets worse for it.
 * Example: `cureAll(solve(design)).steps.map((one) => one.words)`.
 */
export function cureAll(layout: Layout, options: { readonly cares?: boolean } = {}): CureAll {
  const search = curingAll(layout, options)
  for (;;) {
    const { done, value } = search.next()
    if (done) return value
  }
}

/** The same in small stretches, for a page that must answer meanwhile. */
export function* curingAll(
  layout: Layout,
  { cares = false }: { readonly cares?: boolean } = {},
): Generator<undefined, CureAll, void> {
  const sought = yield* seek(layout, (one) => !isYours(one) && !isBeyond(one), MOST_OPENED)
  let { best } = sought
  if (sought.solved && cares) best = yield* cared(best)
  const contradiction = sought.solved ? [] : yield* contradicting(layout, sought)
  const left = check(best.layout).filter(blocks)
  const beyond = left.filter(isBeyond)
  const whole = sought.solved && beyond.length === 0
  return {
    outcome: !whole ? 'none found' : best.steps.length === 0 ? 'nothing to do' : 'cured',
    beyond,
    steps: best.steps,
    change: best.change,
    left,
    after: best.layout,
    worse: worsenedBy(byKey(check(layout)), byKey(check(best.layout))),
    contradiction,
    tried: sought.tried,
  }
}

/** As the design is, and where that leads nowhere once more with its openings made smaller. */
function* seek(layout: Layout, counts: Counting, mostOpened: number): Generator<undefined, Sought, void> {
  const first = yield* seekFrom([{ layout, steps: [], change: NOTHING }], counts, mostOpened)
  if (first.solved) return first
  const smaller = SMALLER.flatMap((share) => shrunk(layout, first, share))
  if (smaller.length === 0) return first
  const second = yield* seekFrom(smaller, counts, mostOpened)
  const met = new Map([...second.met, ...first.met])
  return { ...(second.solved ? second : first), met, tried: first.tried + second.tried }
}

const NOTHING: Change = { edits: [] }

type Start = Pick<Node, 'layout' | 'steps' | 'change'>

/** The openings that were in the way, all made smaller to one share of themselves; partners alike. */
function shrunk(layout: Layout, { met }: Sought, share: number): Start[] {
  const { design } = layout
  const named = new Set([...met.values()].flatMap(({ finding }) => finding.about))
  const sizes = design.things.flatMap((thing, index) =>
    named.has(thing.id) && !thing.locked ? smallerFields(design, index, share) : [],
  )
  if (sizes.length === 0) return []
  const made = change(design, ...sizes.map(({ field }) => field))
  const after = solve(apply(design, made))
  const step: Cure = {
    key: '',
    change: made,
    words: sizes.map(({ words }) => words).join('; '),
    loosens: null,
    outcome: 'better',
    worse: [],
    amount: sizes.reduce((sum, { by }) => sum + by, 0),
    yours: false,
  }
  return [{ layout: after, steps: [step], change: made }]
}

function* seekFrom(
  starts: readonly Start[],
  counts: Counting,
  mostOpened: number,
): Generator<undefined, Sought, void> {
  const met = new Map<string, { finding: Finding; layout: Layout; times: number }>()
  const seen = new Set<string>()
  const node = (of: Layout, steps: readonly Cure[], made: Change): Node => ({
    layout: of,
    steps,
    change: made,
    stops: check(of).filter((one) => blocks(one) && counts(one)),
  })
  const waiting: Node[] = []
  const enter = (one: Node) => {
    const print = one.stops.map(({ key, margin }) => `${key} ${margin?.toFixed(2)}`).join()
    if (seen.has(print)) return
    seen.add(print)
    for (const finding of one.stops) {
      const before = met.get(finding.key)
      met.set(finding.key, { finding, layout: one.layout, times: (before?.times ?? 0) + 1 })
    }
    waiting.push(one)
    waiting.sort((a, b) => costOf(a) - costOf(b))
  }
  for (const start of starts) enter(node(start.layout, start.steps, start.change))
  let best = waiting[0] as Node
  for (let opened = 0; opened < mostOpened && best.stops.length > 0; opened++) {
    const here = waiting.shift()
    if (!here) break
    if (here.steps.length >= MOST_STEPS) continue
    // Each stop must go by some cure of its own, so one of them is enough to go on by: the gravest that has any.
    for (const stop of here.stops) {
      const cures = yield* searching(here.layout, stop, { counts, trading: true })
      for (const cure of cures)
        if (!cure.yours)
          enter(
            node(
              solve(apply(here.layout.design, cure.change)),
              [...here.steps, cure],
              compose(here.change, cure.change),
            ),
          )
      if (cures.length > 0) break
    }
    for (const one of waiting) if (costOf(one) < costOf(best)) best = one
  }
  return { best, solved: best.stops.length === 0, met, tried: seen.size }
}

/** Stops weigh most, then how far they are from none, then what became risky, then how much is changed. */
function costOf({ stops, steps, layout }: Node): number {
  const missing = stops.reduce((sum, { margin }) => sum + Math.min(100, Math.max(0, -(margin ?? 0))), 0)
  const cares = check(layout).filter((one) => one.grade === 'care').length
  const changed = steps.reduce((sum, { amount }) => sum + amount * 0.05, 0)
  return stops.length * 1000 + missing * 5 + cares * 3 + steps.length + changed
}

/** Risky findings too, each by a cure that harms nothing else, as long as there are any. */
function* cared(from: Node): Generator<undefined, Node, void> {
  let here = from
  const given = new Set<string>()
  for (let steps = 0; steps < MOST_STEPS; steps++) {
    const next = check(here.layout).find(
      (one) => one.grade === 'care' && one.overruled === undefined && !given.has(one.key),
    )
    if (!next) break
    given.add(next.key)
    const cures = yield* searching(here.layout, next, { counts: () => true, trading: false })
    const clean = cures.find((one) => isClean(one) && one.loosens === null)
    if (clean)
      here = {
        layout: solve(apply(here.layout.design, clean.change)),
        steps: [...here.steps, clean],
        change: compose(here.change, clean.change),
        stops: [],
      }
  }
  return here
}

/**
 * A least set of demands that the search cannot meet together: each is left out in turn, and stays out where the rest
 * still cannot be met (deletion; what is left is minimal, though another set may be smaller).
 */
function* contradicting(
  layout: Layout,
  { met, best }: Sought,
): Generator<undefined, readonly Demand[], void> {
  const stubborn = new Set(best.stops.map((one) => one.key))
  const found = [...met.values()]
    .sort(
      (a, b) =>
        Number(stubborn.has(b.finding.key)) - Number(stubborn.has(a.finding.key)) || b.times - a.times,
    )
    .slice(0, MOST_DEMANDS)
  const named = new Set(found.flatMap(({ finding }) => finding.about))
  const locked = layout.design.things.filter((one) => one.locked && concerns(one.id, named, layout.design))
  let kept: Demand[] = [
    ...found.map(({ finding, layout: of }): Demand => ({ sort: 'finding', finding, layout: of })),
    ...locked.map((one): Demand => ({ sort: 'locked', id: one.id })),
  ]
  // The likeliest stand first, so the others are tried first.
  for (const demand of [...kept].reverse()) {
    const without = kept.filter((one) => one !== demand)
    if (without.length === 0) break
    const { solved } = yield* seek(unlocked(layout, without), countingOnly(without), MOST_ASKED)
    if (!solved) kept = without
  }
  return kept
}

const concerns = (id: string, named: ReadonlySet<string>, { things }: Design): boolean =>
  named.has(id) ||
  things.some((one) => named.has(one.id) && JSON.stringify([one.along, one.across]).includes(`"${id}"`))

const countingOnly = (demands: readonly Demand[]): Counting => {
  const keys = new Set(demands.flatMap((one) => (one.sort === 'finding' ? [one.finding.key] : [])))
  return (finding) => keys.has(finding.key)
}

/** The design with only those things locked that are among the demands. */
function unlocked(layout: Layout, demands: readonly Demand[]): Layout {
  const { design } = layout
  const still = new Set(demands.flatMap((one) => (one.sort === 'locked' ? [one.id] : [])))
  const loose = design.things.flatMap((thing, index) =>
    thing.locked && !still.has(thing.id) ? [[['things', index, 'locked'], false] as const] : [],
  )
  return loose.length === 0 ? layout : solve(apply(design, change(design, ...loose)))
}
