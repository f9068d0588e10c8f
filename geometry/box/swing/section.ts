/**
 * The lid and what it may meet, cut at right angles to the way it opens. `u` runs from the hinge's pin (or from the edge
 * it slides away from) into the box, `z` up from the lid's outer face, `s` along the pin.
 */
import { halfWidthAt } from '../../neck/neck.ts'
import type { Point } from '../../plane/index.ts'
import { thingSolids } from '../../solids/bodies.ts'
import type { Solid } from '../../solids/solid.ts'
import type { Layout } from '../../solve/layout.ts'
import { insidePiecesOf } from '../inside-pieces.ts'
import type { Slab } from './clip.ts'

export type LidEdge = 'bass wall' | 'treble wall' | 'neck end' | 'tail end'

/** What moves with the lid: a prism along s over a convex section. */
export interface Moving {
  readonly what: string
  readonly s0: number
  readonly s1: number
  readonly section: readonly Point[]
}

/** What stays: a box. */
export interface Standing extends Slab {
  readonly what: string
  readonly s0: number
  readonly s1: number
}

export interface LidSection {
  readonly edge: LidEdge
  /** The pin, in the instrument's frame: x for a pin across the neck, y for one along it; and its height. */
  readonly pin: { readonly at: number; readonly z: number }
  readonly moving: readonly Moving[]
  readonly standing: readonly Standing[]
}

/** A box in the instrument's frame. */
export interface Brick {
  readonly what: string
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
  readonly z0: number
  readonly z1: number
}

/** Does this edge run along the neck? */
export const runsAlong = (edge: LidEdge): boolean => edge === 'bass wall' || edge === 'treble wall'

const brickOf = ({ of, box }: Pick<Solid, 'of' | 'box'>): Brick => ({
  what: of,
  x0: box.minX,
  x1: box.maxX,
  y0: box.minY,
  y1: box.maxY,
  z0: box.minZ,
  z1: box.maxZ,
})

/** Bricks that move with the lid, the lid itself left aside. Screws are drawn before it opens. */
export function hungBricks(layout: Layout): Brick[] {
  const { box, design, saddle } = layout
  const bricks: Brick[] = []
  for (const solid of thingSolids(layout)) {
    if (solid.face !== 'lid' || solid.sort === 'fastener' || solid.box.minZ >= box.lidBottom) continue
    bricks.push({ ...brickOf(solid), z1: Math.min(solid.box.maxZ, box.lidBottom) })
  }
  for (const { piece, box: room } of insidePiecesOf(layout))
    if (piece.fixed === 'under the lid') bricks.push(brickOf({ of: piece.id, box: room }))
  const { brace } = design
  if (brace.height > 0) {
    const across = brace.runs === 'across'
    const middle = across ? saddle.x + brace.offset : brace.offset
    bricks.push({
      what: 'brace',
      x0: across ? middle - brace.width / 2 : box.insideX0,
      x1: across ? middle + brace.width / 2 : box.insideX1,
      y0: across ? box.insideBass : middle - brace.width / 2,
      y1: across ? box.insideTreble : middle + brace.width / 2,
      z0: box.lidBottom - brace.height,
      z1: box.lidBottom,
    })
  }
  return bricks
}

/** Bricks that stay when the lid opens: walls, base, neck, board and the block under the neck. */
export function standingBricks(layout: Layout): Brick[] {
  const { box, neck, board } = layout
  const { base } = layout.panels
  const upright = { z0: box.wallBottom, z1: box.wallTop }
  const { halfWidth: half } = box
  const between = { y0: box.insideBass, y1: box.insideTreble }
  const bricks: Brick[] = [
    { what: 'bass wall', x0: box.x0, x1: box.x1, y0: -half, y1: box.insideBass, ...upright },
    { what: 'treble wall', x0: box.x0, x1: box.x1, y0: box.insideTreble, y1: half, ...upright },
    // Side walls take the corners.
    { what: 'neck-end wall', x0: box.x0, x1: box.insideX0, ...between, ...upright },
    { what: 'tail-end wall', x0: box.insideX1, x1: box.x1, ...between, ...upright },
    {
      what: 'base',
      x0: base.originX + base.bounds.minX,
      x1: base.originX + base.bounds.maxX,
      y0: base.bounds.minY,
      y1: base.bounds.maxY,
      z0: box.baseBottom,
      z1: box.baseTop,
    },
  ]
  for (const { x0, x1, top, bottom, of } of neck.stretches) {
    if (of === 'headstock' || top <= bottom) continue
    const wide = Math.max(halfWidthAt(neck, x0), halfWidthAt(neck, x1))
    // A slope is as high as its upper end.
    bricks.push({
      what: 'neck',
      x0,
      x1,
      y0: -wide,
      y1: wide,
      z0: bottom,
      z1: of === 'slope' ? neck.top : top,
    })
  }
  if (board && board.x1 > board.x0) {
    const wide = halfWidthAt(neck, board.x1)
    bricks.push({
      what: 'board',
      x0: board.x0,
      x1: board.x1,
      y0: -wide,
      y1: wide,
      z0: board.bottom,
      z1: board.top,
    })
  }
  for (const solid of thingSolids(layout))
    if (solid.face !== 'lid' && solid.sort !== 'fastener') bricks.push(brickOf(solid))
  for (const { piece, box: room } of insidePiecesOf(layout))
    if (piece.fixed !== 'under the lid') bricks.push(brickOf({ of: piece.id, box: room }))
  if (neck.block) {
    const { minX, maxX, minY, maxY } = neck.block
    bricks.push({
      what: 'neck block',
      x0: minX,
      x1: maxX,
      y0: minY,
      y1: maxY,
      z0: box.baseTop,
      z1: Math.min(neck.bottom, box.lidBottom),
    })
  }
  return bricks
}

