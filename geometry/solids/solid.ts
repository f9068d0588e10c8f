/**
 * Things and structure as solids: prisms along one axis of the instrument frame.
 *
 * A prism is a contour in the plane of two axes, drawn out over a stretch of the third. The contour's own x and y are
 * the two other axes in the order of the alphabet: along z it lies in (x, y), along y in (x, z), along x in (y, z).
 * Contours are closed and bulge outwards everywhere (convex): what is hollow is stated as several solids.
 */
import { sideWallAt } from '../box/outlines.ts'
import type { Face } from '../kinds/kind.ts'
import { bounds, type Contour, move } from '../plane/index.ts'
import type { Layout } from '../solve/layout.ts'

export type Axis = 'x' | 'y' | 'z'

/**
 * `wood`: screws may go in, nothing else. `hardware`: wants air around it. `fastener`: goes into wood, never into
 * anything else. `string`: the way a string takes, over the lid or through a hole.
 */
export type SolidSort = 'wood' | 'hardware' | 'fastener' | 'string'

export interface Box3 {
  readonly minX: number
  readonly maxX: number
  readonly minY: number
  readonly maxY: number
  readonly minZ: number
  readonly maxZ: number
}

export interface Solid {
  /** Id of the thing, or the name of the structure: `neck`, `bass-wall`. */
  readonly of: string
  /** Which part of it, for a sentence: `body`, `knob`; empty where it is the whole. */
  readonly part: string
  readonly sort: SolidSort
  readonly axis: Axis
  readonly contour: Contour
  readonly from: number
  readonly to: number
  readonly box: Box3
  /** It fills its box to the corners. */
  readonly isBox?: boolean
  /** The face it stands on, or the face it is. */
  readonly face?: Face
  /** Part of a thing that the builder put there, not of what every instrument has. */
  readonly placed?: true
}

/** What a solid is apart from its shape. */
export interface Named {
  readonly of: string
  readonly part?: string
  readonly sort: SolidSort
  readonly face?: Face
  readonly placed?: true
}

/**
 * A prism along `axis`, from `from` to `to`, whichever is less. Throws where either is not finite.
 *
 * @example prism({ of: 'peg', sort: 'wood' }, 'z', circle({ x: 0, y: 0 }, 5), -20, 0)
 */
export function prism(named: Named, axis: Axis, contour: Contour, from: number, to: number): Solid {
  if (!Number.isFinite(from) || !Number.isFinite(to))
    throw new RangeError(`A solid reaches from one finite place to another, not from ${from} to ${to}.`)
  const low = Math.min(from, to)
  const high = Math.max(from, to)
  return known(named, axis, contour, boxOf(axis, contour, low, high))
}

function boxOf(axis: Axis, contour: Contour, from: number, to: number): Box3 {
  const { minX, maxX, minY, maxY } = bounds(contour)
  if (axis === 'z') return { minX, maxX, minY, maxY, minZ: from, maxZ: to }
  if (axis === 'y') return { minX, maxX, minY: from, maxY: to, minZ: minY, maxZ: maxY }
  return { minX: from, maxX: to, minY: minX, maxY: maxX, minZ: minY, maxZ: maxY }
}

/** A box with its edges along the axes, or `null` where it would have no thickness. */
export function block(named: Named, box: Box3): Solid | null {
  const { minX, maxX, minY, maxY, minZ, maxZ } = box
  if (!(maxX - minX > THINNEST && maxY - minY > THINNEST && maxZ - minZ > THINNEST)) return null
  return new Block(named, box)
}

/** Most wood is a box and most of it lies far from everything: its contour is drawn when somebody asks for it. */
class Block implements Solid {
  readonly of: string
  readonly part: string
  readonly sort: SolidSort
  readonly axis = 'z'
  readonly isBox = true
  readonly face?: Face
  readonly placed?: true
  private drawn: Contour | null = null

