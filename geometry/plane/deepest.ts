/**
 * The place inside a contour farthest from its line: where a label fits, and the middle of any shape however
 * hollow.
 */
import { notes } from '../quantity/notes.ts'
import { depthAt, goesRound, mustBeClosed } from './contains.ts'
import type { Chain, Contour, Point } from './contour.ts'
import { distanceToPieces } from './distance.ts'
import { centroid } from './measure.ts'
import { type Pieces, piecesOf } from './pieces.ts'

/** The depth found is at least this share of the greatest. */
const SHARE = 0.9

const known = notes<Chain, Point>()

/**
 * A place inside the contour whose depth, the distance to the line, is at least nine tenths of the greatest.
 * Throws for an open chain and for a contour that encloses nothing.
 *
 * Source: the quadtree search for a "pole of inaccessibility" (Garcia-Castellanos and Lombardo 2007, in the
 * form made common by map labelling; from memory): a square whose middle lies d deep holds nothing deeper than
 * d plus half its diagonal.
 *
 * @example deepest(rectangle(0, 0, 10, 4)) // (5, 2)
 */
export function deepest(contour: Contour): Point {
  mustBeClosed(contour, 'has a deepest place')
  if (contour.shape === 'circle') return contour.centre
  let place = known.get(contour)
  if (place === undefined) {
    place = searchDeepest(contour)
    known.set(contour, place)
  }
  return place
}

interface Square {
  readonly x: number
  readonly y: number
  readonly half: number
  readonly depth: number
}

function searchDeepest(chain: Chain): Point {
  const pieces = piecesOf(chain)
  const { minX, minY, maxX, maxY } = pieces
  const middle = centroid(chain)
  let best: Square = { x: middle.x, y: middle.y, half: 0, depth: depthAt(middle, chain) }
  // Nothing is deeper than half the shorter side of the box.
  const limit = Math.min(maxX - minX, maxY - minY) / 2
  const size = 2 * limit
  if (best.depth >= SHARE * limit) return middle

  const queue: Square[] = []
  for (let x = minX; x < maxX; x += size) {
    for (let y = minY; y < maxY; y += size) queue.push(square(pieces, x + limit, y + limit, limit))
  }
  // Level by level: each holds squares of one size, so none waits while smaller ones are looked at.
  let level = queue
  while (level.length > 0) {
    for (const one of level) if (one.depth > best.depth) best = one
    if (best.depth >= SHARE * limit) break
    const next: Square[] = []
    for (const { x, y, half, depth } of level) {
      if (depth + half * Math.SQRT2 <= best.depth / SHARE || half < limit * 1e-6) continue
      const quarter = half / 2
      for (const dx of [-quarter, quarter]) {
        for (const dy of [-quarter, quarter]) next.push(square(pieces, x + dx, y + dy, quarter))
      }
    }
    level = next
  }
  return { x: best.x, y: best.y }
}

function square(pieces: Pieces, x: number, y: number, half: number): Square {
  const reach = distanceToPieces(pieces, x, y)
  return { x, y, half, depth: goesRound(pieces, x, y) ? reach : 0 - reach }
}
