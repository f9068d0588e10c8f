/**
 * Several parts on one sheet, each with its title below it.
 */
import type { Bounds, Chain, Point } from '../../geometry/index.ts'
import { boxOfNothing, type Drawing, stretch, type Words, wordsBox } from '../drawing/drawing.ts'
import { CAPITAL_HEIGHT, fitLine } from '../words/width.ts'
import { arrange } from './arrange.ts'
import { factsLines, factsOf } from './facts.ts'

/** A part's drawing with its place on the sheet: `shift` is added to every point of it. */
export interface PlacedDrawing {
  readonly drawing: Drawing
  readonly shift: Point
  /** Already in place: not to be shifted again. */
  readonly caption: readonly Words[]
}

export interface Sheet {
  readonly placed: readonly PlacedDrawing[]
  /** The box of all drawings and captions, mm. */
  readonly extent: Bounds
  /** The edge of the stock, never cut, where parts are laid out on some. */
  readonly stock?: Chain
  /** Its rim that stays free of parts, mm. */
  readonly rim?: number
}

/** Heights of the capitals of the three lines under a part, and the smallest that can be read, mm. */
const TITLE_CAPITALS = 3.5
const FACTS_CAPITALS = 2.2
const SMALLEST_CAPITALS = 1.6

/** From the part to the capitals of its title, and above each line of facts, mm. */
const ABOVE_TITLE = 4
const ABOVE_FACTS = 2.2

/** Height of the strip below a part that its caption fills, mm. */
const CAPTION_STRIP = ABOVE_TITLE + TITLE_CAPITALS + 2 * (ABOVE_FACTS + FACTS_CAPITALS) + 1

/** Narrowest cell, so that a small part still has room for its words, mm. */
const NARROWEST_CELL = 100

/** Free space between neighbouring cells, mm. */
const GAP = 15

/** A line of a caption, set smaller where it is wider than the room. */
function captionLine(text: string, capitals: number, at: Point, room: number): Words {
  const fitted = fitLine(text, capitals / CAPITAL_HEIGHT, SMALLEST_CAPITALS / CAPITAL_HEIGHT, room)
  return { at, height: fitted.size * CAPITAL_HEIGHT, turn: 0, text: fitted.text }
}

function captionOf(drawing: Drawing, { x, y }: Point, room: number): Words[] {
  const facts = factsOf(drawing.part, drawing.outline)
  const titleLine = y - ABOVE_TITLE - TITLE_CAPITALS
  return [
    captionLine(facts.title, TITLE_CAPITALS, { x, y: titleLine }, room),
    ...factsLines(facts).map((text, index) => {
      const below = (index + 1) * (ABOVE_FACTS + FACTS_CAPITALS)
      return captionLine(text, FACTS_CAPITALS, { x, y: titleLine - below }, room)
    }),
  ]
}

function cellWidth(drawing: Drawing): number {
  return Math.max(NARROWEST_CELL, drawing.extent.maxX - drawing.extent.minX)
}

/** One part where it is, with its caption below: a file of one part keeps the part's own coordinates. */
export function sheetOfOne(drawing: Drawing): Sheet {
  const { minX, minY } = drawing.extent
  const caption = captionOf(drawing, { x: minX, y: minY }, cellWidth(drawing))
  const extent = boxOfNothing()
  for (const box of [drawing.extent, ...caption.map(wordsBox)]) stretch(extent, box)
  return { placed: [{ drawing, shift: { x: 0, y: 0 }, caption }], extent }
}

/**
 * All parts on one sheet whose lower left corner is (0, 0).
 *
 * @param drawings in the order of the parts; throws if there are none
 */
export function sheetOfAll(drawings: readonly Drawing[]): Sheet {
  const cells = drawings.map((drawing) => ({
    width: cellWidth(drawing),
    height: drawing.extent.maxY - drawing.extent.minY + CAPTION_STRIP,
  }))
  const { places, width, height } = arrange(cells, GAP)
  const placed = drawings.map((drawing, index): PlacedDrawing => {
    const place = places[index]
    if (place === undefined) throw new Error(`The part ${drawing.part.id} has no place on the sheet.`)
    const corner = { x: place.x, y: place.y + CAPTION_STRIP }
    return {
      drawing,
      shift: { x: corner.x - drawing.extent.minX, y: corner.y - drawing.extent.minY },
      caption: captionOf(drawing, corner, cellWidth(drawing)),
    }
  })
  return { placed, extent: { minX: 0, minY: 0, maxX: width, maxY: height } }
}
