/** An opening for a pickup that hears the strings through the lid, and the depth it needs below. */
import { length, oneOf } from '../design/fields.ts'
import { circle, roundedRectangle } from '../plane/index.ts'
import { defineKind } from './kind.ts'

const ORIGIN = { x: 0, y: 0 }
const rectangular = { shape: ['rectangular'] }

const fields = {
  shape: oneOf(['rectangular', 'round'], 'rectangular', {
    label: 'Shape',
    help: 'The opening: a rectangle with rounded corners, or round.',
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
    when: rectangular,
  }),
  diameter: length(30, 2, 120, {
    label: 'Opening, across',
    help: 'Diameter of a round opening.',
    when: { shape: ['round'] },
  }),
  depth: length(18, 0, 60, {
    label: 'Depth below the face',
    help: 'How far the lowest part of the pickup hangs below the outer face, wires included. Measure yours.',
  }),
  activeWidth: length(50, 2, 200, {
    label: 'Active width',
    help: 'Width across the strings in which it hears them; over three strings 20–25 mm, four 28–33 mm and six 48–52 mm are common practice.',
  }),
  heardLength: length(0, 0, 80, {
    label: 'Heard along the strings',
    help: 'Length of string over which it hears; a coil of one row of poles hears some 10 to 25 mm (common practice). 0 takes it as a point.',
  }),
}

export const pickup = defineKind({
  kind: 'pickup',
  title: 'Pickup',
  faces: ['lid'],
  fields,
  describe: (it) => `${it.shape} opening`,
  openings: (it) => [outline(it)],
  footprint: (it) => outline(it),
  operations: (it) => [{ kind: 'cut', contour: outline(it) }],
  reach: (it) => it.depth,
  bodies: (it) => [{ part: 'body', sort: 'hardware', contour: outline(it), from: 0, to: it.depth }],
  overNeck: 'meant',
  overWall: 'avoid',
  edgeLimit: 'openingToEdge',
  gapLimit: 'betweenOpenings',
  activeWidth: (it) => it.activeWidth,
  heardLength: (it) => it.heardLength,
  size: (it) =>
    it.shape === 'round'
      ? { along: it.diameter, across: it.diameter }
      : { along: it.sizeAlong, across: it.sizeAcross },
  specimens: {
    usual: {},
    'square corners': { cornerRadius: 0 },
    round: { shape: 'round', diameter: 32, depth: 14, activeWidth: 26 },
    smallest: { sizeAlong: 2, sizeAcross: 5, cornerRadius: 1, depth: 0 },
    'corners rounder than it is wide': { sizeAlong: 12, sizeAcross: 60, cornerRadius: 40 },
  },
})

function outline(it: {
  shape: 'rectangular' | 'round'
  sizeAlong: number
  sizeAcross: number
  cornerRadius: number
  diameter: number
}) {
  if (it.shape === 'round') return circle(ORIGIN, it.diameter / 2)
  return roundedRectangle(ORIGIN, it.sizeAlong, it.sizeAcross, it.cornerRadius)
}
