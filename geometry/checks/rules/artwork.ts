/** Pictures that are to stay whole: nothing is cut in them, nor nearer than the distance stated with each. */
import { artworkOf } from '../../box/artwork.ts'
import type { Face } from '../../kinds/kind.ts'
import { type Contour, circle, gap, nearest, rectangle } from '../../plane/index.ts'
import type { Layout } from '../../solve/layout.ts'
import { placedOn } from '../../solve/on-face.ts'
import { gradeLeast, type Measurement, type Rule } from '../finding.ts'
import { capital } from '../say.ts'

/** What is cut into a face besides the things on it: neck slots and string holes. */
function structureOn(layout: Layout, face: Face): [string, Contour][] {
  const { neck, tailHoles, design, panels, box } = layout
  const cuts: [string, Contour][] = []
  for (const slot of neck.slots)
    if (slot.face === face && slot.depth > 0)
      cuts.push(['neck', rectangle(-slot.width / 2, -slot.depth, slot.width / 2, 0)])
  const radius = design.tailpiece.diameter / 2
  const onLid = design.tailpiece.at === 'the lid' && face === 'lid'
  const onWall = design.tailpiece.at === 'the tail-end wall' && face === 'tail-end-wall'
  if (onLid || onWall)
    tailHoles.forEach((hole, index) => {
      const at = onLid
        ? { x: hole.x - panels.lid.originX, y: hole.y }
        : { x: hole.y, y: hole.z - box.wallTop }
      cuts.push([`string hole ${index + 1}`, circle(at, radius)])
    })
  return cuts
}

export const artworkKept: Rule = {
  name: 'artwork-kept',
  title: 'Artwork kept whole',
  unit: 'mm',
  wants: 'least',
  limits: [],
  mendedBy: ['place', 'size'],
  measure(layout) {
    const found: Measurement[] = []
    for (const { art, face, contour } of artworkOf(layout)) {
      const cuts: [string, Contour][] = [
        ...placedOn(layout, face).map(({ thing, footprint }): [string, Contour] => [thing.id, footprint]),
        ...structureOn(layout, face),
      ]
      let nearestOne: Measurement | null = null
      let least = Number.POSITIVE_INFINITY
      for (const [id, cut] of cuts) {
        const measured = gap(cut, contour)
        const { from, to } = nearest(cut, contour)
        const one: Measurement = {
          about: [art.id, id],
          measured,
          limit: art.keep,
          grade: gradeLeast(measured, art.keep, 0),
          where: { view: face, from, to },
        }
        if (one.grade !== 'clear') found.push(one)
        else if (measured < least) [nearestOne, least] = [one, measured]
      }
      if (nearestOne) found.push(nearestOne)
    }
    return found
  },
  words({ measured, limit, about, grade }, say) {
    const [art, cut] = [say.thing(about[0] ?? ''), say.thing(about[1] ?? '')]
    if (grade === 'stop')
      return `${capital(cut)} takes ${say.length(-(measured ?? 0))} out of ${art}, which is to stay whole. Move it, or give the picture up.`
    const room = `${capital(cut)} keeps ${say.length(measured ?? 0)} from ${art}`
    return grade === 'clear' ? `${room}.` : `${room}; ${say.length(limit ?? 0)} are to be kept.`
  },
}
