/** A hole that lets the air of the box speak: round, oval or slot, with or without a stepped rim. */
import { length, oneOf } from '../design/fields.ts'
import { type Contour, circle, oval, stadium } from '../plane/index.ts'
import { defineKind } from './kind.ts'

const ORIGIN = { x: 0, y: 0 }
const round = { shape: ['round'] }
const longish = { shape: ['oval', 'slot'] }

const fields = {
  shape: oneOf(['round', 'oval', 'slot'], 'round', {
    label: 'Shape',
    help: 'Round; oval, drawn with four compass arcs; or a slot with round ends.',
  }),
  diameter: length(25, 1, 200, {
    label: 'Through hole, across',
    help: 'Diameter of the hole that goes right through.',
    when: round,
  }),
  sizeAlong: length(50, 1, 400, {
    label: 'Through hole, along the strings',
    help: 'Length of the hole that goes right through, along the strings.',
    when: longish,
  }),
  sizeAcross: length(20, 1, 400, {
    label: 'Through hole, across the strings',
    help: 'Width of the hole that goes right through, across the strings.',
    when: longish,
  }),
  rimWidth: length(0, 0, 40, {
    label: 'Ledge of the rim',
    help: 'Width of the step around the hole that a ring or cover sits on; 0 for none. 3 to 5 mm is common practice.',
  }),
  rimDepth: length(1.5, 0.1, 20, {
    label: 'Depth of the rim',
    help: 'How deep the step goes below the face; at most half the lid is common practice.',
  }),
}

type Fields = {
  shape: 'round' | 'oval' | 'slot'
  diameter: number
  sizeAlong: number
  sizeAcross: number
  rimWidth: number
}

/** The hole's outline, `grown` by the ledge on all sides for its rim. */
function shapeOf(hole: Fields, grown: number): Contour {
  if (hole.shape === 'round') return circle(ORIGIN, hole.diameter / 2 + grown)
  const along = hole.sizeAlong + 2 * grown
  const across = hole.sizeAcross + 2 * grown
  return hole.shape === 'oval' ? oval(ORIGIN, along, across) : stadium(ORIGIN, along, across)
}

export const soundHole = defineKind({
  kind: 'sound-hole',
  title: 'Sound hole',
  group: 'Openings',
  faces: ['lid', 'base', 'bass-wall', 'treble-wall', 'neck-end-wall', 'tail-end-wall'],
  fields,
  describe: (hole) => `${hole.shape}${hole.rimWidth > 0 ? ', with a stepped rim' : ''}`,
  openings: (hole) => [shapeOf(hole, 0)],
  footprint: (hole) => shapeOf(hole, hole.rimWidth),
  operations: (hole) => [
    { kind: 'cut', contour: shapeOf(hole, 0) },
    ...(hole.rimWidth > 0
      ? [{ kind: 'recess' as const, contour: shapeOf(hole, hole.rimWidth), depth: hole.rimDepth }]
      : []),
  ],
  reach: () => 0,
  overNeck: 'avoid',
  overWall: 'avoid',
  edgeLimit: 'openingToEdge',
  gapLimit: 'betweenOpenings',
  air: true,
  rim: (hole) => (hole.rimWidth > 0 ? { depth: hole.rimDepth, ledge: hole.rimWidth } : null),
  size: (hole) =>
    hole.shape === 'round'
      ? { along: hole.diameter, across: hole.diameter }
      : { along: hole.sizeAlong, across: hole.sizeAcross },
  specimens: {
    usual: {},
    'stepped rim': { diameter: 30, rimWidth: 4, rimDepth: 2 },
    smallest: { diameter: 1 },
    largest: { diameter: 200 },
    'oval along': { shape: 'oval', sizeAlong: 60, sizeAcross: 24 },
    'oval across': { shape: 'oval', sizeAlong: 20, sizeAcross: 48, rimWidth: 3 },
    'oval as wide as long': { shape: 'oval', sizeAlong: 30, sizeAcross: 30 },
    'slot along': { shape: 'slot', sizeAlong: 80, sizeAcross: 6, rimWidth: 3 },
    'slot across': { shape: 'slot', sizeAlong: 8, sizeAcross: 40 },
  },
})
