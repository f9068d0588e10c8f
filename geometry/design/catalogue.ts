/** What each field is, read from the schema once: for the inspector, the command line and the documentation. */
import { z } from 'zod'
import { designSchema } from './schema.ts'

export interface Field {
  /** Dotted path inside its section, as in `lid.thickness`. */
  readonly name: string
  /** Where the schema has it: `box.lid.thickness`, `things.pot.knob`, `box.inside.along`. */
  readonly address: string
  readonly label: string
  readonly help: string
  readonly unit: string
  readonly standard: unknown
  readonly min?: number
  readonly max?: number
  readonly options?: readonly (string | number)[]
  readonly when?: Readonly<Record<string, readonly (string | boolean)[]>>
}

interface Node {
  type?: string
  title?: string
  description?: string
  unit?: string
  default?: unknown
  minimum?: number
  maximum?: number
  exclusiveMinimum?: number
  const?: unknown
  enum?: (string | number)[]
  when?: Field['when']
  properties?: Record<string, Node>
  items?: Node
  oneOf?: Node[]
  anyOf?: Node[]
}

let cached: Node | undefined
function tree(): Node {
  cached ??= z.toJSONSchema(designSchema, { io: 'input', unrepresentable: 'any' }) as Node
  return cached
}

/** Sections of the design that hold fields, in the order of the file: `box`, `scale` … */
export function sections(): string[] {
  return Object.entries(tree().properties ?? {})
    .filter(([, node]) => node.properties && node.type === 'object')
    .map(([name]) => name)
}

/**
 * The fields of a section, nested ones by their dotted names; `''` is the top of the file.
 * Example: `fieldsOf('box')[0]` is the length, with its limits and its help.
 * Throws for a section that does not exist.
 */
export function fieldsOf(section: string): Field[] {
  const node = section
    .split('.')
    .filter(Boolean)
    .reduce<Node | undefined>((here, key) => here?.properties?.[key], tree())
  if (!node?.properties) throw new Error(`a design has no section called "${section}"`)
  return collect(node, '', section === '', section === '' ? '' : `${section}.`)
}

/** The fields of one kind of thing, common ones first. Throws for an unknown kind. */
export function fieldsOfKind(kind: string): Field[] {
  const kinds = tree().properties?.things?.items
  const node = (kinds?.oneOf ?? kinds?.anyOf ?? []).find((one) => one.properties?.kind?.const === kind)
  if (!node) throw new Error(`there is no kind of thing called "${kind}"`)
  return collect(node, '', false, `things.${kind}.`).filter((field) => field.name !== 'kind')
}

/**
 * The fields of one entry of a list of objects, by the list's dotted path: `stringing.makes`, `record.built`.
 * Throws for a path that is no such list.
 */
export function fieldsOfEntry(list: string): Field[] {
  const node = list.split('.').reduce<Node | undefined>((here, key) => here?.properties?.[key], tree())
  if (!node?.items?.properties) throw new Error(`a design has no list of entries called "${list}"`)
  return collect(node.items, '', false, `${list}.`)
}

/** Lists whose entries are objects with fields of their own, things left aside. */
export const ENTRY_LISTS = [
  'stringing.makes',
  'stringing.stock',
  'woods',
  'measures',
  'photos',
  'record.built',
  'record.history',
  'box.inside',
  'artwork',
] as const

/** Does the field count, as its neighbours stand? A bevel does not where the lid lifts off. */
export const counts = (neighbours: unknown, { when = {} }: Field): boolean =>
  Object.entries(when).every(([key, values]) =>
    values.includes((neighbours as Record<string, string | boolean> | undefined)?.[key] as string),
  )

/** `box, depth`; a label that names its section already stays as it is. */
export function labelOf(section: string, label: string): string {
  const low = label.charAt(0).toLowerCase() + label.slice(1)
  return low.startsWith(section) ? low : `${section}, ${low}`
}

function collect(node: Node, prefix: string, shallow: boolean, home: string): Field[] {
  return Object.entries(node.properties ?? {}).flatMap(([key, child]) => {
    if (child.properties && child.type === 'object')
      return shallow ? [] : collect(child, `${prefix}${key}.`, false, home)
    return [fieldOf(`${prefix}${key}`, home, child)]
  })
}

function fieldOf(name: string, home: string, node: Node): Field {
  const options =
    node.enum ?? node.anyOf?.flatMap((one) => (one.const === undefined ? [] : [one.const as number]))
  const min = node.minimum ?? node.exclusiveMinimum
  return {
    name,
    address: `${home}${name}`,
    label: node.title ?? name,
    help: node.description ?? '',
    unit: node.unit ?? (node.const === undefined ? 'text' : 'fixed'),
    standard: node.const ?? node.default,
    ...(min === undefined ? {} : { min }),
    ...(node.maximum === undefined ? {} : { max: node.maximum }),
    ...(options && options.length > 0 ? { options } : {}),
    ...(node.when ? { when: node.when } : {}),
  }
}
