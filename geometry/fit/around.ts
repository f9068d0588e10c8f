/**
 * What is alike in many rows is measured once. While the saddle stays where it is on the lid, a longer scale or another
 * string leaves lid, walls, what hangs behind them and the neck within the box as they were: rules that look at nothing
 * else give the same answer, to the last digits that arithmetic leaves.
 */

import type { Rule } from '../checks/finding.ts'
import { notes } from '../quantity/notes.ts'
import { thingSolids } from '../solids/bodies.ts'
import type { Layout, Placed } from '../solve/layout.ts'
import { type Note, soundOf } from '../sound/sound.ts'
import type { Stringed } from './candidate.ts'
import type { Verdict } from './verdict.ts'

/** Are two rows, alike within the box, alike in the rest that a rule looks at? */
type Alike = (a: Layout, b: Layout) => boolean

const always: Alike = () => true

const listed = (alike: Alike, ...rules: readonly string[]) => rules.map((rule) => [rule, alike] as const)

/**
 * Rules that look at faces, at what stands in the box and at the neck within it, and at nothing before the box but what is
 * named here. A rule that is not in this list is measured anew for every row: slower, never wrong.
 */
const SHARED: ReadonlyMap<string, Alike> = new Map([
  ...listed(always, 'opening-to-edge', 'opening-to-neck', 'opening-to-wall', 'opening-to-inside'),
  ...listed(
    always,
    'room-under-hardware',
    'rim-depth',
    'rim-ledge',
    'recess-left',
    'rosette-holes',
    'rosette-web',
  ),
  ...listed(always, 'thread-through', 'bore-wide', 'face-for-bushing', 'shaft-in-knob', 'knob-off-face'),
  ...listed(
    always,
    'cover-on-face',
    'covers-apart',
    'screw-holds',
    'screw-beside',
    'screw-point',
    'head-flush',
  ),
  ...listed(always, 'inside-fits', 'inside-clear-of-neck', 'neck-block-height'),
  ...listed(sameFoot, 'saddle-to-opening'),
  ...listed(sameHolesInBox, 'between-openings', 'artwork-kept'),
  ...listed((a, b) => sameHoles(a, b) && !meetsStrings(a) && !meetsStrings(b), 'parts-clear'),
  ...listed(sameWayOfLid, 'lid-clears', 'lid-reach', 'hinge-parallel'),
])

/** Rules that look at strings, nut and head, and not at where the box lies: measured once for all places of the saddle. */
const BY_STRINGS: ReadonlySet<string> = new Set([
  ...[
    'string-can-be-made',
    'string-breaking',
    'string-slack',
    'string-high',
    'pull-slackest',
    'pull-tightest',
  ],
  ...['strings-apart-at-nut', 'strings-apart-at-saddle', 'side-angle-at-nut', 'break-angle-at-nut'],
  ...['first-post', 'posts-on-head', 'posts-for-strings', 'head-on-blank', 'head-root', 'head-from-blank'],
  ...[
    'string-past-post',
    'strings-cross-at-head',
    'tuner-knobs',
    'knob-to-head',
    'tuners-apart',
    'wood-in-head',
  ],
  ...['scarf-glued', 'tail-hole-web', 'tail-holes-for-strings', 'tail-other-counts'],
])

/** Millimetres: what differs by less is alike. */
const ALIKE = 1e-7
/** Pairs with more room than this are no conflict, as `solids/conflicts.ts` has it; and half a thick string. */
const BESIDE_STRING = 3 + 3

interface Known {
  readonly layout: Layout
  readonly verdicts: Map<Rule, { readonly layout: Layout; readonly verdict: Verdict }[]>
  air?: { readonly note: Note | null }
}

/** What is known of the rows of one place of the saddle. */
export class Around {
  private known: Known[] = []
  private current: Known | null = null
  private readonly strung = new Map<Stringed, Map<Rule, Verdict>>()
  private strings: Map<Rule, Verdict> = new Map()

  /** Turns to a row; what was found of one alike is found again. */
  turnTo(layout: Layout, stringed: Stringed): void {
    this.strings = this.strung.get(stringed) ?? new Map()
    this.strung.set(stringed, this.strings)
    this.current = this.known.find((one) => within(one.layout, layout)) ?? null
    if (this.current) return
    this.current = { layout, verdicts: new Map() }
    // Rows of another place are over: nothing of them comes again.
    this.known = this.known.filter((one) => near(one.layout.saddle.along, layout.saddle.along))
    this.known.push(this.current)
  }

