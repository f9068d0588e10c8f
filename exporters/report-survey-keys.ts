/** Keys of the report's `survey`, and of what a finding says about its tolerance. */
import { counts, mm, type ReportKey, rows, words, yesNo } from './report-key.ts'

export const SURVEY_KEYS: readonly ReportKey[] = [
  ...yesNo('survey.', {
    makesBox:
      'Do the readings make a box? `survey` is null of a box that was measured once; where they make none the rest of it is null or empty.',
  }),
  ...mm('survey.', {
    twist:
      'How far the tail-end treble corner of the walls stands over the plane of the other three; null unless all were read.',
    twistError: 'Its standard error.',
  }),
  ...counts('survey.', { redundancy: 'Readings beyond those that are needed.' }),
  ...mm('survey.', { oneReading: 'Standard deviation of one reading: half the rule’s graduation.' }),
  ...rows('times', 'survey.', {
    scatter: 'How many times as much the readings scatter; 1 where the rule explains it.',
  }),
  ...mm('survey.', {
    outOfSquare: 'What a square laid on the worst corner misses over the length of the side.',
    outOfSquareError: 'Its standard error.',
  }),
  ...words('survey.distances[].', {
    name: 'As in the design: `bass`, `tailEnd`, `diagonalFromBass`, as six fields name them.',
  }),
  ...counts('survey.distances[].', { readings: 'How often it was read.' }),
  ...mm('survey.distances[].', {
    mean: 'Mean of its readings, or null.',
    adjusted: 'What all readings together make of it.',
    standardError: 'Standard error of that.',
  }),
  ...words('survey.readings[].', { of: 'Which distance was read.' }),
  ...counts('survey.readings[].', { number: 'Which of its readings, 1 for the first.' }),
  ...mm('survey.readings[].', { value: 'What was read.', residual: 'Adjusted less read.' }),
  ...rows('deviations', 'survey.readings[].', {
    standardized: 'The residual in its own standard deviations.',
  }),
  ...rows('share', 'survey.readings[].', {
    redundancy: 'How much of an error in it would show: 0 nothing, 1 all.',
  }),
  ...yesNo('survey.readings[].', { disagrees: 'Is it the reading that disagrees, or one that may be?' }),
  ...words('survey.assumed[].', {
    of: 'A distance that was taken for granted.',
    as: '`opposite`: as long as the one over against it; `stated`: as the length or width of the box says.',
  }),
  ...words('survey.corners[].', { name: 'Which corner.' }),
  ...mm('survey.corners[].', { fromNut: 'Along, x.', fromCentreline: 'Across, y.' }),
  ...rows('radians', 'survey.corners[].', { angle: 'Inside angle.', angleError: 'Its standard error.' }),
  ...mm('survey.corners[].', { wallHeight: 'Mean of the readings of the wall’s height there, or null.' }),
]

export const TOLERANCE_KEYS: readonly ReportKey[] = [
  ...rows('as `unit` says', 'findings[].', {
    tolerance:
      'By how much the margin may be off with every dimension off by its tolerance, first order; null where there is none or it was not asked for.',
    worst: 'Margin less tolerance, or null.',
  }),
  ...words('findings[].', {
    'measureAgain.path':
      'The dimension that matters most, as `tolerances` names it. `measureAgain` is null unless the margin may change its sign.',
    'measureAgain.label': 'The same in words.',
  }),
  ...mm('findings[].measureAgain.', { good: 'How far that dimension may be off.' }),
  ...words('findings[].', { 'measureAgain.sentence': 'What to measure again, and why.' }),
]
