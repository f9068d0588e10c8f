/** The drawer that gauges are chosen from, as a builder would list it: `.010, .013, .026w`, a w for wound. */
import { readLength, type Stocked, usualMake } from '../../geometry/index.ts'
import { setField } from '../state/index.ts'
import { useDesign } from './calm.ts'
import type { Answer } from './field.ts'
import { sayGauge } from './Gauges.tsx'
import { TextField } from './TextField.tsx'

const WOUND = /w$/i

export function Stock({ label, help }: { readonly label: string; readonly help: string }) {
  const { stringing, units } = useDesign()
  const nameOf = (row: Stocked) =>
    `${sayGauge(row.gauge, units)}${row.construction === 'wound' ? 'w' : row.construction === 'stated' ? 'm' : ''}`
  const take = (text: string): Answer => {
    const rows: Stocked[] = []
    for (const word of text.split(/[,;]\s*|\s+/).filter(Boolean)) {
      // A string that is there already stays as it was made, whatever of.
      const known = stringing.stock.find((row) => nameOf(row) === word)
      if (known) {
        rows.push(known)
        continue
      }
      const wound = WOUND.test(word)
      const reading = readLength(word.replace(WOUND, ''), units.display)
      if (!reading.ok) return reading
      const gauge = Math.round(reading.mm * 1e4) / 1e4
      rows.push({ ...usualMake(gauge), gauge, construction: wound ? 'wound' : 'plain' })
    }
    return setField(['stringing', 'stock'], rows, label)
  }
  const example = units.display === 'mm' ? '0.25, 0.33, 0.66w' : '.010, .013, .026w'
  return (
    <div className="field-span">
      <TextField
        label={`${label}, ${units.display === 'mm' ? 'mm' : 'in'}`}
        help={`${help} Parted by commas, a w behind each wound one, as in ${example}.`}
        placeholder="what is usually sold singly"
        value={stringing.stock.map(nameOf).join(', ')}
        onCommit={take}
      />
    </div>
  )
}
