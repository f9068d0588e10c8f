import type { LimitName } from '../../design/limits.ts'
import { headRootOf, reinforcementNeeded, thinnestStock } from '../../loads/cures.ts'
import { loadsOf } from '../../loads/loads.ts'
import { slopeOf } from '../../loads/neck-pieces.ts'
import type { NeckLoads } from '../../loads/types.ts'
import type { Layout } from '../../solve/layout.ts'
import { gradeLeast, gradeMost, type Measurement, ROUNDING, type Rule, type Where } from '../finding.ts'
import type { Say } from '../say.ts'

/** The neck from nut to box, seen from the side. */
const outside = ({ neck, box, playingTop }: Layout): Where => ({
  view: 'section',
  from: { x: 0, y: playingTop },
  to: { x: box.x0, y: neck.bottom },
})

/** What would make the neck hold, as the end of a sentence. */
function cureOf(layout: Layout, say: Say): string {
  const { neck } = layout.design
  const thick = thinnestStock(layout)
  const blank =
    thick !== null && thick > neck.thickness
      ? `A blank ${say.length(thick)} thick would hold`
      : 'No thicker blank cures it by itself'
  const also = [
    ...(neck.relief > 0 && neck.ends === 'through the box' ? ['less relief under the lid'] : []),
    'a stiffer wood',
    ...(neck.bar.kind === 'none' ? ['a bar in the neck'] : []),
  ]
  return `${blank}; so may ${also.join(' or ')}.`
}

interface Bend {
  readonly name: string
  readonly title: string
  readonly limit: LimitName
  readonly measure: (neck: NeckLoads) => number
  readonly words: (measured: string, pull: string) => string
  readonly usual: string
}

const bends = ({ name, title, limit: limitName, measure, words, usual }: Bend): Rule => ({
  name,
  title,
  unit: 'mm',
  wants: 'most',
  limits: [limitName],
  mendedBy: ['neck.relief', 'neck.thickness'],
  fine: true,
  basis: ['neck', 'pull'],
  measure(layout, limit): readonly Measurement[] {
    const found: Measurement[] = []
    const { neck, totalPull } = loadsOf(layout)
    if (!neck || totalPull === null) return found
    const measured = measure(neck)
    const wanted = limit(limitName)
    found.push({
      about: ['neck'],
      measured,
      limit: wanted,
      grade: gradeMost(measured, wanted),
      where: outside(layout),
      data: { pull: totalPull },
    })
    return found
  },
  words({ measured, limit, grade, data }, say, layout) {
    const said = words(say.fine(measured ?? 0), say.pull(Number(data?.pull)))
    return grade === 'clear'
      ? `${said}.`
      : `${said}; ${say.fine(limit ?? 0)} is ${usual}. ${cureOf(layout, say)}`
  },
})

export const neckBow = bends({
  name: 'neck-bow',
  title: 'Bow of the neck',
  limit: 'neckBow',
  measure: (neck) => Math.abs(neck.bow),
  words: (bow, pull) => `By estimate the pull of ${pull} bows the neck ${bow} half way between nut and box`,
  usual: 'the usual most, and the years may double it',
})

export const nutRise = bends({
  name: 'nut-rise',
  title: 'Rise of the nut',
  limit: 'nutRise',
  measure: (neck) => Math.abs(neck.nutRise),
  words: (rise, pull) =>
    `By estimate the pull of ${pull} lifts the nut ${rise} at most, for walls, lid and glue hold better than is reckoned`,
  usual: 'what is usually let pass',
})

export const actionChange = bends({
  name: 'action-change',
  title: 'Change of the action',
  limit: 'actionChange',
  measure: (neck) => Math.abs(neck.actionChange),
  words: (change, pull) =>
    `By estimate the pull of ${pull} changes the action at the octave by ${change} at most`,
  usual: 'what is usually let pass',
})

