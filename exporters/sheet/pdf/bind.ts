/** Drawn pages bound to one PDF: the real size of the paper, letters embedded, no date in it. */
import { numberText } from '../../numbers.ts'
import { embedTypeface } from '../../pdf/font/embed.ts'
import type { Typeface } from '../../pdf/font/typeface.ts'
import type { PdfLibrary } from '../../pdf/library.ts'

/** Points of a PDF in a millimetre (ISO 32000-1, 8.3.2.3: 72 to the inch). */
export const POINTS = 72 / 25.4

export interface PaperSize {
  readonly width: number
  readonly height: number
}

export interface Binding {
  readonly title: string
  readonly size: PaperSize
  /** Content streams, one a page, in points. */
  readonly contents: readonly string[]
  readonly typeface: Typeface
  /** Signs written, by the numbers of their outlines. */
  readonly used: ReadonlyMap<number, string>
}

/** The document as bytes; the same for the same pages. */
export function bindPages(library: PdfLibrary, binding: Binding): Promise<Uint8Array> {
  return library.PDFDocument.create({ updateMetadata: false }).then((document) => {
    const { context, catalog } = document
    const preferences = catalog.getOrCreateViewerPreferences()
    preferences.setPrintScaling(library.PrintScaling.None)
    preferences.setPickTrayByPDFSize(true)
    preferences.setDisplayDocTitle(true)
    document.setTitle(binding.title)
    document.setLanguage('en')
    document.setProducer('Lidwright')
    document.setCreator('Lidwright')
    const font = embedTypeface(library, context, binding.typeface, binding.used)
    const resources = context.register(context.obj({ Font: { F0: font } }))
    const [width = 0, height = 0] = [binding.size.width, binding.size.height].map((side) =>
      Number(numberText(side * POINTS, 'The side of a paper', 4)),
    )
    for (const content of binding.contents) {
      const page = document.addPage([width, height])
      page.node.set(library.PDFName.of('Resources'), resources)
      page.node.set(library.PDFName.of('Contents'), context.register(context.flateStream(content)))
    }
    return document.save({ useObjectStreams: false, addDefaultPage: false, updateFieldAppearances: false })
  })
}
