/**
 * Dimensions after ISO 129-1: extension lines with a gap at the part and a little beyond the dimension line, closed
 * arrowheads, figures above the line and readable from below or from the right.
 *
 * All dimensions of one side start from one edge, and the shorter lies nearer to the part. So no dimension line is
 * crossed by an extension line: the line of a longer one begins and ends beyond all that is nearer. Where figures do
 * not fit between the ends they stand behind the edge, where no extension line runs. Where arrows do not fit either,
 * oblique strokes end the line, as the standard allows for want of room: arrows from outside would cross others.
 */
import type { Bounds, Point } from '../../../geometry/index.ts'
import { textWidth } from '../../words/width.ts'
import { arrowhead, type Shape, segment, WORDS, words } from './picture.ts'

/** From the part to the first dimension line, and from one line to the next. */
const FIRST = 9
const STEP = 6.4
/** Gap at the part, and how far extension lines run beyond a dimension line. */
const GAP = 1
const BEYOND = 1.6
/** Figures over their line. */
const OVER = 0.9
/** A dimension shorter than this has no room for arrows. */
const ARROWS = 7
/** Half of an oblique stroke, each way. */
const OBLIQUE = 0.9

/** Something to dimension: where it lies on the paper, where its extension line starts, and its figures. */
export interface Dimension {
  /** Along the side, mm on paper. */
  readonly at: number
  readonly text: string
}

export type Side = 'below' | 'right'

export interface Dimensioned {
  readonly shapes: readonly Shape[]
  /** How far they reach from the part. */
  readonly reach: number
  /** How far figures stand behind the datum edge. */
  readonly before: number
}

/**
 * The dimensions of one side of a part, from its datum edge.
 *
 * @param part the box of the part on paper, mm
 * @param side below it, or to its right
 * @param datum the coordinate of the edge measured from: x below, y at the right
 * @param wanted in any order; what lies on the datum itself is left out
 */
export function dimensions(
  part: Bounds,
  side: Side,
  datum: number,
  wanted: readonly Dimension[],
): Dimensioned {
  const put = (along: number, out: number): Point =>
    side === 'below' ? { x: along, y: part.minY - out } : { x: part.maxX + out, y: along }
  const unit = (sign: number): Point => (side === 'below' ? { x: sign, y: 0 } : { x: 0, y: sign })
  const upright = side === 'right'
  const shapes: Shape[] = []
  let before = 0
  let reach = 0
  for (const sign of [1, -1]) {
    const ranked = wanted
      .filter(({ at }) => (at - datum) * sign > 0.05)
      .sort((a, b) => Math.abs(a.at - datum) - Math.abs(b.at - datum))
    for (const [row, { at, text }] of ranked.entries()) {
      const out = FIRST + row * STEP
      const span = Math.abs(at - datum)
      const room = textWidth(text, WORDS) + 2
      const arrows = span >= ARROWS
      const fits = room <= span - (arrows ? 4.6 : 0)
      // Behind the edge, away from what is dimensioned.
      const tail = fits ? datum : datum - sign * (room + 1)
      shapes.push(
        segment(put(at, GAP), put(at, out + BEYOND), 'thin'),
        segment(put(tail, out), put(at, out), 'thin'),
        ...(arrows
          ? [arrowhead(put(datum, out), unit(-sign)), arrowhead(put(at, out), unit(sign))]
          : [oblique(put(datum, out)), oblique(put(at, out))]),
        words(put(fits ? (datum + at) / 2 : (datum + tail) / 2, out - OVER), text, {
          anchor: 'middle',
          upright,
        }),
      )
      before = Math.max(before, Math.abs(datum - tail))
      reach = Math.max(reach, out + BEYOND)
    }
  }
  if (reach > 0) shapes.push(segment(put(datum, GAP), put(datum, reach), 'thin'))
  return { shapes, reach, before }
}

const oblique = ({ x, y }: Point): Shape =>
  segment({ x: x - OBLIQUE, y: y - OBLIQUE }, { x: x + OBLIQUE, y: y + OBLIQUE }, 'outline')
