/** Designs made to break the rules about strings, saddle and board. */
import type { Cases } from './case.ts'

export const STRINGS: Cases = {
  'string-to-board-edge': {
    holds: {},
    breaks: [
      // 19 - 17 - 0.2
      {
        what: 'strings near the edges',
        design: { strings: { spanAtNut: 34 } },
        grade: 'care',
        measured: 1.8,
      },
      {
        what: 'strings beside the board',
        design: { strings: { spanAtNut: 40 } },
        grade: 'stop',
        measured: -1.2,
      },
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
      {
        what: 'strings close together',
        design: { strings: { spanAtSaddle: 16 } },
        grade: 'care',
        measured: 8,
      },
      {
        what: 'strings that touch',
        design: { strings: { spanAtSaddle: 0.6 } },
        grade: 'stop',
        measured: 0.3,
      },
    ],
  },
  'saddle-on-lid': {
    holds: {},
    breaks: [
      // 90 - 95
      {
        what: 'a saddle longer than the lid is wide',
        design: { saddle: { length: 190 } },
        grade: 'stop',
        measured: -5,
      },
      { what: 'a saddle on the edge', design: { saddle: { place: 1 } }, grade: 'stop', measured: -1.5 },
    ],
  },
  'saddle-to-tail-wall': {
    holds: {},
    breaks: [
      // 234 - 216 - 2.5
      {
        what: 'a saddle near the wall',
        design: { saddle: { place: { share: 0.9 } } },
        grade: 'care',
        measured: 15.5,
      },
      {
        what: 'a saddle over the wall',
        design: { saddle: { place: { share: 1 } } },
        grade: 'care',
        measured: -8.5,
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
}
