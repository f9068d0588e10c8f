/** Walking along a closed line by its length: where to start, which way, and stretches of it. */
import {
  arcBetween,
  type Chain,
  type Contour,
  isStraight,
  type Point,
  reversed,
  type Vertex,
} from '../../geometry/index.ts'

/** Sides that differ by less, mm, are equally long: the first of them counts. */
const AS_LONG = 1e-6

interface Side {
  readonly from: Vertex
  readonly to: Point
  readonly length: number
}

function sidesOf({ vertices, closed }: Chain): Side[] {
  return vertices.flatMap((from, index): Side[] => {
    const to = vertices[index + 1] ?? (closed ? vertices[0] : undefined)
    if (to === undefined) return []
    const chord = Math.hypot(to.x - from.x, to.y - from.y)
    if (chord === 0) return []
    if (isStraight(from.bulge)) return [{ from, to, length: chord }]
    const { radius, sweep } = arcBetween(from, to)
    return [{ from, to, length: radius * Math.abs(sweep) }]
  })
}

/** A closed contour as a chain; a circle as two half turns from its lowest point. */
export function asChain(contour: Contour): Chain {
  if (contour.shape === 'chain') return contour
  const { centre, radius } = contour
  const vertices = [
    { x: centre.x, y: centre.y - radius, bulge: 1 },
    { x: centre.x, y: centre.y + radius, bulge: 1 },
  ]
  return { shape: 'chain', closed: true, vertices }
}

/** The place a share of the way along a side, and the bulge of what comes before and after. */
function splitAt({ from, to }: Side, share: number): { readonly before: number; readonly at: Vertex } {
  if (isStraight(from.bulge)) {
    const at = { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share, bulge: 0 }
    return { before: 0, at }
  }
  const { centre, radius, startAngle, sweep } = arcBetween(from, to)
  const angle = startAngle + sweep * share
  const at = {
    x: centre.x + radius * Math.cos(angle),
    y: centre.y + radius * Math.sin(angle),
    bulge: Math.tan((sweep * (1 - share)) / 4),
  }
  return { before: Math.tan((sweep * share) / 4), at }
}

/**
 * The same closed chain, begun in the middle of its longest straight side, where a start that shows does least harm,
 * and run clockwise where asked. A chain without a straight side begins where it did; a circle is left as it is.
 *
 * @example begun(rectangle(0, 0, 100, 50), true).vertices[0] // { x: 50, y: 0, bulge: 0 }
 */
export function begun(contour: Contour, clockwise: boolean): Contour {
  if (contour.shape === 'circle') return contour
  const sides = sidesOf(contour)
  let longest: Side | undefined
  for (const side of sides) {
    if (isStraight(side.from.bulge) && (longest === undefined || side.length > longest.length + AS_LONG))
      longest = side
  }
  const index = longest === undefined ? -1 : contour.vertices.indexOf(longest.from)
  const { vertices } = contour
  const turned =
    longest === undefined
      ? contour
      : {
          ...contour,
          vertices: [splitAt(longest, 0.5).at, ...vertices.slice(index + 1), ...vertices.slice(0, index + 1)],
        }
  return clockwise ? reversed(turned) : turned
}

/** Millimetres along a chain. */
export const lengthOf = (chain: Chain): number => sidesOf(chain).reduce((sum, side) => sum + side.length, 0)

/**
 * The stretch of a closed chain from one length to another, as an open chain.
 *
 * @param from mm along it from its first vertex
 * @param to mm, beyond `from`, at most one time round from it
 */
export function stretchOf(chain: Chain, from: number, to: number): Chain {
  const sides = sidesOf(chain)
  const around = sides.reduce((sum, side) => sum + side.length, 0)
  const vertices: Vertex[] = []
  let start = 0
  // Twice round, for stretches that run over the first vertex.
  for (const side of [...sides, ...sides]) {
    const end = start + side.length
    const first = Math.max(start, from)
    const last = Math.min(end, to)
    if (last - first > 1e-9) {
      const share = (first - start) / side.length
      const begin = share > 0 ? splitAt(side, share).at : side.from
      const rest = { from: begin, to: side.to, length: end - first }
      const cut = last < end - 1e-9 ? splitAt(rest, (last - first) / rest.length) : undefined
      vertices.push({ x: begin.x, y: begin.y, bulge: cut === undefined ? begin.bulge : cut.before })
      if (last >= to - 1e-9) {
        const stop = cut?.at ?? side.to
        vertices.push({ x: stop.x, y: stop.y, bulge: 0 })
        break
      }
    }
    start = end
    if (start > around * 2) break
  }
  return { shape: 'chain', closed: false, vertices }
}

/** Lengths along a chain at which its vertices lie, the first at 0. */
export function cornersOf(chain: Chain): number[] {
  let at = 0
  return sidesOf(chain).map(({ length }) => {
    const here = at
    at += length
    return here
  })
}
