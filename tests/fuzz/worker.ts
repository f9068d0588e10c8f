/** One process of a long run: tries the seeds it is given and tells its parent what came of them. */
import type { Design } from '../../geometry/index.ts'
import { lessened } from './lessen.ts'
import { asked, emptyTally, headOf, type Tally, tryOut } from './trial.ts'
import { trialNamed } from './trials.ts'

export interface Errand {
  readonly trial: string
  readonly from: number
  readonly count: number
  /** Wall clock at which it ends in any case, milliseconds since 1970. */
  readonly until: number
}

export type Told = { readonly at: number } | { readonly done: Tally }

/** What is told while it works: a seed that is never followed by another is one that hangs. */
const tell = (told: Told) => process.send?.(told)

async function run({ trial: name, from, count, until }: Errand): Promise<Tally> {
  const trial = trialNamed(name)
  const tally = emptyTally()
  for (let seed = from; seed < from + count && Date.now() < until; seed++) {
    tell({ at: seed })
    await tryOut(trial, seed, tally)
  }
  if (name !== 'designs' && name !== 'exports') return tally
  const seen = new Set<string>()
  for (const [index, mishap] of tally.mishaps.entries()) {
    if (seen.size > 3 || seen.has(headOf(mishap))) continue
    seen.add(headOf(mishap))
    const law = trial.laws.find((one) => one.name === mishap.law)
    if (!law) continue
    const breaks = async (design: Design) => {
      tell({ at: mishap.seed })
      return (await asked(law, design)).words.length > 0
    }
    const whole = trial.read(mishap.text) as Design
    // What was only slow breaks nothing, and would be made smaller for many minutes.
    if (!(await breaks(whole))) continue
    const least = await lessened(whole, breaks)
    tally.mishaps[index] = { ...mishap, text: JSON.stringify(least) }
  }
  return tally
}

process.on('message', (errand: Errand) => {
  run(errand).then(
    (done) => tell({ done }),
    (error: unknown) => {
      console.error(error)
      process.exit(1)
    },
  )
})
