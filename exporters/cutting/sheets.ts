/** Files of parts laid out on sheets of stock, and how full each sheet is. */
import { type Design, type Part, type Point, rectangle } from '../../geometry/index.ts'
import { type Drawing, drawPart, type Words } from '../drawing/drawing.ts'
import type { LengthUnit } from '../drawing/layers.ts'
import { writeDxfLaidOut } from '../dxf/writeDxf.ts'
import { lengthLabel } from '../numbers.ts'
import { factsOf } from '../sheet-layout/facts.ts'
import type { PlacedDrawing, Sheet } from '../sheet-layout/sheet.ts'
import { writeSvgLaidOut } from '../svg/writeSvg.ts'
import type { TemplateFile, TemplatesOptions } from '../templates.ts'
import { slug } from '../words/plain.ts'
import { CAPITAL_HEIGHT, fitLine } from '../words/width.ts'
import { grainOf, isFromSheet, type NestedSheet, nested, stockOf, stuffOf } from './nest.ts'

export type SheetFiles =
  | {
      readonly ok: true
      readonly files: readonly TemplateFile[]
      /** A sentence for each sheet, and one for the parts left out. */
      readonly said: readonly string[]
    }
  | { readonly ok: false; readonly sentences: readonly string[] }

/** A part's name on the part itself: height of its capitals, the least, and how far in it stands; mm. */
const CAPITALS = 3
const SMALLEST = 1.5
const INSET = 4

/**
 * The parts that come from sheets laid out on stock, a file for each sheet and format.
 *
 * @param parts nominal, or as a tool follows them
 * @param design whose `cutting` states the stock, and whose lid its grain
 * @param options as for `templates`; with `only`, all parts named are laid out, necks too
 * @returns files such as `tea-box-sheet-1.svg`, or sentences that say what does not fit
 * @example await sheetTemplates(parts, design, { title: 'Tea box', formats: ['svg'] })
 */
export async function sheetTemplates(
  parts: readonly Part[],
  design: Design,
  options: TemplatesOptions,
): Promise<SheetFiles> {
  const { only } = options
  const wanted = parts.filter((part) => (only === undefined ? isFromSheet(part) : only.includes(part.id)))
  if (wanted.length === 0) return { ok: false, sentences: ['No part is left to lay out on a sheet.'] }
  const nesting = await nested(
    wanted,
    stockOf(design),
    (part) => grainOf(part, design),
    (part) => stuffOf(part, design),
  )
  if (!nesting.ok) return nesting
  const { sheets } = nesting
  const start = slug(options.title, 'template')
  const files = options.formats.flatMap((format) =>
    sheets.map((sheet, index) => ({
      name: `${start}-sheet-${index + 1}.${format}`,
      text:
        format === 'svg'
          ? svgOf(sheet, index, sheets.length, options)
          : dxfOf(sheet, index, sheets.length, options),
    })),
  )
  const left = parts.filter((part) => !wanted.includes(part)).map((part) => part.title)
  return {
    ok: true,
    files,
    said: [
      ...sheets.map((sheet, index) => `${titleOf(sheet, index, sheets.length)}: ${partsIn(sheet)}.`),
      ...(left.length > 0 ? [`Not on a sheet: ${left.join(', ')}.`] : []),
    ],
  }
}

const partsIn = ({ parts }: NestedSheet): string => parts.map(({ part }) => part.title).join(', ')

/** `Sheet 1 of 2, plywood 4.0 mm thick, 63 % full`. */
function titleOf({ thickness, stuff, full }: NestedSheet, index: number, count: number): string {
  const thick = [stuff, lengthLabel(thickness, 'Thickness of a sheet', 2)]
    .filter((one) => one !== '')
    .join(' ')
  return `Sheet ${index + 1} of ${count}, ${thick} mm thick, ${Math.round(full * 100)} % full`
}

function laidOut({ stock, parts }: NestedSheet, unit: LengthUnit): Sheet {
  const extent = { minX: 0, minY: 0, maxX: stock.length, maxY: stock.width }
  const placed = parts.map(({ part, shift }): PlacedDrawing => {
    const drawing = drawPart(part, unit)
    return { drawing, shift, caption: nameOn(drawing, shift) }
  })
  return { placed, extent, stock: rectangle(0, 0, stock.length, stock.width), rim: stock.margin }
}

/** The part's name, set along its longer side. */
function nameOn({ part, outline }: Drawing, shift: Point): Words[] {
  const upright = outline.maxY - outline.minY > outline.maxX - outline.minX
  const room = (upright ? outline.maxY - outline.minY : outline.maxX - outline.minX) - 2 * INSET
  if (room <= 0) return []
  const { text, size } = fitLine(
    factsOf(part, outline).title,
    CAPITALS / CAPITAL_HEIGHT,
    SMALLEST / CAPITAL_HEIGHT,
    room,
  )
  const height = size * CAPITAL_HEIGHT
  const x = shift.x + outline.minX + INSET + (upright ? height : 0)
  return [{ at: { x, y: shift.y + outline.minY + INSET }, height, turn: upright ? Math.PI / 2 : 0, text }]
}

function svgOf(sheet: NestedSheet, index: number, count: number, options: TemplatesOptions): string {
  const title = titleOf(sheet, index, count)
  const { length, width } = sheet.stock
  const size = `${lengthLabel(length, 'Length of a sheet', 2)} × ${lengthLabel(width, 'Width of a sheet', 2)} mm`
  const description = `${title}, stock of ${size}, grain along the first. On it: ${partsIn(sheet)}.`
  return writeSvgLaidOut(
    laidOut(sheet, 'mm'),
    { title, description },
    {
      ...options,
      purpose: options.svgPurpose,
      words: options.svgWords,
    },
  )
}

function dxfOf(sheet: NestedSheet, index: number, count: number, options: TemplatesOptions): string {
  const unit = options.dxfUnits ?? 'mm'
  const line = [titleOf(sheet, index, count), options.line ?? ''].filter((words) => words !== '').join('. ')
  return writeDxfLaidOut(laidOut(sheet, unit), { ...options, line, units: unit, release: options.dxfRelease })
}
