/** The neck as a beam: its pieces, and a stretch of them cut into intervals that `deflection.ts` can integrate. */
import { inOrder } from '../quantity/in-order.ts'
import { type Part, type Section, sectionOf } from './sections.ts'

/** A piece of the neck between two cuts. Between its ends the section runs straight from one to the other. */
export interface NeckPiece {
  readonly x0: number
  readonly x1: number
  /** `null` where nothing is left of the wood. */
  readonly start: Section | null
  readonly end: Section | null
}

/**
 * A piece with these parts, at its end too unless others are given; as many of them and in the same order, so that
 * each part can run from one to the other. Example: `pieceOf(0, 300, [plank(38, -19, 0, standing(maple))])`.
 */
export function pieceOf(
  x0: number,
  x1: number,
  parts: readonly Part[],
  atEnd: readonly Part[] = parts,
): NeckPiece {
  if (!(x1 > x0)) throw new RangeError(`a piece of a neck must run forward, not from ${x0} to ${x1}`)
  if (atEnd.length !== parts.length) {
    throw new RangeError(
      `a piece of a neck has ${parts.length} parts at one end and ${atEnd.length} at the other`,
    )
  }
  const start = sectionOf(parts)
  return { x0, x1, start, end: atEnd === parts ? start : sectionOf(atEnd) }
}

/** The section of a piece at x; every part runs straight between its two ends. */
export function sectionAt(piece: NeckPiece, x: number): Section | null {
  const { start, end, x0, x1 } = piece
  if (!start || !end || start === end || x <= x0) return start && end ? start : null
  if (x >= x1) return end
  const t = (x - x0) / (x1 - x0)
  const mixed = start.parts.map((from, index): Part => {
    const to = end.parts[index]!
    return {
      ...from,
      area: mix(from.area, to.area, t),
      centre: mix(from.centre, to.centre, t),
      bottom: mix(from.bottom, to.bottom, t),
      top: mix(from.top, to.top, t),
      inertia: mix(from.inertia, to.inertia, t),
    }
  })
  return sectionOf(mixed)
}

const mix = (from: number, to: number, t: number) => from + t * (to - from)

/** A stretch of neck from a root outwards; three stations to an interval, as `deflection.ts` wants them. */
export interface Span {
  readonly lengths: number[]
  readonly x: number[]
  readonly bend: number[]
  readonly axis: number[]
}

/** Where there is no wood. */
export interface Gap {
  readonly x0: number
  readonly x1: number
}

/** Fine enough for the moment that the bow itself adds; the bow alone would need no more than the pieces. */
const INTERVALS = 10

/**
 * Cuts the pieces from `root` to `far`, either way along x, at every piece's end and at `stops`. Gives the gap instead
 * where a piece on the way has nothing left. Throws where the pieces do not reach.
 */
export function spanOf(
  pieces: readonly NeckPiece[],
  root: number,
  far: number,
  stops: readonly number[],
): Span | Gap {
  const [low, high] = root < far ? [root, far] : [far, root]
  const step = (high - low) / INTERVALS
  const xs = [low, high]
  for (const piece of pieces) {
    if (piece.x1 <= low || piece.x0 >= high) continue
    if (!piece.start || !piece.end) return { x0: piece.x0, x1: piece.x1 }
    xs.push(Math.max(low, piece.x0), Math.min(high, piece.x1))
  }
  for (const stop of stops) if (stop > low && stop < high) xs.push(stop)
  for (let index = 1; index < INTERVALS; index++) xs.push(low + index * step)
  inOrder(xs)
  if (far < root) xs.reverse()
  const kept = xs.filter((x, index) => index === 0 || Math.abs(x - xs[index - 1]!) > HAIR)
  const intervals = kept.length - 1
  const lengths = new Array<number>(intervals).fill(0)
  const x = new Array<number>(3 * intervals).fill(0)
  const bend = new Array<number>(3 * intervals).fill(0)
  const axis = new Array<number>(3 * intervals).fill(0)
  let piece: NeckPiece | undefined
  for (let index = 0; index < intervals; index++) {
    const from = kept[index]!
    const to = kept[index + 1]!
    const middle = (from + to) / 2
    piece = pieceAt(pieces, middle, piece)
    lengths[index] = Math.abs(to - from)
    for (let place = 0; place < 3; place++) {
      const at = place === 0 ? from : place === 1 ? middle : to
      const section = sectionAt(piece, at)
      if (!section) return { x0: piece.x0, x1: piece.x1 }
      x[3 * index + place] = at
      bend[3 * index + place] = section.bend
      axis[3 * index + place] = section.axis
    }
  }
  return { lengths, x, bend, axis }
}

/** The piece that holds x; `likely` is looked at first. Throws where none does. */
export function pieceAt(pieces: readonly NeckPiece[], x: number, likely?: NeckPiece): NeckPiece {
  if (likely && likely.x0 <= x && x <= likely.x1) return likely
  for (const piece of pieces) if (piece.x0 <= x && x <= piece.x1) return piece
  throw new RangeError(`the neck has no piece at ${x}`)
}

/** Millimetres: nearer together two cuts are one. */
const HAIR = 1e-6

/** Height at x of a bent span: its `rise` at the station nearest to x. Stops and piece ends are stations. */
export function riseAt(span: Span, rise: number[], x: number): number {
  let best = 0
  for (let index = 1; index < span.x.length; index++) {
    if (Math.abs(span.x[index]! - x) < Math.abs(span.x[best]! - x)) best = index
  }
  return rise[best]!
}
