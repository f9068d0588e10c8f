/**
 * Finds an entry of a list by its name, mostly without walking the list: an entry stays where it was, in list after list,
 * so the place it had last is looked at first. A drag asks for the same few names among thousands in every frame.
 *
 * @example
 * const numberCalled = byName(({ id }: { id: string }) => id)
 * numberCalled([{ id: 'a' }, { id: 'b' }], 'b') // 1
 * numberCalled([{ id: 'a' }], 'b') // -1
 */
export function byName<Item>(
  nameOf: (item: Item) => string,
): (list: readonly Item[], name: string) => number {
  const lastAt = new Map<string, number>()
  return (list, name) => {
    const before = lastAt.get(name)
    const there = before === undefined ? undefined : list[before]
    if (before !== undefined && there !== undefined && nameOf(there) === name) return before
    const found = list.findIndex((one) => nameOf(one) === name)
    if (found >= 0) {
      if (lastAt.size >= MOST_NAMES) lastAt.clear()
      lastAt.set(name, found)
    }
    return found
  }
}

const MOST_NAMES = 10_000
