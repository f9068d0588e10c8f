/** Where a new thing goes: the spot of its face that is farthest from everything that stands there already. */
import { type Face, kindOf, type Layout, type Point, stepOf } from '../../geometry/index.ts'

interface Rectangle {
  readonly minX: number
  readonly maxX: number
  readonly minY: number
  readonly maxY: number
}

/** Spots looked at along and across the face: an odd number, so that the middle is one of them. */
const SPOTS = 25

/**
 * A good first place for a thing of this size, in the panel's frame, on a line of the builder's rule. Near enough to
 * begin with: whether it holds is said by the findings. What is meant to go over the neck goes on the centreline,
 * what is meant to go over a wall on the middle of a wall.
 */
export function roomFor(
  layout: Layout,
  kindName: string,
  face: Face,
  size: { along: number; across: number },
): Point {
  const kind = kindOf(kindName)
  const panel = layout.panels[face].bounds
  const plan = face === 'lid' || face === 'base'
  const overNeck = plan && kind.overNeck === 'meant'
  const taken = takenOn(layout, face, overNeck)
  let best: Point = middle(panel)
  let bestRoom = Number.NEGATIVE_INFINITY
  for (const spot of spotsOn(layout, face, overNeck, plan && kind.overWall === 'meant')) {
    const body = around(spot, size)
    const edge = Math.min(
      body.minX - panel.minX,
      panel.maxX - body.maxX,
      body.minY - panel.minY,
      panel.maxY - body.maxY,
    )
    const room = Math.min(edge, ...taken.map((other) => between(body, other)))
    if (room > bestRoom + 1e-9) {
      best = spot
      bestRoom = room
    }
  }
  const step = stepOf(layout.design.units)
  const rounded = (value: number) => Math.round(value / step) * step + 0
  return { x: rounded(best.x), y: rounded(best.y) }
}

function spotsOn(layout: Layout, face: Face, overNeck: boolean, overWall: boolean): Point[] {
  const panel = layout.panels[face].bounds
  const xs = spread(panel.minX, panel.maxX)
  if (overNeck) return xs.map((x) => ({ x, y: 0 }))
  const { walls } = layout.design.box
  // Lid and base may be let in between the walls; the walls' middles are then beyond their edge.
  const { originX } = layout.panels[face]
  const sides = overWall
    ? [-layout.box.halfWidth + walls.bass / 2, layout.box.halfWidth - walls.treble / 2]
    : []
  const ends = overWall
    ? [layout.box.x0 + walls.neckEnd / 2 - originX, layout.box.x1 - walls.tailEnd / 2 - originX]
    : []
  const inside = (spot: Point) =>
    spot.x > panel.minX && spot.x < panel.maxX && spot.y > panel.minY && spot.y < panel.maxY
  const onWalls = [
    ...sides.flatMap((y) => xs.map((x) => ({ x, y }))),
    ...ends.flatMap((x) => spread(panel.minY, panel.maxY).map((y) => ({ x, y }))),
  ].filter(inside)
  if (onWalls.length > 0) return onWalls
  return xs.flatMap((x) => spread(panel.minY, panel.maxY).map((y) => ({ x, y })))
}

/** What already takes up room on a face: other things, the neck, the saddle, the board. */
function takenOn(layout: Layout, face: Face, overNeck: boolean): Rectangle[] {
  const things = layout.placed.filter((one) => one.face === face).map((one) => one.bounds)
  if (face !== 'lid' && face !== 'base') {
    const slot = layout.neck.slots.find((one) => one.face === face)
    return slot
      ? [...things, { minX: -slot.width / 2, maxX: slot.width / 2, minY: -slot.depth, maxY: 0 }]
      : things
  }
  if (face === 'base') return things
  const { originX } = layout.panels[face]
  const half = layout.design.neck.width / 2
  const moved = ({ minX, maxX, minY, maxY }: Rectangle) => ({
    minX: minX - originX,
    maxX: maxX - originX,
    minY,
    maxY,
  })
  const board = layout.board
  return [
    ...things,
    moved(layout.saddle.foot),
    ...(board && board.overLid > 0
      ? [moved({ minX: layout.box.x0, maxX: board.x1, minY: -half, maxY: half })]
      : []),
    ...(overNeck ? [] : [moved({ minX: layout.neck.x0, maxX: layout.neck.x1, minY: -half, maxY: half })]),
  ]
}

const spread = (from: number, to: number): number[] =>
  Array.from({ length: SPOTS }, (_, index) => from + ((to - from) * (index + 1)) / (SPOTS + 1))

const middle = ({ minX, maxX, minY, maxY }: Rectangle): Point => ({
  x: (minX + maxX) / 2,
  y: (minY + maxY) / 2,
})

const around = ({ x, y }: Point, { along, across }: { along: number; across: number }): Rectangle => ({
  minX: x - along / 2,
  maxX: x + along / 2,
  minY: y - across / 2,
  maxY: y + across / 2,
})

/** The gap between two rectangles; negative by as much as they would have to part. */
function between(a: Rectangle, b: Rectangle): number {
  const x = Math.max(a.minX - b.maxX, b.minX - a.maxX)
  const y = Math.max(a.minY - b.maxY, b.minY - a.maxY)
  return x > 0 && y > 0 ? Math.hypot(x, y) : Math.max(x, y)
}
