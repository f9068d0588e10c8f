import { braceThatSuffices, braceToNeck } from '../../loads/cures.ts'
import { loadsOf } from '../../loads/loads.ts'
import type { StringLoad } from '../../loads/types.ts'
import type { Layout } from '../../solve/layout.ts'
import { degreesOf, gradeLeast, gradeMost, type Measurement, type Rule, type Where } from '../finding.ts'
import type { Say } from '../say.ts'
import { perString } from './per-string.ts'

const behindSaddle = ({ index }: StringLoad, { strings, saddle }: Layout): Where => {
  // A string without a hole bends nowhere, and is not told.
  const { x, z } = strings[index]!.tail!
  return { view: 'section', from: { x: saddle.x, y: saddle.top }, to: { x, y: z } }
}

/** Too little bend and the string does not press; it rattles and wanders. */
export const breakAngleAtSaddle = perString({
  name: 'break-angle-at-saddle',
  title: 'Bend over the saddle',
  unit: 'degrees',
  wants: 'least',
  limits: ['breakAngleAtSaddle'],
  mendedBy: ['tailpiece.fromEdge', 'saddle.height'],
  basis: ['heights'],
  measure({ atSaddle, atPitch }, limit) {
    if (!atPitch || !atSaddle) return null
    const measured = degreesOf(atSaddle.total)
    const wanted = limit('breakAngleAtSaddle')
    return { measured, limit: wanted, grade: gradeLeast(measured, wanted, 0) }
  },
  where: behindSaddle,
  worstOnly: true,
  words({ measured, limit, grade, data }, say) {
    const bends = `String ${data?.string} bends ${say.angle(measured ?? 0)} over the saddle`
    if (grade === 'stop') return `${bends}: it lifts off. Hold the strings lower, or make the saddle taller.`
    return grade === 'clear'
      ? `${bends}, the least of all.`
      : `${bends}; under ${say.angle(limit ?? 0)} it rattles. Hold the strings nearer or lower, or make the saddle taller.`
  },
})

export const breakAngleHeavy = perString({
  name: 'break-angle-heavy',
  title: 'Bend over the saddle, at the most',
  unit: 'degrees',
  wants: 'most',
  limits: ['breakAngleMost'],
  mendedBy: ['tailpiece.fromEdge', 'saddle.height'],
  basis: ['heights'],
  measure({ atSaddle, atPitch }, limit) {
    if (!atPitch || !atSaddle) return null
    const measured = degreesOf(atSaddle.total)
    const wanted = limit('breakAngleMost')
    return { measured, limit: wanted, grade: gradeMost(measured, wanted) }
  },
  where: behindSaddle,
  worstOnly: true,
  words({ measured, limit, grade, data }, say) {
    const bends = `String ${data?.string} bends ${say.angle(measured ?? 0)} over the saddle`
    return grade === 'clear'
      ? `${bends}, the most of all.`
      : `${bends}; over ${say.angle(limit ?? 0)} presses hard on the lid and breaks strings. Hold the strings farther back or higher.`
  },
})

export const breakAngleAtNut = perString({
  name: 'break-angle-at-nut',
  title: 'Bend over the nut',
  unit: 'degrees',
  wants: 'least',
  limits: ['breakAngleAtNut'],
  mendedBy: ['headstock.postHeight', 'headstock.thickness', 'headstock.firstPost'],
  basis: ['heights'],
  measure({ breakAtNut, atPitch }, limit) {
    if (!atPitch || breakAtNut === null) return null
    const measured = degreesOf(breakAtNut)
    const wanted = limit('breakAngleAtNut')
    return { measured, limit: wanted, grade: gradeLeast(measured, wanted) }
  },
  where: ({ index }, { strings }) => {
    const { zAtNut, post } = strings[index]!
    // A string without a post falls nowhere, and is not told.
    const { x, z } = post!.winds
    return { view: 'section', from: { x: 0, y: zAtNut }, to: { x, y: z } }
  },
  words({ measured, limit, grade, data }, say) {
    const falls = `String ${data?.string} falls away ${say.angle(measured ?? 0)} behind the nut`
    return grade === 'clear'
      ? `${falls}, the least of all.`
      : `${falls}; under ${say.angle(limit ?? 0)} the open string buzzes. Carve the head lower, wind the string lower on its post, or press it down behind the nut.`
  },
})

/** A brace in words: `spruce … 8.0 × 10.0 mm across, under the saddle`. */
function braceWords(layout: Layout, say: Say): string | null {
  const brace = braceThatSuffices(layout)
  if (!brace) return null
  const size = `${say.length(brace.width)} wide and ${say.length(brace.height)} tall`
  return brace.runs === 'across'
    ? `a brace ${size}, glued across under the saddle, would hold it`
    : `a brace ${size}, glued along beside the neck, would hold it`
}

export const lidSag: Rule = {
  name: 'lid-sag',
  title: 'Sag of the lid',
  unit: 'mm',
  wants: 'most',
  limits: ['lidSag'],
  mendedBy: ['brace.height', 'neck.relief'],
  fine: true,
  basis: ['lid', 'pull'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const { lid } = loadsOf(layout)
    if (!lid) return found
    const wanted = limit('lidSag')
    const { x } = layout.saddle
    found.push({
      about: ['lid', 'brace'],
      measured: lid.sag,
      limit: wanted,
      grade: gradeMost(lid.sag, wanted),
      where: { view: 'section', from: { x, y: 0 }, to: { x, y: layout.box.lidBottom } },
      data: { force: lid.downForce, onNeck: lid.onNeck ? 'yes' : '' },
    })
    return found
  },
  words({ measured, limit, grade, data }, say, layout) {
    const force = say.pull(Number(data?.force))
    if (data?.onNeck)
      return `The saddle presses with ${force} and the lid lies on the neck there: it sags ${say.fine(0)}.`
    const sags = `The saddle presses with ${force} and by estimate the lid sags ${say.fine(measured ?? 0)}`
    if (grade === 'clear') return `${sags}.`
    const brace = braceWords(layout, say)
    return `${sags}; ${say.fine(limit ?? 0)} is the usual most. ${brace ? `${brace.replace(/^a/, 'A')}; so would` : 'What helps is'} a thicker lid, or no relief, so that the lid lies on the neck.`
  },
}

export const braceClear: Rule = {
  name: 'brace-clear',
  title: 'Brace clear of the neck',
  unit: 'mm',
  wants: 'least',
  limits: [],
  mendedBy: ['brace.height', 'neck.relief'],
  measure(layout) {
    const found: Measurement[] = []
    const { brace } = layout.design
    if (brace.height <= 0) return found
    const measured = braceToNeck(layout, brace)
    if (measured === null) return found
    const x = brace.runs === 'across' ? layout.saddle.x + brace.offset : layout.saddle.x
    found.push({
      about: ['brace', 'neck'],
      measured,
      limit: 0,
      grade: gradeLeast(measured, 0, 0),
      where: {
        view: 'section',
        from: { x, y: layout.box.lidBottom },
        to: { x, y: layout.box.lidBottom - brace.height },
      },
    })
    return found
  },
  words({ measured, grade }, say) {
    return grade === 'clear'
      ? `The brace clears the neck by ${say.length(measured ?? 0)}.`
      : `The brace runs ${say.length(-(measured ?? 0))} into the neck. Make it lower, relieve the neck more, or run it along beside the neck.`
  },
}
