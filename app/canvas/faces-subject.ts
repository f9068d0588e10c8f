/** The four walls and the base side by side, each as seen from outside, walls with their lid side up. */
import type { Face, Layout, Point } from '../../geometry/index.ts'
import { FACE_TITLES } from '../parts/say.ts'
import type { Size } from './camera.ts'
import { type Frame, facing, fromScreen, movedFrame, toScreen } from './frame.ts'
import { thingAt } from './hit.ts'
import { CENTRE, type Looks, THICK, THIN } from './looks.ts'
import { type Pen, shape, stroke, wide, write } from './paint.ts'
import type { Subject } from './subject.ts'
import { dragThing } from './tools/drag-thing.ts'

/** Walls in the order one meets them turning the box in the hand. */
export const STRIP_FACES: readonly Face[] = [
  'neck-end-wall',
  'treble-wall',
  'tail-end-wall',
  'bass-wall',
  'base',
]

const BETWEEN = 26
const BESIDE = 16
const ABOVE = 4
const BELOW = 24

/** Where each face lies in the strip. */
function arranged(layout: Layout, size: Size): Map<Face, Frame> {
  const bounds = STRIP_FACES.map((face) => layout.panels[face].bounds)
  const tall = Math.max(10, size.height - ABOVE - BELOW)
  const wide = Math.max(10, size.width - 2 * BESIDE - BETWEEN * (bounds.length - 1))
  const base = layout.panels.base.bounds
  const walls = bounds.slice(0, -1)
  const long = walls.reduce((sum, one) => sum + one.maxX - one.minX, 0)
  const high = walls.reduce((most, one) => Math.max(most, one.maxY - one.minY), 0)
  // The base is so much larger than the walls that it has a scale of its own.
  const baseScale = Math.min(tall / (base.maxY - base.minY), wide / 4 / (base.maxX - base.minX))
  const wallScale = Math.min((wide - baseScale * (base.maxX - base.minX)) / long, tall / high)
  const scaleOf = (face: Face) => (face === 'base' ? baseScale : wallScale)
  const used = long * wallScale + (base.maxX - base.minX) * baseScale + BETWEEN * (bounds.length - 1)
  let left = (size.width - used) / 2
  const frames = new Map<Face, Frame>()
  STRIP_FACES.forEach((face, index) => {
    const box = bounds[index]
    if (!box) return
    const turned = facing(face, layout.up)
    const middle = (box.minX + box.maxX) / 2
    const scale = scaleOf(face)
    const width = (box.maxX - box.minX) * scale
    const centre: Frame = {
      ox: left + width / 2,
      oy: ABOVE + ((box.maxY - box.minY) * scale) / 2,
      scale,
      ...turned,
    }
    frames.set(face, movedFrame(centre, -middle, -(box.minY + box.maxY) / 2))
    left += width + BETWEEN
  })
  return frames
}

export function facesSubject(): Subject {
  let frames = new Map<Face, Frame>()
  const at = (layout: Layout, place: Point, near: number) => {
    for (const face of STRIP_FACES) {
      const frame = frames.get(face)
      if (!frame) continue
      const here = fromScreen(frame, place)
      const placed = thingAt(layout, face, here, near / frame.scale)
      if (placed) return placed
    }
    return null
  }
  return {
    faces: STRIP_FACES,
    arrange(layout, size) {
      frames = arranged(layout, size)
    },
    frameOf: (view) => (view === 'plan' || view === 'section' ? null : (frames.get(view) ?? null)),
    groundOf: ({ design, box, neck }) => [
      design.box,
      design.neck,
      design.tailpiece,
      design.hand,
      box.x0,
      neck.slots.map((slot) => `${slot.width} ${slot.depth}`).join(),
    ],
    paintGround(pen, looks, layout) {
      for (const face of STRIP_FACES) {
        const frame = frames.get(face)
        if (frame) paintFace(pen, looks, layout, face, frame)
      }
    },
    paintOver: () => {},
    hit(layout, place, near) {
      const placed = at(layout, place, near)
      return placed && { of: 'thing', placed }
    },
    drag(layout, hit, from) {
      if (hit.of !== 'thing') return null
      const frame = frames.get(hit.placed.face)
      return frame ? dragThing(layout, frame, hit.placed.face, hit.placed, from) : null
    },
  }
}

function paintFace(pen: Pen, looks: Looks, layout: Layout, face: Face, frame: Frame): void {
  const panel = layout.panels[face]
  shape(pen, frame, panel.outline, {
    fill: face === 'base' ? looks.lid : looks.wall,
    stroke: looks.ink,
    width: THICK,
  })
  paintSlot(pen, looks, layout, face, frame)
  const { minX, maxX, minY, maxY } = panel.bounds
  const middle = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 }
  const ends =
    face === 'base'
      ? [
          { x: minX, y: 0 },
          { x: maxX, y: 0 },
        ]
      : [
          { x: 0, y: minY },
          { x: 0, y: maxY },
        ]
  const [a, b] = ends.map((end) => toScreen(frame, end))
  if (a && b) stroke(pen, a, b, { stroke: looks.soft, width: THIN, dash: CENTRE })
  const low = frame.oy + Math.max(-frame.up * minY, -frame.up * maxY) * frame.scale
  // Where a face is narrower than its name, the short name will do.
  const full = FACE_TITLES[face].toLowerCase()
  const room = (maxX - minX) * frame.scale + BETWEEN - 8
  const words = wide(pen, looks, full, 11) <= room ? full : full.replace(/[- ]wall$/, '')
  write(
    pen,
    looks,
    words,
    { x: toScreen(frame, middle).x, y: low + 16 },
    { colour: looks.soft, size: 11, align: 'center' },
  )
}

/** The neck's slot and string holes through the wall. */
function paintSlot(pen: Pen, looks: Looks, layout: Layout, face: Face, frame: Frame): void {
  const slot = layout.neck.slots.find((one) => one.face === face)
  if (slot && slot.depth > 0) {
    const a = toScreen(frame, { x: -slot.width / 2, y: 0 })
    const b = toScreen(frame, {
      x: slot.width / 2,
      y: Math.max(-slot.depth, layout.panels[face].bounds.minY),
    })
    pen.fillStyle = looks.hole
    pen.fillRect(Math.min(a.x, b.x), a.y - 1, Math.abs(b.x - a.x), b.y - a.y + 1)
    pen.beginPath()
    pen.moveTo(a.x, a.y)
    pen.lineTo(a.x, b.y)
    pen.lineTo(b.x, b.y)
    pen.lineTo(b.x, a.y)
    pen.strokeStyle = looks.accent
    pen.lineWidth = THICK
    pen.stroke()
  }
  if (face !== 'tail-end-wall' || layout.design.tailpiece.at !== 'the tail-end wall') return
  for (const hole of layout.tailHoles)
    shape(
      pen,
      frame,
      {
        shape: 'circle',
        centre: { x: hole.y, y: hole.z - layout.box.wallTop },
        radius: layout.design.tailpiece.diameter / 2,
      },
      { fill: looks.hole, stroke: looks.accent, width: THIN },
    )
}
