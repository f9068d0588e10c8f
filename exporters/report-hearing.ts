/** What pickups hear, for the report. */
import { type Layout, pickupsOf } from '../geometry/index.ts'
import { counts, mm, type ReportKey, rows, words } from './report-key.ts'

export const hearingOf = (layout: Layout) =>
  pickupsOf(layout).map(({ relief, harmonics, deafTo, ...pickup }) => ({
    ...pickup,
    harmonics: [...harmonics],
    deafTo: [...deafTo],
    relief: relief && {
      left: relief.left,
      without: relief.without,
      stiffness: relief.stiffness,
      bow: relief.bow && { ...relief.bow },
      nutRise: relief.nutRise && { ...relief.nutRise },
    },
  }))

export const HEARING_KEYS: readonly ReportKey[] = [
  ...words('pickups[].', { id: 'Id of the pickup; only those on the lid that hear the strings are listed.' }),
  ...mm('pickups[].', { fromSaddle: 'From the saddle line to its middle.' }),
  ...rows('share', 'pickups[].', { share: 'The same as a share of the open string.' }),
  ...mm('pickups[].', { heard: 'Length of string that it hears; 0 for a point.' }),
  ...rows('share', 'pickups[].', {
    'harmonics[]': 'How much it hears of harmonics 1 to 16 of the open string.',
  }),
  ...counts('pickups[].', { 'deafTo[]': 'Harmonics of which it hears less than a tenth.' }),
  ...mm('pickups[].', {
    activeWidth: 'Width across the strings that it hears.',
    stringSpan: 'From the first string to the last where it stands.',
    room: 'From the outermost string to the end of what it hears; negative outside.',
    'relief.left': 'What its relief leaves of the neck. `relief` is null where it takes nothing.',
    'relief.without': 'What would be left there without it.',
  }),
  ...rows('share', 'pickups[].', {
    'relief.stiffness':
      'Bending stiffness there, of what it would be without it; null where no wood is left.',
  }),
  ...mm('pickups[].', {
    'relief.bow.as': 'Bow at mid-neck as it is; an estimate. `relief.bow` is null until the pull is known.',
    'relief.bow.without': 'The same without the relief.',
    'relief.nutRise.as': 'Rise of the nut as it is; an estimate, or null with all of `relief.nutRise`.',
    'relief.nutRise.without': 'The same without the relief.',
  }),
]
