/** A plate that holds the strings, screwed on the lid over the tail or on the tail-end wall. */
import { count, length } from '../design/fields.ts'
import { type Contour, circle } from '../plane/index.ts'
import { defineKind, type LocalBody } from './kind.ts'
import { openOf, plate, row, rowOutline, through } from './open.ts'

const fields = {
  sizeAlong: length(24, 3, 200, {
    label: 'Plate, along',
    help: 'Along the strings on the lid; across the box on the tail-end wall.',
  }),
  sizeAcross: length(50, 3, 300, {
    label: 'Plate, across',
    help: 'Across the strings on the lid; down the wall on the tail-end wall.',
  }),
  cornerRadius: length(2, 0, 60, { label: 'Corner radius', help: 'Radius of the plate’s corners.' }),
  tall: length(6, 0.3, 60, { label: 'Plate, tall', help: 'How far it stands out from the face.' }),
  screws: count(2, 1, 12, { label: 'Screws', help: 'In one row across, evenly spaced.' }),
  span: length(38, 0, 280, { label: 'Outer screws', help: 'From the first screw’s centre to the last’s.' }),
  hole: length(3.2, 0.5, 12, { label: 'Screw hole', help: 'Diameter of the clearance hole in the face.' }),
  screwLength: length(20, 1, 120, {
    label: 'Screw, behind the face',
    help: 'How far the points come behind the outer side of the face.',
  }),
}

type Tail = {
  sizeAlong: number
  sizeAcross: number
  cornerRadius: number
  tall: number
  screws: number
  span: number
  hole: number
  screwLength: number
}

const operations = (it: Tail) => row(it.screws, it.span).map((at) => through(it.hole, at))

const bodies = (it: Tail): LocalBody[] => [
  ...row(it.screws, it.span).map(
    (at): LocalBody => ({
      part: 'screw',
      sort: 'fastener',
      contour: circle(at, it.hole / 2),
      from: 0,
      to: it.screwLength,
    }),
  ),
]

/** The plate, or the row of its screws where that is wider: all that lies on the face. */
function footprint(it: Tail): Contour {
  const along = Math.max(it.sizeAlong, it.hole)
  const across = Math.max(it.sizeAcross, it.hole + (it.screws > 1 ? it.span : 0))
  return plate(
    along,
    across,
    along > it.sizeAlong || across > it.sizeAcross
      ? 0
      : Math.min(it.cornerRadius, (it.sizeAlong - it.hole) / 2, (it.sizeAcross - it.hole) / 2),
  )
}

export const tailpiecePlate = defineKind({
  kind: 'tailpiece-plate',
  title: 'Tailpiece plate',
  group: 'Strings and fittings',
  faces: ['lid', 'tail-end-wall'],
  fields,
  describe: (it) => `${it.screws} ${it.screws === 1 ? 'screw' : 'screws'}`,
  openings: (it) => openOf(operations(it)),
  footprint,
  cover: footprint,
  taken: (it) => rowOutline(it.screws, it.span, it.hole),
  operations,
  reach: (it) => it.screwLength,
  bodies,
  overNeck: 'meant',
  overWall: 'meant',
  edgeLimit: 'screwToEdge',
  gapLimit: 'screwToOpening',
  size: (it) => ({ along: it.sizeAlong, across: it.sizeAcross }),
  presets: [
    { title: 'Small, for three or four', fields: { sizeAlong: 20, sizeAcross: 48, screws: 2, span: 38 } },
    {
      title: 'Hinge leaf, three screws',
      fields: { sizeAlong: 25, sizeAcross: 64, screws: 3, span: 50, tall: 2 },
    },
  ],
  specimens: {
    usual: {},
    'one screw': { screws: 1 },
    'twelve screws': { screws: 12, span: 200, sizeAcross: 220 },
    'screws wider than the plate': { span: 100 },
  },
})
