/** A dimension line after drawing practice: thin, between two extension lines, its figure over it. Pixels. */

export interface DimensionProps {
  readonly x1: number
  readonly y1: number
  readonly x2: number
  readonly y2: number
  readonly text: string
  /** How far the line lies from what it measures: up or left is negative. */
  readonly off: number
  readonly lit?: boolean
}

const GAP = 3
const ARROW = 5

/** Horizontal where y1 = y2, else upright. */
export function Dimension({ x1, y1, x2, y2, text, off, lit = false }: DimensionProps) {
  const flat = y1 === y2
  const [ax, ay, bx, by] = flat ? [x1, y1 + off, x2, y2 + off] : [x1 + off, y1, x2 + off, y2]
  const middle = { x: (ax + bx) / 2, y: (ay + by) / 2 }
  const length = Math.abs(flat ? bx - ax : by - ay)
  const tight = length < 8 * text.length && !flat
  const arrow = (x: number, y: number, sign: 1 | -1) =>
    flat ? `M${x} ${y}l${sign * ARROW} -2.500v5z` : `M${x} ${y}l-2.500 ${sign * ARROW}h5z`
  const over = Math.sign(off) * GAP
  return (
    <g className={lit ? 'dimension lit' : 'dimension'}>
      {flat ? (
        <path d={`M${x1} ${y1 + over}V${ay + over}M${x2} ${y2 + over}V${by + over}M${ax} ${ay}H${bx}`} />
      ) : (
        <path d={`M${x1 + over} ${y1}H${ax + over}M${x2 + over} ${y2}H${bx + over}M${ax} ${ay}V${by}`} />
      )}
      {length > 3 * ARROW && (
        <path
          className="dimension-arrow"
          d={`${arrow(ax, ay, flat ? (bx > ax ? 1 : -1) : by > ay ? 1 : -1)}${arrow(bx, by, flat ? (bx > ax ? -1 : 1) : by > ay ? -1 : 1)}`}
        />
      )}
      {flat ? (
        <text x={middle.x} y={middle.y + (off < 0 ? -5 : 16)} textAnchor="middle">
          {text}
        </text>
      ) : tight ? (
        <text x={middle.x + (off < 0 ? -6 : 6)} y={middle.y + 4} textAnchor={off < 0 ? 'end' : 'start'}>
          {text}
        </text>
      ) : (
        <text
          x={middle.x}
          y={middle.y}
          textAnchor="middle"
          transform={`rotate(-90 ${middle.x} ${middle.y}) translate(0 ${off < 0 ? -5 : 14})`}
        >
          {text}
        </text>
      )}
    </g>
  )
}
