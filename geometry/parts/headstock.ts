/** What is drilled in the head, and the parts it needs beside the neck: a scarfed head of its own, the back with its screws. */
import { tiltOf } from '../neck/head-form.ts'
import { headOf, headOutline } from '../neck/head-layout.ts'
import { scarfOf } from '../neck/scarf.ts'
import { bounds, circle, type Point, polygon } from '../plane/index.ts'
import type { Layout } from '../solve/layout.ts'
import { datum, drill, mark } from './operations.ts'
import type { Operation, Part } from './part.ts'
import { pilotsUnder } from './pilots.ts'
import { flipContour, flipOperations, mirrorPart } from './sheet-frame.ts'

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
  return [...own, ...backsOf(layout, neckTop, own[0])]
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
      operations: flipOperations(operations, flip),
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

/** The sides from which tuners' screws and screws through the base are drilled; what is drilled from the front is marked. */
function backsOf(layout: Layout, neckTop: Part, head: Part | undefined): Part[] {
  const screwed = layout.design.headstock.screws > 0 ? tunerScrews(layout) : []
  const under = pilotsUnder(layout)
  const onNeck = [...(head ? [] : screwed), ...under]
  return [
    ...(onNeck.length > 0 ? [behind(layout, neckTop, onNeck, 'Neck, from behind')] : []),
    ...(head && screwed.length > 0 ? [behind(layout, head, screwed, 'Head, from behind')] : []),
  ]
}

function tunerScrews(layout: Layout): Operation[] {
  const { screwPilot, screwDepth, thickness } = layout.design.headstock
  const depth = screwDepth < thickness ? screwDepth : 'through'
  return headOf(layout).tuners.flatMap(({ screws: holes, hole, post }) => [
    ...holes.map((at) => drill(at, screwPilot, 'Tuner screw', depth)),
    { kind: 'mark', contour: circle(post, hole.radius), of: 'Tuner post' } as const,
  ])
}

function behind(layout: Layout, front: Part, done: readonly Operation[], title: string): Part {
  const flip = layout.up === 1 ? 'none' : 'y'
  const lines = front.operations.filter((one) => one.kind === 'datum' && one.of === 'Centreline')
  const turned = flipOperations(done, flip)
  return {
    ...mirrorPart({ ...front, operations: [...turned, ...lines] }),
    id: `${front.id}-inside`,
    title,
    seen: 'from behind',
  }
}
