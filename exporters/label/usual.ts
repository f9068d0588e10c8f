/** A design without what is usual: reading fills it in again, so it need not be carried. */
import { type Design, type Field, fieldsOf, fieldsOfKind, sections, valueAt } from '../../geometry/index.ts'

type Tree = { [key: string]: unknown }

const isUsual = (value: unknown, { standard }: Field): boolean =>
  standard !== undefined && JSON.stringify(value) === JSON.stringify(standard)

function put(tree: Tree, path: readonly string[], value: unknown): void {
  const [key, ...rest] = path
  if (key === undefined) return
  if (rest.length === 0) tree[key] = value
  else {
    tree[key] ??= {}
    put(tree[key] as Tree, rest, value)
  }
}

/**
 * What of a design must be written down so that reading it gives the same design: format, version, and every field that
 * is not as usual. Example: of a design of usual values only format and version are left.
 */
export function withoutUsual(design: Design): unknown {
  const short: Tree = {}
  const keep = (path: readonly string[], field: Field) => {
    const value = valueAt(design, path)
    if (value !== undefined && !isUsual(value, field)) put(short, path, value)
  }
  for (const field of fieldsOf('')) if (field.name !== 'things') keep([field.name], field)
  for (const section of sections())
    for (const field of fieldsOf(section)) keep([section, ...field.name.split('.')], field)
  if (design.things.length > 0) short.things = design.things.map(thingWithoutUsual)
  return { ...short, format: design.format, version: design.version }
}

function thingWithoutUsual(thing: Design['things'][number]): Tree {
  const short: Tree = { kind: thing.kind, id: thing.id }
  for (const field of fieldsOfKind(thing.kind)) {
    const path = field.name.split('.')
    const value = valueAt(thing, path)
    if (value !== undefined && !isUsual(value, field)) put(short, path, value)
  }
  return short
}
