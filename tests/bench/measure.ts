/**
 * Times as ratios: two works run by turns in one process, round after round, so that whatever else the machine does
 * falls on both alike. Nothing is asserted; a reader judges the spread.
 */
import { performance } from 'node:perf_hooks'

export interface Ratio {
  readonly median: number
  readonly low: number
  readonly high: number
  readonly ours: number
  readonly theirs: number
}

/** Results go here, so that no work can be left out as useless. */
let sink = 0
const swallow = (value: unknown) => {
  sink += typeof value === 'string' ? value.length : Array.isArray(value) ? value.length : 1
}

/** Milliseconds a call takes, over `times` calls. */
function once(work: () => unknown, times: number): number {
  const start = performance.now()
  for (let index = 0; index < times; index++) swallow(work())
  return (performance.now() - start) / times
}

const middle = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0

/** Ratio of one work to another: warm-up, then `rounds` rounds by turns; median and the middle half. */
export function ratio(ours: () => unknown, theirs: () => unknown, rounds = 31, times = 60): Ratio {
  once(ours, times * 10)
  once(theirs, times * 10)
  const pairs = Array.from({ length: rounds }, () => ({
    ours: once(ours, times),
    theirs: once(theirs, times),
  }))
  const ratios = pairs.map((pair) => pair.ours / pair.theirs).sort((a, b) => a - b)
  return {
    median: middle(ratios),
    low: ratios[Math.floor(rounds / 4)] ?? 0,
    high: ratios[Math.floor((3 * rounds) / 4)] ?? 0,
    ours: middle(pairs.map((pair) => pair.ours)),
    theirs: middle(pairs.map((pair) => pair.theirs)),
  }
}

/** Exponent of growth between two sizes: the slope of the logarithm of time over the logarithm of size. */
export function growth(work: (size: number) => () => unknown, small: number, large: number, rounds = 9) {
  const [few, many] = [work(small), work(large)]
  once(few, 40)
  once(many, 3)
  const exponents = Array.from({ length: rounds }, () => {
    const short = once(few, Math.ceil(large / small))
    const long = once(many, 2)
    return { short, long, exponent: Math.log(long / short) / Math.log(large / small) }
  }).sort((a, b) => a.exponent - b.exponent)
  return {
    median: exponents[Math.floor(rounds / 2)]?.exponent ?? 0,
    low: exponents[0]?.exponent ?? 0,
    high: exponents.at(-1)?.exponent ?? 0,
    short: middle(exponents.map((one) => one.short)),
    long: middle(exponents.map((one) => one.long)),
  }
}

export const checksum = () => sink
