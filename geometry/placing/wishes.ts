/** What is to be placed and what is wished of it: what a search for places starts from. */
import { blocks, check, ruleOf } from '../checks/check.ts'
import { curesOf } from '../cures/cure.ts'
import { apply, change } from '../design/changes.ts'
import { leaderOf } from '../design/pairs.ts'
import { checkDesign } from '../design/read.ts'
import type { Design, Thing } from '../design/schema.ts'
import { type KindName, kindOf } from '../kinds/kinds.ts'
import { type FieldSet, followersOf } from '../solve/moves.ts'
import { solve } from '../solve/solve.ts'

export interface PlacingWishes {
  /** Ids of what is to be placed; left out: every sound hole, pickup, control, jack and screw that may be moved. */
  readonly things?: readonly string[]
  /** Two of a kind and size stand as mirror images of each other. */
  readonly symmetry?: boolean
  /** The air is to sound near this, in hertz; the openings are made larger or smaller for it. */
  readonly hertz?: number
  /** The pickup stands on the centreline at this share of the scale from the saddle. */
  readonly pickupAt?: number
  /**
   * The jack goes where a cable meets no knee: on the tail-end wall, or on the third of the treble wall next to the
   * tail, since the thigh lies under the middle of the wall that hangs down. Common practice, no source.
   */
  readonly jackOffKnee?: boolean
  /** To be added and placed: so many of each kind, at the sizes such a thing usually has. */
  readonly add?: Readonly<Partial<Record<KindName, number>>>
}

/** Kinds that are placed by themselves where nothing else is asked for. */
const PLACEABLE: ReadonlySet<string> = new Set(['pickup', 'pot', 'switch', 'jack', 'screw'])

/** Kinds that are offered to be added. */
export const ADDABLE: readonly KindName[] = ['sound-hole', 'pickup', 'pot', 'switch', 'jack', 'screw']

export const isOpening = ({ kind }: Pick<Thing, 'kind'>): boolean => kindOf(kind).group === 'Openings'

/** Whatever can be placed: nothing that is locked, follows another, or would take along something locked. */
export function movableIn(design: Design): readonly Thing[] {
  return design.things.filter((thing) => !thing.locked && !follows(thing) && !carriesLocked(design, thing.id))
}

/** Of those the ones placed where nothing else is asked for. */
export const placeableIn = (design: Design): readonly Thing[] =>
  movableIn(design).filter((thing) => PLACEABLE.has(thing.kind) || isOpening(thing))

const follows = ({ along, across }: Thing): boolean =>
  [along, across].some((place) => typeof place === 'object' && ('mirror' in place || 'from' in place))

function carriesLocked(design: Design, id: string): boolean {
  const with_ = followersOf(design, id)
  return design.things.some((one) => one.locked && with_.has(one.id))
}

export interface Prepared {
  /** With what is added, and with pairs made mirror images. */
  readonly design: Design
  readonly movers: readonly Thing[]
  /** What was done to get here, in words. */
  readonly said: readonly string[]
}

/** The design a search begins from. Example: `prepared(design, { add: { screw: 4 } }).movers`. */
export function prepared(design: Design, wishes: PlacingWishes): Prepared {
  const said: string[] = []
  const added = withAdded(design, wishes.add ?? {}, said)
  const wanted = wishes.things && new Set([...wishes.things, ...added.news])
  const chosen = (of: Design) =>
    (wanted ? movableIn(of).filter((one) => wanted.has(one.id)) : placeableIn(of)).map((one) => one.id)
  const whole = wishes.symmetry ? paired(added.design, new Set(chosen(added.design)), said) : added.design
  const ids = new Set(chosen(whole))
  return { design: whole, movers: whole.things.filter((one) => ids.has(one.id)), said }
}

function withAdded(
  design: Design,
  add: NonNullable<PlacingWishes['add']>,
  said: string[],
): { design: Design; news: string[] } {
  const taken = new Set(design.things.map((one) => one.id))
  const news: object[] = []
  const ids: string[] = []
  for (const [kind, count = 0] of Object.entries(add)) {
    for (
      let number = 1;
      ids.length < 100 && news.filter((one) => 'kind' in one && one.kind === kind).length < count;
      number++
    ) {
      const id = number === 1 ? kind : `${kind}-${number}`
      if (taken.has(id)) continue
      taken.add(id)
      ids.push(id)
      news.push({ kind, id, face: kindOf(kind).faces[0] })
    }
    if (count > 0) said.push(`Added: ${count} × ${kindOf(kind).title.toLowerCase()}.`)
  }
  if (news.length === 0) return { design, news: [] }
  const reading = checkDesign({ ...design, things: [...design.things, ...news] })
  if (!reading.ok) return { design, news: [] }
  return { design: sized({ ...reading.design }, new Set(ids), said), news: ids }
}

/**
 * What is new made to suit its face where that hangs on no place: a bore where the wood is thicker than the thread. What
 * stands already has the sizes its builder gave it.
 */
function sized(design: Design, news: ReadonlySet<string>, said: string[]): Design {
  let now = design
  for (let turns = 0; turns < news.size; turns++) {
    const layout = solve(now)
    const cure = check(layout)
      .filter(({ rule, about }) => isNoPlace(rule) && about.every((id) => news.has(id)))
      .filter(blocks)
      .flatMap((finding) => curesOf(layout, finding).slice(0, 1))[0]
    if (!cure) break
    now = apply(now, cure.change)
    said.push(`${cure.words}.`)
  }
  return now
}

const isNoPlace = (rule: string): boolean => !ruleOf(rule).mendedBy?.includes('place')

/** Fields in which two of a kind may differ and still be a pair. */
const APART = new Set(['id', 'name', 'along', 'across', 'locked', 'group', 'turnDegrees'])

/** Two of a kind and size become mirror images: the second follows the first. */
function paired(design: Design, chosen: ReadonlySet<string>, said: string[]): Design {
  const waiting = new Map<string, Thing>()
  const fields: FieldSet[] = []
  design.things.forEach((thing, index) => {
    const plan = thing.face === 'lid' || thing.face === 'base'
    if (!chosen.has(thing.id) || !plan || kindOf(thing.kind).overNeck === 'meant') return
    if (leaderOf(thing) || followersOf(design, thing.id).size > 0) return
    const print = JSON.stringify(Object.entries(thing).filter(([name]) => !APART.has(name)))
    const partner = waiting.get(print)
    if (!partner) {
      waiting.set(print, thing)
      return
    }
    waiting.delete(print)
    fields.push(
      [['things', index, 'along'], { mirror: partner.id }],
      [['things', index, 'across'], { mirror: partner.id }],
      [['things', index, 'turnDegrees'], -partner.turnDegrees + 0],
    )
    said.push(`${thing.id} is the mirror image of ${partner.id}.`)
  })
  return fields.length === 0 ? design : apply(design, change(design, ...fields))
}
