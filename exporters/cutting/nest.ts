/**
 * Parts laid out on sheets of stock: rectangles packed by a library, turned only where the grain lets them.
 *
 * Each part is taken as its box, which wastes what a notch would leave and never lets two parts meet. Parts of one
 * thickness and stuff share sheets, and never with others; the same parts come out in the same places.
 */
import {
  area,
  type Bounds,
  bounds,
  type Contour,
  type Design,
  formatLength,
  lidStuffNamed,
  type Operation,
  type Part,
  type Point,
  turn,
} from '../../geometry/index.ts'
import { lengthLabel } from '../numbers.ts'
import { type CutPart, isCutPart } from './cut-part.ts'

/** Which way the grain of a part must run on its own sheet; `any` where that does not matter. */
export type Grain = 'along x' | 'along y' | 'any'

export interface Stock {
  /** Length along the grain and width across it, mm. */
  readonly length: number
  readonly width: number
  /** Free rim, and least space between parts, mm. */
  readonly margin: number
  readonly spacing: number
  readonly grain: 'along the sheet' | 'does not matter'
  /** A length in the builder's unit, for sentences; in millimetres unless given. */
  readonly say?: (millimetres: number) => string
}

export interface NestedPart {
  /** Turned, if need be, but not yet moved. */
  readonly part: Part
  /** To be added to every point, so that the sheet's lower left corner is the origin. */
  readonly shift: { readonly x: number; readonly y: number }
}

export interface NestedSheet {
  /** Thickness of its parts, mm. */
  readonly thickness: number
  /** What they are of; empty where nobody stated it. */
  readonly stuff: string
  readonly stock: Stock
  readonly parts: readonly NestedPart[]
  /** Share of the sheet's whole area that the parts' outlines cover. */
  readonly full: number
}

export type Nesting =
  | { readonly ok: true; readonly sheets: readonly NestedSheet[] }
  | { readonly ok: false; readonly sentences: readonly string[] }

/** Parts whose thicknesses differ by less, mm, are of one stock. */
const SAME_STOCK = 0.01

/** The stock that a design states. */
export function stockOf({ cutting, units }: Design): Stock {
  return {
    length: cutting.sheetLength,
    width: cutting.sheetWidth,
    margin: cutting.sheetMargin,
    spacing: cutting.sheetSpacing,
    grain: cutting.sheetGrain,
    say: (millimetres) => formatLength(millimetres, units, { unit: true }),
  }
}

/** Parts cut from a sheet: a neck and its block come from a blank, and a drilling strip from any scrap. */
export const isFromSheet = (part: Part): boolean =>
  part.id.endsWith('-wall') || !(part.id.startsWith('neck-') || part.id === 'tail-strip')

/** The way a part's grain runs on its own sheet: walls and boards along themselves, the lid as stated. */
export function grainOf(part: Part, { box }: Design): Grain {
  if (part.id === 'tail-strip') return 'any'
  if (part.id !== 'lid') return 'along x'
  return box.lid.grain === 'none' ? 'any' : box.lid.grain === 'along' ? 'along x' : 'along y'
}

/**
 * What a part is of, as far as it is stated: the board of its wood, the lid of its stuff. Of what the rest of a box is
 * nobody says: where the lid is of a sheet such as plywood, the rest goes with it, else it goes by itself.
 */
export function stuffOf(part: Part, { box, board, woods }: Design): string {
  if (part.id === 'board') return board.wood
  const { stuff } = box.lid
  return part.id === 'lid' || lidStuffNamed(stuff, woods)?.sheet ? stuff : ''
}

interface Piece {
  readonly stuff: string
  readonly width: number
  readonly height: number
  readonly mayTurn: boolean
  readonly part: Part
  readonly grain: Grain
}

/**
 * Parts on as few sheets as the packing finds, each with its grain along the sheet's.
 *
 * @param parts nominal or as a tool follows them; every line of a part keeps `spacing` from every other's
 * @param grain of a part on its own sheet
 * @param stuff what a part is of: parts of another never share its sheet
 * @returns the sheets, thinnest stock first and fullest first; or a sentence for each part that is larger than the
 *   stock, and one where the rim leaves nothing of it
 * @example await nested(parts, stockOf(design), (part) => grainOf(part, design))
 */
