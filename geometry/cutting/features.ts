/**
 * A part as a machine sees it: outline, openings and recesses, each with the line that the middle of the tool follows.
 *
 * Cuts that open at an edge become notches of the outline, and openings that run into one another become one, so
 * that every line is cut once and everything closes. An outline's line lies half the tool's width outside it, an
 * opening's inside it.
 */

import type { Cut, Drill, Part, Recess, Slot } from '../parts/part.ts'
import {
  type Bounds,
  bounds,
  type Contour,
  circle,
  clearance,
  depthAt,
  distanceToPoint,
  gap,
  isStraight,
  isWithin,
  nearest,
  nearestPoint,
  offset,
  type Point,
  polygon,
  takenOut,
  united,
} from '../plane/index.ts'
import { notes } from '../quantity/notes.ts'
import { withRelief } from './relief.ts'
import type { Tool } from './tool.ts'

/**
 * How the tool can follow: all along; nowhere, because it is wider than the opening; only in pieces; not into a bay;
 * or rounding a curve that is tighter than the tool.
 */
export type Follow = 'whole' | 'gone' | 'apart' | 'closed' | 'rounded'

export interface Feature {
  readonly kind: 'outline' | 'opening' | 'hole' | 'recess' | 'slot'
  /** Names of what it is for, as the operations have them. */
  readonly of: string
  /** As it is to come out, mm. */
  readonly contour: Contour
  /** Depth of a recess or slot, mm. */
  readonly depth?: number
  /** The line of the tool's middle; `null` where it cannot be followed whole. */
  readonly path: Contour | null
  readonly follow: Follow
  /** The widest tool that goes, mm, where that is known without trying: 0 where the cuts alone take a part to pieces. */
  readonly widest?: number
}

interface Named {
  readonly contour: Contour
  readonly of: string
}

/** Nearer than this, mm, contours touch. */
const TOUCHING = 1e-6

/** Left standing on a curve, mm, that shows: more than this and the curve comes out another. */
const SHOWS = 0.05

/** Of the radius, what a round tool leaves in a square corner: 1 / sin 45° - 1. */
const CORNER = Math.SQRT2 - 1

const known = notes<Part, { readonly tool: Tool; readonly features: readonly Feature[] }>()

/**
 * What a tool cuts of a part, recesses first, then openings, the outline last. Remembered for the last tool asked for.
 *
 * @param part lengths in mm; drilled holes are openings of a laser and left to the drill on a router
 * @throws where a contour is open
 * @example featuresOf(lid, { process: 'laser', width: 0.2, relief: 'none', cutsSlots: false })
 */
export function featuresOf(part: Part, tool: Tool): readonly Feature[] {
  const before = known.get(part)
  if (before && sameTool(before.tool, tool)) return before.features
  const features = made(part, tool)
  known.set(part, { tool, features })
  return features
}

const sameTool = (a: Tool, b: Tool): boolean =>
  a.process === b.process && a.width === b.width && a.relief === b.relief && a.cutsSlots === b.cutsSlots

function made(part: Part, tool: Tool): Feature[] {
  const { outline, openings, split } = shapesOf(part)
  const recesses = part.operations.filter((one): one is Recess => one.kind === 'recess')
  const holes = tool.process === 'laser' ? part.operations.filter(isThrough) : []
  const features = [
    ...recesses.map((one): Feature => {
      const contour = runOut(one.contour, part.outline, tool.width)
      return { ...followed('recess', one.of, contour, tool), contour: one.contour, depth: one.depth }
    }),
    ...(tool.cutsSlots ? part.operations.filter((one): one is Slot => one.kind === 'slot') : []).map((one) =>
      slotFollowed(one, part, tool),
    ),
    ...holes.map((one) => followed('hole', one.of, circle(one.centre, one.diameter / 2), tool)),
    ...openings.map((one) => followed('opening', one.of, one.contour, tool)),
  ]
  const edge = followed('outline', 'its outline', outline, tool)
  return [...features, split ? { ...edge, path: null, follow: 'apart', widest: 0 } : edge]
}

const isThrough = (one: Part['operations'][number]): one is Drill =>
  one.kind === 'drill' && one.depth === 'through'

