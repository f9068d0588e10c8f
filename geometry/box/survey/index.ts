/** The survey of a box: readings in, corners and their certainty out. */
export {
  CORNERS,
  type Corner,
  DISTANCE_NAMES,
  DISTANCES,
  type Distance,
  HEIGHTS,
  type Height,
} from './distances.ts'
export { ALIKE, type Assumption, readingsOf, type TapeReading } from './observations.ts'
export { type Slip, type SlipKind, slipsOf } from './slips.ts'
export { type Heights, heightsOf, type Squareness, squarenessOf } from './squareness.ts'
export {
  type Disagreement,
  type DistanceResult,
  type ReadingResult,
  type Survey,
  type SurveyResult,
  type SurveyTrouble,
  surveyOf,
} from './survey.ts'
