/** Designs made to break the rules about both ends: blank, head, posts and string holes. */
import type { Cases } from './case.ts'

export const ENDS: Cases = {
  'tail-hole-web': {
    holds: {},
    breaks: [
      // 6 - 2.4
      { what: 'holes near each other', design: { tailpiece: { span: 12 } }, grade: 'care', measured: 3.6 },
      { what: 'holes in one', design: { tailpiece: { span: 4 } }, grade: 'stop', measured: -0.4 },
      // 13 - 7: a hole of 7 wants 7
      { what: 'wide holes', design: { tailpiece: { diameter: 7 } }, grade: 'care', measured: 6 },
    ],
  },
  'tail-hole-to-end': {
    holds: {},
    breaks: [
      // 38 - 30 - 1.2
      { what: 'holes near the end', design: { tailpiece: { fromEdge: 30 } }, grade: 'care', measured: 6.8 },
      { what: 'holes in the end', design: { tailpiece: { fromEdge: 37.5 } }, grade: 'stop', measured: -0.7 },
      // 19 - 16 - 1.2
      { what: 'holes near the side', design: { tailpiece: { span: 32 } }, grade: 'care', measured: 1.8 },
      {
        what: 'holes near the edge of the wall',
        design: { tailpiece: { at: 'the tail-end wall', fromEdge: 5 } },
        grade: 'care',
        measured: 3.8,
      },
      // The wall is 55 - 4 - 4 = 47 tall.
      {
        what: 'holes below the wall',
        design: { tailpiece: { at: 'the tail-end wall', fromEdge: 47 } },
        grade: 'stop',
        measured: -1.2,
      },
      {
        what: 'holes before the lid',
        design: { tailpiece: { at: 'the lid', fromEdge: 240 } },
        grade: 'stop',
        measured: -1.2,
      },
      // A lid let in between walls of 6 and 40 reaches 90 - 40 - 0.5 = 49.5 to the bass side; 49.5 - 48 - 1.2
      {
        what: 'holes near the bass side of a lid let in beside a thick wall',
        design: {
          box: { lid: { fit: 'between the walls' }, walls: { bass: 40 } },
          tailpiece: { at: 'the lid', span: 96 },
        },
        grade: 'care',
        measured: 0.3,
      },
    ],
  },
  'tail-to-hold': {
    holds: {},
    breaks: [
      { what: 'a tail too short', design: { neck: { tail: 10 } }, grade: 'stop', measured: 10 },
      { what: 'a neck without a tail', design: { neck: { ends: 'at a block' } }, grade: 'stop', measured: 0 },
    ],
  },
  'tail-holes-for-strings': {
    holds: {},
    breaks: [{ what: 'a hole too few', design: { tailpiece: { holes: 2 } }, grade: 'stop', measured: 2 }],
  },
  'tail-other-counts': {
    holds: { tailpiece: { alsoFor: 2 } },
    breaks: [
      // Holes 40 over all; two strings 26 apart at the saddle and 24 at the nut, 635 before it. The holes lie 67.2 to
      // the box's end and 14 behind the saddle: atan(7 / 81.2) less atan(1 / 635).
      {
        what: 'two strings in holes far apart',
        design: { tailpiece: { alsoFor: 2, span: 40 } },
        grade: 'care',
        measured: ((Math.atan(7 / 81.2) - Math.atan(1 / 635)) * 180) / Math.PI,
      },
      {
        what: 'too few holes for another count',
        design: { tailpiece: { alsoFor: 5 } },
        grade: 'stop',
        measured: 90,
      },
    ],
  },
  'ground-hole-clear': {
    holds: { tailpiece: { groundHole: 3 } },
    breaks: [
      // The hole stands at (38 + 0.4 + 3) / 2 + 8 = 28.7, 12 down; string holes of 2.4 at 25 and 28.
      {
        what: 'beside a string hole',
        design: { tailpiece: { groundHole: 3, at: 'the tail-end wall', fromEdge: 12, span: 50 } },
        grade: 'care',
        measured: 3.7 - 1.5 - 1.2,
      },
      {
        what: 'in a string hole',
        design: { tailpiece: { groundHole: 3, at: 'the tail-end wall', fromEdge: 12, span: 56 } },
        grade: 'stop',
        measured: 0.7 - 1.5 - 1.2,
      },
      // A hole 10 wide stands at 32.2; to one of 12 at 45 there are 12.8 less 5 less 6.
      {
        what: 'beside another hole in the wall',
        design: {
          tailpiece: { groundHole: 10 },
          things: [
            { kind: 'sound-hole', id: 'port', face: 'tail-end-wall', along: 45, across: 12, diameter: 12 },
          ],
        },
        grade: 'care',
        measured: 45 - 32.2 - 5 - 6,
      },
      // A block on the base, 40 tall, begins 31 from the centreline; the hole ends at 30.2.
      {
        what: 'beside a block in the corner',
        design: {
          tailpiece: { groundHole: 3 },
          box: { inside: [{ id: 'block', along: 224, across: 46, long: 20, wide: 30, tall: 40 }] },
        },
        grade: 'care',
        measured: 0.8,
        within: 0.01,
      },
      // A screw through the lid into the wall, on the line of the hole and deep enough.
      {
        what: 'across a screw in the edge of the wall',
        design: {
          tailpiece: { groundHole: 3 },
          things: [{ kind: 'screw', id: 'in-edge', along: 237, across: 28.7, screwLength: 30 }],
        },
        grade: 'stop',
        measured: -1.5 - 1.5,
        within: 0.1,
      },
    ],
  },
  'blank-length': {
    holds: {},
    breaks: [
      // 150 + 635 + 67.2 + 38 = 890.2
      { what: 'a blank used up', design: { neck: { length: 891 } }, grade: 'care', measured: 0.8 },
      { what: 'a blank too short', design: { neck: { length: 880 } }, grade: 'stop', measured: -10.2 },
    ],
  },
  'head-on-blank': {
    holds: {},
    breaks: [
      {
        what: 'a head wider than the blank',
        design: { headstock: { width: 50 } },
        grade: 'note',
        measured: -12,
      },
      {
        what: 'a nut wider than the blank',
        design: { neck: { widthAtNut: 44 } },
        grade: 'note',
        measured: -6,
      },
    ],
  },
  'first-post': {
    holds: {},
    breaks: [
      { what: 'a post near the nut', design: { headstock: { firstPost: 35 } }, grade: 'care', measured: 35 },
      { what: 'a post at the nut', design: { headstock: { firstPost: 25 } }, grade: 'stop', measured: 25 },
      { what: 'a treble post nearer', design: { headstock: { stagger: -10 } }, grade: 'care', measured: 35 },
    ],
  },
  'posts-on-head': {
    holds: {},
    breaks: [
      // 80 - 45 - 32 - 4
      { what: 'a head too short', design: { headstock: { length: 80 } }, grade: 'stop', measured: -1 },
      {
        what: 'posts near each other',
        design: { headstock: { postSpacing: 20 } },
        grade: 'care',
        measured: 20,
      },
      { what: 'posts in one hole', design: { headstock: { postSpacing: 7 } }, grade: 'stop', measured: 7 },
    ],
  },
  'posts-for-strings': {
    holds: {},
    breaks: [
      { what: 'a post too few', design: { headstock: { bassTuners: 1 } }, grade: 'stop', measured: 2 },
    ],
  },
}
