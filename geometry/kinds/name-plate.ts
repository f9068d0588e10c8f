/** A shallow recess that a name plate, badge or piece of veneer is let into. */
import { length, oneOf } from '../design/fields.ts'
import { type Contour, oval } from '../plane/index.ts'
import { defineKind } from './kind.ts'
import { ORIGIN, plate } from './open.ts'

const fields = {
  shape: oneOf(['rectangular', 'oval'], 'rectangular', {
    label: 'Shape',
    help: 'Of the plate and its recess.',
  }),
  sizeAlong: length(50, 2, 400, { label: 'Plate, along', help: 'Along the strings, or along the wall.' }),
  sizeAcross: length(20, 2, 400, { label: 'Plate, across', help: 'The other way.' }),
  cornerRadius: length(2, 0, 60, {
    label: 'Corner radius',
    help: 'Radius of the corners: half the bit that takes the recess out.',
    when: { shape: ['rectangular'] },
  }),
  depth: length(0.8, 0.05, 20, {
    label: 'Let in',
    help: 'Depth of the recess: the plate lies flush where it is as thick.',
  }),
}

type Plate = { shape: string; sizeAlong: number; sizeAcross: number; cornerRadius: number; depth: number }

const outline = (it: Plate): Contour =>
  it.shape === 'oval'
    ? oval(ORIGIN, it.sizeAlong, it.sizeAcross)
    : plate(it.sizeAlong, it.sizeAcross, it.cornerRadius)

export const namePlate = defineKind({
  kind: 'name-plate',
  title: 'Name plate',
  group: 'Strings and fittings',
  faces: ['lid', 'base', 'tail-end-wall', 'bass-wall', 'treble-wall', 'neck-end-wall'],
  fields,
  describe: (it) => `${it.shape}, ${it.depth} mm let in`,
  openings: () => [],
  footprint: outline,
  operations: (it) => [{ kind: 'recess', contour: outline(it), depth: it.depth }],
  reach: () => 0,
  overNeck: 'meant',
  overWall: 'meant',
  edgeLimit: 'screwToEdge',
  gapLimit: 'screwToOpening',
  size: (it) => ({ along: it.sizeAlong, across: it.sizeAcross }),
  specimens: {
    usual: {},
    oval: { shape: 'oval', sizeAlong: 60, sizeAcross: 30 },
    'corners rounder than it is wide': { cornerRadius: 40 },
    'square corners': { cornerRadius: 0 },
  },
})
