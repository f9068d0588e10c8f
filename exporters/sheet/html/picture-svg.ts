/** A picture of the sheet as SVG, at true size on paper: one user unit is one millimetre. */
import { mirrorX, move } from '../../../geometry/index.ts'
import { numberText } from '../../numbers.ts'
import { type Attributes, element, type Markup, textNode, titleElement } from '../../svg/element.ts'
import { shapeElement } from '../../svg/shape.ts'
import { type Fill, type Picture, runsPath, type Shape, type Stroke } from '../pictures/picture.ts'

/** Widths and patterns, mm: thick to thin is 2 to 1 (ISO 128-2), patterns as the templates have them. */
export const STROKES: Readonly<Record<Stroke, { readonly width: number; readonly dash: readonly number[] }>> =
  {
    outline: { width: 0.35, dash: [] },
    thin: { width: 0.13, dash: [] },
    hidden: { width: 0.13, dash: [2, 0.8] },
    centre: { width: 0.13, dash: [6, 0.75, 0.25, 0.75] },
    strong: { width: 0.5, dash: [] },
    dotted: { width: 0.5, dash: [1.6, 1] },
  }

/** Tints light enough that thin lines and words stay readable over them, on any printer. */
export const FILLS: Readonly<Record<Fill, string>> = {
  none: 'none',
  wood: '#f3ecdd',
  dark: '#cdbfa6',
  paper: '#ffffff',
  ink: '#1a1a1a',
}

const INK = '#1a1a1a'

const n = (value: number) => numberText(value, 'a number of a picture', 3)

function shape(one: Shape, height: number): Markup {
  if (one.kind === 'text') {
    const [x, y] = [n(one.at.x), n(height - one.at.y)]
    return element(
      'text',
      {
        x,
        y,
        'font-size': n(one.size),
        'font-weight': one.bold ? 'bold' : undefined,
        'text-anchor': one.anchor === 'start' ? undefined : one.anchor,
        transform: one.upright ? `rotate(-90 ${x} ${y})` : undefined,
      },
      [textNode(one.text)],
    )
  }
  if (one.kind === 'squares') {
    const place = `translate(${n(one.at.x)} ${n(height - one.at.y)}) scale(${numberText(one.side, 'a side of a square')})`
    return element('path', {
      d: runsPath(one),
      transform: place,
      fill: INK,
      'shape-rendering': 'crispEdges',
    })
  }
  const down = move(mirrorX(one.contour), 0, height)
  if (one.kind === 'area') return shapeElement(down, { fill: FILLS[one.fill] })
  const { width, dash } = STROKES[one.stroke]
  const look: Attributes = {
    fill: FILLS[one.fill ?? 'none'],
    stroke: INK,
    'stroke-width': n(width),
    'stroke-dasharray': dash.length > 0 ? dash.map(n).join(' ') : undefined,
  }
  return shapeElement(down, look)
}

/** The picture as an `svg` element that may stand in a page or, with its namespace, in a file of its own. */
export function pictureSvg(picture: Picture): Markup {
  const { width, height, id, title, description, shapes } = picture
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${n(width)}mm`,
      height: `${n(height)}mm`,
      viewBox: `0 0 ${n(width)} ${n(height)}`,
      role: 'img',
      'aria-labelledby': `picture-${id}`,
      'font-family': 'sans-serif',
      fill: INK,
    },
    [
      titleElement(title, `picture-${id}`),
      element('desc', {}, [textNode(description)]),
      ...shapes.map((one) => shape(one, height)),
    ],
  )
}
