/**
 * A list of so many, each made from its index: what `Array.from({ length }, …)` says, which walks its argument as it would any
 * object and costs ten times as much. Lists of strings, posts and frets are made with every frame of a drag.
 *
 * @example listOf(3, (index) => 100 * index) // [0, 100, 200]
 */
export function listOf<Item>(howMany: number, make: (index: number) => Item): Item[] {
  const list: Item[] = []
  for (let index = 0; index < howMany; index++) list.push(make(index))
  return list
}
