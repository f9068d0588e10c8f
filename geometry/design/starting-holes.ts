/** The sound holes of a starting design: two, mirrored, each half way between neck and edge. */
import { lidInset } from '../box/box.ts'
import { LIMITS } from './limits.ts'
import type { Rounding } from './rounding.ts'
import type { Design } from './schema.ts'

/** Larger ones are a matter of taste, and the lid carries the strings. */
const LARGEST = 38
/** Smaller ones are drill holes. */
const SMALLEST = 10
/** Over every limit, so that a tape measure may be half a millimetre wrong. */
const SLACK = 0.5
/** Half the foot of a saddle. */
const HALF_FOOT = 2.5

/**
 * Two round holes as large as the clearances allow, or none where only a drill hole would fit. Lengths in mm;
 * `saddleAlong` from the lid's neck-end edge.
 *
 * Across, a hole stands midway between neck and edge. On a narrow box that would put it over the wall, so there it
 * stands midway between neck and wall.
 */
export function startingHoles(box: Design['box'], neckWidth: number, saddleAlong: number, rounded: Rounding) {
  const between = box.lid.fit === 'between the walls'
  const neck = neckWidth / 2
  const wall = box.width / 2 - Math.max(box.walls.bass, box.walls.treble)
  const edge = between ? wall - box.lid.play : box.width / 2
  const around = (y: number) =>
    Math.min(
      y - neck - LIMITS.openingToNeck.value,
      wall - y - LIMITS.openingToWall.value,
      edge - y - LIMITS.openingToEdge.value,
    )
  const neckWall = box.walls.neckEnd - lidInset(box)
  const centre = (neckWall + saddleAlong) / 2
  const along = Math.min(
    centre - LIMITS.openingToEdge.value,
    centre - neckWall - LIMITS.openingToWall.value,
    saddleAlong - HALF_FOOT - centre - LIMITS.saddleToOpening.value,
  )
  const sizeAt = (y: number) => rounded.down(Math.min(LARGEST, 2 * (Math.min(around(y), along) - SLACK)))
  const byEdge = sizeAt((neck + edge) / 2)
  const byWall = sizeAt((neck + wall) / 2)
  const diameter = byEdge >= SMALLEST ? byEdge : byWall
  if (diameter < SMALLEST) return []
  return [
    {
      kind: 'sound-hole',
      id: 'hole-treble',
      name: 'Treble hole',
      face: 'lid',
      along: { midway: ['neck-end wall', 'saddle'] },
      across: { midway: ['neck treble side', byEdge >= SMALLEST ? 'treble edge' : 'treble wall'] },
      diameter,
    },
    {
      kind: 'sound-hole',
      id: 'hole-bass',
      name: 'Bass hole',
      face: 'lid',
      along: { mirror: 'hole-treble' },
      across: { mirror: 'hole-treble' },
      diameter,
    },
  ]
}
