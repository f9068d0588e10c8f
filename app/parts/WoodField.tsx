/** A wood by its name, with the numbers it is reckoned with. */
import { lidStuffNamed, lidStuffNames, type Wood, woodNamed, woodNames } from '../../geometry/index.ts'
import { ChoiceField } from './ChoiceField.tsx'
import { useDesign } from './calm.ts'
import type { FieldProps } from './field.ts'

export function WoodField({ of, ...field }: FieldProps<string> & { readonly of: 'wood' | 'lid stuff' }) {
  const { woods } = useDesign()
  const named = of === 'wood' ? woodNamed : lidStuffNamed
  const wood = named(field.value, woods)
  return (
    <div className="field-span wood-field">
      <ChoiceField {...field} options={of === 'wood' ? woodNames(woods) : lidStuffNames(woods)} />
      {wood && (
        <p className="soft small" title={wood.source}>
          {sayWood(wood)}
        </p>
      )}
    </div>
  )
}

const PER_CUBIC_METRE = 1e9

/** `705 kg/m³, stiffness 12600 N/mm², strength 109 N/mm²`, figures as fine as such tables are. */
export const sayWood = ({ density, stiffness, strength }: Wood): string =>
  `${(density * PER_CUBIC_METRE).toFixed(0)} kg/m³; E ${inHundreds(stiffness)}, strength ${strength.toFixed(0)} N/mm²`

const inHundreds = (value: number): string =>
  String(Math.round(value / 100) * 100).replace(/\B(?=(\d{3})+$)/g, '\u202f')
