/** What the readings say of the box: how far out of square, what disagrees, what was taken for granted; and questions about slips. */
import {
  ALIKE,
  type Assumption,
  check,
  DISTANCE_NAMES,
  type Finding,
  formatLength,
  graduationOf,
  type Layout,
  readingsOf,
  sentenceOf,
  slipsOf,
  surveyOf,
} from '../../geometry/index.ts'
import { amendReading } from './Readings.tsx'
import { Sign } from './Sign.tsx'

const RULES = ['survey-makes-box', 'survey-agrees', 'out-of-square', 'box-twist']

export function SurveySays({ layout }: { readonly layout: Layout }) {
  const { design } = layout
  const { box, units } = design
  const graduation = graduationOf(design)
  const result = surveyOf(box, graduation)
  if (!result || !box.survey) return null
  const findings = check(layout).filter(
    (one) => RULES.includes(one.rule) && !(one.rule === 'survey-makes-box' && one.grade === 'clear'),
  )
  const slips = slipsOf(result, readingsOf(box.survey), box, graduation / 2)
  const say = (mm: number) => formatLength(mm, units, { unit: true })
  const told = (finding: Finding) => (
    <p key={finding.key}>
      {finding.grade !== 'clear' && <Sign grade={finding.grade} />} {sentenceOf(finding, layout)}
    </p>
  )
  return (
    <div className="survey-says" aria-live="polite">
      {findings.slice(0, 1).map(told)}
      {slips.slice(0, 2).map(({ reading, meant }) => (
        <button
          key={`${reading.of} ${reading.index} ${meant}`}
          type="button"
          onClick={() => amendReading(reading.of, reading.index, meant)}
        >
          {`It was ${say(meant)}: ${DISTANCE_NAMES[reading.of]}, not ${say(reading.value)}`}
        </button>
      ))}
      {findings.slice(1).map(told)}
      {result.ok && result.survey.assumptions.length > 0 && (
        <p className="soft">{assumedWords(result.survey.assumptions, say)}</p>
      )}
      {result.ok && result.survey.scatter > 1 && (
        <p className="soft">
          The readings scatter {result.survey.scatter.toFixed(1)} times as much as a rule read to{' '}
          {say(graduation / 2)} explains; the errors shown allow for it.
        </p>
      )}
    </div>
  )
}

/** What was not measured, and what was taken for it. */
export function assumedWords(assumptions: readonly Assumption[], say: (mm: number) => string): string {
  const sides = assumptions.filter(({ of }) => !of.startsWith('diagonal'))
  const corners = assumptions.length > sides.length
  const parts = [
    ...(sides.length > 0
      ? [
          `${sides.map(({ of }) => DISTANCE_NAMES[of]).join(', ')} as long as ${sides.some(({ as }) => as === 'stated') ? 'stated or as the side over against it' : 'the side over against it'}`,
        ]
      : []),
    ...(corners ? ['the corners as square'] : []),
  ]
  return `Not measured, so taken for granted to within about ${say(ALIKE)}: ${parts.join('; ')}. ${corners ? 'One diagonal settles it.' : ''}`.trim()
}
