/** Sheets and the drawings they share, bound to one PDF document by the library. */
import type { Bounds } from '../../geometry/index.ts'
import { numberText } from '../numbers.ts'
import { embedTypeface } from './font/embed.ts'
import type { Typeface } from './font/typeface.ts'
import {
  PDFCatalog,
  PDFContext,
  PDFHexString,
  PDFName,
  PDFPageLeaf,
  PDFPageTree,
  type PDFRef,
  PDFString,
  PDFWriter,
  PrintScaling,
  ViewerPreferences,
} from './library.ts'

/** Points of a PDF in a millimetre (ISO 32000-1, 8.3.2.3: 72 to the inch). */
export const POINTS = 72 / 25.4

/** A drawing that several sheets show, by a name of its own. */
export interface Form {
  readonly name: string
  readonly content: string
  /** What it may fill, mm. */
  readonly box: Bounds
}

/** The sides of a page, mm of the file. */
export interface PaperSize {
  readonly width: number
  readonly height: number
}

/** One sheet: its paper, and what is drawn on it. */
export interface BoundPage extends PaperSize {
  readonly content: string
}

const side = (value: number) => Number(numberText(value, 'The side of a paper', 4))

/**
 * Binds sheets to a document: real paper sizes, printing without scaling asked for, letters embedded, no date.
 * Streams are not compressed: that would take a third of the time for a tenth of a megabyte, and so the same bytes
 * do not hang on the version of a compressor.
 *
 * @param used signs written, by the numbers of their outlines
 * @param title of the document, as its reader shows it
 * @returns the file; the same bytes for the same input
 */
export async function bind(
  pages: readonly BoundPage[],
  forms: readonly Form[],
  typeface: Typeface,
  used: ReadonlyMap<number, string>,
  title: string,
): Promise<Uint8Array> {
  const context = PDFContext.create()
  const tree = PDFPageTree.withContext(context)
  const treeRef = context.register(tree)
  const catalog = PDFCatalog.withContextAndPages(context, treeRef)
  context.trailerInfo.Root = context.register(catalog)
  const preferences = ViewerPreferences.create(context)
  preferences.setPrintScaling(PrintScaling.None)
  preferences.setPickTrayByPDFSize(true)
  preferences.setDisplayDocTitle(true)
  catalog.set(PDFName.of('ViewerPreferences'), preferences.dict)
  catalog.set(PDFName.of('Lang'), PDFString.of('en'))
  context.trailerInfo.Info = context.register(
    context.obj({ Title: PDFHexString.fromText(title), Producer: PDFString.of('Lidwright') }),
  )
  const font = embedTypeface(context, typeface, used)
  const formResources = context.register(context.obj({ Font: { F0: font } }))
  const drawings: Record<string, PDFRef> = {}
  for (const { name, content, box } of forms) {
    const corners = [box.minX, box.minY, box.maxX, box.maxY].map(side)
    const entries = { Type: 'XObject', Subtype: 'Form', BBox: corners, Resources: formResources }
    drawings[name] = context.register(context.stream(content, entries))
  }
  const resources = context.register(context.obj({ Font: { F0: font }, XObject: drawings }))
  for (const { width, height, content } of pages) {
    const leaf = PDFPageLeaf.withContextAndParent(context, treeRef)
    leaf.set(PDFName.of('MediaBox'), context.obj([0, 0, side(width * POINTS), side(height * POINTS)]))
    leaf.set(PDFName.of('Resources'), resources)
    leaf.set(PDFName.of('Contents'), context.register(context.stream(content)))
    tree.pushLeafNode(context.register(leaf))
  }
  return PDFWriter.forContext(context, Number.POSITIVE_INFINITY).serializeToBuffer()
}
