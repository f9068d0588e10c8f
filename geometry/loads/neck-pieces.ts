/** The neck of a layout as pieces of a beam: blank, board, bar and what is glued under the head. */
import type { Design } from '../design/schema.ts'
import { faceHeight } from '../neck/head-form.ts'
import { woodNamed } from '../neck/named-woods.ts'
import { halfWidthAt } from '../neck/neck.ts'
import { bar, type Part, plank, rod, type Stuff } from '../neck/sections.ts'
import { type NeckPiece, pieceOf } from '../neck/span.ts'
import { BARS, standing, WOODS, type Wood } from '../neck/woods.ts'
import { inOrder } from '../quantity/in-order.ts'
import type { Layout, NeckStretch } from '../solve/layout.ts'

/** Millimetres: nearer together two cuts are one, as in `span.ts`. */
const HAIR = 1e-6

/**
 * The wood by its name. A file is refused for a name that stands nowhere; should one lose its row later, the neck is
 * reckoned with the wood of an empty file.
 */
export const woodOf = (name: string, { woods }: Pick<Design, 'woods'>): Wood =>
  woodNamed(name, woods) ?? WOODS['maple, sugar']

/** Where the slope behind the nut lies; both ends are the same where there is none. */
export function slopeOf({ neck }: Layout): { readonly x0: number; readonly x1: number } {
  const slope = neck.stretches.find((one) => one.of === 'slope')
  if (slope) return slope
  const head = neck.stretches.find((one) => one.of === 'headstock')
  return { x0: head?.x1 ?? neck.x0, x1: head?.x1 ?? neck.x0 }
}

/** The stretch of the neck at x. */
export function stretchAt({ neck }: Layout, x: number): NeckStretch | undefined {
  let found = neck.stretches[0]
  for (const one of neck.stretches) if (one.x0 <= x) found = one
  return found
}

const METALS = {
  'steel bar': BARS.steel,
  'steel rod': BARS.steel,
  'aluminium bar': BARS.aluminium,
  'carbon bar': BARS.carbon,
  'carbon rod': BARS.carbon,
} as const

/** Pieces from the end of the head to the end of the tail, without a gap. Woods bear what they bear for good. */
export function piecesOf(layout: Layout): NeckPiece[] {
  const { neck, board, design, nut } = layout
  const tilted = design.headstock.form === 'scarfed'
  const wood = standing(woodOf(design.neck.wood, design))
  const boardWood = standing(woodOf(design.board.wood, design))
  const slope = slopeOf(layout)
  const glued = gluedUnder(layout)
  const xs = [neck.x0, neck.x1]
  for (const { x0 } of neck.stretches) xs.push(x0)
  for (const { x } of neck.halfWidths) xs.push(x)
  if (board) xs.push(board.x0, board.x1)
  if (glued) xs.push(glued.x0, glued.x1)
  if (design.neck.bar.kind !== 'none') xs.push(design.neck.bar.from, design.neck.bar.to)
  inOrder(xs)
  const pieces: NeckPiece[] = []
  let from = neck.x0
  for (const to of xs) {
    if (to - from <= HAIR || to > neck.x1) continue
    const middle = (from + to) / 2
    const stretch = stretchAt(layout, middle)
    const floor = stretch?.top ?? neck.top
    const slopes = stretch?.of === 'slope' && slope.x1 > slope.x0
    const rise = slopes ? (neck.top - floor) / (slope.x1 - slope.x0) : 0
    const cut: Cut = {
      floor,
      board: board && board.x0 <= middle && middle <= board.x1 && floor >= board.bottom - HAIR ? board : null,
      under: glued && glued.x0 <= middle && middle <= glued.x1 ? glued.thickness : 0,
      middle,
    }
    const [start, end] = [2 * halfWidthAt(neck, from), 2 * halfWidthAt(neck, to)]
    const depth = stretch ? stretch.top - stretch.bottom : neck.top - neck.bottom
    const at = (x: number) => {
      if (stretch?.of === 'headstock' && tilted) {
        const top = faceHeight(design, nut.x0, x)
        return [top, top - depth] as const
      }
      return [floor + rise * (x - slope.x0), stretch?.bottom ?? neck.bottom] as const
    }
    const [[startTop, startBottom], [endTop, endBottom]] = [at(from), at(to)]
    const parts = partsAt(layout, cut, start, startTop, startBottom, wood, boardWood)
    pieces.push(
      // A piece that is alike all along is known by one section.
      start === end && startTop === endTop
        ? pieceOf(from, to, parts)
        : pieceOf(from, to, parts, partsAt(layout, cut, end, endTop, endBottom, wood, boardWood)),
    )
    from = to
  }
  return pieces
}

/** What is alike in a piece from one end to the other. */
interface Cut {
  /** Top of the neck where no slope changes it. */
  readonly floor: number
  readonly board: Layout['board']
  /** Glued on underneath. */
  readonly under: number
  readonly middle: number
}

/** The parts of one end: as many and in the same order at the other, since none begins or ends within a piece. */
function partsAt(
  { neck, design }: Layout,
  { floor, board, under, middle }: Cut,
  width: number,
  top: number,
  bottom: number,
  wood: Stuff,
  boardWood: Stuff,
): Part[] {
  const parts = [plank(width, bottom, Math.min(Math.max(top, bottom), neck.top), wood)]
  if (board) parts.push(plank(width, board.bottom, board.top, boardWood))
  if (design.neck.bar.kind !== 'none') {
    const letIn = barIn(design, neck, floor, middle, wood)
    if (letIn) parts.push(letIn)
  }
  if (under > 0) parts.push(plank(width, bottom - under, bottom, wood))
  return parts
}

/** The piece glued under the head, from x to x; its middle lies under the middle of the slope. */
function gluedUnder(layout: Layout): { x0: number; x1: number; thickness: number } | null {
  const { reinforcement, reinforcementLength } = layout.design.headstock
  if (reinforcement <= 0) return null
  const slope = slopeOf(layout)
  const middle = (slope.x0 + slope.x1) / 2
  return {
    x0: middle - reinforcementLength / 2,
    x1: middle + reinforcementLength / 2,
    thickness: reinforcement,
  }
}

/** What of the bar is left in a stretch whose top lies at `floor`. A rod that is cut into counts for nothing. */
function barIn(
  { neck: { bar: stated } }: Design,
  neck: Layout['neck'],
  floor: number,
  x: number,
  wood: Stuff,
): Part | null {
  const { kind, width, height, from, to } = stated
  if (kind === 'none' || x < from || x > to) return null
  const stuff = METALS[kind]
  const room = Math.min(width, 2 * halfWidthAt(neck, x))
  if (kind.endsWith('rod')) {
    const whole = floor >= neck.top - HAIR && width <= neck.top - neck.bottom && room === width
    return whole ? rod(width, neck.top - width / 2, stuff, wood) : null
  }
  const bottom = Math.max(neck.top - height, neck.bottom)
  const top = Math.min(floor, neck.top)
  return top > bottom ? bar(room, bottom, top, stuff, wood) : null
}
