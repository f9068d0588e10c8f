/** Where the strings run with the other counts that the tailpiece is made for: faint, each count in dashes of its own. */
import { countsOf, type Layout, tailPathsOf } from '../../geometry/index.ts'
import type { View } from './camera.ts'
import { toScreen } from './frame.ts'
import { type Looks, THIN } from './looks.ts'
import { type Pen, path, write } from './paint.ts'

/** One sort of dash for each count after the instrument's own, in pixels. */
const DASHES: readonly number[][] = [
  [7, 4],
  [2, 3],
]
/** Words stand so far before the saddle, millimetres along the string. */
const BEFORE_SADDLE = 10

export function paintOtherCounts(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  const { design, saddle, tailHoles } = layout
  const others = countsOf(design).filter((count) => count !== design.strings.count)
  for (const one of tailPathsOf(layout)) {
    const at = others.indexOf(one.count)
    if (at < 0) continue
    const hole = one.hole === null ? null : tailHoles[one.hole]
    const points = [
      { x: 0, y: one.yNut },
      { x: saddle.x, y: one.ySaddle },
      ...(hole ? [{ x: hole.x, y: hole.y }] : []),
    ]
    path(pen, view.plan, points, { stroke: looks.soft, width: THIN, dash: DASHES[at % DASHES.length] ?? [] })
    if (one.string !== one.count) continue
    // The bass string of each count says which count it is.
    const x = saddle.x - BEFORE_SADDLE * (1 + 2 * at)
    const y = one.yNut + ((one.ySaddle - one.yNut) * x) / saddle.x
    const on = toScreen(view.plan, { x, y })
    write(
      pen,
      looks,
      `of ${one.count}`,
      // Towards the middle: outside lies the edge of the neck.
      { x: on.x, y: on.y + (view.plan.up === 1 ? -4 : 11) },
      { colour: looks.soft, size: 10, align: 'center' },
    )
  }
}
