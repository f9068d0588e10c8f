/**
 * What is used of the PDF library: its objects, its page tree and its writer. Only sheets that are printed import
 * this, and `printPdf` imports those on demand: most of what a builder does needs none of it.
 */
export {
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
} from '@cantoo/pdf-lib'
