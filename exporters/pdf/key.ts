/** What each line of a part means, set where a sheet has room for it. */
import type { Bounds, Point } from '../../geometry/index.ts'
import { inWorkingOrder, type Layer } from '../drawing/drawing.ts'
import { crossAt, drillCrosses } from '../drawing/drilled.ts'
import { styleOf } from '../drawing/layers.ts'
import { holesText } from '../sheet-layout/holes.ts'
import type { Ink } from './ink.ts'
import { CENTRE_STROKE, swatch } from './part-form.ts'
import type { Wording } from './words.ts'

const STEP = 4
const SIZE = 2.4
const SWATCH = 16
const GAP = 2.5

interface Entry {
  readonly text: string
  draw(ink: Ink, at: Point): void
}

function entriesOf(layers: readonly Layer[]): Entry[] {
  const entries = [...layers]
    .sort(inWorkingOrder)
    .filter((layer) => layer.contours.length > 0)
    .map((layer): Entry => {
      const meaning =
        layer.kind === 'drill' ? `${layer.meaning}: ${holesText(layer.contours)}` : layer.meaning
      return {
        text: `${layer.name}: ${meaning}`,
        draw: (ink, at) => swatch(ink, styleOf(layer.kind), at, SWATCH),
      }
    })
  if (drillCrosses(layers).length === 0) return entries
  const cross: Entry = {
    text: 'CENTRES: middle of a hole to drill, punch here',
    draw: (ink, { x, y }) => ink.lines(crossAt({ x: x + SWATCH / 2, y }, 1.6), CENTRE_STROKE),
  }
  return [cross, ...entries]
}

export interface KeySize {
  readonly width: number
  readonly height: number
}

/** Room that the key takes, mm. */
export function keySize(wording: Wording, layers: readonly Layer[]): KeySize {
  const entries = entriesOf(layers)
  const widest = Math.max(0, ...entries.map(({ text }) => wording.typeface.width(text, SIZE)))
  return { width: SWATCH + GAP + widest, height: entries.length * STEP }
}

/** @param corner upper left, mm; @returns the height used */
export function drawKey(
  ink: Ink,
  wording: Wording,
  layers: readonly Layer[],
  corner: Point,
  width: number,
): number {
  const entries = entriesOf(layers)
  for (const [index, entry] of entries.entries()) {
    const y = corner.y - (index + 0.5) * STEP
    entry.draw(ink, { x: corner.x, y })
    const words = { x: corner.x + SWATCH + GAP, y: y - 0.9 }
    wording.write(ink, words, SIZE, entry.text, width - SWATCH - GAP)
  }
  return entries.length * STEP
}

/** From a drawing to the key beside or above it, mm. */
const AWAY = 7

/**
 * Where on a sheet the key finds room: above what is drawn, or to its right.
 *
 * @param window all that may be drawn on; @param box what the tile takes of it, from its lower left corner
 * @returns the upper left corner, or nothing where there is no room
 */
export function roomForKey(window: Bounds, box: Bounds, size: KeySize): Point | undefined {
  if (window.maxY - box.maxY >= size.height + AWAY && window.maxX - window.minX >= size.width)
    return { x: window.minX, y: box.maxY + AWAY + size.height }
  if (window.maxX - box.maxX >= size.width + AWAY && window.maxY - window.minY >= size.height)
    return { x: box.maxX + AWAY, y: window.minY + size.height }
  return undefined
}
