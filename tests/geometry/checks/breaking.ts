/**
 * For every rule a design that keeps it and designs made to break it, each with what a pencil and the plain sizes
 * in the comment beside it say must be measured.
 *
 * The sizes that a file may leave out: box 240 × 180 × 55 with walls of 6 and lid and base of 4, lid on the walls,
 * base under them; scale 635 with 18 frets; three strings, 24 mm over all at the nut and 26 at the saddle, 0.4 mm
 * thick; saddle 172.8 mm along the lid (0.72 × 240), foot 5 × 50; neck 38 × 19 × 914, flush, relief 3, tail 38;
 * head 150 with posts at 45 and 77 mm, 7 mm either side; string holes of 2.4 mm, 13 mm apart, 14 mm behind the box.
 */
import type { Stated } from '../../support/designs.ts'

export interface Breaking {
  readonly what: string
  readonly design: Stated
  readonly grade: 'stop' | 'care' | 'note'
  /** What must be measured, in the rule's own unit. */
  readonly measured: number
}

export interface Case {
  /** Nothing of this rule is wrong here, and every limit of the rule is at work. */
  readonly holds: Stated
  readonly breaks: readonly Breaking[]
}

const hole = (fields: Stated = {}) => ({ kind: 'sound-hole', id: 'hole', along: 60, across: 60, diameter: 25, ...fields })
const screw = (fields: Stated = {}) => ({ kind: 'screw', id: 'screw', along: 5, across: 60, head: 6, ...fields })
const pickup = (fields: Stated = {}) => ({ kind: 'pickup', id: 'pickup', along: { ofScale: 0.1 }, ...fields })
const things = (...list: Stated[]): Stated => ({ things: list })

