/** The tightest margins, always at the foot of the page: measured, limit, and what is left between them. */
import {
  check,
  type Finding,
  formatMeasure,
  type Layout,
  measureAgainWords,
  ruleOf,
  sentenceOf,
  type WorstCase,
} from '../../geometry/index.ts'
import { light, select, useBench } from '../state/index.ts'
import { useLayout } from './calm.ts'
import { MarginFigure } from './MarginFigure.tsx'
import { MarginScale } from './MarginScale.tsx'
import { Sign } from './Sign.tsx'
import { GRADE_WORDS, nameOf } from './say.ts'
import { selectable } from './structure.ts'
import { tightest } from './tightness.ts'
import { useWorstCases } from './worst.ts'

const HOW_MANY = 6

export function TightestStrip() {
  const layout = useLayout()
  const lit = useBench((bench) => bench.litFinding)
  const worst = useWorstCases(layout)
  const shown = tightest(check(layout), HOW_MANY)
  return (
    <section className="tightest" aria-label="Tightest margins">
      <h2>Tightest</h2>
      {shown.length === 0 && <p className="soft small">Nothing is measured yet.</p>}
      <ul>
        {shown.map((finding) => (
          <li key={finding.key}>
            <Margin
              finding={finding}
              layout={layout}
              worst={worst.get(finding.key)}
              lit={finding.key === lit}
            />
          </li>
        ))}
      </ul>
    </section>
  )
}

function Margin({
  finding,
  layout,
  worst,
  lit,
}: {
  finding: Finding
  layout: Layout
  worst: WorstCase | undefined
  lit: boolean
}) {
  const { units } = layout.design
  const { measured, limit, margin, grade, unit } = finding
  if (measured === null || limit === null || margin === null) return null
  const thing = selectable(finding.about, layout)
  const of = finding.about.map((id) => nameOf(id, layout)).join(', ')
  return (
    <button
      type="button"
      className={lit ? 'margin lit' : 'margin'}
      aria-pressed={lit}
      title={[sentenceOf(finding, layout), worst && measureAgainWords(finding, worst, layout)]
        .filter(Boolean)
        .join(' ')}
      onClick={() => {
        light(lit ? null : finding.key)
        if (thing) select(thing)
      }}
    >
      <span className="margin-title">
        {grade !== 'clear' && <Sign grade={grade} />}
        <span>
          {ruleOf(finding.rule).title}
          {of && <i>{of}</i>}
        </span>
      </span>
      {/* What is counted is there or not: it has no way to go, and a scale would make one up. */}
      {unit === 'count' ? (
        <span className="margin-numbers">
          <b className={grade}>{GRADE_WORDS[grade]}</b>
        </span>
      ) : (
        <>
          <MarginScale margin={margin} limit={limit} grade={grade} tolerance={worst?.tolerance ?? 0} />
          <span className="margin-numbers">
            <span>
              {formatMeasure(measured, finding, units)}
              <span className="soft"> of {formatMeasure(limit, finding, units)}</span>
            </span>
            <MarginFigure margin={margin} finding={finding} worst={worst} units={units} className={grade} />
          </span>
        </>
      )}
    </button>
  )
}
