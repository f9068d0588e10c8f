/**
 * From a wish to a valid design: a change is applied, the result is checked as if it came from a file, and what
 * comes out is the design with the smallest change that leads to it. So history never holds an edit that changes
 * nothing, a field left out gets its default, and what was not touched stays the very same object.
 */
import {
  apply,
  type Change,
  checkDesign,
  checkThings,
  type Design,
  type Edit,
  othersThan,
  type Path,
} from '../../geometry/index.ts'
import { freeze } from './freeze.ts'

export type Settled =
  | { readonly ok: true; readonly design: Design; readonly change: Change }
  | { readonly ok: false; readonly sentence: string }

/**
 * `before` with the change, valid and complete, or the sentence of the first fault. Where nothing changes the design
 * is `before` itself and the change is empty.
 *
 * `checking: 'what changed'` skips the things that are the same as before, which a drag among thousands needs in
 * every frame; it falls back to everything where things come, go or are renamed.
 * Example: `settle(design, change(design, [['box', 'length'], 250]))`.
 * Throws for a path that no design has.
 */
export function settle(
  before: Design,
  change: Change,
  { checking = 'everything' }: { readonly checking?: 'everything' | 'what changed' } = {},
): Settled {
  const wished = apply(before, change)
  const places = checking === 'what changed' ? changedThings(before, wished) : null
  const reading = places ? editsOfPart(before, wished, places) : editsOfAll(before, wished)
  if (!reading.ok)
    return { ok: false, sentence: reading.faults[0]?.sentence ?? 'This is no complete design.' }
  const smallest: Change = { edits: reading.edits }
  if (smallest.edits.length === 0) return { ok: true, design: before, change: smallest }
  return { ok: true, design: freeze(reading.asWished ? wished : apply(before, smallest)), change: smallest }
}

type Refused = Extract<ReturnType<typeof checkDesign>, { ok: false }>
interface Read {
  readonly ok: true
  readonly edits: readonly Edit[]
  /** What was wished is what is valid, to the last object: it need not be made again. */
  readonly asWished?: boolean
}
type Reading = Read | Refused

function editsOfAll(before: Design, wished: Design): Reading {
  const reading = checkDesign(wished)
  return reading.ok
    ? { ok: true, edits: difference(before, sharing(wished, reading.design) as Design).edits }
    : reading
}

/**
 * Numbers of the things that are others than before, where all are still called the same; else `null`. It looks at
 * thousands in every frame of a drag: nothing is made for those that are the same.
 */
function changedThings(before: Design, wished: Design): readonly number[] | null {
  if (!Array.isArray(wished?.things)) return null
  const [were, are] = [before.things, wished.things]
  const others = othersThan(are, were)
  const alike = others?.every((index) => were[index]?.id === are[index]?.id)
  return others && alike && others.length <= MANY_EDITS ? others : null
}

/**
 * The schema judges each thing for itself, so things that were valid and are the same need no second look, and where
 * nothing but things is another, nor does anything else.
 */
function editsOfPart(before: Design, wished: Design, places: readonly number[]): Reading {
  const news = places.map((index) => wished.things[index]!)
  const edits: Edit[] = []
  let judged: Design['things']
  // Of other sections a field that is left out gets its default: what is valid then is not what was wished.
  let asWished = onlyThings(before, wished)
  if (asWished) {
    const reading = checkThings(news)
    if (!reading.ok) return reading
    judged = reading.things
  } else {
    const reading = checkDesign({ ...wished, things: news })
    if (!reading.ok) return reading
    judged = reading.design.things
    const bare = (design: Design): Design => ({ ...design, things: [] })
    edits.push(...difference(bare(before), sharing(bare(wished), bare(reading.design)) as Design).edits)
  }
  for (const [which, index] of places.entries()) {
    const thing = sharing(wished.things[index], judged[which])
    asWished &&= thing === wished.things[index]
    edits.push(...editsBetween(before.things[index], thing, ['things', index]))
  }
  return edits.length > MANY_EDITS ? editsOfAll(before, wished) : { ok: true, edits, asWished }
}

function onlyThings(before: Design, wished: Design): boolean {
  const names = Object.keys(wished) as (keyof Design)[]
  return (
    names.length === Object.keys(before).length &&
    names.every((name) => name === 'things' || wished[name] === before[name])
  )
}

/** The checked value, made of the offered one's own objects wherever the two are alike. */
function sharing(offered: unknown, checked: unknown): unknown {
  // JSON has no negative zero: it would not come back from the file.
  if (checked === 0) return 0
  if (Object.is(offered, checked)) return offered
  if (Array.isArray(offered) && Array.isArray(checked)) {
    const shared = checked.map((value, index) => sharing(offered[index], value))
    const alike =
      offered.length === shared.length && shared.every((value, index) => Object.is(value, offered[index]))
    return alike ? offered : shared
  }
  if (isRecord(offered) && isRecord(checked)) {
    const entries = Object.entries(checked).map(
      ([key, value]) => [key, sharing(own(offered, key), value)] as const,
    )
    const alike =
      entries.length === Object.keys(offered).length &&
      entries.every(([key, value]) => Object.is(value, own(offered, key)))
    return alike ? offered : Object.fromEntries(entries)
  }
  return checked
}

/** Keys that a path may not hold; what has one is replaced whole. */
const UNSPEAKABLE = new Set(['__proto__', 'constructor', 'prototype'])

/** More edits than this within one list, and the list is replaced whole: each edit copies it once. */
const MANY_EDITS = 100

/** The smallest change that leads from one design to another. Example: `difference(design, design).edits` is `[]`. */
export function difference(before: Design, after: Design): Change {
  return { edits: editsBetween(before, after, []) }
}

function editsBetween(before: unknown, after: unknown, path: Path): Edit[] {
  if (Object.is(before, after)) return []
  if (Array.isArray(before) && Array.isArray(after)) return listEdits(before, after, path)
  if (isRecord(before) && isRecord(after)) {
    const keys = new Set([...Object.keys(before), ...Object.keys(after)])
    const edits = [...keys].flatMap((key) => editsBetween(own(before, key), own(after, key), [...path, key]))
    const speakable = edits.every((one) => !UNSPEAKABLE.has(String(one.path[path.length])))
    return speakable ? edits : [whole(before, after, path)]
  }
  return [whole(before, after, path)]
}

function listEdits(before: readonly unknown[], after: readonly unknown[], path: Path): Edit[] {
  const common = Math.min(before.length, after.length)
  if (before.length !== after.length) {
    const starts = before.slice(0, common).every((value, index) => Object.is(value, after[index]))
    if (!starts || Math.abs(before.length - after.length) > MANY_EDITS) return [whole(before, after, path)]
    if (after.length > common)
      return after.slice(common).map((value, index) => whole(undefined, value, [...path, common + index]))
    return before
      .slice(common)
      .map((value, index) => whole(value, undefined, [...path, common + index]))
      .reverse()
  }
  const edits: Edit[] = []
  // Of thousands mostly one is another: nothing is made for those that are the same.
  before.forEach((value, index) => {
    if (!Object.is(value, after[index])) edits.push(...editsBetween(value, after[index], [...path, index]))
  })
  return edits.length > MANY_EDITS ? [whole(before, after, path)] : edits
}

const whole = (before: unknown, after: unknown, path: Path): Edit => ({
  path,
  ...(before === undefined ? {} : { before }),
  ...(after === undefined ? {} : { after }),
})

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const own = (record: Record<string, unknown>, key: string): unknown =>
  Object.hasOwn(record, key) ? record[key] : undefined
