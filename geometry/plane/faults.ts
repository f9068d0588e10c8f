/**
 * What is wrong with a contour, in words. Makers never make a faulty one; this is for curves from outside, for
 * guards before a file is written, and for tests.
 */
import type { Chain, Contour, Vertex } from './contour.ts'
import { area } from './measure.ts'
import { piecesOf } from './pieces.ts'
import { selfCrossing } from './self-crossing.ts'
import { SAME_POINT } from './tolerance.ts'

/**
 * Sentences that say what is wrong with a contour; none for a sound one. Found are: too few vertices, numbers
 * that are not finite, neighbouring vertices in one place (within SAME_POINT), a line that crosses or touches
 * itself or doubles back (exact for lines and arcs), a closed contour that runs clockwise or encloses nothing,
 * a circle without radius. Of several crossings the first is named.
 *
 * @example faults({ shape: 'circle', centre: { x: 0, y: 0 }, radius: -1 }) // ['The radius of the circle is -1 mm; …']
 */
export function faults(contour: Contour): string[] {
  if (contour.shape === 'circle') {
    const { centre, radius } = contour
    if (!Number.isFinite(centre.x) || !Number.isFinite(centre.y)) {
      return [`The centre of the circle is (${centre.x}, ${centre.y}); both must be finite lengths in mm.`]
    }
    if (radius > 0 && Number.isFinite(radius)) return []
    return [`The radius of the circle is ${radius} mm; it must be a finite length above 0.`]
  }
  const found = vertexFaults(contour)
  // A chain with these cannot be measured any further.
  if (found.length > 0) return found
  const crossing = selfCrossing(piecesOf(contour).list, contour.closed)
  if (crossing !== undefined) found.push(crossing)
  if (contour.closed) {
    const enclosed = area(contour)
    if (Math.abs(enclosed) <= SAME_POINT * SAME_POINT) found.push('The closed chain encloses no area.')
    else if (enclosed < 0) {
      found.push('The closed chain runs clockwise; a closed contour must run counter-clockwise.')
    }
  }
  return found
}

function vertexFaults({ vertices, closed }: Chain): string[] {
  if (vertices.length < 2) {
    const kind = closed ? 'A closed chain' : 'An open chain'
    return [`${kind} needs at least 2 vertices; this one has ${vertices.length}.`]
  }
  const found: string[] = []
  vertices.forEach(({ x, y, bulge }, i) => {
    if (Number.isFinite(x) && Number.isFinite(y) && Number.isFinite(bulge)) return
    found.push(`Vertex ${i + 1} is (${x}, ${y}) with bulge ${bulge}; all three must be finite.`)
  })
  if (found.length > 0) return found
  const count = closed ? vertices.length : vertices.length - 1
  for (let i = 0; i < count; i++) {
    const next = (i + 1) % vertices.length
    if (!together(vertices[i], vertices[next])) continue
    found.push(
      next === 0
        ? `The last vertex (${i + 1}) repeats the first; a closed chain closes by itself.`
        : `Vertices ${i + 1} and ${next + 1} lie in one place.`,
    )
  }
  return found
}

function together(a: Vertex | undefined, b: Vertex | undefined): boolean {
  return a !== undefined && b !== undefined && Math.hypot(a.x - b.x, a.y - b.y) <= SAME_POINT
}
