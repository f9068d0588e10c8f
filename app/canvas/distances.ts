/** Live distances of what is being moved: to the edges, the centreline and the nearest neighbour on its face. */
import {
  type Bounds,
  type Contour,
  edgesAt,
  formatLength,
  type Layout,
  nearest,
  type Placed,
  type Point,
} from '../../geometry/index.ts'
import { type Frame, screenBounds, toScreen } from './frame.ts'
import type { Looks } from './looks.ts'
import { dimension, type Pen, wide, write } from './paint.ts'

export interface Distance {
  readonly of: 'edge along' | 'edge across' | 'centreline' | 'neighbour' | 'neck'
  readonly from: Point
  readonly to: Point
  readonly mm: number
}

/** All distances worth showing, in the face's own frame. */
export function distancesOf(layout: Layout, placed: Placed): Distance[] {
  const { bounds, at, face } = placed
  const edge = edgesAt(layout, face, at)
  const nearSide = at.x - edge.minX <= edge.maxX - at.x
  const along: Distance = nearSide
    ? line('edge along', { x: edge.minX, y: at.y }, { x: bounds.minX, y: at.y })
    : line('edge along', { x: bounds.maxX, y: at.y }, { x: edge.maxX, y: at.y })
  const upper = edge.maxY - at.y <= at.y - edge.minY
  const across: Distance = upper
    ? line('edge across', { x: at.x, y: bounds.maxY }, { x: at.x, y: edge.maxY })
    : line('edge across', { x: at.x, y: edge.minY }, { x: at.x, y: bounds.minY })
  const plan = face === 'lid' || face === 'base'
  const centre = plan
    ? line('centreline', { x: at.x, y: 0 }, { x: at.x, y: at.y })
    : line('centreline', { x: 0, y: at.y }, { x: at.x, y: at.y })
  return [along, across, ...(centre.mm > 0.005 ? [centre] : []), ...neighbourOf(layout, placed)]
}

const line = (of: Distance['of'], from: Point, to: Point): Distance => ({
  of,
  from,
  to,
  mm: Math.hypot(to.x - from.x, to.y - from.y),
})

/** The nearest other thing on the face, if one is nearer than the width of the face. */
function neighbourOf(layout: Layout, placed: Placed): Distance[] {
  let best: Distance | null = null
  const mine: readonly Contour[] = outlinesOf(placed)
  for (const other of layout.placed) {
    if (other === placed || other.face !== placed.face) continue
    if (best && boxGap(placed, other) >= best.mm) continue
    const theirs = outlinesOf(other)
    for (const a of mine)
      for (const b of theirs) {
        const way = nearest(a, b)
        if (!best || way.distance < best.mm)
          best = { of: 'neighbour', from: way.from, to: way.to, mm: way.distance }
      }
  }
  return best && best.mm > 0 ? [best] : []
}

/** What distances are taken from: the openings, or the outline of all where they are many. */
const outlinesOf = ({ openings, footprint }: Placed): readonly Contour[] =>
  openings.length > 0 && openings.length <= 12 ? openings : [footprint]

const boxGap = (a: Placed, b: Placed) =>
  Math.hypot(
    Math.max(0, a.bounds.minX - b.bounds.maxX, b.bounds.minX - a.bounds.maxX),
    Math.max(0, a.bounds.minY - b.bounds.maxY, b.bounds.minY - a.bounds.maxY),
  )

/** Lines and figures; the figures keep off one another and, where there is room, off what they measure. */
export function paintDistances(
  pen: Pen,
  looks: Looks,
  frame: Frame,
  layout: Layout,
  distances: readonly Distance[],
  measured?: Bounds,
): void {
  const thing = measured && screenBounds(frame, measured)
  const taken: Bounds[] = []
  // Short ways first: they have the least choice of where their figure goes.
  const inOrder = [...distances].sort((a, b) => a.mm - b.mm)
  for (const { from, to, mm } of inOrder) {
    const a = toScreen(frame, from)
    const b = toScreen(frame, to)
    dimension(pen, a, b, looks.ink)
    const text = formatLength(mm, layout.design.units)
    const half = { x: wide(pen, looks, text, SIZE, true) / 2 + 4, y: SIZE * looks.words * 0.5 + 3 }
    const spots = spotsFor(a, b, half).filter(
      (one) => !taken.some((other) => overlap(other, around(one, half))),
    )
    const spot = spots.find((one) => !thing || !overlap(thing, around(one, half))) ?? spots[0]
    if (!spot) continue
    taken.push(around(spot, half))
    write(pen, looks, text, spot, {
      colour: looks.ink,
      bold: true,
      size: SIZE,
      align: 'center',
      base: 'middle',
      behind: looks.sheet,
    })
  }
}

const SIZE = 13

/** Where a figure may stand: beside the middle of its line on either side, then beyond its ends. */
function spotsFor(a: Point, b: Point, half: Point): Point[] {
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }
  const upright = Math.abs(b.x - a.x) < Math.abs(b.y - a.y)
  const beside = upright
    ? [
        { x: half.x + 4, y: 0 },
        { x: -half.x - 4, y: 0 },
      ]
    : [
        { x: 0, y: -half.y - 3 },
        { x: 0, y: half.y + 3 },
      ]
  const [low, high] = (upright ? a.y < b.y : a.x < b.x) ? [a, b] : [b, a]
  const beyond = upright
    ? [
        { x: low.x, y: Math.min(a.y, b.y) - half.y - 5 },
        { x: high.x, y: Math.max(a.y, b.y) + half.y + 5 },
      ]
    : [
        { x: Math.min(a.x, b.x) - half.x - 5, y: low.y },
        { x: Math.max(a.x, b.x) + half.x + 5, y: high.y },
      ]
  const near = beside.map((off) => ({ x: middle.x + off.x, y: middle.y + off.y }))
  return [
    ...near,
    ...beyond,
    ...beside.map((off) => ({ x: middle.x + off.x * 2.4, y: middle.y + off.y * 2.4 })),
  ]
}

const around = (at: Point, half: Point): Bounds => ({
  minX: at.x - half.x,
  maxX: at.x + half.x,
  minY: at.y - half.y,
  maxY: at.y + half.y,
})

const overlap = (a: Bounds, b: Bounds) =>
  a.minX < b.maxX && a.maxX > b.minX && a.minY < b.maxY && a.maxY > b.minY

/** The same in words, for ears. */
export function tellDistances(layout: Layout, placed: Placed): string {
  const { units } = layout.design
  const say = (mm: number) => formatLength(mm, units, { unit: true })
  const words: Record<Distance['of'], string> = {
    'edge along': 'to the nearer end edge',
    'edge across': 'to the nearer side edge',
    centreline: 'from the centreline',
    neighbour: 'to the nearest neighbour',
    neck: 'to the neck',
  }
  return distancesOf(layout, placed)
    .map((one) => `${say(one.mm)} ${words[one.of]}`)
    .join(', ')
}
