/** Parts as a PDF at 1:1, tiled over sheets of paper. */
import type { Bounds } from '../../geometry/index.ts'
import type { SheetOptions } from '../sheet-layout/facts.ts'
import { plainLine } from '../words/plain.ts'
import { type BoundPage, bind, type Form, POINTS } from './bind.ts'
import { openTypeface, type SetLine } from './font/typeface.ts'
import { FAINT, Ink } from './ink.ts'
import { drawCutEdges, drawJoins, type JoinMark, joinMarks } from './joins.ts'
import { drawKey, type KeySize, keySize, roomForKey } from './key.ts'
import { drawMap } from './page-map.ts'
import { drawForm } from './part-form.ts'
import type { PartSheets, PrintPlan, Tile } from './plan.ts'
import { type Frame, framesOf, type PrintSetup } from './setup.ts'
import { drawBothBars, drawStrip, mapBox, printLine } from './strip.ts'
import { Wording } from './words.ts'

const BORDER = { colour: FAINT, width: 0.12 }

export interface PdfOptions extends SheetOptions {
  /** Called after each sheet; a `true` given back stops the work, and the promise is rejected. */
  readonly onSheet?: ((done: number, of: number) => boolean | undefined) | undefined
}

export interface MadePdf {
  readonly bytes: Uint8Array
  readonly pages: number
  /** How many of them, at the end, hold keys that found no room beside their parts. */
  readonly keys: number
  /** Sentences about what is on paper otherwise than written, and about seams that found no good place. */
  readonly cautions: readonly string[]
}

/** Where a tile lies on its sheet: from the lower left corner of the window. */
function boxOf({ frame: { window } }: PartSheets, { shown }: Tile): Bounds {
  const { minX, minY } = window
  return { minX, minY, maxX: minX + shown.maxX - shown.minX, maxY: minY + shown.maxY - shown.minY }
}

function seamCautions(plan: PrintPlan): string[] {
  return plan.parts
    .filter(({ hits }) => hits > 0)
    .map(
      ({ title, hits }) =>
        `${title}: ${hits === 1 ? 'a seam runs' : `${hits} seams run`} within 3 mm of the centre of a hole or a fret line; there was no other place. Measure there again when the sheets are joined.`,
    )
}

/** Sheets as they are drawn, and the drawings that several of them share. */
class Pages {
  readonly list: BoundPage[] = []
  readonly forms: Form[] = []
  readonly used = new Set<SetLine>()
  readonly wording: Wording

  constructor(wording: Wording) {
    this.wording = wording
  }

  /** A drawing to be shown on sheets by the name given back. */
  form(name: string, box: Bounds, draw: (ink: Ink) => void): string {
    if (!this.forms.some((form) => form.name === name)) {
      const ink = new Ink(this.wording.typeface, this.used)
      draw(ink)
      this.forms.push({ name, box, content: ink.content })
    }
    return name
  }

  /** Draws a sheet, its bars first, in millimetres as they come out on paper. */
  add(frame: Frame, draw: (ink: Ink) => void): void {
    const bars = this.form(`Bars-${frame.way}`, frame.inner, (ink) => drawBothBars(ink, frame))
    const ink = new Ink(this.wording.typeface, this.used)
    const scale = { x: frame.scaleX * POINTS, y: frame.scaleY * POINTS }
    ink.within({ scale }, () => {
      ink.form(bars)
      draw(ink)
    })
    this.list.push({ width: frame.width, height: frame.height, content: ink.content })
  }
}

/** What all sheets of one part share: the names of its drawings, the room its key takes, the marks where they join. */
interface PartForms {
  readonly part: string
  readonly key: string
  readonly keySize: KeySize
  readonly map: string
  readonly marks: readonly JoinMark[]
}

/** Room for lines that stand on the edge of the map, and for the names of low sheets, which stand a little under it. */
const aroundMap = ({ minX, minY, maxX, maxY }: Bounds): Bounds => ({
  minX: minX - 1,
  minY: minY - 5,
  maxX: maxX + 1,
  maxY: maxY + 1,
})

function formsOf(pages: Pages, sheets: PartSheets, index: number, overlap: number): PartForms {
  const { columns, drawing, frame } = sheets
  const { wording } = pages
  const { extent, layers } = drawing
  const [from, to] = [columns[0]?.from ?? extent.minX, columns.at(-1)?.to ?? extent.maxX]
  // Room for lines that stand on the edge.
  const box = {
    minX: Math.min(extent.minX, from) - 1,
    maxX: Math.max(extent.maxX, to) + 1,
    minY: extent.minY - 1,
    maxY: extent.maxY + 1,
  }
  const size = keySize(wording, layers)
  const map = mapBox(frame)
  const keyBox = { minX: -1, maxX: size.width + 2, minY: -size.height - 1, maxY: 1 }
  return {
    part: pages.form(`Part-${index}`, box, (ink) => drawForm(ink, wording, drawing, columns)),
    key: pages.form(`Key-${index}`, keyBox, (ink) =>
      drawKey(ink, wording, layers, { x: 0, y: 0 }, size.width + 1),
    ),
    keySize: size,
    map: pages.form(`Map-${index}`, aroundMap(map), (ink) => drawMap(ink, sheets, map)),
    marks: joinMarks(sheets, overlap),
  }
}

