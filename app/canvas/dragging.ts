/** Whether anything on the page is being dragged, so that Escape can end it and panels can keep calm. */

let end: (() => void) | null = null

export const dragging = {
  /** `cancel` ends what now begins without a trace. */
  begin(cancel: () => void): void {
    const before = end
    end = null
    before?.()
    end = cancel
  },
  release(): void {
    end = null
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
