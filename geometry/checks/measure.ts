/** A finding's numbers as text, each in its own unit. */
import type { Design } from '../design/schema.ts'
import { formatAngle, formatLength, formatShare } from '../quantity/index.ts'
import { ruleOf } from './check.ts'
import type { Finding } from './finding.ts'

/**
 * A measure, limit or margin of this finding. Lengths in the builder's unit, those of a rule marked `fine` to a hundredth
 * of a millimetre or a thousandth of an inch; `unit` writes the unit of a length out.
 * Example: `formatMeasure(0.06, bow, design.units)` is `0.06` in millimetres and `.002` in inches.
 */
export function formatMeasure(
  value: number,
  { rule, unit }: Pick<Finding, 'rule' | 'unit'>,
  units: Design['units'],
  written: { readonly unit?: boolean } = {},
): string {
  switch (unit) {
    case 'mm': {
      if (!ruleOf(rule).fine) return formatLength(value, units, written)
      const { display } = units
      return formatLength(value, { display, fraction: 0 }, { ...written, decimals: display === 'mm' ? 2 : 3 })
    }
    case 'degrees':
      return formatAngle((value * Math.PI) / 180)
    case 'share':
      return formatShare(value)
    case 'newtons':
      return `${Math.round(value)} N`
    case 'count':
      return String(Math.round(value))
  }
}
