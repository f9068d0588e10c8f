/** Parts as a PDF at 1:1, tiled over sheets of paper. */
import type { PDFRef } from '@cantoo/pdf-lib'
import type { Bounds } from '../../geometry/index.ts'
import { numberText } from '../numbers.ts'
import type { SheetOptions } from '../sheet-layout/facts.ts'
import { plainLine } from '../words/plain.ts'
import { embedTypeface } from './font/embed.ts'
import { openTypeface } from './font/typeface.ts'
import { FAINT, Ink } from './ink.ts'
import { drawCutEdges, drawJoins } from './joins.ts'
import { drawKey, type KeySize, keySize, roomForKey } from './key.ts'
import { type PdfLibrary, pdfLibrary } from './library.ts'
import { drawForm } from './part-form.ts'
import type { PartSheets, PrintPlan, Tile } from './plan.ts'
import type { Frame } from './setup.ts'
import { drawBothBars, drawStrip, printLine } from './strip.ts'
import { Wording } from './words.ts'

/** Points of a PDF in a millimetre (ISO 32000-1, 8.3.2.3: 72 to the inch). */
const POINTS = 72 / 25.4

const BORDER = { colour: FAINT, width: 0.12 }

export interface PdfOptions extends SheetOptions {
  /** Called after each sheet; a `true` given back stops the work, and the promise is rejected. */
  readonly onSheet?: ((done: number, of: number) => boolean | undefined) | undefined
}

export interface MadePdf {
  readonly bytes: Uint8Array
  readonly pages: number
  /** Sentences about what is on paper otherwise than written, and about seams that found no good place. */
  readonly cautions: readonly string[]
}

/** One page being drawn. */
interface Page {
  readonly frame: Frame
  readonly content: string
  /** Number of the part whose drawing it shows. */
  readonly form?: number
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

class Pages {
  readonly list: Page[] = []
  readonly used = new Map<number, string>()
  readonly wording: Wording

  constructor(wording: Wording) {
    this.wording = wording
  }

  ink(): Ink {
    return new Ink(this.wording.typeface, this.used)
  }

  /** Draws a page in millimetres as they come out on paper. */
  add(frame: Frame, draw: (ink: Ink) => void, form?: number): void {
    const ink = this.ink()
    const scale = { x: frame.scaleX * POINTS, y: frame.scaleY * POINTS }
    ink.within({ scale }, () => draw(ink))
    this.list.push({ frame, content: ink.content, ...(form === undefined ? {} : { form }) })
  }
}

function drawSheet(
  ink: Ink,
  wording: Wording,
  sheets: PartSheets,
  tile: Tile,
  overlap: number,
): { readonly keyDrawn: boolean } {
  const { frame, drawing } = sheets
  const box = boxOf(sheets, tile)
  const toPaper = { x: box.minX - tile.shown.minX, y: box.minY - tile.shown.minY }
  ink.within({ clip: box, move: toPaper }, () => {
    ink.form('Part')
    drawJoins(ink, sheets, tile, overlap)
  })
  ink.rectangle(box, BORDER)
  drawCutEdges(ink, sheets, tile, box)
  const size = keySize(wording, drawing.layers)
  const room = roomForKey(frame.window, box, size)
  if (room) drawKey(ink, wording, drawing.layers, room, size.width + 1)
  return { keyDrawn: room !== undefined }
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
  drawBothBars(ink, frame)
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
  const [library, typeface] = await Promise.all([pdfLibrary(), openTypeface()])
  const wording = new Wording(typeface)
  const pages = new Pages(wording)
  const { overlap } = plan.setup
  const unkeyed = plan.parts.flatMap((sheets): (readonly [PartSheets, KeySize])[] => {
    const size = keySize(wording, sheets.drawing.layers)
    const some = sheets.tiles.some((tile) => roomForKey(sheets.frame.window, boxOf(sheets, tile), size))
    return some ? [] : [[sheets, size]]
  })
  const keys = keyGroups(unkeyed)
  const total = plan.count + keys.length
  const tell = async () => {
    if (options.onSheet?.(pages.list.length, total) === true)
      throw new Error('Stopped before it was finished.')
  }
  const forms: string[] = []
  for (const [index, sheets] of plan.parts.entries()) {
    const form = pages.ink()
    const { columns, drawing } = sheets
    const joinLine =
      columns.length > 1 ? ([columns[0]?.from ?? 0, columns.at(-1)?.to ?? 0] as const) : undefined
    drawForm(form, wording, drawing, { joinLine })
    forms.push(form.content)
    for (const tile of sheets.tiles) {
      const number = { page: pages.list.length + 1, pages: total }
      pages.add(
        sheets.frame,
        (ink) => {
          drawSheet(ink, wording, sheets, tile, overlap)
          drawStrip(ink, wording, sheets, tile, number, options)
        },
        index,
      )
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
  const bytes = await bound(library, pages, forms, plan, plainLine(options.title))
  return { bytes, pages: pages.list.length, cautions: [...wording.cautions, ...seamCautions(plan)] }
}

/** The pages as a document. */
async function bound(
  library: PdfLibrary,
  { list, used, wording }: Pages,
  forms: readonly string[],
  plan: PrintPlan,
  title: string,
): Promise<Uint8Array> {
  const document = await library.PDFDocument.create({ updateMetadata: false })
  const { context, catalog } = document
  const preferences = catalog.getOrCreateViewerPreferences()
  preferences.setPrintScaling(library.PrintScaling.None)
  preferences.setPickTrayByPDFSize(true)
  preferences.setDisplayDocTitle(true)
  document.setTitle(title === '' ? 'Templates' : title)
  document.setProducer('Lidwright')
  document.setLanguage('en')
  const font = embedTypeface(library, context, wording.typeface, used)
  const resources = (form?: PDFRef) =>
    context.obj({ Font: { F0: font }, ...(form === undefined ? {} : { XObject: { Part: form } }) })
  const formRefs = forms.map((content, index) => {
    const { extent } = plan.parts[index]?.drawing ?? { extent: { minX: 0, minY: 0, maxX: 0, maxY: 0 } }
    const columns = plan.parts[index]?.columns ?? []
    // Wide enough for lines that stand on the edge, and for the line to join on.
    const box = [
      Math.min(extent.minX, columns[0]?.from ?? extent.minX) - 5,
      extent.minY - 5,
      Math.max(extent.maxX, columns.at(-1)?.to ?? extent.maxX) + 5,
      extent.maxY + 5,
    ].map((value) => Number(numberText(value, 'The box of a drawing', 4)))
    return context.register(
      context.flateStream(content, { Type: 'XObject', Subtype: 'Form', BBox: box, Resources: resources() }),
    )
  })
  for (const { frame, content, form } of list) {
    const size = [frame.width * POINTS, frame.height * POINTS].map((side) =>
      Number(numberText(side, 'The side of a paper', 4)),
    )
    const page = document.addPage([size[0] ?? 0, size[1] ?? 0])
    page.node.set(library.PDFName.of('Resources'), resources(form === undefined ? undefined : formRefs[form]))
    page.node.set(library.PDFName.of('Contents'), context.register(context.flateStream(content)))
  }
  return document.save({ useObjectStreams: false, addDefaultPage: false, updateFieldAppearances: false })
}
