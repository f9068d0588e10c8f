/** One state of the pointer on a drawing: what it does while it is down. One file per tool. */
import type { Layout } from '../../../geometry/index.ts'
import type { Looks } from '../looks.ts'
import type { Pen } from '../paint.ts'

/** Where the pointer is, in pixels of the drawing's element. */
export interface PointerAt {
  readonly x: number
  readonly y: number
  /** Alt is held: nothing takes hold. */
  readonly free: boolean
  /** Shift is held: adds to what is chosen, or keeps the far edge where it is. */
  readonly shift: boolean
  readonly touch: boolean
}

export interface Tool {
  readonly cursor: string
  /** Things that move with this tool; they are drawn apart from those at rest. */
  readonly moving?: ReadonlySet<string>
  /** Index of the measure whose end it moves: the tool draws that one. */
  readonly measured?: number | undefined
  /** At most once per frame, with the newest place. */
  move(at: PointerAt): void
  finish(): void
  /** Ends it without a trace. */
  cancel(): void
  /** Guides and distances, over everything. */
  paint?(pen: Pen, looks: Looks, layout: Layout): void
}
