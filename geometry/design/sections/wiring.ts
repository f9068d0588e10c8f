/** What is soldered: components, and the wires between their terminals. */
import { z } from 'zod'
import { PARTS, TERMINAL } from '../../wiring/terminals.ts'
import { choice, length, measure, meta, oneOf, words } from '../fields.ts'
import { idPattern } from '../place.ts'

const id = z.string().regex(idPattern, {
  error: 'is no usable id; small letters, figures and dashes are wanted, as in "volume"',
})

const component = z.strictObject({
  id: id.meta(meta('id', { label: 'Id', help: 'Short name by which wires point at it.' })),
  name: words('', 40, { label: 'Name', help: 'What you call it on the diagram; its sort where left empty.' }),
  part: oneOf(PARTS, 'metal part', {
    label: 'Sort',
    help: 'What it is. A metal part is anything of metal that a hand can touch: strings, tailpiece, plate, saddle.',
  }),
  thing: z
    .string()
    .max(40)
    .regex(/^([a-z][a-z0-9-]*)?$/, { error: 'is no id of a thing' })
    .default('')
    .meta(
      meta('id', {
        label: 'Stands at',
        help: 'Id of the thing on a face that this is, so that its wires have a length; empty where it is none.',
      }),
    ),
  kilohms: measure('kΩ', 500, 0.001, 10000, {
    label: 'Resistance',
    help: 'Of a pot its whole track, of a coil its wire. 250 or 500 kΩ pots for coils, 1 MΩ for piezos; coils 5 to 12 kΩ (common practice).',
    when: { part: ['pot', 'coil pickup', 'resistor'] },
  }),
  nanofarads: measure('nF', 22, 0.001, 10000, {
    label: 'Capacitance',
    help: 'Of a tone control 22 or 47 nF, of a piezo disc 10 to 20 nF (common practice).',
    when: { part: ['capacitor', 'piezo pickup'] },
  }),
  ways: oneOf(['on and off', 'two ways', 'two ways and both'], 'two ways', {
    label: 'It switches',
    help: 'On and off; one way or the other; or one, both, the other.',
    when: { part: ['switch'] },
  }),
  bare: choice(true, {
    label: 'Bare metal',
    help: 'Has it metal that a hand can touch: a case, a frame, a cover? That must be grounded.',
    when: { part: ['pot', 'switch', 'coil pickup'] },
  }),
})

const wire = z.strictObject({
  from: z
    .string()
    .max(60)
    .regex(TERMINAL, { error: 'is no terminal; one such as "volume.2" or "jack.tip" is wanted' })
    .meta(meta('terminal', { label: 'From', help: 'Component and terminal, as in `volume.2`.' })),
  to: z
    .string()
    .max(60)
    .regex(TERMINAL, { error: 'is no terminal; one such as "volume.2" or "jack.tip" is wanted' })
    .meta(meta('terminal', { label: 'To', help: 'Component and terminal, as in `jack.tip`.' })),
  colour: words('black', 24, { label: 'Colour', help: 'As you name it: red, white, black, bare.' }),
})

export const wiring = z
  .strictObject({
    components: z
      .array(component)
      .max(40)
      .default([])
      .meta(meta('list of components', { label: 'Components', help: 'Everything that has a terminal.' })),
    wires: z
      .array(wire)
      .max(120)
      .default([])
      .meta(meta('list of wires', { label: 'Wires', help: 'Each from one terminal to another.' })),
    slack: length(60, 0, 500, {
      label: 'Slack',
      help: 'Added to every wire: both ends stripped, and enough to lift the lid with the wires on. Common practice.',
    }),
    inputKilohms: measure('kΩ', 1000, 1, 100000, {
      label: 'Input of the amplifier',
      help: 'What the jack feeds: 1 MΩ for an instrument input, 10 to 50 kΩ for a line input (common practice).',
    }),
  })
  .prefault({})

export type Component = z.output<typeof component>
export type Wire = z.output<typeof wire>
