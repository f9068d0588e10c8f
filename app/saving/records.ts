/** Reading what is kept: which record, which generation, and what must be left alone. */
import { type Design, readDesign, VERSION } from '../../geometry/index.ts'
import type { KeptStore, Mark } from './store.ts'
import { newerVersion, timeOfDay, unreadable } from './words.ts'

/** A kept text that this page did not open, for the builder to download exactly as it lies there. */
export interface Untouched {
  readonly name: string
  readonly text: string
}

export interface RecordReading {
  readonly record: string
  /** The newest generation that can be read, or `null`: then the record is left alone. */
  readonly newest: { readonly mark: Mark; readonly design: Design } | null
  /** The highest number in the record, readable or not. */
  readonly number: number
  /** Numbers of generations that can be read, rising. Only these may ever be dropped. */
  readonly good: readonly number[]
  readonly untouched: readonly Untouched[]
  /** What the builder has to know of it. */
  readonly words: readonly string[]
}

/** The records there are, that of `first` foremost and then by the time they were last written. */
export function recordsOf(marks: readonly Mark[], first: string | null): string[] {
  const latest = new Map<string, number>()
  for (const { record, at } of marks) latest.set(record, Math.max(latest.get(record) ?? at, at))
  const rank = (record: string) => (record === first ? Number.POSITIVE_INFINITY : (latest.get(record) ?? 0))
  return [...latest.keys()].sort((a, b) => rank(b) - rank(a) || (a < b ? -1 : 1))
}

/**
 * Reads one record, newest generation first. A generation that cannot be read is passed over for the one before. If a
 * newer version of the program wrote the newest, the whole record is left to it.
 */
export async function readRecord(store: KeptStore, record: string): Promise<RecordReading> {
  const marks = (await store.list())
    .filter((mark) => mark.record === record)
    .sort((a, b) => b.number - a.number)
  const good: number[] = []
  const untouched: Untouched[] = []
  const faults: { mark: Mark; sentence: string }[] = []
  let newest: RecordReading['newest'] = null
  for (const mark of marks) {
    const text = await store.read(record, mark.number)
    if (text === undefined) continue
    const reading = readDesign(text)
    if (reading.ok) {
      good.unshift(mark.number)
      newest ??= { mark, design: reading.design }
    } else if (newest === null) {
      const sentence = reading.faults[0]?.sentence ?? ''
      untouched.push({ name: `kept-${record.slice(0, 6)}-${mark.number}.lidwright.json`, text })
      if (isNewer(text)) {
        const words = [newerVersion(sentence)]
        return { record, newest: null, number: mark.number, good: [], untouched, words }
      }
      faults.push({ mark, sentence })
    }
  }
  const instead = newest && timeOfDay(newest.mark.at)
  const words = faults.map(({ mark, sentence }) => unreadable(timeOfDay(mark.at), sentence, instead))
  return { record, newest, number: marks[0]?.number ?? 0, good, untouched, words }
}

function isNewer(text: string): boolean {
  try {
    const { format, version } = JSON.parse(text)
    return format === 'lidwright' && typeof version === 'number' && version > VERSION
  } catch {
    return false
  }
}
