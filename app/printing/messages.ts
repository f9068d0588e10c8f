/** What the page and the worker that prints say to one another. */

import type { MadePdf, PrintSetup } from '../../exporters/index.ts'
import type { Part } from '../../geometry/index.ts'

/** Asks for the sheets of some parts, or, where there are none, for a sheet with the bars alone. */
export interface PrintJob {
  readonly parts: readonly Part[]
  readonly setup: PrintSetup
  readonly title: string
}

export type Answer =
  | { readonly kind: 'sheet'; readonly done: number; readonly of: number }
  | { readonly kind: 'made'; readonly made: MadePdf }
  | { readonly kind: 'failed'; readonly sentence: string }
