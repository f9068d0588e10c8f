/** Everything that is drilled and screwed, in the order in which it is said. */
import type { Rule } from '../finding.ts'
import { boreWide, faceForBushing, knobOffFace, shaftInKnob, threadThrough } from './bushings.ts'
import { coverOnFace, coversApart } from './covers.ts'
import { partsClear } from './parts-clear.ts'
import { recessLeft } from './recess-left.ts'
import { rosetteHoles, rosetteWeb } from './rosette.ts'
import { headFlush, screwBeside, screwHolds, screwPoint } from './screws.ts'

export const HARDWARE_RULES: readonly Rule[] = [
  partsClear,
  threadThrough,
  boreWide,
  faceForBushing,
  shaftInKnob,
  knobOffFace,
  recessLeft,
  rosetteHoles,
  rosetteWeb,
  coverOnFace,
  coversApart,
  screwHolds,
  screwBeside,
  screwPoint,
  headFlush,
]
