/** What the page and the worker that makes the bundle say to one another. */
import type { Bundle, BundleOptions } from '../../exporters/index.ts'
import type { Design } from '../../geometry/index.ts'

export interface BundleJob {
  readonly design: Design
  readonly options: Pick<BundleOptions, 'paper' | 'dxfUnits'>
}

export type BundleAnswer =
  | { readonly kind: 'step'; readonly done: number; readonly of: number; readonly what: string }
  | { readonly kind: 'made'; readonly bundle: Bundle }
  | { readonly kind: 'failed'; readonly sentence: string }
