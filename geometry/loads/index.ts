/** Loads: what the strings do to the instrument, and what would do. */
export { type ChosenGauge, type ChosenGauges, chooseGauges, scaleSuiting } from './choose.ts'
export { braceThatSuffices, headRootOf, neckHolds, reinforcementNeeded, thinnestStock } from './cures.ts'
export {
  fretRoundingOf,
  intonationOf,
  type PureTarget,
  type PureTuning,
  pureTuningOf,
  type StringIntonation,
} from './intonation.ts'
export { lidStressOf, type StatedBrace } from './lid-loads.ts'
export { loadsOf } from './loads.ts'
export { type StatedPitch, type StringTrouble, usualMake } from './strung.ts'
export { stuffSources } from './stuff-sources.ts'
export type * from './types.ts'
