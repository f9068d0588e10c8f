/** A strip of wood glued behind a face: it stiffens, and gives screws something to hold in. */
import { length } from '../design/fields.ts'
import { defineKind } from './kind.ts'
import { plate } from './open.ts'

const fields = {
  sizeAlong: length(12, 1, 800, { label: 'Brace, along', help: 'Along the strings, or along the wall.' }),
  sizeAcross: length(40, 1, 800, { label: 'Brace, across', help: 'Across the strings, or down the wall.' }),
  height: length(10, 0.5, 120, {
    label: 'Brace, tall',
    help: 'How far it stands in from the inner side. The stiffness of the lid is reckoned with the brace under the saddle alone, not with this one.',
  }),
}

export const gluedBrace = defineKind({
  kind: 'glued-brace',
  title: 'Brace',
  group: 'Fastening',
  faces: ['lid', 'base', 'bass-wall', 'treble-wall', 'neck-end-wall', 'tail-end-wall'],
  fields,
  describe: (it) => `glued inside, ${it.height} mm tall`,
  openings: () => [],
  footprint: (it) => plate(it.sizeAlong, it.sizeAcross),
  cover: (it) => plate(it.sizeAlong, it.sizeAcross),
  taken: () => null,
  operations: () => [],
  reach: (it, thickness) => thickness + it.height,
  bodies: (it, thickness) => [
    {
      part: '',
      sort: 'wood',
      contour: plate(it.sizeAlong, it.sizeAcross),
      from: thickness,
      to: thickness + it.height,
    },
  ],
  overNeck: 'avoid',
  overWall: 'avoid',
  edgeLimit: 'openingToEdge',
  gapLimit: 'betweenOpenings',
  size: (it) => ({ along: it.sizeAlong, across: it.sizeAcross }),
  presets: [
    { title: 'Across, beside the neck', fields: { sizeAlong: 10, sizeAcross: 60, height: 10 } },
    { title: 'Screw block', fields: { sizeAlong: 20, sizeAcross: 20, height: 20 } },
  ],
  specimens: { usual: {}, 'along the strings': { sizeAlong: 200, sizeAcross: 8 }, tall: { height: 120 } },
})
