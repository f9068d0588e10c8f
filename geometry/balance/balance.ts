/** Where an instrument balances, which end drops and what cures it. Reckoned when asked for, remembered with its layout. */
import { remembered } from '../loads/remembered.ts'
import type { Layout } from '../solve/layout.ts'
import { type Piece, piecesByWeight } from './weight.ts'

export interface Held {
  readonly by: 'the lap' | 'the strap'
  /** Where it is held, from the nut. */
  readonly x: number
  /** Which end goes down, or neither. A strap holds the tail by its own button. */
  readonly drops: 'head' | 'tail' | 'neither'
  /** From where it is held to where it balances; positive towards the head. */
  readonly arm: number
  /** What a hand at the nut must bear, up where positive, to keep it level: newtons. */
  readonly atNut: number
  /** Grams where the ballast is stated to lie, above what is there, that make it level; `null` where none can. */
  readonly ballast: number | null
  /** Where it would be level without a hand, from the neck-end face of the box. */
  readonly levelAt: number
}

export interface Balance {
  readonly pieces: readonly Piece[]
  /** Grams. */
  readonly mass: number
  /** Balance point from the nut, and from the neck-end face of the box, towards the tail. */
  readonly x: number
  readonly fromWall: number
  readonly held: Held | null
}

/** Standard acceleration of free fall, m/s² (CGPM 1901). */
const GRAVITY = 9.80665

/** Nearer than this it hangs level; millimetres. */
const LEVEL = 0.5

/** The middle of all weights: `sum(m x) / sum(m)`. Example: 100 g at 0 and 300 g at 400 balance at 300. */
export function balancePoint(pieces: readonly Pick<Piece, 'mass' | 'x'>[]): { mass: number; x: number } {
  const mass = pieces.reduce((sum, one) => sum + one.mass, 0)
  return { mass, x: mass > 0 ? pieces.reduce((sum, one) => sum + one.mass * one.x, 0) / mass : 0 }
}

/**
 * Weight and balance of a layout. Held on the lap it turns about where it lies; on a strap about its front button, over
 * which the head goes down as soon as it balances on the neck's side of it (common practice, no source).
 * Example: `balanceOf(solve(design)).mass` is some 900 g.
 */
export const balanceOf = remembered((layout: Layout): Balance => {
  const pieces = piecesByWeight(layout)
  const { mass, x } = balancePoint(pieces)
  const { box } = layout
  return { pieces, mass, x, fromWall: x - box.x0, held: heldOf(layout, mass, x) }
})

/** Where the strap button nearest the head stands, of those that are not on the tail-end wall; `null` without one. */
function frontButton({ placed, panels }: Layout): number | null {
  let front: number | null = null
  for (const { kind, face, at } of placed) {
    if (!kind.holdsStrap || face === 'tail-end-wall') continue
    const x = panels[face].originX + (face === 'neck-end-wall' ? 0 : at.x)
    if (front === null || x < front) front = x
  }
  return front
}

function heldOf(layout: Layout, mass: number, x: number): Held | null {
  const { design, box } = layout
  const { held, lapAt, strapAt, ballastFromTail } = design.balance
  if (held === 'not stated') return null
  const strap = held === 'by a strap'
  const at = strap ? (frontButton(layout) ?? box.x0 + strapAt) : box.x0 + lapAt
  const arm = at - x
  const drops = Math.abs(arm) < LEVEL ? 'neither' : arm > 0 ? 'head' : strap ? 'neither' : 'tail'
  const lever = box.insideX1 - ballastFromTail - at
  const more = lever === 0 ? null : (mass * arm) / lever
  return {
    by: strap ? 'the strap' : 'the lap',
    x: at,
    drops,
    arm,
    atNut: drops === 'neither' || at <= 0 ? 0 : ((mass / 1000) * GRAVITY * arm) / at,
    ballast: drops === 'head' && more !== null && more > 0 ? more : null,
    levelAt: x - box.x0,
  }
}
