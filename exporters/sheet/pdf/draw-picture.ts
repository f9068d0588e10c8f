/** A picture of the sheet in a PDF: the same shapes, widths and tints as in its SVG. */
import type { Bounds } from '../../../geometry/index.ts'
import { INK, type Ink } from '../../pdf/ink.ts'
import type { Wording } from '../../pdf/words.ts'
import { FILLS, STROKES } from '../html/picture-svg.ts'
import { type Picture, runsOf, type Shape } from '../pictures/picture.ts'

/**
 * Draws a picture with its lower left corner at a place.
 *
 * @param factor 1 for true size; less where the paper has no room for that
 */
export function drawPicture(
  ink: Ink,
  wording: Wording,
  picture: Picture,
  at: { readonly x: number; readonly y: number },
  factor = 1,
): void {
  ink.within({ move: at }, () =>
    ink.within({ scale: { x: factor, y: factor } }, () => {
      for (const shape of picture.shapes) drawShape(ink, wording, shape)
    }),
  )
}

function drawShape(ink: Ink, wording: Wording, shape: Shape): void {
  switch (shape.kind) {
    case 'squares':
      // A square is 1 by 1 within: whole numbers are short.
      ink.within({ move: shape.at }, () =>
        ink.within({ scale: { x: shape.side, y: shape.side } }, () =>
          ink.boxes(
            runsOf(shape).map(
              ({ column, row, length }): Bounds => ({
                minX: column,
                maxX: column + length,
                minY: -row - 1,
                maxY: -row,
              }),
            ),
            '#000000',
          ),
        ),
      )
      return
    case 'area':
      ink.areas([shape.contour], FILLS[shape.fill])
      return
    case 'text': {
      const text = wording.printable(shape.text)
      if (text === '') return
      ink.words(shape.at, shape.size, text, {
        anchor: shape.anchor,
        turn: shape.upright ? Math.PI / 2 : 0,
      })
      return
    }
    case 'line': {
      const { width, dash } = STROKES[shape.stroke]
      const fill = shape.fill ?? 'none'
      if (fill !== 'none') ink.areas([shape.contour], FILLS[fill])
      ink.contours([shape.contour], { colour: INK, width, dashes: dash })
    }
  }
}
