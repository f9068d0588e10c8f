/** What would mend a finding, each as a button that does it in one step of undo. */
import { type Cure, type Layout, ruleOf, type Worsened } from '../../geometry/index.ts'
import { commit, useBench } from '../state/index.ts'
import { Sign } from './Sign.tsx'
import { GRADE_WORDS, nameOf } from './say.ts'

export interface CureButtonsProps {
  readonly cures: readonly Cure[]
  readonly layout: Layout
  /** All of them; the first alone where the finding is not lit. */
  readonly all: boolean
}

export function CureButtons({ cures, layout, all }: CureButtonsProps) {
  const shown = all || cures.some((one) => one.yours) ? cures : cures.slice(0, 1)
  if (shown.length === 0)
    return all ? (
      <p className="finding-words small soft">No change of a place or a size was found that mends it here.</p>
    ) : null
  return (
    <ul className="cures-of" aria-label="What would mend it">
      {shown.map((cure) => (
        <li key={cure.words}>
          <button type="button" className="cure" onClick={() => take(cure, layout)}>
            {cure.words}
          </button>
          <Price cure={cure} layout={layout} />
        </li>
      ))}
    </ul>
  )
}

/** Only what was reckoned for the design that lies there is done to it. */
function take(cure: Cure, layout: Layout): void {
  if (useBench.getState().design === layout.design) commit(cure.words, cure.change)
}

/** What a cure leaves undone, gives up or makes worse. */
export function Price({ cure, layout }: { readonly cure: Cure; readonly layout: Layout }) {
  if (cure.outcome === 'gone' && cure.loosens === null && cure.worse.length === 0) return null
  return (
    <p className="cure-price small">
      {cure.outcome === 'better' && <span>Then it is no longer a stop, but risky still. </span>}
      {cure.loosens !== null && <span>{cure.loosens} </span>}
      <WorseList worse={cure.worse} layout={layout} />
    </p>
  )
}

export function WorseList({
  worse,
  layout,
}: {
  readonly worse: readonly Worsened[]
  readonly layout: Layout
}) {
  if (worse.length === 0) return null
  return (
    <span>
      Gets worse for it:{' '}
      {worse.map(({ finding, before }, index) => (
        <span key={finding.key} className="cure-worse">
          {index > 0 && ', '}
          <Sign grade={finding.grade} />
          {ruleOf(finding.rule).title.toLowerCase()} (
          {finding.about.map((id) => nameOf(id, layout)).join(', ')}
          {before?.grade === finding.grade
            ? ', tighter'
            : `, now ${GRADE_WORDS[finding.grade].toLowerCase()}`}
          )
        </span>
      ))}
      .
    </span>
  )
}
