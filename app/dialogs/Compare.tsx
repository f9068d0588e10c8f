/** Two versions side by side: drawn, and what differs in numbers. */
import { useMemo, useState } from 'react'
import { type Design, solve } from '../../geometry/index.ts'
import { LidDrawing } from '../drawings/LidDrawing.tsx'
import { compare } from '../parts/compare.ts'
import { Dialog } from '../parts/Dialog.tsx'
import { designOf, type Version } from '../saving/versions.ts'
import { useBench } from '../state/index.ts'

export interface CompareProps {
  readonly versions: readonly Version[]
  readonly first: Version
  readonly onBack: () => void
  readonly onClose: () => void
}

const NOW = 'now'

export function Compare({ versions, first, onBack, onClose }: CompareProps) {
  const now = useBench((bench) => bench.design)
  const [a, setA] = useState(String(first.number))
  const [b, setB] = useState(NOW)
  const designFor = (which: string): Design | null => {
    if (which === NOW) return now
    const version = versions.find((one) => String(one.number) === which)
    return version ? designOf(version) : null
  }
  const [before, after] = useMemo(() => [designFor(a), designFor(b)], [a, b, versions, now])
  const rows = useMemo(() => (before && after ? compare(before, after) : []), [before, after])
  const choose = (label: string, value: string, set: (which: string) => void) => (
    <select aria-label={label} value={value} onChange={(event) => set(event.target.value)}>
      <option value={NOW}>as it is now</option>
      {versions.map((version) => (
        <option key={version.number} value={String(version.number)}>
          {version.name}
        </option>
      ))}
    </select>
  )
  let heading = ''
  return (
    <Dialog title="Two versions compared" onClose={onClose} wide>
      <div className="compare">
        <p>
          <button type="button" className="link" onClick={onBack}>
            Back to the history
          </button>
        </p>
        <div className="compare-two">
          {[
            { label: 'Before', which: a, set: setA, design: before },
            { label: 'After', which: b, set: setB, design: after },
          ].map(({ label, which, set, design }) => (
            <section key={label} aria-label={label}>
              <h2>{label}</h2>
              {choose(`${label}: which version`, which, set)}
              {design ? (
                <LidDrawing layout={solve(design)} label={`${label}: the lid`} />
              ) : (
                <p role="alert">This version cannot be read any more.</p>
              )}
            </section>
          ))}
        </div>
        {rows.length === 0 ? (
          <p>Nothing differs.</p>
        ) : (
          <table className="compare-table">
            <caption className="unseen">What differs, in numbers</caption>
            <thead>
              <tr>
                <th scope="col">What</th>
                <th scope="col">Before</th>
                <th scope="col">After</th>
                <th scope="col">Difference</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => {
                const under = row.under === heading ? null : row.under
                heading = row.under
                return [
                  under && (
                    <tr key={`under ${under}`} className="compare-under">
                      <th scope="colgroup" colSpan={4}>
                        {under}
                      </th>
                    </tr>
                  ),
                  <tr key={`${row.under} ${row.what}`}>
                    <th scope="row">{row.what}</th>
                    <td>{row.before}</td>
                    <td>{row.after}</td>
                    <td>{row.more}</td>
                  </tr>,
                ]
              })}
            </tbody>
          </table>
        )}
      </div>
    </Dialog>
  )
}
