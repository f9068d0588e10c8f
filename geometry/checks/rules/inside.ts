/** Rules about blocks, liners, battens, hinges and clasps in the box; silent where none are stated. */

import { type InsidePiece, insidePiecesOf, isWood, seenFrom } from '../../box/inside-pieces.ts'
import { roomAround } from '../../box/outlines.ts'
import { gap, nearest, rectangle } from '../../plane/index.ts'
import { roomBetween, type Solid } from '../../solids/index.ts'
import { insideSolids } from '../../solids/inside.ts'
import { braceSolids, neckSolids } from '../../solids/structure.ts'
import type { Layout } from '../../solve/layout.ts'
import { gradeLeast, gradeMost, type Measurement, type Rule, type Where } from '../finding.ts'
import { capital } from '../say.ts'

/** How far behind a face something must lie for an opening before it not to be stopped up: as much as beside it. */
export const openingToInside: Rule = {
  name: 'opening-to-inside',
  title: 'Opening to what stands inside',
  unit: 'mm',
  wants: 'least',
  limits: ['openingToInside'],
  mendedBy: ['place', 'size'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const pieces = insidePiecesOf(layout)
    if (pieces.length === 0) return found
    const wanted = limit('openingToInside')
    for (const { thing, kind, face, footprint } of layout.placed) {
      // Screws are meant to find wood.
      if (kind.overWall === 'meant') continue
      const reach = layout.panels[face].thickness + wanted
      for (const piece of pieces) {
        const { outline, from, to } = seenFrom(layout, face, piece)
        if (from >= reach || to <= 0) continue
        const plan = rectangle(outline.minX, outline.minY, outline.maxX, outline.maxY)
        const measured = gap(footprint, plan)
        if (measured > 2 * wanted + LOOK_AROUND) continue
        const ways = nearest(footprint, plan)
        found.push({
          about: [thing.id, piece.piece.id],
          measured,
          limit: wanted,
          grade: gradeLeast(measured, wanted, 0),
          where: { view: face, from: ways.from, to: ways.to },
        })
      }
    }
    return found
  },
  words({ measured, limit, about, grade }, say) {
    const [who, what] = [say.thing(about[0] ?? ''), say.thing(about[1] ?? '')]
    if (grade === 'stop')
      return `${capital(who)} opens over ${what}, ${say.length(-(measured ?? 0))} of it. Move it away, or take the piece out.`
    const room = `${capital(who)} lies ${say.length(measured ?? 0)} beside ${what}`
    return grade === 'clear' ? `${room}.` : `${room}; ${say.length(limit ?? 0)} keep it open.`
  },
}

/** Farther away than twice the limit and this nobody asks. */
const LOOK_AROUND = 10

const across = ({ box }: InsidePiece): Where => ({
  view: 'plan',
  from: { x: box.minX, y: box.minY },
  to: { x: box.maxX, y: box.maxY },
})

export const insideFits: Rule = {
  name: 'inside-fits',
  title: 'What stands inside lies inside',
  unit: 'mm',
  wants: 'least',
  limits: [],
  measure(layout) {
    const found: Measurement[] = []
    const { box } = layout
    for (const one of insidePiecesOf(layout)) {
      const room = roomAround(layout, one.box)
      const sides: readonly (readonly [string, number])[] = [
        ['neck-end wall', room.neckEnd],
        ['tail-end wall', room.tailEnd],
        ['bass wall', room.bass],
        ['treble wall', room.treble],
        ['base', one.box.minZ - box.baseTop],
        ['lid', box.lidBottom - one.box.maxZ],
      ]
      const [side, least] = sides.reduce((tight, next) => (next[1] < tight[1] ? next : tight))
      const measured = touchingIsNone(least)
      found.push({
        about: [one.piece.id],
        measured,
        limit: 0,
        // Hinges and clasps are let into wood; blocks are not.
        grade: measured >= 0 ? 'clear' : isWood(one.piece) ? 'stop' : 'care',
        where: across(one),
        data: { side },
      })
    }
    return found
  },
  words({ measured, about, grade, data }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    if (grade === 'clear') return `${who} stands ${say.length(measured ?? 0)} from the ${data?.side}.`
    return `${who} reaches ${say.length(-(measured ?? 0))} into the ${data?.side}. Measure its place and size again.`
  },
}

