/**
 * The room between a hole and the outline it must stay in.
 */
import { depthAt, goesRound, mustBeClosed } from './contains.ts'
import type { Chain, Circle, Contour } from './contour.ts'
import { farthestOfPieces, type Nearest, nearest, nearestPoint } from './distance.ts'
import { piecesOf } from './pieces.ts'
import { farthest, type Reach } from './reach.ts'
import { SAME_POINT } from './tolerance.ts'

/**
 * How much room is left between `inner` and the `outer` outline it must stay in, mm, with the two places where
 * it is told: `from` on the inner contour, `to` on the outline.
 *
 * Positive: `inner` lies inside, and this is the least distance between the lines, exact. 0: it touches from
 * inside (within SAME_POINT). Negative: it crosses the outline or lies outside it, and its farthest place lies
 * this far beyond; exact for a round outline and mostly for a round hole, otherwise up to 0.001 mm too little
 * (see `farthest`). `inner` may be open. Throws for an open `outer`.
 *
 * @example clearance(circle({ x: 0, y: 0 }, 5), rectangle(-10, -12, 20, 20)).distance // 5, from (-5, 0) to (-10, 0)
 */
export function clearance(inner: Contour, outer: Contour): Nearest {
  mustBeClosed(outer, 'can hold another')
  if (outer.shape === 'circle') return inCircle(inner, outer)
  const well = inner.shape === 'circle' ? circleWellInside(inner, outer) : undefined
  if (well !== undefined) return well
  const near = nearest(inner, outer)
  const start = piecesOf(inner).list[0]
  const apart = near.distance > SAME_POINT
  if (apart && start !== undefined && goesRound(piecesOf(outer), start.x1, start.y1)) return near

  // Here the two cross or touch, or all of `inner` is beyond: its nearest place is, so far, its farthest.
  const known: Reach = {
    value: apart ? near.distance : 0,
    x: near.from.x,
    y: near.from.y,
    toX: near.to.x,
    toY: near.to.y,
  }
  const reach =
    (inner.shape === 'circle' && circleBeyond(inner, outer)) || farthest(inner, outer, 'beyond', known)
  if (reach.value <= SAME_POINT) return { distance: 0, from: near.from, to: near.to }
  return { distance: 0 - reach.value, from: { x: reach.x, y: reach.y }, to: { x: reach.toX, y: reach.toY } }
}

/**
 * True if all of `inner` lies inside `outer` or on its line: `clearance` is not negative. `inner` may be open.
 * Throws for an open `outer`.
 *
 * @example isWithin(circle({ x: 0, y: 0 }, 5), rectangle(-10, -10, 10, 10)) // true
 */
export function isWithin(inner: Contour, outer: Contour): boolean {
  return clearance(inner, outer).distance >= 0
}

/** A circle that keeps clear of the outline all round is as near to it as its centre less its radius. */
function circleWellInside(circle: Circle, outer: Chain): Nearest | undefined {
  if (isBox(outer)) return circleInBox(circle, outer)
  const { centre, radius } = circle
  const depth = depthAt(centre, outer)
  if (depth <= radius + SAME_POINT) return undefined
  const to = nearestPoint(outer, centre)
  const share = radius / depth
  const from = { x: centre.x + (to.x - centre.x) * share, y: centre.y + (to.y - centre.y) * share }
  return { distance: depth - radius, from, to }
}

/** Four straight sides along the axes, as most faces have. */
function isBox({ vertices, closed }: Chain): boolean {
  if (!closed || vertices.length !== 4) return false
  for (let index = 0; index < 4; index++) {
    const from = vertices[index]!
    const to = vertices[(index + 1) % 4]!
    const next = vertices[(index + 2) % 4]!
    const upright = from.x === to.x
    // Each side runs along one axis, and the next along the other.
    if (from.bulge !== 0 || upright === (from.y === to.y) || upright === (to.x === next.x)) return false
  }
  return true
}

/** The same for a rectangle, side by side: nothing has to be taken apart. */
function circleInBox({ centre: { x, y }, radius }: Circle, { vertices }: Chain): Nearest | undefined {
  let depth = Number.POSITIVE_INFINITY
  let toX = x
  let toY = y
  for (let index = 0; index < 4; index++) {
    const from = vertices[index]!
    const to = vertices[(index + 1) % 4]!
    const upright = from.x === to.x
    const beside = upright ? (from.y - y) * (to.y - y) : (from.x - x) * (to.x - x)
    if (beside > 0) return undefined
    const away = Math.abs(upright ? from.x - x : from.y - y)
    if (away >= depth) continue
    depth = away
    toX = upright ? from.x : x
    toY = upright ? y : from.y
  }
  if (depth <= radius + SAME_POINT) return undefined
  const share = radius / depth
  return {
    distance: depth - radius,
    from: { x: x + (toX - x) * share, y: y + (toY - y) * share },
    to: { x: toX, y: toY },
  }
}

/** In a round outline the place of `inner` farthest from the outline's centre tells all, inside and out. */
function inCircle(inner: Contour, outer: Circle): Nearest {
  const { x, y } = outer.centre
  const far = { x, y }
  const reach = farthestOfPieces(piecesOf(inner), x, y, far)
  const room = outer.radius - reach
  const share = outer.radius / reach
  return {
    distance: Math.abs(room) <= SAME_POINT ? 0 : room,
    from: far,
    to: { x: x + (far.x - x) * share, y: y + (far.y - y) * share },
  }
}

/**
 * A round hole's farthest place beyond an outline: no place of it lies farther beyond than its centre does by
 * more than its radius. The place straight away from the outline's line, seen from the centre, mostly gets
 * there, and then nothing is left to search; where a corner or hollow comes between, undefined.
 */
function circleBeyond(inner: Circle, outer: Chain): Reach | undefined {
  const { centre, radius } = inner
  const depth = depthAt(centre, outer)
  // Nearer to the line than a point is wide, the way from centre to line has no direction to be trusted.
  if (Math.abs(depth) <= SAME_POINT) return undefined
  const on = nearestPoint(outer, centre)
  const step = radius / depth
  const place = { x: centre.x + (on.x - centre.x) * step, y: centre.y + (on.y - centre.y) * step }
  const value = 0 - depthAt(place, outer)
  if (value < radius - depth - SAME_POINT) return undefined
  const to = nearestPoint(outer, place)
  return { value, x: place.x, y: place.y, toX: to.x, toY: to.y }
}
