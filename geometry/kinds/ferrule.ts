/** A ferrule for one string: a hole for its neck and a wider one that lets its head in. */
import { length } from '../design/fields.ts'
import { defineKind, type LocalOperation } from './kind.ts'
import { disc, openOf, through, widest } from './open.ts'

const fields = {
  hole: length(2.4, 0.5, 20, { label: 'Hole', help: 'Diameter of the hole for the string, right through.' }),
  outer: length(8, 1, 40, {
    label: 'Ferrule, across',
    help: 'Diameter of the hole that the ferrule is pressed into: a tight fit.',
  }),
  depth: length(3, 0.1, 40, { label: 'Ferrule, let in', help: 'How deep it goes below the face.' }),
}

const operations = (it: { hole: number; outer: number; depth: number }): LocalOperation[] =>
  it.outer > it.hole
    ? [through(it.hole), { kind: 'recess', contour: disc(it.outer), depth: it.depth }]
    : [through(it.hole)]

export const ferrule = defineKind({
  kind: 'ferrule',
  title: 'Ferrule',
  group: 'Strings and fittings',
  faces: ['lid', 'tail-end-wall', 'base'],
  fields,
  describe: (it) => `${it.outer} mm, for one string`,
  openings: (it) => openOf(operations(it)),
  footprint: (it) => widest(it.hole, it.outer),
  operations,
  reach: () => 0,
  overNeck: 'meant',
  overWall: 'meant',
  edgeLimit: 'screwToEdge',
  gapLimit: 'screwToOpening',
  size: (it) => ({ along: it.hole, across: it.hole }),
  presets: [
    { title: 'On the front, 6.35 mm', fields: { outer: 6.35, hole: 2.4, depth: 3 } },
    { title: 'Behind, 8 mm', fields: { outer: 8, hole: 2.4, depth: 5 } },
    { title: 'Behind, 9.5 mm', fields: { outer: 9.5, hole: 3.2, depth: 6 } },
  ],
  specimens: {
    usual: {},
    'no wider than its hole': { hole: 6, outer: 5 },
    largest: { hole: 20, outer: 40, depth: 12 },
  },
})
