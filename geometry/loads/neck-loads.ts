/** The neck of a layout under the pull of its strings. */
import { bendNeck, type NeckBow, type NeckHold, type NeckLoad } from '../neck/bending.ts'
import { mostStrained } from '../neck/sections.ts'
import { type NeckPiece, sectionAt } from '../neck/span.ts'
import type { Layout } from '../solve/layout.ts'
import { piecesOf, stretchAt } from './neck-pieces.ts'
import type { NeckLoads, NeckTrouble } from './types.ts'

export type NeckLoadsReading =
  | { readonly neck: NeckLoads; readonly trouble: null }
  | { readonly neck: null; readonly trouble: NeckTrouble }

/**
 * Bow, rise and strain of the neck under a pull in newtons. It is an estimate; `neck/bending.ts` says what it leaves
 * out. A nut that lies on the box, a neck cut through, and one that the pull would fold have no numbers.
 */
export function neckLoadsOf(layout: Layout, pull: number): NeckLoadsReading {
  const { box, design, neck } = layout
  if (box.x0 <= 0) return { neck: null, trouble: 'nut on the box' }
  const load = loadOn(layout, pull)
  const hold: NeckHold =
    design.neck.ends === 'through the box'
      ? { by: 'two walls', front: box.x0, back: Math.min(box.x1, neck.x1) }
      : { by: 'block', front: box.x0 }
  const pieces = piecesOf(layout)
  const bent = bendNeck(pieces, load, hold, design.scale.length / 2)
  if (!bent.ok) return { neck: null, trouble: bent.why }
  const weakest = { ...bent.weakest, of: stretchAt(layout, bent.weakest.x)?.of ?? 'neck' }
  return { neck: { ...bent, weakest, head: headStrain(pieces, load) }, trouble: null }
}

function loadOn(layout: Layout, pull: number): NeckLoad {
  const { design, strings, saddle, tailHoles, neck } = layout
  const thick = mean(strings, ({ gauge }) => gauge) / 2
  const nut = { x: 0, z: mean(strings, ({ zAtNut }) => zAtNut) + thick }
  const posts = strings.flatMap((one) => (one.post && one.post.x < 0 ? [one.post.winds] : []))
  const hole = tailHoles[0]
  const byNeck = design.tailpiece.at === 'the tail of the neck' && design.neck.ends === 'through the box'
  return {
    pull,
    nut,
    saddle: { x: saddle.x, z: mean(strings, ({ zAtSaddle }) => zAtSaddle) + thick },
    ...(posts.length > 0
      ? {
          posts: {
            x: Math.max(
              mean(posts, ({ x }) => x),
              neck.x0,
            ),
            z: mean(posts, ({ z }) => z),
          },
        }
      : {}),
    anchor: byNeck && hole ? { x: hole.x, z: hole.z } : null,
  }
}

function mean<Item>(items: readonly Item[], of: (item: Item) => number): number {
  let sum = 0
  for (const item of items) sum += of(item)
  return sum / items.length
}

/** The most strained place between posts and nut. */
function headStrain(pieces: readonly NeckPiece[], { pull, nut, posts }: NeckLoad): NeckBow['weakest'] | null {
  if (!posts || posts.x >= nut.x) return null
  let worst: NeckBow['weakest'] = { x: posts.x, stress: 0, share: 0, height: 0 }
  for (const piece of pieces) {
    const [x0, x1] = [Math.max(piece.x0, posts.x), Math.min(piece.x1, nut.x)]
    if (x1 <= x0) continue
    for (const x of [x0, x1]) {
      const section = sectionAt(piece, x)
      if (!section) continue
      const z = posts.z + ((nut.z - posts.z) * (x - posts.x)) / (nut.x - posts.x)
      const strain = mostStrained(section, pull, pull * (z - section.axis))
      if (strain.share > worst.share) worst = { x, ...strain }
    }
  }
  return worst
}
