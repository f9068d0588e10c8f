/** From a file, or anything else unknown, to a valid design or a list of plain faults. Never throws. */

import type { z } from 'zod'
import { KINDS, kindOf } from '../kinds/kinds.ts'
import { lidStuffNamed, woodNamed } from '../neck/named-woods.ts'
import { notes } from '../quantity/notes.ts'
import { printable } from '../quantity/printable.ts'
import { terminalsOf } from '../wiring/terminals.ts'
import { idPattern } from './place.ts'
import { pieceFaults } from './read-pieces.ts'
import { type Design, designSchema, VERSION } from './schema.ts'

/** Where something is wrong in a file, and a sentence: what was read, what is wrong, what would do. */
export interface Fault {
  readonly path: string
  readonly sentence: string
}

export type DesignReading =
  | { readonly ok: true; readonly design: Design }
  | { readonly ok: false; readonly faults: readonly Fault[] }

/** Longest file read; a design of ten thousand holes is about 3 million characters. */
const LONGEST_FILE = 20_000_000

/** How many faults are told at once: more than this helps nobody. */
const MOST_FAULTS = 50

const fault = (path: string, sentence: string): DesignReading => ({ ok: false, faults: [{ path, sentence }] })

/**
 * Reads the text of a `*.lidwright.json` file.
 * Example: `readDesign('{"format":"lidwright","version":1}')` is `{ ok: true, design }` with every default.
 */
export function readDesign(text: string): DesignReading {
  if (text.length > LONGEST_FILE)
    return fault(
      '',
      `The file has ${text.length} characters; no design is longer than ${LONGEST_FILE}. Is it the right file?`,
    )
  let value: unknown
  try {
    value = JSON.parse(text.replace(/^\ufeff/, ''))
  } catch (error) {
    return fault(
      '',
      `The file holds no design. It may be cut off, or be another kind of file: what is in it is not JSON text (${whyNotJson(String(error), text)}).`,
    )
  }
  return checkDesign(value)
}

