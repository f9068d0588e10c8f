/** The build sheet and the label as PDF; the library and the letters are loaded now, not before. */
import type { Design } from '../../geometry/index.ts'
import { labelPicture } from '../label/label.ts'
import type { PaperName } from '../pdf/papers.ts'
import type { Sheet } from './model.ts'
import type { MadeSheet } from './pdf/write-pdf.ts'

export type { MadeSheet }

/** The build sheet on a paper; see `writeSheetPdf`. */
export async function printSheet(sheet: Sheet, paper: PaperName): Promise<MadeSheet> {
  const { writeSheetPdf } = await import('./pdf/write-pdf.ts')
  return writeSheetPdf(sheet, paper)
}

/** The label on a page of its own size; see `writeLabelPdf`. */
export async function printLabel(design: Design): Promise<MadeSheet> {
  const { writeLabelPdf } = await import('./pdf/write-pdf.ts')
  return writeLabelPdf(labelPicture(design))
}
