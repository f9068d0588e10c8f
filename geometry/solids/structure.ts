/** What every instrument is made of, as solids: panels, neck, block, brace, and the way of the strings. */
import type { Face } from '../kinds/kind.ts'
import { circle } from '../plane/index.ts'
import type { Layout, StringLine } from '../solve/layout.ts'
import { type Box3, block, known, prism, quad, type Solid } from './solid.ts'

const there = (...solids: readonly (Solid | null)[]): Solid[] => solids.filter((one) => one !== null)

const wood = (face: Face) => ({ of: face, sort: 'wood' as const, face })
const LID = wood('lid')
const BASE = wood('base')
const NECK_END = wood('neck-end-wall')
const TAIL_END = wood('tail-end-wall')
const BASS = wood('bass-wall')
const TREBLE = wood('treble-wall')

const boxOf = (minX: number, maxX: number, minY: number, maxY: number, minZ: number, maxZ: number): Box3 => ({
  minX,
  maxX,
  minY,
  maxY,
  minZ,
  maxZ,
})

/** Lid, base and the four walls. */
export function panelSolids({ box, panels }: Layout): Solid[] {
  const { x0, x1, insideX0, insideX1, halfWidth, wallBottom: low, wallTop: high } = box
  const [lid, base] = [panels.lid, panels.base]
  const across = (panel: typeof lid, minZ: number, maxZ: number) => {
    const { minX, maxX, minY, maxY } = panel.bounds
    return boxOf(minX + panel.originX, maxX + panel.originX, minY, maxY, minZ, maxZ)
  }
  return there(
    block(LID, across(lid, box.lidBottom, 0)),
    block(BASE, across(base, box.baseBottom, box.baseTop)),
    block(NECK_END, boxOf(x0, insideX0, -halfWidth, halfWidth, low, high)),
    block(TAIL_END, boxOf(insideX1, x1, -halfWidth, halfWidth, low, high)),
    block(BASS, boxOf(x0, x1, -halfWidth, box.insideBass, low, high)),
    block(TREBLE, boxOf(x0, x1, box.insideTreble, halfWidth, low, high)),
  )
}

/** The neck between its cuts, and the block under a tongue. */
export function neckSolids({ neck, box }: Layout): Solid[] {
  const named = { of: 'neck', sort: 'wood' as const }
  const half = neck.halfWidths.reduce((most, one) => Math.max(most, one.half), 0)
  const inBox = neck.halfWidths.at(-1)?.half ?? half
  const stretches = neck.stretches.map(({ x0, x1, top, bottom }) => {
    const wide = x0 >= box.x0 ? inBox : half
    return block(named, { minX: x0, maxX: x1, minY: -wide, maxY: wide, minZ: bottom, maxZ: top })
  })
  const under =
    neck.block && block({ ...named, part: 'block' }, { ...neck.block, minZ: box.baseTop, maxZ: neck.bottom })
  return there(...stretches, under)
}

/** The strip glued under the lid, over the whole inside of the box. */
export function braceSolids({ box, saddle, design }: Layout): Solid[] {
  const { height, width, runs, offset } = design.brace
  if (height <= 0) return []
  const deep = { minZ: box.lidBottom - height, maxZ: box.lidBottom }
  const middle = runs === 'across' ? saddle.x + offset : offset
  const [low, high] = [middle - width / 2, middle + width / 2]
  const plan =
    runs === 'across'
      ? { minX: low, maxX: high, minY: box.insideBass, maxY: box.insideTreble }
      : { minX: box.insideX0, maxX: box.insideX1, minY: low, maxY: high }
  return there(block({ of: 'brace', sort: 'wood' }, { ...plan, ...deep }))
}

/** How far a knot or a ball end stands behind the wood its hole goes through. Common practice, no source. */
const KNOT = 6
/** A string is taken to need at least this much room to either side. */
const HALF_ROOM = 0.5
/** Stretches into which a string's way behind the saddle is cut: each is held in one box. */
const STEPS = 4

/** The strings from the board's end over the saddle to where they are held. */
export const stringSolids = (layout: Layout): Solid[] => layout.strings.flatMap((one) => overLid(one, layout))

function overLid(string: StringLine, { saddle, box, board }: Layout): Solid[] {
  const named = { of: `string ${string.number}`, sort: 'string' as const }
  const half = Math.max(string.gauge / 2, HALF_ROOM)
  type Spot = { readonly x: number; readonly y: number; readonly z: number }
  const piece = (a: Spot, b: Spot) =>
    known(named, 'z', quad(a.x, a.y - half, a.y + half, b.x, b.y - half, b.y + half), {
      minX: a.x,
      maxX: b.x,
      minY: Math.min(a.y, b.y) - half,
      maxY: Math.max(a.y, b.y) + half,
      minZ: Math.min(a.z, b.z),
      maxZ: Math.max(a.z, b.z) + 2 * half,
    })
  const way = (a: Spot, b: Spot, steps: number): Solid[] => {
    if (b.x - a.x < 1) return []
    const at = (share: number): Spot => ({
      x: a.x + (b.x - a.x) * share,
      y: a.y + (b.y - a.y) * share,
      z: a.z + (b.z - a.z) * share,
    })
    return Array.from({ length: steps }, (_, index) => piece(at(index / steps), at((index + 1) / steps)))
  }
  const atSaddle = { x: saddle.x, y: string.yAtSaddle, z: string.zAtSaddle }
  const from = Math.max(0, Math.min(board ? board.x1 : box.x0, saddle.x - 1))
  const share = from / saddle.x
  const start = {
    x: from,
    y: string.yAtNut + (string.yAtSaddle - string.yAtNut) * share,
    z: string.zAtNut + (string.zAtSaddle - string.zAtNut) * share,
  }
  const { tail } = string
  return [
    ...way(start, atSaddle, 1),
    // Over the edge of the lid a string bends down: inside the box it never is.
    ...(tail ? way(atSaddle, { ...tail, z: Math.max(0, tail.z) }, STEPS) : []),
  ]
}

/** The holes that hold the strings, and room for the knots behind them. */
export function tailHoleSolids({ design, tailHoles: holes, neck, box }: Layout): Solid[] {
  const { at, diameter } = design.tailpiece
  return holes.map((hole, index) => {
    const named = { of: `string hole ${index + 1}`, sort: 'string' as const }
    if (at === 'the tail-end wall')
      return prism(named, 'x', circle({ x: hole.y, y: hole.z }, diameter / 2), box.insideX1 - KNOT, box.x1)
    const round = circle({ x: hole.x, y: hole.y }, diameter / 2)
    return at === 'the lid'
      ? prism(named, 'z', round, box.lidBottom - KNOT, 0)
      : prism(named, 'z', round, neck.bottom, neck.top)
  })
}