/** What a JSON reader stumbled over: its own words without the stretch of text that it repeats, and the line where it tells. */
function whyNotJson(words: string, text: string): string {
  const at = /position (\d+)/.exec(words)?.[1]
  const why = words.replace(/^\w+: |,? (?:\.\.\.)?".*$| (?:in JSON|at position).*$/gsu, '')
  const line = at === undefined ? '' : `, line ${text.slice(0, Number(at)).split('\n').length}`
  return `${shorten(why)}${line}`
}

/** The same for a value already parsed. The answer is a new, complete value; the one given stays as it was. */
export function checkDesign(value: unknown): DesignReading {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return fault('', `A design is an object in braces; read ${show(value)}.`)
  const head = value as Record<string, unknown>
  if (head.format !== 'lidwright')
    return fault(
      'format',
      `A design says "format": "lidwright"; read ${show(head.format)}. Is it the right file?`,
    )
  if (typeof head.version === 'number' && head.version > VERSION)
    return fault(
      'version',
      `The file is of version ${head.version}; this program reads up to ${VERSION}. It was left untouched: open it with a newer Lidwright.`,
    )
  // Without code made for the schema: a design is read once, and a page that forbids such code need not be asked.
  const parsed = designSchema.safeParse(value, { reportInput: true, jitless: true })
  if (!parsed.success)
    return {
      ok: false,
      faults: parsed.error.issues.flatMap((issue) => faultsOf(issue, value)).slice(0, MOST_FAULTS),
    }
  return beyondSchema(parsed.data)
}

/**
 * Judges some things by themselves, as a frame of a drag must among thousands: each as the whole reading would, but not
 * whether their ids are taken.
 * Example: `checkThings([{ kind: 'sound-hole', id: 'hole', diameter: -1 }]).ok` is `false`.
 */
export function checkThings(
  things: readonly unknown[],
): { readonly ok: true; readonly things: Design['things'] } | Extract<DesignReading, { ok: false }> {
  const parsed = designSchema.shape.things.safeParse(things, { reportInput: true, jitless: true })
  const faults = parsed.success
    ? kindFaults({ things: parsed.data })
    : parsed.error.issues.flatMap((issue) => faultsOf(issue, things))
  if (faults.length > 0 || !parsed.success) return { ok: false, faults: faults.slice(0, MOST_FAULTS) }
  return { ok: true, things: parsed.data }
}

const asRead = notes<Design, true>()

/** Is it the very value that reading gave: valid, complete, its fields in the order of the schema? */
export const isAsRead = (design: Design): boolean => asRead.get(design) === true

/** What a schema of single fields cannot say. */
function beyondSchema(design: Design): DesignReading {
  const seen = new Map<string, number>()
  const faults: Fault[] = []
  design.things.forEach((thing, index) => {
    const first = seen.get(thing.id)
    if (first === undefined) seen.set(thing.id, index)
    else
      faults.push({
        path: `things[${index}].id`,
        sentence: `The id "${thing.id}" is already that of things[${first}]; every thing needs its own.`,
      })
  })
  faults.push(...pieceFaults(design), ...woodFaults(design), ...kindFaults(design), ...wiringFaults(design))
  if (faults.length > 0) return { ok: false, faults: faults.slice(0, MOST_FAULTS) }
  asRead.set(design, true)
  return { ok: true, design }
}

/** What a kind says of its own fields: a curve that crosses itself. */
function kindFaults({ things }: Pick<Design, 'things'>): Fault[] {
  return things.flatMap((thing) => {
    const sentence = kindOf(thing.kind).fault?.(thing) ?? null
    return sentence === null ? [] : [{ path: `things.${thing.id}`, sentence }]
  })
}

/** Every wood that is named must be one, and an own wood must have a name of its own. */
function woodFaults({ woods, neck, board, brace, box, balance }: Design): Fault[] {
  const faults: Fault[] = []
  woods.forEach(({ name }, index) => {
    const taken = lidStuffNamed(name, []) !== null || woods.findIndex((one) => one.name === name) < index
    if (taken)
      faults.push({
        path: `woods[${index}].name`,
        sentence: `Read ${show(name)}; there is already a wood of that name. Give yours another.`,
      })
  })
  const unknown = (path: string, name: string, more: string): Fault => ({
    path,
    sentence: `Read ${show(name)}; no wood is called so. Name one of the table, such as "maple, sugar" or "cherry"${more}, or add it to your own woods.`,
  })
  for (const [path, name] of [
    ['neck.wood', neck.wood],
    ['board.wood', board.wood],
    ['brace.wood', brace.wood],
  ] as const)
    if (!woodNamed(name, woods)) faults.push(unknown(path, name, ''))
  for (const [path, name] of [
    ['box.lid.stuff', box.lid.stuff],
    ['balance.walls', balance.walls],
  ] as const)
    if (!lidStuffNamed(name, woods)) faults.push(unknown(path, name, ', or "plywood"'))
  return faults
}

/** Every component has an id of its own, and every wire leads from one terminal that is there to another. */
function wiringFaults({ wiring }: Design): Fault[] {
  const terminals = new Set<string>()
  const ids = new Set<string>()
  const faults: Fault[] = []
  wiring.components.forEach((one, index) => {
    if (ids.has(one.id))
      faults.push({
        path: `wiring.components[${index}].id`,
        sentence: `The id "${one.id}" is already that of another component; every one needs its own.`,
      })
    ids.add(one.id)
    for (const terminal of terminalsOf(one)) terminals.add(`${one.id}.${terminal}`)
  })
  wiring.wires.forEach((wire, index) => {
    for (const end of ['from', 'to'] as const) {
      if (terminals.has(wire[end])) continue
      const component = wiring.components.find(({ id }) => id === wire[end].split('.')[0])
      const would = component
        ? `${component.id} has ${terminalsOf(component).join(', ')}`
        : 'no component is called so'
      faults.push({
        path: `wiring.wires[${index}].${end}`,
        sentence: `Read ${show(wire[end])}; there is no such terminal: ${would}.`,
      })
    }
    if (wire.from === wire.to)
      faults.push({
        path: `wiring.wires[${index}].to`,
        sentence: `Read ${show(wire.to)}; this wire begins and ends at one terminal. Name another, or leave it out.`,
      })
  })
  return faults
}

/** What the fields that tell variants apart may hold, for the sentence. */
const UNION_OPTIONS: Record<string, object> = { kind: KINDS, by: { equal: 1, steps: 1, cents: 1, ratios: 1 } }

function faultsOf(issue: z.core.$ZodIssue, root: unknown): Fault[] {
  const path = pathText(issue.path, root)
  const read = show(issue.input)
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        path: path ? `${path}.${named(key)}` : named(key),
        sentence: `There is no field called "${shorten(key)}" here. Check its spelling, or leave it out.`,
      }))
    case 'invalid_type':
      if (issue.input === undefined)
        return [{ path, sentence: `This field is missing; ${wanted(issue.expected)} is wanted.` }]
      return [{ path, sentence: `Read ${read}; ${wanted(issue.expected)} is wanted.` }]
    case 'too_small':
    case 'too_big': {
      const limit = issue.code === 'too_small' ? issue.minimum : issue.maximum
      const side = issue.code === 'too_small' ? 'at least' : 'at most'
      if (issue.origin === 'string')
        return [
          {
            path,
            sentence: `The text is too ${issue.code === 'too_small' ? 'short' : 'long'}; ${side} ${limit} characters are wanted.`,
          },
        ]
      if (issue.origin === 'array')
        return [
          {
            path,
            sentence: `The list has ${(issue.input as unknown[] | undefined)?.length ?? 0} entries; ${side} ${limit} are wanted.`,
          },
        ]
      const more = issue.inclusive === false ? (issue.code === 'too_small' ? 'more than' : 'less than') : side
      return [{ path, sentence: `Read ${read}; ${more} ${limit} is wanted.` }]
    }
    case 'invalid_value':
      return [
        {
          path,
          sentence: `Read ${read}; wanted is ${issue.values.map((one) => JSON.stringify(one)).join(' or ')}.`,
        },
      ]
    case 'invalid_union':
      if (issue.discriminator)
        return [
          {
            path,
            sentence: `Read ${show((issue.input as Record<string, unknown> | undefined)?.[issue.discriminator])} as "${issue.discriminator}"; wanted is one of ${Object.keys(UNION_OPTIONS[issue.discriminator] ?? {}).join(', ')}.`,
          },
        ]
      return [{ path, sentence: placeSentence(issue, read) }]
    case 'invalid_key':
      return [{ path, sentence: `The name "${shorten(String(issue.path.at(-1)))}" is too long here.` }]
    case 'custom':
      if (issue.params?.whole === true) return [{ path, sentence: issue.message }]
      return [{ path, sentence: `Read ${read}; it ${issue.message}.` }]
    case 'invalid_format':
      return [{ path, sentence: `Read ${read}; it ${issue.message}.` }]
    default:
      return [{ path, sentence: `Read ${read}; ${issue.message}.` }]
  }
}

