/**
 * From the part's sheet (y up) to the paper of an SVG (y down, origin in the upper left corner).
 *
 * This is the one place where y is turned over. Turning over also turns every arc and every line of
 * words the other way round, so all three happen here together; letters themselves are never mirrored.
 */
import { type Contour, mirrorX, move, type Point, reversed } from '../../geometry/index.ts'
import type { Words } from '../drawing/drawing.ts'

/** Drawn things as the paper has them: mm from its upper left corner, y down. */
export interface OnPaper {
  point(point: Point): Point
  contour(contour: Contour): Contour
  /** The same for a tool's path, run on paper the way the tool runs on the wood. */
  path(contour: Contour): Contour
  words(words: Words): Words
}

/**
 * The way onto the paper for a drawing of which `anchor` shall lie at `at`.
 *
 * @param anchor a point of the drawing, mm, y up
 * @param at where it comes to lie, mm, y down
 */
export function ontoPaper(anchor: Point, at: Point): OnPaper {
  const point = ({ x, y }: Point): Point => ({ x: x - anchor.x + at.x, y: anchor.y - y + at.y })
  const onto = (contour: Contour) => move(mirrorX(contour), at.x - anchor.x, at.y + anchor.y)
  return {
    point,
    contour: onto,
    // Turning over ran a closed chain backwards, to keep it counter-clockwise by its numbers.
    path: (contour) => {
      const turned = onto(contour)
      return turned.shape === 'chain' && turned.closed ? reversed(turned) : turned
    },
    words: (words) => ({ ...words, at: point(words.at), turn: -words.turn }),
  }
}