/** A tape measure's last tenth: nobody knows from it whether two things touch or meet. Millimetres. */
const TOUCH = 0.05

/** What may as well touch as meet counts as touching: no room, and none missing. */
const touchingIsNone = (room: number): number => (room < 0 && room >= -TOUCH ? 0 : room)

export const insideClearOfNeck: Rule = {
  name: 'inside-clear-of-neck',
  title: 'Neck and brace clear of what stands inside',
  unit: 'mm',
  wants: 'least',
  limits: [],
  mendedBy: ['inside.tall', 'inside.wide', 'inside.long'],
  measure(layout) {
    const found: Measurement[] = []
    if (insidePiecesOf(layout).length === 0) return found
    const structure = [...neckSolids(layout), ...braceSolids(layout)].filter((one) => one.part !== 'block')
    for (const piece of insideSolids(layout)) {
      const near = structure
        .map((other) => ({ other, between: roomBetween(piece, other) }))
        .reduce<{ other: Solid; between: ReturnType<typeof roomBetween> } | null>(
          (least, next) => (!least || next.between.room < least.between.room ? next : least),
          null,
        )
      if (!near || near.between.room > LOOK_AROUND) continue
      const { from, to } = near.between
      const room = touchingIsNone(near.between.room)
      found.push({
        about: [piece.of, near.other.of],
        measured: room,
        limit: 0,
        grade: room < 0 ? 'stop' : 'clear',
        where: { view: 'plan', from: { x: from.x, y: from.y }, to: { x: to.x, y: to.y } },
      })
    }
    return found
  },
  words({ measured, about, grade }, say) {
    const [what, who] = [say.thing(about[0] ?? ''), say.thing(about[1] ?? '')]
    if (grade === 'clear') return `${capital(who)} passes ${what} with ${say.length(measured ?? 0)} to spare.`
    return `${capital(who)} runs ${say.length(-(measured ?? 0))} into ${what}. Take that much off the piece, or take it out.`
  },
}

export const neckBlockHeight: Rule = {
  name: 'neck-block-height',
  aims: true,
  title: 'Neck block up to what lies on it',
  unit: 'mm',
  wants: 'most',
  limits: ['blockTouches'],
  mendedBy: ['inside.tall'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const wanted = limit('blockTouches')
    for (const one of insidePiecesOf(layout)) {
      if (one.piece.sort !== 'neck block') continue
      const { over, at } = above(layout, one)
      const room = at - one.box.maxZ
      const measured = Math.abs(room)
      found.push({
        about: [one.piece.id, over],
        measured,
        limit: wanted,
        grade: gradeMost(measured, wanted) === 'clear' ? 'clear' : room < 0 ? 'stop' : 'care',
        where: {
          view: 'section',
          from: { x: (one.box.minX + one.box.maxX) / 2, y: one.box.maxZ },
          to: { x: (one.box.minX + one.box.maxX) / 2, y: at },
        },
        data: { side: room < 0 ? 'over' : 'under', wants: one.piece.tall + room },
      })
    }
    return found
  },
  words({ measured, about, grade, data }, say) {
    const [who, over] = [capital(say.thing(about[0] ?? '')), say.thing(about[1] ?? '')]
    const off = say.length(measured ?? 0)
    if (grade === 'clear') return `${who} ends ${off} ${data?.side} ${over}, where it just touches.`
    const cure = `It is glued in at the height where it just touches: ${say.length(Number(data?.wants))} tall.`
    return data?.side === 'over'
      ? `${who} stands ${off} too tall: ${over} does not come down on it. ${cure}`
      : `${who} ends ${off} under ${over} and carries nothing. ${cure}`
  },
}

/** What lies on a block: the neck, which comes from the head, where it runs as far as the block, else the lid. */
function above({ neck, box, design }: Layout, { box: piece }: InsidePiece): { over: string; at: number } {
  const half = design.neck.width / 2
  return piece.minX < neck.x1 && piece.minY < half && piece.maxY > -half
    ? { over: 'neck', at: neck.bottom }
    : { over: 'lid', at: box.lidBottom }
}
