/** Bridges that hold a part in its sheet until it is broken out. */
import type { Chain, Contour } from '../../geometry/index.ts'
import { asChain, cornersOf, lengthOf, stretchOf } from './along.ts'

export interface Tabs {
  /** Along the path, where the tool leaves the wood. */
  readonly tabs: readonly Chain[]
  /** The rest of the path. */
  readonly between: readonly Chain[]
}

/** Tabs may take this share of an outline at most: more, and it is hardly cut. */
const MOST = 0.5

/** Steps in which a tab is moved to keep clear of a corner, of the distance between tabs. */
const STEPS = 24

/**
 * Tabs spread evenly along a closed path, each moved, where it can be, to lie clear of corners.
 *
 * @param path of the middle of the tool
 * @param gap mm of the path that each tab takes: its width in the wood and the width of the tool
 * @returns `null` where they would take more than half of the path
 * @example tabsOf(circle({ x: 0, y: 0 }, 50), 4, 4.2)?.tabs.length // 4
 */
export function tabsOf(path: Contour, count: number, gap: number): Tabs | null {
  const chain = asChain(path)
  const around = lengthOf(chain)
  if (count * gap > around * MOST) return null
  const corners = [...cornersOf(chain), around]
  const step = around / count
  const clear = (middle: number) => !corners.some((corner) => Math.abs(corner - middle) < gap / 2)
  const middles = Array.from({ length: count }, (_, index) => {
    const ideal = (index + 0.5) * step
    for (let move = 0; move <= STEPS; move++) {
      // By turns to either side, within a third of the way to the next tab.
      const middle = ideal + ((move % 2 === 0 ? 1 : -1) * Math.ceil(move / 2) * step) / (1.5 * STEPS)
      if (clear(middle)) return middle
    }
    return ideal
  })
  return {
    tabs: middles.map((middle) => stretchOf(chain, middle - gap / 2, middle + gap / 2)),
    between: middles.map((middle, index) => {
      const next = middles[index + 1] ?? (middles[0] ?? 0) + around
      return stretchOf(chain, middle + gap / 2, next - gap / 2)
    }),
  }
}
