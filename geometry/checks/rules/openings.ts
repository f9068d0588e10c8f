/** Everything open on one face, for the rules that keep openings apart: things, neck slots, string holes. */
import type { LimitName } from '../../design/limits.ts'
import type { Face } from '../../kinds/kind.ts'
import { type Bounds, bounds, type Contour, circle, rectangle } from '../../plane/index.ts'
import type { Layout } from '../../solve/layout.ts'
import { placedOn } from '../../solve/on-face.ts'

export interface Opening {
  readonly about: string
  readonly contour: Contour
  readonly bounds: Bounds
  readonly gapLimit: Extract<LimitName, 'betweenOpenings' | 'screwToOpening'>
  /** Half its lesser extent: a hole of this radius asks for at least as much wood beside it. */
  readonly radius: number
}

const opening = (
  about: string,
  contour: Contour,
  gapLimit: Opening['gapLimit'],
  box = bounds(contour),
  /** One of the many holes of a rosette: its size counts, not the field's. */
  one: Contour | undefined | false = undefined,
): Opening => ({
  about,
  contour,
  bounds: box,
  gapLimit,
  radius: halfLesser(one ? bounds(one) : box),
})

const halfLesser = (box: Bounds) => Math.min(box.maxX - box.minX, box.maxY - box.minY) / 2

/** The openings of a face in its own frame, things first. */
export function openingsOn(layout: Layout, face: Face): Opening[] {
  const found: Opening[] = []
  for (const { thing, kind, footprint, taken, openings, bounds: box } of placedOn(layout, face))
    if (taken)
      found.push(
        opening(
          thing.id,
          taken,
          kind.gapLimit,
          taken === footprint ? box : undefined,
          kind.strewn && openings[0],
        ),
      )
  for (const slot of layout.neck.slots)
    if (slot.face === face && slot.depth > 0)
      found.push(
        opening('neck slot', rectangle(-slot.width / 2, -slot.depth, slot.width / 2, 0), 'betweenOpenings'),
      )
  found.push(...stringHoles(layout, face, layout.panels[face].originX))
  return found
}

function stringHoles(layout: Layout, face: Face, originX: number): Opening[] {
  const { at, diameter } = layout.design.tailpiece
  if (!(at === 'the lid' && face === 'lid') && !(at === 'the tail-end wall' && face === 'tail-end-wall'))
    return []
  return layout.tailHoles.map((hole, index) => {
    const centre =
      face === 'lid' ? { x: hole.x - originX, y: hole.y } : { x: hole.y, y: hole.z - layout.box.wallTop }
    return opening(`string hole ${index + 1}`, circle(centre, diameter / 2), 'screwToOpening')
  })
}
