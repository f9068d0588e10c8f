/** What can be moved or set to mend a finding, step by step on the builder's own rule. */

import type { Layout } from '../solve/layout.ts'
import type { FieldSet } from '../solve/moves.ts'

/** One position of a lever: the fields it sets and how it is said once the layout after it is known. */
export interface Turn {
  readonly fields: readonly FieldSet[]
  words(before: Layout, after: Layout): string
}

/** A number that slides either way in steps, or a choice of a few. */
export type Lever =
  | {
      readonly sort: 'slide'
      /** Millimetres, or whatever the number counts, of one step: tells how far to look first. */
      readonly step: number
      /** No more steps than these are passed over unseen; left out where what does is no narrow gap. */
      readonly stride?: number
      /** How many steps there are at the most, either way. */
      readonly most: number
      /** Both ways, or only one that is sure to help. */
      readonly ways: readonly (1 | -1)[]
      /** `null` where the field's own limits end. */
      at(steps: number): Turn | null
    }
  | {
      readonly sort: 'choice'
      readonly turns: readonly Turn[]
      /** Only the builder knows which: it is offered, and never taken for him. */
      readonly yours?: true
    }
