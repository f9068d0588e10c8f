/** What lies under a pointer: by the engine's own geometry, the smallest thing first. */
import {
  depthAt,
  type Face,
  isInside,
  type Layout,
  neckProfile,
  type Placed,
  type Point,
  polygon,
  sidesOfNeck,
} from '../../geometry/index.ts'

/** What can be taken hold of: a thing by its id, or a piece of the instrument by its name. */
export type Hit =
  | { readonly of: 'thing'; readonly placed: Placed }
  | {
      readonly of: 'structure'
      readonly name: 'saddle' | 'tailpiece' | 'box' | 'neck' | 'board' | 'headstock' | 'nut'
    }

/** The thing on a face at a place in its frame; `near` millimetres outside still count, for small things. */
export function thingAt(layout: Layout, face: Face, at: Point, near: number): Placed | null {
  let best: Placed | null = null
  let bestSize = Number.POSITIVE_INFINITY
  for (const placed of layout.placed) {
    if (placed.face !== face) continue
    const { minX, maxX, minY, maxY } = placed.bounds
    if (at.x < minX - near || at.x > maxX + near || at.y < minY - near || at.y > maxY + near) continue
    const deep = depthAt(at, placed.footprint)
    if (deep < -near) continue
    // Inside beats near by; among those, the smaller one is the one meant.
    const size = (maxX - minX) * (maxY - minY) + (deep < 0 ? 1e6 : 0)
    if (size < bestSize) {
      best = placed
      bestSize = size
    }
  }
  return best
}

/** The same on the whole plan: `at` is in the instrument frame. */
export function planHit(layout: Layout, at: Point, near: number): Hit | null {
  const { saddle, panels, tailHoles, design, neck, board, box, posts, nut } = layout
  const onLid = { x: at.x - panels.lid.originX, y: at.y }
  const exact = thingAt(layout, 'lid', onLid, 0)
  if (exact) return { of: 'thing', placed: exact }
  if (within(at, saddle.foot, Math.max(near, 0))) return { of: 'structure', name: 'saddle' }
  const placed = thingAt(layout, 'lid', onLid, near)
  if (placed) return { of: 'thing', placed }
  const reach = Math.max(design.tailpiece.diameter / 2, near)
  if (
    design.tailpiece.at !== 'the tail-end wall' &&
    tailHoles.some((hole) => Math.hypot(hole.x - at.x, hole.y - at.y) <= reach)
  )
    return { of: 'structure', name: 'tailpiece' }
  if (
    posts.some(
      (post) => Math.hypot(post.x - at.x, post.y - at.y) <= Math.max(near, design.headstock.postHole / 2),
    )
  )
    return { of: 'structure', name: 'headstock' }
  const [bass, treble] = sidesOfNeck(neck, at.x)
  if (at.y >= bass && at.y <= treble) {
    if (at.x >= nut.x0 - near / 2 && at.x <= nut.x1 + near / 2) return { of: 'structure', name: 'nut' }
    if (board && at.x > board.x0 && at.x < board.x1) return { of: 'structure', name: 'board' }
    if (at.x >= neck.x0 && at.x < nut.x0) return { of: 'structure', name: 'headstock' }
    if (at.x >= nut.x1 && at.x < box.x0) return { of: 'structure', name: 'neck' }
    if (at.x > box.x1 && at.x <= neck.x1) return { of: 'structure', name: 'neck' }
  }
  if (within(at, { minX: box.x0, maxX: box.x1, minY: -box.halfWidth, maxY: box.halfWidth }, 0))
    return { of: 'structure', name: 'box' }
  return null
}

/** On the section: the saddle and the box can be taken hold of there too. */
export function sectionHit(layout: Layout, at: Point, near: number): Hit | null {
  const { saddle, box, neck, nut } = layout
  if (
    Math.abs(at.x - saddle.x) <= Math.max(near, saddle.foot.maxX - saddle.x) &&
    at.y >= -near &&
    at.y <= saddle.top + near
  )
    return { of: 'structure', name: 'saddle' }
  if (at.x < nut.x0)
    return isInside(at, polygon(neckProfile(layout))) ? { of: 'structure', name: 'headstock' } : null
  if (at.x >= neck.x0 && at.x <= neck.x1 && at.y <= neck.top && at.y >= neck.bottom)
    return { of: 'structure', name: 'neck' }
  if (at.x >= box.x0 && at.x <= box.x1 && at.y <= 0 && at.y >= box.baseBottom)
    return { of: 'structure', name: 'box' }
  return null
}

const within = (at: Point, box: { minX: number; maxX: number; minY: number; maxY: number }, more: number) =>
  at.x >= box.minX - more && at.x <= box.maxX + more && at.y >= box.minY - more && at.y <= box.maxY + more
