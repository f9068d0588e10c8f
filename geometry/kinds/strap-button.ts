/** A strap button: a screw through a wall into solid wood, and the button before it. */
import { length } from '../design/fields.ts'
import { defineKind, type LocalBody } from './kind.ts'
import { disc, openOf, through, widest } from './open.ts'

const fields = {
  hole: length(4.2, 0.5, 15, {
    label: 'Clearance hole',
    help: 'Diameter of the hole in the wall: the shank and a little.',
  }),
  button: length(14, 2, 40, {
    label: 'Button, across',
    help: 'Diameter of the button’s foot, felt washer included.',
  }),
  tall: length(14, 1, 40, { label: 'Button, tall', help: 'How far it stands out from the face.' }),
  screwLength: length(30, 2, 120, {
    label: 'Screw, behind the face',
    help: 'How far the screw’s point comes behind the outer side of the face.',
  }),
}

type Strap = { hole: number; button: number; tall: number; screwLength: number }

const bodies = (it: Strap): LocalBody[] => [
  { part: 'screw', sort: 'fastener', contour: disc(it.hole), from: 0, to: it.screwLength },
  { part: 'button', sort: 'hardware', contour: disc(it.button), from: -it.tall, to: 0 },
]

export const strapButton = defineKind({
  kind: 'strap-button',
  holdsStrap: true,
  title: 'Strap button',
  group: 'Strings and fittings',
  faces: ['tail-end-wall', 'neck-end-wall', 'bass-wall', 'treble-wall', 'base'],
  fields,
  describe: (it) => `screw ${it.screwLength} mm in`,
  openings: (it) => openOf([through(it.hole)]),
  footprint: (it) => widest(it.hole, it.button),
  cover: (it) => disc(it.button),
  taken: (it) => disc(it.hole),
  operations: (it) => [through(it.hole)],
  reach: (it) => it.screwLength,
  bodies,
  overNeck: 'avoid',
  overWall: 'meant',
  edgeLimit: 'screwToEdge',
  gapLimit: 'screwToOpening',
  size: (it) => ({ along: it.hole, across: it.hole }),
  presets: [
    { title: 'With a No. 6 screw', fields: { hole: 3.6, button: 13, screwLength: 25 } },
    { title: 'With a No. 8 screw', fields: { hole: 4.4, button: 15, screwLength: 32 } },
  ],
  specimens: {
    usual: {},
    'long screw': { screwLength: 120 },
    'hole wider than the button': { hole: 15, button: 2 },
  },
})