/** The outline with all notches taken out of it, and the openings that lie within. */
function shapesOf(part: Part): {
  readonly outline: Contour
  readonly openings: readonly Named[]
  readonly split: boolean
} {
  const inner: Named[] = []
  const notches: Contour[] = []
  for (const { contour, of } of part.operations.filter(
    (one): one is Cut => one.kind === 'cut' && one.side === 'inside',
  )) {
    if (isWithin(contour, part.outline) && nearest(contour, part.outline).distance > TOUCHING) {
      inner.push({ contour, of })
    } else notches.push(contour)
  }
  const outline = notched(part.outline, notches)
  return { outline: outline ?? part.outline, openings: merged(inner), split: outline === null }
}

/**
 * An outline with notches taken out of it, in whatever order they come: one that leaves pieces, or wood that hangs by a
 * point, waits for others that may take just that away. `null` where in the end the part is in pieces.
 */
function notched(outline: Contour, notches: readonly Contour[]): Contour | null {
  let whole = outline
  let waiting = notches
  for (let before = Number.POSITIVE_INFINITY; waiting.length > 0; ) {
    if (waiting.length === before) return null
    before = waiting.length
    waiting = waiting.filter((notch) => {
      const { outers, holes, torn } = takenOut(whole, notch)
      const [only] = outers
      const parts = outers.length !== 1 || holes.length > 0 || torn || only === undefined
      if (!parts) whole = only
      return parts
    })
  }
  return whole
}

/** Openings that run into one another as one. */
function merged(openings: readonly Named[]): Named[] {
  const apart: Named[] = []
  for (const opening of openings) {
    let whole = opening
    for (let index = apart.length - 1; index >= 0; index--) {
      const other = apart[index] as Named
      if (!overlap(bounds(whole.contour), bounds(other.contour)) || gap(whole.contour, other.contour) > 0)
        continue
      const { outers, holes, torn } = united(other.contour, whole.contour)
      const [only] = outers
      if (outers.length !== 1 || holes.length > 0 || torn || only === undefined) continue
      whole = { contour: only, of: other.of === whole.of ? whole.of : `${other.of} with ${whole.of}` }
      apart.splice(index, 1)
    }
    apart.push(whole)
  }
  return apart
}

const overlap = (a: Bounds, b: Bounds): boolean =>
  a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY

/**
 * A recess that opens at an edge, drawn on beyond it, so that the tool clears the edge too: corners outside the part
 * are moved away from it by the width of the tool.
 */
function runOut(contour: Contour, outline: Contour, by: number): Contour {
  if (contour.shape === 'circle') return contour
  const vertices = contour.vertices.map((vertex) => {
    const depth = depthAt(vertex, outline)
    if (depth > -TOUCHING) return vertex
    const { x, y } = nearestPoint(outline, vertex)
    const share = by / -depth
    return { ...vertex, x: vertex.x + (vertex.x - x) * share, y: vertex.y + (vertex.y - y) * share }
  })
  return { ...contour, vertices }
}

function followed(kind: Feature['kind'], of: string, contour: Contour, tool: Tool): Feature {
  const inside = kind !== 'outline'
  const radius = tool.width / 2
  const { follow, bare } = wayOf(contour, radius, inside)
  if (bare === null) return { kind, of, contour, path: null, follow }
  const path = tool.relief === 'none' ? bare : withRelief(contour, bare, tool.relief, radius, inside)
  return { kind, of, contour, path, follow }
}

/**
 * A slot to saw as a narrow area. It has no ends of its own where it runs out over the edge: there the tool goes on.
 */
function slotFollowed({ from, to, width, depth, of }: Slot, part: Part, tool: Tool): Feature {
  const long = Math.hypot(to.x - from.x, to.y - from.y)
  const [ux, uy] = [(to.x - from.x) / long, (to.y - from.y) / long]
  const beyond = (end: Point) => (depthAt(end, part.outline) < Math.max(width, tool.width) ? tool.width : 0)
  const [back, on, half] = [beyond(from), beyond(to), width / 2]
  const corner = (end: Point, along: number, aside: number) => ({
    x: end.x + along * ux - aside * uy,
    y: end.y + along * uy + aside * ux,
  })
  const contour = polygon([
    corner(from, -back, -half),
    corner(to, on, -half),
    corner(to, on, half),
    corner(from, -back, half),
  ])
  return { ...followed('slot', of, contour, { ...tool, relief: 'none' }), depth }
}

