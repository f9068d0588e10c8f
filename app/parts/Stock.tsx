/** The drawer that gauges are chosen from, typed as a builder would list it. */
import type { Field } from '../../geometry/index.ts'
import { setField } from '../state/index.ts'
import { useDesign } from './calm.ts'
import type { Answer } from './field.ts'
import { nameStocked, readStock } from './stock-words.ts'
import { TextField } from './TextField.tsx'

export function Stock({ field: { label, help, address } }: { readonly field: Field }) {
  const { stringing, units } = useDesign()
  const take = (text: string): Answer => {
    const reading = readStock(text, units, stringing.stock)
    return reading.ok ? setField(['stringing', 'stock'], reading.rows, label) : reading
  }
  const example = units.display === 'mm' ? '0.25, 0.66w, 0.7 nylon' : '.010, .026w, .028 nylon'
  return (
    <div className="field-span">
      <TextField
        label={`${label}, ${units.display === 'mm' ? 'mm' : 'in'}`}
        help={`${help} Parted by commas: a w behind each wound one, and what it is of where that is not steel, as in ${example}.`}
        address={address}
        placeholder="what is usually sold singly"
        value={stringing.stock.map((row) => nameStocked(row, units)).join(', ')}
        onCommit={take}
      />
    </div>
  )
}
