/**
 * The contract that every kind of thing put on a face fulfils. One kind is one file here and one line in
 * `kinds.ts`; file format, inspector, drawing, hit-testing, exporters and the contract test follow from it.
 *
 * Local frame of a thing: its centre is the origin, x runs along the strings towards the tail, y across them to
 * the treble side. On a wall x runs along the wall and y up towards the lid.
 */
import type { z } from 'zod'
import type { Contour } from '../plane/index.ts'

export const FACES = ['lid', 'base', 'neck-end-wall', 'tail-end-wall', 'bass-wall', 'treble-wall'] as const
export type Face = (typeof FACES)[number]

/** What a kind does to the wood, around its own centre; the engine moves it into place. */
export type LocalOperation =
  | { readonly kind: 'cut'; readonly contour: Contour }
  | { readonly kind: 'recess'; readonly contour: Contour; readonly depth: number }
  | { readonly kind: 'drill'; readonly diameter: number; readonly depth: number | 'through' }

/**
 * A part of a thing behind its face (or before it), as a prism: a closed contour around the thing's origin that bulges
 * outwards everywhere, from one depth behind the face's outer side to another; negative depths stand in front.
 */
export interface LocalBody {
  /** For a sentence: `body`, `knob`, `shank`. */
  readonly part: string
  /** `hardware` wants air around it; a `fastener` goes into wood. */
  readonly sort: 'hardware' | 'fastener'
  readonly contour: Contour
  readonly from: number
  readonly to: number
}

export interface Kind<F extends z.ZodRawShape = z.ZodRawShape, P = z.output<z.ZodObject<F>>> {
  /** Stored in files, never changes. */
  readonly kind: string
  /** What a builder calls it, singular: `Sound hole`. */
  readonly title: string
  /** Faces it may be put on; the first is where a new one goes. */
  readonly faces: readonly [Face, ...Face[]]
  /** Its own fields; name, face and place are common to all kinds. */
  readonly fields: F
  /** A few words that tell two of a kind apart: `round, with a stepped rim`. */
  describe(fields: P): string
  /** What is open right through the face: closed contours around the origin. Empty where nothing is. */
  openings(fields: P): readonly Contour[]
  /** Everything it takes up on the face, rims and heads included: one closed contour around the origin. */
  footprint(fields: P): Contour
  operations(fields: P): readonly LocalOperation[]
  /** How far it reaches behind the face's outer side, in millimetres; 0 where only the face is cut. */
  reach(fields: P): number
  /** Its parts as solids, held against everything else in the box. Left out where only the face is cut. */
  bodies?(fields: P): readonly LocalBody[]
  /** May it stand over the neck? `meant`: yes, and the neck is relieved to let it in. */
  readonly overNeck: 'avoid' | 'meant'
  /** May it stand over a wall? Screws are meant to. */
  readonly overWall: 'avoid' | 'meant'
  /** The named limits that its distance to the face's edge and to other openings is held against. */
  readonly edgeLimit: 'openingToEdge' | 'screwToEdge'
  readonly gapLimit: 'betweenOpenings' | 'screwToOpening'
  /** Width across the strings in which it hears them, if it hears them at all. */
  activeWidth?(fields: P): number
  /** Length along the strings that it hears, where that is stated; a point where it is not. */
  heardLength?(fields: P): number
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
