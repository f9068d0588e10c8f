/** Something a user can do: one object from which menu, key and search follow. */
export interface Action {
  readonly id: string
  /** What it does, as a button would say it. */
  readonly title: string
  readonly group: 'File' | 'Edit' | 'Places' | 'Drawing' | 'Things' | 'Together'
  /** Keys as `Ctrl+Shift+Z`, `F`, `[`; a letter alone only counts outside fields. */
  readonly keys?: readonly string[]
  /** False where it would do nothing now. */
  readonly enabled?: () => boolean
  /** Of no use in a menu at the pointer: it chooses something else, or is held down. */
  readonly hidden?: boolean
  /** What it answers is nobody's business here. */
  readonly run: () => unknown
}
