/**
 * The real outline of a box that was surveyed, laid on the instrument: the centreline runs through the middles of both end
 * edges, x along it from the neck-end edge, y to the treble. Every line that a rectangle would have is here as it really runs.
 */

import type { Design } from '../design/schema.ts'
import { type Contour, chain, type Point, polygon } from '../plane/index.ts'
import { notes } from '../quantity/notes.ts'
import { stepOf } from '../quantity/units.ts'
import { heightsOf, surveyOf } from './survey/index.ts'

/** Sides of the box in the order of its corners: bass from neck-end bass to tail-end bass, and on counter-clockwise. */
export type Side = 'bass' | 'tailEnd' | 'treble' | 'neckEnd'
const SIDES: readonly Side[] = ['bass', 'tailEnd', 'treble', 'neckEnd']

type Quad = readonly [Point, Point, Point, Point]

/** A straight line y = at + slope · x for the sides, x = at + slope · y for the ends. */
export interface Edge {
  readonly at: number
  readonly slope: number
}

export interface Outline {
  readonly corners: Quad
  readonly edges: Readonly<Record<Side, Edge>>
}

export interface RealBox {
  /** Along the centreline, between the outer faces of the ends. */
  readonly length: number
  /** Half the sum of the ends, as a tape laid along them has it. */
  readonly width: number
  /** Corners counter-clockwise from neck-end bass, the outer faces. */
  readonly outside: Outline
  /** Wall heights in the order of the corners; `null`: as the depth says. */
  readonly heights: readonly (number | null)[]
}

/** Outlines of a surveyed box, x from the middle of its neck-end edge. */
export interface RealOutlines {
  readonly outside: Outline
  readonly inside: Outline
  readonly lid: Outline
  readonly base: Outline
}

/** What the rule that measured the box is divided into, millimetres. */
export const graduationOf = ({ rule, units }: Pick<Design, 'rule' | 'units'>): number =>
  rule.graduation > 0 ? rule.graduation : stepOf(units)

const known = notes<Design['box'], { readonly graduation: number; readonly real: RealBox | null }>()

/** The box as surveyed; `null` where it was not, or where its readings make no box. Remembered per box. */
export function realBoxOf(box: Design['box'], graduation: number): RealBox | null {
  if (!box.survey) return null
  const before = known.get(box)
  if (before && before.graduation === graduation) return before.real
  const result = surveyOf(box, graduation)
  const real = result?.ok
    ? laid(result.survey.adjusted.corners, heightsOf(box, graduation / 2)?.at ?? [null, null, null, null])
    : null
  known.set(box, { graduation, real })
  return real
}

const middle = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 })
const apart = (a: Point, b: Point) => Math.hypot(b.x - a.x, b.y - a.y)

/** Corners in any place, turned and moved so that both end edges have their middles on y = 0. */
function laid(corners: Quad, heights: readonly (number | null)[]): RealBox {
  const [neckBass, tailBass, tailTreble, neckTreble] = corners
  const from = middle(neckBass, neckTreble)
  const to = middle(tailBass, tailTreble)
  const length = apart(from, to)
  const u = { x: (to.x - from.x) / length, y: (to.y - from.y) / length }
  const put = ({ x, y }: Point): Point => ({
    x: (x - from.x) * u.x + (y - from.y) * u.y,
    y: (y - from.y) * u.x - (x - from.x) * u.y,
  })
  const turned: Quad = [put(neckBass), put(tailBass), put(tailTreble), put(neckTreble)]
  return {
    length,
    width: (apart(neckBass, neckTreble) + apart(tailBass, tailTreble)) / 2,
    outside: outlineOf(turned),
    heights,
  }
}

function outlineOf(corners: Quad): Outline {
  const [a, b, c, d] = corners
  return {
    corners,
    edges: { bass: along(a, b), tailEnd: across(b, c), treble: along(d, c), neckEnd: across(a, d) },
  }
}

