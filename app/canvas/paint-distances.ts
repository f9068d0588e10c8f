/** Live distances drawn: their lines, and their figures where there is room. */
import { type Bounds, formatLength, type Layout, type Point } from '../../geometry/index.ts'
import type { Distance } from './distances.ts'
import { type Frame, screenBounds, toScreen } from './frame.ts'
import type { Looks } from './looks.ts'
import { dimension, type Pen, wide, write } from './paint.ts'

/** Lines and figures; the figures keep off one another and, where there is room, off what they measure. */
export function paintDistances(
  pen: Pen,
  looks: Looks,
  frame: Frame,
  layout: Layout,
  distances: readonly Distance[],
  measured?: Bounds,
  /** Pixels that are taken already: no figure goes there. */
  keepOff?: Bounds | null,
): void {
  const thing = measured && screenBounds(frame, measured)
  const taken: Bounds[] = keepOff ? [keepOff] : []
  // Short ways first: they have the least choice of where their figure goes.
  const inOrder = [...distances].sort((a, b) => a.mm - b.mm)
  for (const { from, to, mm } of inOrder) {
    const a = toScreen(frame, from)
    const b = toScreen(frame, to)
    dimension(pen, a, b, looks.ink)
    const text = formatLength(mm, layout.design.units)
    const half = { x: wide(pen, looks, text, SIZE, true) / 2 + 4, y: SIZE * looks.words * 0.5 + 3 }
    const spots = spotsFor(a, b, half).filter(
      (one) => !taken.some((other) => overlap(other, around(one, half))),
    )
    const spot = spots.find((one) => !thing || !overlap(thing, around(one, half))) ?? spots[0]
    if (!spot) continue
    taken.push(around(spot, half))
    write(pen, looks, text, spot, {
      colour: looks.ink,
      bold: true,
      size: SIZE,
      align: 'center',
      base: 'middle',
      behind: looks.sheet,
    })
  }
}

const SIZE = 13

/** Where a figure may stand: beside the middle of its line on either side, then beyond its ends. */
function spotsFor(a: Point, b: Point, half: Point): Point[] {
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }
  const upright = Math.abs(b.x - a.x) < Math.abs(b.y - a.y)
  const beside = upright
    ? [
        { x: half.x + 4, y: 0 },
        { x: -half.x - 4, y: 0 },
      ]
    : [
        { x: 0, y: -half.y - 3 },
        { x: 0, y: half.y + 3 },
      ]
  const [low, high] = (upright ? a.y < b.y : a.x < b.x) ? [a, b] : [b, a]
  const beyond = upright
    ? [
        { x: low.x, y: Math.min(a.y, b.y) - half.y - 5 },
        { x: high.x, y: Math.max(a.y, b.y) + half.y + 5 },
      ]
    : [
        { x: Math.min(a.x, b.x) - half.x - 5, y: low.y },
        { x: Math.max(a.x, b.x) + half.x + 5, y: high.y },
      ]
  const near = beside.map((off) => ({ x: middle.x + off.x, y: middle.y + off.y }))
  return [
    ...near,
    ...beyond,
    ...beside.map((off) => ({ x: middle.x + off.x * 2.4, y: middle.y + off.y * 2.4 })),
  ]
}

const around = (at: Point, half: Point): Bounds => ({
  minX: at.x - half.x,
  maxX: at.x + half.x,
  minY: at.y - half.y,
  maxY: at.y + half.y,
})

const overlap = (a: Bounds, b: Bounds) =>
  a.minX < b.maxX && a.maxX > b.minX && a.minY < b.maxY && a.maxY > b.minY
