/** Components and wires as lists to change; fields come from the schema. */
import {
  CIRCUITS,
  type CircuitName,
  type Component,
  change,
  componentName,
  type Design,
  type Field,
  fieldsOf,
  fieldsOfEntry,
  PARTS,
  presetWiring,
  TERMINAL_NAMES,
  terminalsOf,
  withoutComponent,
  withoutLooseWires,
} from '../../geometry/index.ts'
import { commit } from '../state/index.ts'
import { useDesign } from './calm.ts'
import { FieldInput, Fields, isWantedBeside } from './Fields.tsx'
import type { Answer } from './field.ts'

type Wiring = Design['wiring']

const COMPONENT_FIELDS = fieldsOfEntry('wiring.components').filter(
  ({ name }) => name !== 'id' && name !== 'thing',
)
const [FROM, TO, COLOUR] = fieldsOfEntry('wiring.wires')
const OWN_FIELDS = fieldsOf('wiring').filter(({ name }) => name === 'slack' || name === 'inputKilohms')

/** Enters another wiring as one step. */
function take(design: Design, label: string, wiring: Wiring): Answer {
  return commit(label, change(design, [['wiring'], wiring]))
}

export function WiringEditor() {
  const design = useDesign()
  const { wiring } = design
  return (
    <aside className="inspector wiring-editor" aria-label="Components and wires">
      <h2>Usual circuits</h2>
      <Presets design={design} />
      <h2>Components</h2>
      {wiring.components.map((one, index) => (
        <OneComponent key={one.id} design={design} index={index} />
      ))}
      <AddComponent design={design} />
      <h2>Wires</h2>
      {wiring.wires.map((_, index) => (
        <OneWire key={index} design={design} index={index} />
      ))}
      <AddWire design={design} />
      <h2>Around it</h2>
      <Fields fields={OWN_FIELDS} base={['wiring']} />
    </aside>
  )
}

function Presets({ design }: { readonly design: Design }) {
  return (
    <>
      <select
        aria-label="Take a usual circuit"
        className="field-wide"
        value=""
        onChange={(event) => {
          const name = CIRCUITS.find((one) => one === event.target.value) as CircuitName | undefined
          if (name) take(design, `Wiring: ${name}`, presetWiring(name, design))
        }}
      >
        <option value="">{design.wiring.components.length === 0 ? 'Choose one…' : 'Begin anew with…'}</option>
        {CIRCUITS.map((name) => (
          <option key={name} value={name}>
            {name}
          </option>
        ))}
      </select>
      <p className="small soft">
        It takes the pickups, pots, switch and jack that stand on the faces. Undo brings back what was there.
      </p>
    </>
  )
}

interface OfDesign {
  readonly design: Design
  readonly index: number
}

function OneComponent({ design, index }: OfDesign) {
  const { wiring } = design
  const one = wiring.components[index]
  if (!one) return null
  const set = (field: Pick<Field, 'name' | 'label'>, value: unknown): Answer => {
    const components = wiring.components.map((other, at) =>
      at === index ? ({ ...other, [field.name]: value } as Component) : other,
    )
    // A change of sort takes terminals away; wires to them go too.
    return take(
      design,
      `${componentName(one)}: ${field.label.toLowerCase()}`,
      withoutLooseWires({ ...wiring, components }),
    )
  }
  return (
    <details className="wiring-part">
      <summary>{componentName(one)}</summary>
      <div className="field-grid">
        {COMPONENT_FIELDS.filter((field) => isWantedBeside(one, field)).map((field) => (
          <FieldInput
            key={field.name}
            field={field}
            value={one[field.name as keyof Component]}
            take={(value) => set(field, value)}
          />
        ))}
        <label className="field">
          <span className="field-label">Stands at</span>
          <select
            className="field-wide"
            value={one.thing}
            onChange={(event) => set({ name: 'thing', label: 'Stands at' }, event.target.value)}
          >
            <option value="">nowhere on the box</option>
            {design.things.map((thing) => (
              <option key={thing.id} value={thing.id}>
                {thing.name || thing.id}
              </option>
            ))}
          </select>
        </label>
        <div className="field-span">
          <button
            type="button"
            className="link"
            onClick={() => take(design, `Remove ${componentName(one)}`, withoutComponent(wiring, one.id))}
          >
            Remove {componentName(one)}
          </button>
        </div>
      </div>
    </details>
  )
}

