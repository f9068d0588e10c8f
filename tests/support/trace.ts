/**
 * How far a line that a reader found strays from the one that was wanted, however the file cut it to pieces: an arc may
 * be one arc, three, or a row of curves. Closed lines may begin anywhere and run either way.
 */
import type { Point } from '../../geometry/index.ts'
import { type Drawn, isCircle, type Segment } from './segments.ts'

/** A piece of a line as read: its ends, and places on it between them, in order. */
export interface Piece {
  readonly from: Point
  readonly inner: readonly Point[]
  readonly to: Point
}

const apart = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y)

const turnedRound = (pieces: readonly Piece[]): Piece[] =>
  [...pieces].reverse().map(({ from, inner, to }) => ({ from: to, inner: [...inner].reverse(), to: from }))

/** The largest distance between line and pieces, mm; infinite where one leaves off before the other. */
export function strayed(wanted: Drawn, pieces: readonly Piece[]): number {
  if (pieces.length === 0) return Number.POSITIVE_INFINITY
  if (isCircle(wanted)) return aroundCircle(wanted, pieces)
  const start = wanted[0]?.from
  const end = wanted.at(-1)?.to
  if (start === undefined || end === undefined) return Number.POSITIVE_INFINITY
  const closed = apart(start, end) < 1e-9
  return Math.min(
    ...[pieces, turnedRound(pieces)].map((way) => {
      if (!closed) return along(wanted, way)
      const begins = way.map((piece) => apart(piece.from, start))
      const first = begins.indexOf(Math.min(...begins))
      return along(wanted, [...way.slice(first), ...way.slice(0, first)])
    }),
  )
}

/** Near enough to be the end of a segment of a length, mm; what is wrong by less is measured, not refused. */
const endOf = (chord: number) => Math.min(0.01, Math.max(0.0003, chord / 8))

function along(wanted: readonly Segment[], pieces: readonly Piece[]): number {
  let worst = 0
  let index = 0
  let at: Point | undefined
  for (const segment of wanted) {
    const off = fromSegment(segment)
    const end = endOf(apart(segment.from, segment.to))
    worst = Math.max(worst, apart(at ?? pieces[0]?.from ?? segment.from, segment.from))
    do {
      const piece = pieces[index++]
      if (piece === undefined) return Number.POSITIVE_INFINITY
      if (at !== undefined) worst = Math.max(worst, apart(at, piece.from))
      for (const place of [...piece.inner, piece.to]) worst = Math.max(worst, off(place))
      at = piece.to
    } while (apart(at, segment.to) > end && worst < 1)
    worst = Math.max(worst, apart(at, segment.to))
  }
  return index === pieces.length ? worst : Number.POSITIVE_INFINITY
}

/** Distance from a straight line or an arc given by its ends and its middle. */
function fromSegment(segment: Segment): (place: Point) => number {
  const off = fromWholeCurve(segment)
  // A segment shorter than a file tells apart has no direction to speak of.
  return (place) => Math.min(off(place), apart(place, segment.from), apart(place, segment.to))
}

function fromWholeCurve({ from, middle, to }: Segment): (place: Point) => number {
  const chord = apart(from, to)
  if (chord === 0) return () => Number.POSITIVE_INFINITY
  const [ux, uy] = [(to.x - from.x) / chord, (to.y - from.y) / chord]
  const centre = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }
  const rise = (middle.x - centre.x) * uy - (middle.y - centre.y) * ux
  const local = (place: Point) => {
    const [x, y] = [place.x - centre.x, place.y - centre.y]
    return { u: x * ux + y * uy, v: x * uy - y * ux }
  }
  if (Math.abs(rise) < 1e-9) return (place) => Math.abs(local(place).v)
  // The centre of a flat arc is far away: its distance is told from the chord instead.
  const radius = (chord ** 2 / 4 + rise ** 2) / (2 * Math.abs(rise))
  if (Math.abs(rise) < chord / 100)
    return (place) => {
      const { u, v } = local(place)
      if (Math.abs(u) > radius) return Number.POSITIVE_INFINITY
      return Math.abs(
        v - Math.sign(rise) * (Math.abs(rise) - u ** 2 / (radius + Math.sqrt(radius ** 2 - u ** 2))),
      )
    }
  const middleAt = Math.sign(rise) * (Math.abs(rise) - radius)
  return (place) => {
    const { u, v } = local(place)
    return Math.abs(Math.hypot(u, v - middleAt) - radius)
  }
}

function aroundCircle(circle: { centre: Point; radius: number }, pieces: readonly Piece[]): number {
  let turned = 0
  let worst = 0
  let before: Point | undefined
  for (const { from, inner, to } of pieces) {
    if (before !== undefined) worst = Math.max(worst, apart(before, from))
    let last = from
    for (const place of [from, ...inner, to]) {
      worst = Math.max(worst, Math.abs(apart(place, circle.centre) - circle.radius))
      turned += angleBetween(last, place, circle.centre)
      last = place
    }
    before = to
  }
  return Math.abs(Math.abs(turned) - 2 * Math.PI) < 1e-3 ? worst : Number.POSITIVE_INFINITY
}

function angleBetween(a: Point, b: Point, centre: Point): number {
  const [ax, ay, bx, by] = [a.x - centre.x, a.y - centre.y, b.x - centre.x, b.y - centre.y]
  return Math.atan2(ax * by - ay * bx, ax * bx + ay * by)
}
