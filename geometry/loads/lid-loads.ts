/** The lid of a layout under the saddle, and the brace glued to it. */
import { addedBend } from '../lid/brace.ts'
import { type Foot, type Lid, type LidBrace, SAG_TERMS, sagOf } from '../lid/plate.ts'
import { evenSheet, solidWood } from '../lid/sheet.ts'
import { type LidStuff, lidStuffNamed } from '../neck/named-woods.ts'
import { PANELS } from '../neck/woods.ts'
import type { Layout } from '../solve/layout.ts'
import { stretchAt, woodOf } from './neck-pieces.ts'
import type { LidLoads } from './types.ts'

/** Millimetres: what touches, carries. */
const TOUCHES = 1e-6

export const lidStuffOf = ({ box, woods }: Pick<Layout['design'], 'box' | 'woods'>): LidStuff =>
  lidStuffNamed(box.lid.stuff, woods) ?? { ...PANELS.plywood, sheet: true }

/** The lid as a plate over the inside of the box; `null` where walls leave none. */
export function plateOf({ design, box }: Layout): Lid | null {
  const length = box.insideX1 - box.insideX0
  const width = box.insideTreble - box.insideBass
  if (!(length > 0 && width > 0)) return null
  const { stiffness, sheet } = lidStuffOf(design)
  const { thickness, grain } = design.box.lid
  const stuff = sheet || grain === 'none' ? evenSheet(stiffness) : solidWood(stiffness, grain)
  return { length, width, thickness, stuff }
}

/** The foot of the saddle on that plate, pressed with `force` newtons. */
export function footOf({ design, saddle, box }: Layout, force: number): Foot {
  return {
    force,
    along: saddle.x - box.insideX0,
    across: -box.insideBass,
    long: design.saddle.thickness,
    wide: design.saddle.length,
  }
}

export interface StatedBrace {
  readonly width: number
  readonly height: number
  readonly runs: 'across' | 'along'
  readonly offset: number
}

/** A brace as the plate knows it; `null` where there is none, or where it would lie beside the lid. */
export function braceOn(layout: Layout, lid: Lid, brace: StatedBrace): LidBrace | null {
  const { design, saddle, box } = layout
  if (brace.height <= 0) return null
  const at = brace.runs === 'across' ? saddle.x + brace.offset - box.insideX0 : brace.offset - box.insideBass
  if (at <= 0 || at >= (brace.runs === 'across' ? lid.length : lid.width)) return null
  const stiffness = brace.runs === 'across' ? lid.stuff.stiffnessAcross : lid.stuff.stiffnessAlong
  const stuff = woodOf(design.brace.wood, design)
  return {
    runs: brace.runs,
    at,
    bend: addedBend(
      { width: brace.width, height: brace.height, stuff },
      { thickness: lid.thickness, stiffness },
    ),
  }
}

/** Does the lid lie on the neck where the saddle stands? */
export function liesOnNeck(layout: Layout): boolean {
  const { neck, saddle, box } = layout
  if (saddle.x > neck.x1) return false
  const top = stretchAt(layout, saddle.x)?.top
  return top !== undefined && top >= box.lidBottom - TOUCHES
}

/** A lid that sags by a metre has given way long before; more says no more. Millimetres. */
const MOST_SAG = 1000

/** Sag of the lid under a force; `null` without a lid to speak of. No force makes no sag. */
export function lidLoadsOf(layout: Layout, downForce: number): LidLoads | null {
  const lid = plateOf(layout)
  if (!lid) return null
  const onNeck = liesOnNeck(layout)
  if (!(downForce > 0)) return { downForce, sag: 0, bareSag: 0, onNeck }
  const foot = footOf(layout, downForce)
  const bareSag = Math.min(MOST_SAG, sagOf(lid, foot, undefined, SAG_TERMS).sag)
  const brace = onNeck ? null : braceOn(layout, lid, layout.design.brace)
  const sag = brace ? Math.min(MOST_SAG, sagOf(lid, foot, brace, SAG_TERMS).sag) : bareSag
  return { downForce, sag: onNeck ? 0 : sag, bareSag, onNeck }
}

/**
 * Bending stress in the lid's faces under the foot, along the strings and across, with the brace stated; `null` where no
 * force is known or the neck carries it. N/mm², an estimate.
 */
export function lidStressOf(
  layout: Layout,
  { downForce, onNeck }: LidLoads,
): { readonly along: number; readonly across: number } | null {
  const lid = plateOf(layout)
  if (!lid || onNeck || !(downForce > 0)) return null
  const brace = braceOn(layout, lid, layout.design.brace) ?? undefined
  const { stressAlong, stressAcross } = sagOf(lid, footOf(layout, downForce), brace)
  return { along: stressAlong, across: stressAcross }
}