  constructor(
    { of, part = '', sort, face, placed }: Named,
    readonly box: Box3,
  ) {
    this.of = of
    this.part = part
    this.sort = sort
    if (face) this.face = face
    if (placed) this.placed = placed
  }

  get from(): number {
    return this.box.minZ
  }

  get to(): number {
    return this.box.maxZ
  }

  get contour(): Contour {
    const { minX, maxX, minY, maxY } = this.box
    this.drawn ??= quad(minX, minY, maxY, maxX, minY, maxY)
    return this.drawn
  }
}

/** A prism whose box is known: nothing is measured. */
export function known(named: Named, axis: Axis, contour: Contour, box: Box3): Solid {
  const { of, part = '', sort, face, placed } = named
  const [from, to] =
    axis === 'z' ? [box.minZ, box.maxZ] : axis === 'y' ? [box.minY, box.maxY] : [box.minX, box.maxX]
  // Written out three times: copied from one to the next it would be made twice.
  if (!face) return { of, part, sort, axis, contour, from, to, box }
  if (!placed) return { of, part, sort, axis, contour, from, to, box, face }
  return { of, part, sort, axis, contour, from, to, box, face, placed }
}

/**
 * Four corners, two at `x0` from `low0` to `high0` and two at `x1`: a rectangle where they are alike, or a strip that
 * runs aslant. Each has a length; that is for the caller to see to.
 */
export const quad = (
  x0: number,
  low0: number,
  high0: number,
  x1: number,
  low1: number,
  high1: number,
): Contour => ({
  shape: 'chain',
  closed: true,
  vertices: [
    { x: x0, y: low0, bulge: 0 },
    { x: x1, y: low1, bulge: 0 },
    { x: x1, y: high1, bulge: 0 },
    { x: x0, y: high0, bulge: 0 },
  ],
})

/** Thinner than this there is nothing to run into. */
const THINNEST = 1e-6

/**
 * What stands behind a face, in the instrument frame: a contour in the panel's own frame, from one depth behind the
 * face's outer side to another; negative depths lie in front of it.
 */
export function behindFace(
  layout: Pick<Layout, 'panels' | 'box' | 'real'>,
  named: Named & { readonly face: Face },
  contour: Contour,
  from: number,
  to: number,
): Solid {
  const { panels, box } = layout
  const { originX } = panels[named.face]
  // A side wall askew is taken as it runs where the thing stands.
  const wall = (face: 'bass-wall' | 'treble-wall') => {
    const { minX, maxX } = bounds(contour)
    return sideWallAt(layout, face, originX + (minX + maxX) / 2)
  }
  const put = (axis: Axis, dx: number, dy: number, outer: number, inward: 1 | -1) =>
    prism(named, axis, move(contour, dx, dy), outer + inward * from, outer + inward * to)
  switch (named.face) {
    case 'lid':
      return put('z', originX, 0, 0, -1)
    case 'base':
      return put('z', originX, 0, box.baseBottom, 1)
    case 'bass-wall':
      return put('y', originX, box.wallTop, layout.real ? wall('bass-wall') : -box.halfWidth, 1)
    case 'treble-wall':
      return put('y', originX, box.wallTop, layout.real ? wall('treble-wall') : box.halfWidth, -1)
    case 'neck-end-wall':
      return put('x', 0, box.wallTop, box.x0, 1)
    case 'tail-end-wall':
      return put('x', 0, box.wallTop, box.x1, -1)
  }
}

/** A place of the instrument frame as a face sees it, in the panel's own frame. */
export function onFace(
  { panels, box }: Pick<Layout, 'panels' | 'box'>,
  face: Face,
  at: { readonly x: number; readonly y: number; readonly z: number },
): { readonly x: number; readonly y: number } {
  const { originX } = panels[face]
  if (face === 'lid' || face === 'base') return { x: at.x - originX, y: at.y }
  if (face === 'bass-wall' || face === 'treble-wall') return { x: at.x - originX, y: at.z - box.wallTop }
  return { x: at.y, y: at.z - box.wallTop }
}
