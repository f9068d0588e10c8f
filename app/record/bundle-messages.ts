/** What the page and the worker that makes files say to one another. */
import type { BundleOptions } from '../../exporters/index.ts'
import type { Design } from '../../geometry/index.ts'

export interface Job {
  readonly make: 'everything' | 'sheet' | 'label'
  readonly design: Design
  readonly options: Pick<BundleOptions, 'paper' | 'dxfUnits'>
}

/** A file that was made, and what is on paper otherwise than written. */
export interface MadeFile {
  readonly name: string
  readonly bytes: Uint8Array
  readonly cautions: readonly string[]
}

export type Answer =
  | { readonly kind: 'step'; readonly done: number; readonly of: number; readonly what: string }
  | { readonly kind: 'made'; readonly file: MadeFile }
  | { readonly kind: 'failed'; readonly sentence: string }
