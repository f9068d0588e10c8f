/** The four walls and the base side by side, each as seen from outside, walls with their lid side up. */
import { endsOf, type Face, type Layout, type Point } from '../../geometry/index.ts'
import { FACE_TITLES } from '../parts/say.ts'
import { paintPhoto } from '../photo/lying.ts'
import { movingNow } from './among.ts'
import type { Size } from './camera.ts'
import { dragging } from './dragging.ts'
import { findingsNow } from './findings-now.ts'
import { foldedOut } from './folded.ts'
import { type Frame, facing, fromScreen, movedFrame, screenBounds, toScreen } from './frame.ts'
import { thingAt } from './hit.ts'
import { paintArtwork } from './kept.ts'
import { CENTRE, HIDDEN, type Looks, THICK, THIN } from './looks.ts'
import { type Pen, path, shape, slab, stroke, wide, write } from './paint.ts'
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

const WALLS = STRIP_FACES.filter((face) => face !== 'base')

/** The walls in one row or in two, whichever shows them larger; the base stands at the end with a scale of its own. */
function arranged(layout: Layout, size: Size): Map<Face, Frame> {
  const one = inRows(layout, size, [WALLS])
  const two = inRows(layout, size, [WALLS.slice(0, 2), WALLS.slice(2)])
  return (two.get('bass-wall')?.scale ?? 0) > (one.get('bass-wall')?.scale ?? 0) ? two : one
}

function inRows(layout: Layout, size: Size, rows: readonly (readonly Face[])[]): Map<Face, Frame> {
  const long = (face: Face) => layout.panels[face].bounds.maxX - layout.panels[face].bounds.minX
  const high = (face: Face) => layout.panels[face].bounds.maxY - layout.panels[face].bounds.minY
  const columns = Math.max(...rows.map((row) => row.length))
  const wide = Math.max(10, size.width - 2 * BESIDE - BETWEEN * columns)
  const tall = Math.max(10, size.height - ABOVE - BELOW)
  const rowTall = Math.max(10, size.height / rows.length - ABOVE - BELOW)
  const baseScale = Math.min(tall / high('base'), wide / 4 / long('base'))
  const longest = Math.max(...rows.map((row) => row.reduce((sum, face) => sum + long(face), 0)))
  const scale = Math.min((wide - baseScale * long('base')) / longest, rowTall / high('bass-wall'))
  const used = longest * scale + BETWEEN * columns + baseScale * long('base')
  const start = (size.width - used) / 2
  const frames = new Map<Face, Frame>()
  const put = (face: Face, left: number, top: number, at: number) => {
    const { minX, maxX, minY, maxY } = layout.panels[face].bounds
    const centre: Frame = {
      ox: left + (long(face) * at) / 2,
      oy: top + (high(face) * at) / 2,
      scale: at,
      ...facing(face, layout.up),
    }
    frames.set(face, movedFrame(centre, -(minX + maxX) / 2, -(minY + maxY) / 2))
  }
  rows.forEach((row, index) => {
    let left = start
    for (const face of row) {
      put(face, left, ABOVE + index * (high('bass-wall') * scale + ABOVE + BELOW), scale)
      left += long(face) * scale + BETWEEN
    }
  })
  put('base', start + longest * scale + BETWEEN * columns, ABOVE, baseScale)
  return frames
}

/** All six, the lid first: what lies in the middle is meant where two are as near. */
const ALL_FACES: readonly Face[] = ['lid', ...STRIP_FACES]

/**
 * Walls and base in a strip, or all faces folded out around the lid. `arrangedAs` is told whenever the faces have come
 * to lie elsewhere.
 */
export function facesSubject(
  arrangedAs: (frames: ReadonlyMap<Face, Frame>) => void,
  how: 'strip' | 'folded out' = 'strip',
): Subject {
  const faces = how === 'strip' ? STRIP_FACES : ALL_FACES
  let frames = new Map<Face, Frame>()
  const at = (layout: Layout, place: Point, near: number) => {
    for (const face of faces) {
      const frame = frames.get(face)
      if (!frame) continue
      const here = fromScreen(frame, place)
      const placed = thingAt(layout, face, here, near / frame.scale)
      if (placed) return placed
    }
    return null
  }
  return {
    faces,
    arrange(layout, size) {
      const next = how === 'strip' ? arranged(layout, size) : foldedOut(layout, size)
      const changed = faces.some((face) => !sameFrame(frames.get(face), next.get(face)))
      frames = next
      if (changed) arrangedAs(frames)
    },
    frameOf: (view) => (view === 'plan' || view === 'section' ? null : (frames.get(view) ?? null)),
    groundOf: ({ design, box, neck, saddle }) => [
      design.box,
      design.artwork,
      design.neck,
      design.tailpiece,
      design.hand,
      box.x0,
      how === 'folded out' ? saddle.x : 0,
      design.photos,
      neck.slots.map((slot) => `${slot.width} ${slot.depth}`).join(),
    ],
    liveOf: (layout) => {
      const { news, standing } = findingsNow(layout)
      const shown = news.flatMap(({ where, key, grade, measured, overruled }) =>
        where.view !== 'plan' && where.view !== 'section' && faces.includes(where.view)
          ? [key, grade, measured, overruled]
          : [],
      )
      const drawn = dragging.moving().size === 0 ? layout.placed : movingNow(layout)
      return [
        layout.design.measures,
        standing,
        ...shown,
        ...drawn.flatMap(({ face, thing, at: { x, y } }) => (faces.includes(face) ? [thing, x, y] : [])),
      ]
    },
    paintGround(pen, looks, layout) {
      for (const face of faces) {
        const frame = frames.get(face)
        if (frame) paintFace(pen, looks, layout, face, frame)
      }
    },
    paintOver: () => {},
    stillOf: () => [],
    hit(layout, place, near) {
      const placed = at(layout, place, near)
      return placed && { of: 'thing', placed }
    },
    drag(layout, hit, from) {
      if (hit.of !== 'thing') return null
      const frame = frames.get(hit.placed.face)
      return frame ? dragThing(layout, frame, hit.placed.face, hit.placed, from, frames) : null
    },
  }
}

