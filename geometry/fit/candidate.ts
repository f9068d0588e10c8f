/**
 * One answer to the questions as a whole design: the box, the neck blank and everything on the faces as they are; scale,
 * strings and place of the saddle as asked; and what hangs on those, each by a rule a builder can be told.
 */
import { type Change, change } from '../design/changes.ts'
import { type Rounding, roundingFor } from '../design/rounding.ts'
import type { Design } from '../design/schema.ts'
import { startingHead } from '../design/starting-head.ts'
import { saddleFor, spansWithin, tailSpan } from '../design/starting-spans.ts'
import { startingStrings } from '../design/starting-strings.ts'
import { chooseGauges } from '../loads/choose.ts'
import { usualMake } from '../loads/strung.ts'
import { fretsOf } from '../scale/frets.ts'
import type { Layout } from '../solve/layout.ts'
import { solve } from '../solve/solve.ts'
import type { Questions } from './questions.ts'

/**
 * What a row takes for granted about its strings. `as stated`: the set of the design. `gauges chosen`: its tuning, gauges
 * from the drawer for the pull wanted. `tuning chosen`: a usual tuning for so many strings, and gauges for it. `not known`:
 * no usual tuning has so many strings, so nothing is reckoned of the pull.
 */
export type Strung = 'as stated' | 'gauges chosen' | 'tuning chosen' | 'not known'

/** A scale and a count with its strings, before the saddle has a place. */
export interface Stringed {
  readonly scale: number
  readonly count: number
  readonly strung: Strung
  readonly design: Design
  /** How much longer the head is than the design's own. */
  readonly headLonger: number
}

/** What candidates are made from: the design as it is, solved once. */
export interface Base {
  readonly design: Design
  readonly layout: Layout
  /** From the lid's neck-end edge to its tail-end edge, along the centreline. */
  readonly lidLong: number
  readonly rounded: Rounding
}

export function baseOf(design: Design): Base {
  // Where a saddle would stand at the far edge says how long the lid is, straight or askew.
  const { saddle } = solve({ ...design, saddle: { ...design.saddle, place: { share: 1 } } })
  return { design, layout: solve(design), lidLong: saddle.along, rounded: roundingFor(design.units) }
}

/** The design on this scale with so many strings, its saddle still where it was. */
export function stringed(base: Base, scale: number, count: number, from: Questions['strings']): Stringed {
  const { design } = base
  const scaled: Design = { ...design, scale: { ...design.scale, length: scale } }
  const own = count === design.strings.count
  if (own && from === 'as stated') return { scale, count, strung: 'as stated', design: scaled, headLonger: 0 }
  const [spread, headLonger] = own ? [scaled, 0] : forCount(base, scaled, count)
  const tuned = own && design.stringing.tuning.length >= count
  const { strung, design: made } = tuned
    ? { strung: 'gauges chosen' as const, design: withGauges(spread) }
    : tunedAnew(spread, count, scale)
  return { scale, count, strung, design: made, headLonger }
}

/** Spans, posts and holes for another count, on the neck there is. */
function forCount({ design, rounded }: Base, scaled: Design, count: number): [Design, number] {
  const { neck, headstock, tailpiece, saddle } = design
  const thick = HALF_BASS
  const wide = spansWithin(count, neck.width, rounded, thick)
  const atNut = Math.min(
    wide.nut,
    spansWithin(count, Math.min(neck.width, neck.widthAtNut), rounded, thick).nut,
  )
  const head = startingHead(count, atNut, headstock.width, rounded)
  // A head that is long enough stays as long as it is.
  const length = Math.max(head.length, headstock.length)
  // A row with more holes than strings was meant for several counts; any other is drilled for the strings there are.
  const shared = tailpiece.holes > design.strings.count && tailpiece.holes >= count
  const serves = tailpiece.row === 'for each count' || shared
  return [
    {
      ...scaled,
      strings: { ...scaled.strings, count, spanAtNut: atNut, spanAtSaddle: wide.saddle },
      headstock: { ...headstock, ...head, length },
      saddle: { ...saddle, length: Math.max(saddle.length, saddleFor(wide.saddle, rounded)) },
      tailpiece: serves
        ? tailpiece
        : {
            ...tailpiece,
            holes: count,
            span: tailSpan(wide.saddle, neck.width, tailpiece.diameter, rounded),
          },
    },
    length - headstock.length,
  ]
}

