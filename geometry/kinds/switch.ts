/** A toggle or slide switch held by a nut on its thread. */
import { length } from '../design/fields.ts'
import { bushedFields, bushedOperations, bushedTaken, bushingOf, seat } from './bushed.ts'
import { defineKind } from './kind.ts'
import { LEAST, openOf, plate, widest } from './open.ts'

const fields = {
  ...bushedFields({ hole: 6.4, thread: 8, nut: 3, washer: 10, boreDiameter: 18 }),
  bodyAlong: length(13, 2, 60, {
    label: 'Body, along',
    help: 'Of the body behind the face, along the strings or the wall.',
  }),
  bodyAcross: length(8, 2, 60, {
    label: 'Body, across',
    help: 'Of the body behind the face, the other way.',
  }),
  bodyDepth: length(16, 1, 60, {
    label: 'Body, deep',
    help: 'From where the body sits to the ends of its lugs, wires included.',
  }),
}

export const toggle = defineKind({
  kind: 'switch',
  title: 'Switch',
  group: 'Pickups and controls',
  faces: ['lid', 'treble-wall', 'bass-wall', 'tail-end-wall', 'neck-end-wall'],
  fields,
  describe: (it) => `${it.bodyDepth} mm deep${it.bore === 'none' ? '' : `, bored ${it.bore}`}`,
  openings: (it) => openOf(bushedOperations(it)),
  footprint: (it) => widest(it.washer, it.hole, it.bore === 'none' ? 0 : it.boreDiameter),
  cover: (it) => (it.washer > LEAST ? widest(it.washer) : null),
  taken: bushedTaken,
  operations: bushedOperations,
  reach: (it, thickness) => seat(it, thickness) + it.bodyDepth,
  bodies: (it, thickness) => {
    const from = seat(it, thickness)
    const contour = plate(it.bodyAlong, it.bodyAcross)
    return [{ part: 'body', sort: 'hardware', contour, from, to: from + it.bodyDepth }]
  },
  overNeck: 'avoid',
  overWall: 'avoid',
  edgeLimit: 'openingToEdge',
  gapLimit: 'betweenOpenings',
  bushing: (it) => bushingOf(it, Math.hypot(it.bodyAlong, it.bodyAcross)),
  size: (it) => ({ along: it.hole, across: it.hole }),
  presets: [
    {
      title: 'Small toggle, one pole',
      fields: { hole: 6.4, thread: 8, bodyAlong: 13, bodyAcross: 8, bodyDepth: 16 },
    },
    {
      title: 'Small toggle, two poles',
      fields: { hole: 6.4, thread: 8, bodyAlong: 13, bodyAcross: 12.7, bodyDepth: 18 },
    },
    {
      title: 'Full-size toggle',
      fields: {
        hole: 12.5,
        thread: 10,
        washer: 18,
        bodyAlong: 20,
        bodyAcross: 20,
        bodyDepth: 40,
        boreDiameter: 30,
      },
    },
  ],
  specimens: {
    usual: {},
    'full size': { hole: 12.5, thread: 10, washer: 18, bodyAlong: 20, bodyAcross: 20, bodyDepth: 40 },
    'bored from outside': { bore: 'from outside', boreDiameter: 14, boreDepth: 2 },
    'no washer': { washer: 0 },
  },
})
