/**
 * The build sheet as data: sections of tables, pictures, words and steps, from which HTML, PDF, CSV and the page of
 * the application are all made. Numbers stay numbers here; `cells.ts` turns them into words in the builder's unit.
 */
import type { Units } from '../../geometry/index.ts'
import type { Table } from '../tables/table.ts'
import type { Picture } from './pictures/picture.ts'

export type { Cell, Column, Measure, Table } from '../tables/table.ts'

/** One step of the work, in its order. */
export interface Step {
  readonly title: string
  readonly words: string
  /** What can hurt or spoil here; said nowhere else on the sheet. */
  readonly caution?: string
}

export type Block =
  | { readonly kind: 'table'; readonly table: Table }
  | { readonly kind: 'picture'; readonly picture: Picture }
  | { readonly kind: 'words'; readonly lines: readonly string[] }
  | { readonly kind: 'steps'; readonly steps: readonly Step[] }

export interface Section {
  /** Stable: `frets`. */
  readonly id: string
  readonly title: string
  readonly blocks: readonly Block[]
}

export interface Sheet {
  readonly title: string
  readonly units: Units
  /** What stands in the head of the sheet: label and value by turns. */
  readonly head: readonly (readonly [label: string, value: string])[]
  /** Short form of the design's checksum, as on the label. */
  readonly checksum: string
  readonly sections: readonly Section[]
}

export const table = (one: Table): Block => ({ kind: 'table', table: one })
export const picture = (one: Picture): Block => ({ kind: 'picture', picture: one })
export const lines = (...texts: string[]): Block => ({ kind: 'words', lines: texts })

/** Every table of a sheet, in its order. */
export const tablesOf = (sheet: Sheet): Table[] =>
  sheet.sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) =>
      block.kind === 'table'
        ? [block.table]
        : block.kind === 'picture' && block.picture.table
          ? [block.picture.table]
          : [],
    ),
  )
