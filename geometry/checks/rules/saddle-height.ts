import { endsOf } from '../../box/outlines.ts'
import type { LimitName } from '../../design/limits.ts'
import { loadsOf } from '../../loads/loads.ts'
import { gap, rectangle } from '../../plane/index.ts'
import type { Layout } from '../../solve/layout.ts'
import { degreesOf, gradeLeast, gradeMost, type Measurement, type Rule, type Where } from '../finding.ts'
import type { Say } from '../say.ts'

const upright = ({ saddle }: Layout, height: number): Where => ({
  view: 'section',
  from: { x: saddle.x, y: 0 },
  to: { x: saddle.x, y: height },
})

function cureOf(layout: Layout, say: Say): string {
  const cure = loadsOf(layout).saddle.cure
  if (!cure) return 'Choose another action.'
  const way = cure.raise > 0 ? 'Raise' : 'Let in'
  const lean = cure.raise > 0 ? 'back' : 'forward'
  const tilt =
    cure.tilt === null
      ? ''
      : `, or tilt it ${say.angle(Math.abs(degreesOf(cure.tilt)))} at the box, its head ${lean}`
  return `${way} the neck by ${say.length(Math.abs(cure.raise))}${tilt}.`
}

const built = (side: 'low' | 'tall', limitName: LimitName): Rule => ({
  name: `saddle-${side}`,
  title: side === 'low' ? 'Saddle tall enough to build' : 'Saddle low enough to stand',
  unit: 'mm',
  wants: side === 'low' ? 'least' : 'most',
  limits: [limitName],
  mendedBy: ['neck.rise', 'saddle.action'],
  basis: ['heights'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const { missing, saddle } = loadsOf(layout)
    if (missing) return found
    const measured = saddle.heightWanted
    const wanted = limit(limitName)
    found.push({
      about: ['saddle'],
      measured,
      limit: wanted,
      grade: side === 'low' ? gradeLeast(measured, wanted, 0) : gradeMost(measured, wanted),
      where: upright(layout, measured),
    })
    return found
  },
  words({ measured, limit, grade }, say, layout) {
    const action = say.length(layout.design.saddle.action)
    const wants = `For an action of ${action} at the octave the saddle must be ${say.length(measured ?? 0)} tall`
    if (grade === 'clear') return `${wants}.`
    if (grade === 'stop') return `${wants}: the strings would run into the lid. ${cureOf(layout, say)}`
    return `${wants}; ${say.length(limit ?? 0)} is the usual ${side === 'low' ? 'least' : 'most'}. ${cureOf(layout, say)}`
  },
})

export const saddleLow = built('low', 'saddleLeast')
export const saddleTall = built('tall', 'saddleMost')

export const actionAsWanted: Rule = {
  name: 'action-as-wanted',
  title: 'Action off what is wanted',
  unit: 'mm',
  wants: 'most',
  limits: ['actionOff'],
  mendedBy: ['saddle.height', 'saddle.action'],
  aims: true,
  fine: true,
  basis: ['heights'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const { missing, saddle } = loadsOf(layout)
    if (missing) return found
    const measured = Math.abs(saddle.action - layout.design.saddle.action)
    const wanted = limit('actionOff')
    found.push({
      about: ['saddle'],
      measured,
      limit: wanted,
      grade: gradeMost(measured, wanted),
      where: upright(layout, layout.design.saddle.height),
      data: { action: saddle.action, height: saddle.heightWanted },
    })
    return found
  },
  words({ grade, data }, say, layout) {
    const { saddle, scale } = layout.design
    const over = scale.fretless ? 'the board at the octave' : 'the crown of the octave fret'
    const stand = `With a saddle ${say.length(saddle.height)} tall the strings stand ${say.length(Number(data?.action))} over ${over}`
    return grade === 'clear'
      ? `${stand}, before they pull.`
      : `${stand} and not the ${say.length(saddle.action)} wanted. Make it ${say.length(Number(data?.height))} tall, or ask for another action.`
  },
}

