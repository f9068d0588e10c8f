/** Designs made to break the rules about what stands in the box, and about artwork. */
import type { Stated } from '../../../support/designs.ts'
import { type Cases, hole, pickup } from './case.ts'

/** Inside 228 × 168 × 47, from 6 to 234 along and from -84 to 84 across, the base 51 below the lid's face. */
const inside = (...pieces: Stated[]): Stated => ({ box: { inside: pieces } })
const block = (fields: Stated = {}): Stated => ({
  id: 'corner',
  along: 16,
  across: 74,
  long: 20,
  wide: 20,
  tall: 47,
  ...fields,
})
const art = (fields: Stated = {}): Stated => ({
  id: 'swallow',
  along: 120,
  across: 55,
  long: 60,
  wide: 40,
  ...fields,
})

export const INSIDE: Cases = {
  'opening-to-inside': {
    // From the hole's rim at 47.5 along to the block's side at 26.
    holds: { ...inside(block({ across: 60 })), things: [hole()] },
    breaks: [
      // The hole from 27.5 along, 1.5 from the block.
      {
        what: 'a hole beside a corner block',
        design: { ...inside(block({ across: 60 })), things: [hole({ along: 40 })] },
        grade: 'care',
        measured: 1.5,
      },
      // The hole from 17.5 along: 26 - 17.5.
      {
        what: 'a hole over a corner block',
        design: { ...inside(block({ across: 60 })), things: [hole({ along: 30 })] },
        grade: 'stop',
        measured: -8.5,
      },
      // Through the treble wall, 6 thick, 5 along from the block that stands at its inside; from 6 to 26 along the box,
      // which is from -114 to -94 from the wall's middle.
      {
        what: 'a hole through a wall beside a block',
        design: {
          ...inside(block()),
          things: [hole({ face: 'treble-wall', along: -79, across: 25, diameter: 20 })],
        },
        grade: 'care',
        measured: 5,
      },
      // 47 tall less 5 leave it 5 behind the lid's inside: still in the way, by half its own width.
      {
        what: 'a hole over a batten just under the lid',
        design: {
          ...inside(block({ along: 60, across: 60, wide: 8, tall: 42, sort: 'batten' })),
          things: [hole()],
        },
        grade: 'stop',
        measured: -16.5,
      },
    ],
  },
  'inside-fits': {
    holds: inside(block()),
    breaks: [
      // 16 - 12 against the wall's inside at 6.
      { what: 'a block in the wall', design: inside(block({ long: 24 })), grade: 'stop', measured: -2 },
      {
        what: 'a block taller than the box',
        design: inside(block({ tall: 50 })),
        grade: 'stop',
        measured: -3,
      },
      {
        what: 'a hinge let into the wall',
        design: inside(block({ sort: 'hinge', across: 80, tall: 10, fixed: 'on the walls' })),
        grade: 'care',
        measured: -6,
      },
    ],
  },
  'inside-clear-of-neck': {
    // The neck is 19 to either side of the centreline; its underside lies 32 over the base.
    holds: inside(block({ along: 120, across: 35 })),
    breaks: [
      // From 15 across: 4 of it under the lid's height are the neck's.
      {
        what: 'a batten in the way of the neck',
        design: inside(block({ along: 120, across: 25 })),
        grade: 'stop',
        measured: -4,
      },
      // 34 tall under a neck that leaves 32.
      {
        what: 'a block too tall under the neck',
        design: inside(block({ along: 120, across: 0, tall: 34 })),
        grade: 'stop',
        measured: -2,
      },
      // The brace hangs 10 below the lid over the whole inside; the block reaches up to 4 below it.
      {
        what: 'a brace that meets a batten',
        design: {
          ...inside(block({ along: 172.8, across: 60, tall: 43 })),
          brace: { height: 10, runs: 'across' },
        },
        grade: 'stop',
        measured: -6,
      },
    ],
  },
  'neck-block-height': {
    // Common practice, no source: a block under the neck is glued in at the height where it just touches.
    holds: inside(block({ sort: 'neck block', across: 0, tall: 31.8 })),
    breaks: [
      {
        what: 'a block that does not reach the neck',
        design: inside(block({ sort: 'neck block', across: 0, tall: 30 })),
        grade: 'care',
        measured: 2,
      },
      {
        what: 'a block that lifts the neck',
        design: inside(block({ sort: 'neck block', across: 0, tall: 33 })),
        grade: 'stop',
        measured: 1,
      },
      // Beside the neck it would have to touch the lid, 47 over the base.
      {
        what: 'a block beside the neck that does not touch the lid',
        design: inside(block({ sort: 'neck block', across: 60, tall: 44 })),
        grade: 'care',
        measured: 3,
      },
    ],
  },
  'artwork-kept': {
    holds: { artwork: [art()], things: [hole({ along: 60, across: 55 })] },
    breaks: [
      // The picture from 90 along; the hole ends at 87.5 less nothing.
      {
        what: 'a hole beside a picture',
        design: { artwork: [art()], things: [hole({ along: 75, across: 55 })] },
        grade: 'care',
        measured: 2.5,
      },
      {
        what: 'a hole in a picture',
        design: { artwork: [art()], things: [hole({ along: 85, across: 55 })] },
        grade: 'stop',
        measured: -7.5,
      },
      // A burnt mark drawn as a triangle, its side at 100 along.
      {
        what: 'a pickup beside a mark drawn by its corners',
        design: {
          artwork: [
            art({
              shape: 'drawn',
              along: 100,
              across: 60,
              outline: [
                [0, -20],
                [40, 0],
                [0, 20],
              ],
            }),
          ],
          things: [pickup({ along: 90, across: 60, sizeAlong: 16, sizeAcross: 10, cornerRadius: 0 })],
        },
        grade: 'care',
        measured: 2,
      },
      // The neck's slot is 38.3 wide; the label begins 20 from the middle of the wall.
      {
        what: 'a label beside the neck’s slot',
        design: {
          neck: { slotPlay: 0.3 },
          artwork: [art({ face: 'neck-end-wall', along: 40, across: 8, long: 40, wide: 10 })],
        },
        grade: 'care',
        measured: 20 - 38.3 / 2,
      },
    ],
  },
}
