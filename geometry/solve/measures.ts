/**
 * What the measures that stay on the drawing come to. Reckoned only when asked for and remembered per layout, so a
 * design without measures pays nothing for them.
 */

import type { Design } from '../design/schema.ts'
import type { Face } from '../kinds/kind.ts'
import { type Bounds, bounds, type Contour, line, nearest, nearestPoint, type Point } from '../plane/index.ts'
import { notes } from '../quantity/notes.ts'
import type { Layout } from './layout.ts'
import { stringAt } from './solve.ts'

export type Measure = Design['measures'][number]
export type MeasureEnd = Measure['from']

/** A measure taken: where it runs in its face's frame, and how long it is. */
export interface Measured {
  readonly measure: Measure
  /** Its place in the design's list. */
  readonly index: number
  readonly from: Point
  readonly to: Point
  readonly mm: number
}

const known = notes<Layout, readonly Measured[]>()
const NONE: readonly Measured[] = []

/**
 * Every measure that can be taken, in the order of the list; one whose thing or line is not there is left out.
 * Example: from the centreline to the centre of a hole 40 mm off it, `measuredOn(layout)[0].mm` is 40.
 */
export function measuredOn(layout: Layout): readonly Measured[] {
  const { measures } = layout.design
  if (measures.length === 0) return NONE
  const before = known.get(layout)
  if (before) return before
  const taken = measures.flatMap((measure, index) => {
    const one = takeMeasure(layout, measure)
    return one ? [{ measure, index, ...one }] : []
  })
  known.set(layout, taken)
  return taken
}

/** One measure, or `null` where an end is not there or the two overlap on the way asked for. */
export function takeMeasure(
  layout: Layout,
  { face, from, to, way }: Measure,
): Pick<Measured, 'from' | 'to' | 'mm'> | null {
  const a = shapeOf(layout, face, from)
  const b = shapeOf(layout, face, to)
  if (!a || !b) return null
  if (way === 'straight') {
    const [p, q] = shortest(a, b)
    return { from: p, to: q, mm: Math.hypot(q.x - p.x, q.y - p.y) }
  }
  return apart(boxOf(a), boxOf(b), way)
}

type Shape = Point | Contour

const isPoint = (shape: Shape): shape is Point => !('shape' in shape)

function shortest(a: Shape, b: Shape): [Point, Point] {
  if (isPoint(a) && isPoint(b)) return [a, b]
  if (isPoint(a)) return isPoint(b) ? [a, b] : [a, nearestPoint(b, a)]
  if (isPoint(b)) return [nearestPoint(a, b), b]
  const { from, to } = nearest(a, b)
  return [from, to]
}

const boxOf = (shape: Shape): Bounds =>
  isPoint(shape) ? { minX: shape.x, maxX: shape.x, minY: shape.y, maxY: shape.y } : bounds(shape)

/** Between the edges that face each other, along one axis only; drawn where the two lie side by side. */
function apart(a: Bounds, b: Bounds, way: 'along' | 'across'): Pick<Measured, 'from' | 'to' | 'mm'> | null {
  const along = way === 'along'
  const [lowA, highA, lowB, highB] = along
    ? [a.minX, a.maxX, b.minX, b.maxX]
    : [a.minY, a.maxY, b.minY, b.maxY]
  if (Math.max(lowA, lowB) < Math.min(highA, highB)) return null
  const [start, end] = highA <= lowB ? [highA, lowB] : [lowA, highB]
  const beside = along ? middleOf(a.minY, a.maxY, b.minY, b.maxY) : middleOf(a.minX, a.maxX, b.minX, b.maxX)
  const at = (value: number): Point => (along ? { x: value, y: beside } : { x: beside, y: value })
  return { from: at(start), to: at(end), mm: Math.abs(end - start) }
}

/** The middle of what two stretches share, or of the shorter one where they share nothing. */
function middleOf(lowA: number, highA: number, lowB: number, highB: number): number {
  const [low, high] = [Math.max(lowA, lowB), Math.min(highA, highB)]
  if (low <= high) return (low + high) / 2
  return highA - lowA <= highB - lowB ? (lowA + highA) / 2 : (lowB + highB) / 2
}

/** What an end of a measure is on a face, `null` where there is no such thing or line. */
export function shapeOf(layout: Layout, face: Face, { of, at }: MeasureEnd): Shape | null {
  const placed = layout.placed.find((one) => one.thing.id === of && one.face === face)
  if (placed) return at === 'centre' ? placed.at : placed.footprint
  return lineOf(layout, face, of)
}

/** A line of a face by its name, from one edge of the face to the other. */
function lineOf(layout: Layout, face: Face, name: string): Contour | null {
  const { minX, maxX, minY, maxY } = layout.panels[face].bounds
  const { originX } = layout.panels[face]
  const upright = (x: number) => line({ x, y: minY }, { x, y: maxY })
  const level = (y: number) => line({ x: minX, y }, { x: maxX, y })
  const { box, saddle, board, neck, frets, strings, design } = layout
  if (face !== 'lid' && face !== 'base') {
    if (name === 'centreline') return upright(0)
    if (name === 'neck-end edge') return upright(minX)
    return name === 'tail-end edge' ? upright(maxX) : null
  }
  switch (name) {
    case 'neck-end edge':
      return upright(minX)
    case 'tail-end edge':
      return upright(maxX)
    case 'neck-end wall':
      return upright(box.insideX0 - originX)
    case 'tail-end wall':
      return upright(box.insideX1 - originX)
    case 'board end':
      return upright((board ? board.x1 : box.x0) - originX)
    case 'saddle':
      return upright(saddle.x - originX)
    case 'centreline':
      return level(0)
    case 'bass edge':
      return level(minY)
    case 'treble edge':
      return level(maxY)
    case 'bass wall':
      return level(box.insideBass)
    case 'treble wall':
      return level(box.insideTreble)
    case 'neck bass side':
      return level(-design.neck.width / 2)
    case 'neck treble side':
      return level(design.neck.width / 2)
  }
  const number = Number(name.split(' ')[1])
  if (name.startsWith('fret ')) {
    const fret = frets.find((one) => one.number === number)
    return fret ? upright(fret.fromNut - originX) : null
  }
  const string = strings.find((one) => one.number === number)
  if (!string) return null
  const end = Math.min(maxX, saddle.x - originX)
  const start = Math.max(minX, Math.min(neck.x0 - originX, end - 1))
  const on = (x: number) => ({ x, y: stringAt(string, x + originX, saddle.x) })
  return line(on(start), on(end))
}
