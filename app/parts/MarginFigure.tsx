/** What is left to the limit, and by how much the measures could be off. */
import { type Finding, formatMeasure, type Layout, type WorstCase } from '../../geometry/index.ts'
import { sayMargin } from './say-findings.ts'

interface MarginFigureProps {
  readonly margin: number
  readonly finding: Finding
  readonly worst: WorstCase | undefined
  readonly units: Layout['design']['units']
  readonly className: string
  readonly title?: string
}

export function MarginFigure({ margin, finding, worst, units, className, title }: MarginFigureProps) {
  return (
    <b className={className} title={title}>
      {sayMargin(margin, finding, units)}
      {worst && worst.tolerance > 0 && (
        <span className={worst.doubtful ? 'give doubtful' : 'give'}>
          {' '}
          ± {formatMeasure(worst.tolerance, finding, units)}
        </span>
      )}
    </b>
  )
}
