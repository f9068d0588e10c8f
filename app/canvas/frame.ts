/** From a flat frame in millimetres (x right, y up) to pixels of a drawing, and back. */
import { type Bounds, type Face, flipOf, type Layout, type Point } from '../../geometry/index.ts'

export interface Frame {
  /** Pixels at which the frame's origin lies. */
  readonly ox: number
  readonly oy: number
  /** Pixels per millimetre. */
  readonly scale: number
  /** 1 where the frame's x runs to the right of the screen, -1 where it runs to the left. */
  readonly right: 1 | -1
  /** 1 where the frame's y runs up the screen, -1 where it runs down. */
  readonly up: 1 | -1
  /** Turned a quarter, for a wall folded out beside the lid: x then runs up the screen and y to the right. */
  readonly turned?: true
}

export const toScreen = (frame: Frame, { x, y }: Point): Point => ({
  x: frame.ox + frame.right * (frame.turned ? y : x) * frame.scale,
  y: frame.oy - frame.up * (frame.turned ? x : y) * frame.scale,
})

export function fromScreen(frame: Frame, { x, y }: Point): Point {
  const across = (frame.right * (x - frame.ox)) / frame.scale
  const rising = (frame.up * (frame.oy - y)) / frame.scale
  return frame.turned ? { x: rising, y: across } : { x: across, y: rising }
}

/** The same frame with its origin moved by millimetres of its own. */
export const movedFrame = (frame: Frame, dx: number, dy: number): Frame => ({
  ...frame,
  ox: frame.ox + frame.right * (frame.turned ? dy : dx) * frame.scale,
  oy: frame.oy - frame.up * (frame.turned ? dx : dy) * frame.scale,
})

/** Bounds in pixels, the right way round whichever way the frame faces. */
export function screenBounds(frame: Frame, { minX, maxX, minY, maxY }: Bounds): Bounds {
  const a = toScreen(frame, { x: minX, y: minY })
  const b = toScreen(frame, { x: maxX, y: maxY })
  return {
    minX: Math.min(a.x, b.x),
    maxX: Math.max(a.x, b.x),
    minY: Math.min(a.y, b.y),
    maxY: Math.max(a.y, b.y),
  }
}

/** How a panel's own frame lies on the screen when its face is seen from outside: as on the sheet that is cut. */
export function facing(face: Face, up: Layout['up']): Pick<Frame, 'right' | 'up'> {
  const flip = flipOf(face, up)
  return { right: flip === 'x' ? -1 : 1, up: flip === 'y' ? -1 : 1 }
}
