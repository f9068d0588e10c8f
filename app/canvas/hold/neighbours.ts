/** Lines that other things on the face give: their centres and edges, their mirror places, equal gaps and margins. */
import { type Bounds, edgesAt, type Placed } from '../../../geometry/index.ts'
import { nameOf } from '../../parts/say.ts'
import { type Asked, type AxisName, type Gap, isNear, type Offer } from './line.ts'

export function otherCentres(asked: Asked, offer: Offer): void {
  const { layout, others, placed } = asked
  const plan = placed.face === 'lid' || placed.face === 'base'
  const inLine = ({ thing }: Placed) => `in line with ${nameOf(thing.id, layout)}`
  const mirrored = ({ thing }: Placed) => `mirror place of ${nameOf(thing.id, layout)}`
  for (const other of others) {
    const { x, y } = other.at
    if (isNear(asked, 'x', x)) offer('x', x, () => inLine(other))
    if (isNear(asked, 'y', y)) offer('y', y, () => inLine(other))
    if (plan && isNear(asked, 'y', -y)) offer('y', -y, () => mirrored(other))
    if (!plan && isNear(asked, 'x', -x)) offer('x', -x, () => mirrored(other))
  }
}

/** Edge to edge: flush with another, or against it. */
export function otherEdges(asked: Asked, offer: Offer): void {
  const { edges, near, others, layout } = asked
  for (const other of others) {
    const { minX, maxX, minY, maxY } = other.bounds
    // Most are far off: one look at each axis spares eight.
    if (minX - edges.maxX <= near.maxX && maxX - edges.minX >= near.minX) {
      edge('x', edges.minX, minX, other)
      edge('x', edges.maxX, maxX, other)
      edge('x', edges.minX, maxX, other)
      edge('x', edges.maxX, minX, other)
    }
    if (minY - edges.maxY <= near.maxY && maxY - edges.minY >= near.minY) {
      edge('y', edges.minY, minY, other)
      edge('y', edges.maxY, maxY, other)
      edge('y', edges.minY, maxY, other)
      edge('y', edges.maxY, minY, other)
    }
  }

  function edge(axis: AxisName, own: number, theirs: number, other: Placed): void {
    const at = theirs - own
    if (isNear(asked, axis, at))
      offer(axis, at, () => `edge with ${nameOf(other.thing.id, layout)}`, { shows: theirs })
  }
}

/** A stretch that stands in the way on one axis: another thing, or the edge of the face. */
interface Stop {
  readonly from: number
  readonly to: number
  readonly who: Placed | null
}

/** The same gap to both sides, or the same as between the next two on one side. */
export function equalGaps(asked: Asked, offer: Offer): void {
  for (const axis of ['x', 'y'] as const) gapsOn(asked, axis, offer)
}

function gapsOn(asked: Asked, axis: AxisName, offer: Offer): void {
  const { edges, at, layout, placed } = asked
  const [low, high] = axis === 'x' ? ['minX', 'maxX'] : (['minY', 'maxY'] as const)
  const own = { from: edges[low as keyof Bounds], to: edges[high as keyof Bounds] }
  const face = edgesAt(layout, placed.face, at)
  const row = rowOf(asked, axis)
  const here = at[axis]
  const before = nearest(row, here, 'before')
  const after = nearest(row, here, 'after')
  if (!before && !after) return
  const start: Stop = before ?? edgeStop(face[low as keyof Bounds])
  const end: Stop = after ?? edgeStop(face[high as keyof Bounds])
  const say = (one: Stop) => (one.who ? nameOf(one.who.thing.id, layout) : 'the edge')
  const spare = end.from - start.to - (own.to - own.from)
  if (spare > 0) {
    const centre = start.to + spare / 2 - own.from
    offer(axis, centre, () => `equal gaps to ${say(start)} and ${say(end)}`, {
      gaps: [way(asked, axis, start.to, centre + own.from), way(asked, axis, centre + own.to, end.from)],
    })
  }
  // A series goes on: the next gap is like the last one.
  if (before) {
    const second = nearest(row, (before.from + before.to) / 2, 'before', before)
    const gap = second && before.from - second.to
    if (second && gap !== null && gap > 0)
      offer(
        axis,
        before.to + gap - own.from,
        () => `the same gap as between ${say(second)} and ${say(before)}`,
        {
          gaps: [way(asked, axis, second.to, before.from), way(asked, axis, before.to, before.to + gap)],
        },
      )
  }
  if (after) {
    const second = nearest(row, (after.from + after.to) / 2, 'after', after)
    const gap = second && second.from - after.to
    if (second && gap !== null && gap > 0)
      offer(
        axis,
        after.from - gap - own.to,
        () => `the same gap as between ${say(after)} and ${say(second)}`,
        {
          gaps: [way(asked, axis, after.from - gap, after.from), way(asked, axis, after.to, second.from)],
        },
      )
  }
}

const edgeStop = (at: number): Stop => ({ from: at, to: at, who: null })

/** Others that stand in the same row: they meet what is moved when it is pushed along the axis. */
function rowOf({ others, at, edges }: Asked, axis: AxisName): Stop[] {
  const row: Stop[] = []
  for (const other of others) {
    const { minX, maxX, minY, maxY } = other.bounds
    if (axis === 'x') {
      if (maxY > at.y + edges.minY && minY < at.y + edges.maxY) row.push({ from: minX, to: maxX, who: other })
    } else if (maxX > at.x + edges.minX && minX < at.x + edges.maxX)
      row.push({ from: minY, to: maxY, who: other })
  }
  return row
}

function nearest(row: readonly Stop[], from: number, side: 'before' | 'after', but?: Stop): Stop | null {
  let best: Stop | null = null
  for (const one of row) {
    if (one === but) continue
    const middle = (one.from + one.to) / 2
    if (side === 'before' ? middle >= from : middle <= from) continue
    if (!best || (side === 'before' ? one.to > best.to : one.from < best.from)) best = one
  }
  return best
}

const way = ({ at }: Asked, axis: AxisName, from: number, to: number): Gap =>
  axis === 'x'
    ? { from: { x: from, y: at.y }, to: { x: to, y: at.y } }
    : { from: { x: at.x, y: from }, to: { x: at.x, y: to } }

/** The edge is as far from the nearer end of the face as from its nearer side. */
export function equalMargins(asked: Asked, offer: Offer): void {
  const { layout, placed, at, edges } = asked
  const face = edgesAt(layout, placed.face, at)
  const nearEnd = at.x - face.minX <= face.maxX - at.x
  const nearBass = at.y - face.minY <= face.maxY - at.y
  const along = nearEnd ? at.x + edges.minX - face.minX : face.maxX - at.x - edges.maxX
  const across = nearBass ? at.y + edges.minY - face.minY : face.maxY - at.y - edges.maxY
  const name = () => 'equal margins to both edges'
  offer('x', nearEnd ? face.minX + across - edges.minX : face.maxX - across - edges.maxX, name)
  offer('y', nearBass ? face.minY + along - edges.minY : face.maxY - along - edges.maxY, name)
}
