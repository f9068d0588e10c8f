/** Whether anything on the page is being dragged, so that Escape can end it and panels can keep calm. */
import type { Layout } from '../../geometry/index.ts'

let end: (() => void) | null = null
let began: Layout | null = null
let movers: ReadonlySet<string> = new Set()

export const dragging = {
  /** `cancel` ends what now begins without a trace. */
  begin(cancel: () => void): void {
    const before = end
    end = null
    before?.()
    end = cancel
  },
  /** What the drag moves, and the layout it began from. */
  moves(ids: ReadonlySet<string>, start: Layout): void {
    movers = ids
    began = start
  },
  moving: (): ReadonlySet<string> => movers,
  start: (): Layout | null => (end === null ? null : began),
  release(): void {
    end = null
    began = null
    movers = new Set()
  },
  isOn: (): boolean => end !== null,
  /** Ends what is going on; false where nothing was. */
  cancel(): boolean {
    const cancel = end
    end = null
    cancel?.()
    return cancel !== null
  },
}