/** Half of a thick bass string; spans keep this from the edge of the board. */
const HALF_BASS = 0.65

/** The usual tuning of the count in a key that suits the scale. */
function tunedAnew(design: Design, count: number, scale: number): { strung: Strung; design: Design } {
  const { tuning, gauges, makes } = startingStrings(count, scale)
  const stringing = {
    ...design.stringing,
    tuning: [...tuning],
    makes: makes.map((make) => ({ ...usualMake(0), ...make })),
  }
  if (tuning.length === 0) return { strung: 'not known', design: { ...design, stringing } }
  const usual = { ...design, stringing, strings: { ...design.strings, gauges: [...gauges] } }
  return { strung: 'tuning chosen', design: withGauges(usual) }
}

/** Gauges from the drawer for the pull wanted; a string that nothing in it stands keeps the gauge it has. */
function withGauges(design: Design): Design {
  const chosen = chooseGauges(design)?.strings ?? []
  const whole = chosen.flatMap((one) => (one ? [one] : []))
  if (whole.length < design.strings.count) return design
  return {
    ...design,
    strings: { ...design.strings, gauges: whole.map((one) => Math.round(one.gauge * 1e4) / 1e4) },
    stringing: { ...design.stringing, makes: whole.map((one) => ({ ...one.make })) },
  }
}

/** Where the neck-end face comes to lie, from the nut, without solving. */
export function boxStart({ design, layout, lidLong }: Base, { scale }: Stringed, place: number): number {
  return layout.box.x0 + scale - design.scale.length - (place * lidLong - layout.saddle.along)
}

/** How much of the blank would be left, without solving; negative where it is too short. */
export function blankLeft(base: Base, one: Stringed, place: number): number {
  const { layout, design } = base
  const longer = boxStart(base, one, place) - layout.box.x0 + one.headLonger
  return design.neck.length - layout.neck.needs.total - longer
}

/** The whole candidate with its saddle in its place. */
export function candidate(base: Base, one: Stringed, place: number): Design {
  return {
    ...one.design,
    saddle: { ...one.design.saddle, place: { share: place } },
    board: boardFor(base, one, place),
  }
}

const LENGTH_OF_BOARD = { least: 20, most: 1200 }

/**
 * A board that ends at a length ends as far from the box as it does now, but never before its last fret: it is cut to
 * suit. One that ends after its last fret follows of itself.
 */
function boardFor(base: Base, one: Stringed, place: number): Design['board'] {
  const { board } = base.design
  if (!board.fitted || board.ends !== 'at a length') return board
  const fromBox = board.length - base.layout.box.x0
  const last = fretsOf(one.design.scale).at(-1)?.fromNut ?? 0
  const wanted = Math.max(boxStart(base, one, place) + fromBox, last + board.beyond)
  const length = Math.min(
    LENGTH_OF_BOARD.most,
    Math.max(LENGTH_OF_BOARD.least, Math.round(wanted * 1e4) / 1e4),
  )
  return { ...board, length }
}

const TOUCHED = ['scale', 'strings', 'stringing', 'headstock', 'board', 'saddle', 'tailpiece'] as const

/** The change that leads from the design asked about to a candidate. */
export const changeTo = (from: Design, to: Design): Change =>
  change(
    from,
    ...TOUCHED.filter((section) => from[section] !== to[section]).map(
      (section) => [[section], to[section]] as const,
    ),
  )
