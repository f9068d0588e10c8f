/** A design without what is usual: reading fills it in again, so it need not be carried. */
import { checkDesign, type Design, designText, VERSION } from '../../geometry/index.ts'

type Plain = Readonly<{ [key: string]: unknown }>

const HEAD = { format: 'lidwright', version: VERSION } as const

/**
 * What of a design must be written down so that reading it gives the same design: format, version, and whatever is not
 * as usual. Example: of a design of usual values only format and version are left.
 */
export function withoutUsual(design: Design): unknown {
  const usual = checkDesign(HEAD)
  if (!usual.ok) throw new Error(`the design of usual values is not valid: ${usual.faults[0]?.sentence}`)
  const short = {
    ...(left(design, usual.design) as Plain | undefined),
    ...(design.things.length > 0 ? { things: shortThings(design) } : {}),
    ...HEAD,
  }
  // What is read back decides: a field whose usual value hangs on another one would come back as something else.
  const read = checkDesign(short)
  return read.ok && designText(read.design) === designText(design) ? short : design
}

/** Things without what their kind has anyway. */
function shortThings({ things }: Design): unknown[] {
  const kinds = [...new Set(things.map((thing) => thing.kind))]
  const read = checkDesign({ ...HEAD, things: kinds.map((kind, index) => ({ kind, id: `usual-${index}` })) })
  if (!read.ok) return [...things]
  const usual = new Map(read.design.things.map((thing) => [thing.kind, thing]))
  return things.map((thing) => ({
    ...(left(thing, usual.get(thing.kind)) as Plain | undefined),
    kind: thing.kind,
    id: thing.id,
  }))
}

const isPlain = (value: unknown): value is Plain =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const sameKeys = (a: Plain, b: Plain): boolean =>
  Object.keys(a).length === Object.keys(b).length && Object.keys(a).every((key) => Object.hasOwn(b, key))

/** What differs from the usual; lists, places and frets whole. `undefined` where nothing does. */
function left(value: unknown, usual: unknown): unknown {
  if (JSON.stringify(value) === JSON.stringify(usual)) return undefined
  if (!isPlain(value) || !isPlain(usual) || !sameKeys(value, usual) || 'by' in value) return value
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, inner]): [string, unknown][] => {
      const rest = left(inner, usual[key])
      return rest === undefined ? [] : [[key, rest]]
    }),
  )
}
