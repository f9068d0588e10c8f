/** Screws: do they hold, is there wood beside them, does the point stay in it? */
import { pilotFor, screwFor } from '../../kinds/wood-screws.ts'
import { woodNamed } from '../../neck/named-woods.ts'
import { type Fastened, fasteningsOf } from '../../solids/fastening.ts'
import { onFace } from '../../solids/index.ts'
import type { Layout, Placed } from '../../solve/layout.ts'
import { gradeLeast, type Measurement, ROUNDING, type Rule } from '../finding.ts'
import { capital, type Say } from '../say.ts'

const hasScrews = ({ kind }: Placed): boolean => kind.bodies !== undefined && kind.overWall === 'meant'

const fastenings = (layout: Layout): readonly Fastened[] =>
  layout.placed.some(hasScrews) ? fasteningsOf(layout) : []

/** The worst of a thing's screws: a plate has several, and one sentence will do. */
function* worst(
  all: readonly Fastened[],
  measureOf: (one: Fastened) => number | null,
): Generator<{ readonly one: Fastened; readonly measured: number }> {
  const least = new Map<string, { one: Fastened; measured: number }>()
  for (const one of all) {
    const measured = measureOf(one)
    if (measured === null) continue
    const before = least.get(one.placed.thing.id)
    if (!before || measured < before.measured) least.set(one.placed.thing.id, { one, measured })
  }
  yield* least.values()
}

const where = (layout: Layout, { placed, tip }: Fastened): Pick<Measurement, 'about' | 'where'> => {
  const at = onFace(layout, placed.face, tip)
  return { about: [placed.thing.id], where: { view: placed.face, from: at, to: at } }
}

const woodName = (of: string | undefined): string => (of ?? '').replaceAll('-', ' ')

/** Specific gravity at 12 % of the wood a screw goes into: the neck’s own, else a hardwood’s. */
function gravityOf(layout: Layout, of: string): number {
  const wood = of === 'neck' ? woodNamed(layout.design.neck.wood, layout.design.woods) : null
  return wood?.density ? wood.density / 1120e-9 : 0.6
}

export const screwHolds: Rule = {
  name: 'screw-holds',
  title: 'Thread of a screw in wood behind the face',
  unit: 'mm',
  wants: 'least',
  limits: ['screwHold'],
  mendedBy: ['place', 'thing.screwLength'],
  *measure(layout, limit) {
    for (const { one, measured } of worst(fastenings(layout), ({ held }) => sum(held))) {
      const wanted = limit('screwHold')
      const best = one.held.reduce<Fastened['held'][number] | null>(
        (most, next) => (!most || next.length > most.length ? next : most),
        null,
      )
      const of = best?.wood.of ?? ''
      yield {
        ...where(layout, one),
        measured,
        limit: wanted,
        grade: measured <= ROUNDING ? 'care' : gradeLeast(measured, wanted),
        data: {
          wood: of,
          gauge: screwFor(2 * one.radius).gauge,
          pilot: pilotFor(2 * one.radius, gravityOf(layout, of)),
        },
      }
    }
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

const sum = (held: Fastened['held']): number => held.reduce((all, one) => all + one.length, 0)

const pilotWords = (data: Measurement['data'], say: Say) =>
  `a No. ${data?.gauge} wants a pilot of ${say.fine(Number(data?.pilot))}`

export const screwBeside: Rule = {
  name: 'screw-beside',
  title: 'Wood beside a screw',
  unit: 'mm',
  wants: 'least',
  limits: ['woodBesideScrew'],
  mendedBy: ['place'],
  *measure(layout, limit) {
    const wanted = limit('woodBesideScrew')
    const beside = ({ held }: Fastened) =>
      held.length > 0 ? Math.min(...held.map((one) => one.beside)) : null
    for (const { one, measured } of worst(fastenings(layout), beside)) {
      const tight = one.held.find((each) => each.beside === measured)
      yield {
        ...where(layout, one),
        measured,
        limit: wanted,
        grade: gradeLeast(measured, wanted, 0),
        data: { wood: tight?.wood.of ?? '' },
      }
    }
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
  *measure(layout) {
    for (const { one, measured } of worst(fastenings(layout), ({ pokes, held }) =>
      held.length > 0 ? -pokes : null,
    ))
      yield {
        ...where(layout, one),
        measured: 0 - measured,
        limit: 0,
        grade: measured < -ROUNDING ? 'care' : 'clear',
      }
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
  *measure({ placed }) {
    for (const { thing, kind, face, at } of placed) {
      const proud = kind.proud?.(thing)
      if (proud === undefined) continue
      yield {
        about: [thing.id],
        measured: proud,
        limit: 0,
        grade: proud > 0 ? 'note' : 'clear',
        where: { view: face, from: at, to: at },
      }
    }
  },
  words({ measured, about, grade }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    return grade === 'clear'
      ? `${who} is countersunk: its head stands ${say.length(0)} out.`
      : `${who} is not countersunk: its head stands about ${say.length(measured ?? 0)} out. State how wide the head is, and it is let in.`
  },
}
