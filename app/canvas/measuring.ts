/**
 * The tool that measures: from one edge, centre or line to another. What is measured stays as a note on the drawing,
 * and follows when the box or a thing changes.
 */
import {
  change,
  depthAt,
  type Face,
  formatLength,
  type Layout,
  MEASURED_LINES,
  type Measure,
  type Measured,
  type MeasureEnd,
  nearestPoint,
  type Point,
  shapeOf,
  takeMeasure,
} from '../../geometry/index.ts'
import { announce } from '../parts/Announcer.tsx'
import { sayEnd } from '../parts/say-measures.ts'
import { commit, useBench } from '../state/index.ts'
import { type Frame, fromScreen, toScreen } from './frame.ts'
import { chip } from './guides.ts'
import { thingAt } from './hit.ts'
import type { Looks } from './looks.ts'
import { useMode } from './mode.ts'
import { dimension, disc, type Pen } from './paint.ts'
import type { Scene } from './scene.ts'
import type { PointerAt, Tool } from './tools/tool.ts'

/** How near a pointer must come to a centre or a line, pixels. */
const NEAR = { mouse: 8, touch: 18 }

/** Lines no farther from each other than this are one to the hand, pixels. */
const AS_NEAR = 1.5

interface Found {
  readonly face: Face
  readonly end: MeasureEnd
}

/** What can be measured from under the pointer, on whichever face is there. */
export function foundAt(scene: Scene, here: PointerAt): (Found & { readonly frame: Frame }) | null {
  const { subject } = scene
  const layout = scene.layout()
  for (const face of subject.faces) {
    const frame = subject.frameOf(face)
    if (!frame) continue
    const { bounds } = layout.panels[face]
    const at = fromScreen(frame, here)
    const near = 12 / frame.scale
    if (at.x < bounds.minX - near || at.x > bounds.maxX + near) continue
    if (at.y < bounds.minY - near || at.y > bounds.maxY + near) continue
    const end = endAt(layout, face, frame, here)
    if (end) return { face, end, frame }
  }
  return null
}

/** The first end, while the second is still to be pressed. */
let begun: Found | null = null

useMode.subscribe(({ mode }) => {
  if (mode !== 'measure') begun = null
})

/** What could be measured from at a place: a centre, then an edge, then a line. */
export function endAt(layout: Layout, face: Face, frame: Frame, here: PointerAt): MeasureEnd | null {
  const near = (here.touch ? NEAR.touch : NEAR.mouse) / frame.scale
  const at = fromScreen(frame, here)
  const placed = thingAt(layout, face, at, near)
  if (placed && Math.hypot(placed.at.x - at.x, placed.at.y - at.y) <= near)
    return { of: placed.thing.id, at: 'centre' }
  if (placed && Math.abs(depthAt(at, placed.footprint)) <= near) return { of: placed.thing.id, at: 'edge' }
  const names = [
    ...MEASURED_LINES,
    ...layout.strings.map((one) => `string ${one.number}`),
    ...layout.frets.filter((one) => one.number > 0).map((one) => `fret ${one.number}`),
  ]
  let best: string | null = null
  let least = near
  for (const of of names) {
    const shape = shapeOf(layout, face, { of, at: 'edge' })
    if (!shape || !('shape' in shape)) continue
    const spot = nearestPoint(shape, at)
    const off = Math.hypot(spot.x - at.x, spot.y - at.y)
    // Where a string runs on the centreline it is the line that is meant, and it comes first.
    if (off > (best === null ? least : least - AS_NEAR / frame.scale)) continue
    least = off
    best = of
  }
  if (best !== null) return { of: best, at: 'edge' }
  return placed ? { of: placed.thing.id, at: 'edge' } : null
}

/** Begins or ends a measure at a press; `null` where there is nothing to measure from. */
export function measureFrom(scene: Scene, from: PointerAt): Tool | null {
  const { subject } = scene
  const look = (here: PointerAt) => foundAt(scene, here)
  const start = look(from)
  if (!start) {
    announce('There is no edge, centre or line here to measure from.')
    return null
  }
  const first: Found = begun && begun.face === start.face ? begun : start
  let to = from
  return {
    cursor: 'crosshair',
    move(at) {
      to = at
    },
    finish() {
      const end = look(to)
      const second = end && end.face === first.face && !same(end.end, first.end) ? end : null
      if (second) {
        begun = null
        keepMeasure(plain(first.face, first.end, second.end))
      } else begun = first
    },
    cancel() {
      begun = null
    },
    paint(pen, looks, layout) {
      const frame = subject.frameOf(first.face)
      if (!frame) return
      const end = look(to)
      const taken =
        end && end.face === first.face && !same(end.end, first.end)
          ? takeMeasure(layout, plain(first.face, first.end, end.end))
          : null
      if (taken) {
        paintTaken(pen, looks, layout, frame, taken, to)
        return
      }
      disc(pen, { ox: 0, oy: 0, scale: 1, right: 1, up: -1 }, spotOf(layout, first, frame, from), 5, {
        stroke: looks.accent,
        width: 2,
      })
      chip(pen, looks, `from ${sayEnd(first.end, layout)}`, { x: to.x, y: Math.max(16, to.y - 26) })
    },
  }
}

/** A measure in hand, with its figure where a finger does not hide it. */
export function paintTaken(
  pen: Pen,
  looks: Looks,
  layout: Layout,
  frame: Frame,
  taken: Pick<Measured, 'from' | 'to' | 'mm'>,
  hand: PointerAt,
): void {
  dimension(pen, toScreen(frame, taken.from), toScreen(frame, taken.to), looks.accent)
  const text = formatLength(taken.mm, layout.design.units, { unit: true })
  chip(pen, looks, text, { x: hand.x, y: Math.max(16, hand.y - (hand.touch ? 74 : 26)) })
}

/** The shortest way between two ends, for the drawing alone. */
const plain = (face: Face, from: MeasureEnd, to: MeasureEnd): Measure => ({
  face,
  from,
  to,
  way: 'straight',
  name: '',
  onSheets: false,
})

export const same = (a: MeasureEnd, b: MeasureEnd) => a.of === b.of && a.at === b.at

function spotOf(layout: Layout, { face, end }: Found, frame: Frame, at: PointerAt): Point {
  const shape = shapeOf(layout, face, end)
  if (!shape) return at
  return toScreen(frame, 'shape' in shape ? nearestPoint(shape, fromScreen(frame, at)) : shape)
}

/** Enters a measure in the design, new or in the place of one that is there, as one entry of history. */
export function keepMeasure(measure: Measure, index?: number): boolean {
  const { design } = useBench.getState()
  const outcome = commit(
    index === undefined ? 'Measure' : 'Change a measure',
    change(design, [['measures', index ?? design.measures.length], measure]),
  )
  if (!outcome.ok) announce(outcome.sentence)
  return outcome.ok
}
