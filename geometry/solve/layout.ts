/**
 * Everything that follows from a design: the types of the answer `solve` gives.
 *
 * Instrument frame, millimetres: x from the nut's edge (or the zero fret's crown) towards the tail, y across with
 * the treble side positive, z up from the lid's outer face. It is the same for both hands; drawings and parts turn
 * the y axis over for a left-handed build.
 *
 * Panel frames: lid and base measure from the middle of the lid's or base's own neck-end edge, x along and y to the
 * treble; walls from the middle of their lid-side edge, x towards the tail (end walls: towards the treble) and y up,
 * so that everything on a wall has a negative y.
 */
import type { RealBox, RealOutlines } from '../box/real-box.ts'
import type { Design, Thing } from '../design/schema.ts'
import type { Face, Kind } from '../kinds/kind.ts'
import type { Bounds, Contour, Point } from '../plane/index.ts'
import type { Fret } from '../scale/frets.ts'

export interface BoxLayout {
  /** Outer faces of the neck-end and tail-end walls. */
  readonly x0: number
  readonly x1: number
  /** Inner faces of the four walls. */
  readonly insideX0: number
  readonly insideX1: number
  readonly insideBass: number
  readonly insideTreble: number
  readonly halfWidth: number
  readonly lidBottom: number
  readonly wallTop: number
  readonly wallBottom: number
  /** The base's inner and outer face. */
  readonly baseTop: number
  readonly baseBottom: number
}

/** One face of the box as a flat panel, in its own frame. */
export interface Panel {
  readonly face: Face
  readonly outline: Contour
  readonly bounds: Bounds
  readonly thickness: number
  /** Where the panel's frame has its origin: x for lid, base and side walls; walls hang from `wallTop`. */
  readonly originX: number
}

export interface FretLine extends Fret {
  /** The edges of the board (or of the bare neck) at this fret. */
  readonly yBass: number
  readonly yTreble: number
  readonly overBox: boolean
  /** Does wood lie under it: the board, or the neck outside the box? */
  readonly onWood: boolean
}

export interface StringLine {
  /** 0 for the bass string. */
  readonly index: number
  /** As the trade counts: 1 is the treble string. */
  readonly number: number
  readonly gauge: number
  readonly yAtNut: number
  readonly yAtSaddle: number
  /** Underside of the string. */
  readonly zAtNut: number
  readonly zAtSaddle: number
  /** The hole it runs to, or `null` where there are fewer holes than strings. */
  readonly tail: { readonly hole: number; readonly x: number; readonly y: number; readonly z: number } | null
  /** The post it winds on and where it leaves it, seen from the side; `null` where there are fewer posts than strings. */
  readonly post: (Point & { readonly winds: WindingPoint }) | null
  /** Radians sideways over the saddle and at the nut, from the straight line; never negative. */
  readonly sideAngleAtSaddle: number
  readonly sideAngleAtNut: number
}

/** Seen from the side: x along, z up. */
export interface WindingPoint {
  readonly x: number
  readonly z: number
}

/**
 * A stretch of the neck between two cuts, with its top and what is left of it. A scarfed head lies here as if it were not
 * tilted: its plan and its depth straight down are true, `neck/head-form.ts` says how far it falls.
 */
export interface NeckStretch {
  readonly x0: number
  readonly x1: number
  readonly top: number
  readonly bottom: number
  readonly of: 'headstock' | 'slope' | 'neck' | 'notch' | 'relief' | 'pickup relief' | 'tail'
  /** The thing that makes this cut necessary, if one does. */
  readonly because?: string
}

/** One cut into the top of the neck, before overlaps are sorted out: what the neck-top part shows. */
export interface NeckCut {
  readonly x0: number
  readonly x1: number
  /** Height of its floor. */
  readonly top: number
  readonly of: 'notch' | 'relief' | 'pickup relief'
  readonly because?: string
}

export interface WallSlot {
  readonly face: 'neck-end-wall' | 'tail-end-wall'
  readonly width: number
  /** Down from the wall's lid-side edge. */
  readonly depth: number
  readonly wallLeftBelow: number
  readonly wallLeftBeside: number
}

export interface NeckLayout {
  readonly x0: number
  readonly x1: number
  readonly top: number
  readonly bottom: number
  /**
   * Half the width at rising x; straight between. The head has its own width and comes first; `middle` is how far off the
   * centreline its middle lies, where it does.
   */
  readonly halfWidths: readonly { readonly x: number; readonly half: number; readonly middle?: number }[]
  /** From head to tail without a gap. */
  readonly stretches: readonly NeckStretch[]
  readonly cuts: readonly NeckCut[]
  /** The thinnest stretch inside the box. */
  readonly thinnest: {
    readonly left: number
    readonly x0: number
    readonly x1: number
    readonly of: NeckStretch['of']
  }
  readonly slots: readonly WallSlot[]
  /** Plan of the block under a tongue, or `null` for a through neck. */
  readonly block: Bounds | null
  /** What the blank must be long enough for. */
  readonly needs: {
    readonly total: number
    readonly headstock: number
    readonly scale: number
    readonly behindSaddle: number
    readonly tail: number
  }
}

export interface BoardLayout {
  readonly x0: number
  readonly x1: number
  readonly bottom: number
  readonly top: number
  readonly overLid: number
}

export interface Placed {
  readonly thing: Thing
  readonly kind: Kind
  readonly face: Face
  /** Centre in the panel's frame. */
  readonly at: Point
  readonly openings: readonly Contour[]
  readonly footprint: Contour
  /** Wood taken from the face in one outline: the footprint of most; `null` where nothing is cut. */
  readonly taken: Contour | null
  readonly bounds: Bounds
  /** How far behind the face's outer side it reaches. */
  readonly reach: number
}

/** A relation that could not be followed; the thing stands at the fallback until it is mended. */
export interface PlaceProblem {
  readonly of: string
  readonly axis: 'along' | 'across'
  readonly sentence: string
}

export interface Layout {
  readonly design: Design
  /** 1 where the treble side is up as seen from the front with the head on the left, -1 for a left-handed build. */
  readonly up: 1 | -1
  readonly box: BoxLayout
  readonly panels: Readonly<Record<Face, Panel>>
  readonly frets: readonly FretLine[]
  readonly zeroFret: boolean
  readonly strings: readonly StringLine[]
  readonly neck: NeckLayout
  readonly board: BoardLayout | null
  /** Top of what the strings are pressed on: the board, or the bare neck. */
  readonly playingTop: number
  readonly posts: readonly (Point & { readonly side: 'bass' | 'treble'; readonly winds: WindingPoint })[]
  readonly nut: { readonly x0: number; readonly x1: number; readonly bottom: number; readonly top: number }
  readonly saddle: {
    readonly x: number
    /** From the lid's own neck-end edge. */
    readonly along: number
    readonly top: number
    readonly foot: Bounds
  }
  readonly tailHoles: readonly { readonly x: number; readonly y: number; readonly z: number }[]
  readonly placed: readonly Placed[]
  readonly problems: readonly PlaceProblem[]
  /** A surveyed box as it really is, x from the middle of its neck-end edge; `null` for the rectangle that is stated. */
  readonly real: (RealBox & RealOutlines) | null
}