function AddComponent({ design }: { readonly design: Design }) {
  const { wiring } = design
  const add = (part: Component['part']) => {
    const stem = part.split(' ')[0] ?? 'part'
    let count = 1
    const taken = new Set(wiring.components.map(({ id }) => id))
    while (taken.has(count === 1 ? stem : `${stem}-${count}`)) count += 1
    const standard = Object.fromEntries(
      fieldsOfEntry('wiring.components').map((field) => [field.name, field.standard]),
    )
    const made = { ...standard, id: count === 1 ? stem : `${stem}-${count}`, part } as Component
    take(design, `Add a ${part}`, { ...wiring, components: [...wiring.components, made] })
  }
  return (
    <select
      aria-label="Add a component"
      className="field-wide"
      value=""
      onChange={(event) => {
        const part = PARTS.find((one) => one === event.target.value)
        if (part) add(part)
      }}
    >
      <option value="">Add a component…</option>
      {PARTS.map((part) => (
        <option key={part} value={part}>
          {part}
        </option>
      ))}
    </select>
  )
}

/** Every terminal there is, for choosing ends. */
function Ends({ wiring }: { readonly wiring: Wiring }) {
  return wiring.components.map((one) => (
    <optgroup key={one.id} label={componentName(one)}>
      {terminalsOf(one).map((terminal) => (
        <option key={terminal} value={`${one.id}.${terminal}`}>
          {componentName(one)}, {TERMINAL_NAMES[terminal] ?? terminal}
        </option>
      ))}
    </optgroup>
  ))
}

function OneWire({ design, index }: OfDesign) {
  const { wiring } = design
  const wire = wiring.wires[index]
  if (!wire || !FROM || !TO || !COLOUR) return null
  const number = `Wire ${index + 1}`
  const set = (name: 'from' | 'to' | 'colour', value: string): Answer =>
    take(design, `${number}: ${name}`, {
      ...wiring,
      wires: wiring.wires.map((other, at) => (at === index ? { ...other, [name]: value } : other)),
    })
  return (
    <fieldset className="wiring-wire-row">
      <legend className="unseen">{number}</legend>
      {(['from', 'to'] as const).map((end) => (
        <select
          key={end}
          aria-label={`${number}, ${(end === 'from' ? FROM : TO).label.toLowerCase()}`}
          value={wire[end]}
          onChange={(event) => {
            if (event.target.value !== wire[end === 'from' ? 'to' : 'from']) set(end, event.target.value)
          }}
        >
          <Ends wiring={wiring} />
        </select>
      ))}
      <div className="wiring-colour">
        <FieldInput
          field={{ ...COLOUR, label: `${number}, ${COLOUR.label.toLowerCase()}` }}
          value={wire.colour}
          take={(value) => set('colour', String(value))}
        />
        <button
          type="button"
          className="link"
          aria-label={`Remove ${number.toLowerCase()}`}
          onClick={() =>
            take(design, `Remove ${number.toLowerCase()}`, {
              ...wiring,
              wires: wiring.wires.filter((_, at) => at !== index),
            })
          }
        >
          Remove
        </button>
      </div>
    </fieldset>
  )
}

function AddWire({ design }: { readonly design: Design }) {
  const { wiring } = design
  const terminals = wiring.components.flatMap((one) => terminalsOf(one).map((pin) => `${one.id}.${pin}`))
  const used = new Set(wiring.wires.flatMap(({ from, to }) => [from, to]))
  // The first end that nothing leads to yet, to the sleeve where there is one: what is forgotten is mostly ground.
  const from = terminals.find((one) => !used.has(one)) ?? terminals[0]
  const to =
    terminals.find((one) => one.endsWith('.sleeve') && one !== from) ?? terminals.find((one) => one !== from)
  if (!from || !to) return <p className="small soft">Wires join two terminals: add components first.</p>
  return (
    <button
      type="button"
      onClick={() =>
        take(design, 'Add a wire', { ...wiring, wires: [...wiring.wires, { from, to, colour: 'black' }] })
      }
    >
      Add a wire
    </button>
  )
}
