/** Handles of the thing that is selected: at its edges to make it larger, off its side to turn it. */
import type { Layout, Placed, Point } from '../../geometry/index.ts'
import { kindOf, placedCalled } from '../../geometry/index.ts'
import { sizeFieldsOf } from '../parts/sizes.ts'
import { type Frame, screenBounds, toScreen } from './frame.ts'
import type { Looks } from './looks.ts'
import { disc, type Pen, stroke } from './paint.ts'

export interface Handle {
  readonly does: 'size' | 'turn'
  /** Which way it pulls, in the thing's own frame before it is turned. */
  readonly along: -1 | 0 | 1
  readonly across: -1 | 0 | 1
  /** Pixels of the drawing. */
  readonly at: Point
}

/** Off the edge, so that the body of something small can still be taken hold of; pixels. */
const OFF = 10
const TURN_OFF = 34
/** Half a handle, and how near a pointer must come; pixels. A finger gets 44 across. */
const HALF = 5
export const NEAR_HANDLE = { mouse: 9, touch: 22 }

/** None for what is locked, or where its sizes are fixed. */
export function handlesOf(placed: Placed, frame: Frame): readonly Handle[] {
  const { thing } = placed
  if (thing.locked) return []
  const size = kindOf(thing.kind).size(thing)
  const { along, across } = sizeFieldsOf(thing)
  const half = { x: (size.along / 2) * frame.scale, y: (size.across / 2) * frame.scale }
  const handles: Handle[] = []
  const add = (does: Handle['does'], x: -1 | 0 | 1, y: -1 | 0 | 1, off: number) =>
    handles.push({ does, along: x, across: y, at: placeOf(placed, frame, x, y, half, off) })
  if (along) for (const x of [-1, 1] as const) add('size', x, 0, OFF)
  if (across) for (const y of [-1, 1] as const) add('size', 0, y, OFF)
  if (along && across && along.name !== across.name)
    for (const x of [-1, 1] as const) for (const y of [-1, 1] as const) add('size', x, y, OFF)
  if (!isRound(placed)) add('turn', 0, 1, TURN_OFF)
  return handles
}

/** Turning what is round all over changes nothing. */
const isRound = ({ footprint, openings }: Placed) =>
  footprint.shape === 'circle' && openings.every((one) => one.shape === 'circle')

function placeOf({ thing, at }: Placed, frame: Frame, x: number, y: number, half: Point, off: number): Point {
  const angle = (thing.turnDegrees * Math.PI) / 180
  const local = { x: x * (half.x + off), y: y * (half.y + off) }
  const centre = toScreen(frame, at)
  return {
    x: centre.x + frame.right * (local.x * Math.cos(angle) - local.y * Math.sin(angle)),
    y: centre.y - frame.up * (local.x * Math.sin(angle) + local.y * Math.cos(angle)),
  }
}

/** What a thing and its handles take up on the screen. */
export function roomOf(placed: Placed, frame: Frame) {
  const { minX, maxX, minY, maxY } = screenBounds(frame, placed.bounds)
  const at = handlesOf(placed, frame).map((one) => one.at)
  const beyond = HALF + 2
  return {
    minX: Math.min(minX, ...at.map(({ x }) => x - beyond)),
    maxX: Math.max(maxX, ...at.map(({ x }) => x + beyond)),
    minY: Math.min(minY, ...at.map(({ y }) => y - beyond)),
    maxY: Math.max(maxY, ...at.map(({ y }) => y + beyond)),
  }
}

/** The handle under a pointer, the nearest first. */
export function handleAt(handles: readonly Handle[], at: Point, near: number): Handle | null {
  let best: Handle | null = null
  let least = near
  for (const handle of handles) {
    const off = Math.hypot(handle.at.x - at.x, handle.at.y - at.y)
    if (off > least) continue
    best = handle
    least = off
  }
  return best
}

export function paintHandles(pen: Pen, looks: Looks, placed: Placed, frame: Frame): void {
  const centre = toScreen(frame, placed.at)
  for (const { does, at } of handlesOf(placed, frame)) {
    if (does === 'turn') {
      stroke(pen, centre, at, { stroke: looks.accent, width: 1 })
      disc(pen, { ox: 0, oy: 0, scale: 1, right: 1, up: -1 }, at, HALF + 1, {
        fill: looks.sheet,
        stroke: looks.accent,
        width: 2,
      })
      continue
    }
    pen.fillStyle = looks.sheet
    pen.fillRect(at.x - HALF, at.y - HALF, HALF * 2, HALF * 2)
    pen.strokeStyle = looks.accent
    pen.lineWidth = 2
    pen.strokeRect(at.x - HALF, at.y - HALF, HALF * 2, HALF * 2)
  }
}

/** The one thing whose handles show: selected alone, and drawn here. */
export const withHandles = (
  layout: Layout,
  selection: string | null,
  also: readonly string[],
): Placed | null => (selection === null || also.length > 0 ? null : (placedCalled(layout, selection) ?? null))
