/**
 * Rigid motions: what a contour measures stays the same. Closed chains stay counter-clockwise, mirrored ones
 * too: they are run backwards from the same first vertex.
 */
import type { Chain, Contour, Point, Vertex } from './contour.ts'

/**
 * Where a thing lies: drawn about its own origin, it is mirrored first if `mirrored` (y becomes -y), then
 * turned by `turn` radians counter-clockwise about that origin, then moved by (x, y) mm.
 */
export interface Placement {
  readonly x: number
  readonly y: number
  readonly turn: number
  readonly mirrored: boolean
}

/** A cosine or sine below this is rounding: quarter turns then keep whole coordinates whole. */
const NO_COMPONENT = 1e-15

const ORIGIN: Point = { x: 0, y: 0 }

/** x' = xx x + xy y + x0 and y' = yx x + yy y + y0; `flips` where the matrix mirrors. */
interface Motion {
  readonly xx: number
  readonly xy: number
  readonly yx: number
  readonly yy: number
  readonly x0: number
  readonly y0: number
  readonly flips: boolean
}

function directionOf(angle: number): readonly [cosine: number, sine: number] {
  const cosine = Math.cos(angle)
  const sine = Math.sin(angle)
  if (Math.abs(cosine) < NO_COMPONENT) return [0, Math.sign(sine)]
  if (Math.abs(sine) < NO_COMPONENT) return [Math.sign(cosine), 0]
  return [cosine, sine]
}

function motionOf(placement: Placement): Motion {
  const [cosine, sine] = directionOf(placement.turn)
  const side = placement.mirrored ? -1 : 1
  return {
    xx: cosine,
    xy: -side * sine,
    yx: sine,
    yy: side * cosine,
    x0: placement.x,
    y0: placement.y,
    flips: placement.mirrored,
  }
}

function carryPoint(m: Motion, { x, y }: Point): Point {
  // The last 0 leaves no -0 behind.
  return { x: m.xx * x + m.xy * y + m.x0 + 0, y: m.yx * x + m.yy * y + m.y0 + 0 }
}

function carry<S extends Contour>(m: Motion, contour: S): S
function carry(m: Motion, contour: Contour): Contour {
  if (contour.shape === 'circle')
    return { shape: 'circle', centre: carryPoint(m, contour.centre), radius: contour.radius }
  const vertices = contour.vertices.map(({ x, y, bulge }) => ({
    x: m.xx * x + m.xy * y + m.x0 + 0,
    y: m.yx * x + m.yy * y + m.y0 + 0,
    bulge: m.flips ? opposite(bulge) : bulge,
  }))
  const carried: Chain = { shape: 'chain', closed: contour.closed, vertices }
  return m.flips && contour.closed ? reversed(carried) : carried
}

/** -bulge, but 0 for 0: a straight segment's bulge is never -0. */
function opposite(bulge: number): number {
  return 0 - bulge
}

/**
 * The same chain run the other way: a closed one from the same first vertex, an open one from its last.
 *
 * @example reversed(line({ x: 0, y: 0 }, { x: 1, y: 0 })).vertices[0] // { x: 1, y: 0, bulge: 0 }
 */
export function reversed(chain: Chain): Chain {
  const { vertices, closed } = chain
  const count = vertices.length
  const back: Vertex[] = []
  for (let i = 0; i < count; i++) {
    const vertex = vertices[closed ? (count - i) % count : count - 1 - i]
    if (vertex === undefined) continue
    // A segment's bulge sits at its start; run backwards it starts where it ended.
    const segment = vertices[closed ? (count - 1 - i) % count : count - 2 - i]
    back.push({ x: vertex.x, y: vertex.y, bulge: segment === undefined ? 0 : opposite(segment.bulge) })
  }
  return { shape: 'chain', closed, vertices: back }
}

/**
 * The contour shifted by (dx, dy) mm.
 *
 * @example move(circle({ x: 0, y: 0 }, 5), 10, 0) // centre (10, 0)
 */
