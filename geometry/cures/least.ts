/** The least that does: how many steps one way, found by going farther each time and then halving. */

/** Each try goes so much farther than the one before: what opens and closes again in less is not seen. */
const FARTHER = 1.6

/**
 * The least whole number of steps, 1 to `most`, that `passes`, taken to hold from some number on as far as one try
 * reaches; `null` where no try passes. `first` is where to begin to look, such as what is missing; no try
 * goes `stride` farther than the one before.
 * Example: `leastSteps((steps) => steps >= 42, 30, 1000)` is 42.
 */
export function leastSteps(
  passes: (steps: number) => boolean,
  first: number,
  most: number,
  stride = Number.POSITIVE_INFINITY,
): number | null {
  let fails = 0
  let tried = Math.max(1, Math.min(most, Math.floor(first)))
  if (most < 1) return null
  while (!passes(tried)) {
    fails = tried
    if (tried >= most) return null
    tried = Math.min(most, Math.max(tried + 1, Math.ceil(Math.min(tried * FARTHER, tried + stride))))
  }
  let enough = tried
  while (enough - fails > 1) {
    const middle = Math.floor((fails + enough) / 2)
    if (passes(middle)) enough = middle
    else fails = middle
  }
  return enough
}
