/** The lines that hold what is being dragged, and their names. */
import type { Bounds, Placed, Point } from '../../geometry/index.ts'
import { type Frame, screenBounds, toScreen } from './frame.ts'
import type { Line } from './hold/line.ts'
import { type Looks, TIE } from './looks.ts'
import { cross, dimension, type Pen, shape, stroke, wide, write } from './paint.ts'

const BEYOND = 26

/** A line across the face for each axis that is held; what holds is said on the far side of the face, clear of hand and thing. */
export function paintHeld(
  pen: Pen,
  looks: Looks,
  frame: Frame,
  face: Bounds,
  at: Point,
  lines: readonly Line[],
): void {
  const box = screenBounds(frame, face)
  for (const line of lines) {
    for (const gap of line.gaps)
      dimension(pen, toScreen(frame, gap.from), toScreen(frame, gap.to), looks.accent)
    if (line.gaps.length > 0) continue
    const place = toScreen(frame, line.axis === 'x' ? { x: line.shows, y: at.y } : { x: at.x, y: line.shows })
    const [a, b] =
      line.axis === 'x'
        ? [
            { x: place.x, y: box.minY - BEYOND },
            { x: place.x, y: box.maxY + BEYOND },
          ]
        : [
            { x: box.minX - BEYOND, y: place.y },
            { x: box.maxX + BEYOND, y: place.y },
          ]
    stroke(pen, a, b, { stroke: looks.accent, width: 1.2 })
  }
  if (lines.length === 0) return
  const text = lines.map((line) => line.name).join(' · ')
  const here = toScreen(frame, at)
  const below = here.y < (box.minY + box.maxY) / 2
  chip(pen, looks, text, { x: here.x, y: below ? box.maxY + 16 : Math.max(14, box.minY - 16) })
}

/** Where a thing lay when the drag began, and the way from there. */
export function paintGhost(pen: Pen, looks: Looks, frame: Frame, began: Placed, now: Placed): void {
  if (began.face === now.face && Math.hypot(now.at.x - began.at.x, now.at.y - began.at.y) < 1e-6) return
  shape(pen, frame, began.footprint, { stroke: looks.soft, width: 1, dash: TIE })
  const from = toScreen(frame, began.at)
  cross(pen, from, 4, { stroke: looks.soft, width: 1 })
  if (began.face === now.face)
    stroke(pen, from, toScreen(frame, now.at), { stroke: looks.soft, width: 1, dash: TIE })
}

/** Words on the accent, centred on a place and kept inside the drawing. */
export function chip(pen: Pen, looks: Looks, text: string, at: Point): void {
  const half = wide(pen, looks, text, 12, true) / 2 + 10
  const width = pen.canvas.width / (pen.getTransform().a || 1)
  const x = Math.min(Math.max(at.x, half + 4), width - half - 4)
  pen.fillStyle = looks.accent
  pen.fillRect(x - half, at.y - 11, half * 2, 22)
  write(
    pen,
    looks,
    text,
    { x, y: at.y },
    { colour: looks.onAccent, bold: true, align: 'center', base: 'middle' },
  )
}
