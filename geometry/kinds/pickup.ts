/** A pickup: through an opening in the lid, with the depth it needs below; or a disc glued under the lid. */
import { length, oneOf } from '../design/fields.ts'
import type { Contour } from '../plane/index.ts'
import { defineKind, type LocalOperation } from './kind.ts'
import { disc, openOf, plate } from './open.ts'

const rectangular = { shape: ['rectangular', 'rod'] }

/** A recess shallower than this is none: nobody could cut it, mm. */
const SHALLOWEST = 1e-3

const fields = {
  shape: oneOf(['rectangular', 'round', 'rod', 'disc under the lid'], 'rectangular', {
    label: 'Shape',
    help: 'A rectangle with rounded corners, a round opening, a rod let in with round ends, or a disc glued under the lid, which opens nothing.',
  }),
  sizeAlong: length(18.5, 2, 120, {
    label: 'Opening, along the strings',
    help: 'Width of the opening along the strings: the body of the pickup and half a millimetre.',
    when: rectangular,
  }),
  sizeAcross: length(70.5, 5, 200, {
    label: 'Opening, across the strings',
    help: 'Length of the opening across the strings: the body of the pickup and half a millimetre.',
    when: rectangular,
  }),
  cornerRadius: length(3, 0, 60, {
    label: 'Corner radius',
    help: 'Radius of the corners: half the bit or drill that makes them.',
    when: { shape: ['rectangular'] },
  }),
  diameter: length(30, 2, 120, {
    label: 'Across',
    help: 'Diameter of a round opening, or of the disc.',
    when: { shape: ['round', 'disc under the lid'] },
  }),
  letIn: length(0, 0, 20, {
    label: 'Let into the lid',
    help: 'Depth of a recess for the disc in the underside of the lid; 0 where it is glued on the flat.',
    when: { shape: ['disc under the lid'] },
  }),
  thick: length(1.5, 0.1, 20, {
    label: 'Disc, thick',
    help: 'The disc with its solder and wire.',
    when: { shape: ['disc under the lid'] },
  }),
  depth: length(18, 0, 60, {
    label: 'Depth below the face',
    help: 'How far the lowest part of the pickup hangs below the outer face, wires included. Measure yours.',
    when: { shape: ['rectangular', 'round', 'rod'] },
  }),
  activeWidth: length(50, 2, 200, {
    label: 'Active width',
    help: 'Width across the strings in which it hears them; over three strings 20–25 mm, four 28–33 mm and six 48–52 mm are common practice.',
    when: { shape: ['rectangular', 'round', 'rod'] },
  }),
  heardLength: length(0, 0, 80, {
    label: 'Heard along the strings',
    help: 'Length of string over which it hears; a coil of one row of poles hears some 10 to 25 mm (common practice). 0 takes it as a point.',
    when: { shape: ['rectangular', 'round', 'rod'] },
  }),
}

type Pickup = {
  shape: 'rectangular' | 'round' | 'rod' | 'disc under the lid'
  sizeAlong: number
  sizeAcross: number
  cornerRadius: number
  diameter: number
  letIn: number
  thick: number
  depth: number
}

const under = (it: Pickup) => it.shape === 'disc under the lid'

function outline(it: Pickup): Contour {
  if (it.shape === 'round' || under(it)) return disc(it.diameter)
  const radius = it.shape === 'rod' ? Math.min(it.sizeAlong, it.sizeAcross) / 2 : it.cornerRadius
  return plate(it.sizeAlong, it.sizeAcross, radius)
}

function operations(it: Pickup): LocalOperation[] {
  if (!under(it)) return [{ kind: 'cut', contour: outline(it) }]
  return it.letIn > SHALLOWEST
    ? [{ kind: 'recess', contour: outline(it), depth: it.letIn, from: 'inside' }]
    : []
}

/** The disc's own stretch behind the face. */
const discFrom = (it: Pickup, thickness: number) => Math.max(0, thickness - it.letIn)

export const pickup = defineKind({
  kind: 'pickup',
  title: 'Pickup',
  group: 'Pickups and controls',
  faces: ['lid'],
  fields,
  describe: (it) => (under(it) ? it.shape : `${it.shape} opening`),
  openings: (it) => openOf(operations(it)),
  footprint: outline,
  cover: (it) => (under(it) ? outline(it) : null),
  taken: (it) => (under(it) ? null : outline(it)),
  operations,
  reach: (it, thickness) => (under(it) ? Math.max(thickness, discFrom(it, thickness) + it.thick) : it.depth),
  bodies: (it, thickness) => {
    const from = under(it) ? discFrom(it, thickness) : 0
    const to = under(it) ? from + it.thick : it.depth
    return [{ part: 'body', sort: 'hardware', contour: outline(it), from, to }]
  },
  overNeck: 'meant',
  overWall: 'avoid',
  edgeLimit: 'openingToEdge',
  gapLimit: 'betweenOpenings',
  activeWidth: (it) => (under(it) ? null : it.activeWidth),
  heardLength: (it) => it.heardLength,
  size: (it) =>
    it.shape === 'round' || under(it)
      ? { along: it.diameter, across: it.diameter }
      : { along: it.sizeAlong, across: it.sizeAcross },
  presets: [
    {
      title: 'Single coil, covered',
      fields: {
        shape: 'rectangular',
        sizeAlong: 18.5,
        sizeAcross: 70.5,
        cornerRadius: 3,
        depth: 18,
        activeWidth: 50,
      },
    },
    {
      title: 'Two coils, full size',
      fields: {
        shape: 'rectangular',
        sizeAlong: 39,
        sizeAcross: 71,
        cornerRadius: 3,
        depth: 24,
        activeWidth: 50,
      },
    },
    {
      title: 'Rod or bar, low',
      fields: { shape: 'rod', sizeAlong: 10, sizeAcross: 60, depth: 8, activeWidth: 50 },
    },
    {
      title: 'Disc under the lid, 27 mm',
      fields: { shape: 'disc under the lid', diameter: 27, thick: 1.5, letIn: 0 },
    },
    {
      title: 'Disc under the lid, 35 mm',
      fields: { shape: 'disc under the lid', diameter: 35, thick: 1.5, letIn: 0 },
    },
  ],
  specimens: {
    usual: {},
    'square corners': { cornerRadius: 0 },
    round: { shape: 'round', diameter: 32, depth: 14, activeWidth: 26 },
    smallest: { sizeAlong: 2, sizeAcross: 5, cornerRadius: 1, depth: 0 },
    'corners rounder than it is wide': { sizeAlong: 12, sizeAcross: 60, cornerRadius: 40 },
    rod: { shape: 'rod', sizeAlong: 10, sizeAcross: 60, depth: 8 },
    disc: { shape: 'disc under the lid', diameter: 27 },
    'disc let in': { shape: 'disc under the lid', diameter: 27, letIn: 1 },
  },
})
