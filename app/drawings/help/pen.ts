/**
 * The pen of the small drawings beside fields: shapes as path data, and what they are inked as. All are drawn on one
 * grid of 96 by 64, x to the tail, y down; paths keep to absolute M, L, A and Z, so that their extent can be reckoned.
 */
export const GRID = { width: 96, height: 64 } as const

/** In the order of painting: wood, what is cut from it, wood in that, metal, holes in that, lines; then the measure. */
export const LAYERS = [
  'body',
  'hole',
  'piece',
  'metal',
  'gap',
  'line',
  'dash',
  'area',
  'reach',
  'measure',
  'tip',
] as const
export type Layer = (typeof LAYERS)[number]

/** A drawing: path data by what it is inked as. */
export interface Ink extends Readonly<Partial<Record<Layer, string>>> {
  /** Seen from above, with the treble side up: a left-handed build has it turned over, as its plan is. */
  readonly plan?: true
  /** What stands for it in a left-handed build, where turning over will not do. */
  readonly left?: Ink
}

/** Several small drawings of one field, each over its words: the options of a choice, or the cases a sentence parts. */
export interface Cases {
  readonly cases: Readonly<Record<string, Ink>>
}
export type Drawing = Ink | Cases
export const isCases = (drawing: Drawing): drawing is Cases => 'cases' in drawing

const n = (value: number) => String(Math.round(value * 100) / 100)
const at = (x: number, y: number) => `${n(x)} ${n(y)}`

/** An open line through the points, given as x, y, x, y … */
export function way(...points: number[]): string {
  let d = ''
  for (let i = 0; i < points.length; i += 2) d += `${i === 0 ? 'M' : 'L'}${at(points[i]!, points[i + 1]!)}`
  return d
}
export const poly = (...points: number[]) => `${way(...points)}Z`
export const circle = (x: number, y: number, r: number) =>
  `M${at(x - r, y)}A${n(r)} ${n(r)} 0 0 1 ${at(x + r, y)}A${n(r)} ${n(r)} 0 0 1 ${at(x - r, y)}Z`

/** A rectangle by its upper left corner and size, with round corners if asked. */
export function rect(x: number, y: number, wide: number, tall: number, r = 0): string {
  if (r === 0) return poly(x, y, x + wide, y, x + wide, y + tall, x, y + tall)
  const [right, low, a] = [x + wide, y + tall, `A${n(r)} ${n(r)} 0 0 1 `]
  return `${way(x + r, y, right - r, y)}${a}${at(right, y + r)}L${at(right, low - r)}${a}${at(right - r, low)}L${at(x + r, low)}${a}${at(x, low - r)}L${at(x, y + r)}${a}${at(x + r, y)}Z`
}

const on = (x: number, y: number, r: number, degrees: number): [number, number] => {
  const turn = (degrees * Math.PI) / 180
  return [x + r * Math.cos(turn), y + r * Math.sin(turn)]
}

/** Part of a circle, angles in degrees clockwise from the tail. */
export const arc = (x: number, y: number, r: number, from: number, to: number) =>
  `M${at(...on(x, y, r, from))}A${n(r)} ${n(r)} 0 ${Math.abs(to - from) > 180 ? 1 : 0} ${to > from ? 1 : 0} ${at(...on(x, y, r, to))}`

/** An oval of four compass arcs, by its half lengths; wider than tall. */
export function oval(x: number, y: number, half: number, low: number): string {
  const small = low * 0.7
  const large = ((half - small) ** 2 + low ** 2 - small ** 2) / (2 * (low - small))
  const [dx, dy] = [half - small, large - low]
  const out = large / Math.hypot(dx, dy)
  const [px, py] = [dx * out, dy * out - dy]
  const [near, far] = [`A${n(small)} ${n(small)} 0 0 1 `, `A${n(large)} ${n(large)} 0 0 1 `]
  return `M${at(x - px, y - py)}${far}${at(x + px, y - py)}${near}${at(x + px, y + py)}${far}${at(x - px, y + py)}${near}${at(x - px, y - py)}Z`
}

/** Points turned about a place, clockwise in degrees. */
export function turned(x: number, y: number, degrees: number, ...points: number[]): number[] {
  const turn = (degrees * Math.PI) / 180
  return points.map((value, i) => {
    const [dx, dy] = i % 2 === 0 ? [value - x, points[i + 1]! - y] : [points[i - 1]! - x, value - y]
    return i % 2 === 0
      ? x + dx * Math.cos(turn) - dy * Math.sin(turn)
      : y + dx * Math.sin(turn) + dy * Math.cos(turn)
  })
}

const inked =
  (layer: Layer) =>
  (...paths: string[]): Ink => ({ [layer]: paths.join('') })
