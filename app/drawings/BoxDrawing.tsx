/** The box as measured: from the front and cut across, with the dimensions that a builder takes. */
import { lazy, type ReactNode, Suspense } from 'react'
import { formatLength, insidePiecesOf, type Layout } from '../../geometry/index.ts'
import { Dimension } from './Dimension.tsx'
import type { PlanFrame } from './PlanPieces.tsx'
import { pathOf } from './path.ts'
import { type PixelSize, useSize } from './size.ts'

/** Only a surveyed box is drawn with its corners as they were found. */
const SurveyPlan = lazy(() => import('./SurveyPlan.tsx').then((page) => ({ default: page.SurveyPlan })))

/** Names of fields of the box whose dimension is drawn. */
export type Measured =
  | 'length'
  | 'width'
  | 'depth'
  | 'cornerRadius'
  | 'lid.thickness'
  | 'base.thickness'
  | 'walls.neckEnd'
  | 'walls.tailEnd'
  | 'walls.bass'
  | 'walls.treble'

export interface BoxDrawingProps {
  readonly layout: Layout
  /** The field being typed in: its dimension stands out. */
  readonly lit?: string | null
  readonly label?: string
  /** What is drawn over the plan, told where that lies. */
  readonly marks?: (frame: PlanFrame) => ReactNode
}

const MARGIN = { left: 66, right: 74, top: 58, bottom: 64 }
const BETWEEN = 104

export function BoxDrawing({ layout, lit = null, label = 'The box as measured', marks }: BoxDrawingProps) {
  const [ref, size] = useSize<HTMLDivElement>()
  return (
    <div className="box-drawing" ref={ref}>
      {size && size.width > 120 && size.height > 100 && (
        <Views layout={layout} lit={lit} size={size} label={label} marks={marks} />
      )}
    </div>
  )
}

function Views({
  layout,
  lit,
  size,
  label,
  marks,
}: {
  layout: Layout
  lit: string | null
  size: PixelSize
  label: string
  marks: BoxDrawingProps['marks']
}) {
  const { box, design } = layout
  const { depth } = design.box
  const { length, width } = layout.real ?? design.box
  const room = { x: size.width - MARGIN.left - MARGIN.right, y: size.height - MARGIN.top - MARGIN.bottom }
  // One over the other or side by side, whichever shows more.
  const over = Math.min(room.x / Math.max(length, width), (room.y - BETWEEN) / (width + depth))
  const beside = Math.min((room.x - BETWEEN) / (length + width), room.y / Math.max(width, depth))
  const stacked = over > beside
  const s = Math.max(0.05, over, beside)
  const across = stacked ? Math.max(length, width) * s : (length + width) * s + BETWEEN
  const tall = stacked ? (width + depth) * s + BETWEEN : Math.max(width, depth) * s
  const left = MARGIN.left + Math.max(0, (room.x - across) / 2)
  const top = MARGIN.top + Math.max(0, (room.y - tall) / 2)
  const end = stacked
    ? { x: left, y: top + width * s + BETWEEN }
    : { x: left + length * s + BETWEEN, y: top + Math.max(0, (width * s - depth * s) / 2) }
  return (
    <svg width={size.width} height={size.height} role={marks ? 'group' : 'img'} aria-label={label}>
      {layout.real ? (
        <Suspense fallback={null}>
          <SurveyPlan
            layout={layout}
            lit={lit}
            x={left}
            y={top}
            s={s}
            enlarged={design.box.inside.length + design.artwork.length === 0}
          />
        </Suspense>
      ) : (
        <Plan layout={layout} lit={lit} x={left} y={top} s={s} />
      )}
      {marks?.({ x: left, y: top + (width / 2) * s, s, up: layout.up })}
      <End layout={layout} lit={lit} x={end.x} y={end.y} s={s} />
      <text className="view-title" x={left} y={top + width * s + 52}>
        From the front, head to the left
      </text>
      <text className="view-title" x={end.x} y={end.y + (box.halfWidth > 0 ? depth * s : 0) + 52}>
        Cut across, seen from the head end
      </text>
    </svg>
  )
}

interface ViewProps {
  readonly layout: Layout
  readonly lit: string | null
  readonly x: number
  readonly y: number
  readonly s: number
}

