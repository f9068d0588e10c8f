/** Surveys made to break the rules about them. The usual box, 240 × 180, has diagonals of 300: 3, 4 and 5 times 60. */
import type { Cases } from './case.ts'

const SQUARE = {
  bass: [240],
  treble: [240],
  neckEnd: [180],
  tailEnd: [180],
  diagonalFromBass: [300],
  diagonalFromTreble: [300],
}
const surveyed = (survey: object) => ({ box: { survey } })
const square = (changes: object = {}) => surveyed({ ...SQUARE, ...changes })

/** Cosine of the neck-end bass corner of a parallelogram whose shorter diagonal is 296: law of cosines. */
const COSINE = (240 ** 2 + 180 ** 2 - 296 ** 2) / (2 * 240 * 180)

export const SURVEY: Cases = {
  'survey-makes-box': {
    holds: square(),
    breaks: [
      // 240 + 180 is 420
      {
        what: 'a diagonal longer than two sides',
        design: square({ diagonalFromBass: [430] }),
        grade: 'stop',
        measured: 0,
      },
      {
        what: 'inches taken for millimetres',
        design: square({ bass: [9.5], treble: [9.5] }),
        grade: 'stop',
        measured: 0,
      },
    ],
  },
  'survey-agrees': {
    holds: square({ bass: [240, 240.5, 239.5] }),
    breaks: [
      // The rest have 240 of it.
      {
        what: 'one of four readings of a side',
        design: surveyed({ bass: [240, 240, 240, 245] }),
        grade: 'care',
        measured: 5,
      },
      // One condition: the error seems to be all in whichever is asked; in the bass side it is what was put in.
      {
        what: 'a side six millimetres too long',
        design: square({ bass: [246] }),
        grade: 'care',
        measured: 6,
        within: 0.02,
      },
      {
        what: 'an inch too many',
        design: square({ bass: [265.4] }),
        grade: 'care',
        measured: 25.4,
        within: 0.05,
      },
      {
        what: 'sides alike that are an inch apart',
        design: surveyed({ bass: [265.4], treble: [240] }),
        grade: 'care',
        measured: 25.4,
      },
    ],
  },
  'out-of-square': {
    holds: surveyed({ ...SQUARE, diagonalFromTreble: [299.5], diagonalFromBass: [] }),
    breaks: [
      {
        what: 'a parallelogram',
        design: surveyed({ ...SQUARE, diagonalFromTreble: [296], diagonalFromBass: [] }),
        grade: 'note',
        measured: (240 * COSINE) / Math.sqrt(1 - COSINE ** 2),
      },
    ],
  },
  'box-twist': {
    holds: surveyed({
      heightNeckBass: [47],
      heightNeckTreble: [47],
      heightTailBass: [47],
      heightTailTreble: [47.5],
    }),
    breaks: [
      // 49.5 - (46 + 48 - 47)
      {
        what: 'one corner high',
        design: surveyed({
          heightNeckBass: [47],
          heightNeckTreble: [48],
          heightTailBass: [46],
          heightTailTreble: [49, 50],
        }),
        grade: 'care',
        measured: 2.5,
      },
    ],
  },
}
