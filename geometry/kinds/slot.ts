/** A slot through a face, or let into it: for a switch, a strip, a lanyard, or air. */
import { length, oneOf } from '../design/fields.ts'
import { defineKind, type LocalOperation } from './kind.ts'
import { openOf, plate } from './open.ts'

const fields = {
  sizeAlong: length(60, 1, 800, {
    label: 'Slot, along',
    help: 'Length along the strings, or along the wall, over all.',
  }),
  sizeAcross: length(8, 0.5, 400, { label: 'Slot, across', help: 'Width the other way.' }),
  ends: oneOf(['round', 'square'], 'round', {
    label: 'Ends',
    help: 'Round, as a drill at each end leaves them, or square, as a saw or a chisel does.',
  }),
  goes: oneOf(['through', 'to a depth'], 'through', {
    label: 'It goes',
    help: 'Right through the face, or only let into it.',
  }),
  depth: length(2, 0.1, 40, {
    label: 'Deep',
    help: 'Depth below the outer side.',
    when: { goes: ['to a depth'] },
  }),
}

type Slot = { sizeAlong: number; sizeAcross: number; ends: string; goes: string; depth: number }

const outline = (it: Slot) =>
  plate(it.sizeAlong, it.sizeAcross, it.ends === 'round' ? Math.min(it.sizeAlong, it.sizeAcross) / 2 : 0)

const operations = (it: Slot): LocalOperation[] =>
  it.goes === 'through'
    ? [{ kind: 'cut', contour: outline(it) }]
    : [{ kind: 'recess', contour: outline(it), depth: it.depth }]

export const slot = defineKind({
  kind: 'slot',
  title: 'Slot',
  group: 'Openings',
  faces: ['lid', 'base', 'bass-wall', 'treble-wall', 'neck-end-wall', 'tail-end-wall'],
  fields,
  describe: (it) => `${it.ends} ends, ${it.goes}`,
  openings: (it) => openOf(operations(it)),
  footprint: outline,
  operations,
  reach: () => 0,
  overNeck: 'avoid',
  overWall: 'avoid',
  edgeLimit: 'openingToEdge',
  gapLimit: 'betweenOpenings',
  size: (it) => ({ along: it.sizeAlong, across: it.sizeAcross }),
  specimens: {
    usual: {},
    'square ends': { ends: 'square' },
    'let in': { goes: 'to a depth', depth: 3 },
    'across, longer than long': { sizeAlong: 6, sizeAcross: 90 },
    'as wide as long': { sizeAlong: 12, sizeAcross: 12 },
  },
})
