/** Rules about a lid that opens; nothing is reckoned for one that lifts off or is glued. */
import { type LidCure, lidCuresOf } from '../../box/swing/cures.ts'
import { type LidMotion, lidMotionOf, worstOfPairs } from '../../box/swing/lid-motion.ts'
import { backFrom, type LidSection, runsAlong } from '../../box/swing/section.ts'
import type { Layout } from '../../solve/layout.ts'
import { degreesOf, gradeLeast, type Measurement, type Rule, type Where } from '../finding.ts'
import { capital, type Say } from '../say.ts'

/** Where it bites: across the section in plan for a pin along the neck, in the centreline section for one across it. */
function placeOf(section: LidSection, s: number, at: { x: number; y: number }, wide: number): Where {
  const [a, b] = [backFrom(section, s, at), backFrom(section, s, { x: at.x + wide, y: at.y })]
  return runsAlong(section.edge)
    ? { view: 'plan', from: { x: a.x, y: a.y }, to: { x: b.x, y: b.y } }
    : { view: 'section', from: { x: a.x, y: a.z }, to: { x: b.x, y: b.z } }
}

type Motion<By extends LidMotion['by']> = Extract<LidMotion, { by: By }>

function* swinging(motion: Motion<'hinge'>, wanted: number): Iterable<Measurement> {
  for (const [index, one] of worstOfPairs(motion.swing.encounters).entries()) {
    const measured = one.bite > 0 ? -one.bite : one.room
    // All that have too little room, and where none has the one that has least: they come worst first.
    if (index > 0 && gradeLeast(measured, wanted) === 'clear') continue
    yield {
      about: [one.moving, one.standing],
      measured,
      limit: wanted,
      grade: gradeLeast(measured, wanted, 0),
      where: placeOf(motion.section, one.s, one.at, Math.max(one.bite, one.room)),
      data: { angle: degreesOf(one.angle), by: 'hinge' },
    }
  }
}

function* sliding(motion: Motion<'slide'>, wanted: number): Iterable<Measurement> {
  const seen = new Set<string>()
  for (const one of motion.slide.stopped) {
    const pair = `${one.moving} ${one.standing}`
    if (seen.has(pair)) continue
    seen.add(pair)
    yield {
      about: [one.moving, one.standing],
      measured: -one.bite,
      limit: wanted,
      grade: 'stop',
      where: placeOf(motion.section, one.s, one.at, 0),
      data: { by: 'slide', after: one.after },
    }
  }
}

const NAMES: Readonly<Record<LidCure['field'], string>> = {
  bevelAtHinge: 'the lid’s upper edge at the hinge bevelled back by',
  bevelOpposite: 'the lid’s lower edge opposite the hinge bevelled back by',
  gap: 'a gap at the neck of',
  play: 'play round the lid of',
}

function cureOf(
  moving: string,
  standing: string,
  deep: number,
  wanted: number,
  layout: Layout,
  say: Say,
): string {
  if (standing === 'board') return 'Under the board the lid cannot rise: end the board at the neck-end face.'
  if (moving !== 'lid')
    return `Move it ${say.length(deep + wanted)} away from ${say.thing(standing)}, or make it that much shallower.`
  const [best, next] = lidCuresOf(layout)
  if (!best) return 'No bevel or gap alone cures it: move the hinge pin, or hinge it on another edge.'
  return `Cured by ${NAMES[best.field]} ${say.fine(best.value)}${next ? `, or by ${NAMES[next.field]} ${say.fine(next.value)}` : ''}.`
}