export const CASES: Readonly<Record<string, Case>> = {
  'hand-stated': {
    holds: { hand: 'left' },
    breaks: [{ what: 'no hand', design: { hand: 'not stated' }, grade: 'stop', measured: 0 }],
  },
  'place-followed': {
    holds: things(hole(), hole({ id: 'partner', along: { mirror: 'hole' }, across: { mirror: 'hole' } })),
    breaks: [
      { what: 'a partner that is gone', design: things(hole({ across: { mirror: 'gone' } })), grade: 'stop', measured: 0 },
      { what: 'a thing that follows itself', design: things(hole({ along: { mirror: 'hole' } })), grade: 'stop', measured: 0 },
      { what: 'a saddle that follows itself', design: { saddle: { place: { ofScale: 0.1 } } }, grade: 'stop', measured: 0 },
    ],
  },
  'box-has-inside': {
    holds: {},
    breaks: [
      // 8 - 4 - 4
      { what: 'lid and base that meet', design: { box: { depth: 8 } }, grade: 'stop', measured: 0 },
      // 40 - 30 - 30
      {
        what: 'walls thicker than the box is long',
        design: { box: { length: 40, walls: { neckEnd: 30, tailEnd: 30 } } },
        grade: 'stop',
        measured: -20,
      },
    ],
  },
  'neck-before-box': {
    holds: {},
    // 150 - 172.8
    breaks: [{ what: 'a scale shorter than the box', design: { scale: { length: 150 } }, grade: 'stop', measured: -22.8 }],
  },
  'opening-to-edge': {
    holds: things(hole(), screw()),
    breaks: [
      // 90 - 70 - 12.5
      { what: 'a hole near the edge', design: things(hole({ across: 70 })), grade: 'care', measured: 7.5 },
      { what: 'a hole over the edge', design: things(hole({ across: 85 })), grade: 'stop', measured: -7.5 },
      // 30 - 12.5 - 10
      { what: 'a rim near the edge', design: things(hole({ along: 30, across: 50, rimWidth: 10 })), grade: 'care', measured: 7.5 },
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
      { what: 'two holes near each other', design: things(hole(), hole({ id: 'second', along: 90 })), grade: 'care', measured: 5 },
      { what: 'two holes in one', design: things(hole(), hole({ id: 'second', along: 80 })), grade: 'stop', measured: -5 },
      // 20 - 12.5 - 3
      { what: 'a screw near a hole', design: things(hole(), screw({ along: 80 })), grade: 'care', measured: 4.5 },
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
      { what: 'a hole over a wall', design: things(hole({ face: 'base', across: -75 })), grade: 'stop', measured: -3.5 },
    ],
  },
  'string-to-board-edge': {
    holds: {},
    breaks: [
      // 19 - 17 - 0.2
      { what: 'strings near the edges', design: { strings: { spanAtNut: 34 } }, grade: 'care', measured: 1.8 },
      { what: 'strings beside the board', design: { strings: { spanAtNut: 40 } }, grade: 'stop', measured: -1.2 },
    ],
  },
  'strings-apart-at-nut': {
    holds: {},
    breaks: [
      { what: 'strings close together', design: { strings: { spanAtNut: 12 } }, grade: 'care', measured: 6 },
      { what: 'strings that touch', design: { strings: { spanAtNut: 0.6 } }, grade: 'stop', measured: 0.3 },
    ],
  },
  'strings-apart-at-saddle': {
    holds: {},
    breaks: [
      { what: 'strings close together', design: { strings: { spanAtSaddle: 16 } }, grade: 'care', measured: 8 },
      { what: 'strings that touch', design: { strings: { spanAtSaddle: 0.6 } }, grade: 'stop', measured: 0.3 },
    ],
  },
  'string-inside-pickup': {
    holds: things(pickup()),
    breaks: [
      // The outer string at nine tenths of the scale: 12 + 0.9; 13 - 12.9
      { what: 'a pickup just wide enough', design: things(pickup({ activeWidth: 26 })), grade: 'care', measured: 0.1 },
      { what: 'a string outside', design: things(pickup({ activeWidth: 20 })), grade: 'care', measured: -2.9 },
    ],
  },
  'saddle-on-lid': {
    holds: {},
    breaks: [
      // 90 - 95
      { what: 'a saddle longer than the lid is wide', design: { saddle: { length: 190 } }, grade: 'stop', measured: -5 },
      { what: 'a saddle on the edge', design: { saddle: { place: 1 } }, grade: 'stop', measured: -1.5 },
    ],
  },
  'saddle-to-tail-wall': {
    holds: {},
    breaks: [
      // 234 - 216 - 2.5
      { what: 'a saddle near the wall', design: { saddle: { place: { share: 0.9 } } }, grade: 'care', measured: 15.5 },
      { what: 'a saddle over the wall', design: { saddle: { place: { share: 1 } } }, grade: 'care', measured: -8.5 },
    ],
  },
  'saddle-to-opening': {
    holds: things(hole()),
    breaks: [
      // 172.8 - 2.5 - 10 - 12.5
      { what: 'a hole near the foot', design: things(hole({ along: 147.8, across: 20 })), grade: 'care', measured: 10 },
      // The hole's centre lies 2.5 deep in the foot, and the hole reaches 12.5 round it.
      {
        what: 'a hole under the foot',
        design: things(hole({ along: { midway: ['saddle', 'saddle'] }, across: 20 })),
        grade: 'stop',
        measured: -15,
      },
    ],
  },
  'saddle-setback': {
    holds: { saddle: { setback: 3 } },
    breaks: [{ what: 'a saddle at the bare scale', design: {}, grade: 'note', measured: 0 }],
  },
  'side-angle-at-saddle': {
    holds: {},
    breaks: [
      // From 13 at the saddle to 18 at the hole, 67.2 + 14 mm on, for a string that runs 1 mm wider in 635.
      {
        what: 'string holes farther apart than the strings',
        design: { tailpiece: { span: 36 } },
        grade: 'care',
        measured: ((Math.atan(5 / 81.2) - Math.atan(1 / 635)) * 180) / Math.PI,
      },
    ],
  },
  'side-angle-at-nut': {
    holds: {},
    breaks: [
      // The middle string runs straight and winds on the second bass post, 20 aside and 77 on.
      {
        what: 'posts far out',
        design: { headstock: { width: 60, postEdge: 10 } },
        grade: 'care',
        measured: (Math.atan(20 / 77) * 180) / Math.PI,
      },
    ],
  },
  'wall-under-slot': {
    holds: {},
    breaks: [
      // 55 - 46 - 4
      { what: 'a thick neck', design: { neck: { thickness: 46 } }, grade: 'care', measured: 5 },
      { what: 'a neck deeper than the wall', design: { neck: { thickness: 52 } }, grade: 'stop', measured: -1 },
    ],
  },
  'wall-beside-slot': {
    holds: {},
    breaks: [
      // 35 - 6 - 19.2
      { what: 'a narrow box', design: { box: { width: 70 } }, grade: 'care', measured: 9.8 },
      { what: 'a box narrower than its neck', design: { box: { width: 50 } }, grade: 'stop', measured: -0.2 },
    ],
  },
  'neck-left': {
    holds: {},
    breaks: [
      // 16 - 4 - 3, a cube of 0.18
      { what: 'a thin neck', design: { neck: { thickness: 16 } }, grade: 'care', measured: 9 },
      // 19 - 4 - 6, a cube of 0.11
      { what: 'a deep relief', design: { neck: { relief: 6 } }, grade: 'stop', measured: 9 },
      { what: 'a notch right through', design: { box: { lid: { thickness: 19 } } }, grade: 'stop', measured: 0 },
      // 19 - 13 - 1: a pickup hangs in it.
      {
        what: 'a pickup in the neck',
        design: things(pickup({ depth: 13 })),
        grade: 'stop',
        measured: 5,
      },
    ],
  },
  'room-under-neck': {
    holds: {},
    breaks: [
      // 24 - 4 - 19
      { what: 'a shallow box', design: { box: { depth: 24 } }, grade: 'care', measured: 1 },
      { what: 'a box shallower than the neck', design: { box: { depth: 22 } }, grade: 'stop', measured: -1 },
    ],
  },
  'room-under-hardware': {
    holds: things(pickup()),
    breaks: [
      // 55 - 4 - 50
      { what: 'a deep pickup', design: things(pickup({ depth: 50 })), grade: 'care', measured: 1 },
      { what: 'a pickup through the base', design: things(pickup({ depth: 55 })), grade: 'stop', measured: -4 },
    ],
  },
  'rim-depth': {
    holds: things(hole({ rimWidth: 4 })),
    breaks: [
      { what: 'a rim over half the lid', design: things(hole({ rimWidth: 4, rimDepth: 2.5 })), grade: 'care', measured: 2.5 },
      { what: 'a rim through the lid', design: things(hole({ rimWidth: 4, rimDepth: 4 })), grade: 'stop', measured: 4 },
    ],
  },
  'rim-ledge': {
    holds: things(hole({ rimWidth: 4 })),
    breaks: [{ what: 'a narrow ledge', design: things(hole({ rimWidth: 2 })), grade: 'care', measured: 2 }],
  },
  'board-behind-last-fret': {
    holds: {},
    breaks: [
      { what: 'a board that ends at the fret', design: { board: { beyond: 2 } }, grade: 'care', measured: 2 },
      // Fret 12 of 635 is at 317.5.
      {
        what: 'a board too short for its frets',
        design: { scale: { frets: { by: 'equal', count: 12 } }, board: { ends: 'at a length', length: 310 } },
        grade: 'stop',
        measured: -7.5,
      },
      // A bare neck goes under the lid at 635 - 172.8 = 462.2; fret 24 of 635 is at 476.25.
      {
        what: 'frets over the notch of a bare neck',
        design: { scale: { frets: { by: 'equal', count: 24 } }, board: { fitted: false } },
        grade: 'stop',
        measured: -14.05,
      },
    ],
  },
  'board-over-lid': {
    holds: { board: { ends: 'at a length', length: 500 } },
    breaks: [
      {
        what: 'a low board that runs into the lid',
        design: { board: { ends: 'at a length', length: 500 }, neck: { rise: -2 } },
        grade: 'stop',
        measured: -2,
      },
    ],
  },
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
      { what: 'a head wider than the blank', design: { headstock: { width: 50 } }, grade: 'note', measured: -12 },
      { what: 'a nut wider than the blank', design: { neck: { widthAtNut: 44 } }, grade: 'note', measured: -6 },
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
      { what: 'posts near each other', design: { headstock: { postSpacing: 20 } }, grade: 'care', measured: 20 },
      { what: 'posts in one hole', design: { headstock: { postSpacing: 7 } }, grade: 'stop', measured: 7 },
    ],
  },
  'posts-for-strings': {
    holds: {},
    breaks: [{ what: 'a post too few', design: { headstock: { bassTuners: 1 } }, grade: 'stop', measured: 2 }],
  },
}
