/**
 * How far the strings bend the neck: bow, rise of the nut, change of the action, and where it is weakest.
 *
 * Instrument frame: x from the nut towards the tail, z up; millimetres, newtons, N/mm², radians. It is an estimate.
 * A cut through neck and strings shows the moment: pull times the height of the strings over the neutral axis. Outside
 * the box the neck is a cantilever on the neck-end wall. Inside, either a beam that rests on both end walls and is
 * bent by that moment at its end (uniform and pulled nowhere else: `θ = M s / 3 E I`), or, on a block, held fast at the
 * wall. The strings follow the neck: as the nut rises, so does their line, which the round after round counts in.
 * Walls, lid and glue are taken as rigid, shear and creep left out (see `CREEP` in `woods.ts`), corners of notches as
 * if they did not concentrate stress. Source: beam with end moment and cantilever with end couple, Roark's Formulas for
 * Stress and Strain, ch. 8; the moment the bow adds as in J. M. Gere and B. J. Goodno, "Mechanics of Materials", ch. 11.
 */
import { positive } from '../quantity/demand.ts'
import { bendFromRoot } from './deflection.ts'
import { type Strain, strainInto } from './sections.ts'
import { type Gap, type NeckPiece, pieceAt, riseAt, type Span, sectionAt, spanOf } from './span.ts'

interface Place {
  readonly x: number
  readonly z: number
}

export interface NeckLoad {
  /** All strings together. */
  readonly pull: number
  /** The middle of the strings at nut and saddle. */
  readonly nut: Place
  readonly saddle: Place
  /** The middle of the posts and the height at which strings reach them; without it the head is not looked at. */
  readonly posts?: Place
  /** Where the strings are held on the neck's own tail; `null` where the box holds them. */
  readonly anchor: Place | null
}

/** What holds the neck. `front` and `back` are the outer faces of the end walls, or where the neck bears on them. */
export type NeckHold =
  | { readonly by: 'two walls'; readonly front: number; readonly back: number }
  | { readonly by: 'block'; readonly front: number }

export interface WeakPlace extends Strain {
  readonly x: number
}

export interface NeckBow {
  readonly ok: true
  /** Half way between nut and neck-end wall, under the straight line between the two: positive is hollow (relief). */
  readonly bow: number
  readonly nutRise: number
  readonly octaveRise: number
  /** By how much the strings stand higher over the octave than they did without pull. */
  readonly actionChange: number
  /** Radians by which the neck turns at the neck-end wall. */
  readonly turn: number
  readonly weakest: WeakPlace
  /** The bent neck, nut to back wall; drawn when asked for. */
  readonly curve: () => readonly { readonly x: number; readonly rise: number }[]
}

/**
 * `no wood left`: a piece between nut and back wall has no section. `gives way`: the pull is so great for this neck that
 * the bow feeds itself (buckling); no number would mean anything.
 */
export type NeckReading =
  | NeckBow
  | ({ readonly ok: false } & (({ readonly why: 'no wood left' } & Gap) | { readonly why: 'gives way' }))

const MOST_ROUNDS = 200
/** Millimetres of the nut's rise between rounds. */
const STILL = 1e-7

/**
 * Bends a neck whose pieces follow each other from head to tail. `octave` is the x of the octave fret. With no pull
 * nothing bends. Throws where pieces do not reach or places are out of order.
 * Example: maple 40 × 20 mm, 400 mm long and held fast, 200 N 12 mm over its axis, the saddle far off: the nut rises
 * 0.595 mm.
 */
export function bendNeck(
  pieces: readonly NeckPiece[],
  load: NeckLoad,
  hold: NeckHold,
  octave: number,
): NeckReading {
  const { pull, nut, saddle } = load
  const { front } = hold
  if (!(pull >= 0 && pull < Number.POSITIVE_INFINITY))
    throw new RangeError(`a pull must be 0 or more, not ${pull}`)
  positive(saddle.x - nut.x, 'the length from nut to saddle')
  const middle = (nut.x + front) / 2
  const outside = front > nut.x ? spanOf(pieces, front, nut.x, [middle, octave]) : null
  const inside = hold.by === 'two walls' ? spanOf(pieces, front, hold.back, [octave]) : null
  for (const one of [outside, inside])
    if (one && !('lengths' in one)) return { ok: false, why: 'no wood left', ...one }
  const leaves = inside ? leavesBackWall(load, inside as Span) : null
  const bent = bend(outside as Span | null, inside as Span | null, load, front, leaves)
  if (!bent) return { ok: false, why: 'gives way' }
  const { nutRise, turn, atOutside, atInside } = bent
  const rise = (x: number) => {
    if (outside && x <= front) return riseAt(outside as Span, atOutside.rise, x)
    return inside ? riseAt(inside as Span, atInside.rise, x) : 0
  }
  const octaveRise = rise(octave)
  return {
    ok: true,
    bow: outside ? nutRise / 2 - rise(middle) : 0,
    nutRise,
    octaveRise,
    actionChange: nutRise * leftTo(load, octave) - octaveRise,
    turn,
    weakest: weakestOf(pieces, load, front, leaves, [
      ...(outside ? [{ span: outside as Span, moment: atOutside.moment }] : []),
      ...(inside ? [{ span: inside as Span, moment: atInside.moment }] : []),
    ]),
    curve: () => [
      ...curveOf(outside as Span | null, atOutside.rise).reverse(),
      ...curveOf(inside as Span | null, atInside.rise).slice(outside ? 1 : 0),
    ],
  }
}

/** Height of the strings' straight line at x. */
function lineAt({ nut, saddle }: NeckLoad, x: number): number {
  return nut.z + ((saddle.z - nut.z) * (x - nut.x)) / (saddle.x - nut.x)
}

