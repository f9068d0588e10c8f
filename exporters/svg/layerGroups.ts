/** A part's layers as groups of an SVG, each with a title that says what its lines mean. */
import { line } from '../../geometry/index.ts'
import { isCutPart } from '../cutting/cut-part.ts'
import type { Drawing, Layer } from '../drawing/drawing.ts'
import { drillCrosses } from '../drawing/drilled.ts'
import { type LayerStyle, LINE_TYPES, styleOf } from '../drawing/layers.ts'
import { numberText } from '../numbers.ts'
import { CAPITAL_HEIGHT } from '../words/width.ts'
import { type Attributes, element, idFrom, type Markup, textNode, titleElement } from './element.ts'
import type { OnPaper } from './paper.ts'
import type { Purpose } from './purposes.ts'
import { shapeElement } from './shape.ts'
import { textElement } from './textElement.ts'

/** The crosses on holes are drawn by this exporter alone and mean one thing only. */
export const CENTRES = { name: 'CENTRES', meaning: 'middle of a hole to drill: punch here' } as const

/** Colour, real width and line type of a layer's lines. */
export function strokeOf(style: LayerStyle, purpose: Purpose): Attributes {
  const { pattern } = LINE_TYPES[purpose.dashes ? style.lineType : 'CONTINUOUS']
  const dashes = pattern.map((length) => numberText(length, 'A dash')).join(' ')
  return {
    fill: 'none',
    stroke: purpose.ink[style.kind],
    'stroke-width': numberText(purpose.width ?? style.width, 'Width of a line'),
    'stroke-dasharray': dashes === '' ? undefined : dashes,
  }
}

function layerGroup(layer: Layer, { part }: Drawing, paper: OnPaper, purpose: Purpose): Markup {
  const style = styleOf(layer.kind)
  const place = isCutPart(part) ? paper.path : paper.contour
  const lines = layer.contours.map((contour) => shapeElement(place(contour)))
  const words = layer.words.map((line) => {
    const { at, turn, height, text } = paper.words(line)
    return textElement(at.x, at.y, height / CAPITAL_HEIGHT, text, { turn, colour: purpose.ink[style.kind] })
  })
  const stroke = lines.length > 0 ? strokeOf(style, purpose) : {}
  return element('g', { id: idFrom(part.id, layer.name), ...stroke }, [
    titleElement(`${layer.name}: ${layer.meaning}`),
    ...lines,
    ...words,
  ])
}

/** The crosses on holes to drill. */
function centreCrosses(drawing: Drawing, paper: OnPaper, purpose: Purpose): Markup[] {
  const crosses = drillCrosses(drawing.layers).map(([from, to]) =>
    shapeElement(paper.contour(line(from, to))),
  )
  if (crosses.length === 0) return []
  const datum = styleOf('datum')
  return [
    element(
      'g',
      {
        id: idFrom(drawing.part.id, CENTRES.name),
        ...strokeOf({ ...datum, lineType: 'CONTINUOUS' }, purpose),
      },
      [titleElement(`${CENTRES.name}: ${CENTRES.meaning}`), ...crosses],
    ),
  ]
}

/**
 * A part as one group with a title, holding a group for each of its layers; the outline comes last.
 *
 * @param facts one sentence about the part, which readers of the file hear
 */
export function partGroup(drawing: Drawing, facts: string, paper: OnPaper, purpose: Purpose): Markup {
  const { part, layers } = drawing
  return element('g', { id: idFrom('part', part.id) }, [
    titleElement(part.title),
    element('desc', {}, [textNode(facts)]),
    ...(purpose.crosses ? centreCrosses(drawing, paper, purpose) : []),
    ...layers
      .filter(({ kind }) => !purpose.without.includes(kind))
      .map((layer) => layerGroup(layer, drawing, paper, purpose)),
  ])
}
