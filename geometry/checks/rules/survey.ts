import { graduationOf } from '../../box/real-box.ts'
import { DISTANCE_NAMES, type Distance } from '../../box/survey/distances.ts'
import {
  heightsOf,
  type ReadingResult,
  readingsOf,
  type Slip,
  slipsOf,
  squarenessOf,
  surveyOf,
} from '../../box/survey/index.ts'
import { CRITICAL } from '../../box/survey/survey.ts'
import type { Layout } from '../../solve/layout.ts'
import { degreesOf, gradeMost, type Measurement, type Rule } from '../finding.ts'
import { capital, type Say } from '../say.ts'

const across = (layout: Layout): Measurement['where'] => ({
  view: 'plan',
  from: { x: layout.box.x0, y: -layout.box.halfWidth },
  to: { x: layout.box.x1, y: layout.box.halfWidth },
})

const resultOf = ({ design }: Layout) =>
  design.box.survey ? surveyOf(design.box, graduationOf(design)) : null

const slipOf = (layout: Layout): Slip | null => {
  const { box } = layout.design
  const result = resultOf(layout)
  if (!result || !box.survey) return null
  return slipsOf(result, readingsOf(box.survey), box, graduationOf(layout.design) / 2)[0] ?? null
}

/** A slip that would explain it, as a question; nothing is mended without an answer. */
function slipWords(layout: Layout, say: Say): string {
  const slip = slipOf(layout)
  if (!slip) return ''
  const { reading, kind, meant } = slip
  const read = `${DISTANCE_NAMES[reading.of]} was read as ${say.length(reading.value)}`
  const why = {
    'an inch too long': 'an inch less',
    'an inch too short': 'an inch more',
    'inches for millimetres': 'so many inches',
    'millimetres for inches': 'so many millimetres',
    'centimetres for millimetres': 'so many centimetres',
  }[kind]
  return ` ${capital(read)}; ${why}, ${say.length(meant)}, would agree with the rest. If that is what was meant, change it; if not, measure again.`
}

/** Diagonals that no quadrilateral has, sides that cross: the box is then drawn by its stated length and width. */
export const surveyMakesBox: Rule = {
  name: 'survey-makes-box',
  title: 'Readings that make a box',
  unit: 'count',
  wants: 'least',
  limits: [],
  measure(layout) {
    const found: Measurement[] = []
    const result = resultOf(layout)
    if (!result) return found
    found.push({
      about: ['box'],
      measured: result.ok ? 1 : 0,
      limit: 1,
      grade: result.ok ? 'clear' : 'stop',
      where: across(layout),
    })
    return found
  },
  words(_finding, say, layout) {
    const result = resultOf(layout)
    if (!result || result.ok) return 'The readings make a box of 4 corners.'
    const drawn = 'Until it is read again the box is drawn by its stated length and width.'
    const { trouble } = result
    if (trouble.why === 'crossed')
      return `No box with 4 corners has these sides and diagonals. Measure them again. ${drawn}${slipWords(layout, say)}`
    const [a, b] = trouble.short
    const long = capital(DISTANCE_NAMES[trouble.long])
    return `${long} is read ${say.length(Math.max(trouble.by, 0))} longer than ${DISTANCE_NAMES[a]} and ${DISTANCE_NAMES[b]} together, which no box has. ${drawn}${slipWords(layout, say)}`
  },
}

