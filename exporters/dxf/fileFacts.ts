/** What a DXF is about as a whole. */
import type { Bounds } from '../../geometry/index.ts'
import type { LengthUnit } from '../drawing/layers.ts'

export interface FileFacts {
  readonly unit: LengthUnit
  /** The first line of the file, ASCII. */
  readonly comment: string
  /** The box of all that is drawn, in the unit of the file. */
  readonly extent: Bounds
}
