/** What the strings do, drawn over plan and section: bow of the neck, and the room a loose saddle needs. */
import { type Layout, loadsOf } from '../../geometry/index.ts'
import { sayFine } from '../parts/say-loads.ts'
import type { View } from './camera.ts'
import { toScreen } from './frame.ts'
import { HIDDEN, type Looks } from './looks.ts'
import { type Pen, path, slab, wide, write } from './paint.ts'

/** How many times its size the bent neck is drawn, the first that fits: a tenth of a millimetre is no line's width. */
const TIMES = [20, 10, 5, 2] as const
/** Millimetres that the drawn bend takes up at the most. */
const ROOM = 40
/** Clear of the drawn neck, pixels. */
const BELOW_NECK = 6
/** Words stay so far from the wall of the box, pixels. */
const CLEAR_OF_WALL = 8

/** The neck as the strings bend it, under its straight bottom, exaggerated and saying by how much. */
export function paintBow(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  const { neck } = loadsOf(layout)
  if (!neck) return
  const highest = Math.max(0, ...neck.curve().map(({ rise }) => rise))
  const times = TIMES.find((one) => highest * one <= ROOM) ?? 1
  const bottom = layout.neck.bottom - BELOW_NECK / view.section.scale - highest * times
  const points = neck
    .curve()
    .filter(({ x }) => x <= layout.box.x0)
    .map(({ x, rise }) => ({ x, y: bottom + rise * times }))
  // Without the nut in the window there is no bow to see, only a line.
  if (points.length < 2 || toScreen(view.section, { x: 0, y: 0 }).x < 0) return
  path(pen, view.section, points, { stroke: looks.accent, width: 1, dash: HIDDEN })
  const bow = sayFine(neck.bow, layout.design.units)
  const words = `bow about ${bow} under pull, drawn × ${times}`
  const { x: wall, y: low } = toScreen(view.section, { x: layout.box.x0, y: bottom })
  const { x: start } = toScreen(view.section, { x: 0, y: 0 })
  // Under the middle of the line, but never over the wall.
  const half = wide(pen, looks, words, 11) / 2
  const at = { x: Math.min((start + wall) / 2, wall - half - CLEAR_OF_WALL), y: low + 10 }
  write(pen, looks, words, at, { colour: looks.soft, size: 11, align: 'center' })
}

/** Beyond the ends of the saddle the light band and the line stand out by this, millimetres. */
const STANDS_OUT = 6

/** The band in which a loose saddle must be free to move, and the line on which it plays in tune. */
export function paintSaddleRoom(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  const { missing, saddle } = loadsOf(layout)
  if (missing) return
  const { foot } = layout.saddle
  const [low, high] = [foot.minY - STANDS_OUT, foot.maxY + STANDS_OUT]
  pen.save()
  pen.globalAlpha = 0.35
  slab(pen, view.plan, saddle.band.from, low, saddle.band.to, high, { fill: looks.accentSoft })
  pen.restore()
  slab(pen, view.plan, saddle.band.from, low, saddle.band.to, high, {
    stroke: looks.accent,
    width: 0.6,
    dash: [2, 3],
  })
  if (!saddle.line) return
  const { atCentre, slant } = saddle.line
  const at = (y: number) => ({ x: layout.design.scale.length + atCentre + Math.tan(slant) * y, y })
  path(pen, view.plan, [at(low), at(high)], { stroke: looks.accent, width: 1.4 })
}
