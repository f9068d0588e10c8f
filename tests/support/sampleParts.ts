/** Parts for the tests of exporters: every operation, and the shapes that have gone wrong elsewhere. */
import {
  circle,
  line,
  type Operation,
  type Part,
  roundedRectangle,
  stadium,
  type Vertex,
} from '../../geometry/index.ts'

const part = (changes: Partial<Part> & Pick<Part, 'id' | 'title' | 'outline'>): Part => ({
  seen: 'from outside',
  mirrored: false,
  headEnd: 'left',
  hand: 'right',
  thickness: 4,
  operations: [],
  ...changes,
})

const LID_OPERATIONS: readonly Operation[] = [
  { kind: 'cut', side: 'inside', contour: circle({ x: 82.25, y: 3.125 }, 26.4), of: 'Sound hole' },
  { kind: 'cut', side: 'inside', contour: stadium({ x: 205, y: -55 }, 60, 11), of: 'Oval hole' },
  { kind: 'cut', side: 'inside', contour: roundedRectangle({ x: 160, y: 0 }, 26.5, 71.2, 3.2), of: 'Pickup' },
  { kind: 'recess', contour: circle({ x: 82.25, y: 3.125 }, 30), depth: 1.5, of: 'Rim of the sound hole' },
  { kind: 'recess', contour: roundedRectangle({ x: 18, y: 0 }, 36, 45, 4), depth: 3, of: 'Neck' },
  { kind: 'drill', centre: { x: 245, y: 66 }, diameter: 9.5, depth: 'through', of: 'Volume' },
  { kind: 'drill', centre: { x: 270, y: 66 }, diameter: 9.5, depth: 'through', of: 'Tone' },
  { kind: 'drill', centre: { x: 160, y: 41 }, diameter: 2, depth: 12, of: 'Pickup screw' },
  { kind: 'drill', centre: { x: 160, y: -41 }, diameter: 2, depth: 12, of: 'Pickup screw' },
  {
    kind: 'mark',
    contour: line({ x: 231.0625, y: -20 }, { x: 231.0625, y: 20 }),
    of: 'Saddle line',
  },
  {
    kind: 'mark',
    contour: {
      shape: 'chain',
      closed: false,
      vertices: [
        { x: 255, y: -70, bulge: 0 },
        { x: 280, y: -70, bulge: Math.tan(Math.PI / 8) },
        { x: 290, y: -60, bulge: 0 },
        { x: 290, y: -30, bulge: 0 },
      ],
    },
    of: 'Edge of a label',
  },
  { kind: 'datum', line: line({ x: 0, y: 0 }, { x: 300, y: 0 }), of: 'Centreline' },
  { kind: 'note', at: { x: 12, y: 84 }, height: 3, text: 'Grain this way', turn: 0, of: 'Grain' },
  { kind: 'note', at: { x: 8, y: -80 }, height: 2.5, text: 'Edge to hook on', turn: Math.PI / 2, of: 'Edge' },
]

/** A lid with something of every kind but a saw slot. */
export const lid: Part = part({
  id: 'lid',
  title: 'Lid',
  outline: roundedRectangle({ x: 150, y: 0 }, 300, 200, 6),
  operations: LID_OPERATIONS,
})

const SCALE_LENGTH = 635

/** A neck 900 mm long with saw slots for sixteen frets. */
export const neck: Part = part({
  id: 'neck-top',
  title: 'Neck, from the front',
  seen: 'from the playing side',
  thickness: 21,
  outline: {
    shape: 'chain',
    closed: true,
    vertices: [
      { x: -120, y: -22, bulge: 0 },
      { x: 780, y: -22, bulge: 0 },
      { x: 780, y: 22, bulge: 0 },
      { x: -120, y: 22, bulge: 0 },
    ],
  },
  operations: [
    ...Array.from({ length: 16 }, (_, index): Operation => {
      const x = SCALE_LENGTH * (1 - 2 ** (-(index + 1) / 12))
      return {
        kind: 'slot',
        from: { x, y: -21 },
        to: { x, y: 21 },
        width: 0.58,
        depth: 2,
        of: `Fret ${index + 1}`,
      }
    }),
    { kind: 'drill', centre: { x: -60, y: 0 }, diameter: 10, depth: 'through', of: 'Tuner post' },
    { kind: 'datum', line: line({ x: -120, y: 0 }, { x: 780, y: 0 }), of: 'Centreline' },
  ],
})

/** Titles and notes as somebody might type them who means no good, or only pastes from elsewhere. */
export const HOSTILE =
  '<script>alert("1")</script> & \u202egnp.lid\u202c\u0000\u0007\r\n0\nSECTION\n \ud800 ⌀6 ±½″ 100%%d \\U+0041 \u{1f3b8} naïve'

export const hostile: Part = part({
  id: 'wall',
  title: HOSTILE,
  seen: `from "inside" <b>&amp;`,
  mirrored: true,
  headEnd: 'towards the viewer',
  hand: 'left',
  outline: roundedRectangle({ x: 0, y: 0 }, 80, 30, 2),
  operations: [
    { kind: 'note', at: { x: -30, y: 0 }, height: 3, text: HOSTILE, turn: 0, of: 'Note' },
    { kind: 'note', at: { x: -30, y: -8 }, height: 3, text: '\u0000\u202e\n', turn: 0, of: 'Nothing left' },
  ],
})

/** Arcs that are hard to write: half circles, more than half, and one of a radius of many kilometres. */
const HARD_ARCS: readonly Vertex[] = [
  // The first segment and the one that closes the contour are arcs: turned over, each becomes the other.
  { x: 60, y: 0, bulge: 1 },
  { x: 60, y: 20, bulge: 0 },
  { x: 45, y: 20, bulge: -0.999 },
  { x: 35, y: 20, bulge: 0 },
  { x: 22, y: 20, bulge: 1.6 },
  { x: 16, y: 20, bulge: 0 },
  { x: 0, y: 20, bulge: -2e-6 },
  { x: 0, y: 0, bulge: 0.1 },
]

export const hardArcs: Part = part({
  id: 'bent',
  title: 'Bent strip',
  headEnd: 'right',
  outline: { shape: 'chain', closed: true, vertices: HARD_ARCS },
})

export const nut: Part = part({
  id: 'nut',
  title: 'Nut',
  seen: 'from the head end',
  headEnd: 'towards the viewer',
  thickness: 5,
  outline: roundedRectangle({ x: 0, y: 0 }, 44, 9, 1),
})

export const allParts: readonly Part[] = [lid, neck, hostile, hardArcs, nut]
