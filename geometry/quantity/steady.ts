/** Lists that hardly change from one to the next: a drag among thousands makes a new one in every frame, with one other entry. */
import { notes } from './notes.ts'

interface Step {
  readonly before: readonly unknown[] | null
  readonly others: readonly number[]
}

const steps = notes<readonly unknown[], Step>()
const NOT_TOLD: Step = { before: null, others: [] }

/** Tells that `list` is `before` but for the entries of these numbers, so that nobody has to compare the two again. */
export function tellOthers(
  list: readonly unknown[],
  before: readonly unknown[],
  others: readonly number[],
): void {
  steps.set(list, { before, others })
  // Only the newest knows the one before it: else each list would keep all that ever were.
  steps.set(before, NOT_TOLD)
}

/** Numbers of the entries that are others than in a list before, or `null` where there are not as many. */
export function othersThan(list: readonly unknown[], before: readonly unknown[]): readonly number[] | null {
  if (list === before) return []
  const told = steps.get(list)
  if (told?.before === before) return told.others
  const toldBefore = steps.get(before)
  // Both made from one list, as two steps of a drag are: no other entries need a look.
  if (told?.before && told.before === toldBefore?.before)
    return [...new Set([...told.others, ...toldBefore.others])].filter((one) => list[one] !== before[one])
  if (list.length !== before.length) return null
  const others: number[] = []
  for (let index = 0; index < list.length; index++) if (list[index] !== before[index]) others.push(index)
  return others
}

/**
 * A filter for such lists: entries that are the very same as in the list before are not asked again, and as long as none
 * that is kept has come or gone the answer is the very same list.
 *
 * @example
 * const even = steadyFilter((n: number) => n % 2 === 0)
 * even([1, 2, 3]) // [2]
 */
export function steadyFilter<Item>(
  keeps: (item: Item) => boolean,
): (list: readonly Item[]) => readonly Item[] {
  let before: readonly Item[] = []
  let kept: readonly Item[] = []
  return (list) => {
    const others = othersThan(list, before)
    const stands = others?.every((index) => !keeps(before[index]!) && !keeps(list[index]!))
    if (!stands) kept = list.filter(keeps)
    // The newest is compared with next time: what is not kept may be another each time.
    before = list
    return kept
  }
}
