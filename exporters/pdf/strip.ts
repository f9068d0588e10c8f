/** The strip below the drawing: what the part is, how it is looked at, which sheet this is, how it is joined. */
import type { Bounds } from '../../geometry/index.ts'
import type { Drawing } from '../drawing/drawing.ts'
import { factsOf, type SheetOptions } from '../sheet-layout/facts.ts'
import { BAR_LENGTH, drawBars } from './bars.ts'
import { correctionLine } from './correction.ts'
import { FAINT, type Ink } from './ink.ts'
import { joinLine } from './joins.ts'
import { fillOnMap } from './page-map.ts'
import { letterOf, type PartSheets, type Tile } from './plan.ts'
import { BOTTOM_STRIP, type Frame } from './setup.ts'
import type { Wording } from './words.ts'

/** Room for the map, mm. */
const MAP_WIDTH = 38

const TITLE = 4.4
const SMALL = 2.5

/** Baselines under the upper edge of the strip, mm. */
const LINES = [4.6, 8.2, 11.5, 14.8] as const

/** Middle of the bars over the lower edge of what may be printed, and beside its left one, mm. */
const BARS_UP = 5.2
const BARS_IN = 6

export interface SheetNumber {
  /** From 1. */
  readonly page: number
  readonly pages: number
}

/** Both pairs of bars, X along the short edge of the paper. */
export function drawBothBars(ink: Ink, { inner, window, way }: Frame): void {
  const upright = way === 'upright'
  drawBars(ink, { x: window.minX + 0.5, y: inner.minY + BARS_UP }, false, upright ? 'X' : 'Y')
  drawBars(ink, { x: inner.minX + BARS_IN, y: window.minY }, true, upright ? 'Y' : 'X')
}

/** `A4 lying, print at 100 %, no scaling; corrected for this printer: …` */
export function printLine({ paper, way, scaleX, scaleY }: Frame): string {
  const correction = way === 'upright' ? { x: scaleX, y: scaleY } : { x: scaleY, y: scaleX }
  return `${paper.title} ${way}, print at 100 %, no scaling; ${correctionLine(correction)}`
}

/** How the part is looked at: face, head end, hand, thickness and size. */
function factsText({ part, outline }: Drawing): string {
  const facts = factsOf(part, outline)
  return `seen ${facts.seen} · head end ${facts.headEnd} · ${facts.hand} · ${facts.thickness} thick · ${facts.size} (${facts.sizeInches})`
}

/** Where the map of a part's sheets stands on each of them. */
export function mapBox({ inner }: Frame): Bounds {
  return {
    minX: inner.maxX - MAP_WIDTH,
    maxX: inner.maxX,
    minY: inner.minY,
    maxY: inner.minY + BOTTOM_STRIP - 2.5,
  }
}

/** Everything around the window of one sheet. `mapForm` is the name of its part's map. */
export function drawStrip(
  ink: Ink,
  wording: Wording,
  sheets: PartSheets,
  tile: Tile,
  { page, pages }: SheetNumber,
  options: SheetOptions,
  mapForm: string,
): void {
  const { frame, rows, columns, tiles } = sheets
  const { inner, window } = frame
  const map = mapBox(frame)
  fillOnMap(ink, sheets, tile, map)
  ink.form(mapForm)
  const left = window.minX
  const room = map.minX - left - 3
  const at = (line: number) => ({ x: left, y: window.minY - (LINES[line] ?? 0) })
  const name = [wording.printable(options.title), sheets.title].filter((text) => text !== '').join(': ')
  const sheetWidth = wording.typeface.width(tile.name, TITLE)
  ink.words({ x: left + room, y: at(0).y }, TITLE, tile.name, { anchor: 'end' })
  wording.write(ink, at(0), TITLE, name, room - sheetWidth - 3)
  wording.write(ink, at(1), SMALL, factsText(sheets.drawing), room)
  const where =
    tiles.length === 1
      ? `page ${page} of ${pages}`
      : `row ${letterOf(tile.row)} of ${letterOf(rows.length - 1)}, column ${tile.column + 1} of ${columns.length} · page ${page} of ${pages}`
  const line = options.line === undefined ? '' : ` · ${options.line}`
  wording.write(ink, at(2), SMALL, `${where} · ${printLine(frame)}${line}`, room)
  wording.write(ink, at(3), SMALL, joinLine(sheets, tile), room)
  const bars = 'measure both bars first'
  const beside = left + BAR_LENGTH + 8
  wording.write(ink, { x: beside, y: inner.minY + BARS_UP - 0.9 }, 2.1, bars, map.minX - beside - 3, {
    colour: FAINT,
  })
}
