/** The socket for the lead: thread through the face, its frame behind, and the room that the plug takes inside. */
import { length } from '../design/fields.ts'
import { bushedFields, bushedOperations, bushedTaken, bushingOf, seat } from './bushed.ts'
import { defineKind, type LocalBody } from './kind.ts'
import { disc, LEAST, openOf, widest } from './open.ts'

/** The sleeve of a quarter-inch plug (a common encyclopaedic figure; IEC 60603-11 from memory). */
const PLUG = 6.35

const fields = {
  ...bushedFields({ hole: 9.8, thread: 7, nut: 3, washer: 14, boreDiameter: 22 }),
  bodyDiameter: length(20, 4, 60, {
    label: 'Body, across',
    help: 'Of the frame and its springs behind the face, at their widest.',
  }),
  bodyDepth: length(26, 1, 80, {
    label: 'Body, deep',
    help: 'From where the body sits to its back, lugs included.',
  }),
  plug: length(32, 0, 120, {
    label: 'Plug, deep',
    help: 'How far the tip of a plug comes behind the outer side of the face; 0 where the body holds it all.',
  }),
}

function bodies(
  it: { bodyDiameter: number; bodyDepth: number; plug: number } & Parameters<typeof seat>[0],
  thickness: number,
): LocalBody[] {
  const from = seat(it, thickness)
  const back = from + it.bodyDepth
  const body: LocalBody = { part: 'body', sort: 'hardware', contour: disc(it.bodyDiameter), from, to: back }
  if (it.plug <= back) return [body]
  return [body, { part: 'plug', sort: 'hardware', contour: disc(PLUG), from: back, to: it.plug }]
}

export const jack = defineKind({
  kind: 'jack',
  title: 'Jack',
  group: 'Pickups and controls',
  faces: ['treble-wall', 'bass-wall', 'tail-end-wall', 'neck-end-wall', 'lid'],
  fields,
  describe: (it) => `${it.thread} mm of thread${it.bore === 'none' ? '' : `, bored ${it.bore}`}`,
  openings: (it) => openOf(bushedOperations(it)),
  footprint: (it) => widest(it.washer, it.hole, it.bore === 'none' ? 0 : it.boreDiameter),
  cover: (it) => (it.washer > LEAST ? widest(it.washer) : null),
  taken: bushedTaken,
  operations: bushedOperations,
  reach: (it, thickness) => Math.max(seat(it, thickness) + it.bodyDepth, it.plug),
  bodies,
  overNeck: 'avoid',
  overWall: 'avoid',
  edgeLimit: 'openingToEdge',
  gapLimit: 'betweenOpenings',
  bushing: (it) => bushingOf(it, it.bodyDiameter),
  size: (it) => ({ along: it.hole, across: it.hole }),
  presets: [
    { title: 'Open frame, short thread', fields: { thread: 7, bodyDiameter: 20, bodyDepth: 26, plug: 32 } },
    { title: 'Open frame, long thread', fields: { thread: 15, bodyDiameter: 20, bodyDepth: 26, plug: 32 } },
    {
      title: 'Closed barrel',
      fields: {
        thread: 12,
        washer: 18,
        bodyDiameter: 13,
        bodyDepth: 38,
        plug: 0,
        hole: 12.2,
        boreDiameter: 16,
      },
    },
  ],
  specimens: {
    usual: {},
    'long thread': { thread: 15 },
    'bored from inside': { bore: 'from inside', boreDepth: 3.5 },
    'bored less than its hole': { bore: 'from inside', boreDiameter: 5 },
    'plug within the body': { plug: 0 },
    'no washer': { washer: 0 },
  },
})