export function move<S extends Contour>(contour: S, dx: number, dy: number): S {
  return carry({ xx: 1, xy: 0, yx: 0, yy: 1, x0: dx, y0: dy, flips: false }, contour)
}

/**
 * The contour turned by `angle` radians counter-clockwise about a point, the origin unless stated. Quarter
 * turns are exact.
 *
 * @example turn(circle({ x: 10, y: 0 }, 5), Math.PI / 2) // centre (0, 10)
 */
export function turn<S extends Contour>(contour: S, angle: number, about: Point = ORIGIN): S {
  const [cosine, sine] = directionOf(angle)
  return carry(
    {
      xx: cosine,
      xy: -sine,
      yx: sine,
      yy: cosine,
      x0: about.x - cosine * about.x + sine * about.y,
      y0: about.y - sine * about.x - cosine * about.y,
      flips: false,
    },
    contour,
  )
}

/**
 * Mirrored about the horizontal line at height `y`, the x axis unless stated: y becomes 2 y - y. Twice about
 * the x axis gives back exactly the same numbers.
 *
 * @example mirrorX(circle({ x: 3, y: 4 }, 1)) // centre (3, -4)
 */
export function mirrorX<S extends Contour>(contour: S, y = 0): S {
  return carry({ xx: 1, xy: 0, yx: 0, yy: -1, x0: 0, y0: 2 * y, flips: true }, contour)
}

/**
 * Mirrored about the vertical line at `x`, the y axis unless stated. Twice about the y axis gives back exactly
 * the same numbers.
 *
 * @example mirrorY(circle({ x: 3, y: 4 }, 1)) // centre (-3, 4)
 */
export function mirrorY<S extends Contour>(contour: S, x = 0): S {
  return carry({ xx: -1, xy: 0, yx: 0, yy: 1, x0: 2 * x, y0: 0, flips: true }, contour)
}

/**
 * A contour drawn about its own origin, put where the placement says.
 *
 * @example place(circle({ x: 1, y: 2 }, 1), { x: 10, y: 0, turn: 0, mirrored: true }) // centre (11, -2)
 */
export function place<S extends Contour>(contour: S, placement: Placement): S {
  return carry(motionOf(placement), contour)
}

/**
 * A point drawn about the thing's own origin, put where the placement says.
 *
 * @example placePoint({ x: 1, y: 0 }, { x: 10, y: 0, turn: Math.PI / 2, mirrored: false }) // (10, 1)
 */
export function placePoint(point: Point, placement: Placement): Point {
  return carryPoint(motionOf(placement), point)
}

/**
 * The placement that undoes another: `place(place(c, p), inversePlacement(p))` is `c` to rounding.
 *
 * @example inversePlacement({ x: 10, y: 0, turn: 0, mirrored: false }) // x -10
 */
export function inversePlacement(placement: Placement): Placement {
  const [cosine, sine] = directionOf(placement.turn)
  const { x, y, mirrored } = placement
  const side = mirrored ? -1 : 1
  // A mirror is its own undoing and turns every turn behind it the other way.
  return {
    x: 0 - (cosine * x + sine * y),
    y: 0 - side * (cosine * y - sine * x),
    turn: mirrored ? placement.turn : 0 - placement.turn,
    mirrored,
  }
}

/**
 * One placement after another: `place(place(c, inner), outer)` is `place(c, combinedPlacement(outer, inner))`
 * to rounding. For a thing placed on a face that is itself placed on a sheet.
 *
 * @example combinedPlacement({ x: 5, y: 0, turn: 0, mirrored: false }, { x: 1, y: 1, turn: 0, mirrored: false }) // (6, 1)
 */
export function combinedPlacement(outer: Placement, inner: Placement): Placement {
  return {
    ...placePoint(inner, outer),
    turn: outer.turn + (outer.mirrored ? 0 - inner.turn : inner.turn),
    mirrored: outer.mirrored !== inner.mirrored,
  }
}