const sameFrame = (a: Frame | undefined, b: Frame | undefined): boolean =>
  a?.ox === b?.ox &&
  a?.oy === b?.oy &&
  a?.scale === b?.scale &&
  a?.right === b?.right &&
  a?.up === b?.up &&
  a?.turned === b?.turned

function liesAsSeen({ right, up, turned }: Frame, face: Face, layout: Layout): boolean {
  const seen = facing(face, layout.up)
  return !turned && right === seen.right && up === seen.up
}

function paintFace(pen: Pen, looks: Looks, layout: Layout, face: Face, frame: Frame): void {
  const panel = layout.panels[face]
  shape(pen, frame, panel.outline, { fill: face === 'base' || face === 'lid' ? looks.lid : looks.wall })
  // A photograph lies as it was taken: on a wall folded out the other way it would stand on its head.
  if (liesAsSeen(frame, face, layout)) paintPhoto(pen, frame, layout, face)
  shape(pen, frame, panel.outline, { stroke: looks.ink, width: THICK })
  paintArtwork(pen, looks, frame, layout, face)
  paintSlot(pen, looks, layout, face, frame)
  if (face === 'lid') paintUnderLid(pen, looks, layout, frame)
  const { minX, maxX, minY, maxY } = panel.bounds
  const [from, to] = endsOf(layout, face)
  const middle = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 }
  const ends =
    face === 'base' || face === 'lid'
      ? [
          { x: from, y: 0 },
          { x: to, y: 0 },
        ]
      : [
          { x: 0, y: minY },
          { x: 0, y: maxY },
        ]
  const [a, b] = ends.map((end) => toScreen(frame, end))
  if (a && b) stroke(pen, a, b, { stroke: looks.soft, width: THIN, dash: CENTRE })
  const { maxY: low } = screenBounds(frame, panel.bounds)
  // Where a face is narrower than its name, the short name will do.
  const full = FACE_TITLES[face].toLowerCase()
  const room = (frame.turned ? maxY - minY : maxX - minX) * frame.scale + BETWEEN - 8
  const words = wide(pen, looks, full, 11) <= room ? full : full.replace(/[- ]wall$/, '')
  write(
    pen,
    looks,
    words,
    { x: toScreen(frame, middle).x, y: low + 16 },
    { colour: looks.soft, size: 11, align: 'center' },
  )
}

/** The inside of the walls and the neck, hidden under the lid, and the saddle on it. */
function paintUnderLid(pen: Pen, looks: Looks, layout: Layout, frame: Frame): void {
  const { box, neck, saddle, panels, design } = layout
  const hidden = { stroke: looks.soft, width: THIN, dash: HIDDEN }
  const here = (x: number) => x - panels.lid.originX
  const half = design.neck.width / 2
  const outline = (x0: number, y0: number, x1: number, y1: number, line: Parameters<typeof path>[3]) =>
    path(
      pen,
      frame,
      [
        { x: x0, y: y0 },
        { x: x1, y: y0 },
        { x: x1, y: y1 },
        { x: x0, y: y1 },
        { x: x0, y: y0 },
      ],
      line,
    )
  const { minX, maxX } = panels.lid.bounds
  outline(here(box.insideX0), box.insideBass, here(box.insideX1), box.insideTreble, hidden)
  outline(minX, -half, Math.min(maxX, here(neck.x1)), half, hidden)
  const { foot } = saddle
  outline(here(foot.minX), foot.minY, here(foot.maxX), foot.maxY, { stroke: looks.accent, width: THIN })
}

/** The neck's slot and string holes through the wall. */
function paintSlot(pen: Pen, looks: Looks, layout: Layout, face: Face, frame: Frame): void {
  const slot = layout.neck.slots.find((one) => one.face === face)
  if (slot && slot.depth > 0) {
    const half = slot.width / 2
    const bottom = Math.max(-slot.depth, layout.panels[face].bounds.minY)
    // Open at the lid's side, however the wall lies on the screen: a pixel more takes the wall's own edge away there.
    const mouth = 1 / frame.scale
    slab(pen, frame, -half, mouth, half, bottom, { fill: looks.hole })
    const edge = [
      { x: -half, y: 0 },
      { x: -half, y: bottom },
      { x: half, y: bottom },
      { x: half, y: 0 },
    ]
    path(pen, frame, edge, { stroke: looks.accent, width: THICK })
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
