/** Levers that move things: along, across, and straight the way that gains most. */
import type { Finding } from '../checks/finding.ts'
import { capital, sayFor } from '../checks/say.ts'
import type { Face } from '../kinds/kind.ts'
import type { Point } from '../plane/index.ts'
import type { Layout, Placed } from '../solve/layout.ts'
import { clean, type FieldSet, placeFields, saddleFields, shownStep } from '../solve/moves.ts'
import type { Lever, Turn } from './lever.ts'

/** How the margin grows where a thing is moved a little by this way; asked twice a thing. */
export type Slope = (fields: readonly FieldSet[]) => number

/** Room narrower than this may be stepped over when a place is looked for; millimetres, as thin as walls are. */
const STRIDE = 4

const onPlan = (face: Face): boolean => face === 'lid' || face === 'base'

/** Every way to move a thing that is not locked. */
export function moveLevers(layout: Layout, placed: Placed, slope: Slope): Lever[] {
  if (placed.thing.locked) return []
  const step = shownStep(layout.design.units)
  const { minX, maxX, minY, maxY } = layout.panels[placed.face].bounds
  const lever = (way: Point, most: number, ways: readonly (1 | -1)[]): Lever => ({
    sort: 'slide',
    step,
    stride: STRIDE / step,
    most: Math.floor(most / step),
    ways,
    at: (steps) =>
      turnTo(layout, placed, { x: awayFrom0(way.x * steps, step), y: awayFrom0(way.y * steps, step) }),
  })
  const both = [1, -1] as const
  const levers = [lever({ x: 0, y: 1 }, maxY - minY, both), lever({ x: 1, y: 0 }, maxX - minX, both)]
  const steepest = steepestWay(layout, placed, slope, step)
  if (steepest) levers.push(lever(steepest, Math.hypot(maxX - minX, maxY - minY), [1]))
  return levers
}

/** Whole steps of the rule, never less than wanted. */
const awayFrom0 = (steps: number, step: number): number =>
  Math.sign(steps) * Math.ceil(Math.abs(steps) - 1e-6) * step

/** The way straight up the margin, where that is neither along nor across; of length 1. */
function steepestWay(layout: Layout, placed: Placed, slope: Slope, step: number): Point | null {
  const to = (x: number, y: number) =>
    slope(placeFields(layout, placed, { x: placed.at.x + x, y: placed.at.y + y }))
  const x = to(step, 0)
  const y = to(0, step)
  const size = Math.hypot(x, y)
  if (!(size > 1e-9) || Math.abs(x) < 0.2 * size || Math.abs(y) < 0.2 * size) return null
  return { x: x / size, y: y / size }
}

function turnTo(layout: Layout, placed: Placed, by: Point): Turn | null {
  const fields = placeFields(layout, placed, { x: placed.at.x + by.x, y: placed.at.y + by.y })
  return fields.length === 0
    ? null
    : { fields, words: (before, after) => moveWords(before, after, placed, by) }
}

/** `Move “Hole” 4.2 mm towards the centreline and 1.0 mm towards the tail`. */
export function moveWords(before: Layout, after: Layout, placed: Placed, by: Point): string {
  const say = sayFor(before.design)
  const ways = [
    ...(by.y === 0 ? [] : [`${say.length(Math.abs(by.y))} ${wayAcross(placed, by.y)}`]),
    ...(by.x === 0 ? [] : [`${say.length(Math.abs(by.x))} ${wayAlong(placed.face, by.x)}`]),
  ]
  const others = before.placed.filter((one, index) => {
    const now = after.placed[index]
    return (
      one.thing.id !== placed.thing.id && now && Math.hypot(now.at.x - one.at.x, now.at.y - one.at.y) > 1e-6
    )
  })
  const few =
    others.length > 3 ? `${others.length} others` : others.map((one) => say.thing(one.thing.id)).join(' and ')
  const along = others.length === 0 ? '' : `, and ${few} with it`
  return `Move ${say.thing(placed.thing.id)} ${ways.join(' and ')}${along}`
}

function wayAlong(face: Face, by: number): string {
  if (face === 'neck-end-wall' || face === 'tail-end-wall')
    return by > 0 ? 'towards the treble side' : 'towards the bass side'
  return by > 0 ? 'towards the tail' : 'towards the neck'
}

function wayAcross({ face, at }: Placed, by: number): string {
  if (!onPlan(face)) return by > 0 ? 'towards the lid' : 'towards the base'
  if (Math.abs(by) <= Math.abs(at.y) && Math.sign(by) === -Math.sign(at.y)) return 'towards the centreline'
  return by > 0 ? 'towards the treble side' : 'towards the bass side'
}

/** The saddle up or down the lid, which slides neck and strings over the box. */
export function saddleLever(layout: Layout): Lever {
  const step = shownStep(layout.design.units)
  const { minX, maxX } = layout.panels.lid.bounds
  return {
    sort: 'slide',
    step,
    stride: STRIDE / step,
    most: Math.floor((maxX - minX) / step),
    ways: [1, -1],
    at: (steps) => ({
      fields: saddleFields(layout, layout.saddle.along + steps * step),
      words: ({ design }) =>
        `Put the saddle ${sayFor(design).length(Math.abs(steps * step))} ${steps > 0 ? 'nearer the tail end' : 'nearer the neck end'} of the lid; neck and strings slide with it`,
    }),
  }
}

/** A place that cannot be followed becomes the measure at which the thing stands meanwhile. */
export function unfollowedLever(layout: Layout, { about: [of = '', axis = ''] }: Finding): Lever | null {
  const words: Turn['words'] = ({ design }) =>
    `Give ${sayFor(design).thing(of)} a measure ${axis} its face, where it is drawn now, instead of what it follows`
  if (of === 'saddle')
    return {
      sort: 'choice',
      turns: [{ fields: [[['saddle', 'place'], clean(layout.saddle.along)]], words }],
    }
  const index = layout.placed.findIndex((one) => one.thing.id === of)
  const placed = layout.placed[index]
  if (!placed || (axis !== 'along' && axis !== 'across')) return null
  const value = axis === 'along' ? placed.at.x : onPlan(placed.face) ? placed.at.y : -placed.at.y
  return { sort: 'choice', turns: [{ fields: [[['things', index, axis], clean(value)]], words }] }
}

/** What a move gives up of how its place was meant, as a sentence; `null` where all relations are kept. */
export function loosened(before: Layout, after: Layout): string | null {
  const say = sayFor(before.design)
  const loose = before.design.things.flatMap((thing, index) => {
    const now = after.design.things[index]
    return (['along', 'across'] as const).flatMap((axis) =>
      typeof thing[axis] === 'object' && typeof now?.[axis] === 'number'
        ? [
            `${capital(say.thing(thing.id))} then stands at a measure ${axis} its face and no longer ${meant(thing[axis])}.`,
          ]
        : [],
    )
  })
  return loose.length === 0 ? null : loose.join(' ')
}

function meant(place: object): string {
  if ('midway' in place) return `midway between ${(place.midway as string[]).join(' and ')}`
  if ('mirror' in place) return 'as its partner'
  return 'as it was meant'
}
