/** Chooses everything that a dragged frame meets. */
import type { Face, Layout, Placed } from '../../../geometry/index.ts'
import { selectAll } from '../../state/index.ts'
import { type Frame, screenBounds } from '../frame.ts'
import type { PointerAt, Tool } from './tool.ts'

export function frameChoose(
  layout: () => Layout,
  faces: readonly Face[],
  frameOf: (face: Face) => Frame | null,
  from: PointerAt,
  kept: readonly string[],
): Tool {
  let to = from
  const box = () => ({
    minX: Math.min(from.x, to.x),
    maxX: Math.max(from.x, to.x),
    minY: Math.min(from.y, to.y),
    maxY: Math.max(from.y, to.y),
  })
  const met = (placed: Placed): boolean => {
    const frame = faces.includes(placed.face) ? frameOf(placed.face) : null
    if (!frame) return false
    const [a, b] = [screenBounds(frame, placed.bounds), box()]
    return a.minX <= b.maxX && a.maxX >= b.minX && a.minY <= b.maxY && a.maxY >= b.minY
  }
  const chosen = () => {
    const ids = layout()
      .placed.filter(met)
      .map((one) => one.thing.id)
    return [...kept.filter((id) => !ids.includes(id)), ...ids]
  }
  return {
    cursor: 'crosshair',
    move(at) {
      to = at
    },
    finish: () => selectAll(chosen()),
    cancel: () => {},
    paint(pen, looks) {
      const { minX, maxX, minY, maxY } = box()
      pen.save()
      pen.fillStyle = looks.accentSoft
      pen.globalAlpha = 0.4
      pen.fillRect(minX, minY, maxX - minX, maxY - minY)
      pen.restore()
      pen.strokeStyle = looks.accent
      pen.lineWidth = 1.2
      pen.setLineDash([6, 3])
      pen.strokeRect(minX, minY, maxX - minX, maxY - minY)
      pen.setLineDash([])
    },
  }
}
