/**
 * The box folded out: the lid in the middle, the walls laid flat around it by their lid-side edges, the base beyond
 * the tail-end wall. Every face as seen from outside.
 */
import type { Bounds, Face, Layout } from '../../geometry/index.ts'
import type { Size } from './camera.ts'
import { type Frame, movedFrame } from './frame.ts'

/** Pixels between faces: room for their names. */
const BETWEEN = 22
const BESIDE = 14
const ABOVE = 6
const BELOW = 24

interface Rectangle {
  readonly left: number
  readonly top: number
  readonly wide: number
  readonly tall: number
}

/** Where each face lies for a size of the window, all to one scale. */
export function foldedOut(layout: Layout, size: Size): Map<Face, Frame> {
  const { panels, up } = layout
  const long = ({ bounds: b }: { bounds: Bounds }) => b.maxX - b.minX
  const high = ({ bounds: b }: { bounds: Bounds }) => b.maxY - b.minY
  const deep = high(panels['treble-wall'])
  const middle = Math.max(long(panels.lid), long(panels['treble-wall']))
  const columns = [deep, middle, deep, long(panels.base)]
  const rows = [deep, Math.max(high(panels.lid), high(panels.base), long(panels['tail-end-wall'])), deep]
  const sum = (list: readonly number[]) => list.reduce((all, one) => all + one, 0)
  const scale = Math.max(
    0.01,
    Math.min(
      (size.width - 2 * BESIDE - 3 * BETWEEN) / sum(columns),
      (size.height - ABOVE - BELOW - 2 * BETWEEN) / sum(rows),
    ),
  )
  const start = (size.width - sum(columns) * scale - 3 * BETWEEN) / 2
  const top = ABOVE + (size.height - ABOVE - BELOW - sum(rows) * scale - 2 * BETWEEN) / 2
  const cell = (column: number, row: number): Rectangle => ({
    left: start + sum(columns.slice(0, column)) * scale + column * BETWEEN,
    top: top + sum(rows.slice(0, row)) * scale + row * BETWEEN,
    wide: (columns[column] ?? 0) * scale,
    tall: (rows[row] ?? 0) * scale,
  })
  const frames = new Map<Face, Frame>()
  const put = (face: Face, at: Rectangle, way: Pick<Frame, 'right' | 'up' | 'turned'>) => {
    const { minX, maxX, minY, maxY } = panels[face].bounds
    const centre: Frame = { ox: at.left + at.wide / 2, oy: at.top + at.tall / 2, scale, ...way }
    frames.set(face, movedFrame(centre, -(minX + maxX) / 2, -(minY + maxY) / 2))
  }
  // The treble side is above for a right-handed build and below for a left-handed one.
  const [trebleRow, bassRow] = up === 1 ? [0, 2] : [2, 0]
  const over = up === 1 ? -1 : 1
  put('neck-end-wall', cell(0, 1), { right: 1, up, turned: true })
  put('lid', cell(1, 1), { right: 1, up })
  put('treble-wall', cell(1, trebleRow), { right: 1, up: over })
  put('bass-wall', cell(1, bassRow), { right: 1, up })
  put('tail-end-wall', cell(2, 1), { right: -1, up, turned: true })
  put('base', cell(3, 1), { right: -1, up })
  return frames
}
