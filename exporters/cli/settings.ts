/** `--set path=value`: any field of a design, by its dotted path, before the design is used. */
import {
  apply,
  change,
  checkDesign,
  type Design,
  type Path,
  readLength,
  valueAt,
} from '../../geometry/index.ts'
import { type KnownField, knownFields, unknownField } from './known-fields.ts'

export type Settled =
  | { readonly ok: true; readonly design: Design }
  | { readonly ok: false; readonly sentences: readonly string[] }

type Value =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly sentence: string }

const value = (read: unknown): Value => ({ ok: true, value: read })
const no = (sentence: string): Value => ({ ok: false, sentence })

const IN_A_SHELL = `In a shell, put the whole in single quotes: --set 'scale.frets={"by":"equal","count":20}'.`

/**
 * The design with every setting applied in the order given, validated. A length may be written in any unit and is
 * taken in the design's own where it names none. What does not fit comes back as sentences.
 * Example: `applySettings(design, ['box.length=9 1/2in', 'hand=left'])`.
 */
export function applySettings(design: Design, settings: readonly string[]): Settled {
  if (settings.length === 0) return { ok: true, design }
  let changed = design
  const sentences: string[] = []
  for (const setting of settings) {
    const set = applyOne(changed, setting)
    if ('sentence' in set) sentences.push(`--set ${shortened(setting)}: ${set.sentence}`)
    else changed = set.design
  }
  return sentences.length > 0 ? { ok: false, sentences } : { ok: true, design: changed }
}

function applyOne(design: Design, setting: string): { design: Design } | { sentence: string } {
  const equals = setting.indexOf('=')
  const path = (equals < 0 ? setting : setting.slice(0, equals)).trim()
  if (equals < 0 || path === '')
    return { sentence: 'A field, an equals sign and a value are wanted, as in --set "box.length=9 1/2in".' }
  const text = setting.slice(equals + 1).trim()
  const known = knownFields(design)
  const found = find(path, known)
  if (!found) return { sentence: unknownField(path, design, known) }
  const read =
    found.below === undefined
      ? wholeValue(text, found.field, design)
      : valueBelow(found.below, text, found.field, design)
  if (!read.ok) return { sentence: read.sentence }
  const at = found.field.key(found.below)
  const [where, what] = nested(design, at.path, at.wrap(read.value))
  const reading = checkDesign(apply(design, change(design, [where, what])))
  return reading.ok ? reading : { sentence: reading.faults.map((fault) => fault.sentence).join(' ') }
}

/** A section that the design leaves out is put in with the field. */
function nested(design: Design, path: Path, value: unknown): [Path, unknown] {
  const above = path.slice(0, -1)
  if (above.length === 0 || valueAt(design, above) !== undefined) return [path, value]
  return nested(design, above, { [String(path.at(-1))]: value })
}

const shortened = (text: string) => (text.length > 80 ? `${text.slice(0, 79)}…` : text)

interface Target {
  readonly field: KnownField
  /** What stands behind the field's own path, for fields that hold more than one value. */
  readonly below?: string
}

function find(path: string, known: ReadonlyMap<string, KnownField>): Target | undefined {
  const whole = known.get(path)
  if (whole) return { field: whole }
  for (let dot = path.lastIndexOf('.'); dot > 0; dot = path.lastIndexOf('.', dot - 1)) {
    const field = known.get(path.slice(0, dot))
    if (field?.holdsMore) return { field, below: path.slice(dot + 1) }
  }
  return undefined
}

function wholeValue(text: string, field: KnownField, design: Design): Value {
  switch (field.unit) {
    case 'mm':
      return lengthOf(text, design)
    case 'count':
    case 'degrees':
    case 'share':
    case 'newtons':
    case 'g':
    case 'hertz':
    case 'kΩ':
      return numberOf(text.replace(/°$/, ''))
    case 'yes or no':
      if (/^(yes|true)$/i.test(text)) return value(true)
      return /^(no|false)$/i.test(text) ? value(false) : no(`Read "${text}"; yes or no is wanted.`)
    case 'one of':
      return optionOf(text, field.options ?? [])
    case 'place':
      return text.startsWith('{') ? jsonOf(text) : lengthOf(text, design)
    case 'fret list':
      return /^\d+$/.test(text) ? value({ by: 'equal', count: Number(text) }) : jsonOf(text)
    case 'mm, a list':
    case 'mm, readings':
      return text.startsWith('[') ? jsonOf(text) : lengthsOf(text, design)
    case 'pitches, a list':
      return text.startsWith('[') ? jsonOf(text) : value(pitchesIn(text))
    case 'finding → reason':
    case 'dimension → mm':
    case 'curve':
      return jsonOf(text)
    default:
      if (field.unit.startsWith('list') || field.unit === 'curve') return jsonOf(text)
      return value(/^".*"$/.test(text) ? (jsonIfAny(text) ?? text) : text)
  }
}

/** `saddle.place.share=0.7`, `scale.frets.count=20`, `overruled.opening-to-edge hole-bass=thick lid`. */
function valueBelow(below: string, text: string, field: KnownField, design: Design): Value {
  if (field.unit === 'finding → reason') return value(text)
  if (field.unit === 'dimension → mm') return lengthOf(text, design)
  if (field.unit === 'fret list')
    return below === 'count'
      ? numberOf(text)
      : no(`Only "count" can be set alone; write the whole list. ${IN_A_SHELL}`)
  if (below === 'share' || below === 'ofScale') return numberOf(text)
  if (below === 'mirror') return value(text)
  return no(
    `A place is a length, or has one of share, ofScale and mirror behind a dot, or is written whole as {"midway": ["…", "…"]}; read "${below}".`,
  )
}

function lengthOf(text: string, design: Design): Value {
  const read = readLength(text, design.units.display)
  return read.ok ? value(read.mm) : no(read.sentence)
}

function lengthsOf(text: string, design: Design): Value {
  const lengths = text
    .split(';')
    .map((one) => one.trim())
    .filter(Boolean)
    .map((one) => lengthOf(one, design))
  const bad = lengths.find((one) => !one.ok)
  return bad ?? value(lengths.map((one) => (one.ok ? one.value : null)))
}

/** `G2 D3 G3`, or parted by commas or semicolons where one of them has blanks in it, as `98 Hz` has. */
const pitchesIn = (text: string): string[] =>
  (/[;,]/.test(text) ? text.split(/[;,]/) : /hz|hertz|cent/i.test(text) ? [text] : text.split(/\s+/))
    .map((one) => one.trim())
    .filter(Boolean)

function numberOf(text: string): Value {
  if (/^[-+]?(\d+\.?\d*|\.\d+)$/.test(text.trim())) return value(Number(text))
  return no(`Read "${text}"; a number is wanted, such as 4 or 0.5.`)
}

function optionOf(text: string, options: readonly (string | number)[]): Value {
  const option = options.find((one) => String(one) === text.toLowerCase())
  return option === undefined
    ? no(`Read "${text}"; wanted is ${options.map((one) => `"${one}"`).join(' or ')}.`)
    : value(option)
}

function jsonOf(text: string): Value {
  const read = jsonIfAny(text)
  return read === undefined ? no(`Read ${text}; that is not JSON. ${IN_A_SHELL}`) : value(read)
}

function jsonIfAny(text: string): unknown {
  try {
    return JSON.parse(text) as unknown
  } catch {
    return undefined
  }
}
