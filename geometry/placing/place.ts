/**
 * Places proposed for what is to stand on the faces: three good answers that differ, better ones the longer the search
 * runs. Each begins with another spot for the first thing, puts the rest where it gains most, one after another, and is
 * then nudged in ever smaller steps. Nothing is drawn by lot: the same design and wishes give the same answers.
 */
import { blocks, check } from '../checks/check.ts'
import type { Finding, Rule } from '../checks/finding.ts'
import { apply, type Change, change } from '../design/changes.ts'
import type { Design, Thing } from '../design/schema.ts'
import type { Face } from '../kinds/kind.ts'
import { kindOf } from '../kinds/kinds.ts'
import { stepOf } from '../quantity/index.ts'
import { placedCalled } from '../solve/called.ts'
import type { Layout } from '../solve/layout.ts'
import { clean, type FieldSet, followersOf, placeFields } from '../solve/moves.ts'
import { solve } from '../solve/solve.ts'
import { tunedTo } from './air.ts'
import { JUDGES, type Judged, judged, ON_FACE, tightestOf, worth } from './judge.ts'
import { type Spot, spotsOn } from './spots.ts'
import { type Answered, answered, wishWorth } from './wish-worth.ts'
import { isOpening, type PlacingWishes, prepared } from './wishes.ts'

export interface Proposal {
  /** From the design asked about to this answer. */
  readonly change: Change
  readonly layout: Layout
  readonly judged: Judged
  /** More is better; comparable between answers to the same question. */
  readonly worth: number
  /** Everything wrong with the whole design, also by rules that were not aimed at. */
  readonly stops: readonly Finding[]
  /** Of the stops those about what was placed, or about what goes along with it: what another place might have mended. */
  readonly ownStops: readonly Finding[]
  readonly cares: readonly Finding[]
  /** The three tightest margins of what was placed. */
  readonly tightest: readonly Finding[]
  readonly wishes: readonly Answered[]
}

export interface Placing {
  /** The best three so far that differ, the best first; fewer where there are no more. */
  readonly proposals: readonly Proposal[]
  /** What was done before anything was placed: added, paired. */
  readonly said: readonly string[]
  /** Ids of what is placed. */
  readonly placed: readonly string[]
  /** Arrangements looked at. */
  readonly tried: number
}

/** So many beginnings are gone into. */
const BEGINNINGS = 6
const ANSWERS = 3
/** How finely a face is gone over, and how many spots are then looked at more closely: also behind the face. */
interface Fineness {
  readonly every: number
  readonly closer: number
}
const ALL_SPOTS: Fineness = { every: 1, closer: 12 }
/** For the first answer, the fewer the more there is to place: somebody waits for it. */
const fewSpots = (movers: number): Fineness =>
  movers <= 4 ? { every: 2, closer: 3 } : { every: 3, closer: 2 }
/** Two answers differ where something stands so far from where it does in the other; millimetres. */
const DIFFERENT = 20
/** Nudges, the widest first; millimetres. */
const NUDGES = [16, 8, 4, 2, 1]

/** Straight and slantwise: the tightest margin often grows only between two of the straight ways. */
const WAYS = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
  [1, 1],
  [1, -1],
  [-1, 1],
  [-1, -1],
] as const
/** So often one thing is nudged by one way before the next has its turn. */
const MOST_TURNS = 6

type Arrangement = ReadonlyMap<string, Spot>

interface Reached {
  readonly at: Arrangement
  readonly judged: Judged
  readonly worth: number
}

/** The answers when the search has come to its end. Example: `placeFor(design, { symmetry: true }).proposals[0]?.change`. */
export function placeFor(design: Design, wishes: PlacingWishes = {}): Placing {
  const search = placing(design, wishes)
  for (;;) {
    const { done, value } = search.next()
    if (done) return value
  }
}

