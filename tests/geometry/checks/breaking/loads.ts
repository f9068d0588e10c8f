/** Designs made to break the rules about pull, neck and lid. */
import { type Cases, merged, pullOf, strung, weighed } from './case.ts'

/** Newtons: least strength of .010 in music wire, 387 ksi, on its area. ASTM A228, "Tensile requirements by diameter". */
const BREAKS = 387 * 6.894757293 * (Math.PI / 4) * 0.254 ** 2

/**
 * A bare stick of sugar maple, 38 × 19 mm and as thick at the head, held fast on a block 635 - 172.8 = 462.2 mm behind the
 * nut; the string runs level, 12.127 mm over its top. 12600 N/mm² and 109 N/mm²: Wood Handbook, Table 5-3a.
 */
const STICK = {
  neck: { ends: 'at a block', relief: 0 },
  board: { fitted: false },
  headstock: { thickness: 19, bassTuners: 1, trebleTuners: 0 },
  nut: { height: 12 },
  saddle: { height: 12 },
}
const stick = (limits: object) => weighed(300, 0.4, STICK, { limits })
const PULL = pullOf(300, 0.4)
const REACH = 462.2
const MOMENT = PULL * (12.127 + 9.5)
/** E I; a cantilever with an end couple rises by M a² / 2 E I (Roark's Formulas for Stress and Strain, ch. 8). */
const BEND = 12_600 * ((38 * 19 ** 3) / 12)
const RISE = (MOMENT * REACH ** 2) / (2 * BEND)
const AT_OCTAVE = (MOMENT * (REACH - 317.5) ** 2) / (2 * BEND)
/** `P / A + M c / I` over a strength that stands for good, 0.56 of the test's (timber design practice, from memory). */
const SHARE = (PULL / (38 * 19) + (MOMENT * 6) / (38 * 19 ** 2)) / (109 * 0.56)

/** Two or three strings of these masses in grams per metre, all at 300 Hz. */
const masses = (...list: number[]) =>
  merged(strung(), {
    stringing: {
      tuning: list.map(() => '300 Hz'),
      makes: list.map((unitMass) => ({ construction: 'stated', unitMass })),
    },
    strings: { count: list.length, gauges: [0.4] },
  })

const made = (gauge: number, ...makes: object[]) => ({ strings: { gauges: [gauge] }, stringing: { makes } })

