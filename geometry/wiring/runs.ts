/** How long each wire must be: along and square to the box between the things it joins, and some slack. */
import type { Component } from '../design/sections/wiring.ts'
import { placedCalled } from '../solve/called.ts'
import type { Layout, Placed } from '../solve/layout.ts'

export interface Run {
  /** Index into the design's wires. */
  readonly wire: number
  /** `null` where an end stands nowhere: the component is no thing on a face. */
  readonly length: number | null
  /** Ids of the components that stand nowhere. */
  readonly lost: readonly string[]
}

interface Spot {
  readonly x: number
  readonly y: number
  readonly z: number
}

/**
 * Lengths of all wires. Wires run square along the box, as they are tied down: `|dx| + |dy| + |dz|` between the two
 * things, and the slack. Two ends on one component need the slack alone. A metal part without a thing stands where the
 * strings are held.
 */
export function runsOf(layout: Layout): Run[] {
  const { components, wires, slack } = layout.design.wiring
  const spots = new Map(components.map((one) => [one.id, spotOf(layout, one)]))
  // What stands nowhere, as a capacitor does, is soldered to the thing that it is wired to first.
  for (const { from, to } of wires) {
    const [a, b] = [idOf(from), idOf(to)]
    if (!spots.get(a) && spots.get(b) && isSmall(components, a)) spots.set(a, spots.get(b) ?? null)
    if (!spots.get(b) && spots.get(a) && isSmall(components, b)) spots.set(b, spots.get(a) ?? null)
  }
  return wires.map(({ from, to }, wire) => {
    const ids = [idOf(from), idOf(to)] as const
    const [a, b] = [spots.get(ids[0]), spots.get(ids[1])]
    const lost = ids.filter((id, index) => !spots.get(id) && ids.indexOf(id) === index)
    if (ids[0] === ids[1]) return { wire, length: slack, lost: [] }
    if (!a || !b) return { wire, length: null, lost }
    const square = Math.abs(a.x - b.x) + Math.abs(a.y - b.y) + Math.abs(a.z - b.z)
    return { wire, length: square + slack, lost: [] }
  })
}

const idOf = (terminal: string): string => terminal.split('.')[0] ?? ''

const isSmall = (components: readonly Component[], id: string): boolean => {
  const part = components.find((one) => one.id === id)?.part
  return part === 'capacitor' || part === 'resistor'
}

/** Where the wires of a component are soldered, in the instrument frame; `null` where that is not known. */
function spotOf(layout: Layout, { thing, part }: Component): Spot | null {
  const placed = placedCalled(layout, thing)
  if (placed) return inside(layout, placed)
  const hole = layout.tailHoles[0]
  if (part !== 'metal part' || !hole) return null
  return { x: Math.min(hole.x, layout.box.insideX1), y: 0, z: Math.min(hole.z, layout.box.lidBottom) }
}

/** Behind the face, where the thing comes through. */
function inside({ box, panels }: Layout, { face, at }: Placed): Spot {
  const along = panels[face].originX + at.x
  const down = box.wallTop + at.y
  switch (face) {
    case 'lid':
      return { x: along, y: at.y, z: box.lidBottom }
    case 'base':
      return { x: along, y: at.y, z: box.baseTop }
    case 'neck-end-wall':
      return { x: box.insideX0, y: at.x, z: down }
    case 'tail-end-wall':
      return { x: box.insideX1, y: at.x, z: down }
    case 'bass-wall':
      return { x: along, y: box.insideBass, z: down }
    case 'treble-wall':
      return { x: along, y: box.insideTreble, z: down }
  }
}
