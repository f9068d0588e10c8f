/** Every field of a design that can be set from the command line, by its dotted path. */
import { type Design, type Field, fieldsOf, fieldsOfKind, type Path, sections } from '../../geometry/index.ts'
import { nearest } from './nearest.ts'

export interface KnownField {
  readonly unit: string
  readonly label: string
  readonly options?: readonly (string | number)[]
  /** May more follow behind a dot, as in `saddle.place.share`? */
  readonly holdsMore: boolean
  /** Where the value goes in the file, and what is put around it when more followed. */
  key(below?: string): { readonly path: Path; readonly wrap: (value: unknown) => unknown }
}

const HOLD_MORE = new Set(['place', 'fret list', 'finding → reason', 'dimension → mm'])

function known(field: Field, path: Path): KnownField {
  const unit = field.name === 'things' ? 'list' : field.unit
  return {
    unit,
    label: field.label,
    ...(field.options ? { options: field.options } : {}),
    holdsMore: HOLD_MORE.has(unit),
    key: (below) => {
      if (below === undefined) return { path, wrap: (value) => value }
      if (unit === 'finding → reason' || unit === 'dimension → mm')
        return { path: [...path, below], wrap: (value) => value }
      if (unit === 'fret list') return { path, wrap: (value) => ({ by: 'equal', [below]: value }) }
      return { path, wrap: (value) => ({ [below]: value }) }
    },
  }
}

/** Things answer to their id and to their place in the list: `things.hole-treble.diameter`, `things.0.diameter`. */
export function knownFields(design: Design): Map<string, KnownField> {
  const fields = new Map<string, KnownField>()
  for (const field of fieldsOf(''))
    if (field.unit !== 'fixed') fields.set(field.name, known(field, [field.name]))
  for (const section of sections())
    for (const field of fieldsOf(section))
      fields.set(`${section}.${field.name}`, known(field, [section, ...field.name.split('.')]))
  design.things.forEach((thing, index) => {
    for (const field of fieldsOfKind(thing.kind)) {
      const one = known(field, ['things', index, field.name])
      fields.set(`things.${thing.id}.${field.name}`, one)
      fields.set(`things.${index}.${field.name}`, one)
    }
  })
  return fields
}

/** Why a path is not known, and which are near it. */
export function unknownField(path: string, design: Design, known: ReadonlyMap<string, KnownField>): string {
  const paths = [...known.keys()].filter((one) => !/^things\.\d/.test(one))
  const [first = '', second = ''] = path.split('.')
  const within = paths.filter((one) => one.startsWith(`${path}.`))
  if (within.length > 0) return `"${path}" is a group of fields. Name one of them: ${listed(within)}.`
  const ids = design.things.map((thing) => thing.id)
  if (first === 'things' && second !== '' && !ids.includes(second) && !/^\d+$/.test(second))
    return `There is no thing called "${second}". ${ids.length > 0 ? `There are: ${listed(ids)}.` : 'The design has none.'}`
  if (path === 'format' || path === 'version') return `"${path}" says what the file is and cannot be set.`
  const near = nearest(path, paths)
  if (near.length > 0) return `There is no field "${path}". Is ${listed(near, 'or')} meant?`
  const groups = [...new Set(paths.map((one) => one.split('.')[0] ?? ''))]
  return `There is no field "${path}". The first word is one of: ${listed(groups)}; sample-boxes/README.md lists every field.`
}

const MOST_LISTED = 14

function listed(names: readonly string[], last = 'and'): string {
  const shown = names.slice(0, MOST_LISTED)
  if (shown.length < names.length) return `${shown.join(', ')} ${last} ${names.length - shown.length} more`
  return shown.length < 2 ? shown.join('') : `${shown.slice(0, -1).join(', ')} ${last} ${shown.at(-1)}`
}
