/** Woods that the tables do not have, with what it takes to reckon with them. */
import { useState } from 'react'
import {
  change,
  type Design,
  type Field,
  fieldsOfEntry,
  type OwnWood,
  type Path,
  valueAt,
} from '../../geometry/index.ts'
import { commit, setField } from '../state/index.ts'
import { useDesign } from './calm.ts'
import { FieldInput } from './Fields.tsx'
import type { Answer } from './field.ts'

export function OwnWoods() {
  const design = useDesign()
  const { woods } = design
  const fields = fieldsOfEntry('woods')
  return (
    <div className="field-span">
      {woods.length === 0 && (
        <p className="soft small">
          Each wood of the tables stands with its source. Add your own where you have weighed and bent a strip
          of it; it can then be chosen for neck, board, brace and lid.
        </p>
      )}
      {woods.map((_, index) => (
        <OneWood key={index} design={design} index={index} fields={fields} />
      ))}
      <div>
        <button
          type="button"
          onClick={() => setField(['woods'], [...woods, started(woods, fields)], 'Add a wood')}
        >
          Add a wood
        </button>
      </div>
    </div>
  )
}

/** A name that is free, and the usual values of the schema. */
function started(woods: readonly OwnWood[], fields: readonly Field[]): Record<string, unknown> {
  const taken = new Set(woods.map((one) => one.name))
  let count = 1
  while (taken.has(`own wood ${count}`)) count += 1
  return Object.fromEntries(
    fields.map(({ name, standard }) => [name, name === 'name' ? `own wood ${count}` : standard]),
  )
}

/** Where a design names a wood. */
const NAMED: readonly Path[] = [
  ['neck', 'wood'],
  ['board', 'wood'],
  ['brace', 'wood'],
  ['box', 'lid', 'stuff'],
]

interface OneWoodProps {
  readonly design: Design
  readonly index: number
  readonly fields: readonly Field[]
}

function OneWood({ design, index, fields }: OneWoodProps) {
  const [fault, setFault] = useState<string | null>(null)
  const wood = design.woods[index]
  if (!wood) return null
  const uses = NAMED.filter((path) => valueAt(design, path) === wood.name)
  const take = (field: Field, value: unknown): Answer => {
    const own: [Path, unknown] = [['woods', index, field.name], value]
    // Whatever is of this wood goes on being of it under its new name.
    const following = field.name === 'name' ? uses.map((path): [Path, unknown] => [path, value]) : []
    return commit(`${wood.name}: ${field.label.toLowerCase()}`, change(design, own, ...following))
  }
  const remove = () => {
    if (uses.length > 0) {
      const where = uses.map(([section]) => (section === 'box' ? 'lid' : section)).join(' and ')
      return setFault(`${wood.name} is what the ${where} is of. Choose another wood there first.`)
    }
    setField(
      ['woods'],
      design.woods.filter((_, at) => at !== index),
      'Remove a wood',
    )
  }
  return (
    <fieldset className="own-wood">
      <legend className="unseen">{wood.name}</legend>
      <div className="field-grid">
        {fields.map((field) => (
          <FieldInput
            key={field.name}
            field={field}
            value={wood[field.name as keyof OwnWood]}
            take={(value) => take(field, value)}
          />
        ))}
        <div className="field-span">
          <button type="button" className="link" onClick={remove}>
            Remove {wood.name}
          </button>
          {fault && uses.length > 0 && (
            <p className="field-fault" role="alert">
              {fault}
            </p>
          )}
        </div>
      </div>
    </fieldset>
  )
}
