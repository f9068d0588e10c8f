/** What a screw goes through and holds in: the wood along its own line. */
import { remembered } from '../loads/remembered.ts'
import { depthAt, type Point } from '../plane/index.ts'
import type { Layout, Placed } from '../solve/layout.ts'
import { type Point3, planeOf } from './between.ts'
import { bodiesOf } from './bodies.ts'
import type { Axis, Solid } from './solid.ts'
import { solidsNear } from './solids.ts'

export interface Fastened {
  readonly placed: Placed
  readonly shank: Solid
  /** Where the line of the screw lies, in the plane across it, and its radius. */
  readonly line: Point
  readonly radius: number
  /** Stretches along the line, from the head on, and the wood in each; the face it stands in left out. */
  readonly held: readonly { readonly wood: Solid; readonly length: number; readonly beside: number }[]
  /** How far the point comes out behind the last wood it is in; negative where it ends inside, 0 where it meets none. */
  readonly pokes: number
  readonly tip: Point3
}

/** Every screw of a layout with the wood it goes into. Only asked for where there are screws. */
export const fasteningsOf = remembered((layout: Layout): readonly Fastened[] => {
  const all: Fastened[] = []
  for (const placed of layout.placed)
    for (const one of bodiesOf(layout, placed))
      if (one.sort === 'fastener') all.push(fastened(layout, placed, one))
  return all
})

function fastened(layout: Layout, placed: Placed, shank: Solid): Fastened {
  const { line, radius } = lineOf(shank)
  const inward = shank.axis === 'z' ? (placed.face === 'lid' ? -1 : 1) : inwardOf(placed.face)
  const tipAlong = inward > 0 ? shank.to : shank.from
  const held: { wood: Solid; length: number; beside: number }[] = []
  let farthest = Number.NEGATIVE_INFINITY
  for (const wood of solidsNear(layout, shank.box, 0)) {
    if (wood.sort !== 'wood' || wood.of === placed.face) continue
    const stretch = along(wood, shank.axis, line)
    if (!stretch) continue
    const [low, high] = [Math.max(stretch.low, shank.from), Math.min(stretch.high, shank.to)]
    if (high - low <= 0) continue
    held.push({ wood, length: high - low, beside: stretch.beside - radius })
    farthest = Math.max(farthest, inward > 0 ? stretch.high : -stretch.low)
  }
  const pokes = held.length === 0 ? 0 : inward * tipAlong - farthest
  return { placed, shank, line, radius, held, pokes, tip: at(shank.axis, line, tipAlong) }
}

const inwardOf = (face: Placed['face']): 1 | -1 => (face === 'bass-wall' || face === 'neck-end-wall' ? 1 : -1)

function lineOf({ contour, box, axis }: Solid): { readonly line: Point; readonly radius: number } {
  if (contour.shape === 'circle') return { line: contour.centre, radius: contour.radius }
  const [u, v] = planeOf(axis)
  const low = { x: box.minX, y: box.minY, z: box.minZ }
  const high = { x: box.maxX, y: box.maxY, z: box.maxZ }
  return { line: { x: (low[u] + high[u]) / 2, y: (low[v] + high[v]) / 2 }, radius: (high[u] - low[u]) / 2 }
}

/**
 * Where a line along an axis runs in a piece of wood, and how far from the wood's skin beside it; `null` where it
 * misses. Wood is taken as its box unless it is a prism along the line.
 */
function along(
  wood: Solid,
  axis: Axis,
  line: Point,
): { readonly low: number; readonly high: number; readonly beside: number } | null {
  const { box } = wood
  if (wood.axis === axis && !wood.isBox) {
    const beside = depthAt(line, wood.contour)
    return beside > 0 ? { low: wood.from, high: wood.to, beside } : null
  }
  const { minX, maxX, minY, maxY, minZ, maxZ } = box
  const { x: u, y: v } = line
  if (axis === 'z') return stretch(minZ, maxZ, Math.min(u - minX, maxX - u, v - minY, maxY - v))
  if (axis === 'y') return stretch(minY, maxY, Math.min(u - minX, maxX - u, v - minZ, maxZ - v))
  return stretch(minX, maxX, Math.min(u - minY, maxY - u, v - minZ, maxZ - v))
}

const stretch = (low: number, high: number, beside: number) => (beside > 0 ? { low, high, beside } : null)

const at = (axis: Axis, { x, y }: Point, along: number): Point3 =>
  axis === 'z' ? { x, y, z: along } : axis === 'y' ? { x, y: along, z: y } : { x: along, y: x, z: y }
