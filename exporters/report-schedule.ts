/** The schedule of the report, and what its keys hold. */
import { type Layout, scheduleOf } from '../geometry/index.ts'
import { counts, mm, type ReportKey, words, yesNo } from './report-key.ts'

/** The rows as they stand in the list, each with the drill to take spelled out. */
export const scheduleReport = (layout: Layout) =>
  scheduleOf(layout).map(({ choice, edge, line, size, ...row }) => ({
    ...row,
    size: size && { ...size },
    edge: { ...edge },
    line: { ...line },
    drill: choice && { ...choice.drill, over: choice.over },
  }))

export const SCHEDULE_KEYS: readonly ReportKey[] = [
  ...counts('schedule[].', { order: 'Place in the order of the work, from 1.' }),
  ...words('schedule[].', {
    part: 'Id of the part.',
    partTitle: 'Its title.',
    seen: 'The face it is worked from.',
    work: '`saw slots`, `recess`, `drill`, `countersink`, `bore` (a round hole cut through) or `saw out`.',
    of: 'What it is for.',
  }),
  ...counts('schedule[].', { count: 'How many alike are in the row: slots are counted together.' }),
  ...mm('schedule[].', {
    diameter: 'Diameter wanted of a round hole, else null.',
    'size.along': 'Along the strings, or along a wall. `size` is null for a round hole.',
    'size.across': 'Across the strings, or up a wall.',
    depth: 'Down from the face seen; the wood there, where it goes through.',
  }),
  ...yesNo('schedule[].', {
    through: 'Does it go right through?',
    open: 'Does it run out over the edge of the part?',
  }),
  ...words('schedule[].', {
    at: '`centre`, or `near side` of what runs out over an edge: what the distances lead to.',
    'edge.from': 'The edge, or the nut, that the first distance is taken from.',
    'edge.towards': '`head` or `tail` where it is taken from the nut, else empty.',
    'line.from': 'The centreline, or the other edge, of the second distance.',
    'line.towards': '`bass` or `treble` of the centreline; empty on it, and from an edge.',
  }),
  ...mm('schedule[].', {
    'edge.distance': 'From that edge.',
    'line.distance': 'From that line.',
  }),
  ...words('schedule[].', {
    'drill.size':
      'As it stands on the shank. `drill` is null where none of the set is large enough, or none is wanted.',
    'drill.series': '`fractional`, `number`, `letter` or `metric`.',
    'drill.tool': '`twist drill`, `flat bit` or `hole saw`.',
  }),
  ...mm('schedule[].', {
    'drill.diameter': 'Its diameter.',
    'drill.over': 'Its diameter less the one wanted; never below -0.02.',
  }),
]
