/**
 * Everything that is drilled, bored, recessed and sawn, hole by hole and in the order of the work: read off the
 * parts, so that the list cannot say anything else than the templates.
 */
import { remembered } from '../loads/remembered.ts'
import type { Drill, Operation, Part } from '../parts/part.ts'
import { partsOf } from '../parts/parts.ts'
import { flipContour, flipOperation, mirrorPart } from '../parts/sheet-frame.ts'
import { type Bounds, bounds, type Point } from '../plane/index.ts'
import type { Layout } from '../solve/layout.ts'
import { type FromLine, measuredOn, turnedBy } from './from-edges.ts'
import { type DrillChoice, drillsOf, type StockDrill, stockDrill } from './stock-drills.ts'

/** In the order in which they are done on one part. */
export const WORKS = ['saw slots', 'recess', 'drill', 'countersink', 'bore', 'saw out'] as const
export type Work = (typeof WORKS)[number]

/**
 * Why in this order; common practice, no source. A flat bit has nothing to stand on once the middle is gone, small holes
 * come before large ones, and what weakens the piece comes last.
 */
export const ORDER_OF_WORK: Readonly<Record<Work, string>> = {
  'saw slots': 'Slots while the piece is still square and whole.',
  recess: 'Recesses before the holes in them: a flat bit needs wood under its point.',
  drill: 'Small holes with a drill, scrap wood clamped under.',
  countersink: 'Countersinks after their holes.',
  bore: 'Large round holes from the side that is seen, turned over before they break through.',
  'saw out': 'Openings and notches last: they weaken the piece.',
}

export interface ScheduleRow {
  /** Place in the order of work, from 1. */
  readonly order: number
  /** Id and title of the part, and the face it is worked from. */
  readonly part: string
  readonly partTitle: string
  readonly seen: string
  readonly work: Work
  /** What it is for: the name a thing was given, or `String hole`. */
  readonly of: string
  /** How many alike are in this row: only slots are counted together. */
  readonly count: number
  /** Of a round hole; `null` for any other shape. */
  readonly diameter: number | null
  /** Along and across the strings (on a wall: along it and up); `null` for a round hole. */
  readonly size: { readonly along: number; readonly across: number } | null
  /** Down from the face seen: the wood there, where it goes through. */
  readonly depth: number
  readonly through: boolean
  /** Does it run out over the edge of the part, as a notch does? */
  readonly open: boolean
  /** What the distances lead to: the centre, or the near side of what runs out over an edge. */
  readonly at: 'centre' | 'near side'
  readonly edge: FromLine
  readonly line: FromLine
  /** The stock drill to take, or `null` where none of the set is large enough, or none is wanted. */
  readonly choice: DrillChoice | null
}

/** Slots first on the board, then the neck while it is square, then the box; the faces seen most come last. */
const PART_ORDER = [
  ...[
    'board',
    'neck-top',
    'neck-side',
    'headstock',
    'neck-block',
    'neck-block-end',
    'neck-end-wall',
    'tail-end-wall',
    'bass-wall',
  ],
  ...['treble-wall', 'base', 'lid'],
]
/** Drawn for another view, or as a help to drill by: what is done there stands elsewhere in the list. */
const SHOWN_ELSEWHERE: ReadonlySet<string> = new Set(['neck-side', 'tail-strip', 'headstock-side'])

/**
 * The schedule of a layout. Remembered per layout.
 * Example: `scheduleOf(solve(design)).filter((row) => row.part === 'lid').length` is the number of holes in the lid.
 */
export const scheduleOf = remembered((layout: Layout): readonly ScheduleRow[] => {
  const { drills, units } = layout.design
  const stock = drillsOf(drills, units.display)
  const place = (id: string) => {
    const at = PART_ORDER.indexOf(id.replace(/-inside$/, ''))
    return at < 0 ? PART_ORDER.length : at
  }
  return partsOf(layout)
    .filter((part) => !SHOWN_ELSEWHERE.has(part.id) || part.operations.some(isPilot))
    .map((part, index) => ({ part, index }))
    .sort((a, b) => place(a.part.id) - place(b.part.id) || a.index - b.index)
    .flatMap(({ part }) => rowsOf(part, layout, stock))
    .map((row, index) => ({ ...row, order: index + 1 }))
})

/** A hole of its own in a view that else only shows what stands elsewhere. */
const isPilot = (one: Operation): boolean => one.kind === 'drill' && one.of.startsWith('Pilot')

type Unnumbered = Omit<ScheduleRow, 'order'>

function rowsOf(seen: Part, layout: Layout, stock: readonly StockDrill[]): Unnumbered[] {
  // Mirrored twice it lies as its outer side does.
  const part = seen.mirrored ? mirrorPart(seen) : seen
  const flip = turnedBy(part, layout.up)
  const operations = part.operations.map((one) => flipOperation(one, flip))
  const drilled = operations.filter((one) => one.kind === 'drill')
  const within = bounds(flipContour(part.outline, flip))
  const rows = operations.flatMap((one) => rowOf(one, part, layout, within, drilled, stock))
  const along = (row: Unnumbered) => (row.edge.towards === 'head' ? -1 : 1) * row.edge.distance
  return [...rows, ...slotRow(part, operations, layout)].sort(
    (a, b) =>
      WORKS.indexOf(a.work) - WORKS.indexOf(b.work) ||
      along(a) - along(b) ||
      sideways(a.line) - sideways(b.line),
  )
}

