/** Makes a thing larger or smaller by a handle at its edge. Its centre stays; with Shift the far edge does. */
import {
  change,
  clean,
  formatLength,
  indexOfThing,
  kindOf,
  type Layout,
  moveFields,
  onRule,
  type Placed,
  type Point,
  placedCalled,
  setWithCompanions,
  solve,
} from '../../../geometry/index.ts'
import { nameOf } from '../../parts/say.ts'
import { type SizeFields, sizeFieldsOf, within } from '../../parts/sizes.ts'
import { beginGesture } from '../../state/index.ts'
import { dragging } from '../dragging.ts'
import { type Frame, fromScreen } from '../frame.ts'
import { chip, paintGhost, paintHeld } from '../guides.ts'
import type { Handle } from '../handles.ts'
import { gripOn, type Line } from '../hold/hold.ts'
import { paintMargin } from '../margin.ts'
import { REACH } from './drag-thing.ts'
import type { PointerAt, Tool } from './tool.ts'

type Extent = 'along' | 'across'

export function resizeThing(
  layout: Layout,
  frame: Frame,
  placed: Placed,
  handle: Handle,
  from: PointerAt,
): Tool {
  const { id } = placed.thing
  const gesture = beginGesture(`Size of ${nameOf(id, layout)}`)
  const start = solve(gesture.start)
  const own = placedCalled(start, id) ?? placed
  const index = indexOfThing(gesture.start, id)
  const size = kindOf(own.thing.kind).size(own.thing)
  const fields: SizeFields = sizeFieldsOf(own.thing)
  const angle = (own.thing.turnDegrees * Math.PI) / 180
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  const toLocal = (p: Point): Point => ({ x: p.x * cos + p.y * sin, y: -p.x * sin + p.y * cos })
  const toFace = (p: Point): Point => ({ x: p.x * cos - p.y * sin, y: p.x * sin + p.y * cos })
  // Lines run along the face: only what stands square to it can come to lie on one.
  const square = Math.abs(own.thing.turnDegrees % 90) < 1e-9
  const moving = new Set([id])
  const grip = gripOn(start, edgeOf(own), moving)
  const grasp = fromScreen(frame, from)
  let lines: readonly Line[] = []
  let words = ''
  let pointer = from
  dragging.moves(moving, start)

  /** How far the edge is pulled out from the centre, on one of the thing's own axes. */
  function reachOf(extent: Extent, at: PointerAt): number {
    const sign = handle[extent]
    const half = size[extent] / 2
    const here = fromScreen(frame, at)
    const pulled = toLocal({ x: here.x - grasp.x, y: here.y - grasp.y })
    const out = half + sign * (extent === 'along' ? pulled.x : pulled.y)
    if (at.free) return out
    if (square) {
      const edge = toFace(extent === 'along' ? { x: sign * out, y: 0 } : { x: 0, y: sign * out })
      const axis = Math.abs(edge.x) > Math.abs(edge.y) ? 'x' : 'y'
      const reach = (at.touch ? REACH.touch : REACH.mouse) / frame.scale
      const held = grip.hold({ x: own.at.x + edge.x, y: own.at.y + edge.y }, reach)
      const line = held.lines.find((one) => one.axis === axis && one.gaps.length === 0)
      if (line) {
        lines = [...lines, line]
        return Math.abs(line.at - own.at[axis])
      }
    }
    return onRule(out * 2, gesture.start.units) / 2
  }

  return {
    cursor: handle.along !== 0 ? 'ew-resize' : 'ns-resize',
    moving,
    move(at) {
      pointer = at
      lines = []
      const set = new Map<string, number>()
      const shift = { x: 0, y: 0 }
      for (const extent of ['along', 'across'] as const) {
        const field = fields[extent]
        if (handle[extent] === 0 || !field) continue
        const out = reachOf(extent, at)
        const value = (own.thing as Readonly<Record<string, unknown>>)[field.name]
        const wanted = at.shift ? out + size[extent] / 2 : out * 2
        // The field may count less than the extent, as the hole inside its rim does.
        const to = clean(within(field, Number(value) + wanted - size[extent]))
        set.set(field.name, to)
        if (at.shift) shift[extent === 'along' ? 'x' : 'y'] = (handle[extent] * (to - Number(value))) / 2
      }
      const by = toFace(shift)
      const sizes = [...set].flatMap(([name, value]) => setWithCompanions(gesture.start, index, name, value))
      gesture.preview(change(gesture.start, ...sizes, ...moveFields(start, [own], by)))
      words = [...set.values()]
        .map((value) => formatLength(value, gesture.start.units, { unit: true }))
        .join(' × ')
    },
    finish: () => gesture.finish(),
    cancel: () => gesture.cancel(),
    paint(pen, looks, current) {
      const now = placedCalled(current, id)
      if (!now) return
      paintGhost(pen, looks, frame, { ...own, at: { x: Number.NaN, y: Number.NaN } }, now)
      paintHeld(pen, looks, frame, start.panels[own.face].bounds, now.at, lines)
      if (words)
        chip(pen, looks, words, { x: pointer.x, y: Math.max(16, pointer.y - (pointer.touch ? 104 : 24)) })
      paintMargin(pen, looks, current, moving, pointer)
    },
  }
}

/** The thing as a bare point: a line holds the edge that is pulled, not the body. */
function edgeOf(placed: Placed): Placed {
  const { x, y } = placed.at
  return { ...placed, bounds: { minX: x, maxX: x, minY: y, maxY: y } }
}
