/** What is printed for a bundle, as data that another thread can be handed, and the packed file it becomes. */

import type { PaperName } from '../pdf/papers.ts'
import type { PrintPlan } from '../pdf/plan.ts'
import type { Sheet } from '../sheet/model.ts'
import type { Picture } from '../sheet/pictures/picture.ts'
import { type Packed, packed } from './zip.ts'

/** One PDF of a bundle, by its path inside. */
export type Print = { readonly path: string } & (
  | { readonly kind: 'sheet'; readonly sheet: Sheet; readonly paper: PaperName }
  | { readonly kind: 'label'; readonly picture: Picture }
  | { readonly kind: 'templates'; readonly plan: PrintPlan; readonly title: string }
)

export interface Printed {
  readonly packed: Packed
  /** Sentences about what is on paper otherwise than written. */
  readonly cautions: readonly string[]
}

/** Prints one and packs it. Rejects for a number that is not finite. The same bytes wherever it is done. */
export async function printed(print: Print): Promise<Printed> {
  const { bytes, cautions } = await madeOf(print)
  return { packed: packed({ path: print.path, bytes }), cautions }
}

async function madeOf(print: Print) {
  if (print.kind === 'templates') {
    const { writePdf } = await import('../pdf/writePdf.ts')
    return writePdf(print.plan, { title: print.title })
  }
  const { writeLabelPdf, writeSheetPdf } = await import('../sheet/pdf/write-pdf.ts')
  return print.kind === 'label' ? writeLabelPdf(print.picture) : writeSheetPdf(print.sheet, print.paper)
}