export const lidClears: Rule = {
  name: 'lid-clears',
  title: 'Lid clear as it opens',
  unit: 'mm',
  wants: 'least',
  limits: ['lidClear'],
  mendedBy: [
    'box.lid.gap',
    'box.lid.play',
    'box.lid.bevelAtHinge',
    'box.lid.bevelOpposite',
    'place',
    'thing.depth',
    'box.lid.slidesTo',
  ],
  measure(layout, limit) {
    const motion = lidMotionOf(layout)
    if (!motion) return []
    const wanted = limit('lidClear')
    return [...(motion.by === 'hinge' ? swinging(motion, wanted) : sliding(motion, wanted))]
  },
  words({ measured, limit, grade, about, data }, say, layout) {
    const [moving = '', standing = ''] = about
    const who = say.thing(moving)
    const what = say.thing(standing)
    const deep = -(measured ?? 0)
    if (data?.by === 'slide')
      return `${capital(who)} slides out ${say.length(Number(data.after))} and then stands against ${what}, ${say.length(deep)} of it. ${
        moving === 'lid'
          ? 'Let it slide out over another edge, or take that much off what is in the way.'
          : 'Make it shallower, or let the lid slide out over another edge.'
      }`
    if (grade === 'stop')
      return `Opening, ${who} bites ${say.length(deep)} into ${what}, deepest at ${say.angle(Number(data?.angle))}. ${cureOf(moving, standing, deep, limit ?? 0, layout, say)}`
    const room = `Opening, ${who} passes ${what} with ${say.length(measured ?? 0)} to spare`
    if (grade === 'clear') return `${room}.`
    return `${room}; ${say.length(limit ?? 0)} are wanted. ${cureOf(moving, standing, -(measured ?? 0), limit ?? 0, layout, say)}`
  },
}

export const lidReach: Rule = {
  name: 'lid-reach',
  title: 'How far the lid opens',
  unit: 'degrees',
  wants: 'least',
  limits: [],
  mendedBy: ['box.lid.gap', 'box.lid.play', 'box.lid.bevelAtHinge', 'box.lid.bevelOpposite'],
  measure(layout) {
    const found: Measurement[] = []
    const motion = lidMotionOf(layout)
    if (motion?.by !== 'hinge') return found
    const { reached, wanted } = motion.swing
    const { at } = motion.section.pin
    const { box } = layout
    const along = runsAlong(motion.section.edge)
    found.push({
      about: ['lid'],
      measured: degreesOf(reached),
      limit: degreesOf(wanted),
      grade: gradeLeast(reached, wanted),
      where: along
        ? { view: 'plan', from: { x: box.x0, y: at }, to: { x: box.x1, y: at } }
        : { view: 'plan', from: { x: at, y: -box.halfWidth }, to: { x: at, y: box.halfWidth } },
    })
    return found
  },
  words({ measured, limit, grade }, say) {
    const opens = `The lid opens ${say.angle(measured ?? 0)}`
    return grade === 'clear'
      ? `${opens}, as far as is wanted.`
      : `${opens} and then bites; ${say.angle(limit ?? 0)} are wanted. What it bites into stands beside this.`
  },
}

export const hingeParallel: Rule = {
  name: 'hinge-parallel',
  title: 'Hinge along the neck',
  unit: 'degrees',
  wants: 'most',
  limits: [],
  mendedBy: ['box.lid.hingeEdge'],
  measure({ design, box, neck }) {
    const found: Measurement[] = []
    const { lid } = design.box
    if (lid.kind !== 'hinged') return found
    const across = !runsAlong(lid.hingeEdge)
    const x = lid.hingeEdge === 'neck end' ? box.x0 : box.x1
    // A tongue ends inside: the tail-end wall is free for hinges.
    const crosses = across && (lid.hingeEdge === 'neck end' || neck.x1 > box.insideX1)
    if (!crosses) return found
    const half = design.neck.width / 2
    found.push({
      about: ['lid', 'neck'],
      measured: 90,
      limit: 0,
      grade: 'care',
      where: { view: 'plan', from: { x, y: -half }, to: { x, y: half } },
    })
    return found
  },
  words({ measured }, say) {
    return `The neck crosses the hinge at ${say.angle(measured ?? 0)}: once it is in, such a lid commonly never opens again. Hinge it on the bass or the treble wall.`
  },
}
