/**
 * What gets cut, in the only words exporters know: a part is an outline with operations on it.
 *
 * Coordinates are the part's own sheet: millimetres, x to the right, y up, as seen from the face named in
 * `seen`. Exporters know nothing of boxes, strings or kinds; they see this.
 */
import type { Chain, Contour, Point } from '../plane/contour.ts'

/** Cut right through. Holes are `inside` cuts: what is left of the line is the part, not the waste. */
export interface Cut {
  readonly kind: 'cut'
  readonly side: 'inside' | 'outside'
  readonly contour: Contour
  readonly of: string
}

/** Take the wood away inside a closed contour, down to `depth` below the face seen. */
export interface Recess {
  readonly kind: 'recess'
  readonly contour: Contour
  readonly depth: number
  readonly of: string
}

/** A round hole; `depth` is millimetres below the face seen, or right through. */
export interface Drill {
  readonly kind: 'drill'
  readonly centre: Point
  readonly diameter: number
  readonly depth: number | 'through'
  readonly of: string
}

/** A saw line with width and depth, as for a fret: its middle runs from `from` to `to`. */
export interface Slot {
  readonly kind: 'slot'
  readonly from: Point
  readonly to: Point
  readonly width: number
  readonly depth: number
  readonly of: string
}

/** Scribed on the wood, never cut. */
export interface Mark {
  readonly kind: 'mark'
  readonly contour: Contour
  readonly of: string
}

/** A line to measure from, never cut. */
export interface Datum {
  readonly kind: 'datum'
  readonly line: Chain
  readonly of: string
}

/** Words on the sheet, never cut. `at` is the left end of the baseline; `height` of capitals. */
export interface Note {
  readonly kind: 'note'
  readonly at: Point
  readonly height: number
  readonly text: string
  /** Radians counter-clockwise. */
  readonly turn: number
  readonly of: string
}

export type Operation = Cut | Recess | Drill | Slot | Mark | Datum | Note
export type OperationKind = Operation['kind']

export interface Part {
  /** Stable, file-name safe: `lid`, `base`, `neck-end-wall`, `neck-top`, `neck-side`, `board` … */
  readonly id: string
  readonly title: string
  /** The face looked at, in words for the sheet: `from outside`, `from the playing side`. */
  readonly seen: string
  /** True where the drawing is the mirror image of what the face itself shows. */
  readonly mirrored: boolean
  /** Where the head of the instrument lies on this sheet. */
  readonly headEnd: 'left' | 'right' | 'top' | 'towards the viewer' | 'away from the viewer'
  readonly hand: 'right' | 'left' | 'not stated'
  readonly thickness: number
  readonly outline: Contour
  readonly operations: readonly Operation[]
}
