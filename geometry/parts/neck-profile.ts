/** The neck from the side, as a line: every step in its top, the step or the joint of its head. */
import { tiltOf } from '../neck/head-form.ts'
import { scarfOf } from '../neck/scarf.ts'
import type { Point } from '../plane/index.ts'
import type { Layout, NeckStretch } from '../solve/layout.ts'

/** A neck cut right through is drawn as a film this thick, so that its outline does not touch itself. */
const FILM = 0.01

/** Top of a stretch as it is drawn. */
const drawnTop = ({ top, bottom }: NeckStretch): number => Math.max(top, bottom + FILM)

/** Top of the neck at x, on the head side of a step. */
export function topAt({ neck }: Layout, x: number): number {
  const stretch = neck.stretches.find((one) => x > one.x0 && x <= one.x1)
  return stretch ? drawnTop(stretch) : neck.top
}

/** Corners of the neck seen from the side, x along and height up; a scarfed head as it is glued on. */
export function neckProfile(layout: Layout): Point[] {
  const { neck } = layout
  const tilted = tiltedHead(layout)
  const top: Point[] = []
  neck.stretches.forEach((stretch, index) => {
    if (tilted && stretch.of === 'headstock') return
    const next = neck.stretches[index + 1]
    const before = neck.stretches[index - 1]
    // What is cut away right behind a head that lies higher leaves it in the air: a film holds it there too.
    if (before?.of === 'headstock' && drawnTop(stretch) < before.bottom + FILM)
      for (const x of [stretch.x0, Math.min(stretch.x0 + FILM, stretch.x1)])
        top.push({ x, y: before.bottom + FILM })
    top.push({ x: Math.max(stretch.x0, top.at(-1)?.x ?? stretch.x0), y: drawnTop(stretch) })
    top.push({ x: stretch.x1, y: drawnTop(stretch.of === 'slope' && next ? next : stretch) })
  })
  const points = [...(tilted ?? headBottom(layout)), { x: neck.x1, y: neck.bottom }, ...top.reverse()]
  return simplified(points)
}

/** Along the bottom to where the head ends and the neck begins. */
function headBottom({ neck }: Layout): Point[] {
  const head = neck.stretches.find((one) => one.of === 'headstock')
  if (!head || head.bottom === neck.bottom) return [{ x: neck.x0, y: neck.bottom }]
  return [
    { x: head.x0, y: head.bottom },
    { x: head.x1, y: head.bottom },
    { x: head.x1, y: neck.bottom },
  ]
}

/** Face and back of a scarfed head from where its face begins, and the bevel it is glued to; `null` for any other. */
function tiltedHead({ design, nut, neck }: Layout): Point[] | null {
  const scarf = scarfOf(design, nut.x0)
  if (!scarf) return null
  const tilt = tiltOf(design.headstock)
  const face = Math.max(FILM, design.headstock.length + nut.x0)
  const end = { x: nut.x0 - face * Math.cos(tilt), y: neck.top - face * Math.sin(tilt) }
  const { thickness } = design.headstock
  const back = { x: end.x + thickness * Math.sin(tilt), y: end.y - thickness * Math.cos(tilt) }
  return [{ x: nut.x0, y: neck.top }, end, back, scarf.bottom]
}

/** Nearer than this two points are one: far below what any saw can show. */
const SAME = 1e-6

/** Leaves out points that repeat their neighbour or lie on the straight line between their neighbours. */
export function simplified(points: readonly Point[]): Point[] {
  const apart = points.filter((point, index) => {
    const next = points[(index + 1) % points.length] ?? point
    return Math.hypot(point.x - next.x, point.y - next.y) > SAME
  })
  return apart.filter((point, index) => {
    const before = apart.at(index - 1) ?? point
    const after = apart[(index + 1) % apart.length] ?? point
    const area = (point.x - before.x) * (after.y - before.y) - (point.y - before.y) * (after.x - before.x)
    return Math.abs(area) > SAME
  })
}
