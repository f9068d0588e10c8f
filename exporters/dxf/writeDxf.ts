/**
 * Parts as DXF: circles as CIRCLE, arcs inside LWPOLYLINE, saw lines as LINE, words as TEXT.
 */
import { move, type Part } from '../../geometry/index.ts'
import { drawPart } from '../drawing/drawing.ts'
import { type LengthUnit, LAYER_TABLE, styleOf } from '../drawing/layers.ts'
import type { SheetOptions } from '../sheet-layout/facts.ts'
import { type Sheet, sheetOfAll, sheetOfOne } from '../sheet-layout/sheet.ts'
import { plainLine } from '../words/plain.ts'
import { GuardedDxf } from './guard.ts'

export interface DxfOptions extends SheetOptions {
  /** The unit of the file's numbers; millimetres unless stated. */
  readonly units?: LengthUnit | undefined
}

const UNIT_WORDS = { mm: 'millimetres', inches: 'inches' } as const
