/** Screws: do they hold, is there wood beside them, does the point stay in it? */
import { pilotFor, screwFor } from '../../kinds/wood-screws.ts'
import { type Fastened, fasteningsOf } from '../../solids/fastening.ts'
import { onFace } from '../../solids/index.ts'
import { gravityOf, hasScrews } from '../../solids/pilots.ts'
import type { Layout } from '../../solve/layout.ts'
import { gradeLeast, type Measurement, ROUNDING, type Rule, type Where } from '../finding.ts'
import { capital, type Say } from '../say.ts'

const fastenings = (layout: Layout): readonly Fastened[] =>
  layout.placed.some(hasScrews) ? fasteningsOf(layout) : []

/** The worst of a thing's screws: a plate has several, and one sentence will do. They follow one another. */
function worst(
  layout: Layout,
  measureOf: (one: Fastened) => number | null,
): { readonly one: Fastened; readonly measured: number }[] {
  const least: { one: Fastened; measured: number }[] = []
  for (const one of fastenings(layout)) {
    const measured = measureOf(one)
    if (measured === null) continue
    const before = least.at(-1)
    if (before?.one.placed !== one.placed) least.push({ one, measured })
    else if (measured < before.measured) least[least.length - 1] = { one, measured }
  }
  return least
}

function atTip(layout: Layout, { placed, tip }: Fastened): Where {
  const at = onFace(layout, placed.face, tip)
  return { view: placed.face, from: at, to: at }
}

const woodName = (of: string | undefined): string => (of ?? '').replaceAll('-', ' ')

export const screwHolds: Rule = {
  name: 'screw-holds',
  title: 'Thread of a screw in wood behind the face',
  unit: 'mm',
  wants: 'least',
  limits: ['screwHold'],
  mendedBy: ['place', 'thing.screwLength'],
  measure(layout, limit) {
    const found: Measurement[] = []
    for (const { one, measured } of worst(layout, inWood)) {
      const wanted = limit('screwHold')
      let best = one.held[0]
      for (const next of one.held) if (best && next.length > best.length) best = next
      const of = best?.wood.of ?? ''
      found.push({
        about: [one.placed.thing.id],
        where: atTip(layout, one),
        measured,
        limit: wanted,
        grade: measured <= ROUNDING ? 'care' : gradeLeast(measured, wanted),
        data: {
          wood: of,
          gauge: screwFor(2 * one.radius).gauge,
          pilot: pilotFor(2 * one.radius, gravityOf(layout, of)),
        },
      })
    }
    return found
  },
  words({ measured, limit, about, grade, data }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    if ((measured ?? 0) <= ROUNDING)
      return `${who} holds in ${say.length(0)} of wood: there is none behind the face. Move it over a wall, the neck or a block, or glue a block in.`
    const holds = `${who} holds in ${say.length(measured ?? 0)} of the ${woodName(String(data?.wood))}: ${pilotWords(data, say)}`
    return grade === 'clear'
      ? `${holds}.`
      : `${holds}. Under ${say.length(limit ?? 0)} it tears out; choose a longer one.`
  },
}

function inWood({ held }: Fastened): number {
  let all = 0
  for (const one of held) all += one.length
  return all
}

function besideOf({ held }: Fastened): number | null {
  let least: number | null = null
  for (const { beside } of held) if (least === null || beside < least) least = beside
  return least
}

const pilotWords = (data: Measurement['data'], say: Say) =>
  `a No. ${data?.gauge} wants a pilot of ${say.fine(Number(data?.pilot))}`

export const screwBeside: Rule = {
  name: 'screw-beside',
  title: 'Wood beside a screw',
  unit: 'mm',
  wants: 'least',
  limits: ['woodBesideScrew'],
  mendedBy: ['place'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const wanted = limit('woodBesideScrew')
    for (const { one, measured } of worst(layout, besideOf)) {
      const tight = one.held.find((each) => each.beside === measured)
      found.push({
        about: [one.placed.thing.id],
        where: atTip(layout, one),
        measured,
        limit: wanted,
        grade: gradeLeast(measured, wanted, 0),
        data: { wood: tight?.wood.of ?? '' },
      })
    }
    return found
  },
  words({ measured, limit, about, grade, data }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    const wood = woodName(String(data?.wood))
    if (grade === 'stop')
      return `${who} breaks out of the side of the ${wood} by ${say.length(-(measured ?? 0))}. Move it to the middle, or choose a thinner one.`
    const left = `${who} has ${say.length(measured ?? 0)} of the ${wood} beside it`
    return grade === 'clear' ? `${left}.` : `${left}; under ${say.length(limit ?? 0)} it splits.`
  },
}

export const screwPoint: Rule = {
  name: 'screw-point',
  title: 'Point of a screw out of the wood',
  unit: 'mm',
  wants: 'most',
  limits: [],
  mendedBy: ['thing.screwLength'],
  measure(layout) {
    const found: Measurement[] = []
    for (const { one, measured } of worst(layout, ({ pokes, held }) => (held.length > 0 ? -pokes : null)))
      found.push({
        about: [one.placed.thing.id],
        where: atTip(layout, one),
        measured: 0 - measured,
        limit: 0,
        grade: gradeLeast(measured, 0),
      })
    return found
  },
  words({ measured, about, grade }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    return grade === 'clear'
      ? `The point of ${say.thing(about[0] ?? '')} ends ${say.length(-(measured ?? 0))} inside the wood.`
      : `${who} comes out ${say.length(measured ?? 0)} behind the wood it holds in. Choose a shorter one.`
  },
}

export const headFlush: Rule = {
  name: 'head-flush',
  title: 'Screw heads let in',
  unit: 'mm',
  wants: 'most',
  limits: [],
  measure({ placed }) {
    const found: Measurement[] = []
    for (const { thing, kind, face, at } of placed) {
      const proud = kind.proud?.(thing)
      if (proud === undefined) continue
      found.push({
        about: [thing.id],
        measured: proud,
        limit: 0,
        grade: proud > 0 ? 'note' : 'clear',
        where: { view: face, from: at, to: at },
      })
    }
    return found
  },
  words({ measured, about, grade }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    return grade === 'clear'
      ? `${who} is countersunk: its head stands ${say.length(0)} out.`
      : `${who} is not countersunk: its head stands about ${say.length(measured ?? 0)} out. State how wide the head is, and it is let in.`
  },
}
