/**
 * Room for the square corner of a mating part: a round cutter leaves inside corners round, so its path makes a trip
 * into each.
 *
 * With a cutter of radius r and a corner of angle a between its sides, r (1 / sin(a / 2) - 1) of wood stays in the
 * corner. A dog-bone takes the cutter's middle along the bisector until it is r from the corner; a T takes it on
 * along one side until its edge is level with the corner (plane geometry; the names are common practice).
 */
import { type Chain, type Contour, isStraight, type Point, type Vertex } from '../plane/index.ts'

/** Wood left in a corner that no fit feels, mm: nothing is done for less. */
const FELT = 0.05

/** Beyond the corner, mm, so that what is pushed in does not bind on the last hair. Common practice, no source. */
const EASE = 0.05

/** How much nearer than the corner's own place on the path another may lie and still be taken for it, mm. */
const SAME_CORNER = 0.01

interface Corner {
  readonly at: Point
  /** Unit directions along both sides, away from the corner. */
  readonly back: Point
  readonly on: Point
  readonly backLength: number
  readonly onLength: number
}

/** Direction of travel at the start and end of a segment. */
function directions(from: Vertex, to: Point): { readonly start: Point; readonly end: Point } {
  const heading = Math.atan2(to.y - from.y, to.x - from.x)
  const half = isStraight(from.bulge) ? 0 : 2 * Math.atan(from.bulge)
  const unit = (angle: number) => ({ x: Math.cos(angle), y: Math.sin(angle) })
  return { start: unit(heading - half), end: unit(heading + half) }
}

/** Corners of a counter-clockwise chain where the side that is cut away is the hollow one. */
function insideCorners({ vertices }: Chain, inside: boolean): Corner[] {
  return vertices.flatMap((at, index): Corner[] => {
    const count = vertices.length
    const before = vertices[(index + count - 1) % count] as Vertex
    const next = vertices[(index + 1) % count] as Vertex
    const arrives = directions(before, at).end
    const leaves = directions(at, next).start
    const turn = Math.atan2(
      arrives.x * leaves.y - arrives.y * leaves.x,
      arrives.x * leaves.x + arrives.y * leaves.y,
    )
    if (inside ? turn <= 0 : turn >= 0) return []
    return [
      {
        at,
        back: { x: -arrives.x, y: -arrives.y },
        on: leaves,
        backLength: Math.hypot(at.x - before.x, at.y - before.y),
        onLength: Math.hypot(next.x - at.x, next.y - at.y),
      },
    ]
  })
}

/** Where the cutter's middle goes to clear a corner, or nothing where the corner needs no clearing. */
function reliefPoint({ at, back, on, backLength, onLength }: Corner, kind: 'dog-bone' | 'T', radius: number) {
  const halfAngle = Math.acos(Math.max(-1, Math.min(1, back.x * on.x + back.y * on.y))) / 2
  const left = radius * (1 / Math.sin(halfAngle) - 1)
  if (!(left > FELT)) return undefined
  const bisector = { x: back.x + on.x, y: back.y + on.y }
  const size = Math.hypot(bisector.x, bisector.y)
  const reach = Math.max(0, radius - EASE)
  if (kind === 'dog-bone') {
    return { x: at.x + (reach * bisector.x) / size, y: at.y + (reach * bisector.y) / size, left }
  }
  // Along the longer side: its inward normal is what is left of the other side's direction.
  const [side, other] = backLength > onLength ? [back, on] : [on, back]
  const along = other.x * side.x + other.y * side.y
  const normal = { x: other.x - along * side.x, y: other.y - along * side.y }
  const length = Math.hypot(normal.x, normal.y)
  return {
    x: at.x + (radius * normal.x) / length - EASE * side.x,
    y: at.y + (radius * normal.y) / length - EASE * side.y,
    left,
  }
}

/**
 * A path with a trip into each inside corner of the contour that it cuts: out to where the corner is clear, and back.
 *
 * @param contour what is to be cut, closed and counter-clockwise
 * @param path the line of the cutter's middle, its offset by `radius` mm
 * @param inside whether the contour is an opening; else an outline, whose inside corners are those of its notches
 * @example withRelief(rectangle(0, 0, 20, 20), inset, 'dog-bone', 3, true) // four trips
 */
export function withRelief(
  contour: Contour,
  path: Contour,
  kind: 'dog-bone' | 'T',
  radius: number,
  inside: boolean,
): Contour {
  if (contour.shape === 'circle' || path.shape === 'circle') return path
  const trips = new Map<number, Point>()
  for (const corner of insideCorners(contour, inside)) {
    const point = reliefPoint(corner, kind, radius)
    if (point === undefined) continue
    const index = nearestVertex(path, corner.at)
    const vertex = path.vertices[index]
    if (vertex === undefined || trips.has(index)) continue
    // The path's own corner lies r plus what is left away; farther, the cutter does not come here at all.
    const away = Math.hypot(vertex.x - corner.at.x, vertex.y - corner.at.y)
    if (away > radius + point.left + Math.max(SAME_CORNER, radius / 2)) continue
    trips.set(index, { x: point.x, y: point.y })
  }
  if (trips.size === 0) return path
  const vertices = path.vertices.flatMap((vertex, index): Vertex[] => {
    const trip = trips.get(index)
    if (trip === undefined) return [vertex]
    return [{ x: vertex.x, y: vertex.y, bulge: 0 }, { ...trip, bulge: 0 }, vertex]
  })
  return { shape: 'chain', closed: true, vertices }
}

function nearestVertex({ vertices }: Chain, to: Point): number {
  let best = -1
  let least = Number.POSITIVE_INFINITY
  vertices.forEach(({ x, y }, index) => {
    const away = Math.hypot(x - to.x, y - to.y)
    if (away < least) {
      least = away
      best = index
    }
  })
  return best
}
