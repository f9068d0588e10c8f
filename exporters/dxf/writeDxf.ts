/**
 * Parts as DXF: circles as CIRCLE, arcs inside LWPOLYLINE, saw lines as LINE, words as TEXT.
 */
import type { Part, Point } from '../../geometry/index.ts'
import { pathWords } from '../cutting/cut-part.ts'
import { drawPart, inWorkingOrder, type Layer } from '../drawing/drawing.ts'
import { type LengthUnit, STOCK_EDGE, styleOf } from '../drawing/layers.ts'
import type { SheetOptions } from '../sheet-layout/facts.ts'
import { type Sheet, sheetOfAll, sheetOfOne } from '../sheet-layout/sheet.ts'
import { plainLine } from '../words/plain.ts'
import { type DxfFile, GuardedDxf } from './guard.ts'
import { R12Dxf } from './r12.ts'

export interface DxfOptions extends SheetOptions {
  /** The unit of the file's numbers; millimetres unless stated. */
  readonly units?: LengthUnit | undefined
  /** Release 2000 unless stated; 12 for machines too old for it. */
  readonly release?: DxfRelease | undefined
}

export type DxfRelease = '2000' | '12'

const UNIT_WORDS: Readonly<Record<LengthUnit, string>> = { mm: 'millimetres', inches: 'inches' }

/** Height of the capitals of the lines under the whole drawing, and from one line to the next, mm. */
const HEADING_CAPITALS = 3
const LINE_STEP = 6

/** The title, the builder's own line, and the one thing a reader of numbers must know. */
function headings(sheet: Sheet, options: DxfOptions, unit: LengthUnit): string[] {
  const paths = pathWords(sheet.placed.map(({ drawing }) => drawing.part))?.long ?? ''
  const lines = [plainLine(options.title), plainLine(options.line ?? ''), paths].filter((line) => line !== '')
  return [...lines, `Drawn 1:1, coordinates in ${UNIT_WORDS[unit]}.`]
}

/** A sheet of drawings that lie where they are to be cut. */
export function writeDxfLaidOut(sheet: Sheet, options: DxfOptions): string {
  return write(sheet, options, options.units ?? 'mm')
}

interface PlacedLayer {
  readonly layer: Layer
  readonly shift: Point
}

/** Layer by layer over all parts, in working order: nothing on the sheet is cut loose before everything else is done. */
function layersOf(sheet: Sheet): [PlacedLayer, ...PlacedLayer[]][] {
  const byName = new Map<string, [PlacedLayer, ...PlacedLayer[]]>()
  for (const { drawing, shift } of sheet.placed) {
    for (const layer of drawing.layers) {
      const alike = byName.get(layer.name)
      if (alike === undefined) byName.set(layer.name, [{ layer, shift }])
      else alike.push({ layer, shift })
    }
  }
  return [...byName.values()].sort(([a], [b]) => inWorkingOrder(a.layer, b.layer))
}

function write(sheet: Sheet, options: DxfOptions, unit: LengthUnit): string {
  const dxf: DxfFile = options.release === '12' ? new R12Dxf(unit) : new GuardedDxf(unit)
  const notes = styleOf('notes')
  dxf.declareLayer(notes.name, notes)
  if (sheet.stock !== undefined) {
    dxf.declareLayer(STOCK_EDGE.name, styleOf(STOCK_EDGE.kind))
    dxf.addContour(STOCK_EDGE.name, sheet.stock)
  }
  const layers = layersOf(sheet)
  for (const [{ layer }] of layers) dxf.declareLayer(layer.name, styleOf(layer.kind))
  for (const { layer, shift } of layers.flat()) {
    for (const contour of layer.contours) dxf.addContour(layer.name, contour, shift)
    for (const line of layer.words) dxf.addWords(layer.name, line, shift)
  }
  for (const { caption } of sheet.placed) {
    for (const line of caption) dxf.addWords(notes.name, line)
  }
  for (const [index, text] of headings(sheet, options, unit).entries()) {
    const at = { x: sheet.extent.minX, y: sheet.extent.minY - (index + 1) * LINE_STEP }
    dxf.addWords(notes.name, { at, height: HEADING_CAPITALS, turn: 0, text })
  }
  return dxf.finish(`Lidwright template, 1:1, units: ${UNIT_WORDS[unit]}`)
}

/**
 * One part as DXF, in the part's own coordinates, its title and facts written below it.
 *
 * @param part lengths in mm, y up, as seen from the face that `part.seen` names
 * @param options the title, a line more, and the unit of the file
 * @returns the whole file, ASCII, version AC1015 or AC1009; the same for the same input
 * @throws when the part cannot be drawn: an open contour to be cut, a number that is not finite
 * @example writeDxf(lid, { title: 'Tea box', units: 'inches' })
 */
export function writeDxf(part: Part, options: DxfOptions): string {
  const unit = options.units ?? 'mm'
  return write(sheetOfOne(drawPart(part, unit)), options, unit)
}

/**
 * All parts on one sheet as DXF, without overlap, each with its title below it; lower left corner at (0, 0).
 *
 * @throws as `writeDxf`, and when there are no parts
 * @example writeDxfSheet([lid, base], { title: 'Tea box' })
 */
export function writeDxfSheet(parts: readonly Part[], options: DxfOptions): string {
  const unit = options.units ?? 'mm'
  return write(sheetOfAll(parts.map((part) => drawPart(part, unit))), options, unit)
}