function Plan({ layout, lit, x, y, s }: ViewProps) {
  const { design, panels, box, up } = layout
  const { length, width, walls, cornerRadius } = design.box
  const say = (mm: number) => formatLength(mm, design.units)
  const outline = pathOf(
    panels.base.bounds.maxX > panels.lid.bounds.maxX ? panels.base.outline : panels.lid.outline,
  )
  // The treble side is up for a right-handed build and down for a left-handed one.
  const [upper, lower] = up === 1 ? [walls.treble, walls.bass] : [walls.bass, walls.treble]
  const inside = {
    x: x + walls.neckEnd * s,
    y: y + upper * s,
    width: Math.max(0, length - walls.neckEnd - walls.tailEnd) * s,
    height: Math.max(0, width - upper - lower) * s,
  }
  const half = (design.neck.width / 2) * s
  const centre = y + (width / 2) * s
  const neckTo = Math.min(layout.neck.x1, box.x1) - box.x0
  // Clear of blocks in the corners and of a picture in the middle.
  const side = inside.x + inside.width * 0.72
  return (
    <g>
      <g transform={`translate(${x} ${centre}) scale(${s} ${s})`}>
        <path className="wood" d={outline} vectorEffect="non-scaling-stroke" />
      </g>
      <rect className="hidden-line" {...inside} />
      <path
        className="hidden-line"
        d={`M${x} ${centre - half}h${neckTo * s}M${x} ${centre + half}h${neckTo * s}`}
      />
      <path className="centre-line" d={`M${x - 22} ${centre}H${x + length * s + 22}`} />
      <text className="view-side on-wood" x={side} y={inside.y + 14} textAnchor="middle">
        {up === 1 ? 'treble' : 'bass'}
      </text>
      <text className="view-side on-wood" x={side} y={inside.y + inside.height - 6} textAnchor="middle">
        {up === 1 ? 'bass' : 'treble'}
      </text>
      <Dimension
        x1={x}
        y1={y}
        x2={x + length * s}
        y2={y}
        off={-34}
        text={say(length)}
        lit={lit === 'length'}
      />
      <Dimension x1={x} y1={y} x2={x} y2={y + width * s} off={-40} text={say(width)} lit={lit === 'width'} />
      <Dimension
        x1={x}
        y1={y + width * s}
        x2={inside.x}
        y2={y + width * s}
        off={16}
        text={say(walls.neckEnd)}
        lit={lit === 'walls.neckEnd'}
      />
      <Dimension
        x1={x + (length - walls.tailEnd) * s}
        y1={y + width * s}
        x2={x + length * s}
        y2={y + width * s}
        off={16}
        text={say(walls.tailEnd)}
        lit={lit === 'walls.tailEnd'}
      />
      {cornerRadius > 0 && (
        <text
          className={lit === 'cornerRadius' ? 'dimension-word lit' : 'dimension-word'}
          x={x + length * s + 6}
          y={y - 6}
        >
          R {say(cornerRadius)}
        </text>
      )}
    </g>
  )
}

/** Cut across: lid, walls, base, and where the neck passes. Seen from the head, so the treble side is to the left. */
function End({ layout, lit, x, y, s }: ViewProps) {
  const { design, box, up, panels } = layout
  const { depth, walls, lid, base } = design.box
  const { width } = layout.real ?? design.box
  const say = (mm: number) => formatLength(mm, design.units)
  const at = (z: number) => y - z * s
  const slab = (from: number, to: number, high: number, low: number, kind: string) => (
    <rect
      className={kind}
      x={x + from * s}
      y={at(high)}
      width={Math.max(0, to - from) * s}
      height={Math.max(0, high - low) * s}
    />
  )
  const [first, last] = up === 1 ? [walls.treble, walls.bass] : [walls.bass, walls.treble]
  const span = (face: 'lid' | 'base'): [number, number] => {
    const half = panels[face].bounds.maxY
    return [width / 2 - half, width / 2 + half]
  }
  const neckHalf = design.neck.width / 2
  const right = x + width * s
  return (
    <g>
      {slab(...span('base'), box.baseTop, box.baseBottom, 'wood wall')}
      {slab(0, first, box.wallTop, box.wallBottom, 'wood wall')}
      {slab(width - last, width, box.wallTop, box.wallBottom, 'wood wall')}
      {slab(...span('lid'), 0, box.lidBottom, 'wood')}
      {insidePiecesOf(layout).map(({ piece, box: room }) => (
        <g key={piece.id}>
          {up === 1
            ? slab(width / 2 - room.maxY, width / 2 - room.minY, room.maxZ, room.minZ, 'hidden-line')
            : slab(width / 2 + room.minY, width / 2 + room.maxY, room.maxZ, room.minZ, 'hidden-line')}
        </g>
      ))}
      {slab(width / 2 - neckHalf, width / 2 + neckHalf, layout.neck.top, layout.neck.bottom, 'hidden-line')}
      <path className="centre-line" d={`M${x + (width / 2) * s} ${y - 16}V${at(-depth) + 16}`} />
      <text className="view-side" x={x + first * s + 6} y={at(-depth / 2) + 4}>
        {up === 1 ? 'treble' : 'bass'}
      </text>
      <text className="view-side" x={right - last * s - 6} y={at(-depth / 2) + 4} textAnchor="end">
        {up === 1 ? 'bass' : 'treble'}
      </text>
      <Dimension x1={x} y1={y} x2={x} y2={at(-depth)} off={-34} text={say(depth)} lit={lit === 'depth'} />
      <Dimension
        x1={right}
        y1={y}
        x2={right}
        y2={at(-lid.thickness)}
        off={14}
        text={say(lid.thickness)}
        lit={lit === 'lid.thickness'}
      />
      <Dimension
        x1={right}
        y1={at(box.baseTop)}
        x2={right}
        y2={at(box.baseBottom)}
        off={14}
        text={say(base.thickness)}
        lit={lit === 'base.thickness'}
      />
      <Dimension
        x1={x}
        y1={at(box.baseBottom)}
        x2={x + first * s}
        y2={at(box.baseBottom)}
        off={16}
        text={say(first)}
        lit={lit === (up === 1 ? 'walls.treble' : 'walls.bass')}
      />
      <Dimension
        x1={right - last * s}
        y1={at(box.baseBottom)}
        x2={right}
        y2={at(box.baseBottom)}
        off={16}
        text={say(last)}
        lit={lit === (up === 1 ? 'walls.bass' : 'walls.treble')}
      />
    </g>
  )
}
