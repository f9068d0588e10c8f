/** The plain model of the editor: all designs there have been, in a list, and how far back one stands in it. */
import { type Change, checkDesign, type Design } from '../../geometry/index.ts'

/** Through text, so that no two places of the copy are one object. */
export const copyOf = <Value>(value: Value): Value => JSON.parse(JSON.stringify(value))

export class Model {
  private steps: { design: Design; selectionAfter: string | null; selectionBefore: string | null }[]
  private at = 0
  selection: string | null = null

  constructor(design: Design) {
    this.steps = [{ design: copyOf(design), selectionAfter: null, selectionBefore: null }]
  }

  get design(): Design {
    return this.steps[this.at]!.design
  }

  get canUndo(): boolean {
    return this.at > 0
  }

  get canRedo(): boolean {
    return this.at < this.steps.length - 1
  }

  done(design: Design, selection: string | null): void {
    this.steps.length = this.at + 1
    this.steps.push({ design: copyOf(design), selectionBefore: this.selection, selectionAfter: selection })
    this.at++
    this.selection = selection
  }

  undo(): boolean {
    if (!this.canUndo) return false
    this.selection = this.steps[this.at]!.selectionBefore
    this.at--
    return true
  }

  redo(): boolean {
    if (!this.canRedo) return false
    this.at++
    this.selection = this.steps[this.at]!.selectionAfter
    return true
  }
}

/** What the design would be by copying, setting and reading it like a file; `null` where that is no design. */
export function expected(design: Design, change: Change): Design | null {
  const copy: { root: unknown } = { root: copyOf(design) }
  for (const { path, after } of change.edits) {
    let holder: Record<PropertyKey, unknown> = copy
    for (const [depth, key] of ['root', ...path].entries()) {
      if (depth === path.length) {
        if (after !== undefined) holder[key] = copyOf(after)
        else if (Array.isArray(holder)) holder.splice(Number(key), 1)
        else delete holder[key]
      } else holder = holder[key] as Record<PropertyKey, unknown>
    }
  }
  const reading = checkDesign(copy.root)
  return reading.ok ? reading.design : null
}
