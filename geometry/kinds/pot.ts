/** A rotary control: thread and shaft through the face, body and lugs behind it, knob before it. */
import { length } from '../design/fields.ts'
import { rectangle } from '../plane/index.ts'
import { type BushedFields, bushedFields, bushedOperations, bushedTaken, bushingOf, seat } from './bushed.ts'
import { defineKind, type LocalBody } from './kind.ts'
import { disc, LEAST, openOf, widest } from './open.ts'

const fields = {
  ...bushedFields({ hole: 9.8, thread: 7.9, nut: 3, washer: 14, boreDiameter: 26 }),
  bodyDiameter: length(24, 4, 60, { label: 'Body, across', help: 'Diameter of the can behind the face.' }),
  bodyDepth: length(11, 1, 60, {
    label: 'Body, deep',
    help: 'From where the body sits to its back, a switch on it included.',
  }),
  lugs: length(20, 0, 60, {
    label: 'Lugs, from the shaft',
    help: 'How far the soldering lugs stand out, from the middle of the shaft towards the tail before it is turned.',
  }),
  shaft: length(18, 1, 80, {
    label: 'Shaft',
    help: 'From where the body sits to the tip of the shaft.',
  }),
  knob: length(19, 0, 60, { label: 'Knob, across', help: 'Diameter of the knob; 0 for none.' }),
  knobHeight: length(15, 1, 60, { label: 'Knob, tall', help: 'Height of the knob over the face.' }),
  knobDepth: length(12, 1, 60, {
    label: 'Knob, bored',
    help: 'Depth of the hole in the knob that takes the shaft.',
  }),
}

type Pot = BushedFields & {
  bodyDiameter: number
  bodyDepth: number
  lugs: number
  knob: number
  knobHeight: number
}

function bodies(it: Pot, thickness: number): LocalBody[] {
  const from = seat(it, thickness)
  const to = from + it.bodyDepth
  const parts: LocalBody[] = [{ part: 'body', sort: 'hardware', contour: disc(it.bodyDiameter), from, to }]
  if (it.lugs > it.bodyDiameter / 2)
    parts.push({
      part: 'lugs',
      sort: 'hardware',
      contour: rectangle(0, -it.bodyDiameter * 0.35, it.lugs, it.bodyDiameter * 0.35),
      from,
      to,
    })
  if (it.knob > LEAST)
    parts.push({ part: 'knob', sort: 'hardware', contour: disc(it.knob), from: -it.knobHeight, to: 0 })
  return parts
}

export const pot = defineKind({
  kind: 'pot',
  title: 'Pot',
  group: 'Pickups and controls',
  faces: ['lid', 'treble-wall', 'bass-wall', 'tail-end-wall', 'neck-end-wall'],
  fields,
  describe: (it) => `${it.bodyDiameter} mm body${it.bore === 'none' ? '' : `, bored ${it.bore}`}`,
  openings: (it) => openOf(bushedOperations(it)),
  footprint: (it) => widest(it.knob, it.washer, it.hole, it.bore === 'none' ? 0 : it.boreDiameter),
  cover: (it) => (it.knob > LEAST || it.washer > LEAST ? widest(it.knob, it.washer) : null),
  taken: bushedTaken,
  operations: bushedOperations,
  reach: (it, thickness) => seat(it, thickness) + it.bodyDepth,
  bodies,
  overNeck: 'avoid',
  overWall: 'avoid',
  edgeLimit: 'openingToEdge',
  gapLimit: 'betweenOpenings',
  bushing: (it) =>
    bushingOf(
      it,
      it.bodyDiameter,
      it.knob > LEAST ? { length: it.shaft, knobDepth: it.knobDepth } : undefined,
    ),
  size: (it) => ({ along: it.hole, across: it.hole }),
  presets: [
    {
      title: 'Full size, 24 mm',
      fields: { hole: 9.8, thread: 7.9, bodyDiameter: 24, bodyDepth: 11, lugs: 20 },
    },
    {
      title: 'Full size, long thread',
      fields: { hole: 9.8, thread: 17.5, bodyDiameter: 24, bodyDepth: 11, lugs: 20, shaft: 32 },
    },
    {
      title: 'Small, 16 mm',
      fields: {
        hole: 7.4,
        thread: 6,
        nut: 2.5,
        washer: 11,
        bodyDiameter: 16,
        bodyDepth: 9,
        lugs: 15,
        boreDiameter: 18,
      },
    },
  ],
  specimens: {
    usual: {},
    'small, without a knob': { hole: 7.4, bodyDiameter: 16, knob: 0 },
    'bored from inside': { bore: 'from inside', boreDepth: 3.5 },
    'bored from outside, wider than its knob': { bore: 'from outside', boreDiameter: 30, boreDepth: 2 },
    'on a backing plate': { backing: 3 },
    'lugs within the can': { lugs: 5, washer: 0, knob: 0 },
  },
})
