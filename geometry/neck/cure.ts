/**
 * What would do: the thinnest stock, or the first reinforcement, that passes. Works on any question that is answered
 * with yes from some size on, such as `bendNeck` for a blank of that thickness.
 */
import { positive } from '../quantity/demand.ts'

/**
 * The least size on the builder's rule (multiples of `step`) between `from` and `to` that passes; `null` where `to`
 * itself does not. `passes` must hold for every size above one that passes: a stiffer neck never bows more.
 * Example: `thinnest((height) => height ** 3 > 5000, 10, 30, 0.5)` is 17.5.
 */
export function thinnest(
  passes: (size: number) => boolean,
  from: number,
  to: number,
  step: number,
): number | null {
  positive(step, 'a step')
  const first = Math.ceil(from / step - 1e-9)
  const last = Math.floor(to / step + 1e-9)
  if (last < first || !passes(last * step)) return null
  let [fails, enough] = [first - 1, last]
  while (enough - fails > 1) {
    const middle = Math.floor((fails + enough) / 2)
    if (passes(middle * step)) enough = middle
    else fails = middle
  }
  return enough * step
}

/** The first of these that passes, as bars from the lightest to the heaviest; `null` where none does. */
export function firstThatPasses<T>(candidates: readonly T[], passes: (candidate: T) => boolean): T | null {
  for (const candidate of candidates) if (passes(candidate)) return candidate
  return null
}
