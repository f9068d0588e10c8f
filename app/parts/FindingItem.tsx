/** One finding in full: what was measured, the limit, the margin, where, and the builder's own decision about it. */
import { useId, useState } from 'react'
import {
  type Cure,
  change,
  type Finding,
  formatMeasure,
  type Layout,
  measureAgainWords,
  type Rule,
  ruleOf,
  SOURCES,
  sentenceOf,
  unbroken,
  type WorstCase,
} from '../../geometry/index.ts'
import { commit, goTo, light, select, useBench } from '../state/index.ts'
import { CureButtons } from './CureButtons.tsx'
import { HangsOn } from './HangsOn.tsx'
import { MarginFigure } from './MarginFigure.tsx'
import { MarginScale } from './MarginScale.tsx'
import { Sign } from './Sign.tsx'
import { FACE_TITLES, nameOf } from './say.ts'
import { sayMargin } from './say-findings.ts'
import { pieceOf, selectable } from './structure.ts'

export interface FindingItemProps {
  readonly finding: Finding
  readonly layout: Layout
  readonly lit: boolean
  /** How far the margin may be off, once it is known. */
  readonly worst?: WorstCase | undefined
  /** What would mend it, once that has been looked for. */
  readonly cures?: readonly Cure[] | undefined
}

export function FindingItem({ finding, layout, lit, worst, cures }: FindingItemProps) {
  const { grade, measured, limit, margin, unit } = finding
  const { units } = layout.design
  const about = finding.about.map((id) => nameOf(id, layout)).join(', ')
  const quiet = grade === 'clear' && !lit && !worst?.doubtful
  const again = worst && measureAgainWords(finding, worst, layout)
  return (
    <article
      className={`finding ${grade} ${lit ? 'lit' : ''} ${finding.overruled === undefined ? '' : 'overruled'}`}
    >
      <button
        type="button"
        className="finding-head"
        aria-pressed={lit}
        onClick={() => light(lit ? null : finding.key)}
      >
        <Sign grade={grade} />
        <span className="finding-title">
          {ruleOf(finding.rule).title}
          {about && <i>{about}</i>}
        </span>
        {measured !== null && margin !== null && unit !== 'count' && (
          <MarginFigure
            margin={margin}
            finding={finding}
            worst={worst}
            units={units}
            className={`finding-margin ${grade}`}
            title="Margin to the limit"
          />
        )}
      </button>
      {!quiet && <p className="finding-words">{unbroken(sentenceOf(finding, layout))}</p>}
      {again && <p className="finding-again">{unbroken(again)}</p>}
      {!quiet && margin !== null && limit !== null && worst && worst.tolerance > 0 && (
        <div className="finding-scale">
          <MarginScale margin={margin} limit={limit} grade={grade} tolerance={worst.tolerance} />
        </div>
      )}
      {!quiet && measured !== null && (
        <dl className="finding-numbers">
          <div>
            <dt>measured</dt>
            <dd>{formatMeasure(measured, finding, units, { unit: true })}</dd>
          </div>
          {limit !== null && (
            <div>
              <dt>limit</dt>
              <dd>{formatMeasure(limit, finding, units, { unit: true })}</dd>
            </div>
          )}
          {margin !== null && unit !== 'count' && (
            <div>
              <dt>margin</dt>
              <dd className={grade}>{sayMargin(margin, finding, units)}</dd>
            </div>
          )}
          {margin !== null && worst && worst.tolerance > 0 && (
            <div>
              <dt>at worst</dt>
              <dd className={worst.doubtful ? 'doubtful' : undefined}>
                {sayMargin(margin - worst.tolerance, finding, units)}
              </dd>
            </div>
          )}
          <div>
            <dt>where</dt>
            <dd>{whereWords(finding)}</dd>
          </div>
        </dl>
      )}
      {cures && grade !== 'clear' && finding.overruled === undefined && (
        <CureButtons cures={cures} layout={layout} all={lit} />
      )}
      {lit && <Basis names={ruleOf(finding.rule).basis} />}
      {lit && worst && <HangsOn finding={finding} parts={worst.parts} />}
      {lit && <Decide finding={finding} layout={layout} />}
      {!lit && finding.overruled !== undefined && (
        <p className="small soft">Overruled: {finding.overruled}</p>
      )}
    </article>
  )
}

/** Where a reckoned number comes from. */
function Basis({ names = [] }: { readonly names: Rule['basis'] }) {
  return names.map((name) => (
    <p key={name} className="finding-words small soft">
      {SOURCES[name]}
    </p>
  ))
}

function whereWords({ where }: Finding): string {
  if (where.view === 'plan' || where.view === 'section') return where.view
  return FACE_TITLES[where.view].toLowerCase()
}

/** Going there, and living with it. */
function Decide({ finding, layout }: { finding: Finding; layout: Layout }) {
  const target = selectable(finding.about, layout)
  // What cannot be dragged is mended where its fields stand.
  const piece = pieceOf(target)
  const [place, title] =
    piece && !piece.hint ? (['choose', 'Choose'] as const) : (['lay-out', 'Lay out'] as const)
  return (
    <div className="finding-decide">
      {target && (
        <button
          type="button"
          className="link"
          onClick={() => {
            select(target)
            goTo(place)
          }}
        >
          Mend it in {title}
        </button>
      )}
      {(finding.grade === 'stop' || finding.grade === 'care') && <Overrule finding={finding} />}
    </div>
  )
}

function Overrule({ finding }: { finding: Finding }) {
  const own = useId()
  const [reason, setReason] = useState('')
  const [open, setOpen] = useState(false)
  const [fault, setFault] = useState<string | null>(null)
  const set = (value: string | undefined, label: string) => {
    const { design } = useBench.getState()
    const outcome = commit(label, change(design, [['overruled', finding.key], value]))
    setFault(outcome.ok ? null : outcome.sentence)
    if (outcome.ok) setOpen(false)
  }
  if (finding.overruled !== undefined)
    return (
      <p className="small">
        You overruled this: “{finding.overruled}”{' '}
        <button type="button" className="link" onClick={() => set(undefined, 'Take an overruling back')}>
          Take that back
        </button>
      </p>
    )
  if (!open)
    return (
      <button type="button" className="link" onClick={() => setOpen(true)}>
        Overrule, with a reason
      </button>
    )
  return (
    <form
      className="overrule"
      onSubmit={(event) => {
        event.preventDefault()
        if (reason.trim() === '')
          setFault('Say in a few words why you can live with it; the reason stays with the design.')
        else set(reason.trim(), 'Overrule a finding')
      }}
    >
      <label htmlFor={own} className="small soft">
        Why you can live with it
      </label>
      <input
        id={own}
        type="text"
        className="field-wide"
        maxLength={500}
        value={reason}
        onChange={(event) => setReason(event.target.value)}
      />
      {fault && (
        <p className="field-fault" role="alert">
          {fault}
        </p>
      )}
      <div className="field-row">
        <button type="submit">Overrule</button>
        <button type="button" className="quiet" onClick={() => setOpen(false)}>
          Leave it
        </button>
      </div>
    </form>
  )
}
