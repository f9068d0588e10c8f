/**
 * A flat face seen by a camera, and back: the projective map that takes four corners to four others.
 *
 * `(x, y) → (a x + b y + c, d x + e y + f) / (g x + h y + 1)`, the eight numbers from the eight equations that the
 * corners give. Source: R. Hartley and A. Zisserman, "Multiple View Geometry in Computer Vision", 2nd ed., sec. 2.2 and
 * 4.1; P. Heckbert, "Fundamentals of Texture Mapping and Image Warping" (1989), sec. 2.2.3. A lens that bends straight
 * lines is not a projection and is left out.
 */
import type { Point } from './contour.ts'

/** Four corners in order round the figure. */
export type Corners = readonly [Point, Point, Point, Point]

/** `a b c d e f g h` of the map. */
export type Homography = readonly [number, number, number, number, number, number, number, number]

/** Why four corners are not those of a flat rectangle seen from in front. */
export type CornerFault = 'together' | 'in line' | 'crossed' | 'hollow'

/** Under this share of the longest side two corners count as one, or three as in line. */
const NOTHING = 1e-6

const turnAt = (a: Point, b: Point, c: Point) => (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x)

/**
 * What is wrong with four corners, or `null`: a rectangle seen by a camera in front of it is always convex.
 * Example: a bow tie is `crossed`, an arrowhead is `hollow`.
 */
export function cornerFault(corners: Corners): CornerFault | null {
  const size = Math.max(
    ...corners.flatMap((one) => corners.map((two) => Math.hypot(one.x - two.x, one.y - two.y))),
  )
  const near = (one: Point, two: Point) => Math.hypot(one.x - two.x, one.y - two.y) <= size * NOTHING
  if (!(size > 0) || corners.some((one, index) => corners.slice(index + 1).some((two) => near(one, two))))
    return 'together'
  const turns = corners.map((b, index) => turnAt(corners[(index + 3) % 4]!, b, corners[(index + 1) % 4]!))
  if (turns.some((turn) => Math.abs(turn) <= size * size * NOTHING)) return 'in line'
  const left = turns.filter((turn) => turn > 0).length
  if (left === 4 || left === 0) return null
  return left === 2 ? 'crossed' : 'hollow'
}

/** Which way round the corners go: 1 counter-clockwise where y points up, -1 clockwise. */
export const windingOf = (corners: Corners): 1 | -1 => {
  const [a, b, c, d] = corners
  return (c.x - a.x) * (d.y - b.y) - (c.y - a.y) * (d.x - b.x) >= 0 ? 1 : -1
}

/**
 * The map that takes each corner of `from` to the same of `to`. Throws for corners with a `cornerFault`.
 * Example: the unit square to (0, 0) (4, 0) (3, 3) (1, 3) takes its centre to (2, 2).
 */
export function homography(from: Corners, to: Corners): Homography {
  for (const corners of [from, to]) {
    const fault = cornerFault(corners)
    if (fault) throw new RangeError(`four corners that are ${fault} have no projection`)
  }
  const rows = from.flatMap(({ x, y }, index) => {
    const { x: u, y: v } = to[index]!
    return [
      [x, y, 1, 0, 0, 0, -x * u, -y * u, u],
      [0, 0, 0, x, y, 1, -x * v, -y * v, v],
    ]
  })
  const [a, b, c, d, e, f, g, h] = eliminated(rows)
  return [a!, b!, c!, d!, e!, f!, g!, h!]
}

/** Gaussian elimination with partial pivots; each row carries its right-hand side last. */
function eliminated(rows: number[][]): number[] {
  const size = rows.length
  for (let column = 0; column < size; column++) {
    let pivot = column
    for (let row = column + 1; row < size; row++)
      if (Math.abs(rows[row]![column]!) > Math.abs(rows[pivot]![column]!)) pivot = row
    ;[rows[column], rows[pivot]] = [rows[pivot]!, rows[column]!]
    const top = rows[column]!
    for (let row = 0; row < size; row++) {
      if (row === column) continue
      const share = rows[row]![column]! / top[column]!
      if (share !== 0)
        for (let at = column; at <= size; at++) rows[row]![at] = rows[row]![at]! - share * top[at]!
    }
  }
  return rows.map((row, index) => row[size]! / row[index]!)
}

/** Where the map takes a point; `null` for one on the horizon, which no place answers to. */
export function project([a, b, c, d, e, f, g, h]: Homography, { x, y }: Point): Point | null {
  const w = g * x + h * y + 1
  return Math.abs(w) < Number.EPSILON ? null : { x: (a * x + b * y + c) / w, y: (d * x + e * y + f) / w }
}
