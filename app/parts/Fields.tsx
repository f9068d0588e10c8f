/** A form made from what the design's schema says of its fields: labels, help, limits and when they matter. */
import { type Field, lidStuffNames, type Path, valueAt, woodNames } from '../../geometry/index.ts'
import { setField } from '../state/index.ts'
import { ChoiceField, YesField } from './ChoiceField.tsx'
import { useDesign } from './calm.ts'
import { LengthField } from './LengthField.tsx'
import { NumberField } from './NumberField.tsx'
import { TextField } from './TextField.tsx'

export interface FieldsProps {
  readonly fields: readonly Field[]
  /** Path of the object that the fields' names start from. */
  readonly base: Path
  /** Names of fields to leave out: they have a widget of their own. */
  readonly without?: readonly string[]
  readonly explain?: boolean
}

export function Fields({ fields, base, without = [], explain = false }: FieldsProps) {
  const design = useDesign()
  return fields
    .filter((field) => !without.includes(field.name) && isWanted(design, base, field))
    .map((field) => (
      <OneField key={field.name} field={field} path={[...base, ...field.name.split('.')]} explain={explain} />
    ))
}

/** Does the field matter, as its neighbours stand? */
function isWanted(design: unknown, base: Path, { name, when }: Field): boolean {
  if (!when) return true
  const beside = [...base, ...name.split('.').slice(0, -1)]
  return Object.entries(when).every(([key, values]) =>
    values.includes(valueAt(design, [...beside, key]) as string | boolean),
  )
}

export function OneField({
  field,
  path,
  explain = false,
}: {
  readonly field: Field
  readonly path: Path
  readonly explain?: boolean
}) {
  const design = useDesign()
  const value = valueAt(design, path)
  const { label, help, unit, min, max, options } = field
  const take = (next: unknown) => setField(path, next, label)
  const shared = { label, help }
  switch (unit) {
    case 'mm':
      return <LengthField {...shared} explain={explain} value={Number(value)} onCommit={take} />
    case 'count':
      return <NumberField {...shared} whole min={min} max={max} value={Number(value)} onCommit={take} />
    case 'wood':
    case 'lid stuff':
      return (
        <ChoiceField
          {...shared}
          value={String(value)}
          options={unit === 'wood' ? woodNames(design.woods) : lidStuffNames(design.woods)}
          onCommit={take}
        />
      )
    case 'hertz':
    case 'newtons':
      return (
        <NumberField
          {...shared}
          min={min}
          max={max}
          value={Number(value)}
          onCommit={take}
          beside={unit === 'hertz' ? 'Hz' : 'N'}
        />
      )
    case 'degrees':
      return (
        <NumberField {...shared} min={min} max={max} value={Number(value)} onCommit={take} beside="degrees" />
      )
    case 'yes or no':
      return <YesField {...shared} value={value === true} onCommit={take} />
    case 'one of':
      return (
        <ChoiceField
          {...shared}
          value={String(value)}
          options={(options ?? []).map(String)}
          onCommit={take}
        />
      )
    case 'text':
      return <TextField {...shared} value={String(value ?? '')} onCommit={take} />
    default:
      return null
  }
}
