/** Designs made to break the rules about the height, the line and the bend of strings over the saddle. */
import { type Cases, hole, merged, strung, things, weighed } from './case.ts'

const degrees = (radians: number) => (radians * 180) / Math.PI

/** The strings rise 10 - 6.5 from the nut to a saddle 10 mm tall, 637.5 on. */
const BEFORE = Math.atan(3.5 / 637.5)

const FRETLESS = strung({ scale: { fretless: true }, saddle: { setback: 0 } })

/**
 * Steel of 0.254 mm under 72.6 N, 0.4 mm over the crowns at the nut and 4 at the saddle, is 2.99 cents sharp at the
 * octave by stretch (G. U. Varieschi and C. M. Gower, Am. J. Phys. 78, 47, 2010) and 0.04 by stiffness, and 0.11 flat
 * since it slants down to the fret; from g (L + s) = 2 (L / 2 + s) with g = 2^(2.92 / 1200) the setback is 1.07 mm.
 */
const TENTH = weighed(330, 72.6e3 / (2 * 0.635 * 330) ** 2, {
  nut: { height: 1.5 },
  saddle: { height: 10.1 },
})
const SHARP = 2 ** (2.92 / 1200)
const SETBACK = (635 * (SHARP - 1)) / (2 - SHARP)

export const SADDLE: Cases = {
  'break-angle-at-saddle': {
    holds: strung(),
    breaks: [
      // From the saddle to the holes 240 - 172.8 + 30.
      {
        what: 'strings held far back',
        design: strung({ tailpiece: { fromEdge: 30 } }),
        grade: 'care',
        measured: degrees(BEFORE + Math.atan(10 / 97.2)),
      },
      // The tail stands 12 over the lid, the strings at the nut 12 + 5 + 1.5.
      {
        what: 'strings held higher than the saddle',
        design: strung({ neck: { rise: 12 } }),
        grade: 'stop',
        measured: -degrees(Math.atan(8.5 / 637.5) + Math.atan(2 / 81.2)),
      },
    ],
  },
  'break-angle-heavy': {
    holds: strung(),
    breaks: [
      {
        what: 'a tower of a saddle',
        design: strung({ saddle: { height: 45 } }),
        grade: 'care',
        measured: degrees(Math.atan(38.5 / 637.5) + Math.atan(45 / 81.2)),
      },
      // Through the wall 30 below the lid, the strings bend over its edge: 240 - 172.8 on, not into the box.
      {
        what: 'strings that bend over the edge of the lid',
        design: strung({
          saddle: { height: 35 },
          tailpiece: { at: 'the tail-end wall', fromEdge: 30 },
        }),
        grade: 'care',
        measured: degrees(Math.atan(28.5 / 637.5) + Math.atan(35 / 67.2)),
      },
    ],
  },
  'break-angle-at-nut': {
    holds: strung(),
    breaks: [
      // The head's face lies 26 - 14 under the neck's top: 6.5 + 12 - 14 down to the second post, 77 behind.
      {
        what: 'strings wound high on their posts',
        design: strung({ headstock: { postHeight: 14 } }),
        grade: 'care',
        measured: degrees(Math.atan(4.5 / 77)),
      },
    ],
  },
  // Crowns 6.1, and from 0.4 at the nut by 2.2 at the octave to 4 at the saddle: 10.1.
  'saddle-low': {
    holds: strung(),
    breaks: [
      { what: 'a neck let in', design: strung({ neck: { rise: -5 } }), grade: 'care', measured: 5.1 },
      { what: 'a neck let in deep', design: strung({ neck: { rise: -11 } }), grade: 'stop', measured: -0.9 },
    ],
  },
  'saddle-tall': {
    holds: strung(),
    breaks: [
      {
        what: 'a neck that stands high',
        design: strung({ neck: { rise: 12 } }),
        grade: 'care',
        measured: 22.1,
      },
    ],
  },
  'action-as-wanted': {
    holds: strung(),
    breaks: [
      // 0.4 at the nut, 12 - 6.1 at the saddle 637.5 on.
      {
        what: 'a saddle too tall',
        design: strung({ saddle: { height: 12 } }),
        grade: 'care',
        measured: 0.4 + (5.5 * 317.5) / 637.5 - 2.2,
      },
    ],
  },
  'saddle-line': {
    holds: strung(),
    breaks: [
      {
        what: 'a loose saddle at the bare scale',
        design: TENTH,
        grade: 'note',
        measured: SETBACK,
        within: 0.02,
      },
      {
        what: 'a fixed saddle at the bare scale',
        design: merged(TENTH, { saddle: { freeBand: 0.5 } }),
        grade: 'care',
        measured: SETBACK,
        within: 0.02,
      },
    ],
  },
  'saddle-free-band': {
    holds: merged(FRETLESS, things(hole({ along: 140, across: 40 }))),
    breaks: [
      // From 172.8 - 6 - 2.5 on; the hole reaches to 155 + 12.5.
      {
        what: 'a hole where the saddle may stand',
        design: merged(FRETLESS, things(hole({ along: 155, across: 20 }))),
        grade: 'care',
        measured: -3.2,
      },
      // 236 + 6 + 2.5 of 240
      {
        what: 'a saddle by the end of the lid',
        design: merged(FRETLESS, { saddle: { place: 236 } }),
        grade: 'care',
        measured: -4.5,
      },
    ],
  },
}