  /** The verdict of a rule on the row turned to, worked out only where none of a row alike is known. */
  verdict(rule: Rule, layout: Layout, work: () => Verdict): Verdict {
    if (BY_STRINGS.has(rule.name)) {
      const before = this.strings.get(rule)
      if (before) return before
      const verdict = work()
      this.strings.set(rule, verdict)
      return verdict
    }
    const alike = SHARED.get(rule.name)
    if (!alike || !this.current) return work()
    const { verdicts } = this.current
    const list = verdicts.get(rule) ?? []
    const before = list.find((one) => one.layout === layout || alike(one.layout, layout))
    if (before) return before.verdict
    const verdict = work()
    list.push({ layout, verdict })
    verdicts.set(rule, list)
    return verdict
  }

  /** The note of the air of the row turned to. */
  note(layout: Layout): Note | null {
    const { current } = this
    if (!current) return soundOf(layout).note
    current.air ??= { note: soundOf(layout).note }
    return current.air.note
  }
}

function near(a: number, b: number): boolean {
  return Math.abs(a - b) <= ALIKE
}

/** Are lid, walls, what stands on them and the neck within the box the same, each from the neck-end face? */
function within(a: Layout, b: Layout): boolean {
  const [at, bt] = [a.box.x0, b.box.x0]
  return (
    near(a.saddle.along, b.saddle.along) &&
    a.design.box === b.design.box &&
    a.placed.length === b.placed.length &&
    a.placed.every((one, index) => one === b.placed[index]) &&
    near(a.neck.x1 - at, b.neck.x1 - bt) &&
    a.neck.cuts.length === b.neck.cuts.length &&
    a.neck.cuts.every((cut, index) => {
      const its = b.neck.cuts[index]
      return its && near(cut.x0 - at, its.x0 - bt) && near(cut.x1 - at, its.x1 - bt) && near(cut.top, its.top)
    })
  )
}

function sameFoot(a: Layout, b: Layout): boolean {
  return a.design.saddle.length === b.design.saddle.length
}

function sameHoles(a: Layout, b: Layout): boolean {
  const [at, bt] = [a.box.x0, b.box.x0]
  return (
    a.tailHoles.length === b.tailHoles.length &&
    a.tailHoles.every((hole, index) => {
      const its = b.tailHoles[index]
      return its && near(hole.x - at, its.x - bt) && near(hole.y, its.y)
    })
  )
}

/** Holes in the tail of the neck are in no face. */
function sameHolesInBox(a: Layout, b: Layout): boolean {
  return a.design.tailpiece.at === 'the tail of the neck' || sameHoles(a, b)
}

/** Does anything stand out before the lid where strings may run? */
function meetsStrings(layout: Layout): boolean {
  const { strings, placed } = layout
  if (!placed.some(({ kind }) => kind.bodies)) return false
  let widest = 0
  for (const { yAtNut, yAtSaddle, tail } of strings)
    widest = Math.max(widest, Math.abs(yAtNut), Math.abs(yAtSaddle), Math.abs(tail?.y ?? 0))
  const reach = widest + BESIDE_STRING
  return standingOut(layout).some(({ minY, maxY }) => minY < reach && maxY > -reach)
}

interface Across {
  readonly minY: number
  readonly maxY: number
}

const known = notes<Placed, readonly Across[]>()

/** What stands out before the lid, across it. Remembered with each thing where it stands. */
function standingOut(layout: Layout): Across[] {
  let solids: ReturnType<typeof thingSolids> | null = null
  return layout.placed.flatMap((placed) => {
    const before = known.get(placed)
    if (before) return before
    solids ??= thingSolids(layout)
    const out = solids.flatMap(({ of, box }) => (of === placed.thing.id && box.maxZ > 0 ? [box] : []))
    known.set(placed, out)
    return out
  })
}

/** A lid that opens meets a board that runs on over it; one that opens towards the neck may meet all of that. */
function sameWayOfLid(a: Layout, b: Layout): boolean {
  const { kind, hingeEdge, slidesTo } = a.design.box.lid
  if ((kind === 'sliding' ? slidesTo : hingeEdge) === 'neck end')
    return near(a.box.x0, b.box.x0) && a.design.headstock === b.design.headstock && sameBoard(a, b)
  return sameBoard(a, b)
}

const sameBoard = (a: Layout, b: Layout): boolean => near(a.board?.overLid ?? 0, b.board?.overLid ?? 0)
