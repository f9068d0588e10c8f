/** Designs made to break the rules about what stands behind the faces. */
import type { Stated } from '../../../support/designs.ts'
import { type Cases, pickup, screw, things } from './case.ts'

/** A screw through the treble wall at the pickup (172.8 - 63.5 along the lid), 6 below the wall's edge. */
const fromTheSide = (screwLength: number) =>
  screw({ face: 'treble-wall', along: 172.8 - 63.5 - 120, across: 6, clearance: 3.5, screwLength })

/** A jack in the treble wall, 30 down; threads of 7 and 3 of nut, a body of 20. */
const jack = (fields: Stated = {}): Stated => ({
  kind: 'jack',
  id: 'jack',
  face: 'treble-wall',
  along: 0,
  across: 25,
  ...fields,
})
/** A pot in the lid, clear of neck and walls: shaft of 18, knob of 19 bored 12. */
const pot = (fields: Stated = {}): Stated => ({ kind: 'pot', id: 'pot', along: 120, across: 55, ...fields })
const rosette = (fields: Stated = {}): Stated => ({
  kind: 'rosette',
  id: 'rosette',
  along: 70,
  across: 52,
  diameter: 40,
  pattern: 'rows',
  hole: 3,
  pitch: 6,
  ...fields,
})
/** The default walls of 6 are thin enough for most threads; these are not. */
const thick = (treble: number, ...list: Stated[]): Stated => ({ box: { walls: { treble } }, things: list })

