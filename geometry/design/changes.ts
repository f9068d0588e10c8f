/**
 * A change as a value: it can be applied, taken back, joined to another and saved as JSON.
 * Designs are never altered in place; what a change does not touch is shared with the design before it.
 */
import { tellOthers } from '../quantity/steady.ts'
import type { Design } from './schema.ts'

/** Keys from the root; a number is an index into a list. */
export type Path = readonly (string | number)[]

/** One field set. `before` or `after` is left out where the field was, or will be, absent. */
export interface Edit {
  readonly path: Path
  readonly before?: unknown
  readonly after?: unknown
}

export interface Change {
  readonly edits: readonly Edit[]
}

const FORBIDDEN = new Set(['__proto__', 'constructor', 'prototype'])

/** The value at a path, `undefined` where nothing is. */
export function valueAt(root: unknown, path: Path): unknown {
  let here = root
  for (const key of path) {
    if (here === null || typeof here !== 'object' || !Object.hasOwn(here, key)) return undefined
    here = (here as Record<PropertyKey, unknown>)[key]
  }
  return here
}

/**
 * Sets one field and remembers what was there. Example: `edit(design, ['box', 'length'], 250)`.
 * An `after` of `undefined` takes the field away.
 */
export function edit(design: Design, path: Path, after: unknown): Edit {
  const before = valueAt(design, path)
  return {
    path,
    ...(before === undefined ? {} : { before }),
    ...(after === undefined ? {} : { after }),
  }
}

/** A change of several fields of one design. */
export const change = (design: Design, ...fields: readonly (readonly [Path, unknown])[]): Change => ({
  edits: fields.map(([path, after]) => edit(design, path, after)),
})

/** The design after the change. The result is not validated: `checkDesign` does that. */
export function apply(design: Design, { edits }: Change): Design {
  const made: Made = new Map()
  const changed = edits.reduce<unknown>((root, one) => setAt(root, one.path, one, made), design) as Design
  for (const [list, copied] of made) if (copied) tellOthers(list as unknown[], copied.from, copied.others)
  return changed
}

/** The change that takes this one back. */
export const invert = ({ edits }: Change): Change => ({
  edits: [...edits].reverse().map(({ path, ...values }) => ({
    path,
    ...('after' in values ? { before: values.after } : {}),
    ...('before' in values ? { after: values.before } : {}),
  })),
})

/** First one change, then the next, as one. Edits of the same field melt together, so a long drag stays short. */
export function compose(first: Change, next: Change): Change {
  const edits = [...first.edits]
  for (const one of next.edits) {
    const last = edits.at(-1)
    // What the last edit left there is what this one starts from: in a list both then speak of the same entry.
    if (last && samePath(last.path, one.path) && 'after' in last === 'before' in one) {
      const { after: _dropped, ...kept } = last
      edits[edits.length - 1] = { ...kept, ...('after' in one ? { after: one.after } : {}) }
    } else edits.push(one)
  }
  return { edits: edits.filter((one) => !Object.is(one.before, one.after)) }
}

export const isEmpty = ({ edits }: Change) => edits.every((one) => Object.is(one.before, one.after))

const samePath = (a: Path, b: Path) => a.length === b.length && a.every((key, index) => key === b[index])

/**
 * What was made for one change, and nobody else's yet: a list of thousands is copied once, however many edits touch it.
 * With a list that has the entries of the one it was copied `from` but for `others`; `null` where some came or went.
 */
type Made = Map<unknown, Copied | null>

interface Copied {
  readonly from: readonly unknown[]
  readonly others: number[]
}

function setAt(root: unknown, path: Path, one: Edit, made: Made): unknown {
  const [key, ...rest] = path
  if (key === undefined) return one.after
  if (FORBIDDEN.has(String(key))) throw new Error(`a design has no field called "${String(key)}"`)
  if (root === null || typeof root !== 'object') throw new Error(`nothing to set "${path.join('.')}" on`)
  const below = setAt((root as Record<PropertyKey, unknown>)[key], rest, one, made)
  if (Array.isArray(root)) {
    if (typeof key !== 'number') throw new Error(`a list wants an index, not "${key}"`)
    const isOwn = made.has(root)
    const list = isOwn ? root : root.slice()
    let copied: Copied | null | undefined = isOwn ? made.get(root) : { from: root, others: [] }
    if (below === undefined) list.splice(key, 1)
    // Where nothing was before, the entry goes in between and what follows moves up: the inverse of a removal.
    else if (rest.length === 0 && !('before' in one)) list.splice(key, 0, below)
    else list[key] = below
    if (copied && list.length !== copied.from.length) copied = null
    if (copied && !copied.others.includes(key)) copied.others.push(key)
    made.set(list, copied ?? null)
    return list
  }
  const record: Record<PropertyKey, unknown> = made.has(root)
    ? (root as Record<PropertyKey, unknown>)
    : { ...root }
  made.set(record, null)
  if (below === undefined) delete record[key]
  else record[key] = below
  return record
}
