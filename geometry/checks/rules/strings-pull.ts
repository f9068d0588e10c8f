import type { LimitName } from '../../design/limits.ts'
import { loadsOf } from '../../loads/loads.ts'
import { isSoft, SOFT_SHARE } from '../../loads/strings-loads.ts'
import type { StringLoad } from '../../loads/types.ts'
import { seat } from '../../strings/mass.ts'
import { type Grade, gradeLeast, gradeMost, type Measurement, ROUNDING, type Rule } from '../finding.ts'
import { alongString, perString } from './per-string.ts'

/** Without pitches nothing can be said of pull, neck and lid. */
export const tuningStated: Rule = {
  name: 'tuning-stated',
  title: 'A pitch for every string',
  unit: 'count',
  wants: 'least',
  limits: [],
  measure(layout) {
    const found: Measurement[] = []
    const stated = layout.design.stringing.tuning.length
    const strings = layout.strings.length
    const grade: Grade = stated === 0 ? 'note' : stated === strings ? 'clear' : 'care'
    found.push({
      about: ['strings'],
      measured: stated,
      limit: stated === 0 ? null : strings,
      grade,
      where: { view: 'plan', from: { x: 0, y: 0 }, to: { x: layout.saddle.x, y: 0 } },
      data: { strings },
    })
    return found
  },
  words({ measured, grade, data }) {
    const strings = Number(data?.strings)
    const all = strings === 1 ? '1 string' : `${strings} strings`
    const pitches = measured === 1 ? '1 pitch' : `${measured} pitches`
    if (grade === 'note')
      return `No tuning is stated for the ${all}, so pull, neck, lid and setback are not reckoned. State the pitches, bass string first.`
    if (grade === 'clear') return `The tuning names ${pitches} for ${all}.`
    return (measured ?? 0) < strings
      ? `The tuning names ${pitches} for ${all}, so pull, neck and lid are not reckoned. Name one for every string.`
      : `The tuning names ${pitches} for ${all}; the last are left out, the bass string being the first.`
  },
}

/** A core as thick as its string, or a string whose mass is to be stated and is not. */
export const stringCanBeMade = perString({
  name: 'string-can-be-made',
  title: 'Room for the winding',
  unit: 'mm',
  wants: 'least',
  limits: [],
  measure({ make, gauge, trouble }) {
    if (trouble === 'no mass stated')
      return { measured: 0, limit: 0, grade: 'stop', data: { trouble, gauge } }
    if (make.construction === 'plain' || (make.core === 0 && trouble === null)) return null
    const measured = gauge - (make.construction === 'wound' ? seat(make.core, make.coreShape) : make.core)
    return {
      measured,
      limit: 0,
      grade: trouble ? 'stop' : 'clear',
      data: { trouble: trouble ?? '', gauge, core: make.core },
    }
  },
  where: alongString,
  words({ measured, grade, data }, say) {
    const gauge = say.fine(Number(data?.gauge))
    if (data?.trouble === 'no mass stated')
      return `String ${data.string} of ${gauge} is to go by its own mass, and none is stated. Give the mass of a metre, or a length weighed and its mass.`
    const core = say.fine(Number(data?.core))
    return grade === 'clear'
      ? `The core of string ${data?.string} is ${core} thick and leaves ${say.fine(measured ?? 0)} for its winding.`
      : `The core of string ${data?.string} is ${core} thick and the whole string ${gauge}: there is no room for a winding. Measure both again.`
  },
})

export const stringBreaking = perString({
  name: 'string-breaking',
  title: 'Share of the breaking load',
  unit: 'share',
  wants: 'most',
  limits: ['stringStrained', 'stringBreaking'],
  mendedBy: ['scale.length'],
  basis: ['pull', 'strength'],
  measure({ atPitch }, limit) {
    if (!atPitch) return null
    const { shareOfBreaking: measured, tension, pitch } = atPitch
    const [care, stop] = [limit('stringStrained'), limit('stringBreaking')]
    const breaks = measured > stop + ROUNDING
    return {
      measured,
      limit: breaks ? stop : Math.min(care, stop),
      grade: breaks ? 'stop' : gradeMost(measured, care),
      data: { pull: tension, pitch: pitch.name },
    }
  },
  where: alongString,
  words({ measured, grade, data }, say) {
    const pulls = `String ${data?.string} at ${data?.pitch} pulls ${say.pull(Number(data?.pull))}, ${say.share(measured ?? 0)} of what breaks it`
    if (grade === 'clear') return `${pulls}, the nearest of all.`
    const cure = 'Tune it lower or shorten the scale; a thicker plain string breaks at the same pitch.'
    return grade === 'stop' ? `${pulls}: it will not come to pitch. ${cure}` : `${pulls}. ${cure}`
  },
})

