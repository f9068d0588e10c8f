/** The tightest margins, always at the foot of the page: measured, limit, and what is left between them. */
import { check, type Finding, formatMeasure, type Layout, ruleOf, sentenceOf } from '../../geometry/index.ts'
import { light, select, useBench } from '../state/index.ts'
import { useLayout } from './calm.ts'
import { Sign } from './Sign.tsx'
import { nameOf } from './say.ts'
import { sayMargin } from './say-findings.ts'
import { selectable } from './structure.ts'
import { tightest } from './tightness.ts'

const HOW_MANY = 6
/** Where the limit stands on the little scale, as a share of its length. */
const LIMIT_AT = 0.4

export function TightestStrip() {
  const layout = useLayout()
  const lit = useBench((bench) => bench.litFinding)
  const shown = tightest(check(layout), HOW_MANY)
  return (
    <section className="tightest" aria-label="Tightest margins">
      <h2>Tightest</h2>
      {shown.length === 0 && <p className="soft small">Nothing is measured yet.</p>}
      <ul>
        {shown.map((finding) => (
          <li key={finding.key}>
            <Margin finding={finding} layout={layout} lit={finding.key === lit} />
          </li>
        ))}
      </ul>
    </section>
  )
}

function Margin({ finding, layout, lit }: { finding: Finding; layout: Layout; lit: boolean }) {
  const { units } = layout.design
  const { measured, limit, margin, grade } = finding
  if (measured === null || limit === null || margin === null) return null
  const thing = selectable(finding.about, layout)
  const of = finding.about.map((id) => nameOf(id, layout)).join(', ')
  return (
    <button
      type="button"
      className={lit ? 'margin lit' : 'margin'}
      aria-pressed={lit}
      title={sentenceOf(finding, layout)}
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
      <Scale at={position(margin, limit)} grade={grade} />
      <span className="margin-numbers">
        <span>
          {formatMeasure(measured, finding, units)}
          <span className="soft"> of {formatMeasure(limit, finding, units)}</span>
        </span>
        <b className={grade}>{sayMargin(margin, finding, units)}</b>
      </span>
    </button>
  )
}

/** Where the measure lies on the scale: the limit is at its tick, twice the limit near the far end. */
function position(margin: number, limit: number): number {
  const share = margin / Math.max(Math.abs(limit), 1)
  return Math.min(
    0.97,
    Math.max(0.03, LIMIT_AT + (share > 0 ? share * (1 - LIMIT_AT) * 0.8 : share * LIMIT_AT)),
  )
}

function Scale({ at, grade }: { at: number; grade: Finding['grade'] }) {
  const id = grade === 'stop' ? 'crossed' : 'slanted'
  return (
    <svg
      className={`margin-scale ${grade}`}
      viewBox="0 0 100 12"
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <rect className="margin-track" x="0" y="3" width="100" height="6" />
      {grade !== 'clear' && grade !== 'note' && (
        <rect x="0" y="3" width={LIMIT_AT * 100} height="6" fill={`url(#${id})`} />
      )}
      <line className="margin-tick" x1={LIMIT_AT * 100} x2={LIMIT_AT * 100} y1="0" y2="12" />
      <line className="margin-dot" x1={at * 100} x2={at * 100} y1="6" y2="6" />
    </svg>
  )
}
