/** What each line of the sheet means: a swatch, the layer's name, and words. */

import { line } from '../../geometry/index.ts'
import type { Layer } from '../drawing/drawing.ts'
import { inWorkingOrder } from '../drawing/drawing.ts'
import { styleOf } from '../drawing/layers.ts'
import { holesText } from '../sheet-layout/holes.ts'
import { BOLD, fitLine, textWidth } from '../words/width.ts'
import { element, type Markup, titleElement } from './element.ts'
import { CENTRES, strokeOf } from './layerGroups.ts'
import type { Purpose } from './purposes.ts'
import { shapeElement } from './shape.ts'
import { INK, textElement } from './textElement.ts'

/** From one line of the legend to the next, mm. */
const STEP = 4.6
const SIZE = 2.7
const SMALLEST = 1.9
const SWATCH = 18
const GAP = 3

interface Entry {
  readonly name: string
  readonly meaning: string
  swatch(x: number, y: number): Markup[]
}

function entriesOf(layers: readonly Layer[], purpose: Purpose): Entry[] {
  const byName = new Map<string, Layer[]>()
  for (const layer of [...layers].sort(inWorkingOrder)) {
    if (layer.contours.length === 0) continue
    byName.set(layer.name, [...(byName.get(layer.name) ?? []), layer])
  }
  const entries = [...byName].map(([name, same]): Entry => {
    const { kind, meaning } = same[0] as Layer
    const stroke = strokeOf(styleOf(kind), purpose)
    return {
      name,
      meaning:
        kind === 'drill' ? `${meaning}: ${holesText(same.flatMap((layer) => layer.contours))}` : meaning,
      swatch: (x, y) => [shapeElement(line({ x, y }, { x: x + SWATCH, y }), stroke)],
    }
  })
  if (!purpose.crosses || !layers.some((layer) => layer.kind === 'drill')) return entries
  const stroke = strokeOf({ ...styleOf('datum'), lineType: 'CONTINUOUS' }, purpose)
  const middle = SWATCH / 2
  const cross: Entry = {
    ...CENTRES,
    swatch: (x, y) => [
      shapeElement(line({ x: x + middle - 1.6, y }, { x: x + middle + 1.6, y }), stroke),
      shapeElement(line({ x: x + middle, y: y - 1.6 }, { x: x + middle, y: y + 1.6 }), stroke),
    ],
  }
  return [cross, ...entries]
}

/** Height of the legend for these layers, mm. */
export function legendHeight(layers: readonly Layer[], purpose: Purpose): number {
  return entriesOf(layers, purpose).length * STEP
}

/**
 * @param layers all layers on the sheet; those of one name share a line
 * @param x mm, left edge
 * @param y mm, upper edge
 * @param width mm there is; words that do not fit are set smaller
 */
export function legend(
  layers: readonly Layer[],
  purpose: Purpose,
  x: number,
  y: number,
  width: number,
): Markup {
  const entries = entriesOf(layers, purpose)
  const nameWidth = Math.max(...entries.map((entry) => textWidth(entry.name, SIZE) * BOLD))
  const nameAt = x + SWATCH + GAP
  const meaningAt = nameAt + nameWidth + GAP
  const rows = entries.flatMap((entry, index) => {
    const middle = y + (index + 0.5) * STEP
    const baseline = middle + 0.36 * SIZE
    const meaning = fitLine(entry.meaning, SIZE, SMALLEST, x + width - meaningAt)
    return [
      ...entry.swatch(x, middle),
      textElement(nameAt, baseline, SIZE, entry.name, { bold: true, colour: INK }),
      textElement(meaningAt, baseline, meaning.size, meaning.text, { colour: INK }),
    ]
  })
  return element('g', { id: 'legend' }, [titleElement('What each line means'), ...rows])
}
