/**
 * A surveyed box from the front. What makes it crooked is drawn many times its size, and says so; every dimension carries its
 * standard error, and the one whose reading disagrees stands out.
 */
import {
  CORNERS,
  DISTANCES,
  type Distance,
  formatAngle,
  formatLength,
  graduationOf,
  type Layout,
  type Point,
  squarenessOf,
  surveyOf,
} from '../../geometry/index.ts'

export interface SurveyPlanProps {
  readonly layout: Layout
  /** The distance that is being entered. */
  readonly lit: string | null
  /** Where the upper left corner of a true rectangle would lie, pixels, and pixels to a millimetre. */
  readonly x: number
  readonly y: number
  readonly s: number
  /** Enlarge what is crooked: not where pieces are drawn over it at their true places. */
  readonly enlarged: boolean
}

/** Which corners each distance joins, in the order of `CORNERS`. */
const ENDS: Readonly<Record<Distance, readonly [number, number]>> = {
  bass: [0, 1],
  treble: [3, 2],
  neckEnd: [0, 3],
  tailEnd: [1, 2],
  diagonalFromBass: [0, 2],
  diagonalFromTreble: [3, 1],
}

const TIMES = [50, 20, 10, 5, 2]
/** How much of the box's width the crookedness may take on the drawing. */
const SHOWN = 0.09

/** Times its size that a crookedness of so many millimetres can be drawn in a box so wide. Example: 1.5 of 180 mm makes 10. */
export const timesShown = (most: number, width: number): number =>
  most < 1e-3 ? 1 : (TIMES.find((one) => one * most <= SHOWN * width) ?? 1)

export function SurveyPlan({ layout, lit, x, y, s, enlarged }: SurveyPlanProps) {
  const { design, real, up } = layout
  const result = surveyOf(design.box, graduationOf(design))
  if (!real || !result?.ok) return null
  const { survey } = result
  const { length, width } = real
  const square: readonly Point[] = [
    { x: 0, y: -width / 2 },
    { x: length, y: -width / 2 },
    { x: length, y: width / 2 },
    { x: 0, y: width / 2 },
  ]
  const off = real.outside.corners.map((corner, index) => ({
    x: corner.x - (square[index]?.x ?? 0),
    y: corner.y - (square[index]?.y ?? 0),
  }))
  const most = Math.max(...off.map((one) => Math.hypot(one.x, one.y)))
  const times = enlarged ? timesShown(most, width) : 1
  const put = (point: Point) => ({ x: x + point.x * s, y: y + (width / 2 - up * point.y) * s })
  const at = square.map((corner, index) =>
    put({ x: corner.x + times * (off[index]?.x ?? 0), y: corner.y + times * (off[index]?.y ?? 0) }),
  )
  const outline = `M${at.map((one) => `${one.x} ${one.y}`).join('L')}Z`
  const frame = `M${square
    .map(put)
    .map((one) => `${one.x} ${one.y}`)
    .join('L')}Z`
  const middle = put({ x: length / 2, y: 0 })
  const doubted = new Set(survey.disagreement?.suspects.map((one) => one.of))
  const { angles } = squarenessOf(survey)
  return (
    <g>
      <path className="wood" d={outline} />
      <path className="hidden-line" d={frame} />
      <path
        className="centre-line"
        d={`M${put({ x: 0, y: 0 }).x - 22} ${middle.y}H${put({ x: length, y: 0 }).x + 22}`}
      />
      {DISTANCES.map((of) => {
        const [from, to] = ENDS[of]
        const [a, b] = [at[from], at[to]]
        if (!a || !b) return null
        const { adjusted, standardError, readings } = survey.distances[of]
        const text = `${formatLength(adjusted, design.units)} ± ${fine(standardError, layout)}`
        return (
          <Span
            key={of}
            from={a}
            to={b}
            inside={middle}
            text={text}
            diagonal={of.startsWith('diagonal')}
            sort={doubted.has(of) ? 'doubted' : lit === of ? 'lit' : readings === 0 ? 'assumed' : ''}
          />
        )
      })}
      {CORNERS.map((name, index) => {
        const [corner, angle] = [at[index], angles[index]]
        if (!corner || !angle) return null
        const right = corner.x > middle.x
        const low = corner.y > middle.y
        return (
          <text
            key={name}
            className="view-side"
            x={corner.x + (right ? -10 : 10)}
            y={corner.y + (low ? -10 : 18)}
            textAnchor={right ? 'end' : 'start'}
          >
            {formatAngle(angle.angle, { decimals: 2 })}
          </text>
        )
      })}
      <text className="survey-times" x={middle.x} y={y - 44} textAnchor="middle">
        {times > 1 ? `Crookedness drawn ${times} times its size` : 'Drawn as it is, nothing enlarged'}
      </text>
      <text
        className="view-side"
        x={middle.x}
        y={put({ x: 0, y: up * (width / 2) }).y + 16}
        textAnchor="middle"
      >
        {up === 1 ? 'treble' : 'bass'}
      </text>
      <text
        className="view-side"
        x={middle.x}
        y={put({ x: 0, y: -up * (width / 2) }).y - 8}
        textAnchor="middle"
      >
        {up === 1 ? 'bass' : 'treble'}
      </text>
    </g>
  )
}

/** Standard errors are finer than the rule. */
const fine = (mm: number, { design: { units } }: Layout) =>
  formatLength(mm, { ...units, fraction: 0 }, { decimals: units.display === 'mm' ? 1 : 3 })

/** A measured line with its figure along it: outside the box for a side, a third of the way for a diagonal. */
function Span({
  from,
  to,
  inside,
  text,
  diagonal,
  sort,
}: {
  from: Point
  to: Point
  inside: Point
  text: string
  diagonal: boolean
  sort: string
}) {
  const share = diagonal ? 0.3 : 0.5
  const place = { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }
  const turn = Math.atan2(to.y - from.y, to.x - from.x)
  // Read from below or from the right, as on a drawing.
  const upright =
    turn > Math.PI / 2 - 0.3 ? turn - Math.PI : turn < -Math.PI / 2 - 0.3 ? turn + Math.PI : turn
  const normal = { x: Math.sin(upright), y: -Math.cos(upright) }
  const outward = (place.x - inside.x) * normal.x + (place.y - inside.y) * normal.y > 0
  const far = diagonal ? -4 : outward ? -9 : 19
  return (
    <g className={`survey-span ${sort}`}>
      <path
        d={`M${from.x} ${from.y}L${to.x} ${to.y}`}
        className={diagonal ? 'survey-diagonal' : 'survey-side'}
      />
      <text
        textAnchor="middle"
        transform={`translate(${place.x} ${place.y}) rotate(${(upright * 180) / Math.PI}) translate(0 ${far})`}
      >
        {text}
      </text>
    </g>
  )
}
