/** A countersunk wood screw through a face into the wood behind it. */
import { length } from '../design/fields.ts'
import { circle } from '../plane/index.ts'
import { defineKind, type LocalOperation } from './kind.ts'

const ORIGIN = { x: 0, y: 0 }

const fields = {
  clearance: length(3.5, 0.5, 15, {
    label: 'Clearance hole',
    help: 'Diameter of the hole in the piece that is held: the shank and a little.',
  }),
  head: length(6.5, 0, 30, {
    label: 'Head, across',
    help: 'Diameter of the countersunk head; 0 where no countersink is wanted.',
  }),
  screwLength: length(16, 2, 120, {
    label: 'Length of the screw',
    help: 'From the top of a countersunk head to the point.',
  }),
}

/** A small pan head stands out about so far. Common practice, no source. */
const PAN_HEAD = 2

/** A 90 degree countersink is as deep as half the difference of the diameters (plane geometry). */
const sinkDepth = (head: number, clearance: number) => Math.max(0, (head - clearance) / 2)

export const screw = defineKind({
  kind: 'screw',
  title: 'Screw',
  group: 'Fastening',
  faces: ['lid', 'base', 'bass-wall', 'treble-wall', 'neck-end-wall', 'tail-end-wall'],
  fields,
  describe: (it) => (it.head > it.clearance ? 'countersunk' : 'plain hole'),
  openings: (it) => [circle(ORIGIN, it.clearance / 2)],
  footprint: (it) => circle(ORIGIN, Math.max(it.head, it.clearance) / 2),
  operations: (it): LocalOperation[] => {
    const depth = sinkDepth(it.head, it.clearance)
    const hole: LocalOperation = { kind: 'drill', diameter: it.clearance, depth: 'through' }
    return depth > 0 ? [hole, { kind: 'recess', contour: circle(ORIGIN, it.head / 2), depth }] : [hole]
  },
  reach: (it) => it.screwLength,
  bodies: (it) => [
    {
      part: 'shank',
      sort: 'fastener',
      contour: circle(ORIGIN, it.clearance / 2),
      from: 0,
      to: it.screwLength,
    },
  ],
  proud: (it) => (it.head > it.clearance ? 0 : PAN_HEAD),
  overNeck: 'avoid',
  overWall: 'meant',
  edgeLimit: 'screwToEdge',
  gapLimit: 'screwToOpening',
  size: (it) => ({ along: it.clearance, across: it.clearance }),
  presets: [
    { title: 'No. 4', fields: { clearance: 3, head: 5.7, screwLength: 16 } },
    { title: 'No. 6', fields: { clearance: 3.6, head: 7.1, screwLength: 25 } },
    { title: 'No. 8', fields: { clearance: 4.4, head: 8.4, screwLength: 32 } },
    { title: 'No. 10', fields: { clearance: 5, head: 9.8, screwLength: 40 } },
  ],
  specimens: {
    usual: {},
    'no countersink': { head: 0 },
    'head smaller than the hole': { clearance: 5, head: 3 },
    long: { screwLength: 120, clearance: 6, head: 12 },
  },
})
