/** Designs made to break the rules about the body: its balance. */
import type { Cases } from './case.ts'

/** Nothing weighs but the ballast: the lightest wood everywhere, and 5 kg where the pencil wants it. */
const heavyAt = (ballastFromTail: number, balance: object = {}) => ({
  balance: {
    held: 'by a strap',
    ballast: 5000,
    ballastFromTail,
    tuner: 0,
    saddleAndNut: 0,
    walls: 'air',
    ...balance,
  },
  box: { lid: { stuff: 'air' } },
  neck: { wood: 'air' },
  board: { wood: 'air' },
  strings: { gauges: [0.2] },
  woods: [{ name: 'air', density: 50 }],
})

export const BODY: Cases = {
  'balance-near-wall': {
    // The inside of the tail-end wall lies 234 behind the neck-end face.
    holds: heavyAt(234),
    breaks: [
      // 234 - 34 = 200 behind it; all the rest weighs some 70 g.
      {
        what: 'a lump of lead in the tail',
        design: heavyAt(34),
        grade: 'care',
        measured: 200,
        within: 0.05,
      },
      {
        what: 'a plain stick with heavy tuners',
        // A tuner at 45, at 77 and at 45 behind the nut; the box begins 635 - 172.8 = 462.2 before it.
        design: heavyAt(0, { ballast: 0, tuner: 5000 }),
        grade: 'care',
        measured: (45 + 77 + 45) / 3 + 462.2,
        within: 0.05,
      },
    ],
  },
  'head-drops': {
    holds: heavyAt(100),
    breaks: [
      // 234 - 134 = 100 behind the face, the button 180 behind it.
      {
        what: 'a strap button behind the balance point',
        design: heavyAt(134, { strapAt: 180 }),
        grade: 'care',
        measured: -80,
        within: 0.1,
      },
      {
        what: 'a leg too far back',
        design: heavyAt(134, { held: 'on the lap', lapAt: 180 }),
        grade: 'care',
        measured: -80,
        within: 0.1,
      },
    ],
  },
}
