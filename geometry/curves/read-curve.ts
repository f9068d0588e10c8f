/** From what a builder pastes or drops, a path or an SVG file, to one sound closed curve; or a sentence. */

import { type Curve, curveFault, LARGEST_CURVE, MOST_CORNERS } from '../kinds/own-curve.ts'
import { bounds, type Chain, type Point, type Vertex } from '../plane/index.ts'
import { arcsFor } from './arcs-for.ts'
import { readPathData, type Segment, type Subpath } from './path-words.ts'
import { shapesIn } from './svg-text.ts'

export type CurveReading =
  | {
      readonly ok: true
      readonly curve: Curve
      /** Length and height over all, in the file's own units. */
      readonly size: Point
      /** What was left out, if anything: `Of 3 curves the largest was taken.` */
      readonly notes: readonly string[]
    }
  | { readonly ok: false; readonly sentence: string }

/** How near the arcs keep to the curve where it is cut, mm: handles may lie outside it, so less than the 0.02 promised. */
const TOLERANCE = 0.012

/** An end this near to the beginning closes by itself, as a share of the size. */
const CLOSES = 1e-4

/** Sizes within these are kept as they are; a curve drawn much smaller or larger would lose digits. */
const LEAST_UNITS = 10
const MOST_UNITS = 5000
const KEPT_UNITS = 100

const refuse = (sentence: string): CurveReading => ({ ok: false, sentence })

/**
 * Reads a path (`M 0 0 C …`) or the text of an SVG file. Lines and arcs of circles are kept; other curves become
 * arcs that keep within 0.02 mm of them at the largest size a curve can have. The y axis is turned up.
 *
 * @example readCurve('M0 0 L40 0 L20 30 Z') // { ok: true, curve: [[0, 0, 0], [40, 0, 0], [20, -30, 0]], … }
 */
export function readCurve(text: string): CurveReading {
  const plain = text.replace(/^\ufeff/, '').trim()
  if (plain === '') return refuse('Nothing was pasted. A path begins with M, as in "M 0 0 L 40 0 L 20 30 Z".')
  const notes: string[] = []
  let data: readonly string[] = [plain]
  if (plain.startsWith('<')) {
    const file = shapesIn(plain)
    if (!file.ok) return refuse(file.sentence)
    if (file.paths.length === 0) return refuse('The file holds no path, circle, rectangle or polygon.')
    if (file.ignored.length > 0) notes.push(`Left out: ${file.ignored.join(', ')}.`)
    data = file.paths
  }
  const subpaths: Subpath[] = []
  for (const one of data) {
    const reading = readPathData(one)
    if (!reading.ok) return refuse(reading.sentence)
    subpaths.push(...reading.subpaths)
  }
  const sized = subpaths.map((path) => ({ path, size: sizeOf(path) }))
  const largest = sized.reduce((most, one) => (one.size > most.size ? one : most), sized[0] ?? NONE)
  if (largest.size <= 0) return refuse('The path has no length. Draw one closed line.')
  if (sized.length > 1) notes.push(`Of ${sized.length} curves the largest was taken.`)
  return traced(largest.path, largest.size, notes)
}

const NONE = { path: { from: { x: 0, y: 0 }, segments: [], closed: false }, size: 0 }

/** All places that a path names, handles and all: its size, roughly. */
function sizeOf({ from, segments }: Subpath): number {
  const points = [from, ...segments.flatMap(placesOf)]
  const spread = (axis: 'x' | 'y') => {
    const [low, high] = points.reduce(
      ([least, most], one) => [Math.min(least, one[axis]), Math.max(most, one[axis])],
      [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
    )
    return high - low
  }
  return Math.max(spread('x'), spread('y'))
}

const placesOf = (segment: Segment): Point[] =>
  segment.kind === 'cubic' ? [segment.c1, segment.c2, segment.to] : [segment.to]

function traced({ from, segments, closed }: Subpath, size: number, notes: readonly string[]): CurveReading {
  const end = segments.at(-1)?.to ?? from
  const open = Math.hypot(end.x - from.x, end.y - from.y)
  if (!closed && open > CLOSES * size)
    return refuse(
      `The curve is open: it ends ${figure(open)} from where it began. Close it, with Z at the end of the path.`,
    )
  const tolerance = (TOLERANCE / LARGEST_CURVE) * size
  const corners: Vertex[] = []
  let here = from
  for (const segment of segments) {
    for (const one of arcsFor(here, segment, tolerance)) corners.push(one)
    here = segment.to
    if (corners.length > MOST_CORNERS)
      return refuse(`The curve comes to more than ${MOST_CORNERS} corners. Draw it simpler.`)
  }
  const distinct = corners.filter((one, index) => {
    const next = corners[(index + 1) % corners.length] ?? one
    return Math.hypot(next.x - one.x, next.y - one.y) > 1e-7 * size
  })
  if (open > 1e-7 * size && closed) distinct.push({ ...end, bulge: 0 })
  if (distinct.length < 2) return refuse('The path encloses nothing. Draw one closed line.')
  // SVG has y down; turned up, every arc bends the other way.
  const factor = size < LEAST_UNITS || size > MOST_UNITS ? KEPT_UNITS / size : 1
  const curve: Curve = distinct.map(
    ({ x, y, bulge }) => [tidy(x * factor), tidy(0 - y * factor), tidy(0 - bulge)] as const,
  )
  const fault = curveFault(curve)
  if (fault) return refuse(fault)
  const box = bounds(asChain(curve))
  return {
    ok: true,
    curve,
    size: { x: (box.maxX - box.minX) / factor, y: (box.maxY - box.minY) / factor },
    notes,
  }
}

const asChain = (curve: Curve): Chain => ({
  shape: 'chain',
  closed: true,
  vertices: curve.map(([x, y, bulge]) => ({ x, y, bulge })),
})

/** A millionth of a unit is enough, and keeps files short. */
const tidy = (value: number): number => Math.round(value * 1e6) / 1e6 + 0

const figure = (value: number): string => String(Math.round(value * 100) / 100)