interface Way {
  readonly follow: Follow
  /** The line of the middle, without relief; `null` where the contour cannot be followed whole. */
  readonly bare: Contour | null
}

const noWay = (follow: Follow): Way => ({ follow, bare: null })

/** How a tool of a radius can follow a contour. */
function wayOf(contour: Contour, radius: number, inside: boolean): Way {
  const { outers, holes, torn } = offset(contour, inside ? -radius : radius)
  const [bare] = outers
  if (bare === undefined) return noWay('gone')
  if (holes.length > 0) return noWay('closed')
  if (torn || outers.length > 1) return noWay('apart')
  let follow: Follow = 'whole'
  // A straight side out of reach lies in a bay; a curve out of reach comes out rounder.
  for (const { x, y, straight } of contour.shape === 'circle' ? [] : middles(contour.vertices)) {
    const left = distanceToPoint(bare, { x, y }) - radius
    if (left <= SHOWS) continue
    if (!straight) follow = 'rounded'
    // Beside a square corner a side stays as far out of reach as the corner; farther, it lies in a bay.
    else if (left > radius * CORNER + SHOWS) return noWay(inside ? 'apart' : 'closed')
  }
  return { follow, bare }
}

function middles(vertices: readonly (Point & { bulge: number })[]) {
  return vertices.map((from, index) => {
    const to = vertices[(index + 1) % vertices.length] as Point
    const off = from.bulge / 2
    return {
      x: (from.x + to.x) / 2 + off * (to.y - from.y),
      y: (from.y + to.y) / 2 - off * (to.x - from.x),
      straight: isStraight(from.bulge),
    }
  })
}

/** Steps of halving that find a width to a thousandth of the first guess. */
const HALVINGS = 12

/**
 * The widest tool that would follow a feature as the tool asked for cannot, mm.
 *
 * @param width of the tool that does not go
 */
export function widestFor({ contour, kind, widest }: Feature, width: number): number {
  if (widest !== undefined) return widest
  let [goes, fails] = [0, width]
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (goes + fails) / 2
    if (wayOf(contour, middle / 2, kind !== 'outline').follow === 'whole') goes = middle
    else fails = middle
  }
  return goes
}

/** Contours in these boxes are at least this far apart, mm; below nothing where the boxes overlap. */
const boxesApart = (a: Bounds, b: Bounds): number =>
  Math.max(a.minX - b.maxX, b.minX - a.maxX, a.minY - b.maxY, b.minY - a.maxY)

/** Wood between two cuts, or between a cut and the edge, where it is narrowest. */
export interface Web {
  readonly width: number
  readonly from: Point
  readonly to: Point
  readonly of: readonly string[]
}

/**
 * The narrowest wood between cuts that go right through a part, or between one and its edge; `null` where there is
 * none. Drilled holes count.
 *
 * @example narrowestWeb(lid)?.width // 12.5
 */
export function narrowestWeb(part: Part): Web | null {
  const { outline, openings } = shapesOf(part)
  const through: Named[] = [
    ...openings,
    ...part.operations.filter(isThrough).map((one) => ({
      contour: circle(one.centre, one.diameter / 2),
      of: one.of,
    })),
  ]
  let least: Web | null = null
  const take = (width: number, from: Point, to: Point, of: readonly string[]) => {
    if (least === null || width < least.width) least = { width, from, to, of }
  }
  const boxes = through.map(({ contour }) => bounds(contour))
  through.forEach((one, index) => {
    const toEdge = clearance(one.contour, outline)
    if (toEdge.distance > TOUCHING) take(toEdge.distance, toEdge.from, toEdge.to, [one.of])
    for (let next = index + 1; next < through.length; next++) {
      const other = through[next] as Named
      if (least !== null && boxesApart(boxes[index] as Bounds, boxes[next] as Bounds) >= least.width) continue
      const near = nearest(one.contour, other.contour)
      if (least !== null && near.distance >= least.width) continue
      const width = gap(one.contour, other.contour)
      // Where they run into one another no wood is left to be thin.
      if (width > TOUCHING) take(width, near.from, near.to, [one.of, other.of])
    }
  })
  return least
}
