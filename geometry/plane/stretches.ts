/**
 * Lines and arcs cut where they meet and joined again into loops: what offsetting and combining have in common.
 */
import type { Chain, Contour, Point, Vertex } from './contour.ts'
import { crossings } from './crossings.ts'
import { area } from './measure.ts'
import { type Piece, piecesOf } from './pieces.ts'
import { boxGapSquared, distanceToPiece } from './spot.ts'

/** A directed line or arc from (x1, y1) to (x2, y2). */
export interface Stretch {
  readonly x1: number
  readonly y1: number
  readonly x2: number
  readonly y2: number
  readonly bulge: number
}

/** Ends within this of each other are joined, mm: what two crossings worked out from either side may differ by. */
export const JOIN = 1e-5

/** Shorter than this, mm, a stretch is left out: `JOIN` bridges it. */
const SHORTEST = 1e-7

/** An end this near to another stretch lies on it, mm. */
const TOUCH = 1e-7

/** A dead end longer than this, mm, is no rounding. */
const MOST_LOST = 0.01

/** A loop that encloses less, mm², is a line there and back. */
const NO_AREA = 1e-6

const pieceOf = ({ x1, y1, x2, y2, bulge }: Stretch): Piece | undefined => {
  if (x1 === x2 && y1 === y2) return undefined
  const vertices = [
    { x: x1, y: y1, bulge },
    { x: x2, y: y2, bulge: 0 },
  ]
  return piecesOf({ shape: 'chain', closed: false, vertices }).list[0]
}

/** The directed stretches of a contour; a circle is two half turns. */
export function stretchesOf(contour: Contour): Stretch[] {
  const { vertices, closed } = contour.shape === 'circle' ? halves(contour) : contour
  return vertices.flatMap((from, index): Stretch[] => {
    const to = vertices[index + 1] ?? (closed ? vertices[0] : undefined)
    return to === undefined ? [] : [{ x1: from.x, y1: from.y, x2: to.x, y2: to.y, bulge: from.bulge }]
  })
}

function halves({ centre, radius }: { readonly centre: Point; readonly radius: number }): Chain {
  const vertices = [
    { x: centre.x - radius, y: centre.y, bulge: 1 },
    { x: centre.x + radius, y: centre.y, bulge: 1 },
  ]
  return { shape: 'chain', closed: true, vertices }
}

/** The same stretch run the other way. */
export const backwards = ({ x1, y1, x2, y2, bulge }: Stretch): Stretch => ({
  x1: x2,
  y1: y2,
  x2: x1,
  y2: y1,
  bulge: 0 - bulge,
})

/** The place halfway along a stretch. */
export function middleOf({ x1, y1, x2, y2, bulge }: Stretch): Point {
  // The middle of an arc lies bulge times half the chord to the right of the chord's middle.
  const off = bulge / 2
  return { x: (x1 + x2) / 2 + off * (y2 - y1), y: (y1 + y2) / 2 - off * (x2 - x1) }
}

/** The direction of travel at the middle of a stretch, which is that of its chord. */
export function headingOf({ x1, y1, x2, y2 }: Stretch): Point {
  const chord = Math.hypot(x2 - x1, y2 - y1)
  return { x: (x2 - x1) / chord, y: (y2 - y1) / chord }
}

/** How far along a piece a place on it lies, as a share of the piece. */
function shareAlong(piece: Piece, x: number, y: number): number {
  if (!piece.isArc) return ((x - piece.x1) * piece.ux + (y - piece.y1) * piece.uy) / piece.length
  const turned = Math.atan2(y - piece.cy, x - piece.cx) - Math.atan2(piece.y1 - piece.cy, piece.x1 - piece.cx)
  const full = 2 * Math.PI
  const way = piece.sweep > 0 ? turned : -turned
  const share = (((way % full) + full) % full) / Math.abs(piece.sweep)
  // A hair before the start reads as nearly a whole turn.
  return share > (full - 1e-9) / Math.abs(piece.sweep) ? 0 : share
}

/** A stretch in parts, cut at the shares given. */
function cutAt(stretch: Stretch, piece: Piece, places: readonly (Point & { share: number })[]): Stretch[] {
  const sorted = [...places].sort((a, b) => a.share - b.share)
  const parts: Stretch[] = []
  let from: Point & { share: number } = { x: stretch.x1, y: stretch.y1, share: 0 }
  for (const to of [...sorted, { x: stretch.x2, y: stretch.y2, share: 1 }]) {
    if ((to.share - from.share) * piece.length < SHORTEST && to.share < 1) continue
    if ((to.share - from.share) * piece.length >= SHORTEST || parts.length === 0) {
      const bulge = piece.isArc ? Math.tan((piece.sweep * (to.share - from.share)) / 4) : 0
      parts.push({ x1: from.x, y1: from.y, x2: to.x, y2: to.y, bulge })
    }
    from = to
  }
  return parts
}

/**
 * Every stretch of `those` cut wherever one of `by` crosses or touches it; `by` may be the same list. Stretches that
 * lie on one another are cut at each other's ends.
 */
export function cutWhereMet(those: readonly Stretch[], by: readonly Stretch[]): Stretch[] {
  const others = by.map(pieceOf)
  const found: number[] = []
  return those.flatMap((stretch) => {
    const piece = pieceOf(stretch)
    if (piece === undefined) return []
    const places: (Point & { share: number })[] = []
    const add = (x: number, y: number) => {
      const share = shareAlong(piece, x, y)
      if (share > 0 && share < 1) places.push({ x, y, share })
    }
    others.forEach((other, index) => {
      if (other === undefined || by[index] === stretch || boxGapSquared(piece, other) > TOUCH * TOUCH) return
      const count = crossings(piece, other, found)
      for (let i = 0; i < count; i++) add(found[2 * i] as number, found[2 * i + 1] as number)
      if (distanceToPiece(piece, other.x1, other.y1) < TOUCH) add(other.x1, other.y1)
      if (distanceToPiece(piece, other.x2, other.y2) < TOUCH) add(other.x2, other.y2)
    })
    return cutAt(stretch, piece, places)
  })
}

