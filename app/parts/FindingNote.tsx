/** A finding in one line: its sign and its sentence. Pressed, it is lit on the drawing. */
import { type Finding, type Layout, sentenceOf, unbroken } from '../../geometry/index.ts'
import { light, useBench } from '../state/index.ts'
import { Sign } from './Sign.tsx'

export function FindingNote({ finding, layout }: { readonly finding: Finding; readonly layout: Layout }) {
  const lit = useBench((bench) => bench.litFinding === finding.key)
  return (
    <button
      type="button"
      className={`finding-note ${finding.grade} ${lit ? 'lit' : ''}`}
      aria-pressed={lit}
      onClick={() => light(lit ? null : finding.key)}
    >
      <Sign grade={finding.grade} />
      <span>{unbroken(sentenceOf(finding, layout))}</span>
    </button>
  )
}