const sideways = ({ distance, towards }: FromLine) => (towards === 'bass' ? -distance : distance)

const common = (part: Part, work: Work, of: string) => ({
  part: part.id,
  partTitle: part.title,
  seen: part.seen,
  work,
  of,
  count: 1,
  open: false,
  at: 'centre' as const,
})

function rowOf(
  operation: Operation,
  part: Part,
  layout: Layout,
  within: Bounds,
  drilled: readonly Drill[],
  stock: readonly StockDrill[],
): Unnumbered[] {
  if (operation.kind === 'drill') {
    const { centre, diameter, depth, of } = operation
    return [
      {
        ...common(part, 'drill', of),
        ...measuredOn(part, centre, layout),
        diameter,
        size: null,
        depth: depth === 'through' ? woodAt(part, centre, layout) : depth,
        through: depth === 'through',
        choice: stockDrill(diameter, stock),
      },
    ]
  }
  if (operation.kind !== 'cut' && operation.kind !== 'recess') return []
  const { contour, of } = operation
  const through = operation.kind === 'cut'
  const around = bounds(contour)
  const shown = clipped(around, within)
  const centre = { x: (shown.minX + shown.maxX) / 2, y: (shown.minY + shown.maxY) / 2 }
  const round = contour.shape === 'circle'
  const depth = operation.kind === 'recess' ? operation.depth : woodAt(part, centre, layout)
  const work = through
    ? round
      ? 'bore'
      : 'saw out'
    : round && isSink(contour.radius * 2, depth, contour.centre, drilled)
      ? 'countersink'
      : 'recess'
  const flat = stock.filter((one) => one.tool !== 'twist drill')
  const open = shown !== around
  // On lid and neck the near side is the one towards the head, on a wall the one towards the lid.
  const near = /-wall(-inside)?$/.test(part.id)
    ? { x: centre.x, y: shown.maxY }
    : { x: shown.minX, y: centre.y }
  return [
    {
      ...common(part, work, of),
      ...measuredOn(part, round ? contour.centre : open ? near : centre, layout),
      open,
      at: open && !round ? 'near side' : 'centre',
      diameter: round ? contour.radius * 2 : null,
      size: round ? null : { along: shown.maxX - shown.minX, across: shown.maxY - shown.minY },
      depth,
      through,
      choice: round && work !== 'countersink' ? stockDrill(contour.radius * 2, through ? stock : flat) : null,
    },
  ]
}

/** The part of a cut that lies on the wood: itself, where all of it does. */
function clipped(of: Bounds, { minX, maxX, minY, maxY }: Bounds): Bounds {
  if (of.minX >= minX && of.maxX <= maxX && of.minY >= minY && of.maxY <= maxY) return of
  return {
    minX: Math.max(of.minX, minX),
    maxX: Math.min(of.maxX, maxX),
    minY: Math.max(of.minY, minY),
    maxY: Math.min(of.maxY, maxY),
  }
}

/** What a sink of 90 degrees, or of 82, is deep for each millimetre that it is wider than its hole (plane geometry). */
const SINKS = [Math.PI / 4, (41 * Math.PI) / 180].map((half) => 1 / (2 * Math.tan(half)))
const SAME = 0.01

/** A cone over a drilled hole, not a flat recess: its depth follows from the two diameters. */
const isSink = (diameter: number, depth: number, centre: Point, drilled: readonly Drill[]): boolean =>
  drilled.some(
    (hole) =>
      Math.hypot(hole.centre.x - centre.x, hole.centre.y - centre.y) < SAME &&
      SINKS.some((deep) => Math.abs((diameter - hole.diameter) * deep - depth) < SAME),
  )

/** How much wood there is to go through at a point of a part. */
function woodAt(part: Part, { x }: Point, { neck }: Layout): number {
  if (part.id !== 'neck-top') return part.thickness
  const stretch = neck.stretches.find((one) => x >= one.x0 && x <= one.x1)
  return stretch ? Math.max(0, stretch.top - stretch.bottom) : part.thickness
}

/** All fret slots of a part in one row: where each lies is the fret table's to say. */
function slotRow(part: Part, operations: readonly Operation[], layout: Layout): Unnumbered[] {
  const slots = operations.filter((one) => one.kind === 'slot')
  const [first, last] = [slots[0], slots.at(-1)]
  if (!first || !last) return []
  const long = Math.max(...slots.map(({ from, to }) => Math.hypot(to.x - from.x, to.y - from.y)))
  return [
    {
      ...common(part, 'saw slots', slots.length === 1 ? first.of : `${first.of} to ${last.of.toLowerCase()}`),
      count: slots.length,
      edge: measuredOn(part, first.from, layout).edge,
      line: { from: 'centreline', distance: 0, towards: '' },
      diameter: null,
      size: { along: first.width, across: long },
      depth: first.depth,
      through: false,
      choice: null,
    },
  ]
}
