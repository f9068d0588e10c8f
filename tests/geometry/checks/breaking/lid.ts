/** Designs made to break the rules about a lid that opens. */
import type { Stated } from '../../../support/designs.ts'
import { type Cases, pickup } from './case.ts'

const lid = (fields: Stated, more: Stated = {}): Stated => ({
  ...more,
  box: { lid: { kind: 'hinged', ...fields } },
})

export const LID: Cases = {
  'lid-clears': {
    holds: lid({ gap: 0.8 }),
    breaks: [
      // The lid's upper edge stands its whole thickness of 4 over the pin.
      {
        what: 'a hinge across the neck',
        design: lid({ hingeEdge: 'tail end' }),
        grade: 'stop',
        measured: -4,
        within: 1e-4,
      },
      {
        what: 'an eighth of an inch over a neck',
        design: lid({ hingeEdge: 'neck end', thickness: 3.175, hingeDown: 3.175 }),
        grade: 'stop',
        measured: -3.175,
        within: 1e-4,
      },
      { what: 'ends that rub on the shoulders', design: lid({}), grade: 'care', measured: 0 },
      { what: 'a gap too small', design: lid({ gap: 0.2 }), grade: 'care', measured: 0.2 },
      // 30 deep, less the lid's 4.
      {
        what: 'a pickup that hangs in the way of a sliding lid',
        design: lid(
          { kind: 'sliding', slidesTo: 'bass wall' },
          { things: [pickup({ along: 60, across: 50, sizeAlong: 20, sizeAcross: 20, depth: 16 })] },
        ),
        grade: 'stop',
        // The neck, 15 high under the lid, is met with 16 - 4 of it.
        measured: -12,
      },
      // From the pin to its lower corner: 90 - 28.9 + 9 across, 18 - 4 down; the neck, 71 from the pin, ends 3 below it.
      {
        what: 'a deep pickup hung between hinge and neck',
        design: lid(
          { gap: 0.8 },
          {
            things: [
              pickup({ along: 60, across: -28.9, sizeAlong: 20, sizeAcross: 18, depth: 18, cornerRadius: 0 }),
            ],
          },
        ),
        grade: 'stop',
        measured: 71 - Math.sqrt(70.1 ** 2 + 14 ** 2 - 3 ** 2),
        within: 1e-3,
      },
    ],
  },
  'lid-reach': {
    holds: lid({ gap: 0.8 }),
    breaks: [
      { what: 'a pin set in over its wall', design: lid({ hingeIn: 8 }), grade: 'care', measured: 0 },
      // Let in with 0.5 of play, the pin at its lower edge 0.5 inside the wall: the corner (0.5, 4) meets the wall, 0.5
      // behind the edge, at 2 atan(0.5 / 4).
      {
        what: 'a lid let in that strikes its wall',
        design: lid({ fit: 'between the walls', play: 0.5, hingeIn: 6.5 }),
        grade: 'care',
        measured: (Math.asin(0.5 / 4) * 180) / Math.PI,
        within: 1e-3,
      },
    ],
  },
  'hinge-parallel': {
    holds: lid({ gap: 0.8 }),
    breaks: [
      {
        what: 'a hinge at the tail of a through neck',
        design: lid({ hingeEdge: 'tail end' }),
        grade: 'care',
        measured: 90,
      },
      {
        what: 'a hinge at the neck end',
        design: lid({ hingeEdge: 'neck end' }, { neck: { ends: 'at a block' } }),
        grade: 'care',
        measured: 90,
      },
    ],
  },
}
