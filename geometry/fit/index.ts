/** What a box can become: questions, rows, their order and their words. */
export { changeTo } from './candidate.ts'
export { type Fitting, fitOf, fittingOf, fretAtBody, type Numbers, type Row } from './fit.ts'
export {
  CARE_WORDS,
  CARES,
  type Care,
  marksOf,
  proposals,
  ranked,
  USUAL_WEIGHTS,
  type Weights,
  type Wishes,
} from './order.ts'
export {
  MOST_ASKED,
  placesBetween,
  type Questions,
  questionsFor,
  type StringsFrom,
  USUAL_SCALES,
  type UsualScale,
} from './questions.ts'
export type { Told } from './verdict.ts'
export { reasonOf, reasonsOf, type StringSet, setOf } from './words.ts'