/** How a brick lies to a pin: its extent away from it, and along it. */
function turned(brick: Brick, edge: LidEdge, at: number): { u0: number; u1: number; s0: number; s1: number } {
  const { x0, x1, y0, y1 } = brick
  switch (edge) {
    case 'bass wall':
      return { u0: y0 - at, u1: y1 - at, s0: x0, s1: x1 }
    case 'treble wall':
      return { u0: at - y1, u1: at - y0, s0: x0, s1: x1 }
    case 'neck end':
      return { u0: x0 - at, u1: x1 - at, s0: y0, s1: y1 }
    case 'tail end':
      return { u0: at - x1, u1: at - x0, s0: y0, s1: y1 }
  }
}

export interface Bevels {
  readonly atHinge: number
  readonly opposite: number
}

/**
 * The lid's own section, anticlockwise. A bevel at the hinge takes its upper corner, one opposite its lower corner, each
 * running out to nothing at the other face.
 */
function lidSection(u0: number, u1: number, z0: number, z1: number, bevels: Bevels): Point[] {
  const room = u1 - u0
  const near = Math.min(bevels.atHinge, room)
  const far = Math.min(bevels.opposite, room - near)
  return [
    { x: u0, y: z0 },
    { x: u1 - far, y: z0 },
    { x: u1, y: z1 },
    { x: u0 + near, y: z1 },
  ]
}

/** Where the pin lies: `inset` in from the outer face of its wall, `down` below the lid's outer face. */
export function pinOf({ box }: Layout, edge: LidEdge, inset: number, down: number): LidSection['pin'] {
  const at = {
    'bass wall': -box.halfWidth + inset,
    'treble wall': box.halfWidth - inset,
    'neck end': box.x0 + inset,
    'tail end': box.x1 - inset,
  }[edge]
  return { at, z: -down }
}

/** Lid and surroundings as they lie to a pin. */
export function sectionOf(layout: Layout, edge: LidEdge, pin: LidSection['pin'], bevels: Bevels): LidSection {
  const { panels, box } = layout
  const { minX, maxX, minY, maxY } = panels.lid.bounds
  const lid: Brick = {
    what: 'lid',
    x0: panels.lid.originX + minX,
    x1: panels.lid.originX + maxX,
    y0: minY,
    y1: maxY,
    z0: box.lidBottom,
    z1: 0,
  }
  const flat = turned(lid, edge, pin.at)
  const moving: Moving[] = [
    {
      what: 'lid',
      s0: flat.s0,
      s1: flat.s1,
      section: lidSection(flat.u0, flat.u1, lid.z0 - pin.z, -pin.z, bevels),
    },
    ...hungBricks(layout).map((brick) => {
      const { u0, u1, s0, s1 } = turned(brick, edge, pin.at)
      return {
        what: brick.what,
        s0,
        s1,
        section: lidSection(u0, u1, brick.z0 - pin.z, brick.z1 - pin.z, { atHinge: 0, opposite: 0 }),
      }
    }),
  ]
  const standing = standingBricks(layout).map((brick) => ({
    what: brick.what,
    ...turned(brick, edge, pin.at),
    z0: brick.z0 - pin.z,
    z1: brick.z1 - pin.z,
  }))
  return { edge, pin, moving, standing }
}

/** A place of the section in the instrument's frame: along the pin, away from it and up. */
export function backFrom(section: LidSection, s: number, at: Point): { x: number; y: number; z: number } {
  const { edge, pin } = section
  const z = at.y + pin.z
  switch (edge) {
    case 'bass wall':
      return { x: s, y: pin.at + at.x, z }
    case 'treble wall':
      return { x: s, y: pin.at - at.x, z }
    case 'neck end':
      return { x: pin.at + at.x, y: s, z }
    case 'tail end':
      return { x: pin.at - at.x, y: s, z }
  }
}
