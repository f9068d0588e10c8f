/** String gauges, bass to treble, in the finest figures of the user's unit: a sixteenth says nothing of a string. */
import { type Field, formatFine, readLength } from '../../geometry/index.ts'
import { setField } from '../state/index.ts'
import { useDesign } from './calm.ts'
import type { Answer } from './field.ts'
import { TextField } from './TextField.tsx'

export function Gauges({ field: { label, help, address } }: { readonly field: Field }) {
  const { strings, units } = useDesign()
  const take = (text: string): Answer => {
    const list: number[] = []
    for (const word of text
      .split(/[,;]\s*|\s{2,}/)
      .map((one) => one.trim())
      .filter(Boolean)) {
      const reading = readLength(word, units.display)
      if (!reading.ok) return reading
      list.push(Math.round(reading.mm * 1e4) / 1e4)
    }
    return setField(['strings', 'gauges'], list, label)
  }
  const example = units.display === 'mm' ? '0.66, 0.43, 0.33' : '.026, .017, .013'
  return (
    <div className="field-span">
      <TextField
        label={`${label}, ${units.display === 'mm' ? 'mm' : 'in'}`}
        help={`${help} Parted by commas, as in ${example}.`}
        address={address}
        placeholder={example}
        value={strings.gauges.map((gauge) => formatFine(gauge, units)).join(', ')}
        onCommit={take}
      />
    </div>
  )
}
