/** Where the tape is hooked for a hole: an edge or the nut one way, the centreline or another edge the other way. */
import { FACES, type Face } from '../kinds/kind.ts'
import type { Part } from '../parts/part.ts'
import { type Flip, flipOf } from '../parts/sheet-frame.ts'
import type { Point } from '../plane/index.ts'
import type { Layout } from '../solve/layout.ts'

/** A distance with what it is taken from; `towards` says which way where that is not plain. */
export interface FromLine {
  readonly from: string
  readonly distance: number
  readonly towards: 'bass' | 'treble' | 'head' | 'tail' | ''
}

export interface Measured {
  readonly edge: FromLine
  readonly line: FromLine
}

/** Nearer the centreline than this is on it. Millimetres. */
const ON_IT = 1e-6

const plain = (from: string, distance: number): FromLine => ({ from, distance, towards: '' })

const centreline = (across: number): FromLine => ({
  from: 'centreline',
  distance: Math.abs(across),
  towards: Math.abs(across) < ON_IT ? '' : across > 0 ? 'treble' : 'bass',
})

/** The face a part is, seen from either side. */
export const faceOf = ({ id }: Part): Face | null =>
  FACES.find((face) => face === id || `${face}-inside` === id) ?? null

/** Is it the neck seen from one of its sides? There up is up for both hands. */
const onSide = ({ id }: Part): boolean => id === 'neck-side' || id === 'neck-side-inside'

/** How a part was turned over for its sheet; turning it once more gives the engine's own frame back. */
export function turnedBy(part: Part, up: Layout['up']): Flip {
  const face = faceOf(part)
  if (face) return flipOf(face, up)
  if (part.id === 'neck-block-end') return up === 1 ? 'x' : 'none'
  if (onSide(part)) return 'none'
  return up === 1 ? 'none' : 'y'
}

/** A point of a part, in the engine's own frame of that part, measured as a builder would. */
export function measuredOn(part: Part, at: Point, layout: Layout): Measured {
  const face = faceOf(part)
  if (face === 'lid' || face === 'base')
    return {
      edge: plain('neck-end edge', at.x - layout.panels[face].bounds.minX),
      line: centreline(at.y),
    }
  if (face === 'neck-end-wall' || face === 'tail-end-wall')
    return { edge: plain('lid-side edge', 0 - at.y), line: centreline(at.x) }
  if (face)
    return {
      edge: plain('lid-side edge', 0 - at.y),
      line: plain('neck-end edge', at.x - layout.panels[face].bounds.minX),
    }
  if (part.id.startsWith('neck-block'))
    return part.id === 'neck-block-end'
      ? { edge: plain('top of the block', 0 - at.y), line: centreline(at.x) }
      : { edge: plain('end at the neck-end wall', at.x), line: centreline(at.y) }
  const zero = layout.zeroFret ? 'crown of the zero fret' : 'front of the nut'
  return {
    edge: { from: zero, distance: Math.abs(at.x), towards: at.x < 0 ? 'head' : 'tail' },
    line: onSide(part) ? plain('top of the neck', layout.neck.top - at.y) : centreline(at.y),
  }
}
