/** A short run of what `npm run fuzz` does at length, from another seed than it begins with; and everything it ever found. */
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { asked, emptyTally, missed, tryOut } from './trial.ts'
import { TRIALS, trialNamed } from './trials.ts'

/** How many of each: seconds, not minutes. Python is asked in the long run alone, and in tests/outside. */
const SHORT: Readonly<Record<string, number>> = { designs: 90, exports: 16, files: 300, editing: 40 }

/** In a short run not every rule and kind comes by chance; in a long one it must. */
const LEAST_REACHED: Readonly<Record<string, number>> = { designs: 0.8, exports: 0.6, files: 1, editing: 1 }

const SEED = 7_000_000

describe('a short run', { timeout: 60_000 }, () => {
  test.each(TRIALS.filter(({ name }) => name in SHORT))(
    'of $name finds nothing, and is not idle',
    async (trial) => {
      const tally = emptyTally()
      const count = SHORT[trial.name] ?? 0
      for (let seed = SEED; seed < SEED + count; seed++) await tryOut(trial, seed, tally)
      expect(tally.mishaps.map(({ seed, law, words }) => `${seed} ${law}: ${words}`)).toEqual([])
      expect(tally.tried).toBe(count)
      const reached = 1 - missed(trial, tally).length / trial.mustReach.length
      expect(reached).toBeGreaterThanOrEqual(LEAST_REACHED[trial.name] ?? 1)
    },
  )
})

interface Kept {
  readonly trial: string
  readonly what: string
  readonly subject: unknown
}

const folder = new URL('kept/', import.meta.url)
const kept = readdirSync(folder)
  .sort()
  .map((name) => ({ name, ...(JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as Kept) }))

describe('what was found once stays mended', { timeout: 60_000 }, () => {
  test('there is something kept', () => expect(kept.length).toBeGreaterThan(3))

  test.each(kept)('$what', async ({ trial: name, subject }) => {
    const trial = trialNamed(name)
    for (const law of trial.laws) {
      const { words } = await asked(law, trial.read(JSON.stringify(subject)))
      expect({ law: law.name, words }).toEqual({ law: law.name, words: [] })
    }
  })
})

describe('the trial itself', () => {
  const trial = trialNamed('designs')

  test('the same seed draws the same design', () => {
    expect(trial.text(trial.draw(41))).toBe(trial.text(trial.draw(41)))
    expect(trial.text(trial.draw(41))).not.toBe(trial.text(trial.draw(42)))
  })

  test('a law that is broken, thrown out of or slow is told with its seed', async () => {
    const bad = {
      ...trial,
      laws: [
        { name: 'says', wrong: () => ['so'] },
        {
          name: 'throws',
          wrong: () => {
            throw new RangeError('out')
          },
        },
        {
          name: 'hangs',
          wrong: () => {
            const end = process.cpuUsage().user + 6e4
            while (process.cpuUsage().user < end);
            return []
          },
        },
      ],
    }
    const tally = emptyTally()
    await tryOut(bad, 3, tally, 30)
    expect(tally.mishaps.map(({ seed, law }) => [seed, law])).toEqual([
      [3, 'says'],
      [3, 'throws'],
      [3, 'hangs'],
    ])
  })

  test('one that tried nothing missed everything', () => {
    expect(missed(trial, emptyTally())).toEqual(trial.mustReach)
  })
})
