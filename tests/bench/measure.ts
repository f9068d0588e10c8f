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

/** Makes what so many calls need, before the clock runs, and gives the work that is timed. */
export type Prepared = (times: number) => () => unknown

/** The same work every time, with nothing to prepare. */
export const always =
  (work: () => unknown): Prepared =>
  () =>
    work

/** Young things are moved twice before they count as old. */
function letThemAge(): void {
  for (let round = 0; round < 2; round++) globalThis.gc?.({ type: 'minor' })
}

/**
 * Work on a new thing at each call, all made beforehand: nothing remembered about one helps with the next, and moving
 * what waits out of the collector's way is not charged to the work.
 */
export const onEachNew =
  <T>(make: () => T, work: (one: T) => unknown): Prepared =>
  (times) => {
    const pool = Array.from({ length: times }, make)
    letThemAge()
    return () => work(pool.pop() ?? make())
  }

/** Batches before anything is counted: the compiler of the machine goes on improving for some thousand calls. */
const WARM_UP = 80

interface Pair {
  readonly ours: number
  readonly theirs: number
}

/** Median and middle half of the ratios of rounds. */
export function summed(pairs: readonly Pair[]): Ratio {
  const ratios = pairs.map((pair) => pair.ours / pair.theirs).sort((a, b) => a - b)
  return {
    median: middle(ratios),
    low: ratios[Math.floor(pairs.length / 4)] ?? 0,
    high: ratios[Math.floor((3 * pairs.length) / 4)] ?? 0,
    ours: middle(pairs.map((pair) => pair.ours)),
    theirs: middle(pairs.map((pair) => pair.theirs)),
  }
}

export interface Rounds {
  readonly rounds?: number
  readonly times?: number
  readonly ofOurs?: number
  readonly warmUp?: number
}

/**
 * Ratio of one work to another: warm-up, then `rounds` rounds by turns; median and the middle half. `ofOurs` is how often
 * ours is done in a round where that is not as often as theirs.
 */
export function ratio(
  ours: Prepared,
  theirs: Prepared,
  { rounds = 31, times = 60, ofOurs, warmUp = WARM_UP }: Rounds = {},
): Ratio {
  const timesOurs = ofOurs ?? times
  const round = () => {
    const [we, they] = [ours(timesOurs), theirs(times)]
    return { ours: once(we, timesOurs), theirs: once(they, times) }
  }
  for (let index = 0; index < warmUp; index++) round()
  return summed(Array.from({ length: rounds }, round))
}

/** The same of works that end later. */
export async function ratioLater(
  ours: () => Promise<unknown>,
  theirs: () => Promise<unknown>,
  rounds = 31,
  times = 5,
): Promise<Ratio> {
  const timed = async (work: () => Promise<unknown>) => {
    const start = performance.now()
    for (let index = 0; index < times; index++) swallow(await work())
    return (performance.now() - start) / times
  }
  const pairs: Pair[] = []
  for (let index = 0; index < WARM_UP / times + rounds; index++)
    pairs.push({ ours: await timed(ours), theirs: await timed(theirs) })
  return summed(pairs.slice(-rounds))
}

export interface Growth {
  readonly median: number
  readonly low: number
  readonly high: number
  readonly short: number
  readonly long: number
}

/**
 * Exponent of growth between two sizes: the slope of the logarithm of time over the logarithm of size. What is little is
 * done so often that it takes as long as what is much.
 */
export async function growth(
  work: (size: number) => () => unknown,
  small: number,
  large: number,
  { rounds = 9, times = 2 }: Pick<Rounds, 'rounds' | 'times'> = {},
): Promise<Growth> {
  const [few, many] = [work(small), work(large)]
  const timed = async (one: () => unknown, often: number) => {
    const start = performance.now()
    for (let index = 0; index < often; index++) swallow(await one())
    return (performance.now() - start) / often
  }
  const asOften = Math.ceil(large / small)
  await timed(few, asOften)
  await timed(many, times)
  const exponents: { short: number; long: number; exponent: number }[] = []
  for (let round = 0; round < rounds; round++) {
    const short = await timed(few, asOften)
    const long = await timed(many, times)
    exponents.push({ short, long, exponent: Math.log(long / short) / Math.log(large / small) })
  }
  exponents.sort((a, b) => a.exponent - b.exponent)
  return {
    median: exponents[Math.floor(rounds / 2)]?.exponent ?? 0,
    low: exponents[0]?.exponent ?? 0,
    high: exponents.at(-1)?.exponent ?? 0,
    short: middle(exponents.map((one) => one.short)),
    long: middle(exponents.map((one) => one.long)),
  }
}

export const checksum = () => sink
