/** How tight a finding is, so that a degree can be weighed against a millimetre. */
import type { Finding } from './finding.ts'

type Margin = Pick<Finding, 'margin' | 'limit' | 'measured' | 'grade' | 'unit'>

/**
 * A measure that could be tighter or looser; a count that is right has no margin, nor has what lies flush.
 * Example: `check(layout).filter(isMargin)`.
 */
export const isMargin = ({ margin, limit, measured, grade, unit }: Margin): boolean =>
  margin !== null &&
  limit !== null &&
  grade !== 'note' &&
  !(grade === 'clear' && (unit === 'count' || (limit === 0 && measured === 0)))

/** The margin as a share of its limit; negative where it fails. Where the limit is nothing, any room is ample. */
export const spareOf = ({ margin, limit }: Pick<Finding, 'margin' | 'limit'>): number =>
  (margin ?? 0) / Math.max(Math.abs(limit ?? 0), 1e-6)
