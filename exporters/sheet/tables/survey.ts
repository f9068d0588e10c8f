/** A surveyed box: what its readings make of its sides, diagonals and corners. */
import { DISTANCE_NAMES } from '../../../geometry/index.ts'
import { type Table, withoutEmpty } from '../../tables/table.ts'
import { capital, type Source } from '../source.ts'

/** Letters of the corners in the tables and in the picture, in the order of the report. */
export const CORNER_LETTERS = ['A', 'B', 'C', 'D'] as const

/** Sides and diagonals as adjusted; `null` without a survey, or where its readings make no box. */
export function outlineTable({ report, say }: Source): Table | null {
  const { survey } = report
  if (!survey?.makesBox) return null
  const out =
    survey.outOfSquare === null
      ? []
      : [`Out of square: a square laid on the worst corner misses ${say(survey.outOfSquare)} over the side.`]
  const twist =
    survey.twist === null
      ? []
      : [
          `Twisted: corner C of the walls stands ${say(Math.abs(survey.twist))} ${survey.twist < 0 ? 'under' : 'over'} the plane of the other three.`,
        ]
  const assumed =
    survey.assumed.length === 0
      ? []
      : [`Not read, and taken for granted: ${survey.assumed.map(({ of }) => DISTANCE_NAMES[of]).join(', ')}.`]
  return withoutEmpty({
    id: 'survey-outline',
    title: 'The outline as measured',
    columns: [
      { key: 'what', title: 'Distance, outside', as: 'words' },
      { key: 'adjusted', title: 'Long', as: 'length' },
      { key: 'exact', title: 'exactly', as: 'exact' },
      { key: 'error', title: 'standard error', as: 'exact' },
      { key: 'mean', title: 'Mean of its readings', as: 'length' },
      { key: 'readings', title: 'Readings', as: 'count' },
    ],
    rows: survey.distances.map(({ name, adjusted, standardError, mean, readings }) => [
      capital(DISTANCE_NAMES[name].replace(/^the /, '')),
      adjusted,
      adjusted,
      standardError,
      mean,
      readings,
    ]),
    note: [
      ...out,
      ...twist,
      ...assumed,
      'All readings together decide: a length may differ from its own.',
    ].join(' '),
  })
}

/** The four corners; `null` without a survey, or where its readings make no box. */
export function cornerTable({ report }: Source): Table | null {
  const { survey } = report
  if (!survey?.makesBox) return null
  return withoutEmpty({
    id: 'survey-corners',
    title: 'The four corners',
    columns: [
      { key: 'letter', title: 'Corner', as: 'words', whole: true },
      { key: 'name', title: 'where', as: 'words' },
      { key: 'fromNut', title: 'From the nut', as: 'length' },
      { key: 'fromCentreline', title: 'From the centreline', as: 'length', signed: true },
      { key: 'angle', title: 'Inside angle', as: 'angle' },
      { key: 'angleError', title: 'standard error', as: 'angle' },
      { key: 'wallHeight', title: 'Wall, tall', as: 'length' },
    ],
    rows: survey.corners.map(({ name, fromNut, fromCentreline, angle, angleError, wallHeight }, index) => [
      CORNER_LETTERS[index] ?? '',
      name,
      fromNut,
      fromCentreline,
      angle,
      angleError,
      wallHeight,
    ]),
    note: 'Treble side positive. The centreline runs through the middles of both end edges.',
  })
}
