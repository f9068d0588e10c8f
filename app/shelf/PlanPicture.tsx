/** A small picture of an instrument in plan: enough to know one box from another. */
import { type Design, halfWidthAt, solve } from '../../geometry/index.ts'
import { pathOf } from '../drawings/path.ts'

const AROUND = 6

export function PlanPicture({ design }: { readonly design: Design }) {
  const layout = solve(design)
  const { neck, box, panels, placed, saddle, strings, up } = layout
  const x0 = Math.min(neck.x0, box.x0) - AROUND
  const x1 = Math.max(neck.x1, box.x1) + AROUND
  const half = box.halfWidth + AROUND
  const lid = panels.lid
  const neckXs = [
    neck.x0,
    ...neck.halfWidths.map((one) => one.x).filter((x) => x > neck.x0 && x < neck.x1),
    neck.x1,
  ]
  const side = (sign: number, xs: readonly number[]) => xs.map((x) => `${x},${sign * halfWidthAt(neck, x)}`)
  return (
    <svg className="plan-picture" viewBox={`${x0} ${-half} ${x1 - x0} ${2 * half}`} aria-hidden="true">
      <g transform={`scale(1 ${up})`}>
        <polygon
          className="plan-neck"
          points={[...side(-1, neckXs), ...side(1, [...neckXs].reverse())].join(' ')}
        />
        <g transform={`translate(${lid.originX} 0)`}>
          <path className="plan-lid" d={pathOf(lid.outline)} />
          {placed
            .filter((one) => one.face === 'lid')
            .slice(0, 60)
            .map((one) => (
              <path key={one.thing.id} className="plan-hole" d={pathOf(one.footprint)} />
            ))}
        </g>
        {strings.map((string) => (
          <line
            key={string.index}
            className="plan-string"
            x1={0}
            x2={saddle.x}
            y1={-string.yAtNut}
            y2={-string.yAtSaddle}
          />
        ))}
      </g>
    </svg>
  )
}
