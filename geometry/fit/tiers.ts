/**
 * Rules in the order in which a row is held against them, and what each of them looks at: what is alike in many rows is
 * measured once. While the saddle stays where it is on the lid, a longer scale or another string leaves lid, walls, what
 * hangs behind them and the neck within the box as they were; while the strings stay, so does the head, wherever the box lies.
 *
 * A rule that stands in no list here is measured anew for every row: slower, never wrong.
 */
import type { Rule } from '../checks/finding.ts'
import { RULES } from '../checks/rules.ts'
import { notes } from '../quantity/notes.ts'
import { thingSolids } from '../solids/bodies.ts'
import type { Layout, Placed } from '../solve/layout.ts'
import { isAsked } from './judged.ts'

/** Are two rows, alike within the box, alike in the rest that a rule looks at? */
export type Alike = (a: Layout, b: Layout) => boolean

/**
 * Rules that share what they measure. `place`: all of them among rows alike within the box. `strings`: all of them among the
 * rows of one set of strings. `alike`: each by itself, among rows alike within the box and in what else it looks at.
 */
export type Tier =
  | { readonly by: 'place' | 'strings' | 'row'; readonly rules: readonly Rule[] }
  | { readonly by: 'alike'; readonly rules: readonly { readonly rule: Rule; readonly alike: Alike }[] }

/** Rules that look at walls, lid, base and the neck within them: told first, for they forbid most. */
const BOX = [
  ...['box-has-inside', 'survey-makes-box', 'room-under-neck', 'wall-under-slot', 'wall-beside-slot'],
  ...['neck-left', 'place-followed'],
]

/** Rules that look at strings, nut and head, and not at where the box lies. */
const STRINGS = [
  ...['posts-for-strings', 'tail-holes-for-strings', 'tail-to-hold', 'string-can-be-made'],
  ...['string-breaking', 'string-slack', 'string-high', 'pull-slackest', 'pull-tightest'],
  ...['strings-apart-at-nut', 'strings-apart-at-saddle', 'side-angle-at-nut', 'break-angle-at-nut'],
  ...['first-post', 'posts-on-head', 'head-on-blank', 'head-from-blank', 'string-past-post'],
  ...['strings-cross-at-head', 'tuner-knobs', 'knob-to-head', 'tuners-apart', 'wood-in-head', 'scarf-glued'],
  ...['tail-hole-web', 'saddle-setback', 'saddle-low', 'saddle-tall', 'action-as-wanted', 'saddle-line'],
]

/** Rules that look at what is placed on a face and behind it, and at nothing before the box. */
const FACES = [
  ...['opening-to-edge', 'opening-to-neck', 'opening-to-wall', 'opening-to-inside', 'room-under-hardware'],
  ...['rim-depth', 'rim-ledge', 'recess-left', 'rosette-holes', 'rosette-web', 'thread-through', 'bore-wide'],
  ...['face-for-bushing', 'shaft-in-knob', 'knob-off-face', 'cover-on-face', 'covers-apart', 'screw-holds'],
  ...[
    'screw-beside',
    'screw-point',
    'head-flush',
    'inside-fits',
    'inside-clear-of-neck',
    'neck-block-height',
  ],
  ...['brace-clear'],
]

/** Rules that look at faces and at what is named here. */
const FACES_AND: readonly (readonly [string, Alike])[] = [
  ['saddle-on-lid', sameFoot],
  ['saddle-to-tail-wall', sameFoot],
  ['saddle-to-opening', sameFoot],
  ['tail-hole-to-end', sameHoles],
  ['between-openings', sameHolesInBox],
  ['artwork-kept', sameHolesInBox],
  ['parts-clear', (a, b) => sameHoles(a, b) && !meetsStrings(a) && !meetsStrings(b)],
  ['lid-clears', sameWayOfLid],
  ['lid-reach', sameWayOfLid],
  ['hinge-parallel', sameWayOfLid],
]

/** Of the rules that are measured for every row these cost next to nothing and forbid most. */
const ROW_FIRST = ['board-behind-last-fret', 'board-over-lid']

/** Every rule that is asked, once. */
export const TIERS: readonly Tier[] = tiers()

function tiers(): Tier[] {
  const asked = new Map(RULES.filter(isAsked).map((rule) => [rule.name, rule]))
  const taken = (names: readonly string[]): Rule[] =>
    names.flatMap((name) => {
      const rule = asked.get(name)
      if (!rule) throw new Error(`the fit table knows of a rule "${name}", and there is none`)
      asked.delete(name)
      return [rule]
    })
  return [
    { by: 'place', rules: taken(BOX) },
    { by: 'strings', rules: taken(STRINGS) },
    { by: 'place', rules: taken(FACES) },
    {
      by: 'alike',
      rules: FACES_AND.flatMap(([name, alike]) => taken([name]).map((rule) => ({ rule, alike }))),
    },
    { by: 'row', rules: [...taken(ROW_FIRST), ...asked.values()] },
  ]
}

/** Millimetres: what differs by less is alike. */
const ALIKE = 1e-7
/** Pairs with more room than this are no conflict, as `solids/conflicts.ts` has it; and half a thick string. */
const BESIDE_STRING = 3 + 3

export function near(a: number, b: number): boolean {
  return Math.abs(a - b) <= ALIKE
}

/** Are lid, walls, what stands on them and the neck within the box the same, each from the neck-end face? */
export function within(a: Layout, b: Layout): boolean {
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