/** The same in small stretches; what it yields is the answer so far, `null` before there is one that is new. */
export function* placing(
  design: Design,
  wishes: PlacingWishes = {},
): Generator<Placing | null, Placing, void> {
  const search = new Search(design, wishes)
  yield null
  const pool: Reached[] = []
  if (search.movers.length === 0) return search.told([])
  if (!wishes.add) pool.push(search.reach(search.asItIs()))
  // Somebody waits for the first answer: it is looked for among few spots, and gone into anew among all of them.
  pool.push(search.reach(yield* search.filled(new Map(), fewSpots(search.movers.length))))
  yield search.told(pool)
  for (const beginning of yield* search.beginnings()) {
    pool.push(search.reach(yield* search.filled(beginning, ALL_SPOTS)))
    yield search.told(pool)
  }
  // Only what may still become one of the answers is worth the nudging. Where two are nudged into one, what they were
  // before may still differ.
  const before = [...pool].sort((a, b) => b.worth - a.worth)
  pool.splice(0, pool.length, ...before.slice(0, ANSWERS + 2))
  for (const nudge of NUDGES.map((mm) => search.onRule(mm))) {
    for (let index = 0; index < pool.length; index++)
      for (const mover of search.movers) {
        pool[index] = yield* search.nudged(pool[index] as Reached, mover, nudge)
      }
    yield search.told([...pool, ...before])
  }
  return search.told([...pool, ...before])
}

interface Weighed {
  readonly spot: Spot
  readonly worth: number
}

class Search {
  readonly movers: readonly Thing[]
  private readonly base: Layout
  private readonly said: readonly string[]
  /** What goes along with each mover, itself included. */
  private readonly company: ReadonlyMap<string, ReadonlySet<string>>
  private readonly all: ReadonlySet<string>
  private readonly told_ = new Map<Reached, Proposal>()
  private tried = 0
  private readonly step: number

  constructor(
    private readonly asked: Design,
    private readonly wishes: PlacingWishes,
  ) {
    const ready = prepared(asked, wishes)
    const tuned = wishes.hertz === undefined ? ready.design : tunedTo(ready.design, wishes.hertz)
    const atShare = (thing: Thing) => wishes.pickupAt !== undefined && thing.kind === 'pickup'
    const ids = new Set(ready.movers.map((one) => one.id))
    const start = tuned.things.flatMap((thing, index): FieldSet[] =>
      ids.has(thing.id) && atShare(thing)
        ? [
            [['things', index, 'along'], { ofScale: wishes.pickupAt }],
            [['things', index, 'across'], 0],
          ]
        : [],
    )
    this.base = solve(start.length === 0 ? tuned : apply(tuned, change(tuned, ...start)))
    this.said = ready.said
    this.step = asked.units.display === 'mm' ? 1 : stepOf(asked.units)
    const order = (thing: Thing) => [(thing.kind === 'screw' && 3) || (isOpening(thing) ? 0 : 1)][0] as number
    const size = (thing: Thing) => {
      const { along, across } = kindOf(thing.kind).size(thing)
      return along * across
    }
    this.movers = this.base.design.things
      .filter((one) => ids.has(one.id) && !atShare(one))
      .sort((a, b) => order(a) - order(b) || size(b) - size(a))
    this.company = new Map(
      this.movers.map(({ id }) => [id, new Set([id, ...followersOf(this.base.design, id)])]),
    )
    this.all = new Set([...this.company.values()].flatMap((ids) => [...ids]))
  }

  /** A way in whole steps of the rule. */
  onRule(mm: number): number {
    return Math.max(1, Math.round(mm / this.step)) * this.step
  }

  /** Where everything stands now. */
  asItIs(): Arrangement {
    return new Map(
      this.movers.map(({ id }) => {
        const { at, face } = placedCalled(this.base, id) ?? {
          at: { x: 0, y: 0 },
          face: 'lid' as const,
        }
        return [id, { face, ...at }]
      }),
    )
  }