export const HARDWARE: Cases = {
  'parts-clear': {
    // The neck is let out 1 mm round a pickup.
    holds: things(pickup(), fromTheSide(40)),
    breaks: [
      // The pickup ends 35.25 from the middle, the screw at 90 - 60.
      {
        what: 'a screw from the side into the pickup',
        design: things(pickup(), fromTheSide(60)),
        grade: 'stop',
        measured: -5.25,
      },
      // 90 - 54.25 - 35.25
      {
        what: 'a screw that ends at the pickup',
        design: things(pickup(), fromTheSide(54.25)),
        grade: 'care',
        measured: 0.5,
      },
      // Holes at 14 behind the box, 240 - 172.8 + 635 + 14; a screw through the lid at 10 before them is clear of it,
      // one up through the tail is not to be had; so: a pickup 60 deep over a string held in the lid, 14 from its end.
      {
        what: 'a pickup where a string goes through the lid',
        design: {
          tailpiece: { at: 'the lid', holes: 3, span: 26, diameter: 2.4, fromEdge: 30 },
          things: [pickup({ along: 204, sizeAlong: 20, sizeAcross: 20, cornerRadius: 0, depth: 5 })],
        },
        grade: 'stop',
        // Middle hole at 210: 4 from the end of the pickup's body, and 1.2 to its far side; the hole goes down
        // 4 + 6, the body 5.
        measured: -5,
      },
    ],
  },
  'thread-through': {
    // 7 - 4 leaves 3 for the nut
    holds: thick(4, jack()),
    breaks: [
      // 7 - 9.5
      { what: 'a wall thicker than the thread', design: thick(9.5, jack()), grade: 'stop', measured: -2.5 },
      // 9.5 - 3 is 6.5: half a millimetre of thread for a nut that wants 3
      {
        what: 'a bore that is not deep enough',
        design: thick(9.5, jack({ bore: 'from inside', boreDepth: 3 })),
        grade: 'stop',
        measured: 0.5,
      },
      // 4 + 4 of plate
      { what: 'a plate too thick', design: things(pot({ backing: 4 })), grade: 'stop', measured: -0.1 },
    ],
  },
  'bore-wide': {
    holds: thick(9.5, jack({ bore: 'from inside', boreDiameter: 22, boreDepth: 5.5 })),
    breaks: [
      {
        what: 'a body wider than its bore',
        design: thick(9.5, jack({ bore: 'from inside', boreDiameter: 18, boreDepth: 5.5 })),
        grade: 'stop',
        measured: 18,
      },
      {
        what: 'a nut wider than its bore',
        design: thick(9.5, jack({ bore: 'from outside', boreDiameter: 12, boreDepth: 5.5 })),
        grade: 'stop',
        measured: 12,
      },
    ],
  },
  'face-for-bushing': {
    holds: thick(3, jack()),
    breaks: [
      { what: 'a jack in tin', design: thick(1.2, jack()), grade: 'care', measured: 1.2 },
      // 6 - 4.5
      {
        what: 'a bore that leaves too little',
        design: things(jack({ bore: 'from inside', boreDepth: 4.5 })),
        grade: 'care',
        measured: 1.5,
      },
      {
        what: 'a bore through the wall',
        design: things(jack({ bore: 'from outside', boreDepth: 7 })),
        grade: 'stop',
        measured: 0,
      },
    ],
  },
  'shaft-in-knob': {
    holds: things(pot()),
    breaks: [
      // 8 - 4
      { what: 'a short shaft', design: things(pot({ shaft: 8 })), grade: 'care', measured: 4 },
      {
        what: 'a shaft that does not come out',
        design: things(pot({ shaft: 3 })),
        grade: 'stop',
        measured: -1,
      },
      { what: 'a shallow knob', design: things(pot({ knobDepth: 5 })), grade: 'care', measured: 5 },
    ],
  },
  'knob-off-face': {
    // 18 - 4 - 12
    holds: things(pot()),
    breaks: [{ what: 'a long shaft', design: things(pot({ shaft: 30 })), grade: 'care', measured: 14 }],
  },
  'recess-left': {
    holds: things(screw({ head: 6, clearance: 3 })),
    breaks: [
      // 4 - (10 - 3) / 2
      {
        what: 'a wide countersink',
        design: things(screw({ head: 10, clearance: 3 })),
        grade: 'care',
        measured: 0.5,
      },
      {
        what: 'a plate let in through the lid',
        design: things({ kind: 'name-plate', id: 'plate', depth: 5 }),
        grade: 'stop',
        measured: -1,
      },
    ],
  },
  'rosette-web': {
    holds: things(rosette()),
    breaks: [
      { what: 'holes near each other', design: things(rosette({ pitch: 4 })), grade: 'care', measured: 1 },
      { what: 'holes in each other', design: things(rosette({ pitch: 2.5 })), grade: 'stop', measured: -0.5 },
      // A wide middle does not hide two holes that touch, turned or not.
      {
        what: 'holes that touch, turned',
        design: things(rosette({ pitch: 3.2, inner: 20, turnDegrees: 30 })),
        grade: 'care',
        measured: 0.2,
      },
    ],
  },
  'rosette-holes': {
    holds: things(rosette()),
    breaks: [
      // Nothing of 40 across has room in 20.
      {
        what: 'a hole larger than the field',
        design: things(rosette({ diameter: 20, hole: 40 })),
        grade: 'stop',
        measured: 0,
      },
      // 150 x 150 in rows of 1
      {
        what: 'tens of thousands of holes',
        design: things(
          rosette({
            shape: 'rectangular',
            sizeAlong: 150,
            sizeAcross: 150,
            hole: 0.5,
            pitch: 1,
            along: 120,
            across: 0,
          }),
        ),
        grade: 'stop',
        measured: 22500,
      },
    ],
  },
  'cover-on-face': {
    holds: things(pot()),
    breaks: [
      // 90 - 85 - 9.5
      { what: 'a knob over the edge', design: things(pot({ across: 85 })), grade: 'care', measured: -4.5 },
      // 60 across on a face of 47: each side 6.5 too far
      {
        what: 'a plate larger than its wall',
        design: things({
          kind: 'tailpiece-plate',
          id: 'plate',
          face: 'tail-end-wall',
          along: 50,
          across: 23.5,
          sizeAcross: 60,
        }),
        grade: 'care',
        measured: -6.5,
      },
    ],
  },
  'covers-apart': {
    holds: things(pot(), pot({ id: 'second', along: 144 })),
    breaks: [
      // 21 - 19
      {
        what: 'knobs near each other',
        design: things(pot(), pot({ id: 'second', along: 141 })),
        grade: 'care',
        measured: 2,
      },
      {
        what: 'knobs in each other',
        design: things(pot(), pot({ id: 'second', along: 135 })),
        grade: 'stop',
        measured: -4,
      },
    ],
  },
  'screw-holds': {
    // 16 - 4 in the wall
    holds: things(screw({ along: 3, clearance: 3 })),
    breaks: [
      { what: 'a screw over nothing', design: things(screw({ along: 60 })), grade: 'care', measured: 0 },
      // 12 - 4
      {
        what: 'a short screw',
        design: things(screw({ along: 3, screwLength: 12 })),
        grade: 'care',
        measured: 8,
      },
      {
        what: 'a strap button without a block',
        design: things({ kind: 'strap-button', id: 'button', face: 'bass-wall', along: 40, across: 25 }),
        grade: 'care',
        measured: 0,
      },
    ],
  },
  'screw-beside': {
    // 3 - 1.5
    holds: things(screw({ along: 3, clearance: 3 })),
    breaks: [
      // 5.2 of 6, less 1.5
      {
        what: 'a screw near the inside of a wall',
        design: things(screw({ along: 4.2, clearance: 3 })),
        grade: 'care',
        measured: 0.3,
      },
      {
        what: 'a screw out of the wall',
        design: things(screw({ along: 5, clearance: 3 })),
        grade: 'stop',
        measured: -0.5,
      },
    ],
  },
  'screw-point': {
    holds: things(screw({ along: 3, clearance: 3 })),
    breaks: [
      // Lid, wall and base are 55 together
      {
        what: 'a screw through the whole wall',
        design: things(screw({ along: 3, clearance: 3, screwLength: 57 })),
        grade: 'care',
        measured: 2,
      },
    ],
  },
  'head-flush': {
    holds: things(screw()),
    breaks: [{ what: 'a head on the lid', design: things(screw({ head: 0 })), grade: 'note', measured: 2 }],
  },
}
