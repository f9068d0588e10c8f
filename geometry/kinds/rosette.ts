/** Many small holes on rings, on a spiral or in rows, clipped to a shape. */
import { choice, length, oneOf } from '../design/fields.ts'
import { type Contour, circle, oval } from '../plane/index.ts'
import { defineKind } from './kind.ts'
import { disc, ORIGIN, plate, through } from './open.ts'
import { estimate, MOST_HOLES, type Strewing, strewn } from './strewing.ts'

const round = { shape: ['round'] }
const longish = { shape: ['oval', 'rectangular'] }

const fields = {
  shape: oneOf(['round', 'oval', 'rectangular'], 'round', {
    label: 'Field',
    help: 'The shape that the holes fill.',
  }),
  diameter: length(40, 4, 400, { label: 'Field, across', help: 'Diameter of a round field.', when: round }),
  sizeAlong: length(70, 4, 400, {
    label: 'Field, along',
    help: 'Along the strings or the wall.',
    when: longish,
  }),
  sizeAcross: length(40, 4, 400, { label: 'Field, across', help: 'The other way.', when: longish }),
  inner: length(0, 0, 390, {
    label: 'Open middle',
    help: 'Diameter about the centre that is left without holes; 0 for none.',
  }),
  pattern: oneOf(['rings', 'spiral', 'rows', 'staggered rows'], 'rings', {
    label: 'Pattern',
    help: 'Rings of six more holes each, the spiral of a sunflower, or rows.',
  }),
  hole: length(3, 0.5, 40, { label: 'Hole', help: 'Diameter of each hole.' }),
  pitch: length(6, 0.6, 80, {
    label: 'Apart',
    help: 'From one hole’s centre to the next, about; the wood between is this less the hole.',
  }),
  flipped: choice(false, { label: 'Turned over', help: 'The mirror image: a spiral winds the other way.' }),
}

export type Rosette = Strewing & { shape: string; diameter: number; sizeAlong: number; sizeAcross: number }

export function fieldOf(it: Rosette): Contour {
  if (it.shape === 'round') return disc(it.diameter)
  return it.shape === 'oval' ? oval(ORIGIN, it.sizeAlong, it.sizeAcross) : plate(it.sizeAlong, it.sizeAcross)
}

const keyOf = (it: Rosette) =>
  [it.shape, it.shape === 'round' ? it.diameter : `${it.sizeAlong} ${it.sizeAcross}`].join()
const holesOf = (it: Rosette) => strewn(it, keyOf(it), () => fieldOf(it))

/** How many holes the pattern would have; more than `MOST_HOLES` are not laid out. */
export const holesWanted = (it: Rosette): number => estimate(it, fieldOf(it))

export const rosette = defineKind({
  kind: 'rosette',
  air: true,
  title: 'Rosette',
  group: 'Openings',
  faces: ['lid', 'base', 'bass-wall', 'treble-wall', 'neck-end-wall', 'tail-end-wall'],
  fields,
  describe: (it) =>
    holesWanted(it) > MOST_HOLES
      ? `${it.pattern}, too many holes`
      : `${holesOf(it).centres.length} holes in ${it.pattern}`,
  openings: (it) => holesOf(it).centres.map((at) => circle(at, it.hole / 2)),
  footprint: fieldOf,
  operations: (it) => holesOf(it).centres.map((at) => through(it.hole, at)),
  reach: () => 0,
  overNeck: 'avoid',
  overWall: 'avoid',
  edgeLimit: 'openingToEdge',
  gapLimit: 'betweenOpenings',
  handed: true,
  strewn: true,
  web: (it) => holesOf(it).web(),
  wanted: (it) => ({ count: holesWanted(it), most: MOST_HOLES }),
  size: (it) =>
    it.shape === 'round'
      ? { along: it.diameter, across: it.diameter }
      : { along: it.sizeAlong, across: it.sizeAcross },
  presets: [
    {
      title: 'Small rings, 37 holes',
      fields: { shape: 'round', diameter: 46, pattern: 'rings', hole: 4, pitch: 7, inner: 0 },
    },
    {
      title: 'Sunflower',
      fields: { shape: 'round', diameter: 60, pattern: 'spiral', hole: 3, pitch: 5.5, inner: 0 },
    },
    {
      title: 'Grille in rows',
      fields: {
        shape: 'rectangular',
        sizeAlong: 70,
        sizeAcross: 40,
        pattern: 'staggered rows',
        hole: 4,
        pitch: 7,
        inner: 0,
      },
    },
  ],
  specimens: {
    usual: {},
    spiral: { pattern: 'spiral', diameter: 60, pitch: 5 },
    'spiral the other way': { pattern: 'spiral', flipped: true },
    'rows in an oval': { shape: 'oval', pattern: 'rows' },
    'staggered rows in a rectangle': { shape: 'rectangular', pattern: 'staggered rows' },
    'a ring with an open middle': { inner: 20 },
    'no hole fits': { diameter: 4, hole: 40 },
    'too many holes': { diameter: 400, hole: 0.5, pitch: 0.6 },
  },
})
