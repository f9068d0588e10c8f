/** The PDF library, fetched when a sheet is first printed: most of what a builder does needs none. */

export type PdfLibrary = typeof import('@cantoo/pdf-lib')

export function pdfLibrary(): Promise<PdfLibrary> {
  return import('@cantoo/pdf-lib')
}
