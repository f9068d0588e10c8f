/** A pointer that went down and has not yet moved far enough to mean a drag. */
import type { PointerAt, Tool } from './tool.ts'

const FAR_ENOUGH = { mouse: 3, touch: 8 }

export function press(from: PointerAt, cursor: string, onClick: () => void, onDrag: () => Tool | null): Tool {
  let tool: Tool | null = null
  let given = false
  return {
    get cursor() {
      return tool?.cursor ?? cursor
    },
    get moving() {
      return tool?.moving ?? NOTHING
    },
    get measured() {
      return tool?.measured
    },
    move(at) {
      const far = from.touch ? FAR_ENOUGH.touch : FAR_ENOUGH.mouse
      if (!given && Math.hypot(at.x - from.x, at.y - from.y) < far) return
      if (!given) tool = onDrag()
      given = true
      tool?.move(at)
    },
    finish() {
      if (given) tool?.finish()
      else onClick()
    },
    cancel: () => tool?.cancel(),
    paint: (pen, looks, layout) => tool?.paint?.(pen, looks, layout),
  }
}

const NOTHING: ReadonlySet<string> = new Set()
