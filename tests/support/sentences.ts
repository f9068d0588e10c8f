/** What every sentence told to a builder must be, and every place named beside it. */
import type { Fault } from '../../geometry/index.ts'

/** Begins like a sentence, ends like one, and holds nothing that turns words over or comes out of a program. */
export const isSentence = (text: string): boolean =>
  /^\S.*[.?]$/u.test(text) &&
  text.length < 400 &&
  !/\p{Cc}|\p{Cf}/u.test(text) &&
  // What is quoted stood so in the file.
  !/undefined|NaN|\[object/.test(text.replace(/"[^"]*"|“[^”]*”/gu, '…'))

/** Faults that could not be shown to anybody: no sentence, or a place that leads nowhere. */
export function faultyFaults(faults: readonly Fault[]): string[] {
  if (faults.length === 0) return ['refused without a word']
  return faults
    .filter(({ path, sentence }) => !isSentence(sentence) || !isPlace(path))
    .map(({ path, sentence }) => `${JSON.stringify(path)} says: ${sentence}`)
}

/** Fields one after another; one whose name has a dot in it stands in quotes. */
const isPlace = (path: string): boolean =>
  !/\p{Cc}|\p{Cf}/u.test(path) && !/\.\.|^\.|\.$/u.test(path.replace(/"[^"]*"/gu, '…'))
