/**
 * Arcs into short straight steps, for whatever cannot follow an arc.
 */
import type { Contour, Point } from './contour.ts'
import { piecesOf } from './pieces.ts'

/** The greatest distance, mm, between an arc and its steps unless another is asked for. */
export const FLATTEN_TOLERANCE = 0.01

/**
 * Points along the contour such that no arc strays from the straight steps between them by more than
 * `tolerance` mm. All lie on the contour; every vertex is among them. A closed contour does not repeat its
 * first point; an open one ends with its last vertex. A step never turns more than a quarter circle, however
 * loose the tolerance. Throws for a tolerance that is not above 0.
 *
 * Source: a step of angle t on radius r strays by the sagitta r (1 - cos(t / 2)) = 2 r sin^2(t / 4).
 *
 * @example flatten(circle({ x: 0, y: 0 }, 5), 0.1).length // 16
 */
export function flatten(contour: Contour, tolerance: number = FLATTEN_TOLERANCE): Point[] {
  if (!(tolerance > 0))
    throw new RangeError(`The tolerance of flattening must be above 0 mm, not ${tolerance}.`)
  const { list, closed } = piecesOf(contour)
  const points: Point[] = []
  for (const piece of list) {
    points.push({ x: piece.x1, y: piece.y1 })
    if (!piece.isArc) continue
    const share = Math.min(1, Math.sqrt(tolerance / (2 * piece.radius)))
    const widest = Math.min(4 * Math.asin(share), Math.PI / 2)
    const steps = Math.ceil(Math.abs(piece.sweep) / widest - 1e-9)
    const start = Math.atan2(piece.y1 - piece.cy, piece.x1 - piece.cx)
    for (let i = 1; i < steps; i++) {
      const angle = start + (piece.sweep * i) / steps
      points.push({
        x: piece.cx + piece.radius * Math.cos(angle),
        y: piece.cy + piece.radius * Math.sin(angle),
      })
    }
  }
  const last = list.at(-1)
  if (!closed && last !== undefined) points.push({ x: last.x2, y: last.y2 })
  return points
}
