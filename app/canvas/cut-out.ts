/**
 * A thing of very many openings in hand: painted once, as a cut-out that is then moved about. Two thousand holes painted
 * anew would take longer than a frame.
 */
import type { Placed } from '../../geometry/index.ts'
import { type Frame, screenBounds } from './frame.ts'
import type { Looks } from './looks.ts'
import type { Pen } from './paint.ts'

export type Paint = (pen: Pen, looks: Looks, frame: Frame, placed: Placed) => void

interface CutOut {
  readonly placed: Placed
  readonly looks: Looks
  readonly frame: Frame
  /** Pixels of the screen for a pixel of the page. */
  readonly density: number
  readonly picture: HTMLCanvasElement
}

/** Only one thing of many openings is in hand at a time; of several the last one is kept. */
let last: CutOut | null = null

/** Room for lines that stand half outside, in pixels of the page. */
const ROOM = 4

/** Paints with `paint` what was not painted yet, and else lays the picture where the thing stands, to a whole pixel. */
export function paintCutOut(pen: Pen, looks: Looks, frame: Frame, placed: Placed, paint: Paint): void {
  const density = pen.getTransform().a
  if (!last || !isOf(last, looks, frame, placed, density)) last = cutOut(looks, frame, placed, density, paint)
  const { minX, minY } = screenBounds(frame, placed.bounds)
  const whole = (value: number) => Math.round((value - ROOM) * density) / density
  const { width, height } = last.picture
  pen.drawImage(last.picture, whole(minX), whole(minY), width / density, height / density)
}

function cutOut(looks: Looks, frame: Frame, placed: Placed, density: number, paint: Paint): CutOut {
  const { minX, minY, maxX, maxY } = screenBounds(frame, placed.bounds)
  const picture = document.createElement('canvas')
  picture.width = Math.ceil((maxX - minX + 2 * ROOM) * density)
  picture.height = Math.ceil((maxY - minY + 2 * ROOM) * density)
  const pen = picture.getContext('2d')
  if (pen) {
    pen.scale(density, density)
    paint(pen, looks, { ...frame, ox: frame.ox - minX + ROOM, oy: frame.oy - minY + ROOM }, placed)
  }
  return { placed, looks, frame, density, picture }
}

/** Is it a picture of the same thing, whatever its place? */
function isOf(one: CutOut, looks: Looks, frame: Frame, { thing, face }: Placed, density: number): boolean {
  if (one.looks !== looks || one.density !== density || one.placed.face !== face) return false
  const { scale, right, up, turned } = one.frame
  if (scale !== frame.scale || right !== frame.right || up !== frame.up || turned !== frame.turned)
    return false
  const before: Readonly<Record<string, unknown>> = one.placed.thing
  const now: Readonly<Record<string, unknown>> = thing
  const names = Object.keys(now)
  return (
    names.length === Object.keys(before).length &&
    names.every((name) => name === 'along' || name === 'across' || before[name] === now[name])
  )
}
