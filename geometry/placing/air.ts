/** Openings made larger or smaller, all by one share, until the air sounds near a wished note. */
import { counts, fieldsOfKind } from '../design/catalogue.ts'
import { apply, change, valueAt } from '../design/changes.ts'
import type { Design, Thing } from '../design/schema.ts'
import { kindOf } from '../kinds/kinds.ts'
import { clean, type FieldSet, shownStep } from '../solve/moves.ts'
import { solve } from '../solve/solve.ts'
import { soundOf } from '../sound/sound.ts'

const LEAST = 0.3
const MOST = 3
/** Halvings of the share: the sizes are rounded to the rule long before. */
const HALVINGS = 12

const SIZES = ['diameter', 'sizeAlong', 'sizeAcross']

/**
 * The design with its openings so large that its air sounds nearest to `hertz`; as it is where none lets the air out or
 * all are locked. More opening sounds higher, so halving finds it.
 */
export function tunedTo(design: Design, hertz: number): Design {
  const hertzOf = (of: Design): number | null => soundOf(solve(of)).note?.hertz ?? null
  if (hertzOf(design) === null) return design
  let [low, high] = [LEAST, MOST]
  for (let turn = 0; turn < HALVINGS; turn++) {
    const middle = Math.sqrt(low * high)
    if ((hertzOf(resized(design, middle)) ?? 0) < hertz) low = middle
    else high = middle
  }
  const near = [low, high].map((share) => resized(design, share))
  const off = (of: Design) => Math.abs(Math.log((hertzOf(of) ?? 1e-3) / hertz))
  return near.reduce((best, one) => (off(one) < off(best) ? one : best), design)
}

function resized(design: Design, share: number): Design {
  const fields = design.things.flatMap((thing, index) => sizesOf(design, thing, index, share))
  return fields.length === 0 ? design : apply(design, change(design, ...fields))
}

const known = new Map<string, ReturnType<typeof fieldsOfKind>>()

function sizesOf(design: Design, thing: Thing, index: number, share: number): FieldSet[] {
  if (thing.locked || !kindOf(thing.kind).air) return []
  const step = shownStep(design.units)
  const fields = known.get(thing.kind) ?? fieldsOfKind(thing.kind)
  known.set(thing.kind, fields)
  return fields.flatMap((field): FieldSet[] => {
    const now = valueAt(thing, [field.name])
    if (!SIZES.includes(field.name) || typeof now !== 'number' || !counts(thing, field)) return []
    const size = Math.round((now * share) / step) * step
    return [
      [['things', index, field.name], clean(Math.max(field.min ?? step, Math.min(field.max ?? size, size)))],
    ]
  })
}