/** The line through the setbacks that the strings want, against the one stated. A slide needs none. */
export const saddleLineOff: Rule = {
  name: 'saddle-line',
  title: 'Saddle line off its place',
  unit: 'mm',
  wants: 'most',
  limits: ['setbackOff'],
  mendedBy: ['saddle.setback'],
  aims: true,
  fine: true,
  basis: ['setback'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const { design, saddle } = layout
    const { line } = loadsOf(layout).saddle
    if (!line || design.scale.fretless) return found
    const measured = Math.abs(design.saddle.setback - line.atCentre)
    const wanted = limit('setbackOff')
    const couldBeMoved = gradeMost(measured, design.saddle.freeBand) === 'clear'
    found.push({
      about: ['saddle'],
      measured,
      limit: wanted,
      grade: gradeMost(measured, wanted) === 'clear' ? 'clear' : couldBeMoved ? 'note' : 'care',
      where: {
        view: 'plan',
        from: { x: saddle.x, y: saddle.foot.minY },
        to: { x: saddle.x, y: saddle.foot.maxY },
      },
      data: { wanted: line.atCentre, slant: degreesOf(line.slant), farthest: line.farthest },
    })
    return found
  },
  words({ grade, data }, say, layout) {
    const slant = Number(data?.slant)
    const side = slant > 0 ? 'treble' : 'bass'
    const turned =
      Math.abs(slant) < 0.05
        ? 'square across'
        : `slanted ${say.angle(Math.abs(slant))}, the ${side} side farther back`
    const wants = `By estimate, pressing and stiffness want the saddle line ${say.length(Number(data?.wanted))} behind the bare scale, ${turned}`
    const { setback, freeBand } = layout.design.saddle
    if (grade === 'clear') return `${wants}; ${say.length(setback)} are stated.`
    return grade === 'note'
      ? `${wants}, and ${say.length(setback)} are stated: state what is wanted, or keep the saddle loose, free to move ${say.length(freeBand)} either way, until the octaves are true.`
      : `${wants}, and ${say.length(setback)} are stated: even a loose saddle cannot move so far. State what is wanted, or lower the action.`
  },
}

/** Where a loose saddle may come to stand, its whole foot must find lid and no hole. */
export const saddleFreeBand: Rule = {
  name: 'saddle-free-band',
  title: 'Room for a loose saddle to move',
  unit: 'mm',
  wants: 'least',
  limits: [],
  mendedBy: ['place', 'saddle.place', 'saddle.freeBand'],
  basis: ['setback'],
  measure(layout) {
    const found: Measurement[] = []
    const { missing, saddle: loads } = loadsOf(layout)
    if (missing) return found
    const { saddle, panels } = layout
    const { originX } = panels.lid
    const [, to] = endsOf(layout, 'lid')
    const half = (saddle.foot.maxX - saddle.foot.minX) / 2
    const minX = loads.band.from - half - originX
    const maxX = loads.band.to + half - originX
    let measured = Math.min(minX, to - maxX)
    let what = 'lid'
    const { minY, maxY } = saddle.foot
    const band = rectangle(minX, minY, maxX, maxY)
    for (const { thing, face, footprint, bounds: box } of layout.placed) {
      if (face !== 'lid') continue
      const apart = Math.max(minX - box.maxX, box.minX - maxX, minY - box.maxY, box.minY - maxY)
      if (apart >= measured) continue
      const clear = gap(footprint, band)
      if (clear < measured) [measured, what] = [clear, thing.id]
    }
    found.push({
      about: ['saddle'],
      measured,
      limit: 0,
      grade: gradeLeast(measured, 0),
      where: { view: 'lid', from: { x: minX, y: 0 }, to: { x: maxX, y: 0 } },
      data: { what },
    })
    return found
  },
  words({ measured, grade, data }, say) {
    const what = String(data?.what)
    const name = what === 'lid' ? 'the edge of the lid' : say.thing(what)
    return grade === 'clear'
      ? `Wherever a loose saddle may have to stand, its foot stays ${say.length(measured ?? 0)} from ${name}.`
      : `A loose saddle may have to stand ${say.length(-(measured ?? 0))} into ${name}. Move that away, or the saddle down the lid.`
  },
}
