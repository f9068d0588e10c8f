/** A finding's numbers as the screen says them. Apart from `say.ts`, which the first screen needs without any rule. */
import { type Finding, formatMeasure, type Layout } from '../../geometry/index.ts'

type Units = Layout['design']['units']

/** A margin with its sign: `+3/32`, `−3/8`, `0`. */
export function sayMargin(value: number, finding: Pick<Finding, 'rule' | 'unit'>, units: Units): string {
  const text = formatMeasure(value, finding, units).replace('-', '−')
  return value > 0 && /[1-9]/.test(text) ? `+${text}` : text
}
