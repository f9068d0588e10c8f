/** Which known words are nearest to one that is not known: for "did you mean". */

/** Letters to change, add, leave out or swap with a neighbour to make one word the other (optimal string alignment). */
export function distance(from: string, to: string): number {
  let twoBefore: number[] = []
  let before = Array.from({ length: to.length + 1 }, (_, index) => index)
  for (let row = 1; row <= from.length; row++) {
    const here = [row]
    for (let column = 1; column <= to.length; column++) {
      const same = from[row - 1] === to[column - 1]
      let least = Math.min(here[column - 1]! + 1, before[column]! + 1, before[column - 1]! + (same ? 0 : 1))
      const swapped = from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1]
      if (row > 1 && column > 1 && swapped) least = Math.min(least, twoBefore[column - 2]! + 1)
      here.push(least)
    }
    twoBefore = before
    before = here
  }
  return before[to.length] ?? 0
}

/** Comparing only the last step costs a little, so that the whole path wins where both are near. */
const LAST_STEP_ONLY = 0.5

/**
 * The known dotted paths nearest to `asked`, nearest first; none that is farther off than a third of its letters.
 * A last step alone is enough: `wdth` finds `box.width`.
 * Example: `nearest('box.lenght', ['box.length', 'box.width'])` is `['box.length']`.
 */
export function nearest(asked: string, known: readonly string[], most = 3): string[] {
  const wanted = asked.toLowerCase()
  const lastOf = (path: string) => path.slice(path.lastIndexOf('.') + 1)
  const far = (path: string) => {
    const there = path.toLowerCase()
    return Math.min(distance(wanted, there), distance(lastOf(wanted), lastOf(there)) + LAST_STEP_ONLY)
  }
  const limit = Math.max(1.5, lastOf(wanted).length / 3 + LAST_STEP_ONLY)
  return known
    .map((path) => ({ path, far: far(path) }))
    .filter((one) => one.far <= limit)
    .sort((a, b) => a.far - b.far)
    .slice(0, most)
    .map((one) => one.path)
}
