/** A form made from what the design's schema says of its fields: labels, help, limits and when they matter. */
import { lazy, Suspense } from 'react'
import { type Face, type Field, type Path, valueAt } from '../../geometry/index.ts'
import { setField } from '../state/index.ts'
import { ChoiceField, YesField } from './ChoiceField.tsx'
import type { Curve } from './CurveField.tsx'
import { useDesign } from './calm.ts'
import type { Answer } from './field.ts'
import { LengthField } from './LengthField.tsx'
import { NumberField } from './NumberField.tsx'
import { FACE_TITLES } from './say.ts'
import { TextField } from './TextField.tsx'
import { WoodField } from './WoodField.tsx'

/** Reading a pasted curve takes a scanner of its own, and few designs have one: it comes when a curve is shown. */
const CurveField = lazy(() => import('./CurveField.tsx').then((page) => ({ default: page.CurveField })))

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
function isWanted(design: unknown, base: Path, field: Field): boolean {
  if (!field.when) return true
  return isWantedBeside(valueAt(design, [...base, ...field.name.split('.').slice(0, -1)]), field)
}

/** The same for a field whose neighbours are the values of this object. */
export function isWantedBeside(neighbours: unknown, { when = {} }: Field): boolean {
  return Object.entries(when).every(([key, values]) =>
    values.includes(valueAt(neighbours, [key]) as string | boolean),
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
  return (
    <div className="one-field" data-field={String(path.at(-1))}>
      <FieldInput
        field={field}
        value={valueAt(design, path)}
        take={(next) => setField(path, next, field.label)}
        explain={explain}
      />
    </div>
  )
}

/** Faces have longer names on screen than in the file; other words are the same in both. */
const calledOnScreen = (option: string): string =>
  option.endsWith('-wall') ? (FACE_TITLES[option as Face]?.toLowerCase() ?? option) : option

/** The widget for a field's unit, for a value that may stand anywhere. */
export function FieldInput({
  field,
  value,
  take,
  explain = false,
}: {
  readonly field: Field
  readonly value: unknown
  readonly take: (next: unknown) => Answer
  readonly explain?: boolean
}) {
  const { label, help, address, unit, min, max, options } = field
  const shared = { label, help, address }
  switch (unit) {
    case 'mm':
      return (
        <LengthField
          {...shared}
          explain={explain}
          min={min}
          max={max}
          value={Number(value)}
          onCommit={take}
        />
      )
    case 'count':
      return <NumberField {...shared} whole min={min} max={max} value={Number(value)} onCommit={take} />
    case 'wood':
    case 'lid stuff':
      return <WoodField {...shared} of={unit} value={String(value)} onCommit={take} />
    case 'hertz':
    case 'newtons':
    case 'degrees':
    case 'g/m':
    case 'g':
    case 'kg/m³':
    case 'N/mm²':
    case 'kΩ':
    case 'nF':
      return (
        <NumberField
          {...shared}
          min={min}
          max={max}
          value={Number(value)}
          onCommit={take}
          beside={SIGNS[unit] ?? unit}
        />
      )
    case 'curve':
      return (
        <Suspense fallback={null}>
          <CurveField {...shared} value={value as Curve} onCommit={take} />
        </Suspense>
      )
    case 'yes or no':
      return <YesField {...shared} value={value === true} onCommit={take} />
    case 'one of':
      return (
        <ChoiceField
          {...shared}
          value={String(value)}
          options={(options ?? []).map(String)}
          name={calledOnScreen}
          onCommit={take}
        />
      )
    case 'text':
      return <TextField {...shared} value={String(value ?? '')} onCommit={take} />
    default:
      return null
  }
}

/** Units that the screen writes shorter than the schema names them. */
const SIGNS: Readonly<Record<string, string>> = { hertz: 'Hz', newtons: 'N' }
