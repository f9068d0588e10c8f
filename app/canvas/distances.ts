/** Live distances of what is being moved: to the edges, the centreline and the nearest neighbour on its face. */
import {
  type Contour,
  edgesAt,
  formatLength,
  type Layout,
  nearest,
  type Placed,
  type Point,
} from '../../geometry/index.ts'
import { nameOf } from '../parts/say.ts'
import { among } from './among.ts'
import { dragging } from './dragging.ts'

export interface Distance {
  readonly of: 'edge along' | 'edge across' | 'centreline' | 'neighbour' | 'neck'
  readonly from: Point
  readonly to: Point
  readonly mm: number
  /** The neighbour, by its id. */
  readonly who?: string
}

/** All distances worth showing, in the face's own frame. */
export function distancesOf(
  layout: Layout,
  placed: Placed,
  /** Things that move with it: they are no neighbours. */
  together: ReadonlySet<string> = NOBODY,
): Distance[] {
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
  return [along, across, ...(centre.mm > 0.005 ? [centre] : []), ...neighbourOf(layout, placed, together)]
}

const NOBODY: ReadonlySet<string> = new Set()

const line = (of: Distance['of'], from: Point, to: Point): Distance => ({
  of,
  from,
  to,
  mm: Math.hypot(to.x - from.x, to.y - from.y),
})

/** The nearest other thing on the face, if one is nearer than the width of the face. */
function neighbourOf(layout: Layout, placed: Placed, together: ReadonlySet<string>): Distance[] {
  const mine: readonly Contour[] = outlinesOf(placed)
  const start = dragging.start()
  const them = start && among(layout, start)
  // What is nearest of all comes within reach sooner or later; mostly at once.
  for (let reach = FIRST_REACH; ; reach *= 4) {
    const others = them ? them.near(placed.bounds, reach) : layout.placed
    const best = nearestTo(placed, mine, others, together)
    if (best && (best.mm <= reach || others.length >= layout.placed.length)) return best.mm > 0 ? [best] : []
    if (others.length >= layout.placed.length) return []
  }
}

/** Millimetres around a thing in which its nearest neighbour is looked for first. */
const FIRST_REACH = 4

function nearestTo(
  placed: Placed,
  mine: readonly Contour[],
  others: readonly Placed[],
  together: ReadonlySet<string>,
): Distance | null {
  let best: Distance | null = null
  for (const other of others) {
    if (other === placed || other.face !== placed.face) continue
    if (together.size > 1 && together.has(other.thing.id)) continue
    if (best && boxGap(placed, other) >= best.mm) continue
    const theirs = outlinesOf(other)
    for (const a of mine)
      for (const b of theirs) {
        const way = nearest(a, b)
        if (!best || way.distance < best.mm)
          best = { of: 'neighbour', from: way.from, to: way.to, mm: way.distance, who: other.thing.id }
      }
  }
  return best
}

/** What distances are taken from: the openings, or the outline of all where they are many. */
const outlinesOf = ({ openings, footprint }: Placed): readonly Contour[] =>
  openings.length > 0 && openings.length <= 12 ? openings : [footprint]

function boxGap({ bounds: a }: Placed, { bounds: b }: Placed): number {
  const x = Math.max(0, a.minX - b.maxX, b.minX - a.maxX)
  const y = Math.max(0, a.minY - b.maxY, b.minY - a.maxY)
  return Math.sqrt(x * x + y * y)
}

/** The same in words, for ears: `12.0 mm from the treble edge`. */
export function tellDistances(layout: Layout, placed: Placed): string {
  const { units } = layout.design
  const say = (mm: number) => formatLength(mm, units, { unit: true })
  return distancesOf(layout, placed)
    .map((one) => `${say(one.mm)} from ${whatOf(layout, placed, one)}`)
    .join(', ')
}

function whatOf(layout: Layout, { face, at }: Placed, { of, who }: Distance): string {
  const edge = edgesAt(layout, face, at)
  const plan = face === 'lid' || face === 'base'
  const nearStart = at.x - edge.minX <= edge.maxX - at.x
  const upper = edge.maxY - at.y <= at.y - edge.minY
  switch (of) {
    case 'centreline':
      return 'the centreline'
    case 'neighbour':
      return who ? nameOf(who, layout) : 'the nearest neighbour'
    case 'edge along':
      if (plan || face === 'bass-wall' || face === 'treble-wall')
        return nearStart ? 'the neck-end edge' : 'the tail-end edge'
      return nearStart ? 'the bass end' : 'the treble end'
    case 'edge across':
      if (plan) return upper ? 'the treble edge' : 'the bass edge'
      return upper ? 'the lid side' : 'the base side'
    case 'neck':
      return 'the neck'
  }
}