const near = (ax: number, ay: number, bx: number, by: number): boolean =>
  Math.abs(ax - bx) < JOIN && Math.abs(ay - by) < JOIN

function isRepeat(a: Stretch, b: Stretch): boolean {
  return near(a.x1, a.y1, b.x1, b.y1) && near(a.x2, a.y2, b.x2, b.y2) && Math.abs(a.bulge - b.bulge) < 1e-6
}

/** The turn from the end of one stretch into the start of the next, radians to the left. */
function turnInto(a: Stretch, b: Stretch): number {
  const out = Math.atan2(a.y2 - a.y1, a.x2 - a.x1) + 2 * Math.atan(a.bulge)
  const into = Math.atan2(b.y2 - b.y1, b.x2 - b.x1) - 2 * Math.atan(b.bulge)
  const turned = into - out
  return Math.atan2(Math.sin(turned), Math.cos(turned))
}

/** Closed loops run as their stretches run: counter-clockwise round what is inside, clockwise round a hole in it. */
export interface Loops {
  readonly outers: readonly Chain[]
  /** Turned counter-clockwise like every closed contour. */
  readonly holes: readonly Chain[]
  /** Whether lines were left over that join into no loop, as of a contour that crosses itself. */
  readonly torn: boolean
}

/**
 * Stretches joined end to end into loops. Where several go on from one place the sharpest turn to the left is taken,
 * so that loops which touch come apart. Repeated stretches and loops without area are left out.
 */
export function joined(stretches: readonly Stretch[]): Loops {
  const single: Stretch[] = []
  for (const one of stretches) if (!single.some((other) => isRepeat(one, other))) single.push(one)
  const { left, longest } = withoutDeadEnds(single)
  const outers: Chain[] = []
  const holes: Chain[] = []
  let lost = longest
  while (left.length > 0) {
    const loop = takeLoop(left)
    if (loop === undefined) continue
    const last = loop[loop.length - 1] as Stretch
    const first = loop[0] as Stretch
    if (!near(last.x2, last.y2, first.x1, first.y1)) {
      lost = Math.max(lost, ...loop.map(chordOf))
      continue
    }
    const chain = chainOf(loop)
    if (chain === undefined) continue
    const size = area(chain)
    if (size > NO_AREA) outers.push(chain)
    else if (size < -NO_AREA) holes.push(reversedLoop(chain))
  }
  return { outers, holes, torn: lost > MOST_LOST }
}

/**
 * Without what leads nowhere: ends a little longer than `JOIN` that a flat corner leaves beyond the place where its
 * parallels cross.
 */
function withoutDeadEnds(stretches: Stretch[]): { left: Stretch[]; longest: number } {
  let left = stretches
  let longest = 0
  for (;;) {
    const linked = left.filter(
      (one) =>
        left.some((other) => near(other.x1, other.y1, one.x2, one.y2)) &&
        left.some((other) => near(other.x2, other.y2, one.x1, one.y1)),
    )
    const gone = left.filter((one) => !linked.includes(one)).map(chordOf)
    if (gone.length === 0) return { left, longest }
    longest = Math.max(longest, ...gone)
    left = linked
  }
}

const chordOf = ({ x1, y1, x2, y2 }: Stretch): number => Math.hypot(x2 - x1, y2 - y1)

/** Takes stretches that follow one another off the list, until they come back or cannot go on. */
function takeLoop(left: Stretch[]): Stretch[] | undefined {
  const first = left.shift()
  if (first === undefined) return undefined
  const loop = [first]
  let end = first
  while (!near(end.x2, end.y2, first.x1, first.y1) || loop.length === 1) {
    if (loop.length === 1 && near(end.x2, end.y2, first.x1, first.y1)) break
    let best = -1
    let turn = Number.NEGATIVE_INFINITY
    left.forEach((one, index) => {
      if (!near(one.x1, one.y1, end.x2, end.y2)) return
      const turned = turnInto(end, one)
      // Straight back is no way on, unless there is none other.
      const worth = Math.abs(turned) > Math.PI - 1e-6 ? -10 : turned
      if (worth > turn) {
        turn = worth
        best = index
      }
    })
    if (best < 0) break
    end = left.splice(best, 1)[0] as Stretch
    loop.push(end)
  }
  return loop
}

/** A loop as a chain: neighbours that run on along one line or circle become one, and no corner is repeated. */
function chainOf(loop: readonly Stretch[]): Chain | undefined {
  const vertices: Vertex[] = []
  for (const one of loop) {
    if (Math.hypot(one.x2 - one.x1, one.y2 - one.y1) < JOIN && Math.abs(one.bulge) < 1) continue
    vertices.push({ x: one.x1, y: one.y1, bulge: one.bulge })
  }
  return vertices.length < 2 ? undefined : { shape: 'chain', closed: true, vertices }
}

function reversedLoop({ vertices }: Chain): Chain {
  const back: Vertex[] = vertices.map((_, index) => {
    const here = vertices[(vertices.length - index) % vertices.length] as Vertex
    const before = vertices[(vertices.length - 1 - index) % vertices.length] as Vertex
    return { x: here.x, y: here.y, bulge: 0 - before.bulge }
  })
  return { shape: 'chain', closed: true, vertices: back }
}
