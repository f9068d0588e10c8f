/** The builder's own closed curve of lines and arcs, scaled to the size wanted. */

import { z } from 'zod'
import { choice, length, meta, oneOf } from '../design/fields.ts'
import { bounds, type Chain, type Contour, chain, faults } from '../plane/index.ts'
import { notes } from '../quantity/notes.ts'
import { defineKind, type LocalOperation } from './kind.ts'
import { openOf } from './open.ts'

/** Corners as the file holds them: x, y and the bulge of the segment that starts there. */
export type Curve = readonly (readonly [number, number, number])[]

/** More corners than these no cut needs. */
export const MOST_CORNERS = 4000

/** Largest size that `sizeAlong` can ask for; reading a curve keeps its tolerance up to here. */
export const LARGEST_CURVE = 400

/** A leaf, two arcs from end to end. */
const LEAF: [number, number, number][] = [
  [-20, 0, 0.4],
  [20, 0, 0.4],
]

const number = z.number().min(-10000).max(10000)

const fields = {
  curve: z
    .array(z.tuple([number, number, z.number().min(-1000).max(1000)]))
    .min(2)
    .max(MOST_CORNERS)
    .default(LEAF)
    .meta(
      meta('curve', {
        label: 'Curve',
        help: 'Corners of one closed curve, each with x, y and the bulge of the way to the next: 0 for a line, 1 for a half circle. It is read from an SVG path and scaled to the size below.',
      }),
    ),
  sizeAlong: length(40, 1, LARGEST_CURVE, {
    label: 'Size along',
    help: 'Over all along the strings or the wall; the other way follows in proportion.',
  }),
  goes: oneOf(['through', 'to a depth'], 'through', {
    label: 'It goes',
    help: 'Right through the face, or only let into it.',
  }),
  depth: length(1.5, 0.1, 40, {
    label: 'Deep',
    help: 'Depth below the outer side.',
    when: { goes: ['to a depth'] },
  }),
  flipped: choice(false, { label: 'Turned over', help: 'The mirror image about its own long line.' }),
}

interface Own {
  readonly curve: Curve
  readonly sizeAlong: number
  readonly goes: string
  readonly depth: number
  readonly flipped: boolean
}

const asChain = (curve: Curve): Chain => ({
  shape: 'chain',
  closed: true,
  vertices: curve.map(([x, y, bulge]) => ({ x, y, bulge })),
})

/** What is wrong with a curve, in one sentence; `null` where it is one sound closed curve. */
export function curveFault(curve: Curve): string | null {
  const [first] = faults(asChain(curve)).filter((one) => !one.includes('clockwise'))
  return first
    ? `The curve cannot be cut. ${first} Draw it as one closed line that meets itself nowhere.`
    : null
}

const outlines = notes<Curve, { readonly of: string; readonly contour: Contour }>()

/** The curve about its own middle, at its size. */
function outline(it: Own): Contour {
  const of = `${it.sizeAlong} ${it.flipped}`
  const known = outlines.get(it.curve)
  if (known?.of === of) return known.contour
  const raw = chain(asChain(it.curve).vertices, true)
  const { minX, maxX, minY, maxY } = bounds(raw)
  const scale = it.sizeAlong / (maxX - minX)
  const [x0, y0] = [(minX + maxX) / 2, (minY + maxY) / 2]
  const side = it.flipped ? -1 : 1
  const contour = chain(
    raw.vertices.map(({ x, y, bulge }) => ({
      x: (x - x0) * scale,
      y: side * (y - y0) * scale + 0,
      bulge: side * bulge + 0,
    })),
    true,
  )
  outlines.set(it.curve, { of, contour })
  return contour
}

const operations = (it: Own): LocalOperation[] =>
  it.goes === 'through'
    ? [{ kind: 'cut', contour: outline(it) }]
    : [{ kind: 'recess', contour: outline(it), depth: it.depth }]

export const ownCurve = defineKind({
  kind: 'own-curve',
  air: true,
  title: 'Own curve',
  group: 'Openings',
  faces: ['lid', 'base', 'bass-wall', 'treble-wall', 'neck-end-wall', 'tail-end-wall'],
  fields,
  describe: (it) => `${it.curve.length} corners, ${it.goes}`,
  openings: (it) => openOf(operations(it)),
  footprint: outline,
  operations,
  reach: () => 0,
  overNeck: 'avoid',
  overWall: 'avoid',
  edgeLimit: 'openingToEdge',
  gapLimit: 'betweenOpenings',
  handed: true,
  fault: (it) => curveFault(it.curve),
  size: (it) => {
    const { minY, maxY } = bounds(outline(it))
    return { along: it.sizeAlong, across: maxY - minY }
  },
  specimens: {
    usual: {},
    'a crescent, let in': {
      curve: [
        [0, -20, 1],
        [0, 20, -0.5],
      ],
      goes: 'to a depth',
    },
    'drawn clockwise': {
      curve: [
        [0, 0, 0],
        [0, 30, 0],
        [50, 10, 0],
      ],
      sizeAlong: 60,
    },
    'turned over': {
      curve: [
        [0, 0, 0.2],
        [40, 0, 0],
        [40, 12, 0],
        [8, 30, -0.1],
      ],
      flipped: true,
    },
  },
})
