/**
 * What a contour must be before a machine may follow it.
 *
 * Libraries that write DXF take whatever they are given, and readers draw something from it without a
 * word. So every contour is looked at here, once, before either writer sees it.
 */
import type { Chain, Circle, Contour, Vertex } from '../../geometry/index.ts'
import { numberText } from '../numbers.ts'

/** Two points closer than this are one point once written: twice the last digit of a millimetre. */
const ONE_POINT = 2e-6

function near(a: Vertex, b: Vertex): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) < ONE_POINT
}

function soundCircle(circle: Circle, what: string): Circle {
  numberText(circle.centre.x, `x of the centre of ${what}`)
  numberText(circle.centre.y, `y of the centre of ${what}`)
  numberText(circle.radius, `Radius of ${what}`)
  if (circle.radius < ONE_POINT) {
    throw new RangeError(`The radius of ${what} is ${circle.radius}: a circle needs one above zero.`)
  }
  return circle
}

/** Segments that lead nowhere are left out; a chain without any keeps its own identity. */
function withoutRepeats(chain: Chain): Chain {
  const { vertices, closed } = chain
  const kept = vertices.filter((vertex, index) => {
    const next = vertices[index + 1] ?? (closed ? vertices[0] : undefined)
    return next === undefined || next === vertex || !near(vertex, next)
  })
  return kept.length === vertices.length ? chain : { ...chain, vertices: kept }
}

function soundChain(chain: Chain, what: string, mustClose: boolean): Chain {
  for (const [index, vertex] of chain.vertices.entries()) {
    numberText(vertex.x, `x of point ${index + 1} of ${what}`)
    numberText(vertex.y, `y of point ${index + 1} of ${what}`)
    numberText(vertex.bulge, `Bulge after point ${index + 1} of ${what}`)
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

/** Rounded to 0.1 micrometre: nothing that is cut can tell such points apart. */
function rounded(value: number): string {
  return numberText(value, 'A coordinate', 4)
}

/**
 * The same text for contours that lie on one another: it does not matter where a closed chain starts,
 * nor which way round it runs.
 */
export function contourKey(contour: Contour): string {
  if (contour.shape === 'circle') {
    return `circle ${rounded(contour.centre.x)} ${rounded(contour.centre.y)} ${rounded(contour.radius)}`
  }
  const { vertices, closed } = contour
  const segments: string[] = []
  for (const [index, from] of vertices.entries()) {
    const to = vertices[index + 1] ?? (closed ? vertices[0] : undefined)
    if (to === undefined) break
    const start = `${rounded(from.x)} ${rounded(from.y)}`
    const end = `${rounded(to.x)} ${rounded(to.y)}`
    const forwards = `${start} ${end} ${numberText(from.bulge, 'A bulge', 7)}`
    const backwards = `${end} ${start} ${numberText(-from.bulge, 'A bulge', 7)}`
    segments.push(forwards < backwards ? forwards : backwards)
  }
  return `chain ${segments.sort().join(', ')}`
}
