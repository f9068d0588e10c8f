/** What is drilled in the head, and the parts it needs beside the neck: a scarfed head of its own, the back with its screws. */
import { scarfOf, tiltOf } from '../neck/head-form.ts'
import { headOf, headOutline } from '../neck/head-layout.ts'
import { bounds, circle, type Point, polygon } from '../plane/index.ts'
import type { Layout } from '../solve/layout.ts'
import { datum, drill, mark } from './operations.ts'
import type { Operation, Part } from './part.ts'
import { flipContour, flipOperation, mirrorPart } from './sheet-frame.ts'

/** Post holes as they stand in the face of the head, with the wider hole for a bushing. Places are the face's own. */
export function postOperations({ design }: Layout, posts: readonly Point[]): Operation[] {
  const { postHole, bushing, bushingHole, bushingDepth, thickness } = design.headstock
  const letIn = bushing === 'let in' && bushingHole > postHole
  return posts.flatMap(({ x, y }) => [
    drill({ x, y }, postHole, 'Tuner post'),
    ...(letIn
      ? [drill({ x, y }, bushingHole, 'Tuner bushing', bushingDepth < thickness ? bushingDepth : 'through')]
      : []),
  ])
}

/** The parts a head needs for itself, its front first. */
export function headParts(layout: Layout, neckTop: Part): Part[] {
  const own = scarfedHead(layout)
  const front = own[0] ?? neckTop
  return [...own, ...backOf(layout, front)]
}

/** A scarfed head as it is sawn and bevelled, from the front and from the side, before it is glued on. */
function scarfedHead(layout: Layout): Part[] {
  const { design, nut } = layout
  const scarf = scarfOf(design, nut.x0)
  const { length, thickness } = design.headstock
  if (!scarf || length + nut.x0 <= 0) return []
  const bevel = thickness / Math.tan(tiltOf(design.headstock))
  const outline = headOutline(design, nut.x0, bevel)
  const flip = layout.up === 1 ? 'none' : 'y'
  const { minX, maxX } = bounds(outline)
  const half = design.neck.widthAtNut / 2
  const operations: Operation[] = [
    ...postOperations(
      layout,
      headOf(layout).tuners.map((one) => one.post),
    ),
    datum({ x: minX, y: 0 }, { x: maxX, y: 0 }, 'Centreline'),
    mark({ x: nut.x0, y: -half }, { x: nut.x0, y: half }, 'Back of the nut, the bevel begins'),
  ]
  const common = { mirrored: false, headEnd: 'left', hand: design.hand } as const
  return [
    {
      ...common,
      id: 'headstock',
      title: 'Head, from the front',
      seen: 'from the playing side',
      thickness,
      outline: flipContour(outline, flip),
      operations: operations.map((one) => flipOperation(one, flip)),
    },
    {
      ...common,
      id: 'headstock-side',
      title: 'Head, from the side',
      seen: layout.up === 1 ? 'from the bass side' : 'from the treble side',
      thickness: design.headstock.width,
      outline: polygon([
        { x: minX, y: 0 },
        { x: minX, y: -thickness },
        { x: nut.x0 + bevel, y: -thickness },
        { x: nut.x0, y: 0 },
      ]),
      operations: [],
    },
  ]
}

/** The side from which the tuners' screws are drilled, where they have any; what is drilled from the front is marked. */
function backOf(layout: Layout, front: Part): Part[] {
  const { screws, screwPilot, screwDepth, thickness } = layout.design.headstock
  const scarfed = front.id === 'headstock'
  const { tuners } = headOf(layout)
  if (screws === 0 || tuners.length === 0) return []
  const flip = layout.up === 1 ? 'none' : 'y'
  const depth = screwDepth < thickness ? screwDepth : 'through'
  const operations: Operation[] = tuners.flatMap(({ screws: holes, hole, post }) => [
    ...holes.map((at) => drill(at, screwPilot, 'Tuner screw', depth)),
    { kind: 'mark', contour: circle(post, hole.radius), of: 'Tuner post' } as const,
  ])
  const lines = front.operations.filter((one) => one.kind === 'datum' && one.of === 'Centreline')
  const turned = operations.map((one) => flipOperation(one, flip))
  return [
    {
      ...mirrorPart({ ...front, operations: [...turned, ...lines] }),
      id: scarfed ? 'headstock-inside' : 'neck-top-inside',
      title: scarfed ? 'Head, from behind' : 'Neck, from behind',
      seen: 'from behind',
    },
  ]
}
