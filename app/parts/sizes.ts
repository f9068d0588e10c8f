/**
 * Which fields of a thing its size hangs on, found by trying: a length that makes it so much longer when it is made so
 * much larger. Nothing here knows the kinds, so a new kind gets its handles by itself.
 */
import { type Field, fieldsOfKind, kindOf, notes, type Thing, valueAt } from '../../geometry/index.ts'

export interface SizeFields {
  readonly along: Field | null
  readonly across: Field | null
}

type Values = Readonly<Record<string, unknown>>

const known = new Map<string, readonly Field[]>()

function lengthsOf(kind: string): readonly Field[] {
  const before = known.get(kind)
  if (before) return before
  const fields = fieldsOfKind(kind).filter((field) => field.unit === 'mm')
  known.set(kind, fields)
  return fields
}

const isWanted = (values: Values, { when = {} }: Field) =>
  Object.entries(when).every(([key, wanted]) => wanted.includes(valueAt(values, [key]) as string | boolean))

const found = notes<Thing, SizeFields>()

/** The field that sets each extent; `null` where none does, as for a piece of hardware of fixed size. */
export function sizeFieldsOf(thing: Thing): SizeFields {
  const before = found.get(thing)
  if (before) return before
  const kind = kindOf(thing.kind)
  const size = kind.size(thing)
  let along: Field | null = null
  let across: Field | null = null
  for (const field of lengthsOf(thing.kind)) {
    const value = (thing as Values)[field.name]
    if (typeof value !== 'number' || !isWanted(thing as Values, field)) continue
    const larger = kind.size({ ...thing, [field.name]: value + 1 } as Thing)
    if (!along && Math.abs(larger.along - size.along - 1) < 1e-9) along = field
    if (!across && Math.abs(larger.across - size.across - 1) < 1e-9) across = field
  }
  const fields = { along, across }
  found.set(thing, fields)
  return fields
}

/** Within what the field takes. */
export const within = (field: Field, mm: number): number =>
  Math.min(field.max ?? Number.POSITIVE_INFINITY, Math.max(field.min ?? 0, mm))
