/** How finely the rule reads: the one field behind every tolerance that is not stated by itself. */
import { fieldsOf, formatLength, graduationOf } from '../../geometry/index.ts'
import { setField } from '../state/index.ts'
import { useDesign } from './calm.ts'
import { LengthField } from './LengthField.tsx'

/** The field, and a way back to one step of the unit shown. */
export function Rule() {
  const design = useDesign()
  const field = fieldsOf('rule').find(({ name }) => name === 'graduation')
  const { graduation } = design.rule
  const label = field?.label ?? 'Rule'
  const take = (next: number) => setField(['rule', 'graduation'], next, label)
  return (
    <div className="rule-field">
      <LengthField
        label={label}
        help={field?.help}
        address={field?.address}
        value={graduationOf(design)}
        onCommit={take}
      />
      {graduation > 0 && (
        <button type="button" className="link" onClick={() => take(0)}>
          {`Back to one step of the unit shown, ${formatLength(graduationOf({ ...design, rule: { graduation: 0 } }), design.units, { unit: true })}`}
        </button>
      )}
    </div>
  )
}
