/** The neck of a layout as pieces of a beam: blank, board, bar and what is glued under the head. */
import type { Design } from '../design/schema.ts'
import { woodNamed } from '../neck/named-woods.ts'
import { halfWidthAt } from '../neck/neck.ts'
import { bar, type Part, plank, rod, type Stuff } from '../neck/sections.ts'
import { type NeckPiece, pieceOf } from '../neck/span.ts'
import { BARS, standing, WOODS, type Wood } from '../neck/woods.ts'
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
  const { neck, board, design } = layout
  const wood = standing(woodOf(design.neck.wood, design))
  const boardWood = standing(woodOf(design.board.wood, design))
  const slope = slopeOf(layout)
  const glued = gluedUnder(layout)
  const xs = [neck.x0, neck.x1]
  const add = (x: number) => {
    if (x > neck.x0 && x < neck.x1) xs.push(x)
  }
  for (const { x0 } of neck.stretches) add(x0)
  for (const { x } of neck.halfWidths) add(x)
  if (board) for (const x of [board.x0, board.x1]) add(x)
  if (glued) for (const x of [glued.x0, glued.x1]) add(x)
  if (design.neck.bar.kind !== 'none') for (const x of [design.neck.bar.from, design.neck.bar.to]) add(x)
  xs.sort((a, b) => a - b)
  const pieces: NeckPiece[] = []
  let from = neck.x0
  for (const to of xs) {
    if (to - from <= HAIR) continue
    const middle = (from + to) / 2
    const stretch = stretchAt(layout, middle)
    const floor = stretch?.top ?? neck.top
    const topAt = (x: number) =>
      stretch?.of === 'slope' && slope.x1 > slope.x0
        ? floor + ((neck.top - floor) * (x - slope.x0)) / (slope.x1 - slope.x0)
        : floor
    const on = board && board.x0 <= middle && middle <= board.x1 && floor >= board.bottom - HAIR ? board : null
    const under = glued && glued.x0 <= middle && middle <= glued.x1 ? glued.thickness : 0
    const partsAt = (x: number): Part[] => {
      const width = 2 * halfWidthAt(neck, x)
      const top = Math.min(Math.max(topAt(x), neck.bottom), neck.top)
      return [
        plank(width, neck.bottom, top, wood),
        ...(on ? [plank(width, on.bottom, on.top, boardWood)] : []),
        ...barIn(design, neck, floor, middle, width, wood),
        ...(under > 0 ? [plank(width, neck.bottom - under, neck.bottom, wood)] : []),
      ]
    }
    const start = partsAt(from)
    const end = partsAt(to)
    pieces.push(pieceOf(from, to, start, end.length === start.length ? end : start))
    from = to
  }
  return pieces
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
  design: Design,
  neck: Layout['neck'],
  floor: number,
  x: number,
  neckWidth: number,
  wood: Stuff,
): Part[] {
  const { kind, width, height, from, to } = design.neck.bar
  if (kind === 'none' || x < from || x > to) return []
  const stuff = METALS[kind]
  if (kind.endsWith('rod')) {
    const whole = floor >= neck.top - HAIR && width <= neck.top - neck.bottom && width <= neckWidth
    return whole ? [rod(width, neck.top - width / 2, stuff, wood)] : []
  }
  const bottom = Math.max(neck.top - height, neck.bottom)
  const top = Math.min(floor, neck.top)
  return top > bottom ? [bar(Math.min(width, neckWidth), bottom, top, stuff, wood)] : []
}
