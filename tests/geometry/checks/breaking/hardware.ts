/** Designs made to break the rules about what stands behind the faces. */
import { type Cases, pickup, screw, things } from './case.ts'

/** A screw through the treble wall at the pickup (172.8 - 63.5 along the lid), 6 below the wall's edge. */
const fromTheSide = (screwLength: number) =>
  screw({ face: 'treble-wall', along: 172.8 - 63.5 - 120, across: 6, clearance: 3.5, screwLength })

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
}
