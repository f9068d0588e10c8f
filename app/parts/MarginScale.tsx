/** A margin on a little scale: the limit at its tick, the measure as a dot, and how far it may be off as a bar. */
import type { Grade } from '../../geometry/index.ts'

/** Where the limit stands, as a share of the scale's length. */
const LIMIT_AT = 0.4

/** Where the measure lies on the scale: the limit is at its tick, twice the limit near the far end. */
function position(margin: number, limit: number): number {
  const share = margin / Math.max(Math.abs(limit), 1)
  return Math.min(
    0.97,
    Math.max(0.03, LIMIT_AT + (share > 0 ? share * (1 - LIMIT_AT) * 0.8 : share * LIMIT_AT)),
  )
}

export interface MarginScaleProps {
  readonly margin: number
  readonly limit: number
  readonly grade: Grade
  /** How far the margin may be off; 0 where that is not known. */
  readonly tolerance: number
}

export function MarginScale({ margin, limit, grade, tolerance }: MarginScaleProps) {
  const id = grade === 'stop' ? 'crossed' : 'slanted'
  const at = position(margin, limit)
  const [low, high] = [position(margin - tolerance, limit) * 100, position(margin + tolerance, limit) * 100]
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
      {tolerance > 0 && <path className="margin-spread" d={`M${low} 2V10M${high} 2V10M${low} 6H${high}`} />}
      <line className="margin-dot" x1={at * 100} x2={at * 100} y1="6" y2="6" />
    </svg>
  )
}
