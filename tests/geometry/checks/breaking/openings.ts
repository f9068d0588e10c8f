/** Designs made to break the rules about openings and what hangs in them. */
import { type Cases, hole, pickup, screw, things } from './case.ts'

export const OPENINGS: Cases = {
  'opening-to-edge': {
    holds: things(hole(), screw()),
    breaks: [
      // 90 - 70 - 12.5
      { what: 'a hole near the edge', design: things(hole({ across: 70 })), grade: 'care', measured: 7.5 },
      { what: 'a hole over the edge', design: things(hole({ across: 85 })), grade: 'stop', measured: -7.5 },
      // 30 - 12.5 - 10
      {
        what: 'a rim near the edge',
        design: things(hole({ along: 30, across: 50, rimWidth: 10 })),
        grade: 'care',
        measured: 7.5,
      },
      { what: 'a screw near the edge', design: things(screw({ along: 4 })), grade: 'care', measured: 1 },
      // 27.5 from the middle of a wall 47 tall: 23.5 - 4 - 12.5
      {
        what: 'a hole near the edge of a wall',
        design: things(hole({ face: 'bass-wall', along: 0, across: 27.5 })),
        grade: 'care',
        measured: 7,
      },
    ],
  },
  'between-openings': {
    holds: things(hole(), hole({ id: 'second', along: 100 }), screw({ along: 60, across: 82.5 })),
    breaks: [
      // 30 - 12.5 - 12.5; a hole of 25 wants 12.5
      {
        what: 'two holes near each other',
        design: things(hole(), hole({ id: 'second', along: 90 })),
        grade: 'care',
        measured: 5,
      },
      {
        what: 'two holes in one',
        design: things(hole(), hole({ id: 'second', along: 80 })),
        grade: 'stop',
        measured: -5,
      },
      // 20 - 12.5 - 3
      {
        what: 'a screw near a hole',
        design: things(hole(), screw({ along: 80 })),
        grade: 'care',
        measured: 4.5,
      },
      // 30 - 19.2 - 6
      {
        what: 'a hole beside the neck slot',
        design: things(hole({ face: 'neck-end-wall', along: 30, across: 10, diameter: 12 })),
        grade: 'care',
        measured: 4.8,
      },
      // 20 - 14 - 5 - 1.2
      {
        what: 'a hole by the string holes in the lid',
        design: {
          tailpiece: { at: 'the lid', fromEdge: 14, holes: 1 },
          ...things(hole({ along: 220, across: 9, diameter: 10 })),
        },
        grade: 'care',
        measured: Math.hypot(6, 9) - 5 - 1.2,
      },
    ],
  },
  'opening-to-neck': {
    holds: things(hole()),
    breaks: [
      // 35 - 12.5 - 19
      { what: 'a hole beside the neck', design: things(hole({ across: 35 })), grade: 'care', measured: 3.5 },
      { what: 'a hole over the neck', design: things(hole({ across: -25 })), grade: 'stop', measured: -6.5 },
    ],
  },
  'opening-to-wall': {
    holds: things(hole()),
    breaks: [
      // 84 - 68 - 12.5
      { what: 'a hole by a wall', design: things(hole({ across: 68 })), grade: 'care', measured: 3.5 },
      {
        what: 'a hole over a wall',
        design: things(hole({ face: 'base', across: -75 })),
        grade: 'stop',
        measured: -3.5,
      },
    ],
  },
  'saddle-to-opening': {
    holds: things(hole()),
    breaks: [
      // 172.8 - 2.5 - 10 - 12.5
      {
        what: 'a hole near the foot',
        design: things(hole({ along: 147.8, across: 20 })),
        grade: 'care',
        measured: 10,
      },
      // The hole's centre lies 2.5 deep in the foot, and the hole reaches 12.5 round it.
      {
        what: 'a hole under the foot',
        design: things(hole({ along: { midway: ['saddle', 'saddle'] }, across: 20 })),
        grade: 'stop',
        measured: -15,
      },
    ],
  },
  'string-inside-pickup': {
    holds: things(pickup()),
    breaks: [
      // The outer string at nine tenths of the scale: 12 + 0.9; 13 - 12.9
      {
        what: 'a pickup just wide enough',
        design: things(pickup({ activeWidth: 26 })),
        grade: 'care',
        measured: 0.1,
      },
      {
        what: 'a string outside',
        design: things(pickup({ activeWidth: 20 })),
        grade: 'care',
        measured: -2.9,
      },
    ],
  },
  'room-under-hardware': {
    holds: things(pickup()),
    breaks: [
      // 55 - 4 - 50
      { what: 'a deep pickup', design: things(pickup({ depth: 50 })), grade: 'care', measured: 1 },
      {
        what: 'a pickup through the base',
        design: things(pickup({ depth: 55 })),
        grade: 'stop',
        measured: -4,
      },
    ],
  },
  'rim-depth': {
    holds: things(hole({ rimWidth: 4 })),
    breaks: [
      {
        what: 'a rim over half the lid',
        design: things(hole({ rimWidth: 4, rimDepth: 2.5 })),
        grade: 'care',
        measured: 2.5,
      },
      {
        what: 'a rim through the lid',
        design: things(hole({ rimWidth: 4, rimDepth: 4 })),
        grade: 'stop',
        measured: 4,
      },
    ],
  },
  'rim-ledge': {
    holds: things(hole({ rimWidth: 4 })),
    breaks: [{ what: 'a narrow ledge', design: things(hole({ rimWidth: 2 })), grade: 'care', measured: 2 }],
  },
}