export async function nested(
  parts: readonly Part[],
  stock: Stock,
  grain: (part: Part) => Grain,
  stuff: (part: Part) => string = () => '',
): Promise<Nesting> {
  const [length, width] = [stock.length - 2 * stock.margin, stock.width - 2 * stock.margin]
  if (!(length > 0 && width > 0)) {
    const say = sayFor(stock)
    return {
      ok: false,
      sentences: [
        `A free edge of ${say(stock.margin)} all round leaves nothing of a sheet of ${say(stock.length)} × ${say(stock.width)}.`,
      ],
    }
  }
  const pieces = parts.map((part) => pieceOf(part, stuff(part), stock, grain(part), { length, width }))
  const large = pieces.filter((piece) => !fits(piece, length, width))
  if (large.length > 0)
    return { ok: false, sentences: large.map((piece) => largeSentence(piece, stock, length, width)) }
  const { MaxRectsPacker, PACKING_LOGIC, Rectangle } = await import(
    'maxrects-packer/dist/maxrects-packer.mjs'
  )
  const sheets = stocksOf(pieces).flatMap((same) => {
    // The space is laid beyond each part, and beyond the sheet as well.
    const packer = new MaxRectsPacker<Part>(length, width, stock.spacing, {
      smart: false,
      pot: false,
      square: false,
      allowRotation: true,
      border: 0,
      logic: PACKING_LOGIC.MAX_EDGE,
    })
    packer.addArray(
      [...same].sort(byEdge).map((piece) => {
        const rectangle = new Rectangle<Part>(piece.width, piece.height, 0, 0, false, piece.mayTurn)
        rectangle.data = piece.part
        return rectangle
      }),
    )
    return packer.bins.map((bin) =>
      sheetOf(
        bin.rects.map(({ x, y, rot, data }) => ({ x, y, part: rot ? turned(data) : data })),
        stock,
        same[0]?.stuff ?? '',
      ),
    )
  })
  return { ok: true, sheets }
}

const sayFor = ({ say }: Stock) => say ?? ((length: number) => `${lengthLabel(length, 'A length', 2)} mm`)

/** The box of all that is cut of a part: its outline, or the way of the tool with the tool's own width. */
function boxOf(part: Part): Bounds {
  const { minX, minY, maxX, maxY } = bounds(part.outline)
  const half = isCutPart(part) ? part.tool.width / 2 : 0
  return { minX: minX - half, minY: minY - half, maxX: maxX + half, maxY: maxY + half }
}

/** A part as a rectangle, turned already where its grain asks for it. */
function pieceOf(
  part: Part,
  stuff: string,
  stock: Stock,
  grain: Grain,
  room: { length: number; width: number },
): Piece {
  const matters = stock.grain === 'along the sheet' && grain !== 'any'
  const laid = matters && grain === 'along y' ? turned(part) : part
  const { minX, minY, maxX, maxY } = boxOf(laid)
  const piece: Piece = {
    stuff,
    width: maxX - minX,
    height: maxY - minY,
    part: laid,
    grain: matters ? grain : 'any',
    mayTurn: !matters,
  }
  // Laid the way that fits, where only one does.
  const fitsTurned = piece.height <= room.length && piece.width <= room.width
  if (matters || fits(piece, room.length, room.width) || !fitsTurned) return piece
  return { ...piece, width: piece.height, height: piece.width, part: turned(laid) }
}

const fits = ({ width, height }: Piece, length: number, across: number): boolean =>
  width <= length + 1e-9 && height <= across + 1e-9

