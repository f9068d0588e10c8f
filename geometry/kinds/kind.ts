/**
 * The contract that every kind of thing put on a face fulfils. One kind is one file here and one line in
 * `kinds.ts`; file format, inspector, drawing, hit-testing, exporters and the contract test follow from it.
 *
 * Local frame of a thing: its centre is the origin, x runs along the strings towards the tail, y across them to
 * the treble side. On a wall x runs along the wall and y up towards the lid.
 */
import type { z } from 'zod'
import type { Contour, Point } from '../plane/index.ts'

export const FACES = ['lid', 'base', 'neck-end-wall', 'tail-end-wall', 'bass-wall', 'treble-wall'] as const
export type Face = (typeof FACES)[number]

/** What a kind does to the wood, around its own centre; the engine moves it into place. */
export type LocalOperation =
  | { readonly kind: 'cut'; readonly contour: Contour }
  | {
      readonly kind: 'recess'
      readonly contour: Contour
      readonly depth: number
      /** Taken out of the side that looks into the box; from the outer side where left out. */
      readonly from?: 'inside'
    }
  | {
      readonly kind: 'drill'
      readonly diameter: number
      readonly depth: number | 'through'
      /** Centre, where it is not the thing's own. */
      readonly at?: Point
    }

/**
 * A part of a thing behind its face (or before it), as a prism: a closed contour around the thing's origin that bulges
 * outwards everywhere, from one depth behind the face's outer side to another; negative depths stand in front.
 */
export interface LocalBody {
  /** For a sentence: `body`, `knob`, `shank`. */
  readonly part: string
  /** `hardware` wants air around it; a `fastener` goes into wood; `wood` is glued in and takes fasteners. */
  readonly sort: 'hardware' | 'fastener' | 'wood'
  readonly contour: Contour
  readonly from: number
  readonly to: number
}

/** How something is held by a nut on its thread, through a hole in the face. */
export interface Bushing {
  /** Length of the thread, and how much of it washer and nut take up. */
  readonly thread: number
  readonly nut: number
  readonly bore: 'none' | 'from inside' | 'from outside'
  readonly boreDiameter: number
  readonly boreDepth: number
  /** How wide a bore must be from either side to let in what sits there. */
  readonly widthInside: number
  readonly widthOutside: number
  /** Thickness of a plate glued behind the face; 0 for none. */
  readonly backing: number
  /** Shaft from where the body sits to its tip, and how deep the knob is bored; left out where there is no knob. */
  readonly shaft?: { readonly length: number; readonly knobDepth: number }
}

/** Typical sizes, plain and generic. */
export interface Preset<P> {
  /** `Full size, 24 mm`. */
  readonly title: string
  readonly fields: Partial<P>
}

/** How the inspector and the menus group kinds. */
export const GROUPS = ['Openings', 'Pickups and controls', 'Fastening', 'Strings and fittings'] as const
export type Group = (typeof GROUPS)[number]

export interface Kind<F extends z.ZodRawShape = z.ZodRawShape, P = z.output<z.ZodObject<F>>> {
  /** Stored in files, never changes. */
  readonly kind: string
  /** What a builder calls it, singular: `Sound hole`. */
  readonly title: string
  readonly group: Group
  /** Faces it may be put on; the first is where a new one goes. */
  readonly faces: readonly [Face, ...Face[]]
  /** Its own fields; name, face and place are common to all kinds. */
  readonly fields: F
  /** A few words that tell two of a kind apart: `round, with a stepped rim`. */
  describe(fields: P): string
  /** What is open right through the face: closed contours around the origin. Empty where nothing is. */
  openings(fields: P): readonly Contour[]
  /** Everything it takes up on the face, rims, heads and covers included: one closed contour around the origin. */
  footprint(fields: P): Contour
  /**
   * What lies on the face, or under it, without being cut into it: a knob, a plate, a glued strip; `null` where that
   * is nothing. Only kinds that have such a thing state it.
   */
  cover?(fields: P): Contour | null
  /** All wood taken from the face in one outline, where that is less than the footprint; `null` where none is. */
  taken?(fields: P): Contour | null
  operations(fields: P): readonly LocalOperation[]
  /** How far it reaches behind the outer side of a face this thick, in millimetres; 0 where only the face is cut. */
  reach(fields: P, thickness: number): number
  /** Its parts as solids, held against everything else in the box. Left out where only the face is cut. */
  bodies?(fields: P, thickness: number): readonly LocalBody[]
  /** May it stand over the neck? `meant`: yes, and the neck is relieved to let it in. */
  readonly overNeck: 'avoid' | 'meant'
  /** May it stand over a wall? Screws are meant to. */
  readonly overWall: 'avoid' | 'meant'
  /** The named limits that its distance to the face's edge and to other openings is held against. */
  readonly edgeLimit: 'openingToEdge' | 'screwToEdge'
  readonly gapLimit: 'betweenOpenings' | 'screwToOpening'
  /** Width across the strings in which it hears them, if it hears them at all. */
  activeWidth?(fields: P): number | null
  /** Length along the strings that it hears, where that is stated; a point where it is not. */
  heardLength?(fields: P): number
  /** How far a head stands out of the face that is meant to lie flush; 0 where it is let in. */
  proud?(fields: P): number
  /** How it is held by a nut, if it is. */
  bushing?(fields: P): Bushing | null
  /** Shaped otherwise on one side of its x axis than on the other: then its field `flipped` turns it over. */
  readonly handed?: true
  /** Many openings strewn in the footprint, which is the shape they are clipped to and not itself cut. */
  readonly strewn?: true
  /** Wood left between the nearest two of many openings, with those two; `null` for fewer than two. */
  web?(fields: P): { readonly wood: number; readonly from: Point; readonly to: Point } | null
  /** How many openings its fields ask for, and how many are laid out at the most. */
  wanted?(fields: P): { readonly count: number; readonly most: number }
  /** What no schema can say of its fields: a sentence that keeps a file from being read; `null` where all is well. */
  fault?(fields: P): string | null
  /** Sizes to begin with: common practice, to be measured on the piece in hand. */
  readonly presets?: readonly Preset<P>[]
  /** Does a strap hang from it? */
  readonly holdsStrap?: true
  /** Does air go in and out by its openings, so that the box speaks through it? */
  readonly air?: true
  /** Depth and ledge of a step around the opening, if it has one. */
  rim?(fields: P): { readonly depth: number; readonly ledge: number } | null
  /** The size that dragging its edge would change, and what a newcomer reads first. */
  size(fields: P): { readonly along: number; readonly across: number }
  /** Fields of typical, smallest, largest and odd ones: each is walked by the contract test. */
  readonly specimens: Readonly<Record<string, Partial<P>>>
}

/** Gives a kind its field types. Example: `defineKind({ kind: 'screw', … })`. */
export const defineKind = <F extends z.ZodRawShape>(kind: Kind<F>): Kind<F> => kind
