/** Trying something at random, many times: what a trial is, and how it is run and counted. */
import fc from 'fast-check'

export interface TrialLaw<Subject> {
  readonly name: string
  readonly wrong: (subject: Subject) => readonly string[] | Promise<readonly string[]>
  /** Asked only of every so-manyth subject. */
  readonly every?: number
}

export interface Trial<Subject> {
  readonly name: string
  /** The subject of a seed: always the same one. */
  readonly draw: (seed: number) => Subject
  readonly laws: readonly TrialLaw<Subject>[]
  /** What the subject reached; a trial that misses any of `mustReach` over a whole run was idle. */
  readonly reached: (subject: Subject) => Iterable<string>
  readonly mustReach: readonly string[]
  /** The subject as text, to be kept, and back again. */
  readonly text: (subject: Subject) => string
  readonly read: (text: string) => Subject
}

export interface Mishap {
  readonly trial: string
  readonly seed: number
  readonly law: string
  readonly words: string
  readonly text: string
}

/** What mishaps of one cause have in common: what was said or thrown first, figures aside. */
export const headOf = ({ words }: Pick<Mishap, 'words'>): string =>
  (words.split('\n')[0] ?? '').replace(/-?\d[\d.e+-]*/g, 'n').slice(0, 200)

/** What came of a stretch of trying. */
export interface Tally {
  tried: number
  /** Laws that were asked. */
  asked: number
  readonly reached: Record<string, number>
  readonly mishaps: Mishap[]
  /** The longest that one law took, milliseconds of the processor. */
  slowest: number
}

export const emptyTally = (): Tally => ({ tried: 0, asked: 0, reached: {}, mishaps: [], slowest: 0 })

/** Longer than this is a hang, milliseconds of the processor. */
const HANG = 1000

/** A draw from a seed. Every other one keeps away from the edges of ranges, where fast-check likes to be. */
export const drawn = <T>(arbitrary: fc.Arbitrary<T>, seed: number): T =>
  fc.sample(seed % 2 === 0 ? arbitrary : fc.noBias(arbitrary), { seed, numRuns: 1 })[0] as T

/** Asks every law of the subject of one seed, and counts. */
export async function tryOut<Subject>(
  trial: Trial<Subject>,
  seed: number,
  tally: Tally,
  hang = HANG,
): Promise<void> {
  const subject = trial.draw(seed)
  tally.tried += 1
  for (const law of trial.laws) {
    if (seed % (law.every ?? 1) !== 0) continue
    tally.asked += 1
    const { words, took } = await asked(law, subject)
    // The first time pays for compiling, and the collector comes when it likes: only what is slow again is slow.
    const again = took > hang ? Math.min(took, (await asked(law, trial.draw(seed))).took) : took
    tally.slowest = Math.max(tally.slowest, again)
    const all = again > hang ? [...words, `took ${Math.round(again)} ms`] : words
    if (all.length > 0)
      tally.mishaps.push({
        trial: trial.name,
        seed,
        law: law.name,
        words: all.slice(0, 3).join('\n'),
        text: trial.text(subject),
      })
  }
  try {
    for (const what of trial.reached(subject)) tally.reached[what] = (tally.reached[what] ?? 0) + 1
  } catch {
    // A law has told already what throws.
  }
}

/** What is wrong with one subject by one law, thrown or said, and how long it took. */
export async function asked<Subject>(
  law: TrialLaw<Subject>,
  subject: Subject,
): Promise<{ readonly words: readonly string[]; readonly took: number }> {
  const began = process.cpuUsage()
  let words: readonly string[]
  try {
    words = await law.wrong(subject)
  } catch (error) {
    words = [error instanceof Error ? (error.stack ?? error.message).slice(0, 900) : String(error)]
  }
  return { words, took: process.cpuUsage(began).user / 1000 }
}

/** What a trial should have reached and did not. */
export const missed = (trial: Pick<Trial<never>, 'mustReach'>, tally: Tally): string[] =>
  trial.mustReach.filter((what) => !tally.reached[what])
