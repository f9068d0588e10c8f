/** An eyelet or grommet that lines a hole: for the ground wire, a lead, or a string. */
import { length } from '../design/fields.ts'
import { circle } from '../plane/index.ts'
import { defineKind } from './kind.ts'
import { disc, LEAST, ORIGIN, openOf, through, widest } from './open.ts'

const fields = {
  hole: length(4.8, 0.5, 60, {
    label: 'Hole',
    help: 'Diameter of the hole in the face: the barrel of the eyelet.',
  }),
  flange: length(8, 0, 90, { label: 'Flange, across', help: 'Diameter of the lip that lies on the face.' }),
  barrel: length(6, 0.5, 40, { label: 'Barrel, long', help: 'How far it goes in from the outer side.' }),
}

export const grommet = defineKind({
  kind: 'grommet',
  title: 'Grommet',
  group: 'Strings and fittings',
  faces: ['tail-end-wall', 'lid', 'base', 'bass-wall', 'treble-wall', 'neck-end-wall'],
  fields,
  describe: (it) => `${it.hole} mm hole`,
  openings: (it) => openOf([through(it.hole)]),
  footprint: (it) => widest(it.hole, it.flange),
  cover: (it) => (it.flange > LEAST ? disc(it.flange) : null),
  taken: (it) => disc(it.hole),
  operations: (it) => [through(it.hole)],
  reach: (it) => it.barrel,
  bodies: (it) => [
    { part: 'barrel', sort: 'hardware', contour: circle(ORIGIN, it.hole / 2), from: 0, to: it.barrel },
  ],
  overNeck: 'avoid',
  overWall: 'avoid',
  edgeLimit: 'screwToEdge',
  gapLimit: 'screwToOpening',
  size: (it) => ({ along: it.hole, across: it.hole }),
  presets: [
    { title: 'Barrel eyelet, 3/16 in', fields: { hole: 4.8, flange: 8, barrel: 6 } },
    { title: 'Small eyelet', fields: { hole: 3.2, flange: 5.5, barrel: 4 } },
    { title: 'Rubber, for a lead', fields: { hole: 9.5, flange: 14, barrel: 8 } },
  ],
  specimens: { usual: {}, 'no flange': { flange: 0 }, 'flange within the hole': { hole: 12, flange: 9 } },
})
