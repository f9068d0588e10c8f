/** Designs made to break the rules about what is stated, the box and the neck in it. */
import { type Cases, hole, pickup, things } from './case.ts'

export const WOOD: Cases = {
  'hand-stated': {
    holds: { hand: 'left' },
    breaks: [{ what: 'no hand', design: { hand: 'not stated' }, grade: 'stop', measured: 0 }],
  },
  'place-followed': {
    holds: things(hole(), hole({ id: 'partner', along: { mirror: 'hole' }, across: { mirror: 'hole' } })),
    breaks: [
      {
        what: 'a partner that is gone',
        design: things(hole({ across: { mirror: 'gone' } })),
        grade: 'stop',
        measured: 0,
      },
      {
        what: 'a thing that follows itself',
        design: things(hole({ along: { mirror: 'hole' } })),
        grade: 'stop',
        measured: 0,
      },
      {
        what: 'a saddle that follows itself',
        design: { saddle: { place: { ofScale: 0.1 } } },
        grade: 'stop',
        measured: 0,
      },
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
    breaks: [
      {
        what: 'a scale shorter than the box',
        design: { scale: { length: 150 } },
        grade: 'stop',
        measured: -22.8,
      },
    ],
  },
  'wall-under-slot': {
    holds: {},
    breaks: [
      // 55 - 46 - 4
      { what: 'a thick neck', design: { neck: { thickness: 46 } }, grade: 'care', measured: 5 },
      {
        what: 'a neck deeper than the wall',
        design: { neck: { thickness: 52 } },
        grade: 'stop',
        measured: -1,
      },
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
      {
        what: 'a notch right through',
        design: { box: { lid: { thickness: 19 } } },
        grade: 'stop',
        measured: 0,
      },
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
}
