/** Designs that a laser or a router cannot cut as they stand. */
import { type Cases, hole, merged, screw, things } from './case.ts'

const laser = (fields = {}) => ({ cutting: { process: 'laser', ...fields } })
const router = (fields = {}) => ({ cutting: { process: 'router', ...fields } })

export const CUTTING: Cases = {
  'tool-fits': {
    holds: merged(laser(), things(hole())),
    breaks: [
      // The string holes of 2.4 mm are wider, a screw’s of 1 mm is not.
      {
        what: 'a kerf wider than a hole',
        design: merged(laser({ kerf: 1.5 }), things(screw({ clearance: 1, along: 30 }))),
        grade: 'stop',
        measured: 1,
        within: 0.01,
      },
      {
        what: 'a cutter wider than an opening',
        design: merged(router({ cutter: 6 }), things(hole({ diameter: 5 }))),
        grade: 'stop',
        measured: 5,
        within: 0.01,
      },
    ],
  },
  'web-left': {
    holds: merged(laser(), things(hole())),
    breaks: [
      // Centres 29 apart, radii of 12.5 each: 4 mm of wood, and 4.5 wanted.
      {
        what: 'two holes near one another',
        design: merged(laser({ web: 4.5 }), things(hole(), hole({ id: 'other', along: 89 }))),
        grade: 'stop',
        measured: 4,
      },
    ],
  },
}
