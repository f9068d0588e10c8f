/** For every rule the designs that break it: `rules.test.ts` fails for a rule that has none. */
import { BODY } from './body.ts'
import type { Cases } from './case.ts'
import { CUTTING } from './cutting.ts'
import { ENDS } from './ends.ts'
import { HARDWARE } from './hardware.ts'
import { HEAD } from './head.ts'
import { INSIDE } from './inside.ts'
import { LID } from './lid.ts'
import { LOADS } from './loads.ts'
import { OPENINGS } from './openings.ts'
import { SADDLE } from './saddle.ts'
import { STRINGS } from './strings.ts'
import { SURVEY } from './survey.ts'
import { WIRING } from './wiring.ts'
import { WOOD } from './wood.ts'

export const CASES: Cases = {
  ...OPENINGS,
  ...STRINGS,
  ...WOOD,
  ...ENDS,
  ...LOADS,
  ...SADDLE,
  ...BODY,
  ...LID,
  ...HEAD,
  ...INSIDE,
  ...HARDWARE,
  ...CUTTING,
  ...SURVEY,
  ...WIRING,
}
