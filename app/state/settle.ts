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
  const reading =
    checking === 'what changed' && sameIds(before, wished) ? checkPart(before, wished) : checkDesign(wished)
  if (!reading.ok)
    return { ok: false, sentence: reading.faults[0]?.sentence ?? 'This is no complete design.' }
  const smallest = difference(before, sharing(wished, reading.design) as Design)
  if (smallest.edits.length === 0) return { ok: true, design: before, change: smallest }
  return { ok: true, design: freeze(apply(before, smallest)), change: smallest }
}

function sameIds(before: Design, wished: Design): boolean {
  return (
    Array.isArray(wished?.things) &&
    before.things.length === wished.things.length &&
    before.things.every(
      (thing, index) => thing === wished.things[index] || thing.id === wished.things[index]?.id,
    )
  )
}

/**
 * The schema judges each thing for itself, so things that were valid and are the same need no second look, and where
 * nothing but things is another, nor does anything else.
 */
function checkPart(before: Design, wished: Design): ReturnType<typeof checkDesign> {
  const places = wished.things.flatMap((thing, index) => (thing === before.things[index] ? [] : index))
  const news = places.flatMap((index) => wished.things[index] ?? [])
  const judged = (things: Design['things']): Design['things'] => {
    const all = [...wished.things]
    for (const [which, index] of places.entries()) all[index] = things[which] ?? all[index]!
    return all
  }
  if (onlyThings(before, wished)) {
    const reading = checkThings(news)
    return reading.ok ? { ok: true, design: { ...wished, things: judged(reading.things) } } : reading
  }
  const reading = checkDesign({ ...wished, things: news })
  return reading.ok
    ? { ok: true, design: { ...reading.design, things: judged(reading.design.things) } }
    : reading
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
