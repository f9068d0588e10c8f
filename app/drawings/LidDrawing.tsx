/** The lid with everything on it, small, for looking at two of them side by side. */
import type { Layout } from '../../geometry/index.ts'
import { pathOf } from './path.ts'

const MARGIN = 6

export function LidDrawing({ layout, label }: { readonly layout: Layout; readonly label: string }) {
  const { outline, bounds, originX } = layout.panels.lid
  const { minX, maxX, minY, maxY } = bounds
  const { saddle } = layout
  // Seen from the front: the treble side is up for the right hand, down for the left.
  const flip = layout.up === 1 ? undefined : 'scale(1 -1)'
  const x = saddle.x - originX
  return (
    <svg
      className="lid-drawing"
      role="img"
      aria-label={label}
      viewBox={`${minX - MARGIN} ${-maxY - MARGIN} ${maxX - minX + 2 * MARGIN} ${maxY - minY + 2 * MARGIN}`}
    >
      <g transform={flip}>
        <path className="lid-drawing-lid" d={pathOf(outline)} />
        <path className="lid-drawing-line" d={`M${minX} 0H${maxX}`} />
        <path className="lid-drawing-saddle" d={`M${x} ${-saddle.foot.maxY}V${-saddle.foot.minY}`} />
        {layout.placed
          .filter((one) => one.face === 'lid')
          .map((one) => (
            <path key={one.thing.id} className="lid-drawing-thing" d={pathOf(one.footprint)} />
          ))}
      </g>
    </svg>
  )
}
