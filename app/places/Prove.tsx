/** Prove: every finding, gravest and tightest first, with the drawing lit where it is. */
import { useState } from 'react'
import { byWorstCase, check, type Finding, type Grade } from '../../geometry/index.ts'
import { FaceStrip } from '../canvas/FaceStrip.tsx'
import { CureAll } from '../parts/CureAll.tsx'
import { useLayout } from '../parts/calm.ts'
import { useCures } from '../parts/cures.ts'
import { FindingItem } from '../parts/FindingItem.tsx'
import { SheetPanel } from '../parts/SheetPanel.tsx'
import { Sign } from '../parts/Sign.tsx'
import { GRADE_WORDS } from '../parts/say.ts'
import { useWorstCases } from '../parts/worst.ts'
import { useBench } from '../state/index.ts'
import { Limits } from './Limits.tsx'

const GRADES: readonly Grade[] = ['stop', 'care', 'note', 'clear']

export function Prove() {
  const [view, setView] = useState<'findings' | 'limits'>('findings')
  return (
    <>
      <div className="column prove-column">
        <div className="tabs" role="tablist" aria-label="Findings or limits">
          {(['findings', 'limits'] as const).map((name) => (
            <button
              key={name}
              type="button"
              role="tab"
              id={`tab-${name}`}
              aria-selected={view === name}
              aria-controls="prove-panel"
              className={view === name ? 'place-tab here' : 'place-tab'}
              data-words={name === 'findings' ? 'Findings' : 'Limits'}
              onClick={() => setView(name)}
            >
              {name === 'findings' ? 'Findings' : 'Limits'}
            </button>
          ))}
        </div>
        <div className="prove-panel" id="prove-panel" role="tabpanel" aria-labelledby={`tab-${view}`}>
          {view === 'findings' ? <Findings /> : <Limits />}
        </div>
      </div>
      <div className="middle">
        <SheetPanel place="prove" opens="box" />
        <FaceStrip />
      </div>
    </>
  )
}

function Findings() {
  const layout = useLayout()
  const worst = useWorstCases(layout)
  const findings = worst.size > 0 ? byWorstCase(check(layout), worst) : check(layout)
  const cures = useCures()
  const lit = useBench((bench) => bench.litFinding)
  const [shown, setShown] = useState<ReadonlySet<Grade>>(new Set(GRADES))
  const toggle = (grade: Grade) => {
    const next = new Set(shown)
    if (!next.delete(grade)) next.add(grade)
    setShown(next)
  }
  const list = findings.filter((one) => shown.has(one.grade) || one.key === lit)
  return (
    <>
      <fieldset className="grade-filter" aria-label="Which findings are shown">
        {GRADES.map((grade) => (
          <button key={grade} type="button" aria-pressed={shown.has(grade)} onClick={() => toggle(grade)}>
            <Sign grade={grade} quiet />
            {GRADE_WORDS[grade]} {count(findings, grade)}
          </button>
        ))}
      </fieldset>
      {findings.some(isOpen) && <CureAll layout={layout} />}
      <ol className="findings" aria-label="Findings">
        {list.map((finding) => (
          <li key={finding.key}>
            <FindingItem
              finding={finding}
              layout={layout}
              worst={worst.get(finding.key)}
              lit={finding.key === lit}
              cures={cures(layout, finding)}
            />
          </li>
        ))}
      </ol>
      {list.length === 0 && <p className="soft findings-none">None of these.</p>}
    </>
  )
}

/** What cure all might do something about. */
const isOpen = ({ grade, overruled }: Finding) =>
  (grade === 'stop' || grade === 'care') && overruled === undefined

const count = (findings: readonly Finding[], grade: Grade) =>
  findings.filter((one) => one.grade === grade).length
