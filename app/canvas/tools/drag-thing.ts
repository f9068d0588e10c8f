/**
 * Moves things over their face, and a single one over to another where that is drawn too and its kind may go there. Every frame is
 * computed from the design as it was when the drag began.
 */
import {
  type Change,
  change,
  clean,
  type Face,
  indexOfThing,
  type Layout,
  moveFields,
  onRule,
  type Placed,
  type Point,
  placedCalled,
  relatedTo,
  solve,
} from '../../../geometry/index.ts'
import { announce } from '../../parts/Announcer.tsx'
import { nameOf } from '../../parts/say.ts'
import { beginGesture, selectedThings, useBench, withGroups } from '../../state/index.ts'
import { distancesOf, tellDistances } from '../distances.ts'
import { dragging } from '../dragging.ts'
import { type Frame, fromScreen } from '../frame.ts'
import { paintGhost, paintHeld } from '../guides.ts'
import { type Grip, gripOn, type Line } from '../hold/hold.ts'
import { paintMargin } from '../margin.ts'
import { paintDistances } from '../paint-distances.ts'
import type { PointerAt, Tool } from './tool.ts'

/** A line takes hold within so many pixels, whatever the zoom; fingers are less sure. */
export const REACH = { mouse: 7, touch: 12 }

/** Milliseconds between two sentences while something is dragged. */
const TELL_EVERY = 900

/**
 * The tool for a drag that begins on `placed`. With it goes all that is selected and grouped with it, as far as it is
 * on the same face and not locked. A thing that goes alone may go over to another face.
 */
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
  const chosen = selectedThings()
  const wanted = new Set(withGroups(layout.design, chosen.includes(id) ? chosen : [id]))
  const many = layout.placed.filter(
    (one) => wanted.has(one.thing.id) && one.face === face && !one.thing.locked,
  )
  const began = beginGesture(many.length > 1 ? `Move ${many.length} things` : `Move ${nameOf(id, layout)}`)
  const start = solve(began.start)
  const own = placedCalled(start, id) ?? placed
  const movers = start.placed.filter((one) => many.some((other) => other.thing.id === one.thing.id))
  const related = new Set(movers.flatMap((one) => [...relatedTo(began.start, one.thing.id)]))
  for (const one of movers) related.add(one.thing.id)
  const moving: ReadonlySet<string> = new Set(related)
  related.delete(id)
  const grips = new Map<Face, Grip>()
  const gripFor = (on: Face): Grip => {
    const made = grips.get(on) ?? gripOn(start, { ...own, face: on }, related)
    grips.set(on, made)
    return made
  }
  const grasp = fromScreen(frame, from)
  const edge = start.panels[face].bounds
  let lines: readonly Line[] = []
  let pointer = from
  let telling = 0
  dragging.moves(moving, start)

  /** Says where it is now, at most so often that it can be listened to. */
  function tellSoon(): void {
    telling ||= window.setTimeout(() => {
      telling = 0
      const current = solve(useBench.getState().design)
      const now = placedCalled(current, id)
      if (now)
        announce(
          `${nameOf(id, current)}: ${[...lines.map(({ name }) => name), tellDistances(current, now)].join(', ')}`,
        )
    }, TELL_EVERY)
  }

  return {
    cursor: 'grabbing',
    moving,
    move(at) {
      pointer = at
      const other = movers.length > 1 ? null : faceUnder(start, faces, face, own, at)
      const over = other?.frame ?? frame
      const here = fromScreen(over, at)
      const wanted = other
        ? here
        : inside(edge, { x: own.at.x + here.x - grasp.x, y: own.at.y + here.y - grasp.y })
      const reach = at.free ? 0 : (at.touch ? REACH.touch : REACH.mouse) / over.scale
      const held = gripFor(other?.face ?? face).hold(wanted, reach)
      lines = held.lines
      const to = at.free ? held.at : settled(held.at, held.lines, began.start.units)
      const by = { x: to.x - own.at.x, y: to.y - own.at.y }
      began.preview(
        other ? overTo(start, id, other.face, to) : change(began.start, ...moveFields(start, movers, by)),
      )
      tellSoon()
    },
    finish: () => began.finish(),
    cancel() {
      window.clearTimeout(telling)
      began.cancel()
    },
    paint(pen, looks, current) {
      for (const before of movers) {
        const after = placedCalled(current, before.thing.id)
        if (after) paintGhost(pen, looks, frame, before, after)
      }
      const now = placedCalled(current, id)
      if (!now) return
      const shown = now.face === face ? frame : (faces.get(now.face) ?? frame)
      paintHeld(pen, looks, shown, current.panels[now.face].bounds, now.at, lines)
      const margin = paintMargin(pen, looks, current, moving, pointer)
      paintDistances(pen, looks, shown, current, distancesOf(current, now, moving), now.bounds, margin)
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
  const index = indexOfThing(design, id)
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