const listed = (names: readonly string[]) =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`

const worse = (a: ReadingResult, b: ReadingResult) =>
  Math.abs(b.standardized) > Math.abs(a.standardized) ? b : a

/** How far off the reading is that the others contradict most, held against what chance allows (Baarda's test). */
export const surveyAgrees: Rule = {
  name: 'survey-agrees',
  title: 'Readings that agree',
  unit: 'mm',
  wants: 'most',
  limits: [],
  measure(layout) {
    const found: Measurement[] = []
    const result = resultOf(layout)
    if (!result?.ok) return found
    const { disagreement, readings, redundancy, sigma } = result.survey
    // A shape that needed assumptions can still have a slip in it that stares one in the face.
    const slip = disagreement ? null : slipOf(layout)
    if (!disagreement && !slip && redundancy < 1) return found
    const worst = disagreement?.suspects[0] ?? readings.reduce(worse)
    found.push({
      about: ['box'],
      measured: slip ? Math.abs(slip.reading.value - slip.others) : Math.abs(worst.excess),
      limit: slip ? slip.allowed : (CRITICAL * sigma) / Math.sqrt(Math.max(worst.redundancy, 1e-6)),
      grade: disagreement || slip ? 'care' : 'clear',
      where: across(layout),
    })
    return found
  },
  words({ grade, measured }, say, layout) {
    const result = resultOf(layout)
    if (!result?.ok) return ''
    const { disagreement, readings } = result.survey
    if (grade === 'clear') {
      const most = readings.reduce((far, one) => Math.max(far, Math.abs(one.residual)), 0)
      return `Sides and diagonals agree: no reading is off by more than ${say.fine(most)}.`
    }
    const slip = slipWords(layout, say)
    const apart = say.length(measured ?? 0)
    if (!disagreement) return `The sides of the box differ by ${apart}.${slip}`
    const { suspects } = disagreement
    const first = suspects[0]
    const distances = [...new Set(suspects.map((one) => one.of))]
    if (!first || slip) return `Sides and diagonals disagree by about ${apart}.${slip}`
    const off = `${say.length(Math.abs(first.excess))} too ${first.excess > 0 ? 'long' : 'short'}`
    if (suspects.length === 1)
      return `${capital(DISTANCE_NAMES[first.of])}, read as ${say.length(first.value)}, seems ${off} for the rest. Measure it again.`
    if (distances.length === 1)
      return `The readings of ${DISTANCE_NAMES[first.of]} lie up to ${apart} off. Measure it again.`
    return `Sides and diagonals disagree by about ${say.length(Math.abs(first.excess))}, and it cannot be told which is off: ${listed(distances.map((one: Distance) => DISTANCE_NAMES[one]))}. Measure one of them again.`
  },
}

/** Said of every surveyed box: a builder who lays a square on it should know what he will see. */
export const outOfSquare: Rule = {
  name: 'out-of-square',
  title: 'Out of square',
  unit: 'mm',
  wants: 'most',
  limits: ['outOfSquare'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const result = resultOf(layout)
    if (!result?.ok) return found
    const { worst, overLength, overLengthError } = squarenessOf(result.survey)
    const wanted = limit('outOfSquare')
    found.push({
      about: ['box'],
      measured: overLength,
      limit: wanted,
      grade: gradeMost(overLength, wanted) === 'clear' ? 'clear' : 'note',
      where: across(layout),
      data: {
        corner: worst.corner,
        degrees: degreesOf(worst.angle),
        error: overLengthError,
      },
    })
    return found
  },
  words({ measured, grade, data }, say) {
    const off = `${say.length(measured ?? 0)} over its length, give or take ${say.length(Number(data?.error))}`
    const corner = `its ${data?.corner} corner has ${Number(data?.degrees).toFixed(2)}°`
    return grade === 'clear'
      ? `The box is out of square by ${off}; ${corner}.`
      : `The box is out of square by ${off}; ${corner}. Lay everything out from the centreline, and saw the neck slots along it, not square to the wall.`
  },
}

/** Three corners make a plane; the fourth shows the twist. */
export const boxTwist: Rule = {
  name: 'box-twist',
  title: 'Twist of the walls',
  unit: 'mm',
  wants: 'most',
  limits: ['boxTwist'],
  measure(layout, limit) {
    const found: Measurement[] = []
    if (!layout.design.box.survey) return found
    const twist = heightsOf(layout.design.box, graduationOf(layout.design) / 2)?.twist
    if (!twist) return found
    const wanted = limit('boxTwist')
    found.push({
      about: ['box'],
      measured: Math.abs(twist.by),
      limit: wanted,
      grade: gradeMost(Math.abs(twist.by), wanted),
      where: across(layout),
      data: { by: twist.by, error: twist.standardError },
    })
    return found
  },
  words({ grade, data }, say) {
    const by = Number(data?.by)
    const where = `The tail-end treble corner stands ${say.length(Math.abs(by))} ${by < 0 ? 'below' : 'above'} the plane of the other three, give or take ${say.length(Number(data?.error))}`
    return grade === 'clear' ? `${where}.` : `${where}; a flat lid will rock. Plane the walls, or shim them.`
  },
}
