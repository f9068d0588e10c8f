/** An opening in the base with a step that its cover lies in, flush, and screws that hold it. */
import { count, length } from '../design/fields.ts'
import type { Point } from '../plane/index.ts'
import { defineKind, type LocalOperation } from './kind.ts'
import { openOf, plate, through } from './open.ts'

const fields = {
  sizeAlong: length(90, 10, 600, {
    label: 'Opening, along',
    help: 'Of the opening that a hand or a tool goes through, along the strings.',
  }),
  sizeAcross: length(60, 10, 600, { label: 'Opening, across', help: 'Of the opening, across the strings.' }),
  cornerRadius: length(8, 0, 100, {
    label: 'Corner radius',
    help: 'Radius of the opening’s corners; the cover’s are wider by the ledge.',
  }),
  ledge: length(8, 1, 60, { label: 'Ledge', help: 'Width of the step all round that the cover lies on.' }),
  ledgeDepth: length(1.5, 0.1, 20, {
    label: 'Depth of the step',
    help: 'As deep as the cover is thick, so that it lies flush.',
  }),
  screws: count(4, 0, 4, {
    label: 'Screws',
    help: 'In the corners of the ledge: four; three or fewer begin in the middle of the ends.',
  }),
  screwHole: length(2, 0.3, 10, {
    label: 'Screw hole',
    help: 'Diameter of the hole through the ledge: the pilot of a short screw.',
  }),
}

type Hatch = {
  sizeAlong: number
  sizeAcross: number
  cornerRadius: number
  ledge: number
  ledgeDepth: number
  screws: number
  screwHole: number
}

/** The radius that the opening's corners really have. */
const radiusOf = (it: Hatch) => Math.min(it.cornerRadius, it.sizeAlong / 2, it.sizeAcross / 2)

/** In the middle of the ledge: on the diagonals of the corners, or in the middle of the ends. */
function screwPlaces(it: Hatch): Point[] {
  const end = { x: (it.sizeAlong + it.ledge) / 2, y: 0 }
  const radius = radiusOf(it)
  const out = (radius + it.ledge / 2) * Math.SQRT1_2 - radius
  const corner = { x: it.sizeAlong / 2 + out, y: it.sizeAcross / 2 + out }
  const ends = [end, { x: -end.x, y: 0 }]
  if (it.screws < 3) return ends.slice(0, it.screws)
  const head = [
    { x: -corner.x, y: corner.y },
    { x: -corner.x, y: -corner.y },
  ]
  return it.screws === 3
    ? [end, ...head]
    : [...head, { x: corner.x, y: corner.y }, { x: corner.x, y: -corner.y }]
}

function operations(it: Hatch): LocalOperation[] {
  // A hole that would break into the opening is none.
  const hole = Math.min(it.screwHole, it.ledge * 0.8)
  return [
    { kind: 'cut', contour: plate(it.sizeAlong, it.sizeAcross, it.cornerRadius) },
    ...screwPlaces(it).map((at) => through(hole, at)),
    { kind: 'recess', contour: cover(it), depth: it.ledgeDepth },
  ]
}

/** The opening grown by the ledge on all sides; square corners stay square. */
function cover(it: Hatch) {
  const radius = radiusOf(it)
  return plate(it.sizeAlong + 2 * it.ledge, it.sizeAcross + 2 * it.ledge, radius > 0 ? radius + it.ledge : 0)
}

export const hatch = defineKind({
  kind: 'hatch',
  title: 'Access hatch',
  group: 'Openings',
  faces: ['base'],
  fields,
  describe: (it) => `cover on a ledge, ${it.screws} screws`,
  openings: (it) => openOf(operations(it)),
  footprint: cover,
  operations,
  reach: () => 0,
  overNeck: 'avoid',
  overWall: 'avoid',
  edgeLimit: 'openingToEdge',
  gapLimit: 'betweenOpenings',
  rim: (it) => ({ depth: it.ledgeDepth, ledge: it.ledge }),
  size: (it) => ({ along: it.sizeAlong, across: it.sizeAcross }),
  presets: [
    { title: 'For a hand', fields: { sizeAlong: 110, sizeAcross: 80, cornerRadius: 10, ledge: 8 } },
    {
      title: 'For a battery',
      fields: { sizeAlong: 58, sizeAcross: 32, cornerRadius: 3, ledge: 5, screws: 2 },
    },
  ],
  specimens: {
    usual: {},
    'without screws': { screws: 0 },
    'two screws': { screws: 2 },
    'three screws': { screws: 3 },
    'square corners': { cornerRadius: 0, screws: 1 },
    round: { sizeAlong: 60, sizeAcross: 60, cornerRadius: 30 },
  },
})