/** Wood. */
export const body = inked('body')
/** What is cut out of it, or air. */
export const hole = inked('hole')
/** Wood that stands in what is cut out, or before other wood. */
export const piece = inked('piece')
export const metal = inked('metal')
/** Air in metal. */
export const gap = inked('gap')
export const line = inked('line')
/** What lies hidden, a centreline, or what was there before. */
export const dash = inked('dash')
/** What is measured or meant, as a tinted region. */
export const area = inked('area')
/** The same as a line. */
export const mark = inked('measure')
const reach = inked('reach')

/** Drawings laid over each other. */
export function over(...inks: Ink[]): Ink {
  const all: Partial<Record<Layer, string>> & { plan?: true } = {}
  if (inks.some(({ plan }) => plan)) all.plan = true
  for (const ink of inks)
    for (const layer of LAYERS) if (ink[layer]) all[layer] = (all[layer] ?? '') + ink[layer]
  return all
}

/** The head of an arrow: its point, and the way it points in degrees. */
function tip(x: number, y: number, degrees: number): string {
  return poly(...turned(x, y, degrees, x, y, x - 4.6, y - 1.9, x - 4.6, y + 1.9))
}

const TICK = 2.8
/** Shorter than this, the arrows stand outside and point at each other. */
const SHORT = 11
const OUTSIDE = 7.5

/** The stretch between two points: a line with arrows and a stroke across each end. */
export function stretch(x1: number, y1: number, x2: number, y2: number): Ink {
  const long = Math.hypot(x2 - x1, y2 - y1)
  const degrees = (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI
  const [ux, uy] = [(x2 - x1) / long, (y2 - y1) / long]
  const cross = (x: number, y: number) => way(x - uy * TICK, y + ux * TICK, x + uy * TICK, y - ux * TICK)
  const short = long < SHORT
  const out = short ? OUTSIDE : 0
  return {
    measure: way(x1 - ux * out, y1 - uy * out, x2 + ux * out, y2 + uy * out) + cross(x1, y1) + cross(x2, y2),
    tip: tip(x1, y1, short ? degrees : degrees + 180) + tip(x2, y2, short ? degrees + 180 : degrees),
  }
}

type From = readonly [] | readonly [number] | readonly [number, number]

/** A stretch along, at a height; `from` are the heights that thin lines come from, one for both ends or one for each. */
export const across = (x1: number, x2: number, y: number, ...from: From): Ink =>
  over(
    stretch(x1, y, x2, y),
    leads([x1, x2], from, (x, start) => way(x, start, x, y)),
  )

/** A stretch upright, at a distance; `from` as with `across`. */
export const upright = (y1: number, y2: number, x: number, ...from: From): Ink =>
  over(
    stretch(x, y1, x, y2),
    leads([y1, y2], from, (y, start) => way(start, y, x, y)),
  )

const leads = (ends: readonly number[], from: From, draw: (end: number, start: number) => string): Ink =>
  from.length === 0 ? {} : reach(...ends.map((end, i) => draw(end, from[i] ?? from[0] ?? end)))

/** From a stroke to an arrow: a measure whose sense matters, positive the way the arrow points. */
export function towards(x1: number, y1: number, x2: number, y2: number): Ink {
  const long = Math.hypot(x2 - x1, y2 - y1)
  const [ux, uy] = [(x2 - x1) / long, (y2 - y1) / long]
  return over(mark(way(x1 - uy * 4, y1 + ux * 4, x1 + uy * 4, y1 - ux * 4)), arrow(x1, y1, x2, y2))
}

/** An arrow: which way something goes. */
export const arrow = (x1: number, y1: number, x2: number, y2: number): Ink => ({
  measure: way(x1, y1, x2, y2),
  tip: tip(x2, y2, (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI),
})

/** A circle and its diameter. */
export function diameter(x: number, y: number, r: number): Ink {
  return over(mark(circle(x, y, r)), stretch(x - r, y, x + r, y))
}

/** From a marked centre out to the circle, in a direction. */
export function radius(x: number, y: number, r: number, degrees: number): Ink {
  const [px, py] = on(x, y, r, degrees)
  return over(mark(arc(x, y, r, degrees - 45, degrees + 45)), dot(x, y), arrow(x, y, px, py))
}

/** A marked point. */
export const dot = (x: number, y: number): Ink => ({ tip: circle(x, y, 1.6) })

/** An angle between two directions, clockwise from the tail: an arrow at the second end, or at both. */
export function angle(
  x: number,
  y: number,
  r: number,
  from: number,
  to: number,
  ends: 'one' | 'both' = 'both',
): Ink {
  const sense = to > from ? 90 : -90
  // The head of the arrow is straight and the arc is not: it is laid along the middle of the piece it covers.
  const lean = (sense / 90) * ((2.3 / r) * (180 / Math.PI))
  return {
    measure: arc(x, y, r, from, to),
    tip:
      tip(...on(x, y, r, to), to + sense - lean) +
      (ends === 'both' ? tip(...on(x, y, r, from), from - sense + lean) : ''),
  }
}

/** A thin line on from something, to where it is measured. */
export const lead = (...points: number[]) => reach(way(...points))
