/** The line of the tool's middle over the part as it comes out, and one corner of both, enlarged. */
import {
  bounds,
  type Contour,
  type Feature,
  featuresOf,
  type Part,
  type Point,
  type Tool,
  toolFor,
} from '../../../geometry/index.ts'
import { pathOf } from '../../drawings/path.ts'
import { useDesign } from '../../parts/calm.ts'
import { sayFine } from '../../parts/say-loads.ts'

/** Paths and what they take away, drawn in the frame of the part; nothing where it is cut by hand. */
export function ToolLines({ part }: { part: Part }) {
  const tool = toolFor(useDesign(), part.id)
  if (tool === null) return null
  return <Swath features={featuresOf(part, tool)} tool={tool} />
}

function Swath({ features, tool }: { features: readonly Feature[]; tool: Tool }) {
  return features.map(({ path, contour }, index) =>
    path === null ? (
      <path key={index} className="tool-none" d={pathOf(contour)} />
    ) : (
      <g key={index}>
        <path className="tool-swath" d={pathOf(path)} style={{ strokeWidth: tool.width }} />
        <path className="tool-path" d={pathOf(path)} />
      </g>
    ),
  )
}

/** How much of the drawing the enlarged corner shows, in widths of the tool. */
const ACROSS = 6

/** One corner, so large that the tool can be seen beside the line, and what was moved by how much, in words. */
export function ToolCorner({ part }: { part: Part }) {
  const design = useDesign()
  const tool = toolFor(design, part.id)
  if (tool === null || tool.width === 0) return null
  const features = featuresOf(part, tool)
  const { x, y } = cornerOf(features, part)
  const half = (ACROSS * tool.width) / 2
  const moved = sayFine(tool.width / 2, design.units)
  const name = tool.process === 'laser' ? 'Kerf' : 'Cutter'
  return (
    <figure className="tool-corner">
      <svg
        viewBox={`${x - half} ${-y - half} ${2 * half} ${2 * half}`}
        role="img"
        aria-label="One corner enlarged: the part as it comes out, and the line of the tool’s middle"
      >
        {features.map(({ contour }, index) => (
          <path key={index} className="tool-nominal" d={pathOf(contour)} />
        ))}
        <Swath features={features} tool={tool} />
      </svg>
      <figcaption>
        {name} {sayFine(tool.width, design.units)}. The outline is followed {moved} outside it, openings{' '}
        {moved} inside. Marks and lines to measure from stay.
      </figcaption>
    </figure>
  )
}

/** A corner worth looking at: an inside corner of a notch or an opening, else the first of the outline. */
function cornerOf(features: readonly Feature[], part: Part): Point {
  const openings = features.filter(({ kind }) => kind === 'opening' || kind === 'outline')
  for (const { contour, kind } of openings) {
    const corner = insideCorner(contour, kind === 'outline')
    if (corner !== undefined) return corner
  }
  const { minX, minY } = bounds(part.outline)
  const first = part.outline.shape === 'chain' ? part.outline.vertices[0] : undefined
  return first ?? { x: minX, y: minY }
}

function insideCorner(contour: Contour, outline: boolean): Point | undefined {
  if (contour.shape === 'circle') return undefined
  const { vertices } = contour
  return vertices.find((at, index) => {
    const before = vertices[(index + vertices.length - 1) % vertices.length]
    const next = vertices[(index + 1) % vertices.length]
    if (!before || !next || before.bulge !== 0 || at.bulge !== 0) return false
    const turned = (at.x - before.x) * (next.y - at.y) - (at.y - before.y) * (next.x - at.x)
    return outline ? turned < -1e-9 : turned > 1e-9
  })
}
