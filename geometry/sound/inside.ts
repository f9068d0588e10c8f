/** What is left of the inside of a box once neck, blocks, braces and hardware have taken their room. mm³. */
import { neckVolume } from '../balance/neck-volume.ts'
import { wallLinesOf } from '../box/outlines.ts'
import { area } from '../plane/index.ts'
import { thingSolids } from '../solids/bodies.ts'
import { insideSolids } from '../solids/inside.ts'
import type { Layout } from '../solve/layout.ts'

export interface Taken {
  /** Structure by its name, or the id of a thing. */
  readonly what: string
  readonly volume: number
}

export interface Inside {
  /** Between walls, lid and base, empty. */
  readonly empty: number
  readonly taken: readonly Taken[]
  /** What the air has. Never negative. */
  readonly air: number
}

/** Upright round corners take a square's rest: `(4 − pi) r²`. */
const cornerLoss = (radius: number) => (4 - Math.PI) * radius * radius

/**
 * The inside and what stands in it. Wood let into other wood is not counted twice as far as the layout knows of it;
 * glue, wires and the gaps of a loose lid are left out.
 */
export function insideOf(layout: Layout): Inside {
  const { box, design, neck } = layout
  const long = Math.max(0, box.insideX1 - box.insideX0)
  const wide = Math.max(0, box.insideTreble - box.insideBass)
  const high = Math.max(0, box.lidBottom - box.baseTop)
  const { walls, cornerRadius } = design.box
  const inner = Math.max(0, cornerRadius - Math.max(walls.neckEnd, walls.tailEnd, walls.bass, walls.treble))
  // Of a box out of square the inside is what the survey makes it.
  const outline = layout.real ? wallLinesOf(layout).inside : null
  const floor = outline ? area(outline) : long * wide
  const empty = Math.max(0, floor - cornerLoss(inner)) * high
  const taken: Taken[] = []
  const take = (what: string, volume: number) => {
    if (volume > 0) taken.push({ what, volume })
  }
  take('neck', neckVolume(layout, box.insideX0, box.insideX1, box.baseTop, box.lidBottom).volume)
  if (neck.block) {
    const { minX, maxX, minY, maxY } = neck.block
    take(
      'neck block',
      (maxX - minX) * (maxY - minY) * Math.max(0, Math.min(neck.bottom, box.lidBottom) - box.baseTop),
    )
  }
  const { brace } = design
  if (brace.height > 0) take('brace', brace.height * brace.width * (brace.runs === 'across' ? wide : long))
  for (const { of, box: room } of insideSolids(layout))
    take(of, (room.maxX - room.minX) * (room.maxY - room.minY) * (room.maxZ - room.minZ))
  const byThing = new Map<string, number>()
  for (const { of, sort, axis, contour, from, to } of thingSolids(layout)) {
    if (sort === 'fastener') continue
    const [low, high] =
      axis === 'z'
        ? [box.baseTop, box.lidBottom]
        : axis === 'y'
          ? [box.insideBass, box.insideTreble]
          : [box.insideX0, box.insideX1]
    const deep = Math.max(0, Math.min(to, high) - Math.max(from, low))
    byThing.set(of, (byThing.get(of) ?? 0) + area(contour) * deep)
  }
  for (const [id, volume] of byThing) take(id, volume)
  const sum = taken.reduce((total, one) => total + one.volume, 0)
  return { empty, taken, air: Math.max(0, empty - sum) }
}
