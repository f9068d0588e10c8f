/** The outline of a surveyed box from outside the lid: four corners, sides, diagonals, and the rectangle it is not. */
import { formatLength, type Layout, polygon, rectangle } from '../../../geometry/index.ts'
import type { Report } from '../../report.ts'
import { textWidth } from '../../words/width.ts'
import { CORNER_LETTERS } from '../tables/survey.ts'
import { area, PICTURE_WIDTH, type Picture, type Shape, scaleFor, segment, stroke, words } from './picture.ts'

/** Room round the outline for letters and lengths, and height of the drawing at most, mm on paper. */
const ROUND = 12
const TALLEST = 90

/** From a line to the words beside it, mm on paper. */
const OFF = 1.6
const SIZE = 2.8

/** Corners by their places, and where along the line the length stands: the diagonals' are kept off their crossing. */
const LINES = [
  { of: 'bass', from: 0, to: 1, at: 0.5 },
  { of: 'tailEnd', from: 1, to: 2, at: 0.5 },
  { of: 'treble', from: 3, to: 2, at: 0.5 },
  { of: 'neckEnd', from: 0, to: 3, at: 0.5 },
  { of: 'diagonalFromBass', from: 0, to: 2, at: 0.28 },
  { of: 'diagonalFromTreble', from: 3, to: 1, at: 0.28 },
] as const

/** `null` without a survey, or where its readings make no box. Example: `surveyPicture(layout, report.survey)`. */
export function surveyPicture(layout: Layout, survey: Report['survey']): Picture | null {
  if (!survey?.makesBox || !layout.real) return null
  const { units } = layout.design
  const corners = survey.corners.map(({ fromNut, fromCentreline }) => ({
    x: fromNut,
    y: fromCentreline * layout.up,
  }))
  const [minX, maxX] = [Math.min(...corners.map(({ x }) => x)), Math.max(...corners.map(({ x }) => x))]
  const [minY, maxY] = [Math.min(...corners.map(({ y }) => y)), Math.max(...corners.map(({ y }) => y))]
  const scale = Math.max(
    scaleFor(maxX - minX, PICTURE_WIDTH - 2 * ROUND),
    scaleFor(maxY - minY, TALLEST - 2 * ROUND),
  )
  const at = ({ x, y }: { x: number; y: number }) => ({
    x: (x - minX) / scale + ROUND,
    y: (y - minY) / scale + ROUND,
  })
  const points = corners.map(at)
  const middle = { x: (maxX - minX) / scale / 2 + ROUND, y: (maxY - minY) / scale / 2 + ROUND }
  const lengths = new Map(survey.distances.map(({ name, adjusted }) => [name, adjusted]))
  const shapes: Shape[] = [
    stroke(rectangle(ROUND, ROUND, at({ x: maxX, y: maxY }).x, at({ x: maxX, y: maxY }).y), 'hidden'),
    stroke(polygon(points), 'outline'),
  ]
  for (const { of, from, to, at: share } of LINES) {
    const [a, b] = [points[from], points[to]]
    const length = lengths.get(of)
    if (!a || !b || length === undefined) continue
    const diagonal = of.startsWith('diagonal')
    if (diagonal) shapes.push(segment(a, b, 'thin'))
    const place = { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share }
    const upright = !diagonal && Math.abs(b.y - a.y) > Math.abs(b.x - a.x)
    const text = formatLength(length, units, { unit: true })
    if (diagonal) {
      // The line gives way to its own length.
      const [half, tall] = [textWidth(text, SIZE) / 2, SIZE * 0.62]
      shapes.push(
        area(rectangle(place.x - half, place.y - tall, place.x + half, place.y + tall), 'paper'),
        words({ x: place.x, y: place.y - SIZE * 0.36 }, text, { size: SIZE, anchor: 'middle' }),
      )
      continue
    }
    // Sides have their lengths outside.
    const outwards = upright
      ? { x: place.x < middle.x ? -OFF : OFF + SIZE * 0.72, y: 0 }
      : { x: 0, y: place.y < middle.y ? -OFF - SIZE * 0.72 : OFF }
    shapes.push(
      words({ x: place.x + outwards.x, y: place.y + outwards.y }, text, {
        size: SIZE,
        anchor: 'middle',
        upright,
      }),
    )
  }
  for (const [index, point] of points.entries()) {
    const out = { x: point.x < middle.x ? -1 : 1, y: point.y < middle.y ? -1 : 1 }
    shapes.push(
      words(
        { x: point.x + out.x * 3.4, y: point.y + out.y * 3.4 - SIZE * 0.36 },
        CORNER_LETTERS[index] ?? '',
        { size: 3.4, anchor: 'middle', bold: true },
      ),
    )
  }
  return {
    id: 'survey',
    title: 'The box as measured, from outside the lid',
    description:
      'The outline with its four corners, sides and diagonals; dashed, the upright rectangle round it.',
    width: (maxX - minX) / scale + 2 * ROUND,
    height: (maxY - minY) / scale + 2 * ROUND,
    shapes,
    caption: `1 : ${scale}. Dashed: the rectangle round it. The neck is at the left.`,
  }
}
