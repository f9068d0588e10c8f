/**
 * What a contour must be before a machine may follow it.
 *
 * Libraries that write DXF take whatever they are given, and readers draw something from it without a
 * word. So every contour is looked at here, once, before either writer sees it.
 */
import type { Chain, Circle, Contour, Point, Vertex } from '../../geometry/index.ts'
import { isWritable, refuse } from '../numbers.ts'

/**
 * Two points closer than this are one point, mm: half of what a template promises. What joins two parallels of a tool's
 * path may be a quarter of a micrometre long, and a machine that meets such a step halts or throws the tool about.
 */
const ONE_POINT = 0.0005

function near(a: Vertex, b: Vertex): boolean {
  const dx = a.x - b.x
  const dy = a.y - b.y
  return dx * dx + dy * dy < ONE_POINT * ONE_POINT
}

function soundCircle(circle: Circle, what: string): Circle {
  const { centre, radius } = circle
  if (!isWritable(centre.x)) refuse(centre.x, `x of the centre of ${what}`)
  if (!isWritable(centre.y)) refuse(centre.y, `y of the centre of ${what}`)
  if (!isWritable(radius)) refuse(radius, `Radius of ${what}`)
  if (radius < ONE_POINT) {
    throw new RangeError(`The radius of ${what} is ${radius}: a circle needs one above zero.`)
  }
  return circle
}

/** Whether the segment from a vertex leads nowhere. */
function leadsNowhere({ vertices, closed }: Chain, index: number): boolean {
  const vertex = vertices[index]
  const next = vertices[index + 1] ?? (closed ? vertices[0] : undefined)
  return vertex !== undefined && next !== undefined && next !== vertex && near(vertex, next)
}

/** Segments that lead nowhere are left out; a chain without any keeps its own identity. */
function withoutRepeats(chain: Chain): Chain {
  for (let index = 0; index < chain.vertices.length; index++) {
    if (!leadsNowhere(chain, index)) continue
    return { ...chain, vertices: chain.vertices.filter((_, each) => !leadsNowhere(chain, each)) }
  }
  return chain
}

function soundChain(chain: Chain, what: string, mustClose: boolean): Chain {
  let number = 0
  for (const { x, y, bulge } of chain.vertices) {
    number++
    if (!isWritable(x)) refuse(x, `x of point ${number} of ${what}`)
    if (!isWritable(y)) refuse(y, `y of point ${number} of ${what}`)
    if (!isWritable(bulge)) refuse(bulge, `Bulge after point ${number} of ${what}`)
  }
  if (mustClose && !chain.closed) {
    throw new Error(`${what} is open (${chain.vertices.length} points): what is cut or recessed must close.`)
  }
  const clean = withoutRepeats(chain)
  const count = clean.vertices.length
  if (count < 2) {
    throw new Error(
      `${what} has ${count} point${count === 1 ? '' : 's'} apart from each other: two are needed.`,
    )
  }
  if (clean.closed && count === 2 && clean.vertices.every((vertex) => vertex.bulge === 0)) {
    throw new Error(`${what} is a line there and back: a closed contour needs an inside.`)
  }
  return clean
}

/**
 * A contour that may be written: finite numbers below a million, no two neighbouring points in one
 * place (the segment of no length between them is left out), at least two points, closed where it must.
 *
 * @param contour lengths in mm
 * @param what what it is, for errors
 * @param mustClose whether an open chain is an error
 * @throws when a number is not finite, a radius is not above zero, or nothing is left to draw
 */
export function soundContour(contour: Contour, what: string, mustClose: boolean): Contour {
  return contour.shape === 'circle' ? soundCircle(contour, what) : soundChain(contour, what, mustClose)
}

/** In steps of 0.1 micrometre: nothing that is cut can tell points within one apart. */
function steps(millimetres: number): number {
  return Math.round(millimetres * 1e4)
}

/**
 * A whole number that stands for a point, its bits well mixed, so that those of a grid or of mirrored points do
 * not make one sum (large odd factors and shifts, as hash functions have them; common practice, no source).
 */
function pointMark({ x, y }: Point): number {
  const both = Math.imul(steps(x), 0x9e3779b1) + Math.imul(steps(y), 0x85ebca77)
  const mixed = Math.imul(both ^ (both >>> 15), 0x2c1b3c6d)
  return mixed ^ (mixed >>> 13)
}

/**
 * A number that is the same for contours that lie on one another, and hardly ever for others: it is quicker
 * than `contourKey`, which then decides.
 */
export function contourMark(contour: Contour): number {
  if (contour.shape === 'circle') return (pointMark(contour.centre) + steps(contour.radius)) | 0
  // Both ends of each segment, so that neither the start of a chain nor its direction matters.
  const { vertices, closed } = contour
  let sum = 0
  for (let index = 0; index < vertices.length; index++) {
    const from = vertices[index]
    const to = vertices[index + 1] ?? (closed ? vertices[0] : undefined)
    if (from === undefined || to === undefined) break
    sum = (sum + pointMark(from) + pointMark(to)) | 0
  }
  return sum
}

/**
 * The same text for contours that lie on one another: it does not matter where a closed chain starts,
 * nor which way round it runs.
 */
export function contourKey(contour: Contour): string {
  if (contour.shape === 'circle') {
    return `circle ${steps(contour.centre.x)} ${steps(contour.centre.y)} ${steps(contour.radius)}`
  }
  const { vertices, closed } = contour
  const segments: string[] = []
  for (const [index, from] of vertices.entries()) {
    const to = vertices[index + 1] ?? (closed ? vertices[0] : undefined)
    if (to === undefined) break
    const start = `${steps(from.x)} ${steps(from.y)}`
    const end = `${steps(to.x)} ${steps(to.y)}`
    const forwards = `${start} ${end} ${Math.round(from.bulge * 1e7)}`
    const backwards = `${end} ${start} ${Math.round(-from.bulge * 1e7)}`
    segments.push(forwards < backwards ? forwards : backwards)
  }
  return `chain ${segments.sort().join(', ')}`
}