function largeSentence(
  { part, width, height, grain }: Piece,
  stock: Stock,
  length: number,
  across: number,
): string {
  const say = sayFor(stock)
  const sheet = `a sheet of ${say(stock.length)} × ${say(stock.width)} has room for ${say(length)} × ${say(across)}`
  const cure =
    grain !== 'any' && width <= across && height <= length
      ? 'Turned across the grain it would fit; take a larger sheet, or let the grain run either way.'
      : 'Take a larger sheet, or leave this part out.'
  return `${part.title} is ${say(width)} × ${say(height)} as it lies, and ${sheet}. ${cure}`
}

/** What the tool takes away in a part: another kerf says that it is of another stuff. */
const taken = ({ part }: Piece): number => (isCutPart(part) ? part.tool.width : 0)

/** Of one stock: thickness, stuff and what the tool takes away are the same. */
const isLike = (a: Piece, b: Piece): boolean =>
  Math.abs(a.part.thickness - b.part.thickness) < SAME_STOCK && a.stuff === b.stuff && taken(a) === taken(b)

/** Pieces by the stock they come from, the thinnest first, then by the name of the stuff. */
function stocksOf(pieces: readonly Piece[]): Piece[][] {
  const stocks: Piece[][] = []
  const inOrder = (a: Piece, b: Piece) =>
    a.part.thickness - b.part.thickness ||
    (a.stuff < b.stuff ? -1 : a.stuff > b.stuff ? 1 : taken(a) - taken(b))
  for (const piece of [...pieces].sort(inOrder)) {
    const stock = stocks.find(([like]) => like !== undefined && isLike(like, piece))
    if (stock) stock.push(piece)
    else stocks.push([piece])
  }
  return stocks
}

/** The longest edge first; by name where they are alike, so that the order given does not matter. */
function byEdge(a: Piece, b: Piece): number {
  const longer = Math.max(b.width, b.height) - Math.max(a.width, a.height)
  if (Math.abs(longer) > 1e-9) return longer
  return a.part.id < b.part.id ? -1 : 1
}

function sheetOf(
  laid: readonly { x: number; y: number; part: Part }[],
  stock: Stock,
  stuff: string,
): NestedSheet {
  const parts = laid.map(({ x, y, part }): NestedPart => {
    const { minX, minY } = boxOf(part)
    return { part, shift: { x: stock.margin + x - minX, y: stock.margin + y - minY } }
  })
  const covered = laid.reduce((sum, { part }) => sum + areaOf(part), 0)
  return {
    thickness: laid[0]?.part.thickness ?? 0,
    stuff,
    stock,
    parts,
    full: covered / (stock.length * stock.width),
  }
}

const areaOf = (part: Part): number => Math.abs(area(isCutPart(part) ? part.finished : part.outline))

/** A part turned by a quarter, counter-clockwise, with all that is drawn on it. */
export function turned<P extends Part>(part: P): P {
  const quarter = <C extends Contour>(contour: C): C => turn(contour, Math.PI / 2)
  const quarterPoint = ({ x, y }: { x: number; y: number }) => ({ x: 0 - y, y: x })
  const operations = part.operations.map((one) => turnedOperation(one, quarter, quarterPoint))
  const plain = { ...part, outline: quarter(part.outline), operations }
  if (!isCutPart(part)) return plain
  const { tabs } = part
  const cut: CutPart = {
    ...part,
    outline: plain.outline,
    operations,
    finished: quarter(part.finished),
    tabs: tabs === null ? null : { tabs: tabs.tabs.map(quarter), between: tabs.between.map(quarter) },
  }
  return cut as Part as P
}

function turnedOperation(
  one: Operation,
  quarter: <C extends Contour>(contour: C) => C,
  quarterPoint: (point: Point) => Point,
): Operation {
  switch (one.kind) {
    case 'cut':
    case 'recess':
    case 'mark':
      return { ...one, contour: quarter(one.contour) }
    case 'datum':
      return { ...one, line: quarter(one.line) }
    case 'drill':
      return { ...one, centre: quarterPoint(one.centre) }
    case 'slot':
      return { ...one, from: quarterPoint(one.from), to: quarterPoint(one.to) }
    case 'note':
      return { ...one, at: quarterPoint(one.at), turn: one.turn + Math.PI / 2 }
  }
}
