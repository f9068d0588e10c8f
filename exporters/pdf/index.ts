/** The door of the printed sheets: planning is light and at hand, printing fetches its library and its letters. */
import type { Part } from '../../geometry/index.ts'
import { slug } from '../words/plain.ts'
import type { PaperName } from './papers.ts'
import type { PrintPlan } from './plan.ts'
import type { PrintSetup } from './setup.ts'
import type { MadePdf, PdfOptions } from './writePdf.ts'

export {
  type Correction,
  type CorrectionReading,
  correctionFrom,
  correctionLine,
  isCorrected,
  judged,
  MEASURED_BAR,
  NO_CORRECTION,
} from './correction.ts'
export { PAPER_NAMES, PAPERS, type Paper, type PaperName, paperFor, paperNamed } from './papers.ts'
export { type PartSheets, type PlanReading, type PrintPlan, planPrint, type Tile } from './plan.ts'
export { type PrintSetup, STANDARD_SETUP, type Way } from './setup.ts'
export type { MadePdf, PdfOptions }

/**
 * Prints a plan to a PDF; see `writePdf`. The library and the letters are loaded now, not before.
 *
 * @example const { bytes } = await printPdf(plan, { title: 'Tea box' })
 */
export async function printPdf(plan: PrintPlan, options: PdfOptions): Promise<MadePdf> {
  const { writePdf } = await import('./writePdf.ts')
  return writePdf(plan, options)
}

/**
 * A sheet with the bars alone, to be measured before anything is printed.
 *
 * @throws with the sentence of `planPrint` where the paper has no room
 */
export async function printBars(setup: PrintSetup): Promise<MadePdf> {
  const { writeBars } = await import('./writePdf.ts')
  return writeBars(setup)
}

/**
 * What a PDF of some parts is called.
 *
 * @example printFileName('Tea box', parts, 'a4') // 'tea-box-sheets-a4.pdf'
 */
export function printFileName(title: string, parts: readonly Part[], paper: PaperName): string {
  const [only, more] = parts
  const what = only !== undefined && more === undefined ? slug(only.id, 'part') : 'sheets'
  return `${slug(title, 'template')}-${what}-${paper}.pdf`
}
