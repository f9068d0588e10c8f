/** One row of string holes for several counts of strings: where each count wants its holes, and which it shares. */
import { LIMITS } from '../design/limits.ts'
import type { Design } from '../design/schema.ts'
import { holeCentres, holesServing } from './spacing.ts'

/** The counts of strings a row is made for: the instrument's own, then the others stated, each once. */
export function countsOf({ strings, tailpiece }: Pick<Design, 'strings' | 'tailpiece'>): number[] {
  const all = [strings.count, tailpiece.alsoFor, tailpiece.andFor].filter((count) => count > 0)
  return all.filter((count, index) => all.indexOf(count) === index)
}

interface Wanted {
  readonly y: number
  /** Which counts want a hole here. */
  readonly counts: readonly number[]
}

/**
 * Holes of the row across the centreline, bass first, in millimetres.
 *
 * `equal holes`: so many as stated, evenly. `for each count`: every count spreads its own evenly over the same span, and
 * two holes of different counts that would leave less wood than the limit between them become one half way, alike on
 * both sides. A hole on the centreline is not moved, nor ever two of one count put together. Plane geometry.
 */
export function tailRow(design: Design): number[] {
  const { tailpiece } = design
  if (tailpiece.row === 'equal holes') return holeCentres(tailpiece.holes, tailpiece.span)
  const half = sharedHalf(design)
  return [
    ...half
      .filter(({ y }) => y > MIDDLE)
      .map(({ y }) => -y)
      .reverse(),
    ...half.map(({ y }) => y),
  ]
}

/** Nearer the centreline than this a hole is on it. */
const MIDDLE = 1e-9

/** The half row from the centreline to the treble. */
function sharedHalf(design: Design): Wanted[] {
  const { tailpiece, limits } = design
  const web = Math.max(limits.tailHoleWeb ?? LIMITS.tailHoleWeb.value, tailpiece.diameter)
  const near = web + tailpiece.diameter
  let half: Wanted[] = countsOf(design)
    .flatMap((count) =>
      holeCentres(count, tailpiece.span)
        .filter((y) => y > -MIDDLE)
        .map((y) => ({ y: Math.max(0, y), counts: [count] })),
    )
    .sort((a, b) => a.y - b.y)
  for (;;) {
    let best = -1
    let least = Number.POSITIVE_INFINITY
    half.forEach((one, index) => {
      const next = half[index + 1]
      if (!next || one.counts.some((count) => next.counts.includes(count))) return
      const gap = next.y - one.y
      // A middle hole shared with a neighbour would take both its neighbours into one.
      if (gap > MIDDLE && one.y <= MIDDLE) return
      if (gap < near - MIDDLE && gap < least) [best, least] = [index, gap]
    })
    const [a, b] = [half[best], half[best + 1]]
    if (!a || !b) return half
    const weight = a.counts.length + b.counts.length
    const joined = {
      y: (a.y * a.counts.length + b.y * b.counts.length) / weight,
      counts: [...a.counts, ...b.counts],
    }
    half = [...half.slice(0, best), joined, ...half.slice(best + 2)]
  }
}

/** Which holes of the row a count of strings uses, bass first; `undefined` where there are too few. */
export function holesFor(design: Design, count: number): (number | undefined)[] {
  const row = tailRow(design)
  if (design.tailpiece.row === 'equal holes' || !countsOf(design).includes(count))
    return holesServing(row.length, count)
  const half = sharedHalf(design)
  const treble = half.flatMap((one, index) => (one.counts.includes(count) ? [index] : []))
  const first = row.length - half.length
  const middle = (half[0]?.y ?? 1) <= MIDDLE
  const right = treble.map((index) => first + index)
  const left = right
    .map((index) => row.length - 1 - index)
    .filter((index) => !(middle && index === first))
    .reverse()
  return [...left, ...right]
}