export const LOADS: Cases = {
  'tuning-stated': {
    holds: strung(),
    breaks: [
      { what: 'no tuning', design: {}, grade: 'note', measured: 0 },
      {
        what: 'a pitch too few',
        design: strung({ stringing: { tuning: ['G2', 'D3'] } }),
        grade: 'care',
        measured: 2,
      },
      {
        what: 'a pitch too many',
        design: strung({ stringing: { tuning: ['G2', 'D3', 'G3', 'B3'] } }),
        grade: 'care',
        measured: 4,
      },
    ],
  },
  'string-can-be-made': {
    holds: made(0.66, { construction: 'wound', core: 0.34 }),
    breaks: [
      // 0.66 - 0.7
      {
        what: 'a core thicker than the string',
        design: made(0.66, { construction: 'wound', core: 0.7 }),
        grade: 'stop',
        measured: -0.04,
      },
      // 0.6 across the flats is 0.693 across the corners.
      {
        what: 'a hexagonal core whose corners fill the string',
        design: made(0.66, { construction: 'wound', core: 0.6, coreShape: 'hexagonal' }),
        grade: 'stop',
        measured: 0.66 - (2 * 0.6) / Math.sqrt(3),
      },
      {
        what: 'a mass that is not stated',
        design: made(0.66, { construction: 'stated' }),
        grade: 'stop',
        measured: 0,
      },
    ],
  },
  'string-breaking': {
    holds: strung(),
    breaks: [
      {
        what: 'a string pulled hard',
        design: weighed(410, 0.4),
        grade: 'care',
        measured: pullOf(410, 0.4) / BREAKS,
      },
      {
        what: 'a string past breaking',
        design: weighed(440, 0.4),
        grade: 'stop',
        measured: pullOf(440, 0.4) / BREAKS,
      },
    ],
  },
  'string-slack': {
    holds: strung(),
    breaks: [
      { what: 'a slack string', design: weighed(200, 0.4), grade: 'care', measured: pullOf(200, 0.4) },
      {
        what: 'a slack nylon string',
        design: weighed(150, 0.4, {
          stringing: {
            tuning: ['150 Hz'],
            makes: [{ construction: 'stated', unitMass: 0.4, material: 'nylon' }],
          },
        }),
        grade: 'care',
        measured: pullOf(150, 0.4),
      },
    ],
  },
  'string-high': {
    holds: strung(),
    breaks: [{ what: 'a hard string', design: weighed(300, 0.8), grade: 'care', measured: pullOf(300, 0.8) }],
  },
  'pull-slackest': {
    holds: strung(),
    // Pulls as 1 to 3, the mean 2.
    breaks: [{ what: 'a slack one of two', design: masses(1.2, 0.4), grade: 'care', measured: 0.5 }],
  },
  'pull-tightest': {
    holds: strung(),
    // Pulls as 3 to 1 to 1, the mean 5/3.
    breaks: [{ what: 'a tight one of three', design: masses(1.2, 0.4, 0.4), grade: 'care', measured: 1.8 }],
  },
  'neck-bow': {
    holds: strung(),
    // A parabola lies a quarter of its end's rise under the middle of its chord.
    breaks: [
      {
        what: 'a thin stick',
        design: stick({ neckBow: 0.1 }),
        grade: 'care',
        measured: RISE / 4,
        within: 0.03,
      },
    ],
  },
  'nut-rise': {
    holds: strung(),
    breaks: [
      {
        what: 'a thin stick',
        design: stick({ nutRise: 0.4 }),
        grade: 'care',
        measured: RISE,
        within: 0.03,
      },
    ],
  },
  'action-change': {
    holds: strung(),
    breaks: [
      {
        what: 'a thin stick',
        design: stick({ actionChange: 0.1 }),
        grade: 'care',
        measured: RISE / 2 - AT_OCTAVE,
        within: 0.03,
      },
    ],
  },
  'neck-gives-way': {
    holds: strung(),
    breaks: [
      {
        what: 'a lath under a cable',
        design: weighed(300, 40, STICK, { neck: { thickness: 4 } }),
        grade: 'stop',
        measured: pullOf(300, 40),
      },
    ],
  },
  'neck-stress': {
    holds: strung(),
    breaks: [
      {
        what: 'wood that is to bear little',
        design: stick({ neckStress: 0.01 }),
        grade: 'care',
        measured: SHARE,
        within: 0.02,
      },
      {
        what: 'wood that is to bear less',
        design: stick({ neckStress: 0.005, neckStressMost: 0.01 }),
        grade: 'stop',
        measured: SHARE,
        within: 0.02,
      },
    ],
  },
  'head-root': {
    holds: strung({ headstock: { thickness: 10, reinforcement: 4 } }),
    breaks: [
      {
        what: 'a head carved thin',
        design: strung({ headstock: { thickness: 10 } }),
        grade: 'care',
        measured: 10,
      },
    ],
  },
  'lid-sag': {
    holds: strung({ neck: { relief: 3 } }),
    breaks: [
      // Square between the walls, 180 mm; a small foot in its middle presses with T sin(atan(12 / 110)):
      // w = 0.0116 F a² / D, D = E h³ / 12 (1 - 0.3²). Timoshenko and Woinowsky-Krieger, "Theory of Plates and Shells",
      // art. 34, table 23. Plywood 6960 N/mm²: Wood Handbook, Table 12-1.
      {
        what: 'a soft lid',
        design: weighed(300, 0.4, STICK, {
          box: { length: 192, width: 192 },
          saddle: { height: 12, place: 96, thickness: 1, length: 3 },
          limits: { lidSag: 0.05 },
        }),
        grade: 'care',
        measured: (0.0116 * PULL * Math.sin(Math.atan(12 / 110)) * 180 ** 2) / ((6960 * 64) / (12 * 0.91)),
        within: 0.01,
      },
    ],
  },
  'brace-clear': {
    holds: { brace: { height: 2 } },
    breaks: [
      // The relief leaves 3 under the lid.
      { what: 'a brace over the neck', design: { brace: { height: 8 } }, grade: 'stop', measured: -5 },
      // Along, 20 from the centreline, half of it 4: one millimetre inside the neck's 19, and 8 - 3 deep in it.
      {
        what: 'a brace along the neck',
        design: { brace: { height: 8, runs: 'along', offset: 20 } },
        grade: 'stop',
        measured: -8,
      },
    ],
  },
}
