/** How the parts are cut, and the stock they are cut from: fields of the design. */
import { type Field, fieldsOf, formatLength, readLength } from '../../../geometry/index.ts'
import { useDesign } from '../../parts/calm.ts'
import { Fields, isWantedBeside } from '../../parts/Fields.tsx'
import { TextField } from '../../parts/TextField.tsx'
import { setField } from '../../state/index.ts'

/** Widths finer than the lines of a rule: shown in fine decimals in either unit. */
const FINE = /^(kerf|cutter)/
const STOCK = /^sheet/

const cuttingFields = (): readonly Field[] => fieldsOf('cutting')

/** Process, kerf or cutter, corners, webs and tabs; what does not matter for the process is not shown. */
export function MachineFields() {
  const fields = cuttingFields().filter(({ name }) => !STOCK.test(name))
  return fields.map((field) =>
    FINE.test(field.name) && field.unit === 'mm' ? (
      <FineField key={field.name} field={field} />
    ) : (
      <Fields key={field.name} fields={[field]} base={['cutting']} />
    ),
  )
}

/** The sheet of stock, its free edge, and which way its grain runs. */
export function StockFields() {
  return <Fields fields={cuttingFields().filter(({ name }) => STOCK.test(name))} base={['cutting']} />
}

function FineField({ field }: { field: Field }) {
  const { cutting, units } = useDesign()
  if (!isWantedBeside(cutting, field)) return null
  const { display } = units
  return (
    <TextField
      label={`${field.label}, ${display === 'mm' ? 'mm' : 'in'}`}
      help={field.help}
      address={field.address}
      value={formatLength(cutting[field.name as 'kerf'], { display, fraction: 0 }, FIGURES[display])}
      onCommit={(text) => {
        const reading = readLength(text, display)
        return reading.ok ? setField(['cutting', field.name], reading.mm, field.label) : reading
      }}
    />
  )
}

/** A micrometre, or the nearest of an inch to it. */
const FIGURES = { mm: { decimals: 3 }, inches: { decimals: 4 } } as const
