import { wallLinesOf } from '../../box/outlines.ts'
import type { Face } from '../../kinds/kind.ts'
import { type Contour, clearance, move } from '../../plane/index.ts'
import { gradeLeast, type Measurement, type Rule } from '../finding.ts'
import { capital } from '../say.ts'

/** Openings of lid and base must lie inside the walls that stand under them. */
export const openingToWall: Rule = {
  name: 'opening-to-wall',
  title: 'To the inside of the walls',
  unit: 'mm',
  wants: 'least',
  limits: ['openingToWall'],
  mendedBy: ['place', 'size'],
  measure(layout, limit) {
    const found: Measurement[] = []
    if (layout.placed.length === 0) return found
    const { inside } = wallLinesOf(layout)
    if (!inside) return found
    const onFace = new Map<Face, Contour>()
    for (const { thing, kind, face, openings, taken } of layout.placed) {
      if ((face !== 'lid' && face !== 'base') || kind.overWall === 'meant') continue
      const walls = onFace.get(face) ?? move(inside, -layout.panels[face].originX, 0)
      onFace.set(face, walls)
      // Of many openings, and of what is only let in, the outline of all is what counts.
      for (const opening of openings.length > 1 && taken ? [taken] : openings) {
        const { distance, from, to } = clearance(opening, walls)
        const wanted = limit('openingToWall')
        found.push({
          about: [thing.id],
          measured: distance,
          limit: wanted,
          grade: gradeLeast(distance, wanted, 0),
          where: { view: face, from, to },
        })
      }
    }
    return found
  },
  words({ measured, limit, about, grade }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    if (grade === 'stop')
      return `${who} lies ${say.length(-(measured ?? 0))} over a wall. Move it in, off the wall.`
    const left = `${who} is ${say.length(measured ?? 0)} from the inside of the wall`
    return grade === 'clear' ? `${left}.` : `${left}; ${say.length(limit ?? 0)} keep the drill off it.`
  },
}