/** A pull that folds the neck leaves no bow to speak of. */
export const neckGivesWay: Rule = {
  name: 'neck-gives-way',
  title: 'Neck stands the pull',
  unit: 'newtons',
  wants: 'most',
  limits: [],
  mendedBy: ['neck.thickness'],
  basis: ['neck', 'pull'],
  measure(layout) {
    const found: Measurement[] = []
    const { totalPull, neckTrouble } = loadsOf(layout)
    if (totalPull === null || neckTrouble !== 'gives way') return found
    found.push({ about: ['neck'], measured: totalPull, limit: null, grade: 'stop', where: outside(layout) })
    return found
  },
  words({ measured }, say, layout) {
    return `The pull of ${say.pull(measured ?? 0)} folds a neck ${say.length(layout.design.neck.thickness)} thick: the more it bends, the more they bend it. ${cureOf(layout, say)}`
  },
}

const PLACES = {
  headstock: 'in the head',
  slope: 'at the slope of the head',
  neck: 'before the box',
  notch: 'in the notch for the lid',
  relief: 'in the relief under the lid',
  'pickup relief': 'under the pickup',
  tail: 'in the tail',
} as const

export const neckStress: Rule = {
  name: 'neck-stress',
  title: 'Stress in the neck',
  unit: 'share',
  wants: 'most',
  limits: ['neckStress', 'neckStressMost'],
  mendedBy: ['neck.relief', 'headstock.reinforcement', 'neck.thickness'],
  basis: ['neck', 'pull'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const { neck } = loadsOf(layout)
    if (!neck) return found
    const { share, x, of, stress } = neck.weakest
    const most = limit('neckStressMost')
    const wanted = limit('neckStress')
    found.push({
      about: ['neck'],
      measured: share,
      limit: share > most + ROUNDING ? most : Math.min(wanted, most),
      grade: gradeMost(share, wanted, most),
      where: { view: 'section', from: { x, y: layout.neck.top }, to: { x, y: layout.neck.bottom } },
      data: { of, stress: Math.abs(stress) },
    })
    return found
  },
  words({ measured, grade, data }, say, layout) {
    const said = `By estimate the neck is weakest ${PLACES[data?.of as keyof typeof PLACES]}: ${Number(data?.stress).toFixed(1)} N/mm², ${say.share(measured ?? 0)} of what is borne there for good`
    if (grade === 'clear') return `${said}.`
    const head = data?.of === 'headstock' || data?.of === 'slope'
    const glue = head ? reinforcementNeeded(layout) : null
    const cure = glue ? `Glue ${say.length(glue)} on under the head.` : cureOf(layout, say)
    return grade === 'stop' ? `${said}. It will give way. ${cure}` : `${said}. ${cure}`
  },
}

/** Heads break along the grain where they are thinnest, long before the pull alone would do it. */
export const headRoot: Rule = {
  name: 'head-root',
  title: 'Head at its root',
  unit: 'mm',
  wants: 'least',
  limits: ['headRoot'],
  mendedBy: ['headstock.reinforcement', 'headstock.thickness'],
  basis: ['neck', 'pull'],
  measure(layout, limit) {
    const found: Measurement[] = []
    if (loadsOf(layout).missing) return found
    const measured = headRootOf(layout.design)
    const wanted = limit('headRoot')
    const { x0 } = slopeOf(layout)
    found.push({
      about: ['headstock'],
      measured,
      limit: wanted,
      grade: gradeLeast(measured, wanted),
      where: {
        view: 'section',
        from: { x: x0, y: layout.neck.bottom + measured },
        to: { x: x0, y: layout.neck.bottom },
      },
    })
    return found
  },
  words({ measured, limit, grade }, say, layout) {
    const left = `The head is ${say.length(measured ?? 0)} thick at its root`
    if (grade === 'clear') return `${left}.`
    const glue = reinforcementNeeded(layout)
    const cure = glue
      ? `Glue ${say.length(glue)} on underneath, or leave the head thicker.`
      : 'Leave the head thicker.'
    return `${left}; under ${say.length(limit ?? 0)} it breaks along the grain when the instrument falls. ${cure}`
  },
}
