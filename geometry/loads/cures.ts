/**
 * What would do: the thinnest blank, the piece under the head, the brace under the lid. Asked only when a sentence or
 * the builder wants it, since each tries several necks or lids.
 */
import { limitOf } from '../checks/finding.ts'
import { roundingStep } from '../design/rounding.ts'
import type { Design } from '../design/schema.ts'
import { USUAL_STRIPS } from '../lid/brace.ts'
import { SAG_TERMS, sagOf } from '../lid/plate.ts'
import { firstThatPasses, thinnest } from '../neck/cure.ts'
import type { Layout } from '../solve/layout.ts'
import { solve } from '../solve/solve.ts'
import { braceOn, footOf, plateOf, type StatedBrace } from './lid-loads.ts'
import { loadsOf } from './loads.ts'
import { stretchAt } from './neck-pieces.ts'
import { remembered } from './remembered.ts'

/** Thicker blanks are not sold for necks. */
const THICKEST = 60
/** Thickest piece glued under a head. */
const MOST_GLUED = 25

/** Does a neck hold all that is asked of it: bow, rise, action and stress? `false` where it cannot be reckoned. */
export function neckHolds(layout: Layout): boolean {
  const { neck } = loadsOf(layout)
  if (!neck) return false
  const limit = limitOf(layout.design)
  return (
    Math.abs(neck.bow) <= limit('neckBow') &&
    Math.abs(neck.nutRise) <= limit('nutRise') &&
    Math.abs(neck.actionChange) <= limit('actionChange') &&
    neck.weakest.share <= limit('neckStress')
  )
}

/**
 * The thinnest blank on the builder's rule that holds, all else as it is; `null` where none up to 60 mm does, or where
 * the pull is not known. Millimetres. What the box says of so thick a neck is for the checks.
 */
export const thinnestStock = remembered((layout): number | null => {
  const { design } = layout
  if (loadsOf(layout).totalPull === null || layout.box.x0 <= 0) return null
  const passes = (thickness: number) => neckHolds(solve({ ...design, neck: { ...design.neck, thickness } }))
  return thinnest(passes, design.headstock.thickness, THICKEST, roundingStep(design.units))
})

/** What the head has at its root, with what is glued on; of a stepped head as far as it meets the neck. Millimetres. */
export const headRootOf = ({ neck, headstock }: Design): number =>
  Math.min(headstock.thickness, neck.thickness - (headstock.form === 'stepped' ? headstock.step : 0)) +
  headstock.reinforcement

/**
 * The thinnest piece to glue under the head, all of it together, that makes its root thick enough and brings its stress
 * under the limit; 0 where it needs none, `null` where 25 mm are not enough. Millimetres.
 */
export const reinforcementNeeded = remembered((layout): number | null => {
  const { design } = layout
  const limit = limitOf(design)
  const known = loadsOf(layout).totalPull !== null
  const passes = (reinforcement: number) => {
    const tried = { ...design, headstock: { ...design.headstock, reinforcement } }
    if (headRootOf(tried) < limit('headRoot')) return false
    return !known || (loadsOf(solve(tried)).neck?.head?.share ?? 0) <= limit('neckStress')
  }
  return thinnest(passes, 0, MOST_GLUED, roundingStep(design.units))
})

/** Between a brace and the neck beside or under it. */
const CLEAR_OF_NECK = 1

/**
 * How far a brace stays clear of the neck: above its top where it crosses, beside it where it runs along; `null` where no
 * neck lies in the box for it to run along.
 */
export function braceToNeck(layout: Layout, { height, width, runs, offset }: StatedBrace): number | null {
  const { neck, saddle, box, design } = layout
  if (runs === 'along') {
    const beside = Math.abs(offset) - width / 2 - design.neck.width / 2
    if (beside >= 0) return beside
    const inside = neck.stretches.filter((one) => one.x1 > box.insideX0 && one.x0 < box.insideX1)
    return inside.length > 0 ? box.lidBottom - height - Math.max(...inside.map((one) => one.top)) : null
  }
  const x = saddle.x + offset
  if (x - width / 2 > neck.x1) return x - width / 2 - neck.x1
  const tops = [x - width / 2, x, x + width / 2].map((at) => stretchAt(layout, at)?.top ?? neck.top)
  return box.lidBottom - height - Math.max(...tops)
}

/**
 * The lightest usual strip of spruce or whatever the brace is of that keeps the lid's sag within its limit: across under
 * the saddle where the neck leaves room, else along, close beside the neck; `null` where none does or the force is not
 * known.
 */
export const braceThatSuffices = remembered((layout): StatedBrace | null => {
  const { lid: loads } = loadsOf(layout)
  const lid = plateOf(layout)
  if (!loads || !lid || !(loads.downForce > 0)) return null
  const most = limitOf(layout.design)('lidSag')
  const foot = footOf(layout, loads.downForce)
  const candidates = USUAL_STRIPS.flatMap(([width, height]): StatedBrace[] => {
    const across: StatedBrace = { width, height, runs: 'across', offset: 0 }
    const clear = braceToNeck(layout, across)
    if (clear === null || clear >= CLEAR_OF_NECK) return [across]
    return [
      { width, height, runs: 'along', offset: layout.design.neck.width / 2 + width / 2 + CLEAR_OF_NECK },
    ]
  })
  return firstThatPasses(candidates, (candidate) => {
    const brace = braceOn(layout, lid, candidate)
    return brace !== null && sagOf(lid, foot, brace, SAG_TERMS).sag <= most
  })
})
