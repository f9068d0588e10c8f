import { tailWallAt } from '../../box/outlines.ts'
import { loadsOf } from '../../loads/loads.ts'
import { type Bounds, clearance, gap, nearest, rectangle } from '../../plane/index.ts'
import type { Layout, Panel } from '../../solve/layout.ts'
import { gradeLeast, type Measurement, type Rule } from '../finding.ts'
import { capital } from '../say.ts'

/** The lid must be free to move under the saddle; some put it by the wall on purpose, so it is never a stop. */
export const saddleToTailWall: Rule = {
  name: 'saddle-to-tail-wall',
  title: 'Saddle to the tail-end wall',
  unit: 'mm',
  wants: 'least',
  limits: ['saddleToTailWall'],
  mendedBy: ['saddle.place'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const { saddle, box, real } = layout
    // A wall askew is nearest one end of the foot.
    const { minY, maxY, maxX } = saddle.foot
    const end = real && tailWallAt(layout, minY) < tailWallAt(layout, maxY) ? minY : maxY
    const wall = real ? tailWallAt(layout, end) : box.insideX1
    const y = real ? end : 0
    const measured = wall - maxX
    const wanted = limit('saddleToTailWall')
    found.push({
      about: ['saddle'],
      measured,
      limit: wanted,
      grade: gradeLeast(measured, wanted),
      where: { view: 'plan', from: { x: maxX, y }, to: { x: wall, y } },
    })
    return found
  },
  words({ measured, limit, grade }, say) {
    if ((measured ?? 0) < 0)
      return `The saddle’s foot stands ${say.length(-(measured ?? 0))} over the tail-end wall, where the lid cannot move.`
    const left = `From the saddle’s foot to the inside of the tail-end wall are ${say.length(measured ?? 0)}`
    return grade === 'clear'
      ? `${left}.`
      : `${left}; under ${say.length(limit ?? 0)} the lid is stiff and the sound thin.`
  },
}

function footInRectangle(foot: Bounds, { bounds, originX }: Panel): number {
  return Math.min(
    foot.minX - (bounds.minX + originX),
    bounds.maxX + originX - foot.maxX,
    foot.minY - bounds.minY,
    bounds.maxY - foot.maxY,
  )
}

function footInside({ saddle, panels }: Layout): number {
  const { minX, minY, maxX, maxY } = saddle.foot
  const { outline, originX } = panels.lid
  return clearance(rectangle(minX - originX, minY, maxX - originX, maxY), outline).distance
}

/** The whole foot, wherever it may be moved to, must stand on the lid. */
export const saddleOnLid: Rule = {
  name: 'saddle-on-lid',
  title: 'Saddle on the lid',
  unit: 'mm',
  wants: 'least',
  limits: [],
  mendedBy: ['saddle.place', 'saddle.length'],
  measure(layout) {
    const found: Measurement[] = []
    const { saddle, panels, real } = layout
    const measured = real ? footInside(layout) : footInRectangle(saddle.foot, panels.lid)
    found.push({
      about: ['saddle'],
      measured,
      limit: 0,
      grade: gradeLeast(measured, 0, 0),
      where: {
        view: 'plan',
        from: { x: saddle.foot.minX, y: saddle.foot.minY },
        to: { x: saddle.foot.maxX, y: saddle.foot.maxY },
      },
    })
    return found
  },
  words({ measured, grade }, say) {
    return grade === 'clear'
      ? `The saddle’s foot stands on the lid, ${say.length(measured ?? 0)} from its nearest edge.`
      : `The saddle’s foot reaches ${say.length(-(measured ?? 0))} beyond the lid. Move the box under it, or shorten the saddle.`
  },
}

export const saddleToOpening: Rule = {
  name: 'saddle-to-opening',
  title: 'Saddle to an opening',
  unit: 'mm',
  wants: 'least',
  limits: ['saddleToOpening'],
  mendedBy: ['place', 'size', 'saddle.place'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const { saddle, panels } = layout
    const { minX, minY, maxX, maxY } = saddle.foot
    const { originX } = panels.lid
    const foot = rectangle(minX - originX, minY, maxX - originX, maxY)
    const wanted = limit('saddleToOpening')
    for (const { thing, kind, face, footprint } of layout.placed) {
      // Screws do not weaken the lid there, and a pickup stands where it sounds best.
      if (face !== 'lid' || kind.edgeLimit !== 'openingToEdge' || kind.overNeck === 'meant') continue
      const measured = gap(footprint, foot)
      const { from, to } = nearest(footprint, foot)
      found.push({
        about: [thing.id, 'saddle'],
        measured,
        limit: wanted,
        grade: gradeLeast(measured, wanted, 0),
        where: { view: 'lid', from, to },
      })
    }
    return found
  },
  words({ measured, limit, about, grade }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    if (grade === 'stop')
      return `${who} lies under the saddle’s foot by ${say.length(-(measured ?? 0))}. Move it away.`
    const left = `${who} is ${say.length(measured ?? 0)} from the saddle’s foot`
    return grade === 'clear'
      ? `${left}.`
      : `${left}; the lid carries the strings here and wants ${say.length(limit ?? 0)}.`
  },
}

/** Fretting sharpens every note: a saddle at the bare scale length plays sharp, unless it can still be moved. */
export const saddleSetback: Rule = {
  name: 'saddle-setback',
  title: 'Saddle behind the bare scale',
  unit: 'mm',
  wants: 'least',
  limits: [],
  measure(layout) {
    const found: Measurement[] = []
    const { design, saddle } = layout
    // With a tuning the setback is reckoned, and held against what is stated, unless a slide makes it needless.
    if (design.saddle.setback > 0 || loadsOf(layout).saddle.line || !loadsOf(layout).missing) return found
    found.push({
      about: ['saddle'],
      measured: design.saddle.setback,
      limit: null,
      grade: 'note',
      where: {
        view: 'plan',
        from: { x: saddle.x, y: saddle.foot.minY },
        to: { x: saddle.x, y: saddle.foot.maxY },
      },
    })
    return found
  },
  words(_finding, say, layout) {
    const { freeBand } = layout.design.saddle
    return `The saddle line stands at the bare scale length. Pressing a string sharpens it, so leave the saddle loose, free to move ${say.length(freeBand)} either way, until the octaves are true; 1 to 4 mm farther back is common practice.`
  },
}
