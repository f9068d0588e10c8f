/**
 * Closed contours put together: one taken out of another, or both as one.
 */
import { depthAt, mustBeClosed } from './contains.ts'
import type { Contour } from './contour.ts'
import { piecesOf } from './pieces.ts'
import { distanceToPiece } from './spot.ts'
import {
  backwards,
  cutWhereMet,
  headingOf,
  joined,
  type Loops,
  middleOf,
  type Stretch,
  stretchesOf,
} from './stretches.ts'

/** A stretch whose middle is this near to a contour's line lies on it, mm. */
const ON_LINE = 1e-6

type Side = 'inside' | 'outside' | 'along' | 'against'

/** Where a stretch that crosses nothing lies: in the contour, out of it, or on its line, one way or the other. */
function sideOf(stretch: Stretch, contour: Contour): Side {
  const middle = middleOf(stretch)
  const depth = depthAt(middle, contour)
  if (Math.abs(depth) > ON_LINE) return depth > 0 ? 'inside' : 'outside'
  const heading = headingOf(stretch)
  let nearest = Number.POSITIVE_INFINITY
  let side: Side = 'along'
  for (const piece of piecesOf(contour).list) {
    const reach = distanceToPiece(piece, middle.x, middle.y)
    if (reach >= nearest) continue
    nearest = reach
    const x = piece.isArc ? -(middle.y - piece.cy) * Math.sign(piece.sweep) : piece.ux
    const y = piece.isArc ? (middle.x - piece.cx) * Math.sign(piece.sweep) : piece.uy
    side = heading.x * x + heading.y * y > 0 ? 'along' : 'against'
  }
  return side
}

/**
 * What is left of `from` when all that lies in `what` is taken away: pieces, and holes in them. Both closed and
 * counter-clockwise.
 *
 * @throws for an open chain
 * @example takenOut(rectangle(0, 0, 10, 10), rectangle(4, 4, 6, 12)).outers // one, with a notch
 */
export function takenOut(from: Contour, what: Contour): Loops {
  mustBeClosed(from, 'can be cut into')
  mustBeClosed(what, 'can be taken out')
  const [ours, theirs] = [stretchesOf(from), stretchesOf(what)]
  const kept = cutWhereMet(ours, theirs).filter((one) => ['outside', 'against'].includes(sideOf(one, what)))
  const added = cutWhereMet(theirs, ours).filter((one) => sideOf(one, from) === 'inside')
  return joined([...kept, ...added.map(backwards)])
}

/**
 * Two closed contours as one, where they overlap or touch along a line; apart, both come back.
 *
 * @throws for an open chain
 * @example united(rectangle(0, 0, 10, 10), rectangle(5, 0, 15, 10)).outers // one rectangle
 */
export function united(a: Contour, b: Contour): Loops {
  mustBeClosed(a, 'can be united')
  mustBeClosed(b, 'can be united')
  const [ours, theirs] = [stretchesOf(a), stretchesOf(b)]
  const kept = cutWhereMet(ours, theirs).filter((one) => ['outside', 'along'].includes(sideOf(one, b)))
  const added = cutWhereMet(theirs, ours).filter((one) => sideOf(one, a) === 'outside')
  return joined([...kept, ...added])
}