export const stringSlack = perString({
  name: 'string-slack',
  title: 'Least pull of a string',
  unit: 'newtons',
  wants: 'least',
  limits: ['stringSlack'],
  mendedBy: ['strings.gauges', 'scale.length'],
  basis: ['pull'],
  measure({ atPitch }, limit) {
    if (!atPitch) return null
    const wanted = limit('stringSlack') * (isSoft(atPitch.body) ? SOFT_SHARE : 1)
    const { tension } = atPitch
    return {
      measured: tension,
      limit: wanted,
      grade: gradeLeast(tension, wanted),
      data: { pitch: atPitch.pitch.name },
    }
  },
  where: alongString,
  words({ measured, limit, grade, data }, say) {
    const pulls = `String ${data?.string} at ${data?.pitch} pulls ${say.pull(measured ?? 0)}`
    return grade === 'clear'
      ? `${pulls}, tight enough.`
      : `${pulls}; under ${say.pull(limit ?? 0)} it flaps and buzzes. Take a thicker string, a higher pitch or a longer scale.`
  },
})

export const stringHigh = perString({
  name: 'string-high',
  title: 'Most pull of a string',
  unit: 'newtons',
  wants: 'most',
  limits: ['stringHigh'],
  mendedBy: ['strings.gauges', 'scale.length'],
  basis: ['pull'],
  measure({ atPitch }, limit) {
    if (!atPitch) return null
    const { tension, pitch } = atPitch
    const wanted = limit('stringHigh')
    return {
      measured: tension,
      limit: wanted,
      grade: gradeMost(tension, wanted),
      data: { pitch: pitch.name },
    }
  },
  where: alongString,
  words({ measured, limit, grade, data }, say) {
    const pulls = `String ${data?.string} at ${data?.pitch} pulls ${say.pull(measured ?? 0)}`
    return grade === 'clear'
      ? `${pulls}, the hardest of all.`
      : `${pulls}; over ${say.pull(limit ?? 0)} is hard on fingers, neck and lid. Take a thinner string, a lower pitch or a shorter scale.`
  },
})

const evenly = (side: 'slackest' | 'tightest', limitName: LimitName): Rule => ({
  name: `pull-${side}`,
  title: side === 'slackest' ? 'Slackest string against the mean' : 'Tightest string against the mean',
  unit: 'share',
  wants: side === 'slackest' ? 'least' : 'most',
  limits: [limitName],
  mendedBy: ['strings.gauges', 'scale.length'],
  basis: ['pull'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const { strings, spread } = loadsOf(layout)
    if (!spread || strings.length < 2) return found
    const measured = side === 'slackest' ? spread.least : spread.most
    const wanted = limit(limitName)
    const pull = measured * spread.mean
    // A mean is known where every string has its pitch.
    const off = ({ atPitch }: StringLoad) => Math.abs(atPitch!.tension - pull)
    const load = strings.reduce((near, one) => (off(one) < off(near) ? one : near))
    found.push({
      about: ['strings', `string ${load.number}`],
      measured,
      limit: wanted,
      grade: side === 'slackest' ? gradeLeast(measured, wanted) : gradeMost(measured, wanted),
      where: alongString(load, layout),
      data: { string: load.number, pull, mean: spread.mean },
    })
    return found
  },
  words({ measured, limit, grade, data }, say) {
    const pulls = `String ${data?.string} is the ${side}: ${say.pull(Number(data?.pull))}, ${say.share(measured ?? 0)} of the mean of ${say.pull(Number(data?.mean))}`
    if (grade === 'clear') return `${pulls}.`
    const gauge = side === 'slackest' ? 'thicker' : 'thinner'
    const than = side === 'slackest' ? 'at least' : 'at most'
    return `${pulls}; ${than} ${say.share(limit ?? 0)} keeps strings alike under the fingers. Take a ${gauge} one there.`
  },
})

export const pullSlackest = evenly('slackest', 'pullLeast')
export const pullTightest = evenly('tightest', 'pullMost')