  /** Good spots of the first thing, far from each other. */
  *beginnings(): Generator<null, Arrangement[], void> {
    const [first] = this.movers
    if (!first) return []
    const ranked = yield* this.ranked(new Map(), first, ALL_SPOTS)
    const chosen: Spot[] = []
    for (const { spot } of ranked) {
      const far = chosen.every(
        (one) => one.face !== spot.face || Math.hypot(one.x - spot.x, one.y - spot.y) >= 2 * DIFFERENT,
      )
      if (far) chosen.push(spot)
      if (chosen.length === BEGINNINGS) break
    }
    return chosen.map((spot) => new Map([[first.id, spot]]))
  }

  /** Everything that has no place yet in the best of its spots, one after another. */
  *filled(beginning: Arrangement, fineness: Fineness): Generator<null, Arrangement, void> {
    let at = beginning
    for (const mover of this.movers) {
      if (at.has(mover.id)) continue
      const best = (yield* this.ranked(at, mover, fineness))[0]
      if (best) at = new Map([...at, [mover.id, best.spot]])
    }
    return at
  }

  private *ranked(
    at: Arrangement,
    mover: Thing,
    { every, closer }: Fineness,
  ): Generator<null, Weighed[], void> {
    const spots = this.facesFor(mover)
      .flatMap((face) => spotsOn(this.base, mover, face, every))
      .map((spot) => this.snapped(spot))
    // A screw is there for the wood behind the face, so what is on it tells too little.
    if (mover.kind === 'screw') return yield* this.weighed(at, mover, spots, JUDGES)
    const best = yield* this.weighed(at, mover, spots, ON_FACE)
    return yield* this.weighed(
      at,
      mover,
      best.slice(0, closer).map(({ spot }) => spot),
      JUDGES,
    )
  }

  /** Spots by what they are worth, the best first; after each the page may have its turn. */
  private *weighed(
    at: Arrangement,
    mover: Thing,
    spots: readonly Spot[],
    rules: readonly Rule[],
  ): Generator<null, Weighed[], void> {
    const about = this.companyOf(mover)
    const found: Weighed[] = []
    for (const spot of spots) {
      found.push({ spot, worth: this.weigh(new Map([...at, [mover.id, spot]]), about, rules).worth })
      yield null
    }
    return found.sort((a, b) => b.worth - a.worth)
  }

  private facesFor(mover: Thing): readonly Face[] {
    if (mover.kind !== 'jack' || !this.wishes.jackOffKnee) return [mover.face]
    return kindOf(mover.kind).faces.filter((face) => face === 'tail-end-wall' || face === 'treble-wall')
  }

  private companyOf = ({ id }: Thing): ReadonlySet<string> => this.company.get(id) ?? new Set([id])

  private snapped({ face, x, y }: Spot): Spot {
    const to = (value: number) => clean(Math.round(value / this.step) * this.step)
    return { face, x: to(x), y: to(y) }
  }

  reach(at: Arrangement): Reached {
    const all = new Set([...at.keys()].flatMap((id) => [...(this.company.get(id) ?? [])]))
    return { at, ...this.weigh(at, all) }
  }

  /** One thing moved so far each way, as long as it gains; what stands already is never given up for less. */
  *nudged(from: Reached, mover: Thing, by: number): Generator<null, Reached, void> {
    let best = from
    for (let turns = 0; turns < MOST_TURNS; turns++) {
      const here = best.at.get(mover.id)
      if (!here) return best
      const before = best
      for (const [x, y] of WAYS) {
        const tried = this.reach(
          new Map([...before.at, [mover.id, { ...here, x: here.x + x * by, y: here.y + y * by }]]),
        )
        if (tried.worth > best.worth + 1e-9) best = tried
        yield null
      }
      if (best === before) break
    }
    return best
  }

