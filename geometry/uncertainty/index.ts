/** How far every margin may be off, from how finely everything was measured. */
export { type Dimension, dimensionsOf } from './dimensions.ts'
export {
  byWorstCase,
  type Part as MarginPart,
  type Reckoning,
  reckoningOf,
  type WorstCase,
  worstCasesOf,
} from './reckoning.ts'
export { measureAgain, measureAgainWords } from './words.ts'
