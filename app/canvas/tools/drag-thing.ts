/**
 * Moves a thing over its face, and over to another where that is drawn too and its kind may go there. Every frame is
 * computed from the design as it was when the drag began.
 */
import {
  type Change,
  change,
  type Face,
  type Layout,
  type Placed,
  type Point,
  solve,
} from '../../../geometry/index.ts'
import { nameOf } from '../../parts/say.ts'
import { beginGesture } from '../../state/index.ts'
import { distancesOf, paintDistances } from '../distances.ts'
import { type Frame, fromScreen } from '../frame.ts'
import { paintHeld } from '../guides.ts'
import { clean, onRule, placeFields, relatedTo } from '../moving.ts'
import { hold, type Line } from '../snap.ts'
import type { PointerAt, Tool } from './tool.ts'

/** A line takes hold within so many pixels, whatever the zoom; fingers are less sure. */
const REACH = { mouse: 7, touch: 12 }

export function dragThing(
  layout: Layout,
  frame: Frame,
  face: Face,
  placed: Placed,
  from: PointerAt,
  /** Where the other faces are drawn, if they are. */
  faces: ReadonlyMap<Face, Frame> = NO_FACES,
): Tool {
  const { id } = placed.thing
  const began = beginGesture(`Move ${nameOf(id, layout)}`)
  const start = solve(began.start)
  const own = start.placed.find((one) => one.thing.id === id) ?? placed
  const related = relatedTo(began.start, id)
  const grip = fromScreen(frame, from)
  const edge = start.panels[face].bounds
  let lines: readonly Line[] = []
  return {
    cursor: 'grabbing',
    moving: new Set([id, ...related]),
    move(at) {
      const other = faceUnder(start, faces, face, own, at)
      const on = other ? { ...own, face: other.face } : own
      const over = other?.frame ?? frame
      const here = fromScreen(over, at)
      const wanted = other
        ? here
        : inside(edge, { x: own.at.x + here.x - grip.x, y: own.at.y + here.y - grip.y })
      const reach = at.free ? 0 : (at.touch ? REACH.touch : REACH.mouse) / over.scale
      const held = at.free ? { at: wanted, lines: [] } : hold(start, on, wanted, reach, related)
      lines = held.lines
      const to = at.free ? held.at : settled(held.at, held.lines, began.start.units)
      began.preview(
        other ? overTo(start, id, other.face, to) : change(began.start, ...placeFields(start, own, to)),
      )
    },
    finish: () => began.finish(),
    cancel: () => began.cancel(),
    paint(pen, looks, current) {
      const now = current.placed.find((one) => one.thing.id === id)
      if (!now) return
      const shown = now.face === face ? frame : (faces.get(now.face) ?? frame)
      paintHeld(pen, looks, shown, current.panels[now.face].bounds, now.at, lines)
      paintDistances(pen, looks, shown, current, distancesOf(current, now), now.bounds)
    },
  }
}

const NO_FACES: ReadonlyMap<Face, Frame> = new Map()

/** Another face under the pointer that this thing may stand on. */
function faceUnder(
  { panels }: Layout,
  faces: ReadonlyMap<Face, Frame>,
  own: Face,
  { kind }: Placed,
  at: PointerAt,
): { readonly face: Face; readonly frame: Frame } | null {
  for (const [face, frame] of faces) {
    if (face === own || !kind.faces.includes(face)) continue
    const { x, y } = fromScreen(frame, at)
    const { minX, maxX, minY, maxY } = panels[face].bounds
    if (x >= minX && x <= maxX && y >= minY && y <= maxY) return { face, frame }
  }
  return null
}

/** The thing on another face, by measures: a relation to lines of the old face would mean nothing there. */
function overTo({ design }: Layout, id: string, face: Face, at: Point): Change {
  const index = design.things.findIndex((one) => one.id === id)
  const plan = face === 'lid' || face === 'base'
  return change(
    design,
    [['things', index, 'face'], face],
    [['things', index, 'along'], clean(at.x)],
    [['things', index, 'across'], clean(plan ? at.y : -at.y)],
  )
}

/** The centre stays on its face: what is lost over the edge cannot be found again. */
const inside = (edge: { minX: number; maxX: number; minY: number; maxY: number }, at: Point): Point => ({
  x: Math.min(edge.maxX, Math.max(edge.minX, at.x)),
  y: Math.min(edge.maxY, Math.max(edge.minY, at.y)),
})

/** On an axis that nothing holds, a place that the user's rule can show. */
function settled(at: Point, lines: readonly Line[], units: Parameters<typeof onRule>[1]): Point {
  const isHeld = (axis: 'x' | 'y') => lines.some((line) => line.axis === axis)
  return { x: isHeld('x') ? at.x : onRule(at.x, units), y: isHeld('y') ? at.y : onRule(at.y, units) }
}