/** Unions are places, or lists of a few numbers; a hint from the branch that came nearest says most. */
function placeSentence(issue: z.core.$ZodIssueInvalidUnion, read: string): string {
  const literals = issue.errors.flat().filter((one) => one.code === 'invalid_value')
  if (literals.length > 0 && literals.length === issue.errors.length)
    return `Read ${read}; wanted is one of ${literals.flatMap((one) => one.values).join(', ')}.`
  const custom = issue.errors.flat().find((one) => one.code === 'custom' || one.code === 'invalid_format')
  if (custom) return `Read ${read}; ${show(custom.input)} ${custom.message}.`
  return `Read ${read}; a place is a number of millimetres, or one of {"share": 0.5}, {"midway": ["…", "…"]}, {"ofScale": 0.25} along the face, {"mirror": "id"}, {"from": "id", "by": 12}.`
}

const WANTED: Record<string, string> = {
  number: 'a number',
  int: 'a whole number',
  string: 'text in quotes',
  boolean: 'true or false',
  object: 'an object in braces',
  array: 'a list in brackets',
  record: 'an object in braces',
}
const wanted = (expected: string) => WANTED[expected] ?? expected

function pathText(path: readonly PropertyKey[], root: unknown): string {
  let text = ''
  let here = root
  for (const step of path) {
    here = (here as Record<PropertyKey, unknown> | undefined)?.[step]
    if (typeof step === 'number') {
      const id = (here as { id?: unknown } | undefined)?.id
      text += typeof id === 'string' && idPattern.test(id) ? `.${id}` : `[${step}]`
    } else text += text ? `.${named(String(step))}` : named(String(step))
  }
  return text
}

/** A field within a path; one without a name still has a place, and one with a dot in it is no two fields. */
const named = (field: string) => (/^$|\./.test(field) ? `"${shorten(field)}"` : shorten(field))

const shorten = (text: string) => printable(text.length > 60 ? `${text.slice(0, 57)}…` : text)

/** A value as it stood in the file, short enough for a sentence. */
function show(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (typeof value === 'number') return String(value)
  try {
    return shorten(JSON.stringify(value) ?? String(value))
  } catch {
    return 'something unreadable'
  }
}