  private weigh(
    at: Arrangement,
    about: ReadonlySet<string>,
    rules: readonly Rule[] = JUDGES,
  ): { judged: Judged; worth: number } {
    this.tried += 1
    const layout = solve(this.designAt(at))
    const said = judged(layout, about, rules)
    return { judged: said, worth: worth(said, wishWorth(layout, about, this.wishes)) }
  }

  /** The design with so much of it placed; what is not yet is left out. */
  private designAt(at: Arrangement): Design {
    const { design, placed } = this.base
    const fields = design.things.flatMap((thing, index): FieldSet[] => {
      const spot = at.get(thing.id)
      const stands = placed[index]
      if (!spot || !stands) return []
      if (spot.face === thing.face) return placeFields(this.base, stands, spot)
      const plan = spot.face === 'lid' || spot.face === 'base'
      return [
        [['things', index, 'face'], spot.face],
        [['things', index, 'along'], clean(spot.x)],
        [['things', index, 'across'], clean(plan ? spot.y : -spot.y)],
      ]
    })
    const moved = fields.length === 0 ? design : apply(design, change(design, ...fields))
    if (at.size === this.movers.length) return moved
    const absent = new Set(
      this.movers.flatMap(({ id }) => (at.has(id) ? [] : [...(this.company.get(id) ?? [])])),
    )
    return { ...moved, things: moved.things.filter((one) => !absent.has(one.id)) }
  }

  told(pool: readonly Reached[]): Placing {
    const sorted = [...pool].sort((a, b) => b.worth - a.worth)
    const chosen: Proposal[] = []
    for (const one of sorted) {
      // One with a stop is no answer beside one without.
      if (one.judged.stops > (sorted[0] as Reached).judged.stops) break
      const proposal = this.proposal(one)
      if (chosen.every((other) => differ(proposal.layout, other.layout, this.all))) chosen.push(proposal)
      if (chosen.length === ANSWERS) break
    }
    return {
      proposals: chosen,
      said: this.said,
      placed: this.movers.map((one) => one.id),
      tried: this.tried,
    }
  }

  private proposal(reached: Reached): Proposal {
    const before = this.told_.get(reached)
    if (before) return before
    const layout = solve(this.designAt(reached.at))
    const findings = check(layout)
    const stops = findings.filter(blocks)
    const made: Proposal = {
      change: thingsChange(this.asked, layout.design),
      layout,
      judged: reached.judged,
      worth: reached.worth,
      stops,
      ownStops: stops.filter((one) => one.about.some((id) => this.all.has(id))),
      cares: findings.filter((one) => one.grade === 'care'),
      tightest: tightestOf(findings, this.all, 3),
      wishes: answered(layout, this.wishes),
    }
    this.told_.set(reached, made)
    return made
  }
}

/** Does something stand elsewhere? Two alike that have only changed places are the same answer. */
function differ(a: Layout, b: Layout, about: ReadonlySet<string>): boolean {
  const of = ({ placed }: Layout) => placed.filter((one) => about.has(one.thing.id))
  const left = of(b)
  return of(a).some((one) => {
    const index = left.findIndex(
      (other) =>
        other.thing.kind === one.thing.kind &&
        other.face === one.face &&
        Math.hypot(other.at.x - one.at.x, other.at.y - one.at.y) < DIFFERENT,
    )
    if (index < 0) return true
    left.splice(index, 1)
    return false
  })
}

/** Only fields that differ are set, and what is new comes after what was there. */
function thingsChange(before: Design, after: Design): Change {
  const fields = after.things.flatMap((thing, index): FieldSet[] => {
    const was = before.things[index]
    if (!was) return [[['things', index], thing]]
    return Object.entries(thing).flatMap(([name, value]): FieldSet[] =>
      JSON.stringify(value) === JSON.stringify((was as Record<string, unknown>)[name])
        ? []
        : [[['things', index, name], value]],
    )
  })
  return change(before, ...fields)
}