const along = (a: Point, b: Point): Edge => {
  const slope = (b.y - a.y) / (b.x - a.x)
  return { slope, at: a.y - slope * a.x }
}
const across = (a: Point, b: Point): Edge => {
  const slope = (b.x - a.x) / (b.y - a.y)
  return { slope, at: a.x - slope * a.y }
}

/** Where an end and a side meet. */
function meeting(end: Edge, side: Edge): Point {
  const y = (side.at + side.slope * end.at) / (1 - side.slope * end.slope)
  return { x: end.at + end.slope * y, y }
}

/** Each edge moved inwards by so much, measured square to it. Thick walls may leave an outline that is inside out. */
export function shrunk({ edges }: Outline, by: Readonly<Record<Side, number>>): Outline {
  const moved = (side: Side, sense: 1 | -1): Edge => ({
    slope: edges[side].slope,
    at: edges[side].at + sense * by[side] * Math.hypot(1, edges[side].slope),
  })
  const next = {
    bass: moved('bass', 1),
    treble: moved('treble', -1),
    neckEnd: moved('neckEnd', 1),
    tailEnd: moved('tailEnd', -1),
  }
  return {
    edges: next,
    corners: [
      meeting(next.neckEnd, next.bass),
      meeting(next.tailEnd, next.bass),
      meeting(next.tailEnd, next.treble),
      meeting(next.neckEnd, next.treble),
    ],
  }
}

/** Is there anything left between the edges? */
const isSound = ({ corners }: Outline): boolean =>
  corners.every((here, index) => {
    const [next, after] = [corners[(index + 1) % 4], corners[(index + 2) % 4]]
    if (!next || !after) return false
    return (next.x - here.x) * (after.y - next.y) - (next.y - here.y) * (after.x - next.x) > 1e-6
  })

const HAIR = 0.01

/**
 * The outline as a contour moved by `-fromX`, its corners rounded. What is inside out becomes a speck: the checks say what is
 * wrong, the drawing stays a drawing.
 */
export function contourOf(outline: Outline, fromX: number, radius: number): Contour {
  const points = isSound(outline) ? outline.corners : speckAt(outline)
  const moved = points.map(({ x, y }) => ({ x: x - fromX, y }))
  return radius > 0 ? rounded(moved, radius) : polygon(moved)
}

function speckAt({ corners }: Outline): Quad {
  const x = corners.reduce((sum, one) => sum + one.x, 0) / 4
  const y = corners.reduce((sum, one) => sum + one.y, 0) / 4
  return [
    { x, y },
    { x: x + HAIR, y },
    { x: x + HAIR, y: y + HAIR },
    { x, y: y + HAIR },
  ]
}

/** Corners rounded by arcs that touch both edges; where an edge is too short for its two arcs they shrink. */
function rounded(points: readonly Point[], radius: number): Contour {
  const shortest = Math.min(...points.map((here, index) => apart(here, points[(index + 1) % 4] ?? here)))
  return chain(
    points.flatMap((here, index) => {
      const before = points[(index + 3) % 4] ?? here
      const after = points[(index + 1) % 4] ?? here
      const back = {
        x: (before.x - here.x) / apart(before, here),
        y: (before.y - here.y) / apart(before, here),
      }
      const on = { x: (after.x - here.x) / apart(after, here), y: (after.y - here.y) / apart(after, here) }
      const inside = Math.acos(Math.min(1, Math.max(-1, back.x * on.x + back.y * on.y)))
      const reach = Math.min(radius / Math.tan(inside / 2), shortest / 2)
      return [
        { x: here.x + reach * back.x, y: here.y + reach * back.y, bulge: Math.tan((Math.PI - inside) / 4) },
        { x: here.x + reach * on.x, y: here.y + reach * on.y, bulge: 0 },
      ]
    }),
    true,
  )
}

/** Length of a side from corner to corner, and the angle it makes with the centreline, or with the square to it: radians. */
export function sideOf({ corners, edges }: Outline, side: Side): { length: number; turn: number } {
  const index = SIDES.indexOf(side)
  const [a, b] = [corners[index], corners[(index + 1) % 4]]
  return { length: a && b ? apart(a, b) : 0, turn: Math.atan(edges[side].slope) }
}