function drawSheet(ink: Ink, sheets: PartSheets, tile: Tile, forms: PartForms, overlap: number): void {
  const box = boxOf(sheets, tile)
  const toPaper = { x: box.minX - tile.shown.minX, y: box.minY - tile.shown.minY }
  ink.within({ clip: box, move: toPaper }, () => {
    ink.form(forms.part)
    drawJoins(ink, sheets, tile, overlap, forms.marks)
  })
  ink.rectangle(box, BORDER)
  drawCutEdges(ink, sheets, tile, box)
  const room = roomForKey(sheets.frame.window, box, forms.keySize)
  if (room) ink.within({ move: room }, () => ink.form(forms.key))
}

/** Keys of parts on none of whose sheets there was room, on sheets of their own. */
function keyGroups(unkeyed: readonly (readonly [PartSheets, KeySize])[]): PartSheets[][] {
  const groups: PartSheets[][] = []
  let free = 0
  for (const [sheets, { height }] of unkeyed) {
    if (height + 8 > free) {
      groups.push([])
      const { window } = (unkeyed[0] as readonly [PartSheets, KeySize])[0].frame
      free = window.maxY - window.minY - 12
    }
    groups.at(-1)?.push(sheets)
    free -= height + 8
  }
  return groups
}

function drawKeyPage(
  ink: Ink,
  wording: Wording,
  group: readonly PartSheets[],
  frame: Frame,
  number: string,
): void {
  const { window } = frame
  const room = window.maxX - window.minX
  let y = window.maxY - 5
  wording.write(ink, { x: window.minX, y }, 4.4, 'What the lines mean', room)
  y -= 4
  for (const { title, drawing } of group) {
    y -= 4
    wording.write(ink, { x: window.minX, y }, 3, title, room)
    y -= 2
    y -= drawKey(ink, wording, drawing.layers, { x: window.minX, y }, room) + 2
  }
  wording.write(ink, { x: window.minX, y: window.minY - 8.4 }, 2.5, `${number} · ${printLine(frame)}`, room)
}

/**
 * Draws every sheet of a plan and binds them to one PDF: the paper's real size, printing without scaling asked for,
 * letters embedded, no date in it.
 *
 * @param plan from `planPrint`
 * @param options the instrument's title and a line more; progress
 * @returns the same bytes for the same plan and options
 * @throws when `onSheet` stops it, or a number is not finite
 * @example await writePdf(plan, { title: 'Tea box' })
 */
export async function writePdf(plan: PrintPlan, options: PdfOptions): Promise<MadePdf> {
  const typeface = openTypeface()
  const wording = new Wording(typeface)
  const pages = new Pages(wording)
  const { overlap } = plan.setup
  const forms = plan.parts.map((sheets, index) => formsOf(pages, sheets, index, overlap))
  const unkeyed = plan.parts.flatMap((sheets, index): (readonly [PartSheets, KeySize])[] => {
    const size = forms[index]?.keySize ?? { width: 0, height: 0 }
    const some = sheets.tiles.some((tile) => roomForKey(sheets.frame.window, boxOf(sheets, tile), size))
    return some ? [] : [[sheets, size]]
  })
  const keys = keyGroups(unkeyed)
  const total = plan.count + keys.length
  const tell = async () => {
    if (options.onSheet?.(pages.list.length, total) === true)
      throw new Error('Stopped before it was finished.')
  }
  for (const [index, sheets] of plan.parts.entries()) {
    for (const tile of sheets.tiles) {
      const number = { page: pages.list.length + 1, pages: total }
      const shared = forms[index] as PartForms
      pages.add(sheets.frame, (ink) => {
        drawSheet(ink, sheets, tile, shared, overlap)
        drawStrip(ink, wording, sheets, tile, number, options, shared.map)
      })
      await tell()
    }
  }
  for (const group of keys) {
    const frame = group[0]?.frame
    if (frame === undefined) continue
    const number = `page ${pages.list.length + 1} of ${total}`
    pages.add(frame, (ink) => drawKeyPage(ink, wording, group, frame, number))
    await tell()
  }
  const title = plainLine(options.title) || 'Templates'
  const bytes = bind(pages.list, pages.forms, typeface, pages.used, title)
  return {
    bytes,
    pages: pages.list.length,
    keys: keys.length,
    cautions: [...wording.cautions, ...seamCautions(plan)],
  }
}

/** A sheet with the bars alone. Throws, with a sentence, where the paper has no room. */
export async function writeBars(setup: PrintSetup): Promise<MadePdf> {
  const reading = framesOf(setup)
  if (!reading.ok) throw new RangeError(reading.sentence)
  // Upright where there is a choice, as paper lies in a tray.
  const frame = reading.frames.at(-1) as Frame
  const typeface = openTypeface()
  const wording = new Wording(typeface)
  const pages = new Pages(wording)
  const { window } = frame
  const room = window.maxX - window.minX
  const lines = [
    printLine(frame),
    'Measure both bars with a good rule, X along the short edge of the paper and Y along its long edge.',
    'Then state what they measure, and that this print was made as the line above says.',
  ]
  pages.add(frame, (ink) => {
    wording.write(ink, { x: window.minX, y: window.minY + 20 }, 4.4, 'The bars of this printer', room)
    for (const [index, line] of lines.entries())
      wording.write(ink, { x: window.minX, y: window.minY + 13 - 5 * index }, 2.8, line, room)
  })
  const bytes = bind(pages.list, pages.forms, typeface, pages.used, 'The bars of this printer')
  return { bytes, pages: 1, keys: 0, cautions: [] }
}