/** How much of the nut's rise the strings show at x: all at the nut, nothing at the saddle. */
const leftTo = ({ nut, saddle }: NeckLoad, x: number) => 1 - (x - nut.x) / (saddle.x - nut.x)

/**
 * Where the pull leaves the back wall: on the line from saddle to anchor, or, where the box holds the strings, on the neck's
 * own axis. Strings held before the back wall pull at their own height, and so do those whose saddle stands behind it.
 */
function leavesBackWall({ saddle, anchor }: NeckLoad, inside: Span): Place {
  const x = inside.x.at(-1)!
  if (!anchor) return { x, z: inside.axis.at(-1)! }
  if (anchor.x <= x || x <= saddle.x) return { x, z: anchor.z }
  return { x, z: saddle.z + ((anchor.z - saddle.z) * (x - saddle.x)) / (anchor.x - saddle.x) }
}

interface Bent {
  readonly rise: number[]
  readonly moment: number[]
  readonly curvature: number[]
}

function straight(span: Span | null): Bent {
  const zeros = () => (span?.x ?? []).map(() => 0)
  return { rise: zeros(), moment: zeros(), curvature: zeros() }
}

/** Rounds until the nut is still. `null` where it never is. */
function bend(
  outside: Span | null,
  inside: Span | null,
  load: NeckLoad,
  front: number,
  leaves: Place | null,
) {
  const { pull, nut, saddle } = load
  const atOutside = straight(outside)
  const atInside = straight(inside)
  let nutRise = 0
  let turn = 0
  for (let round = 0; round < MOST_ROUNDS; round++) {
    if (inside && leaves) {
      const atFront = lineAt(load, front) + nutRise * leftTo(load, front)
      bendUnder(inside, atInside, pull, { x: front, z: atFront }, leaves)
      bendFromRoot(inside, atInside.curvature, 0, atInside.rise)
      const slope = -atInside.rise.at(-1)! / (leaves.x - front)
      turnAbout(inside, atInside.rise, slope)
      turn = -slope
    }
    let now = 0
    if (outside) {
      bendUnder(outside, atOutside, pull, { x: nut.x, z: nut.z + nutRise }, saddle)
      bendFromRoot(outside, atOutside.curvature, turn, atOutside.rise)
      now = atOutside.rise.at(-1)!
    }
    const moved = Math.abs(now - nutRise)
    nutRise = now
    if (!(Math.abs(nutRise) < 1e6)) return null
    if (moved < STILL && round > 0) return { nutRise, turn, atOutside, atInside }
  }
  return null
}

/** Moment and curvature at every station under a pull along the straight line through two places. */
function bendUnder(span: Span, bent: Bent, pull: number, one: Place, other: Place): void {
  const slope = (other.z - one.z) / (other.x - one.x)
  for (let index = 0; index < span.x.length; index++) {
    const height = one.z + slope * (span.x[index]! - one.x)
    const moment = pull * (height - span.axis[index]! - bent.rise[index]!)
    bent.moment[index] = moment
    bent.curvature[index] = moment / span.bend[index]!
  }
}

/** Turns a bent span about its root, until it lies on both walls. */
function turnAbout({ x }: Span, rise: number[], slope: number): void {
  for (let index = 0; index < x.length; index++) rise[index]! += slope * Math.abs(x[index]! - x[0]!)
}

function curveOf(span: Span | null, rise: number[]): { x: number; rise: number }[] {
  if (!span) return []
  const curve = [{ x: span.x[0]!, rise: rise[0]! }]
  for (let index = 2; index < span.x.length; index += 3) curve.push({ x: span.x[index]!, rise: rise[index]! })
  return curve
}

/** The most strained place of all pieces: ends of pieces and of spans, head and tail among them. */
function weakestOf(
  pieces: readonly NeckPiece[],
  load: NeckLoad,
  front: number,
  leaves: Place | null,
  spans: readonly { readonly span: Span; readonly moment: number[] }[],
): WeakPlace {
  const { pull, nut, posts, anchor } = load
  const strain = { stress: 0, share: 0, height: 0 }
  let worst: WeakPlace = { x: front, stress: 0, share: 0, height: 0 }
  const look = (piece: NeckPiece, x: number, momentAt: (axis: number) => number) => {
    const section = sectionAt(piece, x)
    if (!section) return
    strainInto(section, pull, momentAt(section.axis), strain)
    if (strain.share > worst.share) worst = { x, ...strain }
  }
  for (const { span, moment } of spans) {
    let piece: NeckPiece | undefined
    for (let index = 0; index < span.lengths.length; index++) {
      piece = pieceAt(pieces, span.x[3 * index + 1]!, piece)
      for (let place = 0; place < 3; place += 2) {
        const x = span.x[3 * index + place]!
        const section = sectionAt(piece, x)
        if (!section) continue
        strainInto(section, pull, moment[3 * index + place]!, strain)
        if (strain.share > worst.share) worst = { x, ...strain }
      }
    }
  }
  const alongLine = (from: Place, to: Place) => {
    for (const piece of pieces) {
      const [x0, x1] = [Math.max(piece.x0, from.x), Math.min(piece.x1, to.x)]
      if (x1 <= x0) continue
      for (const x of [x0, x1]) {
        const z = from.z + ((to.z - from.z) * (x - from.x)) / (to.x - from.x)
        look(piece, x, (axis) => pull * (z - axis))
      }
    }
  }
  if (posts) alongLine(posts, nut)
  if (anchor && leaves) alongLine(leaves, anchor)
  return worst
}
