/** Pilot holes for screws, on the parts of neck and block that show the side they are drilled from. */

import { rectangle } from '../plane/index.ts'
import { type Pilot, pilotsOf } from '../solids/pilots.ts'
import type { Layout } from '../solve/layout.ts'
import { datum, drill } from './operations.ts'
import type { Operation, Part } from './part.ts'
import { flipContour, flipOperations, mirrorPart } from './sheet-frame.ts'

type View = 'top' | 'under' | 'bass side' | 'treble side' | 'head end' | 'tail end'

const VIEWS = {
  lid: 'top',
  base: 'under',
  'bass-wall': 'bass side',
  'treble-wall': 'treble side',
  'neck-end-wall': 'head end',
  'tail-end-wall': 'tail end',
} as const satisfies Record<Pilot['face'], View>

const drilled = (
  layout: Layout,
  into: Pilot['into'],
  view: View,
  where: (at: Pilot['at']) => { readonly x: number; readonly y: number },
): Operation[] =>
  pilotsOf(layout)
    .filter((one) => one.into === into && VIEWS[one.face] === view)
    .map(({ placed, at, diameter, depth }) =>
      drill(where(at), diameter, `Pilot, ${placed.thing.name || placed.thing.id}`, depth),
    )

const plan = ({ x, y }: Pilot['at']) => ({ x, y })
const side = ({ x, z }: Pilot['at']) => ({ x, y: z })

/** In the top of the neck, in the instrument's own frame. */
export const pilotsOnTop = (layout: Layout): Operation[] => drilled(layout, 'neck', 'top', plan)

/** In the bottom of the neck, in the instrument's own frame. */
export const pilotsUnder = (layout: Layout): Operation[] => drilled(layout, 'neck', 'under', plan)

/** In the side of the neck that its part shows, and in the far one. */
export function pilotsInSides(layout: Layout): { readonly near: Operation[]; readonly far: Operation[] } {
  const [near, far] =
    layout.up === 1 ? (['bass side', 'treble side'] as const) : (['treble side', 'bass side'] as const)
  return { near: drilled(layout, 'neck', near, side), far: drilled(layout, 'neck', far, side) }
}

/** The far side of the neck, where a screw goes into it. */
export function farSide(layout: Layout, near: Part): Part[] {
  const { far } = pilotsInSides(layout)
  if (far.length === 0) return []
  const lines = near.operations.filter((one) => one.kind === 'datum')
  return [
    {
      ...mirrorPart({ ...near, operations: [...lines, ...far] }),
      id: 'neck-side-inside',
      title: 'Neck, from the other side',
      seen: layout.up === 1 ? 'from the treble side' : 'from the bass side',
    },
  ]
}

/** The block under a tongue, from the playing side, and from every other side into which a screw goes. */
export function blockViews(layout: Layout, top: Part): Part[] {
  const { block, bottom } = layout.neck
  if (!block) return []
  const flip = layout.up === 1 ? 'none' : 'y'
  const onBlock = (view: View) =>
    drilled(layout, 'neck-block', view, ({ x, y }) => ({ x: x - block.minX, y }))
  const under = flipOperations(onBlock('under'), flip)
  const ends = drilled(layout, 'neck-block', 'head end', ({ y, z }) => ({ x: y, y: z - bottom }))
  const endFlip = layout.up === 1 ? 'x' : 'none'
  const outline = rectangle(block.minY, -top.thickness, block.maxY, 0)
  const shown = flipOperations(onBlock('top'), flip)
  return [
    { ...top, operations: [...top.operations, ...shown] },
    ...(under.length === 0
      ? []
      : [
          {
            ...mirrorPart({ ...top, operations: [...top.operations, ...under] }),
            id: 'neck-block-inside',
            title: 'Block under the neck, from below',
            seen: 'from the base',
          },
        ]),
    ...(ends.length === 0
      ? []
      : [
          {
            ...top,
            id: 'neck-block-end',
            title: 'Block under the neck, from its end',
            seen: 'from the head',
            headEnd: 'towards the viewer' as const,
            thickness: block.maxX - block.minX,
            outline: flipContour(outline, endFlip),
            operations: [
              ...flipOperations(ends, endFlip),
              datum({ x: 0, y: -top.thickness }, { x: 0, y: 0 }, 'Centreline'),
            ],
          },
        ]),
  ]
}
