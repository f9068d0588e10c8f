/** Small helpers that kinds share: what is open follows from what is cut. */
import { type Contour, circle, type Point, roundedRectangle, stadium } from '../plane/index.ts'
import type { LocalOperation } from './kind.ts'

export const ORIGIN: Point = { x: 0, y: 0 }

/** A circle of this diameter about the thing's own centre. */
export const disc = (diameter: number): Contour => circle(ORIGIN, diameter / 2)

/** A rectangle about the centre; corners rounded where a radius is given. */
export const plate = (along: number, across: number, radius = 0): Contour =>
  roundedRectangle(ORIGIN, along, across, radius)

/** A round hole through the face. */
export const through = (diameter: number, at?: Point): LocalOperation =>
  at ? { kind: 'drill', diameter, depth: 'through', at } : { kind: 'drill', diameter, depth: 'through' }

/** The openings that operations make: everything cut or drilled right through, in the order of the work. */
export const openOf = (operations: readonly LocalOperation[]): Contour[] =>
  operations.flatMap((one): Contour[] => {
    if (one.kind === 'cut') return [one.contour]
    if (one.kind === 'drill' && one.depth === 'through') return [circle(one.at ?? ORIGIN, one.diameter / 2)]
    return []
  })

/** Centres of `count` holes in one row across the strings, `span` from the first to the last. */
export function row(count: number, span: number): Point[] {
  if (count < 2) return count < 1 ? [] : [ORIGIN]
  return Array.from({ length: count }, (_, index) => ({ x: 0, y: -span / 2 + (span * index) / (count - 1) }))
}

/** The outline that holds a row of round holes. */
export const rowOutline = (count: number, span: number, diameter: number): Contour =>
  count < 2 ? disc(diameter) : stadium(ORIGIN, diameter, diameter + span)

/** The widest of several circles about the centre. */
export const widest = (...diameters: readonly number[]): Contour => disc(Math.max(...diameters))

/** A size below this is none, mm. */
export const LEAST = 0.01
